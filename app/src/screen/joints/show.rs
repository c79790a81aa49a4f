//! How answers at the joints look: the key figure, its table, ranges as bars, cautions.

use crate::dom::{El, el, svg, text};
use crate::draft;
use crate::state::app;
use crate::widget;
use pitleaf_core::book::Fact;
use pitleaf_core::joints::{ABOVE_ALL, Caution, Range, shown};
use pitleaf_translated::tr;

/// The figure the screen is for, and the same in another unit.
pub fn key(figure: &str, beside: &str) -> El {
    el("div")
        .class("joint-key")
        .attr("role", "status")
        .with(text("b", "number", figure))
        .with(text("span", "number", beside))
}

/// Rows of a label, a figure, and the same in another unit.
pub fn table(label: &str, rows: impl IntoIterator<Item = (String, String, String)>) -> El {
    let rows = rows.into_iter().map(|(label, figure, beside)| {
        let figures =
            el("td").with(text("b", "number", &figure)).with(text("span", "dim", &beside));
        el("tr").with(text("th", "", &label).attr("scope", "row")).with(figures)
    });
    el("table").class("joint-table").attr("aria-label", label).with(el("tbody").with_all(rows))
}

/// A row of a table.
pub fn row(label: &str, figure: String, beside: String) -> (String, String, String) {
    (label.to_owned(), figure, beside)
}

/// Ranges on one scale: solid as far as is sure, dashed as far as may be. A line through all stands
/// at the greatest of the one they are held against.
pub fn bars(rows: &[(&str, Range<f64>, String)], against: usize) -> El {
    let ranges: Vec<_> = rows.iter().map(|row| row.1).collect();
    let places = shown::on_scale(&ranges);
    let line = places.get(against).map_or(0, |place| place.1).to_string();
    let lines = rows.iter().zip(places).map(|((label, _, words), (least, greatest))| {
        let bar = |class: &str, from: u16, to: u16| {
            svg("path").attrs(&[
                ("class", class),
                ("d", &format!("M{from} 4H{to}V36H{from}z")),
                ("vector-effect", "non-scaling-stroke"),
            ])
        };
        let picture = svg("svg")
            .attrs(&[
                ("viewBox", "-4 0 1008 40"),
                ("preserveAspectRatio", "none"),
                ("aria-hidden", "true"),
            ])
            .with(bar("may", least, greatest))
            .with(bar("sure", 0, least))
            .with(svg("path").attrs(&[
                ("class", "against"),
                ("d", &format!("M{line} 0V40")),
                ("vector-effect", "non-scaling-stroke"),
            ]));
        el("div")
            .class("bar")
            .with(text("span", "", label))
            .with(text("b", "number", words))
            .with(picture)
    });
    el("div").class("bars").with_all(lines)
}

/// A plain line under an answer.
pub fn line(words: &str) -> El {
    text("p", "plain", words)
}

/// Where a figure comes from.
pub fn source(words: &str) -> El {
    text("p", "source", words)
}

/// The cautions of a place, and what stands above every figure.
pub fn cautions(cautions: &[Caution]) -> Vec<El> {
    let one = |caution: &Caution| {
        el("p").class("caution").with(text("b", "", tr!("Care: "))).text(&caution.to_string())
    };
    cautions.iter().map(one).chain([text("p", "foot", ABOVE_ALL)]).collect()
}

/// A button that writes an answer into the book as a note.
pub fn write_down(about: &'static str, words: String) -> El {
    let app = app();
    crate::dom::button("button", tr!("Write it down"), move || {
        let hash = app.route.get_untracked().hash();
        // Kept, so that opening a build first leads back here.
        draft::put(&hash, &words, None);
        let note = Fact::Note { about: about.to_owned(), words: words.clone() };
        app.write(vec![note], about.to_owned(), move || draft::put(&hash, "", None));
    })
}

/// A joint's screen: answer, fields, and what stands below.
pub fn page(
    title: &'static str,
    under: &'static str,
    answer: impl Fn() -> Vec<El> + 'static,
    fields: impl IntoIterator<Item = El>,
    below: impl IntoIterator<Item = El>,
) -> Vec<El> {
    let body = el("main")
        .class("page joint")
        .with(el("section").class("joint-answer").attr("aria-label", tr!("Answer")).live(answer))
        .with(el("div").class("form").with_all(fields))
        .with_all(below);
    widget::frame(move || title.to_owned(), move || under.to_owned(), true, body)
}
