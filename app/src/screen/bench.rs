//! The bench: what is open, what was last touched, and the way to everything.

use super::entry_line::entry_line;
use super::joints::{self, Job};
use super::work;
use crate::device;
use crate::dom::{El, button, el, link, text};
use crate::route::{PortsPlace, Route, WorkPlace};
use crate::signal::*;
use crate::state::{App, Keeping, Notice, app};
use crate::store::persist;
use crate::update::version;
use crate::widget::{frame, language_missing, other_language};
use pitleaf_core::book::{Book, Face, carry, demo};
use pitleaf_core::language::OTHER;
use pitleaf_core::limits::{Row, limit_line, limit_lines};
use pitleaf_core::ports::SideHousing;
use pitleaf_translated::tr;
use wasm_bindgen_futures::spawn_local;

/// Jobs beyond checking: their name, what they answer, the way there.
const WORK: &[(&str, &str, Route)] = &[
    (tr!("The build"), tr!("Steps, holds, decisions, sheet"), Route::Work(WorkPlace::Stages)),
    (
        tr!("Ports"),
        tr!("When they open, what they cut into"),
        Route::Ports(PortsPlace::Plate(SideHousing::Front)),
    ),
    (tr!("Faces"), tr!("Flatness, bores, stack, end play"), Route::Faces),
    (tr!("Joints"), tr!("Bolts, dowels, fits, oil"), Route::Joints(Job::All)),
];

/// The bench.
pub fn screen() -> Vec<El> {
    let app = app();
    let opening = Memo::new(move || app.opening());
    let title = move || opening.get().map_or_else(|| tr!("Bench").to_owned(), |(name, ..)| name);
    let under = move || match opening.get() {
        None if app.is_opening() => app.build_name(),
        None => tr!("No build open yet").to_owned(),
        Some((_, kind, rotors, demo)) => {
            let invented = if demo { tr!(" · invented figures") } else { "" };
            format!(
                "{} · {rotors} {}{invented}",
                kind.name(),
                if rotors == 1 { tr!("rotor") } else { tr!("rotors") }
            )
        }
    };
    let page = el("main")
        .class("page")
        .live(move || lasting(app).into_iter().chain(joints::held(app)).collect())
        .with(link("to-find", &Route::Find.hash()).text(tr!("Find anything: warp, torque, M10…")))
        .live(move || resting(app));
    frame(title, under, false, page)
}

/// A list of elements.
pub(super) fn list(class: &str, label: &str, items: impl IntoIterator<Item = El>) -> El {
    el("ul")
        .class(class)
        .attr("aria-label", label)
        .with_all(items.into_iter().map(|item| el("li").with(item)))
}

/// What stands on the bench.
fn resting(app: App) -> Vec<El> {
    let build = app.build();
    let mut shown = Vec::new();
    match build {
        None if app.is_opening() => {}
        None => shown.push(start(app)),
        Some(_) => shown.extend(work::left_off(app)),
    }
    shown.push(text("h2", "", tr!("Check a limit")));
    shown.push(list(
        "tiles",
        tr!("Favourite limits"),
        favourites(app).iter().map(|row| tile(app, row)),
    ));
    shown.push(
        el("div")
            .class("pair")
            .with(link("plate-link", &Route::Limits.hash()).text(tr!("All limits")))
            .with(link("plate-link", &Route::Seals(1, Face::Front).hash()).text(tr!("Seal slots"))),
    );
    shown.push(text("h2", "", tr!("Work")));
    let work = WORK.iter().map(|(name, about, to)| {
        link("tile", &to.hash()).with(text("b", "", name)).with(text("span", "dim", about))
    });
    shown.push(list("tiles", tr!("Work"), work));
    if let Some(build) = &build {
        let last: Vec<_> = app.book.with(|book| {
            let lines = book.lines(build).rev().filter(|line| !line.entry.fact.is_bookmark());
            lines.take(3).map(|line| line.entry.id.clone()).collect()
        });
        shown.push(text("h2", "", tr!("Last written")));
        shown.push(list("entries", tr!("Last written"), last.into_iter().map(entry_line)));
        shown.push(link("quiet", &Route::Open.hash()).text(tr!("Open another build")));
    }
    shown.extend(reminder(app));
    if version().is_on_device.get() {
        shown.push(text(
            "p",
            "foot",
            tr!("Everything is on this phone: works without network now."),
        ));
    }
    shown.push(text(
        "p",
        "foot",
        tr!("The engine’s own manual and local rules stand above every figure here."),
    ));
    shown
}

