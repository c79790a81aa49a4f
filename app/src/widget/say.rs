//! Reading out, for who has it switched on.

use crate::device;
use crate::dom::{El, button};
use crate::state::App;
use pitleaf_translated::tr;

impl App {
    /// Reads words out, if that is switched on.
    pub fn read_out(self, words: &str) {
        if self.settings.with_untracked(|settings| settings.aloud) {
            device::say(words);
        }
    }
}

/// The way to hear it again, where reading out is switched on.
pub fn say_button(app: App, words: impl Fn() -> Option<String> + 'static) -> Option<El> {
    app.settings.with_untracked(|settings| settings.aloud).then(|| {
        button("quiet", tr!("Say it"), move || {
            if let Some(words) = words() {
                device::say(&words);
            }
        })
    })
}
