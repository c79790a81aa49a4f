//! Threads and boss ports: found by any of a shop's names, with what to drill for them.

use super::form::hand_over;
use super::show;
use super::{Job, slug};
use crate::dom::{El, el, link, text};
use crate::draft;
use crate::route::Route;
use crate::screen::bench::list;
use crate::signal::*;
use crate::widget::{frame, search};
use pitleaf_core::joints::threads::{
    BossPort, ClearanceFit, Drill, Thread, clearance_hole, find_ports, find_threads,
};
use pitleaf_core::joints::{Caution, shown};
use pitleaf_core::quantity::{Amount, Rounding, Unit};
use pitleaf_translated::tr;
use uom::si::area::square_millimeter;
use uom::si::ratio::percent;

/// A link to a thread, with its tap drill.
pub(super) fn thread_link(thread: Thread) -> El {
    let drill = tr!("tap drill {}", thread.tap_drill().said());
    link("row-link", &Route::Joints(Job::of_thread(thread)).hash())
        .with(text("b", "", &thread.name()))
        .with(text("span", "row-limit", &drill))
}

/// A link to a boss port, with its thread.
pub(super) fn port_link(port: BossPort) -> El {
    link("row-link", &Route::Joints(Job::Port(port.dash())).hash())
        .with(text("b", "", &tr!("Boss port −{}", port.dash())))
        .with(text("span", "row-limit", &port.thread().map(Thread::name).unwrap_or_default()))
}

/// Finding one.
pub fn screen() -> Vec<El> {
    let hash = Route::Joints(Job::Threads).hash();
    let query = RwSignal::new(draft::at(&hash).map(|draft| draft.text).unwrap_or_default());
    crate::dom::follow(move || draft::put(&hash, &query.get(), None));
    let page = el("main")
        .class("page")
        .with(search(tr!("Find a thread or a port"), tr!("M10, 10 fine, 7/16-20, dash 6…"), query))
        .live(move || {
            let query = query.get();
            if query.trim().is_empty() {
                return vec![
                    text("h2", "", tr!("O-ring boss ports")),
                    list("rows", tr!("Ports"), BossPort::all().map(port_link)),
                    text("h2", "", tr!("Threads")),
                    list("rows", tr!("Threads"), Thread::all().map(thread_link)),
                ];
            }
            let (threads, ports) = (find_threads(&query), find_ports(&query));
            if threads.is_empty() && ports.is_empty() {
                let words = tr!("No thread of the tables answers to that: M5 to M16, 1/4 to 5/8 in, ports −3 to −16.");
                return vec![text("p", "plain", words).attr("role", "status")];
            }
            let links = ports.into_iter().map(port_link);
            vec![list("rows", tr!("Found"), threads.into_iter().map(thread_link).chain(links))]
        });
    frame(|| Job::Threads.name().to_owned(), || Job::Threads.about().to_owned(), true, page)
}

/// A length in millimetres and inches.
pub(super) fn both(amount: Amount, mm: u8, inch: u8) -> (String, String) {
    let show = |unit: Unit, places| {
        format!("{} {}", amount.show(unit, places, Rounding::Nearest), unit.symbol())
    };
    (show(Unit::Millimetre, mm), show(Unit::Inch, inch))
}

fn size_row(label: &str, amount: Option<Amount>) -> Option<(String, String, String)> {
    let (mm, inch) = both(amount?, 3, 4);
    Some((label.to_owned(), mm, inch))
}

/// A drill with its size in both units.
pub(super) fn drill_row(label: &str, drill: Drill) -> Option<(String, String, String)> {
    let (mm, inch) = both(drill.diameter()?, 2, 4);
    Some((label.to_owned(), drill.said(), format!("{mm}   {inch}")))
}

/// The drills near a thread's own, with the engagement each gives.
fn tap_drills(thread: Thread) -> Vec<(String, String, String)> {
    thread
        .tap_drills()
        .into_iter()
        .filter_map(|(drill, engagement)| {
            let (mm, inch) = both(drill.diameter()?, 2, 4);
            let share = shown::plain(engagement.get::<percent>(), 0);
            Some((drill.said(), tr!("{share} % of full thread"), format!("{mm}   {inch}")))
        })
        .collect()
}

/// Which of those drills leave the thread out of its limits.
fn past_minor(thread: Thread) -> Vec<El> {
    let drills = thread.tap_drills();
    drills
        .into_iter()
        .filter_map(|(drill, _)| thread.past_minor(drill))
        .map(|words| show::line(&words))
        .collect()
}

