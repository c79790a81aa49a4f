//! Which seal goes where: loose seals and slots measured, and the assignment.

use super::super::bench::list;
use super::{gap_row, no_row};
use crate::dom::{El, button, el, follow, text};
use crate::draft;
use crate::route::Route;
use crate::signal::*;
use crate::state::{App, app};
use crate::widget::{field, frame, switch};
use pitleaf_core::book::{Fact, Slot};
use pitleaf_core::limits::{Row, limit_line};
use pitleaf_core::quantity::{Amount, Bounds, Dimension, Fault, Reading, Unit};
use pitleaf_core::seals::{
    Loose, LooseKind, Written, assign, free_number, length_doubt, slot_from_gap, slot_length_fact,
    slot_lengths,
};
use pitleaf_translated::tr;

/// What is being entered.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Entering {
    Seal,
    Slot,
    Gap,
}

#[derive(Clone, Copy)]
struct Typed {
    entering: RwSignal<Entering>,
    figure: RwSignal<String>,
    unit: RwSignal<Unit>,
    slot: RwSignal<Slot>,
    seal: RwSignal<usize>,
    aim: RwSignal<String>,
    fault: RwSignal<String>,
}

/// The screen.
pub(in crate::screen) fn screen() -> Vec<El> {
    let app = app();
    let title = || tr!("Which seal goes where").to_owned();
    let under = move || app.build_name();
    let (Some(row), Some(first)) = (gap_row(app), Slot::of_engine(1).into_iter().next()) else {
        return frame(title, under, true, el("main").class("page").with(no_row()));
    };
    let hash = Route::Placing.hash();
    let kept = draft::at(&hash);
    let unit = kept.as_ref().and_then(|draft| draft.unit).unwrap_or(Unit::Millimetre);
    let typed = Typed {
        entering: RwSignal::new(Entering::Seal),
        figure: RwSignal::new(kept.map(|draft| draft.text).unwrap_or_default()),
        unit: RwSignal::new(unit),
        slot: RwSignal::new(first),
        seal: RwSignal::new(1),
        aim: RwSignal::new(tr!("2 thou").to_owned()),
        fault: RwSignal::default(),
    };
    follow(move || draft::put(&hash, &typed.figure.get(), Some(typed.unit.get())));
    follow(move || {
        typed.figure.track();
        typed.entering.track();
        typed.fault.set(String::new());
    });
    let limit = limit_line(&row.limit, row.spoken_unit());
    let page = el("main")
        .class("page")
        .with(text("p", "plain", tr!("Number the seals, measure each seal and each slot at one temperature, and the fewest are left out and the least is ground off.")))
        .with(form(app, typed))
        .live(move || measured(app))
        .with(text("h2", "", tr!("What goes where")))
        .with(el("div").class("form").with(field(&tr!("Gap aimed at (limit {limit})"), tr!("2 thou"), typed.aim)))
        .live(move || placed(app, &row, &typed.aim.get(), typed.unit.get()));
    frame(title, under, true, page)
}

fn seals(app: App) -> Vec<Loose> {
    app.build().map_or_else(Vec::new, |build| {
        app.book.with(|book| LooseKind::SideSealLength.all(book, &build))
    })
}

