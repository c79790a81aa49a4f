//! The build's work: its stages and steps, what was decided, and the sheet that goes with the engine.

mod builds;
mod compare;
mod compression;
mod decisions;
mod describe;
mod edit;
mod left_off;
mod route;
mod sheet;
mod sign_off;
mod stages;
mod step;

pub use left_off::left_off;
use pitleaf_translated::tr;

use crate::dom::{El, el, follow, link, text};
use crate::route::{Route, WorkPlace};
use crate::signal::*;
use crate::state::{App, app};
use pitleaf_core::book::{BuildId, Subject};
use pitleaf_core::route::{Progress, RouteFact};

/// A screen of the work.
pub fn screen(place: &WorkPlace) -> Vec<El> {
    let app = app();
    match place {
        WorkPlace::Stages => stages::screen(app),
        WorkPlace::Step(key) => step::screen(app, key.clone()),
        WorkPlace::Check(row, piece, key) => check(app, row, piece, key),
        WorkPlace::Route => route::screen(app),
        WorkPlace::Edit(id) => edit::screen(app, id),
        WorkPlace::Describe => describe::screen(app),
        WorkPlace::Decisions => decisions::screen(app),
        WorkPlace::Compression(rotor) => compression::screen(app, *rotor),
        WorkPlace::Builds => builds::screen(app),
        WorkPlace::Compare(row) => compare::screen(app, row),
        WorkPlace::Sheet => sheet::screen(app),
        WorkPlace::SignOff => sign_off::screen(app),
    }
}

/// The check of a step's piece; once a reading is written, back at the step with its verdict.
fn check(app: App, row: &str, piece: &str, key: &str) -> Vec<El> {
    // While the book is still being opened there is no build, and nothing was written here.
    if let Some(build) = untrack(|| app.build()) {
        let subject = Subject::Figure(row.to_owned(), piece.to_owned());
        let entry = move || {
            app.book.with(|book| book.current(&build, &subject).map(|entry| entry.id.clone()))
        };
        let before = untrack(&entry);
        let step = at(key);
        follow(move || {
            if entry() != before {
                app.go(&step);
            }
        });
    }
    super::check::screen(row, piece)
}

fn at(key: &str) -> Route {
    Route::Work(WorkPlace::Step(key.to_owned()))
}

/// A link to another screen of the work.
fn way(class: &str, place: WorkPlace) -> El {
    link(class, &Route::Work(place).hash())
}

/// Where the build in hand stands.
fn progress(app: App) -> Option<Progress> {
    let build = app.build()?;
    app.book.with(|book| app.sheet.with(|sheet| Progress::of(book, &build, sheet)))
}

/// Writes a fact of the work.
fn write(app: App, fact: RouteFact, said: &str, then: impl FnOnce() + 'static) {
    app.write(vec![pitleaf_core::book::Fact::Route(fact)], said.to_owned(), then);
}

/// What stands on a screen of the work while no build is open.
fn no_build(app: App) -> Vec<El> {
    if app.is_opening() {
        return vec![text("p", "plain", &app.build_name())];
    }
    vec![
        text("p", "plain", tr!("No build is open.")),
        link("button action", &Route::Open.hash()).text(tr!("Open a build")),
    ]
}

/// A page that follows the build in hand.
fn page(app: App, shown: impl Fn(&BuildId) -> Vec<El> + 'static) -> El {
    el("main").class("page").live(move || with_build(app, &shown))
}

/// What is shown of the build in hand.
fn with_build(app: App, shown: &dyn Fn(&BuildId) -> Vec<El>) -> Vec<El> {
    app.build().map_or_else(|| no_build(app), |build| shown(&build))
}

/// A list to choose from, held to a text.
fn choose(label: &str, choices: &[(String, String)], value: RwSignal<String>) -> El {
    let chosen = value.get_untracked();
    let options = choices.iter().map(|(word, says)| {
        let option = el("option").attr("value", word).text(says);
        if *word == chosen { option.attr("selected", "") } else { option }
    });
    let select = el("select")
        .with_all(options)
        .on("change", move |event| value.set(event_target_value(&event)));
    el("label").class("line-field").with(text("span", "", label)).with(select)
}

/// A labelled text of several lines.
fn rows(label: &str, typed: RwSignal<String>) -> El {
    let area = el("textarea").attr("rows", "3").bound_rows(typed);
    el("label").class("words-field").with(text("span", "", label)).with(area)
}

/// A sentence that says why something was not done.
fn refusal(said: RwSignal<String>) -> El {
    el("div").attr("role", "alert").live(move || {
        let said = said.get();
        if said.is_empty() { Vec::new() } else { vec![text("p", "caution", &said)] }
    })
}
