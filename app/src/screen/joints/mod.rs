//! Joints: threads, clamp, fits, press fits, and the oil they cut off.

mod bolts;
mod clamp;
mod drills;
mod fits;
mod form;
mod hot_clamp;
mod hot_dowels;
mod job;
mod oil_feed;
mod oil_line;
mod order;
mod press;
mod show;
mod slip;
mod stack;
mod threads;
mod what_thread;

pub use job::{Job, slug};
use pitleaf_translated::tr;

use super::bench::list;
use crate::dom::{El, el, link, text};
use crate::route::Route;
use crate::state::{App, app};
use crate::widget::frame;
use pitleaf_core::joints::oil_feed::{Feed, Held};

/// The screen of a job.
pub fn screen(job: &Job) -> Vec<El> {
    match job {
        Job::All => all(),
        Job::Threads => threads::screen(),
        Job::Thread(slug) => threads::thread_screen(slug),
        Job::Port(dash) => threads::port_screen(*dash),
        Job::WhatThread => what_thread::screen(),
        Job::Drills => drills::screen(""),
        Job::Drill(slug) => drills::screen(slug),
        Job::Clamp => clamp::screen(),
        Job::Stack => stack::screen(),
        Job::Slip => slip::screen(),
        Job::Order => order::screen(),
        Job::Fits => fits::screen(),
        Job::Press => press::screen(),
        Job::OilFeed => oil_feed::screen(),
        Job::OilLine => oil_line::screen(),
    }
}

fn all() -> Vec<El> {
    let app = app();
    let tiles =
        Job::ALL.into_iter().filter(|job| *job != Job::All).map(|job| {
            link("tile", &Route::Joints(job.clone()).hash())
                .with(text("b", "", job.name()))
                .with(text("span", "dim", job.about()))
        });
    let page = el("main").class("page").live(move || held(app).into_iter().collect()).with(list(
        "tiles",
        tr!("Joints"),
        tiles,
    ));
    frame(|| Job::All.name().to_owned(), || Job::All.about().to_owned(), true, page)
}

/// The line that stands on a build until its shut oil passage is fed from outside.
pub(super) fn held(app: App) -> Option<El> {
    let build = app.build()?;
    let Err(Held) = app.book.with(|book| Feed::of(book, &build).sign_off()) else { return None };
    let words = link("", &Route::Joints(Job::OilFeed).hash()).text(&Held.to_string());
    Some(el("p").class("caution held").attr("role", "alert").with(words))
}