/// What is measured, of which piece, and the key that writes it.
fn form(app: App, typed: Typed) -> El {
    let what = switch(
        tr!("What is measured"),
        &[
            (Entering::Seal, tr!("a seal")),
            (Entering::Slot, tr!("a slot")),
            (Entering::Gap, tr!("by a gap")),
        ],
        move |one| typed.entering.get() == one,
        move |one| typed.entering.set(one),
    );
    let units = switch(
        tr!("Unit"),
        &[(Unit::Millimetre, "mm"), (Unit::Inch, "in"), (Unit::Thou, "thou")],
        move |unit| typed.unit.get() == unit,
        move |unit| typed.unit.set(unit),
    );
    let which = el("div").class("placing-which").live(move || {
        let slots = || {
            let option = |slot: &Slot| {
                let option = el("option").attr("value", &slot.to_string()).text(&slot.to_string());
                if typed.slot.get() == *slot { option.attr("selected", "") } else { option }
            };
            let select = el("select")
                .with_all(Slot::of_engine(app.rotors()).iter().map(option))
                .on("change", move |event| {
                    if let Some(slot) = Slot::named(&event_target_value(&event)) {
                        typed.slot.set(slot);
                    }
                });
            el("label").class("line-field").with(text("span", "", tr!("Slot"))).with(select)
        };
        let with_seal = || {
            let option = |seal: &Loose| {
                let number = seal.number.to_string();
                let option = el("option").attr("value", &number).text(&number);
                if typed.seal.get() == seal.number { option.attr("selected", "") } else { option }
            };
            let select =
                el("select").with_all(seals(app).iter().map(option)).on("change", move |event| {
                    typed.seal.set(event_target_value(&event).parse().unwrap_or(1))
                });
            el("label").class("line-field").with(text("span", "", tr!("with seal"))).with(select)
        };
        match typed.entering.get() {
            Entering::Seal => {
                let number = free_number(&seals(app));
                let words = number.map_or_else(
                    || tr!("The box is full: withdraw a seal first.").to_owned(),
                    |number| tr!("Seal {number}: write the number on it or on its bag."),
                );
                vec![text("p", "dim", &words)]
            }
            Entering::Slot => vec![slots()],
            Entering::Gap if seals(app).is_empty() => {
                vec![text(
                    "p",
                    "dim",
                    tr!("Measure a seal first: the slot is its length and the gap together."),
                )]
            }
            Entering::Gap => vec![slots(), with_seal()],
        }
    });
    let send = text("button", "button action", tr!("Write down"))
        .attr("type", "submit")
        .disabled(move || typed.figure.with(|figure| figure.trim().is_empty()));
    let label = el("label")
        .with(el("span").text_live(move || {
            match typed.entering.get() {
                Entering::Seal => tr!("The seal’s length"),
                Entering::Slot => tr!("From corner seal to corner seal"),
                Entering::Gap => tr!("The gap that seal leaves there"),
            }
            .to_owned()
        }))
        .with(
            el("input")
                .attrs(&[
                    ("type", "text"),
                    ("inputmode", "decimal"),
                    ("autocomplete", "off"),
                    ("placeholder", "0"),
                ])
                .bound(typed.figure),
        );
    el("div")
        .with(what)
        .with(which)
        .with(units)
        .with(
            el("form")
                .class("form inline")
                .on_submit(move || write(app, typed))
                .with(label)
                .with(send),
        )
        .with(
            el("p")
                .class("refusal")
                .attr("role", "alert")
                .attr_live("hidden", move || typed.fault.with(String::is_empty).then(String::new))
                .text_live(move || typed.fault.get()),
        )
}

/// The fact typed and the line that says it.
fn fact(app: App, typed: Typed) -> Result<(Fact, String), String> {
    let (figure, unit, slot) =
        (typed.figure.get_untracked(), typed.unit.get_untracked(), typed.slot.get_untracked());
    let say = |fault: Fault| fault.to_string();
    let size = |text: &str| Reading::read(text, unit, &Bounds::SIZE).map_err(say);
    let known = untrack(|| seals(app));
    match typed.entering.get_untracked() {
        Entering::Seal => {
            let number =
                free_number(&known).ok_or(tr!("The box is full: withdraw a seal first."))?;
            let reading = size(&figure)?;
            let said = tr!("seal {number}: {} {}", reading.number(), reading.unit().symbol());
            Ok((LooseKind::SideSealLength.fact(number, &reading), said))
        }
        Entering::Slot => {
            let reading = size(&figure)?;
            let said = tr!("slot {slot}: {} {}", reading.number(), reading.unit().symbol());
            Ok((slot_length_fact(slot, &reading), said))
        }
        Entering::Gap => {
            let number = typed.seal.get_untracked();
            let seal =
                known.iter().find(|seal| seal.number == number).or(known.first()).ok_or(tr!(
                    "Measure a seal first: the slot is its length and the gap together."
                ))?;
            let gap = Written::read(&figure, unit, &Bounds::GAP).map_err(say)?;
            let reading = slot_from_gap(seal.reading.amount(), &gap).map_err(say)?;
            let said = tr!(
                "slot {slot}: {} mm, from seal {} and a gap of {gap}",
                reading.number(),
                seal.number
            );
            Ok((slot_length_fact(slot, &reading), said))
        }
    }
}

