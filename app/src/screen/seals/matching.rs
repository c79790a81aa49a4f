//! Apex seals shared out over the rotors, by weight or by height.

use super::super::bench::list;
use crate::dom::{El, button, el, follow, text};
use crate::draft;
use crate::route::Route;
use crate::signal::*;
use crate::state::{App, app};
use crate::widget::{field, frame, switch};
use pitleaf_core::book::Fact;
use pitleaf_core::quantity::{Amount, Reading, Unit};
use pitleaf_core::seals::{Loose, LooseKind, free_number, match_by_height, match_by_weight};
use pitleaf_translated::tr;

/// The screen.
pub(in crate::screen) fn screen() -> Vec<El> {
    let app = app();
    let hash = Route::Matching.hash();
    let kept = draft::at(&hash);
    let unit = kept.as_ref().and_then(|draft| draft.unit).unwrap_or(Unit::Gram);
    let is_by_weight = RwSignal::new(unit.dimension() == Unit::Gram.dimension());
    let typed = RwSignal::new(kept.map(|draft| draft.text).unwrap_or_default());
    let fault = RwSignal::new(String::new());
    let kind = move || {
        if is_by_weight.get() { LooseKind::ApexSealWeight } else { LooseKind::ApexSealHeight }
    };
    let unit = move || if is_by_weight.get() { Unit::Gram } else { Unit::Millimetre };
    follow(move || draft::put(&hash, &typed.get(), Some(unit())));
    follow(move || {
        typed.track();
        is_by_weight.track();
        fault.set(String::new());
    });
    let pieces = Memo::new(move || {
        app.build().map_or_else(Vec::new, |build| app.book.with(|book| kind().all(book, &build)))
    });
    let write = move || {
        let kind = untrack(kind);
        let Some(number) = pieces.with_untracked(|pieces| free_number(pieces)) else {
            fault.set(tr!("The box is full: withdraw a piece first.").to_owned());
            return;
        };
        match Reading::read(&typed.get_untracked(), untrack(unit), kind.bounds()) {
            Err(words) => fault.set(words.to_string()),
            Ok(reading) => {
                let said = tr!("piece {number}: {} {}", reading.number(), reading.unit().symbol());
                app.write(vec![kind.fact(number, &reading)], said, draft::emptied(typed));
            }
        }
    };
    let by = switch(
        tr!("Match by"),
        &[(true, tr!("by weight")), (false, tr!("by height"))],
        move |weight| is_by_weight.get() == weight,
        move |weight| is_by_weight.set(weight),
    );
    let send = text("button", "button action", tr!("Write down"))
        .attr("type", "submit")
        .disabled(move || typed.with(|typed| typed.trim().is_empty()));
    let form = el("form")
        .class("form inline")
        .on_submit(write)
        .with(field(tr!("The next piece (g, or mm)"), tr!("0.00"), typed))
        .with(send);
    let page = el("main")
        .class("page")
        .with(text("p", "plain", tr!("Number the seals as you write them down; each rotor gets its share so that the sets are as nearly alike as can be.")))
        .with(by)
        .live(move || {
            let words = pieces.with(|pieces| free_number(pieces)).map_or_else(String::new, |number| tr!("Next: piece {number}"));
            vec![text("p", "dim", &words)]
        })
        .with(form)
        .with(
            el("p")
                .class("refusal")
                .attr("role", "alert")
                .attr_live("hidden", move || fault.with(String::is_empty).then(String::new))
                .text_live(move || fault.get()),
        )
        .live(move || matched(app, &pieces.get(), is_by_weight.get(), unit()))
        .live(move || pieces.with(|pieces| measured(app, pieces)));
    frame(|| tr!("Match apex seals").to_owned(), move || app.build_name(), true, page)
}

/// The sharing out, or why there is none.
fn matched(app: App, pieces: &[Loose], is_by_weight: bool, unit: Unit) -> Vec<El> {
    let amounts: Vec<Amount> = pieces.iter().map(|piece| piece.reading.amount()).collect();
    let matching = if is_by_weight { match_by_weight } else { match_by_height };
    match matching(&amounts, app.rotors()) {
        Err(fault) => vec![text("p", "refusal empty", &fault.to_string())],
        Ok(found) => {
            let numbers: Vec<usize> = pieces.iter().map(|piece| piece.number).collect();
            let mut lines = found.words(&numbers);
            lines.push(found.spread_words(is_by_weight, unit));
            let words = lines.join(" ");
            vec![
                list(
                    "rows",
                    tr!("Sets"),
                    lines.iter().map(|line| text("div", "placed-line", line)),
                ),
                button("button", tr!("Write this down"), move || {
                    let note = Fact::Note {
                        about: tr!("Apex seals matched").to_owned(),
                        words: words.clone(),
                    };
                    app.write(vec![note], tr!("apex seals matched").to_owned(), || {});
                }),
            ]
        }
    }
}

/// The pieces, each with its way out.
fn measured(app: App, pieces: &[Loose]) -> Vec<El> {
    if pieces.is_empty() {
        return Vec::new();
    }
    let line = |piece: &Loose| {
        let (entry, name) = (piece.entry.clone(), tr!("Piece {}", piece.number));
        let figure = format!("{} {}", piece.reading.number(), piece.reading.unit().symbol());
        el("div")
            .class("piece-line")
            .with(text("b", "", &name))
            .with(text("span", "number", &figure))
            .with(
                button("quiet", "withdraw", move || app.withdraw(std::slice::from_ref(&entry)))
                    .attr("aria-label", &tr!("Withdraw {name}")),
            )
    };
    vec![text("h2", "", tr!("Measured")), list("rows", tr!("Measured"), pieces.iter().map(line))]
}
