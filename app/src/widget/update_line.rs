//! The offer of a new version, where the notice line stands.

use crate::dom::{El, button, el, text};
use crate::update::version;
use pitleaf_translated::tr;

/// The offer, if there is one to make now.
pub fn update_line() -> Vec<El> {
    let version = version();
    if !version.is_offered() {
        return Vec::new();
    }
    let line = el("div")
        .class("notice")
        .with(text("p", "", tr!("A new version of Pitleaf is here. The book stays as it is.")))
        .with(button("quiet", tr!("Take it"), move || version.take()))
        .with(button("quiet", "×", move || version.leave()).attr("aria-label", tr!("Not now")));
    vec![line]
}