fn write(app: App, typed: Typed) {
    match fact(app, typed) {
        Err(words) => typed.fault.set(words),
        Ok((fact, said)) => {
            let mut facts = vec![fact];
            // How a slot came by its length stays readable.
            if typed.entering.get_untracked() == Entering::Gap {
                facts.insert(
                    0,
                    Fact::Note {
                        about: tr!("Which seal goes where").to_owned(),
                        words: said.clone(),
                    },
                );
            }
            let emptied = draft::emptied(typed.figure);
            app.write(facts, said, move || {
                emptied();
                if typed.entering.get_untracked() != Entering::Seal {
                    let all = Slot::of_engine(app.rotors());
                    let at = all.iter().position(|slot| *slot == typed.slot.get_untracked());
                    if let Some(next) = at.and_then(|at| all.get(at + 1)) {
                        typed.slot.set(*next);
                    }
                }
            });
        }
    }
}

/// What was measured, each with its way out.
fn measured(app: App) -> Vec<El> {
    let Some(build) = app.build() else { return Vec::new() };
    let line = |name: String, reading: &Reading, entry: pitleaf_core::book::EntryId| {
        el("div")
            .class("piece-line")
            .with(text("b", "", &name))
            .with(text(
                "span",
                "number",
                &format!("{} {}", reading.number(), reading.unit().symbol()),
            ))
            .with(
                button("quiet", "withdraw", move || app.withdraw(std::slice::from_ref(&entry)))
                    .attr("aria-label", &tr!("Withdraw {name}")),
            )
    };
    let seals: Vec<El> = seals(app)
        .iter()
        .map(|seal| line(tr!("Seal {}", seal.number), &seal.reading, seal.entry.clone()))
        .collect();
    let slots: Vec<El> = app
        .book
        .with(|book| slot_lengths(book, &build, app.rotors()))
        .iter()
        .map(|(slot, entry, reading)| line(slot.to_string(), reading, entry.clone()))
        .collect();
    if seals.is_empty() && slots.is_empty() {
        return Vec::new();
    }
    vec![
        text("h2", "", &tr!("Measured: {} seals, {} slots", seals.len(), slots.len())),
        list("rows", tr!("Measured"), seals.into_iter().chain(slots)),
    ]
}

/// The assignment, or why there is none.
fn placed(app: App, row: &Row, aim: &str, unit: Unit) -> Vec<El> {
    let Some(build) = app.build() else { return Vec::new() };
    let seals = seals(app);
    let slots = app.book.with(|book| slot_lengths(book, &build, app.rotors()));
    let aim = match Reading::read(aim, Unit::Millimetre, Bounds::widest(Dimension::Length)) {
        Ok(aim) => aim.amount(),
        Err(fault) => return vec![text("p", "refusal", &tr!("Gap aimed at: {fault}"))],
    };
    let lengths: Vec<Amount> = seals.iter().map(|seal| seal.reading.amount()).collect();
    let places: Vec<Amount> = slots.iter().map(|(_, _, reading)| reading.amount()).collect();
    let found = match assign(&lengths, &places, &row.limit, aim) {
        Ok(found) => found,
        Err(fault) => return vec![text("p", "refusal empty", &fault.to_string())],
    };
    let unit = if unit == Unit::Inch { Unit::Thou } else { unit };
    let mut lines: Vec<(Slot, String)> = found
        .placed
        .iter()
        .map(|placed| {
            let (seal, (slot, _, length)) = (&seals[placed.seal], &slots[placed.slot]);
            let doubt = app.sheet.with(|sheet| length_doubt(sheet, &seal.reading, length));
            (*slot, placed.words(seal.number, unit, doubt))
        })
        .chain(found.empty.iter().map(|empty| (slots[empty.slot].0, empty.words(unit))))
        .collect();
    lines.sort_by_key(|(slot, _)| *slot);
    let mut shown = vec![list(
        "rows",
        tr!("What goes where"),
        lines.iter().map(|(slot, words)| {
            el("div")
                .class("placed-line")
                .with(text("b", "", &slot.to_string()))
                .with(text("span", "", words))
        }),
    )];
    if !found.unused.is_empty() {
        let left: Vec<String> =
            found.unused.iter().map(|&seal| seals[seal].number.to_string()).collect();
        shown.push(text("p", "plain", &tr!("Left over: {}.", left.join(", "))));
    }
    let words: Vec<String> = lines.iter().map(|(slot, words)| format!("{slot}: {words}")).collect();
    shown.push(button("button", tr!("Write this down"), move || {
        let note =
            Fact::Note { about: tr!("Which seal goes where").to_owned(), words: words.join(" ") };
        app.write(vec![note], tr!("which seal goes where").to_owned(), || {});
    }));
    shown
}
