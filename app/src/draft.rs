//! The draft in hand: what is typed and not yet written, kept loosely.

use crate::dom::follow;
use crate::signal::*;
use crate::store::keep;
use pitleaf_core::gather::Gather;
use pitleaf_core::kept;
use pitleaf_core::kept_fields;
use pitleaf_core::quantity::Unit;

/// Under which key it is kept.
pub const KEY: &str = "pitleaf.draft";

/// Under which key what was last looked for is kept: finding leaves the draft of the place it was begun at.
pub const SOUGHT: &str = "pitleaf.sought";

/// What was typed, and where.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Draft {
    /// The place in the app.
    pub hash: String,
    /// The text.
    pub text: String,
    /// The unit set.
    pub unit: Option<Unit>,
}

kept_fields!(Draft { hash, text, unit });

/// The draft of a place, if the last one was made there.
pub fn at(hash: &str) -> Option<Draft> {
    keep::get::<Draft>(KEY).filter(|draft| draft.hash == hash)
}

/// What was typed last and waits to be written, at whatever place.
pub fn waiting() -> Option<Draft> {
    keep::get::<Draft>(KEY).filter(|draft| !draft.text.is_empty())
}

/// Keeps the draft of a place; an empty text lets it go.
pub fn put(hash: &str, text: &str, unit: Option<Unit>) {
    if text.is_empty() {
        if at(hash).is_some() {
            keep::forget(KEY);
        }
    } else {
        keep::set(KEY, &Draft { hash: hash.to_owned(), text: text.to_owned(), unit });
    }
}

/// Keeps a form's texts, beginning with those of its last draft, for as long as they are not what is `known`.
pub fn form(
    hash: String,
    fields: Vec<RwSignal<String>>,
    known: impl Fn() -> Vec<String> + 'static,
) {
    let kept = at(&hash).and_then(|draft| kept::read::<Vec<String>>(&draft.text).ok());
    for (field, text) in fields.iter().zip(kept.unwrap_or_default()) {
        field.set(text);
    }
    follow(move || {
        let texts: Vec<String> = fields.iter().map(|field| field.get()).gather();
        let is_known = texts == known();
        put(&hash, &if is_known { String::new() } else { kept::write(&texts) }, None);
    });
}

/// What empties a field once its text is written; what was typed meanwhile stays.
pub fn emptied(typed: RwSignal<String>) -> impl FnOnce() + 'static {
    let written = typed.get_untracked();
    move || {
        // None when the screen is gone.
        if typed.try_get_untracked() == Some(written) {
            typed.set(String::new());
        }
    }
}
