//! The offer of a new version, where the notice line stands.

use crate::dom::{El, button, el, text};
use crate::update::version;

/// The offer, if there is one to make now.
pub fn update_line() -> Vec<El> {
    let version = version();
    if !version.is_offered() {
        return Vec::new();
    }
    let line = el("div")
        .class("notice")
        .with(text("p", "", "A new version of Pitleaf is here. The book stays as it is."))
        .with(button("quiet", "Take it", move || version.take()))
        .with(button("quiet", "×", move || version.leave()).attr("aria-label", "Not now"));
    vec![line]
}
