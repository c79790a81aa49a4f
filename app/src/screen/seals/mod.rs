//! Seals: the slots of the engine, each seal's way to its fit, and what is measured of the other seals.

mod face;
mod hot_gap;
mod leaves;
mod map;
mod mark;
mod matching;
mod pad;
mod placing;
mod set;
mod sets;
mod sign;
mod slot;
mod slot_answer;
mod table;
mod trial_keys;

pub(super) use face::{maps, screen as face_screen};
pub(super) use hot_gap::screen as hot_gap_screen;
pub(super) use leaves::screen as leaves_screen;
pub(super) use mark::screen as mark_screen;
pub(super) use matching::screen as matching_screen;
pub(super) use pad::picture;
use pitleaf_translated::tr;
pub(super) use placing::screen as placing_screen;
pub(super) use set::screen as set_screen;
pub(super) use sets::screen as sets_screen;
pub(super) use slot::screen as slot_screen;
pub(super) use table::screen as table_screen;

use crate::dom::{El, el, text};
use crate::state::App;
use pitleaf_core::book::{BuildId, Slot};
use pitleaf_core::limits::Row;
use pitleaf_core::quantity::Unit;
use pitleaf_core::seals::{self, LeafSet, SlotReport, Step, leaf_set, slot_report};

/// How many leaves are put together at most: what the advice may propose.
const STACKED: usize = 3;

/// The row a side seal's gap is checked against in this build.
fn gap_row(app: App) -> Option<Row> {
    let kind = app.kind();
    app.sheet.with(|sheet| seals::gap_row(sheet, kind).cloned())
}

/// What the book says of a slot, if a build is open and the sheet knows its gap.
fn with_report<T>(
    app: App,
    slot: Slot,
    look: impl FnOnce(&SlotReport<'_>, &Row) -> T,
) -> Option<T> {
    let (build, row): (BuildId, Row) = app.build().zip(gap_row(app))?;
    let sheet = app.sheet.get();
    app.book.with(|book| Some(look(&slot_report(book, &build, slot, &sheet, &row), &row)))
}

/// The leaves on the bench.
fn leaves_on_bench(app: App) -> Option<LeafSet> {
    app.book.with(|book| leaf_set(book).cloned())
}

/// The unit to speak of a gap in: that of the last leaf tried, else of the leaves on the bench, else the sheet's.
fn unit_of(report: &SlotReport<'_>, row: &Row, set: Option<&LeafSet>) -> Unit {
    let tried = report.trials.iter().rev().find_map(|(_, trial)| trial.leaves());
    let leaf = tried
        .and_then(|stack| stack.leaves().first())
        .or_else(|| set.and_then(|set| set.leaves().first()));
    match leaf.map_or_else(|| row.spoken_unit(), |leaf| leaf.unit()) {
        Unit::Inch => Unit::Thou,
        unit => unit,
    }
}

/// A caution at its step.
fn caution(step: Step) -> El {
    el("p").class("caution").with(text("b", "", tr!("Care: "))).text(step.caution())
}

/// A screen's only line where there is no limit to check against.
fn no_row() -> El {
    text(
        "p",
        "plain",
        tr!(
            "The sheet has no limit for the gap of a side seal in this build. Put one in under Limits."
        ),
    )
}
