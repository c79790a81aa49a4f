//! The way to the app in another language: a folder of its own, over the same book.

use crate::dom::{El, el, link, listen, text};
use crate::route::Route;
use crate::signal::*;
use pitleaf_core::language::OTHER;
use pitleaf_translated::tr;

/// A link to a screen in the other language. The start script follows it, if that is here or can be fetched.
pub fn other_language(class: &str, to: &Route) -> El {
    let (tag, folder, name) = OTHER;
    link(class, &format!("{folder}{}", to.hash()))
        .attrs(&[("hreflang", tag), ("lang", tag)])
        .text(name)
}

/// What is said when it is not here and can't be fetched.
pub fn language_missing() -> El {
    let is_missing = RwSignal::new(false);
    listen("pitleaf-language-unavailable", move |_| is_missing.set(true));
    el("div").attr("role", "status").live(move || {
        let words = tr!("The other language is not on this phone yet. It is fetched once, with a network; from then on it works without.");
        is_missing.get().then(|| text("p", "plain", words)).into_iter().collect()
    })
}
