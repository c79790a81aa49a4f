//! One entry, and every value its subject ever had.

use super::bench::list;
use super::check;
use super::entry_line::entry_line;
use crate::device;
use crate::dom::{El, button, el, link, text};
use crate::route::Route;
use crate::signal::*;
use crate::state::{App, app};
use crate::widget::{frame, verdict_card};
use pitleaf_core::book::{EntryId, Fact, Figure, judged};
use pitleaf_core::limits::{Sheet, limit_lines};
use pitleaf_translated::tr;

/// An entry with its history; withdraw it, or let it hold again.
pub fn screen(id: EntryId) -> Vec<El> {
    let app = app();
    let about = {
        let id = id.clone();
        move || {
            let words = app.book.with(|book| {
                book.entry(&id).map(|entry| app.sheet.with(|sheet| book.words(entry, sheet)))
            });
            words.map_or_else(|| tr!("No such entry").to_owned(), |words| words.about)
        }
    };
    let page = el("main").class("page").live(move || shown(app, &id).unwrap_or_else(|| none(app)));
    frame(about, || tr!("An entry and its history").to_owned(), true, page)
}

/// What stands there while the book has no such entry.
fn none(app: App) -> Vec<El> {
    let words = if app.is_opening() {
        app.build_name()
    } else {
        tr!("The book has no such entry: it may lie in another phone’s. Join the two books, or look for it here.").to_owned()
    };
    vec![text("p", "plain", &words), link("button", &Route::Book.hash()).text(tr!("To the book"))]
}

fn shown(app: App, id: &EntryId) -> Option<Vec<El>> {
    app.book.with(|book| {
        let entry = book.entry(id)?;
        // As its own build has it, which need not be the one in hand.
        let sheet = book.sheet_for(Some(&entry.build));
        let says = book.words(entry, &sheet).says;
        let withdrawn = book.is_withdrawn(id);
        let at = device::moment(entry.at);
        let right = book.put_right_by(id);
        let when = match (right, withdrawn) {
            (Some(_), _) => {
                tr!("Written {at}. Put right: it no longer counts, and stays in the book.")
            }
            (None, true) => {
                tr!("Written {at}. Withdrawn: it no longer counts, and stays in the book.")
            }
            (None, false) => tr!("Written {at}."),
        };
        let mut lines = vec![
            text("p", if withdrawn { "entry-figure withdrawn" } else { "entry-figure" }, &says),
            text("p", "dim", &when),
        ];
        if let Fact::Figure(figure) = &entry.fact {
            lines.extend(judgement(figure, &sheet));
            let is_right_here = !withdrawn && app.build().is_some_and(|build| build == entry.build);
            if is_right_here && judged(figure, &sheet).is_some() {
                let again = Route::PutRight(id.clone());
                lines.push(link("button action", &again.hash()).text(tr!("Put it right")));
            }
            if let Some(old) = &figure.instead_of {
                lines.push(list("entries", tr!("In place of"), [entry_line(old.clone())]));
            }
        }
        if let Some(right) = right {
            lines.push(list("entries", tr!("Put right by"), [entry_line(right.id.clone())]));
        }
        if let Some(slot) = entry.fact.slot() {
            let words = tr!("Slot {slot}");
            lines.push(link("plate-link", &Route::Slot(slot).hash()).text(&words));
        }
        if let Some(of) = entry.fact.of_entry() {
            lines.push(list("entries", tr!("The entry"), [entry_line(of.clone())]));
        } else {
            let id = [id.clone()];
            lines.push(button(
                "button",
                if withdrawn { tr!("Let it hold again") } else { tr!("Withdraw") },
                move || {
                    if withdrawn { app.restore(&id) } else { app.withdraw(&id) }
                },
            ));
        }
        let history: Vec<EntryId> = entry
            .fact
            .subject()
            .map(|subject| {
                book.history(&entry.build, &subject)
                    .rev()
                    .map(|line| line.entry.id.clone())
                    .collect()
            })
            .unwrap_or_default();
        if history.len() > 1 {
            lines.push(text("h2", "", tr!("Every value it had, the latest first")));
            lines.push(list("entries", tr!("History"), history.into_iter().map(entry_line)));
        }
        Some(lines)
    })
}

/// A reading's verdict, with the limit, where that is from, and the gauge.
fn judgement(figure: &Figure, sheet: &Sheet) -> Vec<El> {
    let Some((row, reading, by)) = judged(figure, sheet) else { return Vec::new() };
    let unit = reading.unit();
    let shown = check::shown(sheet, row, figure.gauge, &Ok(reading), unit);
    let limit =
        tr!("Limit {}, read with: {}.", limit_lines(&row.limit, unit), by.gauge.kind.name());
    vec![
        verdict_card(Memo::new(move || shown.clone())),
        text("p", "plain", &limit),
        text("p", "source", &row.source.to_string()),
    ]
}
