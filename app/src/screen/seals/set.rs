//! A row measured over all its places in one go: type, write, and the next place stands there.
//!
//! A row that limits the spread of a set is measured piece by piece the same way.

use super::super::check::{check_frame, extra_keys, kept, shown, shown_units, stay_awake};
use crate::dom::{El, button, el, link, text};
use crate::draft;
use crate::route::Route;
use crate::signal::*;
use crate::state::{App, app};
use crate::widget::{
    Shown, call_mark, figure_input, figure_unit, frame, help_beside, keypad, meant_keys,
    no_such_limit, rule_picture, unit_keys_of, verdict_card,
};
use pitleaf_core::book::{Fact, Figure};
use pitleaf_core::limits::{Gauge, Row, question};
use pitleaf_core::quantity::{Amount, Fault, Reading, Span, Unit};
use pitleaf_core::seals::{Place, SetCheck, SpreadCheck, Step, set_readings};
use pitleaf_translated::tr;
use send_wrapper::SendWrapper;
use std::rc::Rc;

/// The set of a row.
pub(in crate::screen) fn screen(row: &str) -> Vec<El> {
    let app = app();
    match app.sheet.with_untracked(|sheet| sheet.row(row).cloned()) {
        Some(row) => of_row(app, row.piece().unwrap_or_else(|| row.clone()), row),
        None => no_such_limit(),
    }
}

/// What the parts of the screen share.
#[derive(Clone)]
struct Measuring {
    app: App,
    row: Rc<Row>,
    /// The row of the limit: the same, or that of the spread.
    limited: Rc<Row>,
    gauge: Gauge,
    typed: RwSignal<String>,
    unit: RwSignal<Unit>,
    reading: Memo<Result<Reading, Fault>>,
    set: Memo<Vec<(Place, Option<Reading>)>>,
    /// Which place, by its place in the list.
    at: RwSignal<usize>,
}

fn of_row(app: App, row: Row, limited: Row) -> Vec<El> {
    stay_awake();
    let hash = Route::Set(limited.id.clone()).hash();
    let (typed, unit) = kept(app, &row, &hash);
    let bounds = row.bounds();
    let reading = Memo::new(move || Reading::read(&typed.get(), unit.get(), bounds));
    let (row, limited) = (Rc::new(row), Rc::new(limited));
    let set = {
        let row = SendWrapper::new(row.clone());
        Memo::new(move || match app.build() {
            Some(build) => app.book.with(|book| set_readings(book, &build, &row, app.rotors())),
            None => Place::of_part(row.part, app.rotors())
                .into_iter()
                .map(|place| (place, None))
                .collect(),
        })
    };
    let first = set
        .with_untracked(|set| set.iter().position(|(_, reading)| reading.is_none()))
        .unwrap_or(0);
    let gauge = app.gauges_for(&row)[0];
    let gauge = app.sheet.with_untracked(|sheet| sheet.gauge(gauge));
    let m = Measuring {
        app,
        row: row.clone(),
        limited: limited.clone(),
        gauge,
        typed,
        unit,
        reading,
        set,
        at: RwSignal::new(first),
    };
    let here = {
        let m = m.clone();
        move || m.place().map_or_else(String::new, |place| place.to_string())
    };
    let enter = m.clone();
    let figure = el("div")
        .class("figure-line")
        .with(el("b").class("set-place").text_live(here.clone()))
        .with(figure_input(tr!("Reading"), typed).on_enter(move || enter.write()))
        .with(figure_unit(unit, typed));
    let meant = el("div").live({
        let (limit, bounds) = (row.limit.clone(), row.bounds());
        move || {
            let question = question(&limit, &typed.get(), unit.get(), bounds);
            meant_keys(question.map(|asked| asked.ways).unwrap_or_default(), unit, typed)
                .into_iter()
                .collect()
        }
    });
    let card = {
        let m = SendWrapper::new(m.clone());
        Memo::new(move || m.shown())
    };
    let rule = {
        let m = m.clone();
        el("div").live(move || vec![rule_picture(&m.limited.limit, unit.get(), m.hand())])
    };
    let places = m.clone();
    let whole = m.clone();
    let (one, all) = (m.clone(), m.clone());
    let down = button("key action wide", "", move || one.write())
        .text_live(move || tr!("Write {}", here()))
        .disabled(move || reading.with(Result::is_err));
    let alike = button("unit", "", move || all.write_all())
        .text_live({
            let m = m.clone();
            move || tr!("All {} left alike", m.left().len())
        })
        .disabled({
            let m = m.clone();
            move || reading.with(Result::is_err) || m.left().is_empty()
        });
    let mut answer = el("div")
        .class("check-answer")
        .with(figure)
        .with(meant)
        .with(rule)
        .with(verdict_card(card))
        .live(move || whole.whole())
        .with(el("div").class("units").with(alike))
        .with(
            el("div")
                .class("set-places")
                .attrs(&[("role", "group"), ("aria-label", tr!("Places"))])
                .live(move || places.keys()),
        )
        .with(text("p", "source", &limited.source.to_string()))
        .with(text("p", "how", &tr!("With {}. {}", gauge.kind.name(), row.how)))
        .with_all(row.help().map(help_beside));
    if !row.caution.is_empty() {
        answer = answer
            .with(el("p").class("caution").with(text("b", "", tr!("Care: "))).text(&row.caution));
    }
    if limited.is_of_a_set() {
        let alone = Route::Check { row: limited.id.clone(), place: String::new() };
        answer = answer.with(link("quiet", &alone.hash()).text(tr!("Type the spread alone")));
    }
    if row.part == pitleaf_core::limits::Part::CornerSeal {
        answer = answer.with(super::caution(Step::CornerSeals));
    }
    let keys = el("div")
        .class("check-keys")
        .with(unit_keys_of(&shown_units(row.unit.dimension()), unit, typed))
        .with(keypad(typed, extra_keys(&row), [down]));
    let what = row.what.clone();
    let under = move || {
        set.with(|set| {
            let done = set.iter().filter(|(_, reading)| reading.is_some()).count();
            tr!("{} · {done} of {}", app.build_name(), set.len())
        })
    };
    frame(move || what.clone(), under, true, check_frame(app, answer, keys))
}

