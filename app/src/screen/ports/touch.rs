//! Where a finger is on a picture.

use crate::dom::El;
use pitleaf_core::ports::picture::Frame;
use pitleaf_core::trochoid::Point;
use std::cell::Cell;
use std::rc::Rc;
use wasm_bindgen::JsCast;
use web_sys::{Element, Event, PointerEvent};

/// What a finger does.
pub(super) enum Touch {
    /// It comes down.
    Down(Point),
    /// It moves.
    Move(Point),
    /// It lifts.
    Up,
}

/// Tells `act` where a finger is on a picture that shows `frame`.
pub(super) fn touched(
    picture: El,
    frame: impl Fn() -> Frame + 'static,
    act: impl Fn(Touch) + 'static,
) -> El {
    let element = picture.element().clone();
    let act = Rc::new(act);
    // Where the picture is on the screen while a finger is down: asking again at every move would
    // have the page laid out anew each time.
    let down = Rc::new(Cell::new(None::<Bounds>));
    let handle = {
        let (frame, act, down) = (Rc::new(frame), act.clone(), down.clone());
        move |starts: bool| {
            let (element, frame, act, down) =
                (element.clone(), frame.clone(), act.clone(), down.clone());
            move |event: Event| {
                let Some(event) = event.dyn_ref::<PointerEvent>() else { return };
                if starts {
                    // Without it the finger may leave the picture; that is no fault.
                    let _ = element.set_pointer_capture(event.pointer_id());
                    down.set(Some(bounds(&element)));
                }
                if let Some(bounds) = down.get() {
                    let place = place(bounds, frame(), event);
                    act(if starts { Touch::Down(place) } else { Touch::Move(place) });
                }
            }
        }
    };
    let (start, go_on) = (handle(true), handle(false));
    let end = move |_: Event| {
        if down.take().is_some() {
            act(Touch::Up);
        }
    };
    picture
        .on("pointerdown", start)
        .on("pointermove", go_on)
        .on("pointerup", end.clone())
        .on("pointercancel", end)
}

/// Left, top, width and height on the screen.
type Bounds = [f64; 4];

fn bounds(element: &Element) -> Bounds {
    let bounds = element.get_bounding_client_rect();
    [bounds.left(), bounds.top(), bounds.width(), bounds.height()]
}

fn place([left, top, width, height]: Bounds, frame: Frame, event: &PointerEvent) -> Point {
    let share = |at: i32, start: f64, size: f64| (f64::from(at) - start) / size.max(1.0);
    frame.place(share(event.client_x(), left, width), share(event.client_y(), top, height))
}
