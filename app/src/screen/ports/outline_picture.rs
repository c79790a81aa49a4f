//! The outline close up, with its corners to be dragged.

use super::outline::Editing;
use super::{Plate, picture, touch};
use crate::dom::{El, el, svg};
use crate::signal::*;
use crate::state::App;
use pitleaf_core::ports::picture::{Frame, drawn, path};
use pitleaf_core::ports::{Corner, Outline, Seat, move_corner, nearest_corner, outline_of, shown};
use pitleaf_core::trochoid::{Chamber, Point};
use pitleaf_translated::tr;
use std::cell::RefCell;
use std::rc::Rc;
use uom::si::f64::{Angle, Length};
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
pub(super) fn outline_picture(app: App, editing: Editing, seat: Rc<Seat>) -> El {
    let others = Plate::load(app, editing.port.housing);
    let view = editing.face.view;
    let whole = Frame::of(&editing.engine);
    // Read once for every change of the rows, not for every move of the finger. The rows have taken up a
    // corner that was let go: not before they are read, or the outline would be made of the old ones once more.
    let typed = RwSignal::new(Vec::new());
    crate::dom::follow(move || {
        let corners = editing.corners();
        editing.drag.set(None);
        typed.set(corners);
    });
    // It holds still while a finger is down.
    let shows = RwSignal::new(whole);
    crate::dom::follow(move || {
        typed.with(|corners| {
            if editing.drag.with_untracked(Option::is_none) {
                shows.set(close_up(corners, whole));
            }
        });
    });
    let edges = others.ports.iter().filter(|port| port.name != editing.port).map(|port| {
        let stage =
            if port.name.at(editing.port.stage) == editing.port { "other" } else { "beside" };
        picture::path(&format!("edge {stage}"), &picture::port_path(view, port))
    });
    // One move of the finger is worked out once, and in curves that are tabled once.
    let made = RwSignal::new(Made::default());
    crate::dom::follow(move || {
        let drag = editing.drag.get();
        made.set(typed.with(|corners| make(corners, drag, editing, &seat)));
    });
    let radius = move || (shows.get().width / 60).to_string();
    let sheet = picture::sheet(tr!("The outline. Drag a corner."), whole)
        .attr_live("viewBox", move || Some(shows.get().view_box()))
        .with_all(picture::ground(&editing.engine))
        .with_all(picture::tracks(&editing.engine))
        .with_all(edges)
        .with(
            picture::path("edited", "")
                .attr_live("d", move || made.with(|made| Some(made.line.clone())))
                .attr_live("class", move || {
                    let wrong = made.with(|made| !made.is_outline);
                    Some(if wrong { "edited wrong" } else { "edited" }.to_owned())
                }),
        )
        .with(handles(shows, typed))
        .with(
            picture::circle("handle chosen", Point::default(), 0)
                .attr_live("r", move || Some(radius()))
                .attr_live("transform", move || Some(chosen_at(editing, typed))),
        );
    let picture =
        touch::touched(sheet, move || shows.get_untracked(), move |touch| act(editing, touch));
    el("div").with(picture::framed(picture)).with(el("p").class("turn-at number").text_live(
        move || {
            made.with(|made| match (&made.says, editing.chosen.get()) {
                (Some(says), _) => says.clone(),
                (None, Some(number)) => tr!("Corner {} chosen", number + 1),
                (None, None) => tr!("Touch a corner to drag it.").to_owned(),
            })
        },
    ))
}

/// A handle on every corner. One that is moved is moved; all are made anew only where their number or
/// their size is another.
fn handles(shows: RwSignal<Frame>, typed: RwSignal<Vec<Corner>>) -> El {
    let group = svg("g");
    let inside = group.clone();
    let made = RefCell::new((0, Vec::<(Point, El)>::new()));
    crate::dom::follow(move || {
        let radius = shows.get().width / 60;
        let (size, made) = &mut *made.borrow_mut();
        typed.with(|corners| {
            if *size != radius || made.len() != corners.len() {
                *size = radius;
                let circle = |at: &Corner| (at.point, picture::circle("handle", at.point, radius));
                *made = corners.iter().map(circle).collect();
                inside.element().set_text_content(None);
                let _ = inside.clone().with_all(made.iter().map(|(_, circle)| circle.clone()));
                return;
            }
            for ((was, circle), at) in made.iter_mut().zip(corners) {
                if *was != at.point {
                    *was = at.point;
                    let (x, y) = drawn(at.point);
                    let at = [("cx", x.to_string()), ("cy", y.to_string())];
                    let _ =
                        circle.clone().attrs(&at.each_ref().map(|(name, at)| (*name, at.as_str())));
                }
            }
        });
    });
    group
}

/// What the corners make.
#[derive(Default)]
struct Made {
    /// As a path.
    line: String,
    /// Whether they make an outline.
    is_outline: bool,
    /// While a finger is down: where, and what it comes to.
    says: Option<String>,
}

/// The outline with the corner under the finger where the finger is.
fn make(corners: &[Corner], drag: Option<Drag>, editing: Editing, seat: &Seat) -> Made {
    let view = editing.face.view;
    let mut corners = corners.to_vec();
    if let Some(drag) = drag
        && let Some(corner) = corners.get_mut(drag.number)
    {
        corner.point = drag.place;
    }
    let outline = outline_of(&corners, view).ok();
    let line = match &outline {
        Some(outline) => path(outline.points().iter().map(|point| view.turn_over(*point)), true),
        None => path(corners.iter().map(|corner| corner.point), true),
    };
    let says = drag.map(|drag| {
        format!("{}  {}", shown::place(drag.place), comes_to(editing, outline.as_ref(), seat))
    });
    Made { line, is_outline: outline.is_some(), says }
}

/// The chosen corner's handle, moved to where it is; out of sight if there is none.
fn chosen_at(editing: Editing, typed: RwSignal<Vec<Corner>>) -> String {
    let place = match (editing.drag.get(), editing.chosen.get()) {
        (Some(drag), _) => Some(drag.place),
        (None, Some(number)) => typed.with(|corners| corners.get(number).map(|at| at.point)),
        (None, None) => None,
    };
    place.map_or_else(
        || "scale(0)".to_owned(),
        |place| {
            let (x, y) = drawn(place);
            format!("translate({x} {y})")
        },
    )
}

/// What the outline comes to while the finger moves.
fn comes_to(editing: Editing, outline: Option<&Outline>, seat: &Seat) -> String {
    let Some(outline) = outline else {
        return tr!("makes no outline here: edges cross, or a corner has no room").to_owned();
    };
    match seat.port(outline) {
        Ok(port) => {
            let top = editing.face.view.theta(Angle::default());
            let open = port.open_areas(top).areas()[Chamber::First as usize];
            tr!("area {}, at top {}", shown::area(port.area()).metric, shown::area(open).metric)
        }
        Err(fault) => fault.to_string(),
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
