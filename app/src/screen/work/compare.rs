//! One figure over the last builds, as a small plot.

use super::choose;
use crate::dom::{El, el, follow, svg, text};
use crate::route::{Route, WorkPlace};
use crate::screen::bench::list;
use crate::signal::*;
use crate::state::App;
use crate::widget::{call_mark, frame};
use pitleaf_core::limits::{limit_line, place_words};
use pitleaf_core::route::{Comparison, compare, compared_rows};
use pitleaf_translated::tr;

/// How many builds are drawn.
const MOST: usize = 8;

/// The screen of a row.
pub fn screen(app: App, row: &str) -> Vec<El> {
    let chosen = RwSignal::new(row.to_owned());
    let place = RwSignal::new(String::new());
    follow(move || app.go(&Route::Work(WorkPlace::Compare(chosen.get()))));
    let row = row.to_owned();
    let pieces: Vec<(String, String)> = app.sheet.with_untracked(|sheet| {
        let pieces = sheet.row(&row).map(|row| row.places(4)).unwrap_or_default();
        std::iter::once((String::new(), tr!("the worst of all").to_owned()))
            .chain(pieces.into_iter().map(|piece| (piece.clone(), place_words(&piece))))
            .collect()
    });
    let body = el("main")
        .class("page")
        .live(move || {
            let rows: Vec<(String, String)> = app.sheet.with(|sheet| {
                let rows = app.book.with(|book| compared_rows(book, sheet));
                std::iter::once((String::new(), tr!("choose").to_owned()))
                    .chain(rows.into_iter().map(|row| (row.id.clone(), row.what.clone())))
                    .collect()
            });
            vec![choose(tr!("Figure"), &rows, chosen)]
        })
        .with(choose(tr!("Piece"), &pieces, place))
        .live(move || {
            app.sheet.with(|sheet| {
                let found = app.book.with(|book| compare(book, sheet, &row, &place.get(), MOST));
                if found.points.is_empty() {
                    return vec![text("p", "plain", tr!("No build has such a figure."))];
                }
                let limit = sheet.row(&row).map(|row| limit_line(&row.limit, row.spoken_unit()));
                let mut shown = vec![plot(&found)];
                shown.extend(limit.map(|limit| {
                    text(
                        "p",
                        "plain",
                        &tr!("Dashed: the limit, {limit}. The latest build stands at the left."),
                    )
                }));
                let lines = found.points.iter().map(|point| {
                    let words = el("span")
                        .class("entry-words")
                        .with(text("b", "number", &point.figure))
                        .with(text("span", "dim", &point.name));
                    el("div").class("entry").with(call_mark(point.call)).with(words)
                });
                shown.push(list("entries", tr!("Builds, the latest first"), lines));
                shown
            })
        });
    frame(
        || tr!("Over the builds").to_owned(),
        || tr!("How it came out on the last ones").to_owned(),
        true,
        body,
    )
}

fn plot(found: &Comparison) -> El {
    let at = |number: i32| number.to_string();
    let picture = svg("svg").attrs(&[
        ("class", "compare-plot"),
        ("viewBox", "-80 -80 1160 1160"),
        ("preserveAspectRatio", "none"),
        ("role", "img"),
        ("aria-label", tr!("The figures, listed below, against their limit")),
    ]);
    let edge = |y: i32| svg("path").attrs(&[("class", "edge"), ("d", &format!("M-80 {y}H1080"))]);
    let line: Vec<String> =
        found.points.iter().map(|point| format!("{} {}", point.x, point.y)).collect();
    picture
        .with_all([found.lower, found.upper].into_iter().flatten().map(edge))
        .with(svg("path").attrs(&[("class", "run"), ("d", &format!("M{}", line.join("L")))]))
        .with_all(found.points.iter().map(|point| {
            svg("circle").attrs(&[("cx", &at(point.x)), ("cy", &at(point.y)), ("r", "24")])
        }))
}
