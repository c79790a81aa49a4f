//! What is typed and not yet written, kept loosely.
//!
//! A single reading is soon typed anew, and an old one must not stand where a new one is wanted: of those
//! only the last is kept. Readings of a whole survey, an outline or a sentence stay until they are written.

use crate::dom::follow;
use crate::route::{PortsPlace, Route};
use crate::signal::*;
use crate::state::App;
use crate::store::keep;
use pitleaf_core::kept;
use pitleaf_core::kept_fields;
use pitleaf_core::quantity::Unit;
use std::cell::Cell;

/// Under which key the last text is kept that does not last, or that waits for a build.
const LAST: &str = "pitleaf.draft";

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
    /// The build it was typed for; none where none was open, or where it is of no engine.
    pub build: Option<String>,
}

kept_fields!(Draft { hash, text, unit, build: left_out });

thread_local! {
    /// Whose build in hand drafts are of.
    static APP: Cell<Option<App>> = const { Cell::new(None) };
}

/// From now on, drafts are of this app's build in hand.
pub fn belong_to(app: App) {
    APP.set(Some(app));
}

/// The build in hand; none while none is open, or the book is not.
fn in_hand() -> Option<String> {
    let build = untrack(|| APP.get()?.build())?;
    Some(build.0.into())
}

impl Draft {
    /// Whether it may be shown: what was typed for one engine does not belong to another.
    pub fn is_of(&self, build: Option<&str>) -> bool {
        self.build.is_none() || build.is_none() || self.build.as_deref() == build
    }
}

/// The draft of a place, for the build in hand.
pub fn at(hash: &str) -> Option<Draft> {
    let build = in_hand();
    let is_here = |draft: &Draft| draft.hash == hash && draft.is_of(build.as_deref());
    let own = |build: &Option<String>| keep::get::<Draft>(&own_key(hash, build));
    let last = keep::get::<Draft>(LAST).filter(is_here);
    last.or_else(|| own(&build)).or_else(|| own(&None))
}

/// What was typed last, where no build was open and it waits for one.
pub fn waiting() -> Option<Draft> {
    let waits = |draft: &Draft| draft.build.is_none() && is_of_an_engine(&Route::read(&draft.hash));
    keep::get::<Draft>(LAST).filter(waits)
}

/// Keeps the draft of a place; an empty text lets it go.
pub fn put(hash: &str, text: &str, unit: Option<Unit>) {
    let place = Route::read(hash);
    let before = at(hash);
    if let Some(before) = &before {
        if keep::get::<Draft>(LAST).as_ref() == Some(before) {
            keep::forget(LAST);
        }
        keep::forget(&own_key(hash, &before.build));
    }
    if text.is_empty() {
        return;
    }
    // Before the book is open, nothing is known better than what stands there.
    let build = in_hand().or_else(|| before.and_then(|draft| draft.build));
    let build = build.filter(|_| is_of_an_engine(&place));
    let draft = Draft { hash: hash.to_owned(), text: text.to_owned(), unit, build };
    let lasts = lasts(&place);
    if lasts {
        keep::set(&own_key(hash, &draft.build), &draft);
    }
    // What lasts anyway does not push away a reading typed elsewhere, unless it waits for a build.
    if !lasts || (draft.build.is_none() && is_of_an_engine(&place)) {
        keep::set(LAST, &draft);
    }
}

fn is_of_an_engine(place: &Route) -> bool {
    !matches!(place, Route::Convert | Route::Gauges | Route::Leaves)
}

/// Whether what is typed at a place stays until it is written.
fn lasts(place: &Route) -> bool {
    use PortsPlace::{Engine, Outline, Template};
    matches!(
        place,
        Route::Convert
            | Route::Gauges
            | Route::Leaves
            | Route::OwnLimit(_)
            | Route::Survey(..)
            | Route::Mark(_)
            | Route::Ports(Engine | Outline(_) | Template(_))
            | Route::Work(_)
            | Route::Book
    )
}

/// The key of a draft that lasts: one for each place of each build.
fn own_key(hash: &str, build: &Option<String>) -> String {
    format!("{LAST} {} {hash}", build.as_deref().unwrap_or_default())
}

/// Keeps a form's texts, beginning with those of its last draft, for as long as they are not what is `known`.
pub fn form(
    hash: String,
    fields: Vec<RwSignal<String>>,
    known: impl Fn() -> Vec<String> + 'static,
) {
    form_in(hash, None, fields, known);
}

/// The same of a form whose figures are typed in a unit that is set.
pub fn form_in(
    hash: String,
    unit: Option<RwSignal<Unit>>,
    fields: Vec<RwSignal<String>>,
    known: impl Fn() -> Vec<String> + 'static,
) {
    let draft = at(&hash);
    if let (Some(unit), Some(kept)) = (unit, draft.as_ref().and_then(|draft| draft.unit)) {
        unit.set(kept);
    }
    let kept = draft.and_then(|draft| kept::read::<Vec<String>>(&draft.text).ok());
    for (field, text) in fields.iter().zip(kept.unwrap_or_default()) {
        field.set(text);
    }
    follow(move || {
        let texts: Vec<String> = fields.iter().map(|field| field.get()).collect();
        let is_known = texts == known();
        let text = if is_known { String::new() } else { kept::write(&texts) };
        put(&hash, &text, unit.map(RwSignal::get));
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

/// The same for several fields that are written together.
pub fn all_emptied<const N: usize>(fields: [RwSignal<String>; N]) -> impl FnOnce() + 'static {
    let each = fields.map(emptied);
    move || each.into_iter().for_each(|empty| empty())
}