fn unknown() -> Vec<El> {
    frame(
        || tr!("No such thread").to_owned(),
        String::new,
        true,
        text("p", "plain", tr!("The tables here have no such thread or port.")),
    )
}

/// One thread.
pub fn thread_screen(wanted: &str) -> Vec<El> {
    let Some(thread) = Thread::all().find(|thread| slug(&thread.name()) == wanted) else {
        return unknown();
    };
    let (drill_mm, drill_inch) =
        thread.tap_drill().diameter().map_or_else(Default::default, |size| both(size, 2, 4));
    let mut sizes: Vec<_> = [
        size_row(tr!("Outside"), Some(thread.diameter())),
        size_row(tr!("Pitch"), Some(thread.pitch())),
        size_row(tr!("Pitch diameter"), Amount::of_length(thread.pitch_diameter())),
        size_row(tr!("Minor, nut"), Amount::of_length(thread.minor_diameter())),
    ]
    .into_iter()
    .flatten()
    .collect();
    let (area, unit) = thread.printed_stress_area();
    let mut metric = String::new();
    if let Some(count) = thread.threads_per_inch() {
        metric = shown::plain(thread.stress_area().get::<square_millimeter>(), 1) + " mm²";
        sizes.push(show::row(tr!("Per inch"), count.to_string(), String::new()));
    }
    sizes.push(show::row(tr!("Stress area"), format!("{area} {unit}"), metric));
    let fits = [
        (tr!("Close"), ClearanceFit::Close),
        (tr!("Normal"), ClearanceFit::Normal),
        (tr!("Loose"), ClearanceFit::Loose),
    ];
    let holes: Vec<_> = fits
        .into_iter()
        .filter_map(|(label, fit)| Some((label, clearance_hole(thread, fit)?)))
        .collect();
    let mut body = el("main")
        .class("page joint")
        .with(show::key(&thread.tap_drill().said(), &format!("{drill_mm}   {drill_inch}")))
        .with(show::line(tr!("is the tap drill. Others near it, and the thread each leaves:")))
        .with(show::table(tr!("Tap drills"), tap_drills(thread)))
        .with_all(past_minor(thread))
        .with(text("h2", "", tr!("Hole the bolt passes through")));
    body = match holes.first() {
        Some((_, first)) => body
            .with(show::table(
                tr!("Clearance holes"),
                holes.iter().filter_map(|(label, hole)| drill_row(label, hole.drill)),
            ))
            .with(show::source(&tr!("{}, mostly from memory.", first.source))),
        None => body.with(show::line(tr!("The standard has no row for this size."))),
    };
    let body = body
        .with(text("h2", "", tr!("Sizes")))
        .with(show::table(tr!("Sizes"), sizes))
        .with(
            link("plate-link", &Route::Joints(Job::Clamp).hash())
                .text(tr!("Its torque and clamp"))
                .on("click", move |_| {
                    hand_over("clamp", "thread", thread.name(), Unit::Millimetre)
                }),
        )
        .with_all(show::cautions(&[Caution::Drilling]));
    frame(move || thread.name(), || Job::Thread(String::new()).about().to_owned(), true, body)
}

/// One boss port.
pub fn port_screen(dash: u8) -> Vec<El> {
    let Some(port) = BossPort::dash_size(dash) else { return unknown() };
    let Some(thread) = port.thread() else { return unknown() };
    let (depth, is_published) = port.full_thread();
    let rows = [
        drill_row(tr!("Tap drill"), thread.tap_drill()),
        size_row(tr!("Drill at least"), Some(port.drill_depth())),
        size_row(tr!("Full thread at least"), Some(depth)),
        size_row(tr!("Spot face at least"), Some(port.spot_face())),
    ];
    let source = if is_published {
        tr!(
            "SAE J1926-1 (ISO 11926-1): thread and its depth published; spot face and drill depth from memory. Confirm before metal is cut."
        )
    } else {
        tr!(
            "SAE J1926-1 (ISO 11926-1): thread published; all depths and the spot face from memory. Confirm before metal is cut."
        )
    };
    let body = el("main")
        .class("page joint")
        .with(show::key(&thread.name(), tr!("straight thread, sealed by an O-ring")))
        .with(show::table(tr!("Sizes"), rows.into_iter().flatten()))
        .with_all(thread.past_minor(thread.tap_drill()).map(|words| show::line(&words)))
        .with(show::source(source))
        .with(list("rows", tr!("Its thread"), [thread_link(thread)]))
        .with_all(show::cautions(&[Caution::Drilling, Caution::OilPressure]));
    frame(move || tr!("Boss port −{dash}"), || Job::Port(0).about().to_owned(), true, body)
}
