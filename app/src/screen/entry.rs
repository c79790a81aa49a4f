//! One entry, and every value its subject ever had.

use super::bench::list;
use super::entry_line::entry_line;
use crate::device;
use crate::dom::{El, button, el, text};
use crate::state::{App, app};
use crate::widget::frame;
use pitleaf_core::book::{EntryId, Fact};
use pitleaf_core::gather::Gather;

/// An entry with its history; withdraw it, or let it hold again.
pub fn screen(id: EntryId) -> Vec<El> {
    let app = app();
    let about = {
        let id = id.clone();
        move || {
            let words = app.book.with(|book| {
                book.entry(&id).map(|entry| app.sheet.with(|sheet| entry.words(sheet)))
            });
            words.map_or_else(|| "No such entry".to_owned(), |words| words.about)
        }
    };
    let page = el("main").class("page").live(move || shown(app, &id).unwrap_or_default());
    frame(about, || "An entry and its history".to_owned(), true, page)
}

fn shown(app: App, id: &EntryId) -> Option<Vec<El>> {
    app.book.with(|book| {
        let entry = book.entry(id)?;
        let says = app.sheet.with(|sheet| entry.words(sheet)).says;
        let withdrawn = book.is_withdrawn(id);
        let at = device::moment(entry.at);
        let when = if withdrawn {
            format!("Written {at}. Withdrawn: it no longer counts, and stays in the book.")
        } else {
            format!("Written {at}.")
        };
        let mut lines = vec![
            text("p", if withdrawn { "entry-figure withdrawn" } else { "entry-figure" }, &says),
            text("p", "dim", &when),
        ];
        if !matches!(entry.fact, Fact::Withdrawn { .. } | Fact::Restored { .. }) {
            let id = [id.clone()];
            lines.push(button(
                "button",
                if withdrawn { "Let it hold again" } else { "Withdraw" },
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
                    .gather()
            })
            .unwrap_or_default();
        if history.len() > 1 {
            lines.push(text("h2", "", "Every value it had, the latest first"));
            lines.push(list("entries", "History", history.into_iter().map(entry_line)));
        }
        Some(lines)
    })
}
