//! A finger on a control: until it is lifted, nothing on the page is made anew.
//!
//! A browser tells of a click only where the finger comes down on an element and goes up from the same. A
//! control made anew in between, for a record of another tab or for what was typed before, would swallow
//! the touch.

use crate::dom::listen;
use crate::signal::*;
use leptos::prelude::set_timeout;
use std::time::Duration;
use wasm_bindgen::JsCast;
use web_sys::{Element, Event, PointerEvent};

/// What acts by a click. The figure keys act when the finger comes down, and wait for nothing.
const CONTROLS: &str = "a, button:not(.key), label, summary";

/// How long after the finger is lifted a click may still come.
const CLICK: Duration = Duration::from_millis(250);

/// Whether a finger is down. Copy: only handles.
#[derive(Clone, Copy)]
pub struct Finger {
    /// When the finger came down, on the browser's clock; none while it is up.
    down: RwSignal<Option<f64>>,
    lifted: RwSignal<()>,
}

impl Finger {
    /// Watches the finger from now on.
    pub fn watch() -> Self {
        let finger = Self { down: RwSignal::new(None), lifted: RwSignal::new(()) };
        listen("pointerdown", move |event| {
            if is_on_control(&event) {
                finger.down.set(Some(event.time_stamp()));
            }
        });
        // The window hears of it last, so that what the click changes is drawn with the rest.
        listen("click", move |_| finger.lift());
        listen("pointercancel", move |_| finger.lift());
        listen("pointerup", move |_| {
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

    fn lift(self) {
        if self.down.with_untracked(Option::is_some) {
            self.down.set(None);
            self.lifted.set(());
        }
    }
}

fn is_on_control(event: &Event) -> bool {
    let is_first = event
        .dyn_ref::<PointerEvent>()
        .is_some_and(|pointer| pointer.is_primary() && pointer.button() == 0);
    let target = event.target().and_then(|target| target.dyn_into::<Element>().ok());
    is_first && target.is_some_and(|target| target.closest(CONTROLS).is_ok_and(|on| on.is_some()))
}
