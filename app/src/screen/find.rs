//! Finding anything by a word: the field has the focus at once, answers stand below it by kind.

use super::bench::list;
use crate::dom::{El, button, el, follow, link, text};
use crate::draft;
use crate::route::Route;
use crate::signal::*;
use crate::state::{App, app};
use crate::store::keep;
use crate::widget::{frame, search};
use pitleaf_core::find::{Finder, Found, Group, Kind};
use pitleaf_translated::tr;
use wasm_bindgen::JsCast;
use web_sys::HtmlInputElement;

/// So many of a kind are shown at first, and when they are asked for.
const FIRST: usize = 3;
const MOST: usize = 60;
/// So many kinds are painted at once; the others, farther down, come with the picture after.
const FIRST_KINDS: usize = 2;

/// The screen.
pub fn screen() -> Vec<El> {
    let app = app();
    let finder = RwSignal::new(Finder::default());
    let is_shown = RwSignal::new(false);
    follow(move || {
        if is_shown.get() {
            let build = app.build();
            let all = |sheet: &_| app.book.with(|book| Finder::of(book, build.as_ref(), sheet));
            finder.set(app.sheet.with(all));
        }
    });
    // The field is painted and has the focus before everything is gathered: a large book takes a while.
    request_animation_frame(move || request_animation_frame(move || is_shown.set(true)));
    // Of which kind all are shown, until something else is asked.
    let whole = RwSignal::new((None, String::new()));
    let field =
        search(tr!("Find"), tr!("warp, torqe, M10, shim…"), app.sought).on_enter(move || {
            let first = finder.with_untracked(|finder| {
                app.sought.with_untracked(|query| {
                    finder.find(query).first().map(|group| group.found[0].place.clone())
                })
            });
            if let Some(place) = first {
                app.go(&Route::of_found(&place, app.rotors()));
            }
        });
    take_focus(&field);
    follow(move || app.sought.with(|query| keep::set(draft::SOUGHT, query)));
    // The question whose further answers are shown: a key is answered before they are drawn.
    let further = RwSignal::new(String::new());
    follow(move || {
        let query = app.sought.get();
        request_animation_frame(move || request_animation_frame(move || further.set(query)));
    });
    let opened = move |query: &str| whole.with(|(kind, asked)| kind.filter(|_| asked == query));
    let page = el("main")
        .class("page")
        .with(field)
        .live(move || {
            app.sought.with(|query| {
                finder.with(|finder| answers(app, finder, query, opened(query), whole))
            })
        })
        .live(move || {
            further.with(|query| match opened(query) {
                Some(_) => Vec::new(),
                None => finder.with(|finder| {
                    let groups = finder.find(query).into_iter().skip(FIRST_KINDS);
                    groups.flat_map(|group| of_kind(app, &group, false, whole)).collect()
                }),
            })
        });
    frame(
        || tr!("Find").to_owned(),
        || tr!("Limits, calculators, tables, steps, slots, notes, help").to_owned(),
        true,
        page,
    )
}

/// Once it is on the page: what was looked for before is typed over.
fn take_focus(field: &El) {
    let input = field.element().query_selector("input").ok().flatten();
    let Some(input) = input.and_then(|input| input.dyn_into::<HtmlInputElement>().ok()) else {
        return;
    };
    request_animation_frame(move || {
        // A page in the background does not take it; then a touch gives it.
        let _ = input.focus();
        input.select();
    });
}

fn answers(
    app: App,
    finder: &Finder,
    query: &str,
    opened: Option<Kind>,
    whole: RwSignal<(Option<Kind>, String)>,
) -> Vec<El> {
    if finder.is_empty() {
        return Vec::new();
    }
    let groups = finder.find(query);
    let said = match groups.iter().map(|group| group.found.len()).sum::<usize>() {
        0 => finder.nothing(query),
        count => tr!("{count} found"),
    };
    let mut shown = vec![text("p", "plain", &said).attr("role", "status")];
    let asked = groups.iter().filter(|group| opened.is_none_or(|kind| kind == group.kind));
    for group in asked.take(FIRST_KINDS) {
        shown.extend(of_kind(app, group, opened.is_some(), whole));
    }
    shown
}

/// The best of a kind, and the way to the others.
fn of_kind(
    app: App,
    group: &Group<'_>,
    is_whole: bool,
    whole: RwSignal<(Option<Kind>, String)>,
) -> Vec<El> {
    let kind = group.kind;
    let rotors = app.rotors();
    let shown = if is_whole { MOST } else { FIRST };
    let lines = group.found.iter().take(shown).map(|found| line(found, rotors));
    let mut made = vec![text("h2", "", kind.name()), list("rows", kind.name(), lines)];
    let count = group.found.len();
    if !is_whole && count > FIRST {
        let words = tr!("{}: all {count}", kind.name());
        made.push(button("quiet", &words, move || {
            whole.set((Some(kind), app.sought.get_untracked()));
        }));
    }
    made
}

fn line(found: &Found, rotors: u8) -> El {
    let words = el("span").class("entry-words").with(text("b", "", &found.title)).with(text(
        "span",
        "dim",
        &found.below,
    ));
    link("entry", &Route::of_found(&found.place, rotors).hash()).with(words)
}
