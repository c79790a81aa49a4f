//! Drills by any name: their size, the nearest of each kind, and what they are the tap drill of.

use super::threads::{both, thread_link};
use super::{Job, show, slug};
use crate::dom::{El, el, follow, text};
use crate::draft;
use crate::route::Route;
use crate::screen::bench::list;
use crate::signal::*;
use crate::widget::{frame, search};
use pitleaf_core::joints::Caution;
use pitleaf_core::joints::bounds::DRILL;
use pitleaf_core::joints::threads::{Drill, Thread, nearest_drills};
use pitleaf_core::quantity::{Amount, Reading, Rounding, Unit};
use pitleaf_translated::tr;

/// The screen; asked for a drill of the tables already, or for none.
pub fn screen(wanted: &str) -> Vec<El> {
    let place = if wanted.is_empty() { Job::Drills } else { Job::Drill(wanted.to_owned()) };
    let hash = Route::Joints(place).hash();
    let drill = Drill::all().find(|drill| slug(&drill.to_string()) == wanted);
    let name = drill.map(Drill::said).unwrap_or_default();
    let kept = draft::at(&hash).map(|draft| draft.text);
    let query = RwSignal::new(kept.unwrap_or_else(|| name.clone()));
    // What stands there by itself is no draft, and must not push one away.
    follow(move || {
        query.with(|query| {
            if *query != name {
                draft::put(&hash, query, None)
            }
        })
    });
    let page = el("main")
        .class("page joint")
        .with(search(tr!("A drill or a size"), tr!("8.5, 25/64, #7, letter F, 0.201 in…"), query))
        .live(move || found(&query.get()))
        .with_all(show::cautions(&[Caution::Drilling]));
    frame(|| Job::Drills.name().to_owned(), || Job::Drills.about().to_owned(), true, page)
}

/// A drill by its name, or any size.
fn found(query: &str) -> Vec<El> {
    let named = Drill::named(query);
    let size = match named.and_then(Drill::diameter) {
        Some(size) => Ok(size),
        None => Reading::read(query, Unit::Millimetre, &DRILL).map(|reading| reading.amount()),
    };
    match size {
        _ if query.trim().is_empty() => {
            vec![show::line(tr!(
                "A bare number is millimetres. Numbers go from 1 to 60, letters from A to Z."
            ))]
        }
        Ok(size) => sized(named, size),
        Err(fault) => vec![text("p", "refusal", &fault.to_string()).attr("role", "status")],
    }
}

fn sized(named: Option<Drill>, size: Amount) -> Vec<El> {
    let (mm, inch) = both(size, 3, 4);
    let near = nearest_drills(size).into_iter().filter(|(drill, _)| Some(*drill) != named);
    let rows = near.filter_map(|(drill, larger)| {
        let (mm, inch) = both(drill.diameter()?, 2, 4);
        let off = if larger.is_zero() {
            tr!("the same").to_owned()
        } else {
            let way = if larger.is_negative() { tr!("smaller") } else { tr!("larger") };
            tr!("{} mm {way}", larger.size().show(Unit::Millimetre, 3, Rounding::Nearest))
        };
        Some((drill.said(), off, format!("{mm}   {inch}")))
    });
    let mut shown = vec![
        show::key(&mm, &inch),
        text("h2", "", tr!("Nearest of each kind")),
        show::table(tr!("Nearest of each kind"), rows),
    ];
    let taps: Vec<El> = Thread::all()
        .filter(|thread| thread.tap_drill().diameter() == Some(size))
        .map(thread_link)
        .collect();
    if !taps.is_empty() {
        shown.push(text("h2", "", tr!("Tap drill of")));
        shown.push(list("rows", tr!("Tap drill of"), taps));
    }
    shown
}
