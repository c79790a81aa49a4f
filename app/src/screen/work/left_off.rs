//! "What was I doing": the step left at, what can be done next, and the last three things done.

use super::{at, progress, way};
use crate::dom::{El, link, text};
use crate::route::{Route, WorkPlace};
use crate::screen::bench::list;
use crate::state::App;
use pitleaf_core::route::{Progress, Standing};
use pitleaf_translated::tr;

/// The first thing on the bench of an open build.
pub fn left_off(app: App) -> Vec<El> {
    progress(app).map_or_else(Vec::new, |progress| lines(app, &progress))
}

/// The same, where it is known already how far the work is.
pub(super) fn lines(app: App, progress: &Progress) -> Vec<El> {
    let mut shown = Vec::new();
    match progress.left_at {
        Some(place) => {
            let step = &progress.standings[place].station.step;
            shown.push(
                step_link("left-off", progress, place)
                    .with(text("span", "kind", tr!("What was I doing?")))
                    .with(text("b", "", &progress.words(place)))
                    .with(text(
                        "span",
                        "dim",
                        &format!("{} · {}", step.kind.name(), step.stage.name()),
                    )),
            );
        }
        None => shown.push(
            way("left-off", WorkPlace::Sheet)
                .with(text("b", "", tr!("Every step is done")))
                .with(text("span", "dim", tr!("The build sheet"))),
        ),
    }
    let next = progress.ready().filter(|place| Some(*place) != progress.left_at).take(2);
    shown.push(list("rows", tr!("Can be done now"), next.map(|place| row(progress, place))));
    // They stand below already where this is shown on their own screen.
    if app.route.with_untracked(|route| *route != Route::Work(WorkPlace::Stages)) {
        shown.push(way("quiet", WorkPlace::Stages).text(tr!("All stages and steps")));
    }
    if !progress.last.is_empty() {
        shown.push(text("h2", "", tr!("Last done")));
        let last = progress.last.iter().map(|&place| row(progress, place));
        shown.push(list("rows", tr!("Last done"), last));
    }
    shown
}

fn step_link(class: &str, progress: &Progress, place: usize) -> El {
    link(class, &at(&progress.standings[place].station.key()).hash())
}

/// A step as a line: its words, its kind, how it stands.
pub fn row(progress: &Progress, place: usize) -> El {
    let standing: &Standing = &progress.standings[place];
    let state = standing.state.word();
    step_link(&format!("row-link step-{state}"), progress, place)
        .with(text("b", "", &progress.words(place)))
        .with(text("span", "row-limit", standing.station.step.kind.name()).with(text(
            "span",
            "kind",
            standing.state.name(),
        )))
}
