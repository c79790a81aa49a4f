//! Place after place: where to read now, the figure, the keys.

use super::picture::where_to_read;
use super::survey::Work;
use crate::dom::{El, button, el, text};
use crate::screen::check::check_frame;
use crate::widget::{figure_input, figure_unit, help_beside, how_picture, keypad, unit_keys_of};
use pitleaf_core::calculators::Calculator;
use pitleaf_core::quantity::{Reading, Unit};
use pitleaf_translated::tr;

/// The view with the keys.
pub fn reading_view(work: &Work) -> El {
    let count = work.places.len();
    let step = |words: &str, face: &str, by: usize| {
        let work = work.clone();
        button("unit step", face, move || work.go((work.at.get_untracked() + by) % count))
            .attr("aria-label", words)
    };
    let named = work.clone();
    let place = el("p").class("place").attr("aria-live", "polite").text_live(move || {
        let at = named.at.get();
        tr!("{} of {count}: {}", at + 1, named.places[at].said())
    });
    let enter = work.clone();
    let figure = el("div")
        .class("figure-line")
        .with(figure_input(tr!("Reading"), work.typed).on_enter(move || enter.on()))
        .with(figure_unit(work.unit, work.typed));
    let fault = work.clone();
    let column = el("div")
        .class("survey-column")
        .with(place)
        .with(figure)
        .with(el("p").class("how").attr("role", "status").text_live(move || now(&fault)))
        .with(
            el("div")
                .class("survey-steps")
                .with(step(tr!("Place before"), "‹", count - 1))
                .with(step(tr!("Next place"), "›", 1)),
        );
    let beside = work.places[0].at.map(|_| where_to_read(work));
    let answer = el("div")
        .class("check-answer")
        .with(el("div").class("survey").with_all(beside).with(column))
        .with(slips(work))
        .with(text("p", "how", work.survey.how()))
        .with(help_beside(Calculator::Survey(work.survey).help()))
        .with_all(caution(work))
        .with_all(work.survey.picture().map(how_picture));
    let below_zero = work.survey.bounds().lowest < 0;
    let extra = [
        ("½", "½", tr!("and a half")),
        if below_zero { ("−", "-", tr!("Minus")) } else { ("/", "/", tr!("Fraction bar")) },
    ];
    let (next, typed) = (work.clone(), work.typed);
    let on = button("key action wide", "", move || next.on()).text_live(move || {
        if typed.with(String::is_empty) { tr!("Show result") } else { tr!("Next") }.to_owned()
    });
    let keys = el("div")
        .class("check-keys")
        .with(unit_keys_of(
            &[Unit::Thou, Unit::Inch, Unit::Millimetre, Unit::Micrometre],
            work.unit,
            work.typed,
        ))
        .with(keypad(work.typed, extra, [on]));
    check_frame(work.app, answer, keys)
}

pub fn caution(work: &Work) -> Option<El> {
    let words = work.survey.caution();
    (!words.is_empty())
        .then(|| el("p").class("caution").with(text("b", "", tr!("Care: "))).text(words))
}

/// What is wrong with the text in hand; nothing while it is empty.
fn now(work: &Work) -> String {
    let (typed, at) = (work.typed.get(), work.at.get());
    if typed.is_empty() {
        return String::new();
    }
    match Reading::read(&typed, work.unit.get(), work.places[at].bounds) {
        Ok(reading) => {
            let other = if matches!(reading.unit(), Unit::Thou | Unit::Inch) {
                Unit::Millimetre
            } else {
                Unit::Inch
            };
            format!("{} {}", reading.amount().readable(other, reading.step()), other.symbol())
        }
        Err(fault) => fault.to_string(),
    }
}

/// Asks about readings that look like the other unit; changes nothing by itself.
pub fn slips(work: &Work) -> El {
    let work = work.clone();
    el("div").attr("role", "status").live(move || {
        let Ok(taken) = work.taken() else { return Vec::new() };
        let slips = taken.slips().into_iter();
        slips
            .map(|(at, slip)| question(&work, at, &slip.to_string(), taken.meant(at, &slip)))
            .collect()
    })
}

fn question(work: &Work, at: usize, words: &str, meant: Option<String>) -> El {
    let (again, yes) = (work.clone(), work.clone());
    let mut keys =
        el("div").class("row-actions").with(button("quiet", tr!("Read it again"), move || {
            again.again(at);
        }));
    if let Some(meant) = meant {
        keys = keys.with(button("quiet", &tr!("Yes: {meant}"), move || {
            yes.mend(at, &meant);
        }));
    }
    el("div").class("caution").text(words).with(keys)
}
