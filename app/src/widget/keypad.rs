//! Our own keys: large, under the thumb, and acting before the finger lifts.

use super::frame::icon;
use super::switch;
use crate::device;
use crate::dom::{El, button, el};
use crate::signal::*;
use crate::state::app;
use pitleaf_core::language::{self, DECIMAL_SIGN};
use pitleaf_core::limits::Meant;
use pitleaf_core::quantity::{Reading, Unit};
use pitleaf_translated::tr;
use std::cell::Cell;
use std::rc::Rc;
use wasm_bindgen::JsCast;
use web_sys::PointerEvent;

/// A key that acts at touch-down, and still answers keyboards and screen readers, which send only a click.
fn key(spoken: &str, act: impl Fn() + 'static) -> El {
    let app = app();
    let act = Rc::new(act);
    let touched = Rc::new(Cell::new(false));
    let (act_on_click, was_touched) = (act.clone(), touched.clone());
    el("button")
        .attrs(&[
            ("type", "button"),
            ("class", "key"),
            ("data-at-once", ""),
            ("aria-label", spoken),
        ])
        .on("pointerdown", move |event| {
            if event.dyn_ref::<PointerEvent>().is_some_and(|event| event.button() == 0) {
                touched.set(true);
                if app.settings.with_untracked(|settings| settings.buzz) {
                    device::buzz();
                }
                act();
            }
        })
        .on("click", move |_| {
            if !was_touched.take() {
                act_on_click();
            }
        })
}

/// A key that types: what is on it, what it types, and how it is read out.
pub type Typing = (&'static str, &'static str, &'static str);

/// The figure keys, writing into `typed`; `extra` stand in the last column, `last` at the bottom right.
pub fn keypad(
    typed: RwSignal<String>,
    extra: [Typing; 2],
    last: impl IntoIterator<Item = El>,
) -> El {
    let types = move |(face, types, spoken): Typing| {
        key(spoken, move || typed.update(|typed| typed.push_str(types))).text(face)
    };
    let digit = move |face: &'static str| types((face, face, face));
    let erase = key(tr!("Delete the last character"), move || {
        typed.update(|typed| {
            typed.pop();
        });
    })
    .with(icon("0 0 28 20", &["M9 2h17v16H9L2 10zM14 7l6 6m0-6-6 6"]));
    let [upper, lower] = extra;
    el("div")
        .class("keypad")
        .attrs(&[("role", "group"), ("aria-label", tr!("Figure keys"))])
        .with_all(["7", "8", "9"].map(digit))
        .with(erase)
        .with_all(["4", "5", "6"].map(digit))
        .with(types(upper))
        .with_all(["1", "2", "3"].map(digit))
        .with(types(lower))
        .with(digit("0"))
        .with(types((DECIMAL_SIGN, DECIMAL_SIGN, tr!("Decimal point"))))
        .with_all(last)
}

/// The unit switch: it holds for what is typed here, and until that is written.
pub fn unit_keys(units: &[Unit], unit: RwSignal<Unit>) -> El {
    let choices: Vec<(Unit, &str)> = units.iter().map(|unit| (*unit, unit.symbol())).collect();
    switch(
        tr!("Unit"),
        &choices,
        move |choice| unit.get() == choice,
        move |choice| unit.set(choice),
    )
}

/// The unit switch of one field: it stands at the unit typed behind the figure, and a key pressed takes its place.
pub fn unit_keys_of(units: &[Unit], unit: RwSignal<Unit>, typed: RwSignal<String>) -> El {
    let choices: Vec<(Unit, &str)> = units.iter().map(|unit| (*unit, unit.symbol())).collect();
    switch(
        tr!("Unit"),
        &choices,
        move |choice| typed.with(|typed| Reading::unit_of(typed, unit.get())) == choice,
        move |choice| {
            unit.set(choice);
            if let Some(bare) = typed.with_untracked(|typed| Reading::without_unit(typed)) {
                typed.set(bare);
            }
        },
    )
}

/// The unit beside a big figure: the one typed behind it, else the one set.
pub fn figure_unit(unit: RwSignal<Unit>, typed: RwSignal<String>) -> El {
    el("span").class("figure-unit").text_live(move || {
        typed.with(|typed| Reading::unit_of(typed, unit.get())).symbol().to_owned()
    })
}

/// Keys that read a figure as it may have been meant.
pub fn meant_keys(ways: Vec<Meant>, unit: RwSignal<Unit>, typed: RwSignal<String>) -> Option<El> {
    let key = |way: Meant| {
        let words = way.to_string();
        button("unit", &words, move || {
            unit.set(way.unit);
            typed.set(language::figure(&way.text));
        })
    };
    (!ways.is_empty()).then(|| {
        el("div")
            .class("units meant")
            .attrs(&[("role", "group"), ("aria-label", tr!("How it may have been meant"))])
            .with_all(ways.into_iter().map(key))
    })
}
