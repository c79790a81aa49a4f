//! A plate's figures, stock and cut side by side, and what its ports run into.

use super::{Plate, care, picture, under};
use crate::dom::{El, el, svg, text};
use crate::signal::*;
use crate::state::{App, app};
use crate::widget::{field, frame};
use pitleaf_core::language::said;
use pitleaf_core::ports::picture::{self as core_picture, Frame};
use pitleaf_core::ports::{
    Finding, Flow, Overlap, PortName, Row, SideHousing, Stage, Weight, as_it_will_be, findings,
    shown, table,
};
use pitleaf_core::quantity::{Bounds, Number, Reading, Unit};
use pitleaf_core::trochoid::{Chamber, Point};
use pitleaf_translated::tr;
use std::rc::Rc;
use uom::si::f64::Length;
use uom::si::length::millimeter;

/// What is kept from the coolant land until the builder says otherwise, as typed.
pub(super) const MARGIN: &str = tr!("1 mm");

/// The figures of a plate.
pub fn screen(housing: SideHousing) -> Vec<El> {
    let app = app();
    let (speed, margin) = (RwSignal::new("8000".to_owned()), RwSignal::new(MARGIN.to_owned()));
    let page = el("main").class("page").with_all([
        care(tr!(
            "a seal that drops into a port destroys the engine. The engine’s own manual stands above \
             these figures."
        )),
        text("h2", "", tr!("Keep clear")),
        el("div").class("form").with(field(tr!("Margin to the coolant land"), tr!("1 mm"), margin)),
        el("div").live(move || keep_clear(app, housing, &margin.get())),
        text("h2", "", tr!("Before and after")),
        el("div").class("form").with(field(tr!("Time-area at, turns a minute"), "8000", speed)),
        el("div").live(move || tables(app, housing, &speed.get())),
    ]);
    frame(|| tr!("Figures and keep-clear").to_owned(), move || under(app, housing), true, page)
}

fn keep_clear(app: App, housing: SideHousing, margin: &str) -> Vec<El> {
    let margin = match length(margin) {
        Ok(margin) => margin,
        Err(words) => return vec![text("p", "refusal", &words)],
    };
    let plate = Plate::load(app, housing);
    let ports = as_it_will_be(&plate.ports);
    if ports.is_empty() {
        return vec![text("p", "plain", tr!("No port is drawn on this housing yet."))];
    }
    let found = findings(&plate.engine, plate.face.view, &ports, margin);
    let mut cards: Vec<El> = (1..).zip(&found).map(|(number, at)| card(at, Some(number))).collect();
    if found.iter().all(|finding| finding.weight == Weight::Know) {
        cards.insert(0, card(&clear(), None));
    }
    let edges = ports.iter().map(|port| picture::edge(plate.face.view, port));
    let drawn =
        picture::sheet(tr!("Where each finding is, by its number"), Frame::of(&plate.engine))
            .with_all(picture::ground(&plate.engine))
            .with_all(picture::tracks(&plate.engine))
            .with_all(edges)
            .with_all(marks(&found));
    cards.insert(0, picture::framed(drawn));
    cards
}

/// What a finding's mark looks like, in a square of 40: square, diamond or circle.
fn shape(weight: Weight) -> &'static str {
    match weight {
        Weight::Destroys => "M4 4h32v32H4z",
        Weight::Attend => "M20 3 37 20 20 37 3 20z",
        Weight::Know => "M20 4a16 16 0 1 0 .1 0z",
    }
}

/// The places of findings on the picture: the shape of the finding's card with its number, and a line to
/// the place.
pub(super) fn marks(found: &[Finding]) -> Vec<El> {
    let placed: Vec<(usize, &Finding, Point)> = (1..)
        .zip(found)
        .filter_map(|(number, finding)| Some((number, finding, finding.place?)))
        .collect();
    let places: Vec<Point> = placed.iter().map(|(.., place)| *place).collect();
    let at = core_picture::marks(&places);
    placed
        .into_iter()
        .zip(at)
        .map(|((number, finding, place), (x, y))| {
            let (to_x, to_y) = core_picture::drawn(place);
            let sign = picture::path("sign", shape(finding.weight));
            let number = svg("text").attrs(&[("x", "20"), ("y", "20")]).text(&number.to_string());
            let scale = core_picture::MARK / 20;
            let (left, top) = (x - core_picture::MARK, y - core_picture::MARK);
            let sign = svg("g")
                .attr("transform", &format!("translate({left} {top})scale({scale})"))
                .with(sign)
                .with(number);
            svg("g")
                .attr("class", "found")
                .with(picture::path("leader", &format!("M{x} {y}L{to_x} {to_y}")))
                .with(picture::circle("spot", place, 150))
                .with(sign)
        })
        .collect()
}

fn clear() -> Finding {
    Finding {
        weight: Weight::Know,
        title: tr!("Clear of every track").to_owned(),
        words: tr!("Corner seals, oil seal, coolant land and rotor housing.").to_owned(),
        place: None,
    }
}

/// The worst of what a plate's ports run into, as its card and its mark on the picture.
pub(super) fn worst(plate: &Plate) -> Option<(El, Vec<El>)> {
    let margin = length(MARGIN).unwrap_or_default();
    let ports = as_it_will_be(&plate.ports);
    if ports.is_empty() {
        return None;
    }
    let mut found = findings(&plate.engine, plate.face.view, &ports, margin);
    found.truncate(1);
    found.retain(|finding| finding.weight != Weight::Know);
    let card = found.first().map_or_else(|| card(&clear(), None), |first| card(first, Some(1)));
    Some((card, marks(&found)))
}

