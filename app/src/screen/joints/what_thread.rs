//! What thread is this? From a measured diameter, and a pitch or a count.

use super::form::{Form, Why, answer};
use super::threads::thread_link;
use super::{Job, show};
use crate::dom::{El, text};
use crate::screen::bench::list;
use crate::widget::switch;
use pitleaf_core::joints::bounds;
use pitleaf_core::joints::threads::{Measured, Side, identify, what_tells_apart};
use pitleaf_core::quantity::Unit;
use pitleaf_translated::tr;

/// More than these are too many to choose from.
const MOST: usize = 6;

/// The screen.
pub fn screen() -> Vec<El> {
    let mut form = Form::of("what-thread");
    let lengths = &[Unit::Millimetre, Unit::Inch];
    let diameter = form.figure(
        ("diameter", tr!("Diameter over the crests")),
        &bounds::THREAD_DIAMETER,
        lengths,
        "",
    );
    let pitch = form.figure(
        ("pitch", tr!("Pitch, if measured")),
        &bounds::PITCH,
        &[Unit::Millimetre, Unit::Inch],
        "",
    );
    let count = form.factor(("count", tr!("or threads on an inch")), &bounds::THREADS_PER_INCH, "");
    let side = form.words(("side", "Side"), "outside");
    form.keep();
    let found = move || -> Result<Vec<El>, Why> {
        let pitch = if pitch.is_given() {
            Some(pitch.amount()?)
        } else if count.is_given() {
            Some(Measured::pitch_of_count(count.factor()?)?)
        } else {
            None
        };
        let side = if side.text() == "inside" { Side::Inside } else { Side::Outside };
        let found = identify(&Measured { side, diameter: diameter.amount()?, pitch })?;
        let Some(first) = found.first() else {
            let words = tr!(
                "No thread of the tables is like that. Measure again; a pipe thread or a worn one is not among them."
            );
            return Err(Why::Refused(words.to_owned()));
        };
        let key = show::key(&first.thread.name(), tr!("is the likeliest"));
        let links = found.iter().take(MOST).map(|candidate| thread_link(candidate.thread));
        let mut shown = vec![key, list("rows", tr!("It may be"), links)];
        if let [one, other, ..] = found.as_slice() {
            shown.push(show::line(&what_tells_apart(one.thread, other.thread)));
        }
        Ok(shown)
    };
    let sides = switch(
        tr!("What was measured"),
        &[("outside", tr!("Bolt, outside")), ("inside", tr!("Hole, inside"))],
        move |choice| side.typed.with(|set| set == choice),
        move |choice| side.typed.set(choice.to_owned()),
    );
    show::page(
        Job::WhatThread.name(),
        Job::WhatThread.about(),
        move || answer(&[diameter], found()),
        [sides, diameter.el(), pitch.el(), count.el()],
        [text(
            "p",
            "how",
            tr!(
                "Lay the gauge over ten threads: the pitch decides where diameters are near each other."
            ),
        )],
    )
}
