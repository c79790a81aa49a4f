//! A rotor's face as it lies on the bench, drawn from the rotor's own outline.

use super::face::SlotLine;
use super::sign::class;
use crate::dom::{El, svg};
use crate::route::Route;
use crate::screen::ports::engine;
use crate::state::App;
use pitleaf_core::book::Face;
use pitleaf_core::trochoid::Point;
use std::fmt::Write as _;
use uom::si::f64::Length;
use uom::si::length::millimeter;

/// Tenths of a millimetre are finer than a phone shows, and whole numbers are shorter.
fn tenths(value: f64) -> i32 {
    #[expect(clippy::cast_possible_truncation, reason = "a rotor is well under a kilometre")]
    let tenths = (value * 10.0).round() as i32;
    tenths
}

fn at(point: Point, scale: f64) -> (i32, i32) {
    let place = |length: Length| tenths(length.get::<millimeter>() * scale);
    (place(point.x()), -place(point.y()))
}

fn path(class: &str, points: &[Point], scale: f64, end: &str) -> El {
    let mut d = String::new();
    for (index, point) in points.iter().enumerate() {
        let (x, y) = at(*point, scale);
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

/// The face as it lies on the bench, of the build's own engine; each slot can be touched. The list under it says the same to
/// keyboards and screen readers.
pub(super) fn map(app: App, face: Face, lines: &[SlotLine]) -> El {
    let engine = engine(app);
    let (map, scale) =
        (engine.face_map(face == Face::Rear), engine.geometry().bore().drawing_scale());
    let slots = lines.iter().zip(&map.slots).map(|(line, points)| {
        let slot = line.slot;
        let group = svg("g")
            .class("touchable")
            .on("click", move |_| app.go(&Route::Slot(slot)))
            .with(path("slot-touch", points, scale, ""))
            .with(path(&format!("slot {}", class(line.state)), points, scale, ""));
        let Some(&middle) = points.get(points.len() / 2) else { return group };
        let (x, y) = at(middle, scale);
        // Names stand inside the rotor, well off the line they name.
        let (x, y) = (x * 9 / 16, y / 2);
        // The unit goes under the figure: a gap between two ends is long.
        let gap = if line.gap.is_empty() { "–" } else { &line.gap };
        let (figure, unit) = gap.split_once(' ').unwrap_or((gap, ""));
        group
            .with(label("slot-name", (x, y), &slot.to_string()))
            .with(label("slot-gap", (x, y + 95), figure))
            .with(label("slot-gap", (x, y + 180), unit))
    });
    let corners = map.corners.iter().zip(["A", "B", "C"]).flat_map(|(corner, letter)| {
        let (x, y) = at(*corner, scale);
        [
            circle("corner", (x, y), map.corner_radius * scale, 12),
            label("corner-name", (x, y + 26), letter),
        ]
    });
    svg("svg")
        .attrs(&[("class", "map"), ("viewBox", "-1090 -1090 2180 1840"), ("aria-hidden", "true")])
        .with(path("outline", &map.outline, scale, "Z"))
        .with(circle("oil", (0, 0), map.oil_radius * scale, 0))
        .with_all(slots)
        .with_all(corners)
}
