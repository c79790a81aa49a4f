//! The book: a build's entries, a note, search, and the whole book as one file.

use super::bench::list;
use super::entry_line::entry_line;
use crate::device;
use crate::dom::{El, button, el, follow, text};
use crate::draft;
use crate::route::Route;
use crate::state::{App, Notice, app};
use crate::widget::{field, frame, search};
use leptos::prelude::*;
use pitleaf_core::book::{Book, Fact, file};
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{Event, HtmlInputElement};

/// How many lines are drawn at first.
const PAGE: usize = 50;

/// The build's pages.
pub fn screen() -> Vec<El> {
    let app = app();
    let query = RwSignal::new(String::new());
    let most = RwSignal::new(PAGE);
    let hash = Route::Book.hash();
    let note = RwSignal::new(draft::at(&hash).map(|draft| draft.text).unwrap_or_default());
    follow(move || draft::put(&hash, &note.get(), None));
    let save = move || {
        let words = note.get_untracked().trim().to_owned();
        if !words.is_empty() {
            app.write(
                vec![Fact::Note { about: String::new(), words }],
                "a note".to_owned(),
                move || note.set(String::new()),
            );
        }
    };
    let send = text("button", "button action", "Write down")
        .attr("type", "submit")
        .disabled(move || note.with(|note| note.trim().is_empty()));
    let form = el("form")
        .class("form inline")
        .on_submit(save)
        .with(field("Note", "what you want to remember", note))
        .with(send);
    let choose = el("input")
        .class("unseen")
        .attrs(&[("type", "file"), ("accept", ".json,application/json")])
        .on("change", move |event| import(app, &event));
    let page = el("main")
        .class("page")
        .with(form)
        .with(search("Search the book", "Search the book", query))
        .live(move || entries(app, &query.get(), most))
        .with(text("h2", "", "Carry it away"))
        .with(
            el("div")
                .class("pair")
                .with(button("plate-link", "Save as a file", move || export(app)))
                .with(text("label", "plate-link", "Take in a file").with(choose)),
        )
        .live(move || aside(app));
    let under = move || {
        let name = app.opening().map_or_else(|| "no build open".to_owned(), |opening| opening.0);
        format!("{name} · {} entries in all", app.book.with(Book::len))
    };
    frame(|| "Book".to_owned(), under, false, page)
}

fn entries(app: App, query: &str, most: RwSignal<usize>) -> Vec<El> {
    let shown = most.get();
    let found: Vec<_> = app.build().map_or_else(Vec::new, |build| {
        app.sheet.with(|sheet| {
            app.book.with(|book| {
                let lines = book
                    .lines(&build)
                    .rev()
                    .filter(|line| query.is_empty() || line.entry.words(sheet).answers(query));
                lines.take(shown).map(|line| line.entry.id.clone()).collect()
            })
        })
    });
    if found.is_empty() {
        return vec![text("p", "plain", "Nothing written here yet.")];
    }
    let more = found.len() >= shown;
    let mut lines = vec![list("entries", "Entries", found.into_iter().map(entry_line))];
    if more {
        lines.push(button("quiet", "Older entries", move || most.update(|most| *most += PAGE * 4)));
    }
    lines
}

fn export(app: App) {
    let name =
        format!("pitleaf-book-{}.json", device::moment(device::now()).replace([' ', ':'], "-"));
    let saved = app
        .book
        .with_untracked(file::write)
        .map_err(|error| error.to_string())
        .and_then(|text| device::save_file(&name, "application/json", &text));
    app.notice.set(Some(match saved {
        Ok(()) => Notice::Said(format!("The book is in your downloads as {name}.")),
        Err(words) => Notice::Wrong(format!("No file was made: {words}. Try again.")),
    }));
}

fn import(app: App, event: &Event) {
    let input = event.target().and_then(|target| target.dyn_into::<HtmlInputElement>().ok());
    let Some((input, chosen)) =
        input.and_then(|input| Some((input.clone(), input.files()?.get(0)?)))
    else {
        return;
    };
    // The same file can then be chosen again.
    input.set_value("");
    spawn_local(async move {
        let text = JsFuture::from(chosen.text())
            .await
            .ok()
            .and_then(|text| text.as_string())
            .unwrap_or_default();
        match file::read(&text) {
            Ok(entries) => app.take_in(entries),
            Err(fault) => app.notice.set(Some(Notice::Wrong(fault.to_string()))),
        }
    });
}

/// Records that could not be read: kept, named, never overwritten.
fn aside(app: App) -> Vec<El> {
    app.aside.with(|aside| {
        if aside.is_empty() {
            return Vec::new();
        }
        let lines = aside
            .iter()
            .map(|aside| text("span", "plain", &format!("{}: {}", aside.key, aside.why)));
        vec![text("h2", "", "Kept aside"), list("rows", "Kept aside", lines)]
    })
}