/// A finding with its mark, square, diamond or circle: in it the number it has on the picture, else cross,
/// bar or tick.
fn card(finding: &Finding, number: Option<usize>) -> El {
    let (class, sign) = match finding.weight {
        Weight::Destroys => ("verdict fails", "m14 14 12 12m0-12L14 26"),
        Weight::Attend => ("verdict close", "M12 20h16"),
        Weight::Know => ("verdict", "m12 20 6 6 11-12"),
    };
    let mark = svg("svg")
        .attrs(&[("viewBox", "0 0 40 40"), ("class", "call-mark found"), ("aria-hidden", "true")])
        .with(svg("path").attr("d", shape(finding.weight)));
    let (mark, said) = match number.filter(|_| finding.place.is_some()) {
        Some(number) => {
            let number = number.to_string();
            let sign = svg("text").attrs(&[("x", "20"), ("y", "20")]).text(&number);
            (mark.with(sign), tr!("{number} on the picture. "))
        }
        None => (mark.with(svg("path").attr("d", sign)), String::new()),
    };
    let word = if finding.weight == Weight::Destroys { tr!("Destroys the engine") } else { "" };
    let words = el("div")
        .with(text("span", "unseen", &said))
        .with(text("b", "stop", word))
        .with(text("p", "port-finding", &finding.title))
        .with(text("p", "verdict-words", &finding.words));
    el("section").class(class).attr("role", "status").with(mark).with(words)
}

fn tables(app: App, housing: SideHousing, speed: &str) -> Vec<El> {
    let plate = Plate::load(app, housing);
    let view = plate.face.view;
    let mut shown_tables = Vec::new();
    let speed = match Number::read(speed.trim()) {
        Ok(number) => Some(number.value()),
        Err(fault) => {
            shown_tables.push(text("p", "refusal", &fault.to_string()));
            None
        }
    };
    let port = |name: PortName| plate.ports.iter().find(|port| port.name == name);
    for name in PortName::all(housing).filter(|name| name.stage == Stage::Stock) {
        let (stock, cut) = (port(name), port(name.at(Stage::Cut)));
        if stock.is_none() && cut.is_none() {
            continue;
        }
        shown_tables.push(text("h3", "", name.port()));
        shown_tables.push(grid(&table(view, stock, cut, speed)));
    }
    shown_tables.extend(overlap(app, housing, Rc::new(plate)));
    shown_tables
}

fn grid(rows: &[Row]) -> El {
    el("dl").class("port-figures").with_all(rows.iter().flat_map(|row| {
        let name = text("dt", "", row.name);
        let cell = |what: &str, figure: &str| {
            (!figure.is_empty())
                .then(|| el("dd").with(text("span", "dim", what)).with(text("b", "number", figure)))
        };
        [
            Some(name),
            cell(tr!("stock"), &row.stock),
            cell(tr!("cut"), &row.cut),
            cell(tr!("change"), &row.change),
        ]
        .into_iter()
        .flatten()
    }))
}

/// The overlap of intakes and exhausts, also with those of the other housings whose plugs are at
/// the same end.
fn overlap(app: App, housing: SideHousing, plate: Rc<Plate>) -> Vec<El> {
    let others: Vec<Plate> = SideHousing::ALL
        .into_iter()
        .filter(|other| *other != housing)
        .map(|other| Plate::load(app, other))
        .filter(|other| other.face.view.plugs == plate.face.view.plugs)
        .collect();
    let view = plate.face.view;
    let all: Vec<_> = [&*plate]
        .into_iter()
        .chain(&others)
        .flat_map(|plate| as_it_will_be(&plate.ports))
        .collect();
    let of = |flow: Flow| all.iter().filter(move |port| port.name.flow == flow);
    let mut lines = Vec::new();
    for intake in of(Flow::Intake) {
        for exhaust in of(Flow::Exhaust) {
            if intake.name.housing != housing && exhaust.name.housing != housing {
                continue;
            }
            let overlap = Overlap::of(&intake.sweep, &exhaust.sweep);
            let when = overlap.stretches.iter().map(|stretch| {
                let event = |theta| {
                    let (angle, centre) = shown::timing(view, theta);
                    format!("{angle} {centre}")
                };
                tr!(
                    "from {} to {}",
                    event(stretch.opens(Chamber::First)),
                    event(stretch.closes(Chamber::First))
                )
            });
            let when: Vec<String> = when.collect();
            let words = if when.is_empty() {
                tr!("never open together").to_owned()
            } else {
                let sum = shown::angle_area(overlap.angle_area);
                tr!(
                    "{}, {}; angle-area {} ({})",
                    shown::angle(overlap.duration()),
                    when.join(", "),
                    sum.metric,
                    sum.inch
                )
            };
            let name = |name: PortName| format!("{} ({})", name.port(), said(name.housing.word()));
            let pair = tr!("{} with {}", name(intake.name), name(exhaust.name));
            lines
                .push(el("p").with(text("b", "", &pair)).text(": ").with(text("span", "", &words)));
        }
    }
    if !lines.is_empty() {
        lines.insert(0, text("h2", "", tr!("Overlap")));
    }
    lines
}

/// A length as typed, in millimetres where no unit is behind it.
pub(super) fn length(typed: &str) -> Result<Length, String> {
    Reading::read(typed, Unit::Millimetre, &Bounds::SIZE)
        .map(|reading| Length::new::<millimeter>(reading.amount().value(Unit::Millimetre)))
        .map_err(|fault| fault.to_string())
}
