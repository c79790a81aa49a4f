//! The outline close up, with its corners to be dragged.

use super::outline::Editing;
use super::{Plate, picture, touch};
use crate::dom::{El, el};
use crate::state::App;
use leptos::prelude::*;
use pitleaf_core::ports::picture::Frame;
use pitleaf_core::ports::{Corner, Outline, Port, move_corner, nearest_corner, outline_of, shown};
use pitleaf_core::trochoid::{Chamber, Point};
use uom::si::f64::Length;
use uom::si::length::millimeter;

/// A corner under the finger: its number and where it is now.
#[derive(Clone, Copy, PartialEq)]
pub(super) struct Drag {
    number: usize,
    place: Point,
    /// From the finger to the corner, so that it does not jump, and the finger does not hide it.
    off: (f64, f64),
}

/// The picture with the outline being edited.
pub(super) fn outline_picture(app: App, editing: Editing) -> El {
    let others = Plate::load(app, editing.port.housing);
    let view = editing.face.view;
    let whole = Frame::of(&editing.engine);
    // It holds still while a finger is down.
    let shows = RwSignal::new(whole);
    crate::dom::follow(move || {
        let corners = editing.corners();
        if editing.drag.with_untracked(Option::is_none) {
            shows.set(close_up(&corners, whole));
        }
    });
    let edges = others.ports.iter().filter(|port| port.name != editing.port).map(|port| {
        let stage =
            if port.name.at(editing.port.stage) == editing.port { "other" } else { "beside" };
        picture::path(&format!("edge {stage}"), &picture::port_path(view, port))
    });
    let corners = move || {
        let mut corners = editing.corners();
        if let Some(drag) = editing.drag.get()
            && let Some(corner) = corners.get_mut(drag.number)
        {
            corner.point = drag.place;
        }
        corners
    };
    let drawn = picture::sheet("The outline. Drag a corner.", whole)
        .attr_live("viewBox", move || Some(shows.get().view_box()))
        .with_all(picture::ground(&editing.engine))
        .with_all(picture::tracks(&editing.engine))
        .with_all(edges)
        .live(move || outline(editing, &corners(), shows.get_untracked()));
    let picture =
        touch::touched(drawn, move || shows.get_untracked(), move |touch| act(editing, touch));
    el("div").with(picture::framed(picture)).with(el("p").class("turn-at number").text_live(
        move || {
            editing.drag.get().map_or_else(
                || match editing.chosen.get() {
                    Some(number) => format!("Corner in row {} chosen", number + 1),
                    None => "Touch a corner to drag it.".to_owned(),
                },
                |drag| format!("{}  {}", shown::place(drag.place), open_now(editing, &corners())),
            )
        },
    ))
}

/// The outline and its corners; dashed where it makes no port.
fn outline(editing: Editing, corners: &[Corner], shows: Frame) -> Vec<El> {
    let view = editing.face.view;
    let (class, points) = match outline_of(corners, view) {
        Ok(outline) => {
            ("edited", outline.points().iter().map(|p| view.turn_over(*p)).collect::<Vec<_>>())
        }
        Err(_) => ("edited wrong", corners.iter().map(|corner| corner.point).collect()),
    };
    let radius = shows.width / 60;
    let chosen = editing.chosen.get();
    let handles = corners.iter().enumerate().map(|(number, corner)| {
        let class = if chosen == Some(number) { "handle chosen" } else { "handle" };
        picture::circle(class, corner.point, radius)
    });
    [picture::line(class, points)].into_iter().chain(handles).collect()
}

/// What is open at the greatest, while the finger moves.
fn open_now(editing: Editing, corners: &[Corner]) -> String {
    let view = editing.face.view;
    let made = outline_of(corners, view).and_then(|outline: Outline| {
        Port::new(&editing.engine, &outline, editing.face.sealed_by)
            .map_err(|fault| vec![fault.to_string()])
    });
    match made {
        Ok(port) => {
            let theta = view.theta(uom::si::f64::Angle::default());
            let open = port.open_areas(theta).areas()[Chamber::First as usize];
            format!("area {}, at top {}", shown::area(port.area()).metric, shown::area(open).metric)
        }
        Err(faults) => faults.concat(),
    }
}

fn act(editing: Editing, touch: touch::Touch) {
    match touch {
        touch::Touch::Down(place) => {
            let corners = editing.corners();
            let Some(number) = nearest_corner(&corners, place) else { return };
            let (corner, finger) = (corners[number].point.millimetres(), place.millimetres());
            editing.chosen.set(Some(number));
            editing.drag.set(Some(Drag {
                number,
                place: corners[number].point,
                off: (corner.0 - finger.0, corner.1 - finger.1),
            }));
        }
        touch::Touch::Move(place) => editing.drag.update(|drag| {
            if let Some(drag) = drag {
                let (x, y) = place.millimetres();
                drag.place = Point::from_millimetres(x + drag.off.0, y + drag.off.1);
            }
        }),
        touch::Touch::Up => {
            let Some(drag) = editing.drag.get_untracked() else { return };
            let (unit, form) = (editing.unit.get_untracked(), editing.form.get_untracked());
            let moved = editing
                .rows
                .with_untracked(|rows| move_corner(rows, drag.number, drag.place, unit, form));
            editing.drag.set(None);
            editing.rows.set(moved);
        }
    }
}

/// The outline with room around it; the whole plate while there is none.
fn close_up(corners: &[Corner], whole: Frame) -> Frame {
    let points: Vec<Point> = corners.iter().map(|corner| corner.point).collect();
    if points.len() < 2 {
        return whole;
    }
    Frame::around(&points, Length::new::<millimeter>(12.0)).shaped_like(whole)
}
