//! News of the version: that everything is on the device, and that a new version waits.
//!
//! The start script tells both on `<html>` and by an event (app/build/templates/start.js). A new version
//! is taken only when asked for, and not offered while something typed would be cut short.

use crate::dom::listen;
use crate::signal::*;
use web_sys::CustomEvent;

/// The news. Copy: only handles.
#[derive(Clone, Copy)]
pub struct Version {
    /// Everything is on the device: it works without a network.
    pub is_on_device: RwSignal<bool>,
    waits: RwSignal<bool>,
    typing: RwSignal<bool>,
}

/// The news around this screen.
pub fn version() -> Version {
    expect_context::<Version>()
}

impl Version {
    /// Listens for news from now on, and takes in what was told before.
    pub fn watch() -> Self {
        let version = Self {
            is_on_device: RwSignal::new(told("data-offline")),
            waits: RwSignal::new(told("data-update")),
            typing: RwSignal::new(false),
        };
        listen("pitleaf-offline-ready", move |_| version.is_on_device.set(true));
        listen("pitleaf-update-ready", move |_| {
            version.waits.set(true);
            version.look();
        });
        // What can begin or end typing; the keys on the screen send a click as well.
        for event in ["input", "click", "hashchange"] {
            listen(event, move |_| version.look());
        }
        version
    }

    /// Whether to offer the new version now.
    pub fn is_offered(self) -> bool {
        self.waits.get() && !self.typing.get()
    }

    /// Takes the new version: the page loads again as that.
    pub fn take(self) {
        if let Ok(ask) = CustomEvent::new("pitleaf-take-update") {
            // Nobody can refuse this event.
            let _ = window().dispatch_event(&ask);
        }
    }

    /// Not now; the next start of the app offers it again.
    pub fn leave(self) {
        self.waits.set(false);
    }

    /// Looks, once the screen has settled, whether a field holds a text.
    fn look(self) {
        const FIELDS: &str = "main input:not([type=checkbox], [type=radio], [type=range], [type=file]):not(:placeholder-shown), main textarea:not(:placeholder-shown)";
        if self.waits.get_untracked() {
            request_animation_frame(move || {
                self.typing
                    .set(document().query_selector(FIELDS).is_ok_and(|field| field.is_some()));
            });
        }
    }
}

fn told(topic: &str) -> bool {
    let root = document().document_element();
    root.and_then(|root| root.get_attribute(topic)).as_deref() == Some("ready")
}