/// How long since the book was last carried away; and, once, the question whether the browser may clear it.
fn reminder(app: App) -> Vec<El> {
    let count = app.book.with(Book::len);
    if count == 0 {
        return Vec::new();
    }
    let carried = app.settings.with(|settings| settings.carried);
    let words = carry::words(carried, device::now(), count);
    let mut lines = vec![
        text("h2", "", tr!("Carry it away")),
        text("p", "plain", &words),
        link("quiet", &Route::Book.hash()).text(tr!("Save the book as a file")),
    ];
    if !app.settings.with(|settings| settings.asked_to_keep)
        && app.keeping.with(|keeping| *keeping == Keeping::Kept)
    {
        let ask = move || {
            spawn_local(async move {
                let kept = persist::keep().await;
                app.set(|settings| settings.asked_to_keep = true);
                app.notice.set(Some(Notice::Said(if kept {
                    tr!("The browser will not clear the book by itself.").to_owned()
                } else {
                    tr!("The browser makes no promise. Save the book as a file now and then.")
                        .to_owned()
                })));
            });
        };
        lines.push(text("p", "plain", tr!("A phone that runs out of room may clear what pages keep, the book among it. Ask it to leave the book alone.")));
        lines.push(button("button", tr!("Keep the book on this phone"), ask));
    }
    lines
}

/// The favourite rows that hold for the build in hand.
pub(super) fn favourites(app: App) -> Vec<Row> {
    let kind = app.kind();
    app.sheet.with(|sheet| {
        app.settings.with(|settings| {
            let rows = settings.favourites.iter().filter_map(|id| sheet.row(id));
            rows.filter(|row| row.build.holds_for(kind)).cloned().collect()
        })
    })
}

/// The first thing a newcomer presses.
fn start(app: App) -> El {
    let open_demo = move || {
        app.open_build(demo::NAME.to_owned(), demo::KIND, demo::ROTORS, true, demo::facts())
    };
    let first_look = move || {
        app.set(|settings| settings.tour = Some(0));
        open_demo();
    };
    el("div")
        .class("start")
        .with(text(
            "p",
            "",
            tr!(
                "Check any reading against a limit right away. To write figures down, open a build."
            ),
        ))
        .with(link("button action", &Route::Open.hash()).text(tr!("Open a build")))
        .with(button("button", tr!("Two minutes with the demo engine"), first_look))
        .with(button("quiet", tr!("Look at the demo engine"), open_demo))
        .with_all(device::is_set_to(OTHER.0).then(|| other_language("quiet", &Route::Bench)))
        .with(language_missing())
}

/// Says plainly when nothing written will last, and what was kept aside.
fn lasting(app: App) -> Vec<El> {
    let mut lines = Vec::new();
    if let Keeping::NotKept(fault) = app.keeping.get() {
        lines.push(text("p", "caution", &fault.to_string()).attr("role", "alert"));
    }
    let count = app.aside.with(Vec::len);
    if count > 0 {
        let words =
            tr!("{count} records could not be read. They are kept as they are: see the book.");
        lines.push(el("p").class("caution").with(link("", &Route::Book.hash()).text(&words)));
    }
    lines
}

/// A favourite: its name and its limit, as it is written and in the other unit beside it.
fn tile(app: App, row: &Row) -> El {
    let unit = app.settings.with(|settings| row.unit_in(settings.lengths));
    link("tile", &Route::Check { row: row.id.clone(), place: String::new() }.hash())
        .with(text("b", "", &row.what))
        .with(text("span", "number", &limit_lines(&row.limit, unit)))
}

/// A row in a list: its name, its limit, how sure it is.
pub(super) fn row_link(row: &Row) -> El {
    let limit = el("span")
        .class("row-limit")
        .with(text("span", "number", &limit_line(&row.limit, row.spoken_unit())))
        .with(text("span", "kind", row.source.kind()));
    link("row-link", &Route::Check { row: row.id.clone(), place: String::new() }.hash())
        .with(text("b", "", &row.what))
        .with(limit)
}
