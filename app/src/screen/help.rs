//! A topic of the help: what a figure is, how to measure it, why it matters, and where it is checked.

use super::bench::{list, row_link};
use crate::dom::{El, el, link, text};
use crate::route::Route;
use crate::state::app;
use crate::widget::{frame, texts};
use pitleaf_core::calculators::Calculator;
use pitleaf_core::help::Topic;
use pitleaf_translated::tr;

/// The screen.
pub fn screen(id: &str) -> Vec<El> {
    let app = app();
    let page = el("main").class("page help");
    let Some(topic) = Topic::named(id) else {
        let words = tr!("There is no help of this name. Look for it by another word.");
        return frame(
            || tr!("No such help").to_owned(),
            String::new,
            true,
            page.with(text("p", "", words)),
        );
    };
    let page = page.live(move || {
        app.sheet.with(|sheet| {
            let rows = topic.rows.iter().filter_map(|id| sheet.row(id)).map(row_link);
            let surveys = Calculator::all()
                .filter(|calculator| calculator.topic().is_some_and(|of| of.id == topic.id));
            let surveys = surveys.map(|survey| {
                link("row-link", &Route::of_calculator(survey, 2).hash()).with(text(
                    "b",
                    "",
                    survey.name(),
                ))
            });
            let mut shown = texts(&topic.help(sheet));
            shown.push(text("h2", "", tr!("Check it")));
            shown.push(list("rows", tr!("Check it"), rows.chain(surveys)));
            shown
        })
    });
    frame(
        move || topic.title.to_owned(),
        || tr!("Our own words; common practice, no source").to_owned(),
        true,
        page,
    )
}
