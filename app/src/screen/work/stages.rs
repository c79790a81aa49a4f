//! The stages with how far each has come, and everything that belongs to the build.

use super::left_off::{lines, row};
use super::{page, progress, way};
use crate::dom::{El, el, text};
use crate::route::WorkPlace;
use crate::screen::bench::list;
use crate::state::App;
use crate::widget::frame;
use pitleaf_core::route::{ABOVE_ALL, Progress, Stage, cuts, past_limits};
use pitleaf_translated::tr;

/// The screen.
pub fn screen(app: App) -> Vec<El> {
    let body = page(app, move |build| {
        let Some(progress) = progress(app) else { return Vec::new() };
        let undecided = app.book.with(|book| {
            app.sheet.with(|sheet| {
                let past = past_limits(book, build, sheet);
                past.iter().filter(|past| past.decision.is_none()).count()
                    + cuts(book, build).iter().filter(|cut| cut.is_undecided()).count()
            })
        });
        let mut shown = lines(app, &progress);
        if let Some(fault) = progress.route_fault() {
            shown.push(text("p", "caution", fault));
        }
        shown.push(text("h2", "", tr!("Stages")));
        shown.extend(Stage::ALL.map(|stage| folded(&progress, stage)));
        shown.push(text("h2", "", tr!("The build")));
        let decide = match undecided {
            0 => tr!("Parts, and what becomes of them").to_owned(),
            count => tr!("{count} to decide on"),
        };
        let tiles = [
            (tr!("Customer and engine"), tr!("Whose, what, why"), WorkPlace::Describe),
            (tr!("Decisions"), decide.as_str(), WorkPlace::Decisions),
            (tr!("Compression"), tr!("Faces, evenness"), WorkPlace::Compression(1)),
            (tr!("Build sheet"), tr!("For the customer, to print"), WorkPlace::Sheet),
            (tr!("Sign off"), tr!("What is still open"), WorkPlace::SignOff),
            (tr!("The route"), tr!("Change it, carry it away"), WorkPlace::Route),
            (tr!("Builds"), tr!("All of them, compared"), WorkPlace::Builds),
        ];
        let tiles = tiles.into_iter().map(|(name, about, to)| {
            way("tile", to).with(text("b", "", name)).with(text("span", "dim", about))
        });
        shown.push(list("tiles", tr!("The build"), tiles));
        shown.push(text("p", "foot", ABOVE_ALL));
        shown
    });
    frame(|| tr!("Work").to_owned(), move || app.build_name(), true, body)
}

/// A stage, opened by a touch; the one the work was left in stands open.
fn folded(progress: &Progress, stage: Stage) -> El {
    let (done, all) = progress.of_stage(stage);
    let of = |place: &usize| progress.standings[*place].station.step.stage == stage;
    let steps = (0..progress.standings.len()).filter(of).map(|place| row(progress, place));
    let head = el("summary")
        .with(text("b", "", stage.name()))
        .with(text("span", "number", &tr!("{done} of {all}")))
        .with(
            el("progress")
                .attrs(&[("max", &all.max(1).to_string()), ("value", &done.to_string())])
                .attr("aria-label", stage.name()),
        );
    let stage = el("details").class("stage").with(head).with(list("rows", stage.name(), steps));
    if progress.left_at.as_ref().is_some_and(of) { stage.attr("open", "") } else { stage }
}
