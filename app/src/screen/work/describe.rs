//! The customer, their words, and what the engine is.

use super::rows;
use crate::dom::{button, el, link, text};
use crate::draft;
use crate::route::{PortsPlace, Route, WorkPlace};
use crate::signal::*;
use crate::state::App;
use crate::widget::{field, frame};
use pitleaf_core::book::{BuildId, Fact};
use pitleaf_core::route::{RouteFact, Topic, own_rows, said};
use pitleaf_translated::tr;

use crate::dom::El;

/// The screen.
pub fn screen(app: App) -> Vec<El> {
    let known = move || {
        Topic::ASKED.map(|topic| {
            let of = |build: &BuildId| app.book.with(|book| said(book, build, topic).to_owned());
            app.build().as_ref().map(of).unwrap_or_default()
        })
    };
    let texts = untrack(known).map(RwSignal::new);
    let hash = Route::Work(WorkPlace::Describe).hash();
    draft::form(hash, texts.to_vec(), move || known().to_vec());
    let save = move || {
        let Some(build) = untrack(|| app.build()) else { return };
        let topics = Topic::ASKED.into_iter().zip(texts);
        let facts: Vec<Fact> = app.book.with_untracked(|book| {
            let changed =
                topics.map(|(topic, typed)| (topic, typed.get_untracked().trim().to_owned()));
            changed
                .filter(|(topic, words)| said(book, &build, *topic) != words)
                .map(|(topic, words)| Fact::Route(RouteFact::Said { topic, words }))
                .collect()
        });
        if !facts.is_empty() {
            app.write(facts, tr!("what was said of the build").to_owned(), || {});
        }
    };
    let [customer, wish, engine] = texts;
    let body = el("main")
        .class("page")
        .with(
            el("div")
                .class("form")
                .with(field(Topic::Customer.name(), tr!("whose engine it is"), customer))
                .with(rows(Topic::Wish.name(), wish))
                .with(rows(Topic::Engine.name(), engine))
                .with(button("button action", tr!("Write down"), save)),
        )
        .live(move || set_up(app));
    frame(|| tr!("Description").to_owned(), move || app.build_name(), true, body)
}

/// What the engine is by the book.
fn set_up(app: App) -> Vec<El> {
    let Some((_, kind, rotors, _)) = app.opening() else { return super::no_build(app) };
    let own = app.build().map_or(0, |build| app.book.with(|book| own_rows(book, &build)));
    vec![
        text("h2", "", tr!("Set-up")),
        text(
            "p",
            "plain",
            &tr!("{}, rotors: {rotors}. Limits: the starter sheet, own rows: {own}.", kind.name()),
        ),
        link("plate-link", &Route::Ports(PortsPlace::Engine).hash())
            .text(tr!("The engine’s measures")),
    ]
}
