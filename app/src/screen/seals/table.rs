//! Every slot of the engine in a table, for reading out.

use super::face::{SlotLine, engine, progress};
use super::sign::sign;
use crate::dom::{El, el, link, text};
use crate::route::Route;
use crate::state::app;
use crate::widget::frame;
use pitleaf_translated::tr;

/// The table.
pub(in crate::screen) fn screen() -> Vec<El> {
    let app = app();
    let engine = engine(app);
    let head = [tr!("Slot"), tr!("Gap"), tr!("Seal")]
        .map(|words| text("th", "", words).attr("scope", "col"));
    let table = el("table")
        .class("slot-table")
        .with(text("caption", "unseen", tr!("Side-seal slots of the engine, front to rear")))
        .with(el("thead").with(el("tr").with_all(head)))
        .with(el("tbody").live(move || engine.with(|lines| lines.iter().map(row).collect())));
    frame(
        || tr!("All slots").to_owned(),
        move || engine.with(|lines| progress(app, lines)),
        true,
        el("main").class("page").with(table),
    )
}

fn row(line: &SlotLine) -> El {
    let name = link("", &Route::Slot(line.slot).hash()).text(&line.slot.to_string());
    let mut slot = el("th").attr("scope", "row").with(name);
    if let Some(mark) = &line.mark {
        slot = slot.with(text("span", "dim", mark));
    }
    let gap = if line.gap.is_empty() { "–" } else { &line.gap };
    let state = el("td").with(el("span").class("slot-state").with(sign(line.state)).with(text(
        "span",
        "",
        line.state.name(),
    )));
    el("tr").with(slot).with(text("td", "number", gap)).with(state)
}
