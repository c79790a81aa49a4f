//! A slot's own mark: in words, and drawn with the finger.

use super::pad::{Strokes, pad, picture};
use crate::dom::{El, button, el, follow, text};
use crate::draft;
use crate::route::Route;
use crate::signal::*;
use crate::state::app;
use crate::widget::{field, frame};
use pitleaf_core::book::{Fact, Slot};
use pitleaf_core::kept;
use pitleaf_core::seals::Drawing;
use pitleaf_translated::tr;

/// The mark's page.
pub(in crate::screen) fn screen(slot: Slot) -> Vec<El> {
    let app = app();
    let hash = Route::Mark(slot).hash();
    let draft = draft::at(&hash).map(|draft| draft.text).unwrap_or_default();
    let (words, drawn) = draft.split_once('\n').unwrap_or((&draft, ""));
    let typed = RwSignal::new(words.to_owned());
    let strokes: RwSignal<Strokes> = RwSignal::new(kept::read(drawn).unwrap_or_default());
    let fault = RwSignal::new(String::new());
    follow(move || {
        let words = typed.get();
        let text = strokes.with(|strokes| {
            if strokes.is_empty() { words } else { format!("{words}\n{}", kept::write(strokes)) }
        });
        draft::put(&hash, &text, None);
    });
    let save_words = move || {
        let mark = typed.get_untracked().trim().to_owned();
        if !mark.is_empty() {
            let said = tr!("mark of {slot}: {mark}");
            app.write(vec![Fact::Mark { slot, mark }], said, draft::emptied(typed));
        }
    };
    let save_drawing = move || match Drawing::of(strokes.get_untracked()) {
        Err(ink) => fault.set(ink.to_string()),
        Ok(drawing) => {
            app.write(
                vec![Fact::Drawing { slot, drawing }],
                tr!("mark of {slot}, drawn"),
                move || {
                    strokes.set(Strokes::new());
                    fault.set(String::new());
                },
            );
        }
    };
    let send = text("button", "button action", tr!("Write down"))
        .attr("type", "submit")
        .disabled(move || typed.with(|typed| typed.trim().is_empty()));
    let form = el("form")
        .class("form inline")
        .on_submit(save_words)
        .with(field(tr!("As scribed on the part"), tr!("two dots and a short line"), typed))
        .with(send);
    let is_blank = move || strokes.with(Vec::is_empty);
    let keys = el("div")
        .class("pair")
        .with(
            button("button", tr!("Wipe"), move || {
                strokes.set(Strokes::new());
                fault.set(String::new());
            })
            .disabled(is_blank),
        )
        .with(button("button action", tr!("Keep the drawing"), save_drawing).disabled(is_blank));
    let page = el("main")
        .class("page")
        .live(move || now(slot))
        .with(text("h2", "", tr!("In words")))
        .with(form)
        .with(text("h2", "", tr!("Or drawn")))
        .with(pad(strokes))
        .with(
            el("p")
                .class("refusal")
                .attr("role", "alert")
                .attr_live("hidden", move || fault.with(String::is_empty).then(String::new))
                .text_live(move || fault.get()),
        )
        .with(keys);
    frame(move || tr!("Mark of {slot}"), move || app.build_name(), true, page)
}

/// The mark in force.
fn now(slot: Slot) -> Vec<El> {
    let app = app();
    let Some(build) = app.build() else { return Vec::new() };
    app.book.with(|book| {
        let words = book.mark(&build, slot).unwrap_or(tr!("no mark in words yet"));
        let mut shown = vec![text("p", "entry-figure", words)];
        shown.extend(book.drawing(&build, slot).map(|drawing| picture(drawing.strokes())));
        shown
    })
}
