//! A rotor face's side-seal slots, drawn from the rotor's own outline.

use super::bench::list;
use crate::dom::{El, el, link, svg, text};
use crate::route::Route;
use crate::state::{App, app};
use crate::widget::{call_mark, frame};
use leptos::prelude::*;
use pitleaf_core::book::{BuildId, Face, Slot, call};
use pitleaf_core::limits::{Call, Part};
use pitleaf_core::trochoid::{Engine, Point};
use std::fmt::Write as _;
use uom::si::f64::Length;
use uom::si::length::millimeter;

/// What a slot shows.
struct SlotLine {
    slot: Slot,
    mark: Option<String>,
    gap: Option<String>,
    call: Option<Call>,
    fitted: bool,
}

impl SlotLine {
    fn word(&self) -> &'static str {
        match (self.fitted, self.call, &self.gap) {
            (true, ..) => "fitted",
            (_, Some(call), _) => call.word(),
            (_, None, Some(_)) => "measured",
            _ => "not measured",
        }
    }

    fn class(&self) -> &'static str {
        match (self.fitted, self.call) {
            (true, _) => "slot fitted",
            (_, Some(Call::Meets)) => "slot meets",
            (_, Some(Call::DoesNotMeet(_))) => "slot fails",
            (_, Some(Call::TooClose)) => "slot close",
            (_, None) => "slot",
        }
    }

    fn gap(&self) -> &str {
        self.gap.as_deref().unwrap_or("–")
    }
}

/// The row a side seal's gap is checked against in this build.
pub(super) fn gap_row(app: App) -> Option<String> {
    let kind = app.kind();
    app.sheet.with(|sheet| {
        sheet
            .of_part(Part::SideSeal, kind)
            .find(|row| row.id.starts_with("side-seal-gap"))
            .map(|row| row.id.clone())
    })
}

fn slot_line(app: App, build: Option<&BuildId>, slot: Slot) -> SlotLine {
    let mut line = SlotLine { slot, mark: None, gap: None, call: None, fitted: false };
    let Some((build, row)) = build.zip(gap_row(app)) else { return line };
    app.book.with(|book| {
        line.mark = book.mark(build, slot).map(str::to_owned);
        line.fitted = book.is_fitted(build, slot);
        if let Some(figure) = book.figure(build, &row, &slot.to_string()) {
            line.gap = Some(format!("{} {}", figure.text, figure.unit.symbol()));
            line.call = app.sheet.with(|sheet| call(figure, sheet));
        }
    });
    line
}

/// The slots of a face.
pub fn screen(rotor: u8, face: Face) -> Vec<El> {
    let app = app();
    let rotors = move || app.opening().map_or(2, |opening| opening.2);
    let under = move || {
        let build = app.build();
        let slots = Slot::of_engine(rotors());
        let fitted = build.map_or(0, |build| {
            app.book.with(|book| slots.iter().filter(|slot| book.is_fitted(&build, **slot)).count())
        });
        let name = app.opening().map_or_else(|| "no build open".to_owned(), |opening| opening.0);
        format!("{name} · {fitted} of {} fitted", slots.len())
    };
    let faces = el("div")
        .class("faces")
        .attrs(&[("role", "group"), ("aria-label", "Face up")])
        .live(move || {
            let faces =
                (1..=rotors()).flat_map(|rotor| [(rotor, Face::Front), (rotor, Face::Rear)]);
            let key = |(number, side): (u8, Face)| {
                let key = link("unit", &Route::Seals(number, side).hash())
                    .text(&format!("{number} {}", side.name()));
                if (number, side) == (rotor, face) { key.attr("aria-current", "true") } else { key }
            };
            faces.map(key).collect()
        });
    let page = el("main").class("page").with(faces).live(move || {
        let build = app.build();
        let lines: Vec<SlotLine> = Slot::of_face(rotor, face)
            .into_iter()
            .map(|slot| slot_line(app, build.as_ref(), slot))
            .collect();
        vec![map(app, face, &lines), list("rows", "Slots of this face", lines.iter().map(row))]
    });
    frame(|| "Seal slots".to_owned(), under, false, page)
}

fn row(line: &SlotLine) -> El {
    let mark =
        line.mark.as_ref().map_or_else(|| "no mark yet".to_owned(), |mark| format!("mark: {mark}"));
    let what = el("span")
        .class("entry-words")
        .with(text("b", "", &line.slot.to_string()))
        .with(text("span", "dim", &mark));
    let gap = el("span").class("entry-when").with(text("span", "number", line.gap())).with(text(
        "span",
        "kind",
        line.word(),
    ));
    link("entry", &Route::Slot(line.slot).hash()).with(call_mark(line.call)).with(what).with(gap)
}

/// Tenths of a millimetre are finer than a phone shows, and whole numbers are shorter.
fn tenths(value: f64) -> i32 {
    #[expect(clippy::cast_possible_truncation, reason = "a rotor is well under a kilometre")]
    let tenths = (value * 10.0).round() as i32;
    tenths
}

fn at(point: Point) -> (i32, i32) {
    (tenths(point.x().get::<millimeter>()), tenths(-point.y().get::<millimeter>()))
}

fn path(class: &str, points: &[Point], end: &str) -> El {
    let mut d = String::new();
    for (index, point) in points.iter().enumerate() {
        let (x, y) = at(*point);
        // Writing to a string can't fail.
        let _ = write!(d, "{}{x} {y}", if index == 0 { 'M' } else { 'L' });
    }
    d.push_str(end);
    svg("path").attrs(&[("class", class), ("d", &d)])
}

fn circle(class: &str, (x, y): (i32, i32), radius: Length, more: i32) -> El {
    let radius = (tenths(radius.get::<millimeter>()) + more).to_string();
    svg("circle").attrs(&[
        ("class", class),
        ("cx", &x.to_string()),
        ("cy", &y.to_string()),
        ("r", &radius),
    ])
}

fn label(class: &str, (x, y): (i32, i32), words: &str) -> El {
    svg("text").attrs(&[("class", class), ("x", &x.to_string()), ("y", &y.to_string())]).text(words)
}

/// The face as it lies on the bench; each slot can be touched. The list under it says the same to
/// keyboards and screen readers.
fn map(app: App, face: Face, lines: &[SlotLine]) -> El {
    let map = Engine::preset().face_map(face == Face::Rear);
    let slots = lines.iter().zip(&map.slots).map(|(line, points)| {
        let slot = line.slot;
        let group = svg("g")
            .on("click", move |_| app.go(&Route::Slot(slot)))
            .with(path("slot-touch", points, ""))
            .with(path(line.class(), points, ""));
        let Some(&middle) = points.get(points.len() / 2) else { return group };
        let (x, y) = at(middle);
        // Names stand inside the rotor, well off the line they name.
        let (x, y) = (x * 5 / 8, y * 5 / 8);
        group.with(label("slot-name", (x, y), &slot.to_string())).with(label(
            "slot-gap",
            (x, y + 95),
            line.gap(),
        ))
    });
    let corners = map.corners.iter().zip(["A", "B", "C"]).flat_map(|(corner, letter)| {
        let (x, y) = at(*corner);
        [circle("corner", (x, y), map.corner_radius, 12), label("corner-name", (x, y + 26), letter)]
    });
    svg("svg")
        .attrs(&[("class", "map"), ("viewBox", "-1090 -1090 2180 1840"), ("aria-hidden", "true")])
        .with(path("outline", &map.outline, "Z"))
        .with(circle("oil", (0, 0), map.oil_radius, 0))
        .with_all(slots)
        .with_all(corners)
}
