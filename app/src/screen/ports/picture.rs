//! The plate drawn from its own geometry: bore, tracks, ports, and the rotor over them.

use super::Plate;
use crate::dom::{El, el, svg};
use crate::signal::*;
use pitleaf_core::ports::picture::{self, Frame};
use pitleaf_core::ports::{PlatePort, SealedBy, Stage, View, chart};
use pitleaf_core::trochoid::{Engine, Point, Trochoid};
use pitleaf_translated::tr;
use uom::si::f64::Length;
use uom::si::length::millimeter;

/// Points on a curve once round: a phone shows no corner.
const ROUND: u32 = 360;

/// A path of a class.
pub(super) fn path(class: &str, data: &str) -> El {
    svg("path").attrs(&[("class", class), ("d", data)])
}

/// A line through points as seen.
pub(super) fn line(class: &str, points: impl IntoIterator<Item = Point>) -> El {
    path(class, &picture::path(points, true))
}

pub(super) fn circle(class: &str, centre: Point, radius: i32) -> El {
    let (x, y) = picture::drawn(centre);
    svg("circle").attrs(&[
        ("class", class),
        ("cx", &x.to_string()),
        ("cy", &y.to_string()),
        ("r", &radius.to_string()),
    ])
}

/// The picture's empty sheet.
pub(super) fn sheet(label: &str, frame: Frame) -> El {
    svg("svg").attrs(&[
        ("class", "plate-picture"),
        ("viewBox", &frame.view_box()),
        ("role", "img"),
        ("aria-label", label),
    ])
}

/// The picture in its plate.
pub(super) fn framed(picture: El) -> El {
    el("div").class("plate-frame").with(picture)
}

/// The curves of the plate, which the rotor runs over.
pub(super) fn ground(engine: &Engine) -> Vec<El> {
    let round = |curve: Trochoid| curve.polyline(ROUND);
    let long = engine.coolant_land().polyline(4)[0];
    let (reach, _) = picture::drawn(long);
    let bore = round(engine.geometry().bore());
    vec![
        line("land", round(engine.coolant_land())),
        line("bore", bore),
        path("axis", &format!("M-{reach} 0H{reach}M0 -{reach}V{reach}")),
    ]
}

/// The tracks of the seals, over everything.
pub(super) fn tracks(engine: &Engine) -> Vec<El> {
    let width = 2 * picture::drawn_length(engine.seals().corner_radius);
    vec![
        line("track", engine.corner_seal_path().polyline(ROUND))
            .attr("stroke-width", &width.to_string()),
        circle("sweep", Point::default(), picture::drawn_length(engine.oil_seal_sweep())),
    ]
}

/// A port's outline as seen.
pub(super) fn port_path(view: View, port: &PlatePort) -> String {
    port.outline().map_or_else(String::new, |outline| {
        picture::path(outline.points().iter().map(|point| view.turn_over(*point)), true)
    })
}

/// A port's edge, drawn by its stage.
pub(super) fn edge(view: View, port: &PlatePort) -> El {
    path(&class(port, "edge"), &port_path(view, port))
}

fn class(port: &PlatePort, what: &str) -> String {
    let stage = if port.name.stage == Stage::Stock { "stock" } else { "cut" };
    format!("{what} {stage}")
}

/// The plate with the rotor at `tenths` across the chart.
pub(super) fn plate_picture(plate: &Plate, frame: Frame, tenths: RwSignal<i32>) -> El {
    let view = plate.face.view;
    let engine = plate.engine;
    let paths: Vec<(&PlatePort, String)> =
        plate.ports.iter().map(|port| (port, port_path(view, port))).collect();
    let bore = engine.geometry().bore().polyline(ROUND);
    let clip = svg("clipPath").attr("id", "in-bore").with(line("", bore));
    let behind = paths.iter().map(|(port, data)| path(&class(port, "behind"), data));
    let open = paths
        .iter()
        .map(|(port, data)| path(&class(port, "open"), data).attr("clip-path", "url(#in-bore)"));
    let edges = paths.iter().map(|(port, data)| path(&class(port, "edge"), data));
    sheet(tr!("The plate with the rotor. Drag the rotor to turn it."), frame)
        .with(svg("defs").with(clip))
        .with_all(ground(&engine))
        .with_all(behind)
        .with_all(open)
        .with(rotor(&engine, plate.face.sealed_by).attr_live("transform", move || {
            let theta = chart::theta_at(view, tenths.get());
            Some(picture::rotor_transform(engine.geometry(), view, theta))
        }))
        .with_all(tracks(&engine))
        .with_all(edges)
        .with(circle("shaft", Point::default(), 150))
}

/// The rotor in its own frame. What closes the ports covers them; the rest is a line.
fn rotor(engine: &Engine, sealed_by: SealedBy) -> El {
    let seal = picture::flank_round(engine.side_seal_line());
    let edge = engine.geometry().rotor_outline(64);
    let cover = match sealed_by {
        SealedBy::FlankEdge => line("cover", edge.iter().copied()),
        SealedBy::SideSeal => line("cover", seal.iter().copied()),
    };
    let seals = engine.seals();
    let corners = engine.corner_seats();
    let radius = picture::drawn_length(seals.corner_radius);
    let middle = engine.first_flank_mark();
    svg("g")
        .attr("class", "rotor")
        .with(cover)
        .with(line("rotor-edge", edge))
        .with(line("side-seal", seal))
        .with(circle("oil", Point::default(), picture::drawn_length(seals.oil_radius)))
        .with_all(corners.map(|corner| circle("corner", corner, radius)))
        .with(circle("first", middle, picture::drawn_length(Length::new::<millimeter>(3.0))))
}
