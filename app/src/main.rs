//! Pitleaf's screens: touches into calls, answers into pictures. Every figure shown is computed in `pitleaf-core`.
#![allow(unreachable_pub, reason = "in a program `pub` only says: used outside this module")]

mod device;
mod dom;
mod draft;
mod finger;
mod open_book;
mod record;
mod route;
mod screen;
mod settings;
mod signal;
mod state;
mod store;
mod tour;
mod trail;
mod update;
mod widget;

use crate::signal::*;
use dom::{El, el, follow};
use settings::{Hands, Light};
use state::{App, Keeping};
use std::time::Duration;

fn main() {
    // A task of its own: compiling the module and drawing the first screen are not one long wait.
    set_timeout(show, Duration::ZERO);
}

fn show() {
    leptos::mount::mount_to_body(|| {
        if let Some(body) = document().body() {
            // A page without a body can't be shown at all.
            let _ = body.append_child(shell().element());
        }
    });
    if let Some(start) = document().get_element_by_id("start") {
        start.remove();
    }
}

/// The screen of the place, the notice line, and the way to the other screens.
fn shell() -> El {
    let app = App::new();
    provide_context(app);
    provide_context(app.finger);
    provide_context(update::Version::watch());
    draft::belong_to(app);
    app.open_book();
    dom::listen("hashchange", move |_| {
        app.arrive(&window().location().hash().unwrap_or_default());
    });
    follow(move || {
        let (light, hands) = app.settings.with(|settings| (settings.light, settings.hands));
        let light = match light {
            Light::Phone => "phone",
            Light::Dark => "dark",
            Light::Sun => "sun",
        };
        let hands = if hands == Hands::Wet { "wet" } else { "dry" };
        if let Some(root) = document().document_element() {
            // Only a look: a browser that refuses keeps the phone's own.
            let _ = root.set_attribute("data-light", light);
            let _ = root.set_attribute("data-hands", hands);
        }
    });
    let in_hand = Memo::new(move || (app.build(), app.opening()));
    el("div")
        .class("shell")
        // What is drawn before the book has been read is drawn once more after it.
        .attr_live("aria-busy", move || {
            app.keeping.with(|keeping| *keeping == Keeping::Opening).then(|| "true".to_owned())
        })
        .with(el("div").class("no-print").live(move || tour::line(app)))
        .with(el("div").class("screen").live(move || {
            let route = app.route.get();
            // A screen is made anew for another build or sheet, but not for every entry: what is typed stays.
            in_hand.track();
            app.sheet.track();
            app.screens.update(|made| *made += 1);
            untrack(|| screen::of(route))
        }))
        .with(widget::notice_bar())
        .with(widget::nav())
}
