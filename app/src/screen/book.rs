//! The book: a build's entries, a note, search, and the whole book as one file.

use super::entry_line::EntryLine;
use crate::device;
use crate::draft;
use crate::route::Route;
use crate::state::{Notice, app};
use crate::widget::Frame;
use leptos::prelude::*;
use pitleaf_core::book::{Fact, file};
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::{JsFuture, spawn_local};

/// How many lines are drawn at first.
const PAGE: usize = 50;

/// The build's pages.
#[component]
pub fn BookScreen() -> impl IntoView {
    let app = app();
    let query = RwSignal::new(String::new());
    let shown = RwSignal::new(PAGE);
    let hash = Route::Book.hash();
    let note = RwSignal::new(draft::at(&hash).map(|draft| draft.text).unwrap_or_default());
    Effect::new(move |_| draft::put(&hash, &note.get(), None));
    let found = Memo::new(move |_| {
        let Some(build) = app.build() else { return Vec::new() };
        let query = query.get().to_lowercase();
        let most = shown.get();
        app.sheet.with(|sheet| {
            app.book.with(|book| {
                let answers = |line: &pitleaf_core::book::Line<'_>| {
                    let words = line.entry.words(sheet);
                    words.about.to_lowercase().contains(&query) || words.says.to_lowercase().contains(&query)
                };
                book.lines(&build).rev().filter(|line| query.is_empty() || answers(line)).take(most).map(|line| line.entry.id.clone()).collect::<Vec<_>>()
            })
        })
    });
    let save = move |event: leptos::ev::SubmitEvent| {
        event.prevent_default();
        let words = note.get_untracked().trim().to_owned();
        if !words.is_empty() {
            app.write(vec![Fact::Note { about: String::new(), words }], "a note".to_owned(), move || note.set(String::new()));
        }
    };
    let export = move |_| {
        let text = app.book.with_untracked(file::write);
        let name = format!("pitleaf-book-{}.json", device::moment(device::now()).replace([' ', ':'], "-"));
        match text.map_err(|error| error.to_string()).and_then(|text| {
            device::save_file(&name, "application/json", &text).map_err(|error| format!("{error:?}"))
        }) {
            Ok(()) => app.notice.set(Some(Notice::Said(format!("The book is in your downloads as {name}.")))),
            Err(words) => app.notice.set(Some(Notice::Wrong(format!("No file was made: {words}")))),
        }
    };
    let import = move |event: leptos::ev::Event| {
        let Some(input) = event.target().and_then(|target| target.dyn_into::<web_sys::HtmlInputElement>().ok()) else { return };
        let Some(chosen) = input.files().and_then(|files| files.get(0)) else { return };
        input.set_value("");
        spawn_local(async move {
            let text = JsFuture::from(chosen.text()).await.ok().and_then(|text| text.as_string()).unwrap_or_default();
            match file::read(&text) {
                Ok(entries) => app.take_in(entries),
                Err(fault) => app.notice.set(Some(Notice::Wrong(fault.to_string()))),
            }
        });
    };
    let under = Signal::derive(move || {
        let count = app.book.with(pitleaf_core::book::Book::len);
        let name = app.opening().map_or_else(|| "no build open".to_owned(), |opening| opening.0);
        format!("{name} · {count} entries in all")
    });
    view! {
        <Frame title="Book" under=under>
            <main class="page">
                <form class="form inline" on:submit=save>
                    <label><span>"Note"</span><input type="text" autocomplete="off" placeholder="what you want to remember" prop:value=note on:input=move |event| note.set(event_target_value(&event))/></label>
                    <button type="submit" class="button action" disabled=move || note.with(|note| note.trim().is_empty())>"Write down"</button>
                </form>
                <label class="search">
                    <span class="unseen">"Search the book"</span>
                    <input type="search" placeholder="Search the book" autocomplete="off" prop:value=query on:input=move |event| query.set(event_target_value(&event))/>
                </label>
                <ul class="entries" aria-label="Entries">
                    <For each=move || found.get() key=|id| id.clone() let(id)><li><EntryLine id=id/></li></For>
                </ul>
                {move || found.with(Vec::is_empty).then(|| view! { <p class="plain">"Nothing written here yet."</p> })}
                {move || (found.with(Vec::len) >= shown.get()).then(|| view! { <button type="button" class="quiet" on:click=move |_| shown.update(|shown| *shown += PAGE * 4)>"Older entries"</button> })}
                <h2>"Carry it away"</h2>
                <div class="pair">
                    <button type="button" class="plate-link" on:click=export>"Save as a file"</button>
                    <label class="plate-link">"Take in a file"<input class="unseen" type="file" accept=".json,application/json" on:change=import/></label>
                </div>
                <Aside/>
            </main>
        </Frame>
    }
}

/// Records that could not be read: kept, named, never overwritten.
#[component]
fn Aside() -> impl IntoView {
    let app = app();
    move || {
        let aside = app.aside.get();
        (!aside.is_empty()).then(|| view! {
            <h2>"Kept aside"</h2>
            <ul class="plain">{aside.into_iter().map(|aside| view! { <li>{format!("{}: {}", aside.key, aside.why)}</li> }).collect_view()}</ul>
        })
    }
}
