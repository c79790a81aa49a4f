//! Places that the builder gives: rows of where and how high, typed or pasted.

use super::picture::places_given;
use super::reading::{caution, slips};
use super::survey::Work;
use crate::dom::{El, button, el, text};
use crate::widget::{fault_list, help_beside, switch, unit_keys};
use pitleaf_core::calculators::Calculator;
use pitleaf_core::quantity::Unit;
use pitleaf_translated::tr;

/// The view with the rows.
pub fn rows_view(work: &Work) -> El {
    let (drawn, read, done) = (work.clone(), work.clone(), work.clone());
    let (texts, touched) = (work.texts, work.touched);
    let rows = el("textarea")
        .attrs(&[("rows", "8"), ("spellcheck", "false"), ("autocomplete", "off")])
        .attr("placeholder", "100 0 0.000\n0 60 -0.012\n0 -60 0.004")
        .bound_rows(work.typed);
    let places_in = switch(
        tr!("Places in"),
        &[(Unit::Millimetre, "mm"), (Unit::Inch, "in")],
        move |choice| texts.with(|texts| texts[1] == choice.symbol()),
        move |choice| {
            touched.set(true);
            texts.update(|texts| choice.symbol().clone_into(&mut texts[1]));
        },
    );
    let readings_in =
        unit_keys(&[Unit::Thou, Unit::Inch, Unit::Millimetre, Unit::Micrometre], work.unit);
    let form = el("div").class("form").with_all([
        el("label")
            .class("rows-field")
            .with(text("span", "", tr!("Along, across, reading: a row a place")))
            .with(rows),
        text("b", "", tr!("Places in")),
        places_in,
        text("b", "", tr!("Readings in")),
        readings_in,
    ]);
    let page = el("div")
        .class("page")
        .with(form)
        .with(fault_list(move || {
            read.set().given().1.iter().map(ToString::to_string).collect::<Vec<_>>()
        }))
        .with(slips(work))
        .with(el("div").live(move || vec![places_given(&drawn)]))
        .with(text("p", "how", work.survey.how()))
        .with(help_beside(Calculator::Survey(work.survey).help()))
        .with_all(caution(work));
    let actions = el("div").class("survey-actions").with(button(
        "button action",
        tr!("Show result"),
        move || done.on(),
    ));
    el("main").class("screen").with(page).with(actions)
}
