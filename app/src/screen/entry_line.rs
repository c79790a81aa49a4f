//! An entry as one line of a list.

use crate::device;
use crate::dom::{El, el, link, text};
use crate::route::Route;
use crate::state::app;
use crate::widget::call_mark;
use pitleaf_core::book::EntryId;

/// What an entry is about, what it says, its verdict and when; struck through when it no longer counts.
pub(super) fn entry_line(id: EntryId) -> El {
    let app = app();
    let known = app.book.with(|book| {
        let entry = book.entry(&id)?;
        Some((app.sheet.with(|sheet| book.words(entry, sheet)), book.fate(&id), entry.at))
    });
    let Some((words, fate, at)) = known else { return el("span") };
    let mut line =
        link(if fate.is_some() { "entry withdrawn" } else { "entry" }, &Route::Entry(id).hash());
    let mut when = el("span").class("entry-when");
    if let Some(call) = words.call {
        line = line.with(call_mark(Some(call)));
    }
    if let Some(fate) = fate {
        when = when.with(text("span", "kind", &fate));
    } else if let Some(call) = words.call {
        when = when.with(text("span", "kind", call.word()));
    }
    let what = el("span").class("entry-words").with(text("b", "", &words.says)).with(text(
        "span",
        "dim",
        &words.about,
    ));
    line.with(what).with(when.with(text("span", "dim", &device::moment(at))))
}
