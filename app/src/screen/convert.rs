//! One figure in every unit at once.

use super::check::check_frame;
use crate::dom::{El, button, el, follow, text};
use crate::draft;
use crate::route::Route;
use crate::signal::*;
use crate::state::app;
use crate::widget::{figure_input, frame, help, keypad, switch};
use pitleaf_core::calculators::Calculator;
use pitleaf_core::gather::Gather;
use pitleaf_core::quantity::{
    Amount, Bounds, Dimension, Fault, Reading, Rounding, Span, Tolerance, Unit, conversions,
    nearest_leaf, nearest_sixty_fourth, places_for, usual_leaves,
};
use pitleaf_translated::tr;

/// The converter.
pub fn screen() -> Vec<El> {
    let app = app();
    let hash = Route::Convert.hash();
    let kept = draft::at(&hash);
    let unit =
        RwSignal::new(kept.as_ref().and_then(|draft| draft.unit).unwrap_or(Unit::Millimetre));
    let typed = RwSignal::new(kept.map(|draft| draft.text).unwrap_or_default());
    follow(move || draft::put(&hash, &typed.get(), Some(unit.get())));
    let dimension = Memo::new(move || unit.get().dimension());
    let choose = move |event| {
        let wanted = event_target_value(&event);
        if let Some(dimension) =
            Dimension::ALL.into_iter().find(|dimension| dimension.name() == wanted)
        {
            let remembered = app.settings.with_untracked(|settings| settings.unit(dimension));
            if let Some(first) = remembered.or_else(|| dimension.units().next()) {
                unit.set(first);
            }
        }
    };
    let figure = el("div")
        .class("figure-line")
        .with(figure_input(tr!("Figure"), typed))
        .with(el("span").class("figure-unit").text_live(move || unit.get().symbol().to_owned()));
    let answer = el("div")
        .class("check-answer")
        .with(figure)
        .live(move || answer(&typed.get(), unit.get()))
        .with(help(&Calculator::Convert.help()));
    let what = el("select")
        .attr("aria-label", tr!("What is measured"))
        .with_all(Dimension::ALL.map(|choice| {
            el("option")
                .attr("value", choice.name())
                .text(choice.name())
                .attr_live("selected", move || (dimension.get() == choice).then(String::new))
        }))
        .on("change", choose);
    let units = el("div").class("units-live").live(move || vec![units_of(dimension.get(), unit)]);
    let slash = button("key", "/", move || typed.update(|typed| typed.push('/')))
        .attr("aria-label", tr!("Fraction bar"));
    let clear = button("key", tr!("Clear"), move || typed.set(String::new()));
    let keys = el("div")
        .class("check-keys")
        .with(el("div").class("convert-what").with(what).with(units))
        .with(keypad(
            typed,
            [("±", "±", tr!("plus or minus")), ("−", "-", tr!("Minus"))],
            [slash, clear],
        ));
    frame(
        || tr!("Convert").to_owned(),
        || tr!("One figure, every unit; exact where it can be").to_owned(),
        false,
        check_frame(app, answer, keys),
    )
}

/// The unit switch. What is chosen here is not remembered: a check speaks in the unit chosen there.
fn units_of(dimension: Dimension, unit: RwSignal<Unit>) -> El {
    let choices: Vec<(Unit, &str)> =
        dimension.units().take(4).map(|unit| (unit, unit.symbol())).gather();
    switch(
        tr!("Unit"),
        &choices,
        move |choice| unit.get() == choice,
        move |choice| unit.set(choice),
    )
}

fn answer(typed: &str, unit: Unit) -> Vec<El> {
    let bounds = Bounds::widest(unit.dimension());
    if typed.contains('±') {
        return Tolerance::read(typed, unit, bounds)
            .map_or_else(|fault| vec![refusal(&fault)], |tolerance| limits(&tolerance));
    }
    match Reading::read(typed, unit, bounds) {
        Ok(reading) => {
            let mut tables = vec![every_unit(&reading)];
            tables.extend(near(reading.amount(), reading.step()));
            tables
        }
        Err(fault) => vec![refusal(&fault)],
    }
}

fn refusal(fault: &Fault) -> El {
    match fault {
        Fault::Empty => text(
            "p",
            "refusal empty",
            tr!("Type a figure. A drawing’s 11 ± 0.3 gives limits, rounded inward."),
        ),
        fault => text("p", "refusal", &fault.to_string()),
    }
    .attr("role", "status")
}

fn row(unit: &str, figure: &str, beside: &str) -> El {
    el("tr")
        .with(text("th", "", unit).attr("scope", "row"))
        .with(text("td", "number", figure))
        .with(text("td", "dim", beside))
}

fn table(label: &str, rows: impl IntoIterator<Item = El>) -> El {
    el("table").class("units-table").attr("aria-label", label).with(el("tbody").with_all(rows))
}

fn every_unit(reading: &Reading) -> El {
    let rows = conversions(reading).into_iter().map(|converted| {
        let (large, beside) = converted.shown();
        row(converted.unit.symbol(), large, &beside)
    });
    table(tr!("In every unit"), rows)
}

/// The nearest 64th of an inch and the nearest leaf of a usual set, for lengths.
fn near(amount: Amount, step: Span) -> Option<El> {
    let (fraction, off_fraction) = nearest_sixty_fourth(amount)?;
    let fraction = match fraction {
        (whole, 0, _) => tr!("{whole} in"),
        (0, numerator, denominator) => format!("{numerator}/{denominator} in"),
        (whole, numerator, denominator) => format!("{whole} {numerator}/{denominator} in"),
    };
    let (leaf, off_leaf) = nearest_leaf(amount, &usual_leaves())?;
    let leaf = format!("{} mm", leaf.show(Unit::Millimetre, 2, Rounding::Nearest));
    Some(table(
        tr!("Nearest"),
        [
            row("1/64", &fraction, &off(off_fraction, Unit::Inch, step)),
            row(tr!("leaf"), &leaf, &off(off_leaf, Unit::Millimetre, step)),
        ],
    ))
}

fn off(rest: Span, unit: Unit, step: Span) -> String {
    if rest.is_zero() {
        return tr!("exactly").to_owned();
    }
    let way = if rest.is_negative() { tr!("under it") } else { tr!("over it") };
    format!(
        "{} {} {way}",
        rest.size().show(unit, places_for(step, unit).min(5), Rounding::Nearest),
        unit.symbol()
    )
}

/// A tolerance as limits in every unit, rounded inward.
fn limits(tolerance: &Tolerance) -> Vec<El> {
    let rows = tolerance.limits().into_iter().map(|(unit, coarse, fine)| {
        row(unit.symbol(), &format!("{}…{}", coarse.0, coarse.1), &format!("{}…{}", fine.0, fine.1))
    });
    vec![
        text(
            "p",
            "plain",
            tr!("Limits rounded inward: nothing shown here admits what the drawing rejects."),
        ),
        table(tr!("Limits in every unit"), rows),
    ]
}
