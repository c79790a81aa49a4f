//! The bolts of a joint, drawn; and tapped where they stand.

use super::order::Fields;
use crate::dom::{El, el, svg, text};
use crate::screen::ports::{engine, written_engine};
use crate::state::App;
use pitleaf_core::joints::bolt_picture::{BoltPicture, picture as drawn};
use pitleaf_core::joints::bolts::{Bolts, tapped};
use pitleaf_core::joints::sequence::Order;
use pitleaf_core::ports::picture::{Frame, path};
use pitleaf_core::trochoid::Point;
use pitleaf_translated::tr;
use wasm_bindgen::JsCast;
use web_sys::{Element, Event, MouseEvent};

/// Points on the housing's curves.
const ROUND: u32 = 180;

/// Bolts and the wrench's way between them; none where only their names are known.
pub(super) fn picture(app: App, bolts: &Bolts, order: Option<&Order>) -> Option<El> {
    if matches!(bolts, Bolts::Named(_)) {
        return None;
    }
    let (bore, land) = housing(app, matches!(bolts, Bolts::Circle(_)));
    let made = drawn(bolts, order, &land);
    let order = order.map(|order| bolts.said(order)).unwrap_or_default();
    let sheet = sheet(&made, &tr!("Order of the bolts: {order}"))
        .with_all([curve("land", &land), curve("bore", &bore)])
        .with_all(marks(&made));
    Some(el("figure").class("bolts").with(sheet).with(caption()))
}

/// The picture that bolts are tapped on, over the outline of the housing.
pub(super) fn tapped_picture(app: App, fields: Fields) -> El {
    let (bore, land) = housing(app, false);
    let figure = el("figure").class("bolts").live(move || {
        let bolts = fields.bolts().ok();
        let order = bolts.as_ref().and_then(|bolts| {
            let own = fields.order();
            if own.trim().is_empty() { bolts.usual_order() } else { bolts.read_order(&own) }.ok()
        });
        let unit = fields.places.unit.get();
        let bolts = bolts.unwrap_or_else(|| Bolts::readable(&fields.places.text(), unit));
        let made = drawn(&bolts, order.as_ref(), &land);
        let frame = made.frame;
        let sheet = sheet(&made, tr!("Bolts on the housing. Tap to add one."))
            .with_all([curve("land", &land), curve("bore", &bore)])
            .with_all(marks(&made));
        let element = sheet.element().clone();
        let sheet = sheet.on("click", move |event| {
            let Some(at) = place(&element, frame, &event) else { return };
            let (rows, unit) = (fields.places.typed, fields.places.unit);
            let made = rows.with_untracked(|rows| tapped(rows, unit.get_untracked(), at));
            rows.set(made);
        });
        vec![sheet, caption()]
    });
    let whose = if written_engine(app).is_some() {
        tr!(
            "The bore and the coolant land of this build, as the housing is seen; the places count from the shaft’s axis."
        )
    } else {
        tr!(
            "The bore and the coolant land of a usual engine of 654 cm³ a rotor; the places count from the shaft’s axis."
        )
    };
    el("div").with(figure).with(text("p", "hint", whose))
}

/// The bore and the coolant land; neither for a circle of bolts, which may be anywhere.
fn housing(app: App, is_circle: bool) -> (Vec<Point>, Vec<Point>) {
    if is_circle {
        return (Vec::new(), Vec::new());
    }
    let engine = engine(app);
    (engine.geometry().bore().polyline(ROUND), engine.coolant_land().polyline(ROUND))
}

fn curve(class: &str, points: &[Point]) -> El {
    svg("path").attrs(&[("class", class), ("d", &path(points.iter().copied(), true))])
}

fn sheet(made: &BoltPicture, label: &str) -> El {
    svg("svg").attrs(&[
        ("class", "bolt-picture touchable"),
        ("viewBox", &made.frame.view_box()),
        ("role", "img"),
        ("aria-label", label),
    ])
}

fn marks(made: &BoltPicture) -> Vec<El> {
    let write = |class: &str, (x, y): (i32, i32), size: i32, words: &str| {
        svg("text")
            .attrs(&[
                ("class", class),
                ("x", &x.to_string()),
                ("y", &y.to_string()),
                ("font-size", &size.to_string()),
            ])
            .text(words)
    };
    // Large enough to be read on a phone, however many bolts there are.
    let size = made.frame.width / 22;
    let mut all = vec![
        svg("path").attrs(&[("class", "way"), ("d", &made.way)]),
        svg("path").attrs(&[("class", "head"), ("d", &made.heads)]),
    ];
    for mark in &made.marks {
        let (x, y) = mark.at;
        all.push(svg("circle").attrs(&[
            ("cx", &x.to_string()),
            ("cy", &y.to_string()),
            ("r", &made.radius.to_string()),
        ]));
        all.push(write("name", mark.at, size, &mark.name));
        if let Some((turn, at)) = &mark.turn {
            all.push(write("turn", *at, size, turn));
        }
    }
    all
}

fn caption() -> El {
    let words = tr!(
        "The letter names the bolt, the number beside it its turn: 1st, 2nd, … The arrows go the wrench’s way."
    );
    text("figcaption", "how", words)
}

/// Where a picture that shows `frame` was tapped.
fn place(picture: &Element, frame: Frame, event: &Event) -> Option<Point> {
    let event = event.dyn_ref::<MouseEvent>()?;
    let bounds = picture.get_bounding_client_rect();
    let share = |at: i32, start: f64, size: f64| (f64::from(at) - start) / size.max(1.0);
    Some(frame.place(
        share(event.client_x(), bounds.left(), bounds.width()),
        share(event.client_y(), bounds.top(), bounds.height()),
    ))
}
