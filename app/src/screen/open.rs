//! Opening a build.

use super::bench::list;
use crate::dom::{El, button, el, link, text};
use crate::draft::{self, Draft};
use crate::route::{Route, WorkPlace};
use crate::signal::*;
use crate::state::{App, app};
use crate::widget::{field, frame, switch};
use pitleaf_core::book::demo;
use pitleaf_core::limits::BuildKind;
use pitleaf_core::route::builds as builds_of;
use pitleaf_translated::tr;

/// Name, how it breathes, how many rotors; and the builds there are.
pub fn screen() -> Vec<El> {
    let app = app();
    let name = RwSignal::new(String::new());
    let waiting = draft::waiting();
    let kind = RwSignal::new(kind_of(app, waiting.as_ref()));
    let rotors = RwSignal::new(2_u8);
    let open = move || {
        let words = name.get_untracked().trim().to_owned();
        if !words.is_empty() {
            app.open_build(words, kind.get_untracked(), rotors.get_untracked(), false, Vec::new());
        }
    };
    let kinds =
        [BuildKind::NaturallyAspirated, BuildKind::ForcedInduction].map(|kind| (kind, kind.name()));
    let counts =
        [(1, tr!("1 rotor")), (2, tr!("2 rotors")), (3, tr!("3 rotors")), (4, tr!("4 rotors"))];
    let send = text("button", "button action", tr!("Open"))
        .attr("type", "submit")
        .disabled(move || name.with(|name| name.trim().is_empty()));
    let form = el("form")
        .class("form")
        .on_submit(open)
        .with(field(tr!("Name"), tr!("the customer’s engine"), name))
        .with(switch(
            tr!("How it breathes"),
            &kinds,
            move |choice| kind.get() == choice,
            move |choice| kind.set(choice),
        ))
        .with(switch(
            tr!("Rotors"),
            &counts,
            move |choice| rotors.get() == choice,
            move |choice| rotors.set(choice),
        ))
        .with(send);
    let open_demo = move || {
        app.open_build(demo::NAME.to_owned(), demo::KIND, demo::ROTORS, true, demo::facts())
    };
    let why = waiting.map(|_| {
        text(
            "p",
            "plain",
            tr!("What you typed is kept, but not written yet: it belongs on a build’s pages. Open the build, \
             and you are back at it."),
        )
    });
    let page = el("main")
        .class("page")
        .with_all(why)
        .with(form)
        .live(move || builds(app))
        .with(button("quiet", tr!("Open the demo engine (invented figures)"), open_demo));
    frame(
        || tr!("Open a build").to_owned(),
        || tr!("An engine’s own pages in the book").to_owned(),
        true,
        page,
    )
}

/// How the engine breathes, as far as the limit that waits for a reading tells.
fn kind_of(app: App, waiting: Option<&Draft>) -> BuildKind {
    let kind = waiting.and_then(|draft| match Route::read(&draft.hash) {
        Route::Check { row, .. } => app.sheet.with(|sheet| sheet.row(&row).map(|row| row.build)),
        _ => None,
    });
    kind.filter(|kind| *kind != BuildKind::Any).unwrap_or(BuildKind::NaturallyAspirated)
}

fn builds(app: App) -> Vec<El> {
    let builds: Vec<El> = app.book.with(|book| {
        let line = |id| {
            let (name, kind, ..) = book.opening(&id)?;
            let line = button("row-link", "", move || {
                app.set(|settings| settings.build = Some(id.0.to_string()));
                app.go(&Route::Bench);
            });
            Some(line.with(text("b", "", name)).with(text("span", "row-limit", kind.name())))
        };
        builds_of(book, "", false).into_iter().filter_map(line).collect()
    });
    if builds.is_empty() {
        return Vec::new();
    }
    vec![
        text("h2", "", tr!("Builds in the book")),
        list("rows", tr!("Builds in the book"), builds),
        link("quiet", &Route::Work(WorkPlace::Builds).hash())
            .text(tr!("Search, put away, compare")),
    ]
}
