//! Word to this page's other tabs: each tells the others what it has written.

use wasm_bindgen::prelude::*;
use web_sys::{BroadcastChannel, MessageEvent};

/// The line between tabs; silent where the browser has none.
#[derive(Clone)]
pub struct Channel(Option<BroadcastChannel>);

impl Channel {
    /// Opens the line; `heard` gets each record another tab has written.
    pub fn open(heard: impl Fn(String) + 'static) -> Self {
        let channel = BroadcastChannel::new("pitleaf").ok();
        if let Some(channel) = &channel {
            let hear = Closure::<dyn FnMut(MessageEvent)>::new(move |event: MessageEvent| {
                if let Some(record) = event.data().as_string() {
                    heard(record);
                }
            });
            channel.set_onmessage(Some(hear.as_ref().unchecked_ref()));
            hear.forget();
        }
        Self(channel)
    }

    /// Tells the other tabs of a record that is on the disk.
    pub fn tell(&self, record: &str) {
        if let Some(channel) = &self.0 {
            // A tab that doesn't hear it reads the record when it opens next.
            let _ = channel.post_message(&record.into());
        }
    }
}
