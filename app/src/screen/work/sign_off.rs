//! Signing the build off over what is open, and opening it again.

use super::{at, page, refusal, rows};
use crate::dom::{El, button, el, link, text};
use crate::draft;
use crate::route::{Route, WorkPlace};
use crate::screen::bench::list;
use crate::signal::*;
use crate::state::App;
use crate::widget::{field, frame};
use pitleaf_core::book::{BuildId, Slot};
use pitleaf_core::joints::oil_feed::Held;
use pitleaf_core::route::{Open, OpenPoints};
use pitleaf_translated::tr;

/// The screen.
pub fn screen(app: App) -> Vec<El> {
    let who = RwSignal::new(String::new());
    let why = RwSignal::new(String::new());
    let said = RwSignal::new(String::new());
    let hash = Route::Work(WorkPlace::SignOff).hash();
    draft::form(hash, vec![who, why], || vec![String::new(); 2]);
    // The form stands whatever else is written meanwhile.
    let signed = Memo::new(move || {
        let build = app.build()?;
        Some(app.book.with(|book| book.is_signed_off(&build)))
    });
    let body = page(app, move |build| {
        let signed = app.book.with(|book| book.is_signed_off(build));
        if signed { Vec::new() } else { open_points(&points(app, build)) }
    });
    let body = body.live(move || match signed.get() {
        None => Vec::new(),
        Some(true) => {
            vec![
                text(
                    "p",
                    "plain",
                    tr!("This build is signed off: it can be read, and nothing can be written until it is opened again."),
                ),
                el("div").class("form").with(field(tr!("Why it is opened again"), tr!("a reason"), why)),
                button("button", tr!("Open it again"), move || {
                    app.reopen(why.get_untracked().trim().to_owned());
                    why.set(String::new());
                }),
            ]
        }
        Some(false) => vec![
            el("div")
                .class("form")
                .with(field(tr!("By whom"), tr!("a name"), who))
                .with(rows(tr!("Why over open points"), why))
                .with(refusal(said))
                .with(button("button action", tr!("Sign the build off"), move || {
                    sign(app, who, why, said)
                })),
        ],
    });
    frame(|| tr!("Sign off").to_owned(), move || app.build_name(), true, body)
}

/// What is still open, by its kind.
fn open_points(points: &OpenPoints) -> Vec<El> {
    let mut shown = Vec::new();
    if points.no_oil {
        shown.push(text("p", "caution", &Held.to_string()));
    }
    let steps = |open: &[Open]| -> Vec<El> {
        open.iter().map(|open| row(&at(&open.key), &open.words)).collect()
    };
    let decisions = Route::Work(WorkPlace::Decisions);
    let undecided = points.undecided.iter().map(|words| row(&decisions, words)).collect();
    let not_compared = points.not_compared.iter().map(|words| text("p", "plain", words));
    let unproved = points
        .unproved
        .iter()
        .filter_map(|open| Some(row(&Route::Slot(Slot::named(&open.key)?), &open.words)));
    for (heading, open) in [
        (tr!("Open holds"), steps(&points.holds)),
        (tr!("To be decided"), undecided),
        (tr!("Seals fitted, gap not proved"), unproved.collect()),
        (tr!("Open steps"), steps(&points.steps)),
        (tr!("Not compared, to be known"), not_compared.collect()),
    ] {
        if !open.is_empty() {
            let head = text("summary", "", &format!("{heading}: {}", open.len()));
            let lines = list("rows", heading, open);
            shown.push(el("details").class("stage").with(head).with(lines));
        }
    }
    if points.count() == 0 {
        shown.push(text("p", "plain", tr!("Nothing is open.")));
    }
    shown
}

/// An open point, and the way to where it is closed.
fn row(to: &Route, words: &str) -> El {
    link("row-link", &to.hash()).with(text("span", "", words))
}

fn points(app: App, build: &BuildId) -> OpenPoints {
    app.book.with(|book| app.sheet.with(|sheet| OpenPoints::of(book, build, sheet)))
}

fn sign(app: App, who: RwSignal<String>, why: RwSignal<String>, said: RwSignal<String>) {
    let Some(build) = untrack(|| app.build()) else { return };
    let points = untrack(|| points(app, &build));
    match points.sign(&who.get_untracked(), &why.get_untracked()) {
        Ok(facts) => {
            said.set(String::new());
            let [who, why] = [who, why].map(draft::emptied);
            app.write(facts, tr!("the build is signed off").to_owned(), move || {
                who();
                why();
            });
        }
        Err(fault) => said.set(fault.to_string()),
    }
}
