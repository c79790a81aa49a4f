//! One face's slots, with the whole engine's progress over it.

use super::super::bench::list;
use super::map::map;
use super::sign::sign;
use super::{gap_row, leaves_on_bench, no_row, unit_of};
use crate::dom::{El, el, link, text};
use crate::route::Route;
use crate::signal::*;
use crate::state::{App, app};
use crate::widget::frame;
use pitleaf_core::book::{Face, Slot};
use pitleaf_core::seals::{SlotState, engine_report};
use pitleaf_translated::tr;

/// What a slot shows in a list or on the map.
#[derive(Clone, PartialEq)]
pub(super) struct SlotLine {
    /// Which.
    pub(super) slot: Slot,
    /// How far its seal has come.
    pub(super) state: SlotState,
    /// The builder's mark in words.
    pub(super) mark: Option<String>,
    /// Whether a mark is drawn.
    pub(super) is_drawn: bool,
    /// What is known of its gap.
    pub(super) gap: String,
}

/// Every slot of the engine, front to rear.
pub(super) fn lines(app: App) -> Vec<SlotLine> {
    let unmeasured = |slot| SlotLine {
        slot,
        state: SlotState::NotMeasured,
        mark: None,
        is_drawn: false,
        gap: String::new(),
    };
    let Some((build, row)) = app.build().zip(gap_row(app)) else {
        return Slot::of_engine(app.rotors()).into_iter().map(unmeasured).collect();
    };
    let (set, sheet) = (leaves_on_bench(app), app.sheet.get());
    app.book.with(|book| {
        engine_report(book, &build, app.rotors(), &sheet, &row)
            .iter()
            .map(|report| SlotLine {
                slot: report.slot,
                state: report.state,
                mark: report.mark.map(str::to_owned),
                is_drawn: report.drawing.is_some(),
                gap: report.gap(unit_of(report, &row, set.as_ref())),
            })
            .collect()
    })
}

/// The engine's lines, worked out once for a screen.
pub(super) fn engine(app: App) -> Memo<Vec<SlotLine>> {
    Memo::new(move || lines(app))
}

/// "Kestrel · 3 of 12 fitted".
pub(super) fn progress(app: App, lines: &[SlotLine]) -> String {
    let fitted = lines.iter().filter(|line| line.state.is_fitted()).count();
    tr!("{} · {fitted} of {} fitted", app.build_name(), lines.len())
}

/// The slots of a face.
pub(in crate::screen) fn screen(rotor: u8, face: Face) -> Vec<El> {
    let app = app();
    let engine = engine(app);
    let faces = el("div")
        .class("faces")
        .attrs(&[
            ("role", "group"),
            ("aria-label", tr!("Face up, and how far its three seals are")),
        ])
        .live(move || {
            engine
                .with(|lines| lines.chunks(3).map(|three| face_key(three, (rotor, face))).collect())
        });
    let page = el("main").class("page").with(faces).live(move || {
        engine.with(|lines| {
            let here: Vec<SlotLine> = lines
                .iter()
                .filter(|line| (line.slot.rotor(), line.slot.face()) == (rotor, face))
                .cloned()
                .collect();
            if here.is_empty() {
                let words = tr!("This build has no rotor {rotor}. Choose a face above.");
                return vec![text("p", "plain", &words)];
            }
            if gap_row(app).is_none() {
                return vec![no_row()];
            }
            vec![
                map(app, face, &here),
                list("rows", tr!("Slots of this face"), here.iter().map(row)),
            ]
        })
    });
    let page = page.with(text("h2", "", tr!("Round the seals"))).with(list(
        "rows",
        tr!("Round the seals"),
        ways(app),
    ));
    frame(
        || tr!("Side-seal slots").to_owned(),
        move || engine.with(|lines| progress(app, lines)),
        false,
        page,
    )
}

/// Every face of the engine, drawn with its slots.
pub(in crate::screen) fn maps(app: App) -> El {
    let lines = lines(app);
    el("div").class("slot-maps").with_all(lines.chunks(3).filter_map(|three| {
        let slot = three.first()?.slot;
        let name = tr!("Rotor {}, {} face", slot.rotor(), slot.face().name());
        Some(el("figure").with(map(app, slot.face(), three)).with(text("figcaption", "", &name)))
    }))
}

/// A face's key, with a sign for each of its slots.
fn face_key(three: &[SlotLine], here: (u8, Face)) -> El {
    let Some(first) = three.first() else { return el("span") };
    let (number, side) = (first.slot.rotor(), first.slot.face());
    let states: Vec<&str> = three.iter().map(|line| line.state.name()).collect();
    let signs = el("span").class("face-signs").with_all(three.iter().map(|line| sign(line.state)));
    let key = link("unit", &Route::Seals(number, side).hash())
        .attr("aria-label", &tr!("Rotor {number} {}: {}", side.name(), states.join(", ")))
        .with(text("span", "", &format!("{number} {}", side.name())))
        .with(signs);
    if (number, side) == here { key.attr("aria-current", "true") } else { key }
}

fn row(line: &SlotLine) -> El {
    let mark = match (&line.mark, line.is_drawn) {
        (Some(mark), _) => tr!("mark: {mark}"),
        (None, true) => tr!("mark drawn").to_owned(),
        (None, false) => tr!("no mark yet").to_owned(),
    };
    let what = el("span")
        .class("entry-words")
        .with(text("b", "", &line.slot.to_string()))
        .with(text("span", "dim", &mark));
    let gap = el("span").class("entry-when").with(text("span", "number", &line.gap)).with(text(
        "span",
        "kind",
        line.state.name(),
    ));
    link("entry", &Route::Slot(line.slot).hash()).with(sign(line.state)).with(what).with(gap)
}

/// The ways from here.
fn ways(app: App) -> Vec<El> {
    let way = |words: &str, beside: &str, route: &Route| {
        link("row-link", &route.hash()).with(text("b", "", words)).with(text(
            "span",
            "row-limit dim",
            beside,
        ))
    };
    let leaves = el("span").class("row-limit dim").text_live(move || {
        leaves_on_bench(app).map_or_else(
            || tr!("none entered yet").to_owned(),
            |set| tr!("{}, {} leaves", set.name(), set.leaves().len()),
        )
    });
    vec![
        way(tr!("All slots in a table"), tr!("for reading out"), &Route::SealTable),
        link("row-link", &Route::Leaves.hash())
            .with(text("b", "", tr!("Feeler leaves")))
            .with(leaves),
        way(tr!("Which seal goes where"), tr!("used parts, a mixed box"), &Route::Placing),
        way(tr!("The gap when hot"), tr!("an estimate"), &Route::HotGap(None)),
        way(tr!("A set in one go"), tr!("apex, corner, oil, springs"), &Route::Sets),
        way(tr!("Match apex seals"), tr!("by weight or height"), &Route::Matching),
    ]
}
