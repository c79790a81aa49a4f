//! One entry, and every value its subject ever had.

use super::entry_line::EntryLine;
use crate::device;
use crate::state::app;
use crate::widget::Frame;
use leptos::prelude::*;
use pitleaf_core::book::{EntryId, Fact};

/// An entry with its history; withdraw it, or let it hold again.
#[component]
pub fn EntryScreen(
    /// The entry.
    id: EntryId,
) -> impl IntoView {
    let app = app();
    let shown = Memo::new({
        let id = id.clone();
        move |_| {
            app.book.with(|book| {
                let entry = book.entry(&id)?;
                let words = app.sheet.with(|sheet| entry.words(sheet));
                let history = entry.fact.subject().map(|subject| {
                    book.history(&entry.build, &subject).rev().map(|line| line.entry.id.clone()).collect::<Vec<_>>()
                });
                let about_entry = matches!(entry.fact, Fact::Withdrawn { .. } | Fact::Restored { .. });
                Some((words, device::moment(entry.at), book.is_withdrawn(&id), history.unwrap_or_default(), about_entry))
            })
        }
    });
    let title = Signal::derive(move || shown.with(|shown| shown.as_ref().map_or_else(|| "No such entry".to_owned(), |shown| shown.0.about.clone())));
    let act = move || {
        let id = id.clone();
        shown.get().filter(|shown| !shown.4).map(|(_, _, withdrawn, ..)| {
            let press = move |_| if withdrawn { app.restore(&id) } else { app.withdraw(&id) };
            view! { <button type="button" class="button" on:click=press>{if withdrawn { "Let it hold again" } else { "Withdraw" }}</button> }
        })
    };
    view! {
        <Frame title=title under="An entry and its history" back=true>
            <main class="page">
                {move || shown.get().map(|(words, at, withdrawn, ..)| view! {
                    <p class="entry-figure" class:withdrawn=withdrawn>{words.says}</p>
                    <p class="dim">{if withdrawn { format!("Written {at}. Withdrawn: it no longer counts, and stays in the book.") } else { format!("Written {at}.") }}</p>
                })}
                {act}
                {move || shown.get().filter(|shown| shown.3.len() > 1).map(|(_, _, _, history, _)| view! {
                    <h2>"Every value it had, the latest first"</h2>
                    <ul class="entries">{history.into_iter().map(|id| view! { <li><EntryLine id=id/></li> }).collect_view()}</ul>
                })}
            </main>
        </Frame>
    }
}