impl Measuring {
    fn place(&self) -> Option<Place> {
        self.set.with(|set| set.get(self.at.get()).map(|(place, _)| *place))
    }

    /// The places with no reading yet.
    fn left(&self) -> Vec<Place> {
        self.set.with(|set| {
            set.iter().filter(|(_, reading)| reading.is_none()).map(|(place, _)| *place).collect()
        })
    }

    fn figure(&self, place: Place, reading: &Reading) -> Fact {
        Fact::Figure(Figure {
            row: self.row.id.clone(),
            place: place.to_string(),
            text: reading.number().to_owned(),
            unit: reading.unit(),
            gauge: self.gauge.kind,
            instead_of: None,
        })
    }

    /// Writes the reading at the place in hand and goes on to the next without one.
    fn write(&self) {
        let (Ok(reading), Some(place)) = (self.reading.get_untracked(), untrack(|| self.place()))
        else {
            return;
        };
        let said = tr!("{} {} on {place}", reading.number(), reading.unit().symbol());
        let (emptied, at, set) = (draft::emptied(self.typed), self.at, self.set);
        self.app.write(vec![self.figure(place, &reading)], said, move || {
            emptied();
            let here = at.get_untracked();
            let next = set.with_untracked(|set| {
                let is_left = |place: &usize| set[*place].1.is_none();
                (here..set.len()).find(is_left).or_else(|| (0..here).find(is_left))
            });
            at.set(next.unwrap_or(here));
        });
    }

    /// Writes the same reading at every place that has none.
    fn write_all(&self) {
        let Ok(reading) = self.reading.get_untracked() else { return };
        let left = untrack(|| self.left());
        let facts: Vec<Fact> = left.iter().map(|place| self.figure(*place, &reading)).collect();
        let said =
            tr!("{} {} on {} places", reading.number(), reading.unit().symbol(), facts.len());
        let typed = self.typed;
        self.app.write(facts, said, draft::emptied(typed));
    }

    fn measured(&self) -> Vec<(Place, Reading)> {
        self.set.with(|set| {
            set.iter().filter_map(|(place, reading)| Some((*place, reading.clone()?))).collect()
        })
    }

    /// The spread of what is written, where that is what is limited.
    fn spread(&self) -> Option<SpreadCheck> {
        let limited = &self.limited;
        if !limited.is_of_a_set() {
            return None;
        }
        SpreadCheck::of(&self.measured(), &limited.limit, &self.gauge).ok()
    }

    /// The verdict on the reading in hand, or on the spread.
    fn shown(&self) -> Shown {
        let unit = self.unit.get();
        self.reading.with(|reading| {
            let of_reading = |reading| {
                self.app
                    .sheet
                    .with(|sheet| shown(sheet, &self.limited, self.gauge.kind, reading, unit))
            };
            match (reading, self.spread()) {
                (Ok(_) | Err(Fault::Empty), Some(spread)) => Shown {
                    call: spread.call,
                    word: spread.call.map_or(tr!("Spread"), |call| call.word()).to_owned(),
                    words: spread.words(unit),
                },
                (Ok(_), None) if self.limited.is_of_a_set() => of_reading(&Err(Fault::Empty)),
                _ => of_reading(reading),
            }
        })
    }

    /// What stands on the rule.
    fn hand(&self) -> Option<(Amount, Span)> {
        if self.limited.is_of_a_set() {
            return self.spread()?.hand();
        }
        self.reading.with(|reading| {
            let reading = reading.as_ref().ok()?;
            Some((reading.amount(), self.gauge.guard(reading)))
        })
    }

    /// How the set stands as a whole.
    fn whole(&self) -> Vec<El> {
        let readings = self.measured();
        if readings.is_empty() || self.limited.is_of_a_set() {
            return Vec::new();
        }
        let words = match SetCheck::of(&readings, &self.row.limit, &self.gauge) {
            Ok(check) => check.words(self.unit.get()),
            Err(fault) => fault.to_string(),
        };
        vec![text("p", "set-words", &words).attr("role", "status")]
    }

    /// A key for each place, with its verdict's sign and its reading.
    fn keys(&self) -> Vec<El> {
        self.set.with(|set| {
            set.iter()
                .enumerate()
                .map(|(at, (place, reading))| {
                    let here = self.at;
                    let call = reading
                        .as_ref()
                        .and_then(|reading| {
                            self.app
                                .sheet
                                .with(|sheet| sheet.judge(&self.row, reading, self.gauge.kind))
                        })
                        .map(|judged| judged.verdict.call);
                    let figure = reading.as_ref().map_or_else(
                        || "–".to_owned(),
                        |reading| format!("{} {}", reading.number(), reading.unit().symbol()),
                    );
                    let said = match (call, reading) {
                        (Some(call), _) => call.word(),
                        (None, Some(_)) => &figure,
                        (None, None) => tr!("not measured"),
                    };
                    let spoken = format!("{place}: {said}");
                    button("unit set-key", "", move || here.set(at))
                        .attr("aria-label", &spoken)
                        .pressed(move || here.get() == at)
                        .with(call_mark(call))
                        .with(text("span", "", &place.to_string()))
                        .with(text("span", "number", &figure))
                })
                .collect()
        })
    }
}
