//! The frame of every screen: its head, the notice line, and the way to the other screens under the thumb.

use super::update_line;
use crate::dom::{El, button, el, link, svg, text};
use crate::route::Route;
use crate::state::{Notice, app};
use pitleaf_core::book::Face;
use pitleaf_core::calculators::Calculator;
use pitleaf_core::help::Help;
use pitleaf_translated::tr;

/// A screen: its head (with "back" where there is somewhere to go back to), and what stands under it.
pub fn frame(
    title: impl Fn() -> String + 'static,
    under: impl Fn() -> String + 'static,
    back: bool,
    body: El,
) -> Vec<El> {
    let app = app();
    let mut head = el("header").class("head");
    if back {
        let chevron = icon("0 0 24 24", &["M15 4 7 12l8 8"]);
        head = head.with(
            link("back", "")
                .attr("aria-label", tr!("Back"))
                .attr_live("href", move || Some(app.back().hash()))
                .with(chevron),
        );
    }
    let words = el("div")
        .class("head-words")
        .with(el("h1").text_live(title))
        .with(el("p").class("under").text_live(under));
    let settings = link("head-action", &Route::Settings.hash())
        .attr("aria-label", tr!("Settings"))
        .with(icon(
            "0 0 24 24",
            &[
                "M3 7h8m6 0h4M3 17h4m6 0h8",
                "M17 7a3 3 0 1 1-6 0 3 3 0 0 1 6 0zM13 17a3 3 0 1 1-6 0 3 3 0 0 1 6 0z",
            ],
        ));
    let here = app.route.get_untracked();
    let find = (here != Route::Find).then(|| {
        link("head-action", &Route::Find.hash())
            .attr("aria-label", tr!("Find"))
            .with(icon("0 0 24 24", &["M16 10a6 6 0 1 1-12 0 6 6 0 0 1 12 0zM14.5 14.5 21 21"]))
    });
    let body = match here.calculator() {
        // Their keys fill the screen: the help stands with the answer.
        None | Some(Calculator::Convert | Calculator::Survey(_)) => body,
        Some(calculator) => body.with(help(&calculator.help())),
    };
    let actions = el("div").class("head-actions").with_all(find).with(settings);
    vec![head.with(words).with(actions), body]
}

/// What a figure or a calculator is, how to measure or what to put in, and why it matters; behind one touch.
pub fn help(help: &Help) -> El {
    what_is_this().with_all(texts(help))
}

/// The same where how to measure stands beside it.
pub fn help_beside(help: Help) -> El {
    what_is_this().with_all(texts(&Help { how: String::new(), ..help }))
}

fn what_is_this() -> El {
    el("details").class("joint-more help no-print").with(text("summary", "", tr!("What is this?")))
}

/// The three texts, each under its heading; none where there is none.
pub fn texts(help: &Help) -> Vec<El> {
    let all = [
        (tr!("What it is"), help.what),
        (tr!("How to measure"), &help.how),
        (tr!("Why it matters"), help.why),
    ];
    all.into_iter()
        .filter(|(_, words)| !words.is_empty())
        .flat_map(|(heading, words)| [text("b", "", heading), text("p", "", words)])
        .collect()
}

/// What stands in the place of a limit that is not there.
pub fn no_such_limit() -> Vec<El> {
    const WORDS: &str =
        tr!("The sheet has no row of this name. It may belong to another phone’s book.");
    let page = el("main").class("page").with(text("p", "plain", WORDS));
    frame(|| tr!("No such limit").to_owned(), String::new, true, page)
}

/// A drawn sign; what it stands for is said beside it or in its control's label.
pub fn icon(view: &str, paths: &[&str]) -> El {
    svg("svg")
        .attrs(&[("viewBox", view), ("aria-hidden", "true"), ("class", "icon")])
        .with_all(paths.iter().map(|path| svg("path").attr("d", path)))
}

/// The way to the main screens.
pub fn nav() -> El {
    let app = app();
    let place = move |name: &str, to: &Route, here: fn(&Route) -> bool| {
        link("", &to.hash())
            .text(name)
            .attr_live("aria-current", move || app.route.with(here).then(|| "page".to_owned()))
    };
    el("nav").class("nav").attr("aria-label", tr!("Screens")).with_all([
        place(tr!("Bench"), &Route::Bench, |route| {
            matches!(
                route,
                Route::Bench
                    | Route::Open
                    | Route::Gauges
                    | Route::Settings
                    | Route::Ports(_)
                    | Route::Work(_)
            )
        }),
        place(tr!("Limits"), &Route::Limits, |route| {
            matches!(
                route,
                Route::Limits | Route::Part(_) | Route::Check { .. } | Route::OwnLimit(_)
            )
        }),
        place(tr!("Convert"), &Route::Convert, |route| matches!(route, Route::Convert)),
        place(tr!("Seals"), &Route::Seals(1, Face::Front), |route| {
            matches!(
                route,
                Route::Seals(..)
                    | Route::SealTable
                    | Route::Slot(_)
                    | Route::Mark(_)
                    | Route::Leaves
                    | Route::HotGap(_)
                    | Route::Placing
                    | Route::Sets
                    | Route::Set(_)
                    | Route::Matching
            )
        }),
        place(tr!("Book"), &Route::Book, |route| {
            matches!(route, Route::Book | Route::Entry(_) | Route::TakeIn)
        }),
    ])
}

/// What was just done, with its undo; or what went wrong; or else that a new version waits.
pub fn notice_bar() -> El {
    let app = app();
    let close = move || {
        button("quiet", "×", move || app.notice.set(None))
            .attr("aria-label", tr!("Close this line"))
    };
    el("div").class("notices").attrs(&[("role", "status"), ("aria-live", "polite")]).live(
        move || {
            let line = match app.notice.get() {
                None => return update_line(),
                Some(Notice::Written(ids, said)) => el("div")
                    .class("notice")
                    .with(el("p").with(text("b", "", tr!("Written"))).text(" ").text(&said))
                    .with(button("quiet", tr!("Undo"), move || app.withdraw(&ids))),
                Some(Notice::Withdrawn(ids)) => el("div")
                    .class("notice")
                    .with(text("p", "", tr!("Withdrawn; still in the book")))
                    .with(button("quiet", tr!("Hold again"), move || app.restore(&ids))),
                Some(Notice::Said(said)) => el("div").class("notice").with(text("p", "", &said)),
                Some(Notice::Wrong(said)) => {
                    el("div").class("notice wrong").attr("role", "alert").with(text("p", "", &said))
                }
            };
            vec![line.with(close())]
        },
    )
}
