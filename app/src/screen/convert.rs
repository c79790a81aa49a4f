//! One figure in every unit at once.

use super::check::check_frame;
use crate::dom::{El, button, el, follow, text};
use crate::draft;
use crate::route::Route;
use crate::signal::*;
use crate::state::app;
use crate::widget::{figure_input, frame, help, keypad, meant_keys, switch};
use pitleaf_core::calculators::Calculator;
use pitleaf_core::limits::two_readings;
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
    // A unit typed behind the figure goes before the one set, of whatever it is a unit.
    let in_force =
        Memo::new(move || typed.with(|typed| Tolerance::unit_behind(typed)).unwrap_or(unit.get()));
    let dimension = Memo::new(move || in_force.get().dimension());
    let choose = move |event| {
        let wanted = event_target_value(&event);
        let chosen = Dimension::ALL.into_iter().find(|dimension| dimension.name() == wanted);
        if let Some(first) = chosen.and_then(|dimension| dimension.units().next()) {
            set_unit(first, unit, typed);
        }
    };
    let figure = el("div").class("figure-line").with(figure_input(tr!("Figure"), typed)).with(
        el("span").class("figure-unit").text_live(move || in_force.get().symbol().to_owned()),
    );
    let answer = el("div")
        .class("check-answer")
        .with(figure)
        .live(move || meant(in_force.get(), unit, typed))
        .live(move || answer(&typed.get(), in_force.get()))
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
    let units = el("div")
        .class("units-live")
        .live(move || vec![units_of(dimension.get(), in_force, unit, typed)]);
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

/// Sets a unit in place of one typed.
fn set_unit(to: Unit, unit: RwSignal<Unit>, typed: RwSignal<String>) {
    unit.set(to);
    if let Some(bare) = typed.with_untracked(|typed| Reading::without_unit(typed)) {
        typed.set(bare);
    }
}

/// The unit switch, at the unit typed or else the one set.
fn units_of(
    dimension: Dimension,
    in_force: Memo<Unit>,
    unit: RwSignal<Unit>,
    typed: RwSignal<String>,
) -> El {
    let choices: Vec<(Unit, &str)> =
        dimension.units().take(4).map(|unit| (unit, unit.symbol())).collect();
    switch(
        tr!("Unit"),
        &choices,
        move |choice| in_force.get() == choice,
        move |choice| set_unit(choice, unit, typed),
    )
}

/// What to ask about a figure that can be read in two ways, and a key for the other one.
fn meant(in_force: Unit, unit: RwSignal<Unit>, typed: RwSignal<String>) -> Vec<El> {
    let bounds = Bounds::widest(in_force.dimension());
    let asked = typed.with(|typed| two_readings(typed, in_force, bounds));
    let Some(asked) = asked else { return Vec::new() };
    let words = text("p", "caution", &asked.words).attr("role", "status");
    std::iter::once(words).chain(meant_keys(asked.ways, unit, typed)).collect()
}

fn answer(typed: &str, unit: Unit) -> Vec<El> {
    let bounds = Bounds::widest(unit.dimension());
    if Tolerance::is_typed(typed) {
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

/// The nearest 64th of an inch and the nearest leaf of a usual set, where there is one near.
fn near(amount: Amount, step: Span) -> Option<El> {
    let fraction = nearest_sixty_fourth(amount).map(|(fraction, rest)| {
        let figure = match fraction {
            (whole, 0, _) => tr!("{whole} in"),
            (0, numerator, denominator) => format!("{numerator}/{denominator} in"),
            (whole, numerator, denominator) => format!("{whole} {numerator}/{denominator} in"),
        };
        row("1/64", &figure, &off(rest, Unit::Inch, step))
    });
    let leaf = nearest_leaf(amount, &usual_leaves()).map(|(leaf, rest)| {
        let figure = format!("{} mm", leaf.show(Unit::Millimetre, 2, Rounding::Nearest));
        row(tr!("leaf"), &figure, &off(rest, Unit::Millimetre, step))
    });
    let rows: Vec<El> = fraction.into_iter().chain(leaf).collect();
    (!rows.is_empty()).then(|| table(tr!("Nearest"), rows))
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
    let column = |words: &str| text("th", "", words).attr("scope", "col");
    let heading = el("tr").class("heading").with_all([
        column(tr!("Unit")),
        column(tr!("Hold to")),
        column(tr!("With a finer gauge")),
    ]);
    vec![
        text(
            "p",
            "plain",
            tr!("Limits rounded inward: nothing shown here admits what the drawing rejects."),
        ),
        table(tr!("Limits in every unit"), std::iter::once(heading).chain(rows)),
    ]
}
