//! The book: a build's entries, a note, search, and the whole book as one file.

use super::bench::list;
use super::entry_line::entry_line;
use crate::device;
use crate::dom::{El, button, el, follow, link, text};
use crate::draft;
use crate::route::{Route, WorkPlace};
use crate::signal::*;
use crate::state::{App, Notice, app};
use crate::widget::{field, frame, search};
use pitleaf_core::book::file::{self, FileFault};
use pitleaf_core::book::{Book, Fact, coming, csv};
use pitleaf_translated::tr;
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{Event, HtmlInputElement};

/// How many lines are drawn at first.
const PAGE: usize = 10;

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
                tr!("a note").to_owned(),
                draft::emptied(note),
            );
        }
    };
    let send = text("button", "button action", tr!("Write down"))
        .attr("type", "submit")
        .disabled(move || note.with(|note| note.trim().is_empty()));
    let form = el("form")
        .class("form inline")
        .on_submit(save)
        .with(field(tr!("Note"), tr!("what you want to remember"), note))
        .with(send);
    let choose = el("input")
        .class("unseen")
        .attrs(&[("type", "file"), ("accept", ".json,application/json")])
        .on("change", move |event| import(app, &event));
    let page = el("main")
        .class("page")
        .with(form)
        .with(search(tr!("Search the book"), tr!("Search the book"), query))
        .live(move || entries(app, &query.get(), most))
        .with(text("h2", "", tr!("Carry it away")))
        .with(
            el("div")
                .class("pair")
                .with(button("plate-link", tr!("Save as a file"), move || export(app)))
                .with(text("label", "plate-link", tr!("Take in a file")).with(choose)),
        )
        .with(button("quiet", tr!("Readings as a table for a spreadsheet"), move || table(app)))
        .live(move || aside(app))
        .with(text("h2", "", tr!("The build")))
        .with(
            el("div")
                .class("pair")
                .with(
                    link("plate-link", &Route::Work(WorkPlace::Sheet).hash())
                        .text(tr!("Build sheet")),
                )
                .with(
                    link("plate-link", &Route::Work(WorkPlace::SignOff).hash())
                        .text(tr!("Sign off")),
                ),
        );
    let under = move || {
        let name =
            app.opening().map_or_else(|| tr!("no build open").to_owned(), |opening| opening.0);
        tr!("{name} · {} entries in all", app.book.with(Book::len))
    };
    frame(|| tr!("Book").to_owned(), under, false, page)
}

fn entries(app: App, query: &str, most: RwSignal<usize>) -> Vec<El> {
    let shown = most.get();
    let found: Vec<_> = app.build().map_or_else(Vec::new, |build| {
        app.sheet.with(|sheet| {
            app.book.with(|book| {
                let lines = book
                    .lines(&build)
                    .rev()
                    // Where the work was left says nothing of the engine.
                    .filter(|line| !line.entry.fact.is_bookmark())
                    .filter(|line| {
                        query.is_empty() || book.words(line.entry, sheet).answers(query)
                    });
                lines.take(shown).map(|line| line.entry.id.clone()).collect()
            })
        })
    });
    if found.is_empty() {
        return vec![text("p", "plain", tr!("Nothing written here yet."))];
    }
    let more = found.len() >= shown;
    let mut lines = vec![list("entries", tr!("Entries"), found.into_iter().map(entry_line))];
    if more {
        lines.push(button("quiet", tr!("Older entries"), move || {
            most.update(|most| *most += PAGE * 4)
        }));
    }
    lines
}

/// A file's name with the moment in it.
fn named(kind: &str, ending: &str) -> String {
    format!("pitleaf-{kind}-{}.{ending}", device::moment(device::now()).replace([' ', ':'], "-"))
}

fn export(app: App) {
    let text = app.book.with_untracked(file::write);
    spawn_local(async move {
        let name = named("book", "json");
        match device::hand_over(&name, "application/json", &text).await {
            Ok(()) => {
                let count = app.book.with_untracked(Book::len);
                app.set(|settings| settings.carried = Some((device::now(), count)));
                app.notice.set(Some(Notice::Said(tr!("The book went out as {name}."))));
            }
            Err(words) => app.wrong(&tr!("No file was made: {words}. Try again.")),
        }
    });
}

fn table(app: App) {
    let text = app.book.with_untracked(csv::write);
    let name = named("readings", "csv");
    match device::save_file(&name, "text/csv", &text) {
        Ok(()) => {
            app.notice.set(Some(Notice::Said(tr!("The readings are in your downloads as {name}."))))
        }
        Err(words) => app.wrong(&tr!("No file was made: {words}. Try again.")),
    }
}

fn import(app: App, event: &Event) {
    read_file(
        app,
        event,
        file::MOST,
        &FileFault::TooLarge.to_string(),
        move |text| match file::read(text) {
            Ok(entries) => {
                app.coming.set(Some(app.book.with_untracked(|book| coming(book, entries))));
                app.go(&Route::TakeIn);
            }
            Err(fault) => app.wrong(&fault.to_string()),
        },
    );
}

/// Reads the chosen file and hands its text on; one that is too large says so.
pub(super) fn read_file(
    app: App,
    event: &Event,
    most: usize,
    too_large: &str,
    then: impl FnOnce(&str) + 'static,
) {
    fn boxed(app: App, event: &Event, most: usize, too_large: String, then: Box<dyn FnOnce(&str)>) {
        let input = event.target().and_then(|target| target.dyn_into::<HtmlInputElement>().ok());
        let Some((input, chosen)) =
            input.and_then(|input| Some((input.clone(), input.files()?.get(0)?)))
        else {
            return;
        };
        spawn_local(async move {
            // Asked before it is read: a huge file would fill the memory for nothing.
            if chosen.size() > most as f64 {
                app.wrong(&too_large);
            } else {
                let text = JsFuture::from(chosen.text())
                    .await
                    .ok()
                    .and_then(|text| text.as_string())
                    .unwrap_or_default();
                then(&text);
            }
            // The same file can then be chosen again.
            input.set_value("");
        });
    }
    boxed(app, event, most, too_large.to_owned(), Box::new(then));
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
        vec![text("h2", "", tr!("Kept aside")), list("rows", tr!("Kept aside"), lines)]
    })
}
