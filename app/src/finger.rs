//! A finger on a control: until it is lifted, nothing on the page is made anew, and what it does twice in a
//! moment counts once.
//!
//! A browser tells of a click only where the finger comes down on an element and goes up from the same. A
//! control made anew in between, for a record of another tab or for what was typed before, would swallow
//! the touch. And where a touch brings up another control in the same place, the second half of a double tap
//! would press that.

use crate::dom::listen;
use crate::signal::*;
use leptos::prelude::set_timeout;
use std::time::Duration;
use wasm_bindgen::JsCast;
use web_sys::{Element, Event, PointerEvent};

/// What acts by a click. Keys that act when the finger comes down wait for nothing.
const CONTROLS: &str = "a, button:not([data-at-once]), label, summary, .touchable";

/// How long after the finger is lifted a click may still come.
const CLICK: Duration = Duration::from_millis(250);

/// Two touches so close together, in milliseconds and CSS pixels, are one double tap.
const DOUBLE_TAP: (f64, f64) = (400.0, 24.0);

/// Where and when a finger came down, in CSS pixels and on the browser's clock in milliseconds.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Touch {
    id: i32,
    at: f64,
    place: (f64, f64),
}

impl Touch {
    /// Whether another touch is the second half of a double tap with this.
    fn is_doubled_by(self, next: Self) -> bool {
        let (soon, near) = DOUBLE_TAP;
        let apart = (next.place.0 - self.place.0).hypot(next.place.1 - self.place.1);
        next.at - self.at < soon && apart < near
    }
}

/// Whether a finger is down. Copy: only handles.
#[derive(Clone, Copy)]
pub struct Finger {
    /// The finger on a control; none while it is up.
    down: RwSignal<Option<Touch>>,
    lifted: RwSignal<()>,
    /// The last touch, on whatever; none once something was typed since.
    last: RwSignal<Option<Touch>>,
    /// The touch now at work is the second half of a double tap.
    is_second: RwSignal<bool>,
}

impl Finger {
    /// Watches the finger from now on.
    pub fn watch() -> Self {
        let finger = Self {
            down: RwSignal::new(None),
            lifted: RwSignal::new(()),
            last: RwSignal::new(None),
            is_second: RwSignal::new(false),
        };
        listen("pointerdown", move |event| {
            let Some(touch) = touch(&event) else { return };
            let last = finger.last.get_untracked();
            finger.is_second.set(last.is_some_and(|last| last.is_doubled_by(touch)));
            finger.last.set(Some(touch));
            if is_on_control(&event) {
                finger.down.set(Some(touch));
            }
        });
        listen("keydown", move |_| {
            finger.last.set(None);
            finger.is_second.set(false);
        });
        // The window hears of it last, so that what the click changes is drawn with the rest.
        listen("click", move |_| {
            finger.is_second.set(false);
            finger.lift();
        });
        listen("pointercancel", move |event| {
            if finger.is_of_finger(&event) {
                finger.lift();
            }
        });
        listen("pointerup", move |event| {
            if !finger.is_of_finger(&event) {
                return;
            }
            let touch = finger.down.get_untracked();
            let lift = move || {
                if finger.down.get_untracked() == touch {
                    finger.lift();
                }
            };
            set_timeout(lift, CLICK);
        });
        finger
    }

    /// Whether a finger is on a control; who is told so runs again once it is lifted.
    pub fn is_down(self) -> bool {
        let is = self.down.with_untracked(Option::is_some);
        if is {
            self.lifted.track();
        }
        is
    }

    /// Whether the touch now at work is the second half of a double tap.
    pub fn is_second_of_two(self) -> bool {
        self.is_second.get_untracked()
    }

    fn is_of_finger(self, event: &Event) -> bool {
        let id = event.dyn_ref::<PointerEvent>().map(PointerEvent::pointer_id);
        self.down.with_untracked(|down| down.map(|touch| touch.id) == id)
    }

    fn lift(self) {
        if self.down.with_untracked(Option::is_some) {
            self.down.set(None);
            self.lifted.set(());
        }
    }
}

/// The touch of the first finger, or of a mouse's first button.
fn touch(event: &Event) -> Option<Touch> {
    let pointer = event.dyn_ref::<PointerEvent>()?;
    let place = (f64::from(pointer.client_x()), f64::from(pointer.client_y()));
    let touch = Touch { id: pointer.pointer_id(), at: event.time_stamp(), place };
    (pointer.is_primary() && pointer.button() == 0).then_some(touch)
}

fn is_on_control(event: &Event) -> bool {
    let target = event.target().and_then(|target| target.dyn_into::<Element>().ok());
    target.is_some_and(|target| target.closest(CONTROLS).is_ok_and(|on| on.is_some()))
}
