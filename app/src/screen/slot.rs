//! One side-seal slot: its mark, its gap, whether its seal is in.

use super::bench::list;
use super::entry_line::entry_line;
use super::seals::gap_row;
use crate::dom::{El, button, el, follow, link, text};
use crate::draft;
use crate::route::Route;
use crate::state::{App, app};
use crate::widget::{field, frame};
use leptos::prelude::*;
use pitleaf_core::book::{EntryId, Fact, Slot, Subject};

/// A slot's page.
pub fn screen(slot: Slot) -> Vec<El> {
    let app = app();
    let hash = Route::Slot(slot).hash();
    let typed = RwSignal::new(draft::at(&hash).map(|draft| draft.text).unwrap_or_default());
    follow(move || draft::put(&hash, &typed.get(), None));
    let save = move || {
        let mark = typed.get_untracked().trim().to_owned();
        if !mark.is_empty() {
            app.write(
                vec![Fact::Mark { slot, mark: mark.clone() }],
                format!("mark of {slot}: {mark}"),
                move || typed.set(String::new()),
            );
        }
    };
    let fitted = Memo::new(move |_| {
        app.build().is_some_and(|build| app.book.with(|book| book.is_fitted(&build, slot)))
    });
    let fit = move || {
        let now = !fitted.get_untracked();
        app.write(
            vec![Fact::Fitted { slot, fitted: now }],
            format!("{slot}: seal {}", if now { "fitted" } else { "taken out" }),
            || {},
        );
    };
    let send = text("button", "button action", "Write down")
        .attr("type", "submit")
        .disabled(move || typed.with(|typed| typed.trim().is_empty()));
    let form = el("form")
        .class("form inline")
        .on_submit(save)
        .with(field("As scribed on the part", "two dots and a short line", typed))
        .with(send);
    let mark = move || {
        app.build()
            .and_then(|build| app.book.with(|book| book.mark(&build, slot).map(str::to_owned)))
    };
    let seal = el("div").class("pair").live(move || {
        let measure = gap_row(app).map(|row| {
            link("plate-link", &Route::Check { row, place: slot.to_string() }.hash())
                .text("Measure the gap")
        });
        let fit =
            button("plate-link", if fitted.get() { "Fitted ✓" } else { "Seal is fitted" }, fit)
                .pressed(move || fitted.get());
        measure.into_iter().chain([fit]).collect()
    });
    let page = el("main")
        .class("page")
        .with(text("h2", "", "Mark"))
        .with(el("p").class("entry-figure").text_live(move || mark().unwrap_or_else(|| "no mark yet".to_owned())))
        .with(form)
        .with(text("h2", "", "Seal"))
        .with(seal)
        .with(el("p").class("caution").with(text("b", "", "Care: ")).text(
            "springs under the seals jump. Eye protection when grinding, and hone the burr off before measuring.",
        ))
        .live(move || history(app, slot));
    let under = move || {
        let name = app.opening().map_or_else(|| "no build open".to_owned(), |opening| opening.0);
        format!("{name} · rotor {}, {} face", slot.rotor(), slot.face().name())
    };
    frame(move || format!("Slot {slot}"), under, true, page)
}

/// Everything written of the slot, the latest first.
fn history(app: App, slot: Slot) -> Vec<El> {
    let Some(build) = app.build() else { return Vec::new() };
    let gap = gap_row(app).map(|row| Subject::Figure(row, slot.to_string()));
    let subjects = [Some(Subject::Mark(slot)), gap, Some(Subject::Fitted(slot))];
    let mut entries: Vec<(u64, EntryId)> = app.book.with(|book| {
        let of = |subject| {
            book.history(&build, &subject)
                .map(|line| (line.entry.order, line.entry.id.clone()))
                .collect::<Vec<_>>()
        };
        subjects.into_iter().flatten().flat_map(of).collect()
    });
    if entries.is_empty() {
        return Vec::new();
    }
    entries.sort();
    vec![
        text("h2", "", "Written so far"),
        list("entries", "Written so far", entries.into_iter().rev().map(|(_, id)| entry_line(id))),
    ]
}
