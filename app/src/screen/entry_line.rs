//! An entry as one line of a list.

use crate::device;
use crate::route::Route;
use crate::state::app;
use crate::widget::CallMark;
use leptos::prelude::*;
use pitleaf_core::book::EntryId;

/// What an entry is about, what it says, its verdict and when; struck through when withdrawn.
#[component]
pub(super) fn EntryLine(
    /// The entry.
    id: EntryId,
) -> impl IntoView {
    let app = app();
    let href = Route::Entry(id.clone()).hash();
    let line = Memo::new(move |_| {
        app.book.with(|book| {
            let entry = book.entry(&id)?;
            Some((app.sheet.with(|sheet| entry.words(sheet)), book.is_withdrawn(&id), entry.at))
        })
    });
    move || {
        line.get().map(|(words, withdrawn, at)| {
            view! {
                <a class="entry" class:withdrawn=withdrawn href=href.clone()>
                    {words.call.map(|call| view! { <CallMark call=Some(call)/> })}
                    <span class="entry-words"><b>{words.says}</b><span class="dim">{words.about}</span></span>
                    <span class="entry-when">
                        {withdrawn.then(|| view! { <span class="kind">"withdrawn"</span> })}
                        {words.call.filter(|_| !withdrawn).map(|call| view! { <span class="kind">{call.word()}</span> })}
                        <span class="dim">{device::moment(at)}</span>
                    </span>
                </a>
            }
        })
    }
}
