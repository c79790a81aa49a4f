//! Faces, widths, bores, runout and end play: what is measured before stacking.

mod findings;
mod ledger;
mod picture;
mod reading;
mod result;
mod rows;
mod survey;

use crate::dom::{El, el, link, text};
use crate::route::Route;
use crate::state::{App, app};
use crate::widget::frame;
use findings::{findings, with_bench};
pub use ledger::ledger_screen;
use pitleaf_core::faces::{Survey, piece_words, report};
use pitleaf_translated::tr;
pub use survey::survey_screen;

/// Rows of the sheet that are read once and belong here.
const ROWS: [&str; 3] = ["gear-backlash", "oil-pump-chain-slack", "front-cover-stack"];

/// What can be measured, piece by piece.
pub fn screen() -> Vec<El> {
    let app = app();
    let page = el("main").class("page").live(move || {
        let groups = Survey::GROUPS.iter().flat_map(|(heading, surveys)| {
            let heading = text("h2", "", heading);
            std::iter::once(heading).chain(surveys.iter().map(|&survey| pieces(app, survey)))
        });
        let mut shown: Vec<El> = groups.collect();
        shown.push(link("plate-link", &Route::Stack.hash()).text(tr!("The stack as measured")));
        shown.push(text("h2", "", tr!("Read once")));
        let rows = app.sheet.with(|sheet| {
            ROWS.iter()
                .filter_map(|id| sheet.row(id))
                .map(super::bench::row_link)
                .collect::<Vec<_>>()
        });
        shown.push(super::bench::list("rows", tr!("Read once"), rows));
        shown
    });
    frame(|| tr!("Faces and fits").to_owned(), move || app.build_name(), true, page)
}

/// A survey with a key for each piece; a tick on those that are read.
fn pieces(app: App, survey: Survey) -> El {
    let keys = survey.pieces(app.rotors()).into_iter().map(|piece| {
        let read = app.build().is_some_and(|build| {
            app.book.with(|book| book.readings(&build, survey, &piece).is_some())
        });
        let words = if piece.is_empty() { tr!("open").to_owned() } else { piece_words(&piece) };
        let words = if read { format!("{words} ✓") } else { words };
        link("unit", &Route::Survey(survey, piece).hash()).text(&words)
    });
    el("div")
        .class("pieces")
        .attrs(&[("role", "group"), ("aria-label", survey.name())])
        .with(text("b", "", survey.name()))
        .with_all(keys)
}

/// The stack, from everything written down.
pub fn stack_screen() -> Vec<El> {
    let app = app();
    let page = el("main").class("page").live(move || {
        let unit = app.settings.with(|settings| settings.lengths.unit());
        findings(app, &with_bench(app, false, |bench| report::stack(bench, unit)))
    });
    frame(|| tr!("The stack as measured").to_owned(), move || app.build_name(), true, page)
}
