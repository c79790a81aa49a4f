//! The rows that seals and springs are measured by, each with how far it has come.

use super::super::bench::list;
use super::caution;
use crate::dom::{El, el, link, text};
use crate::route::Route;
use crate::state::{App, app};
use crate::widget::frame;
use pitleaf_core::limits::{Part, Row, limit_line};
use pitleaf_core::seals::{Step, set_readings};
use pitleaf_translated::tr;

const PARTS: [Part; 4] = [Part::ApexSeal, Part::CornerSeal, Part::OilSeal, Part::SideSeal];

/// The rows.
pub(in crate::screen) fn screen() -> Vec<El> {
    let app = app();
    let page = el("main").class("page").with(caution(Step::Springs)).live(move || {
        let kind = app.kind();
        let rows = |part: Part| -> Vec<Row> {
            app.sheet.with(|sheet| sheet.of_part(part, kind).cloned().collect())
        };
        PARTS
            .into_iter()
            .flat_map(|part| {
                let links: Vec<El> = rows(part).iter().map(|row| row_line(app, row)).collect();
                [text("h2", "", part.name()), list("rows", part.name(), links)]
            })
            .collect()
    });
    frame(|| tr!("A set in one go").to_owned(), move || app.build_name(), true, page)
}

fn row_line(app: App, row: &Row) -> El {
    let piece = row.piece();
    let by = piece.as_ref().unwrap_or(row);
    let (done, all) = match app.build() {
        Some(build) => {
            let set = app.book.with(|book| set_readings(book, &build, by, app.rotors()));
            (set.iter().filter(|(_, reading)| reading.is_some()).count(), set.len())
        }
        None => (0, 0),
    };
    let limit = limit_line(&row.limit, row.spoken_unit());
    let what = el("span").class("entry-words").with(text("b", "", &row.what)).with(text(
        "span",
        "dim number",
        &limit,
    ));
    // The spread of what are no lengths is one reading for the whole set.
    let (to, beside) = if by.is_of_a_set() {
        (Route::Check { row: row.id.clone(), place: String::new() }, tr!("one reading").to_owned())
    } else {
        (Route::Set(row.id.clone()), tr!("{done} of {all}"))
    };
    link("row-link", &to.hash()).with(what).with(text("span", "row-limit kind", &beside))
}
