//! Every build: found by its name, put away, its set-up taken over.

use super::way;
use crate::dom::{El, button, el, link, text};
use crate::route::{Route, WorkPlace};
use crate::screen::bench::list;
use crate::signal::*;
use crate::state::{App, app};
use crate::widget::{field, frame, search, switch};
use pitleaf_core::book::BuildId;
use pitleaf_core::route::{builds as found, set_up};
use pitleaf_translated::tr;

/// The screen.
pub fn screen(app: App) -> Vec<El> {
    let query = RwSignal::new(String::new());
    let old = RwSignal::new(false);
    let name = RwSignal::new(String::new());
    let body = el("main")
        .class("page")
        .with(search(tr!("Search the builds"), tr!("Search the builds"), query))
        .with(switch(
            tr!("Which"),
            &[(false, tr!("In work")), (true, tr!("Put away"))],
            move |choice| old.get() == choice,
            move |choice| old.set(choice),
        ))
        .live(move || vec![list("rows", tr!("Builds"), builds(&query.get(), old.get()))])
        .with(link("button", &Route::Open.hash()).text(tr!("Open a build")))
        .with(way("button", WorkPlace::Compare(String::new())).text(tr!("Compare a figure over builds")))
        .with(text("h2", "", tr!("Another like the one in hand")))
        .with(text("p", "plain", tr!("Takes over the engine’s measures, tightening orders and the route; no reading, nothing done.")))
        .with(el("div").class("form").with(field(tr!("Name"), tr!("the customer’s engine"), name)))
        .with(button("button", tr!("Open it with this set-up"), move || copy(app, name)));
    frame(|| tr!("Builds").to_owned(), || tr!("All that the book has").to_owned(), true, body)
}

fn builds(query: &str, old: bool) -> Vec<El> {
    let app = app();
    let in_hand = app.build();
    app.book.with(|book| {
        let line = |id: BuildId| {
            let (name, kind, ..) = book.opening(&id)?;
            let signed = if book.is_signed_off(&id) { tr!("signed off") } else { kind.name() };
            let here = if in_hand.as_ref() == Some(&id) { tr!("in hand") } else { "" };
            let (taken, put) = (id.clone(), id);
            let take = button("row-link", "", move || {
                app.set(|settings| settings.build = Some(taken.0.to_string()));
                app.go(&Route::Bench);
            });
            let words = text("span", "row-limit", signed).with(text("span", "kind", here));
            let away = if old { tr!("Take out") } else { tr!("Put away") };
            Some(
                el("div")
                    .class("build-line")
                    .with(take.with(text("b", "", name)).with(words))
                    .with(
                        button("quiet", away, move || app.put_away(put.clone(), !old))
                            .attr("aria-label", &format!("{away}: {name}")),
                    ),
            )
        };
        found(book, query, old).into_iter().filter_map(line).collect()
    })
}

fn copy(app: App, name: RwSignal<String>) {
    let words = name.get_untracked().trim().to_owned();
    let Some((build, opening)) = untrack(|| app.build().zip(app.opening())) else {
        app.wrong(tr!("No build is in hand to be copied."));
        return;
    };
    if words.is_empty() {
        app.wrong(tr!("Give the new build a name."));
        return;
    }
    let facts = app.book.with_untracked(|book| set_up(book, &build));
    app.open_build(words, opening.1, opening.2, false, facts);
}
