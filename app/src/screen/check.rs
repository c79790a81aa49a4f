//! Checking a reading against a limit: type it, and the verdict stands there.

use super::entry;
use super::which::{piece, which};
use crate::device::Awake;
use crate::dom::{El, button, el, follow, link, listen, text};
use crate::draft;
use crate::route::{Route, WorkPlace};
use crate::signal::*;
use crate::state::{App, app};
use crate::widget::{
    Shown, call_mark, figure_input, figure_unit, frame, help_beside, how_picture, keypad,
    meant_keys, no_such_limit, rule_picture, say_button, unit_keys_of, verdict_card,
};
use pitleaf_core::book::{EntryId, Fact, Figure, put_right};
use pitleaf_core::language;
use pitleaf_core::limits::{
    GaugeKind, Judged, Question, Row, Sheet, limit_lines, place_words, question,
};
use pitleaf_core::quantity::{Dimension, Fault, Reading, Unit, thou_words};
use pitleaf_core::route::NOT_COMPARED;
use pitleaf_core::route::pairs_with;
use pitleaf_core::spoken;
use pitleaf_translated::tr;
use send_wrapper::SendWrapper;
use std::rc::Rc;

/// The check of a row, on one piece or on none in particular.
pub fn screen(row: &str, place: &str) -> Vec<El> {
    let app = app();
    match app.sheet.with_untracked(|sheet| sheet.row(row).cloned()) {
        Some(row) => row_check(app, row, place.to_owned(), None),
        None => no_such_limit(),
    }
}

/// The check that puts a figure of the book right: it stands there as it was typed.
pub fn right_screen(id: EntryId) -> Vec<El> {
    let app = app();
    let figure = app.book.with_untracked(|book| match &book.entry(&id)?.fact {
        Fact::Figure(figure) if !book.is_withdrawn(&id) => Some(figure.clone()),
        _ => None,
    });
    let row = figure
        .as_ref()
        .and_then(|figure| app.sheet.with_untracked(|sheet| sheet.row(&figure.row).cloned()));
    match (row, figure) {
        (Some(row), Some(figure)) => row_check(app, row, figure.place.clone(), Some((id, figure))),
        _ => entry::screen(id),
    }
}

fn row_check(app: App, row: Row, place: String, wrong: Option<(EntryId, Figure)>) -> Vec<El> {
    stay_awake();
    let hash = match &wrong {
        Some((id, _)) => Route::PutRight(id.clone()),
        None => Route::Check { row: row.id.clone(), place: place.clone() },
    }
    .hash();
    let is_typed = draft::at(&hash).is_some();
    let (typed, unit) = kept(app, &row, &hash);
    let bounds = row.bounds();
    let kind = RwSignal::new(app.gauge_in_hand(&row));
    if let Some((_, figure)) = &wrong {
        kind.set(figure.gauge);
        if !is_typed {
            typed.set(language::figure(&figure.text));
            unit.set(figure.unit);
        }
    }
    let place = RwSignal::new(place);
    // The places to choose from, while one has to be chosen.
    let asked = RwSignal::new(Vec::<String>::new());
    let row = Rc::new(row);
    let reading: Memo<Result<Reading, Fault>> =
        Memo::new(move || Reading::read(&typed.get(), unit.get(), bounds));
    let in_force = Memo::new(move || typed.with(|typed| Reading::unit_of(typed, unit.get())));
    let judged = {
        let row = SendWrapper::new(row.clone());
        Memo::new(move || {
            let reading = reading.get().ok()?;
            let judged = app.sheet.with(|sheet| sheet.judge(&row, &reading, kind.get()))?;
            Some((reading, judged))
        })
    };
    let shown = {
        let row = SendWrapper::new(row.clone());
        Memo::new(move || {
            app.sheet.with(|sheet| {
                reading.with(|reading| shown(sheet, &row, kind.get(), reading, unit.get()))
            })
        })
    };
    let needs = row.needs_conditions();
    let spoken = move || {
        if let Some(why) = &needs {
            return Some(format!("{NOT_COMPARED}. {why}"));
        }
        let (reading, judged) = judged.get_untracked()?;
        Some(spoken::verdict(&judged.verdict, &reading))
    };
    let said = spoken.clone();
    let written =
        Written { row: row.clone(), wrong: wrong.clone(), typed, reading, gauge: kind, asked };
    let written = SendWrapper::new(Rc::new(written));
    let write = {
        let written = written.clone();
        Rc::new(move || {
            app.read_out(&said().unwrap_or_default());
            written.on(app, &place.get_untracked());
        })
    };
    let enter = write.clone();

    let others = el("p").class("figure-others").text_live(move || {
        reading.with(|reading| reading.as_ref().map_or_else(|_| "\u{a0}".to_owned(), other_units))
    });
    let figure = el("div")
        .class("figure-line")
        .with(figure_input(tr!("Reading"), typed).on_enter(move || enter()))
        .with(figure_unit(unit, typed));
    let questioned = row.clone();
    let meant = el("div").live(move || {
        let question = question(&questioned.limit, &typed.get(), unit.get(), bounds);
        meant_keys(question.map(|asked| asked.ways).unwrap_or_default(), unit, typed)
            .into_iter()
            .collect()
    });
    let ruled = row.clone();
    let rule = el("div").live(move || {
        let hand = judged.get().map(|(reading, judged)| (reading.amount(), judged.verdict.guard));
        let is_to_keep = ruled.limit.has_edge();
        is_to_keep.then(|| rule_picture(&ruled.limit, in_force.get(), hand)).into_iter().collect()
    });
    let answer = el("div")
        .class("check-answer")
        .with(figure)
        .with(meant)
        .with(others)
        .with(rule)
        .with(verdict_card(shown))
        .with(together(app, &row, place, reading, kind, in_force))
        .with_all(say_button(app, spoken))
        .with_all(wrong.as_ref().map(|(_, figure)| {
            text("p", "plain", &tr!("In place of {}, which stays in the book.", figure.shown()))
        }))
        .with_all(beside(app, &row, place, kind, wrong.is_some()));
    let for_keys = row.clone();
    let keys = el("div").class("check-keys").live(move || {
        let choices = asked.get();
        if !choices.is_empty() {
            let written = written.clone();
            let choose = move |place: String| written.on(app, &place);
            return which(&choices, choose, move || asked.set(Vec::new()));
        }
        let write = write.clone();
        let down = button("key action wide", tr!("Write down"), move || write())
            .disabled(move || reading.with(Result::is_err));
        vec![
            unit_keys_of(&shown_units(for_keys.unit.dimension()), unit, typed),
            keypad(typed, extra_keys(&for_keys), [down]),
        ]
    });
    let what = row.what.clone();
    let under = move || {
        let build = app.opening().map(|(name, ..)| name);
        [place.with(|place| (!place.is_empty()).then(|| place_words(place))), build]
            .into_iter()
            .flatten()
            .collect::<Vec<_>>()
            .join(" · ")
    };
    frame(move || what.clone(), under, true, check_frame(app, answer, keys))
}

/// What the reading makes with that of the part that runs in it, or that it runs in.
fn together(
    app: App,
    row: &Row,
    place: RwSignal<String>,
    reading: Memo<Result<Reading, Fault>>,
    gauge: RwSignal<GaugeKind>,
    unit: Memo<Unit>,
) -> El {
    let row = row.id.clone();
    let list = el("ul").class("findings").attr("aria-label", tr!("Together"));
    list.live(move || {
        let (Some(build), Ok(reading)) = (app.build(), reading.get()) else { return Vec::new() };
        app.book.with(|book| {
            app.sheet.with(|sheet| {
                let place = place.get();
                let of = (row.as_str(), place.as_str());
                let found = pairs_with(book, &build, sheet, of, &reading, gauge.get());
                let lines = found.iter().map(|pair| {
                    let words = el("div").class("finding-words").with(text(
                        "span",
                        "",
                        &pair.words(unit.get()),
                    ));
                    let mark = call_mark(Some(pair.together.verdict.call));
                    el("li").class("finding").with(mark).with(words)
                });
                lines.collect()
            })
        })
    })
}

/// Answer above, keys below; beside each other where the screen is wide.
pub(super) fn check_frame(app: App, answer: El, keys: El) -> El {
    el("main")
        .attr_live("class", move || {
            let left = app.settings.with(|settings| settings.left_handed);
            Some(if left { "check left-handed" } else { "check" }.to_owned())
        })
        .with(answer)
        .with(keys)
}

/// The screen stays awake while a check is open.
pub(super) fn stay_awake() {
    let awake = SendWrapper::new(Awake::default());
    awake.hold();
    // The browser lets go while the page is hidden: held again when it is back.
    let again = SendWrapper::new(awake.clone());
    listen("visibilitychange", move |_| again.hold());
    on_cleanup(move || awake.release());
}

/// Text and unit as they were left here, kept again with every change.
pub(super) fn kept(app: App, row: &Row, hash: &str) -> (RwSignal<String>, RwSignal<Unit>) {
    let kept = draft::at(hash);
    let usual = app.settings.with_untracked(|settings| row.unit_in(settings.lengths));
    let unit = kept.as_ref().and_then(|draft| draft.unit).unwrap_or(usual);
    let (typed, unit) =
        (RwSignal::new(kept.map(|draft| draft.text).unwrap_or_default()), RwSignal::new(unit));
    let hash = hash.to_owned();
    follow(move || draft::put(&hash, &typed.get(), Some(unit.get())));
    (typed, unit)
}

pub(super) fn shown(
    sheet: &Sheet,
    row: &Row,
    gauge: GaugeKind,
    reading: &Result<Reading, Fault>,
    unit: Unit,
) -> Shown {
    let limit = &row.limit;
    let asked = |reading: &Reading| {
        Question::about(limit, reading).map(|asked| asked.words + " ").unwrap_or_default()
    };
    match reading {
        Ok(reading) => match sheet.judge(row, reading, gauge) {
            Some(Judged { gauge, verdict }) => {
                let words = asked(reading) + &verdict.explain(limit, reading, &gauge);
                Shown { call: Some(verdict.call), word: verdict.call.word().to_owned(), words }
            }
            None if row.needs_conditions().is_some() => Shown {
                call: None,
                word: NOT_COMPARED.to_owned(),
                words: asked(reading) + &row.needs_conditions().unwrap_or_default(),
            },
            None => Shown {
                call: None,
                word: tr!("No limit").to_owned(),
                words: tr!("This has no limit of its own: write it down, or put in your own.")
                    .to_owned(),
            },
        },
        Err(Fault::Empty) => Shown {
            call: None,
            word: tr!("Limit").to_owned(),
            words: tr!("{}. Type the reading.", limit_lines(limit, unit)),
        },
        Err(fault) => {
            Shown {
                call: None, word: tr!("Can’t read that").to_owned(), words: fault.to_string()
            }
        }
    }
}

/// What a reading is written by.
struct Written {
    row: Rc<Row>,
    /// The figure it puts right.
    wrong: Option<(EntryId, Figure)>,
    typed: RwSignal<String>,
    reading: Memo<Result<Reading, Fault>>,
    gauge: RwSignal<GaugeKind>,
    asked: RwSignal<Vec<String>>,
}

impl Written {
    /// Writes the reading on a piece; asks which, where there are several and none is named.
    fn on(&self, app: App, place: &str) {
        let Ok(reading) = self.reading.get_untracked() else { return };
        let place = match self.row.place_to_write(place, untrack(|| app.rotors())) {
            Ok(place) => place,
            Err(places) if untrack(|| app.build()).is_some() => {
                self.asked.set(places);
                return;
            }
            // Without a build nothing is written: one is opened first.
            Err(_) => String::new(),
        };
        let figure = Figure {
            row: self.row.id.clone(),
            place,
            text: reading.number().to_owned(),
            unit: reading.unit(),
            gauge: self.gauge.get_untracked(),
            instead_of: None,
        };
        let said = app.sheet.with_untracked(|sheet| figure.told(sheet));
        let (facts, said) = match &self.wrong {
            Some((old, wrong)) => {
                (put_right(old, figure), tr!("{said}, in place of {}", wrong.shown()))
            }
            None => (vec![Fact::Figure(figure)], said),
        };
        let (emptied, asked) = (draft::emptied(self.typed), self.asked);
        let old = self.wrong.as_ref().map(|(old, _)| old.clone());
        app.write(facts, said, move || {
            emptied();
            asked.set(Vec::new());
            if let Some(old) = old {
                app.go(&Route::Entry(old));
            }
        });
    }
}

pub(super) fn shown_units(dimension: Dimension) -> Vec<Unit> {
    match dimension {
        Dimension::Length => vec![Unit::Thou, Unit::Inch, Unit::Millimetre, Unit::Micrometre],
        _ => dimension.units().take(4).collect(),
    }
}

/// The half for thou, and the minus where a reading may lie below zero.
pub(super) fn extra_keys(row: &Row) -> [(&'static str, &'static str, &'static str); 2] {
    let below_zero = row.bounds().lowest < 0;
    [
        ("½", "½", tr!("and a half")),
        if below_zero { ("−", "-", tr!("Minus")) } else { ("/", "/", tr!("Fraction bar")) },
    ]
}

/// The reading in the units it was not typed in.
pub(super) fn other_units(reading: &Reading) -> String {
    let amount = reading.amount();
    let show = |unit: Unit| format!("{} {}", amount.readable(unit, reading.step()), unit.symbol());
    let units = match (amount.dimension(), reading.unit()) {
        (Dimension::Length, Unit::Thou) => [Unit::Inch, Unit::Millimetre].map(show).to_vec(),
        (Dimension::Length, Unit::Micrometre) => [Unit::Millimetre, Unit::Inch].map(show).to_vec(),
        (Dimension::Length, Unit::Inch | Unit::Foot) => {
            vec![show(Unit::Millimetre), format!("{} thou", thou_words(amount))]
        }
        (Dimension::Length, _) => vec![show(Unit::Inch), format!("{} thou", thou_words(amount))],
        (dimension, own) => {
            dimension.units().filter(|unit| *unit != own).take(2).map(show).collect()
        }
    };
    units.join("   ")
}

/// What stands under the verdict: where the limit comes from, which piece, how to measure.
fn beside(
    app: App,
    row: &Row,
    place: RwSignal<String>,
    gauge: RwSignal<GaugeKind>,
    puts_right: bool,
) -> Vec<El> {
    let mut lines = Vec::new();
    if row.needs_conditions().is_some() {
        let test = Route::Work(WorkPlace::Compression(1));
        lines.push(link("button", &test.hash()).text(tr!("Compression test")));
    }
    lines.push(text("p", "source", &row.source.to_string()));
    let id = row.id.clone();
    let choose = move |chosen: String| {
        if puts_right {
            place.set(chosen);
        } else {
            // What is typed of each piece is kept at its own place.
            app.go(&Route::Check { row: id.clone(), place: chosen });
        }
    };
    lines.extend(piece(app, row, &place.get_untracked(), choose));
    lines.push(gauge_choice(app, row, gauge));
    if !row.caution.is_empty() {
        lines.push(el("p").class("caution").with(text("b", "", tr!("Care: "))).text(&row.caution));
    }
    lines.push(text("p", "how", &row.how));
    lines.push(how_picture(row.picture()));
    if !row.note.is_empty() {
        lines.push(text("p", "how", &row.note));
    }
    lines.extend(row.help().map(help_beside));
    let id = row.id.clone();
    let is_favourite = {
        let id = id.clone();
        move || app.settings.with(|settings| settings.favourites.contains(&id))
    };
    let face = is_favourite.clone();
    let own = link("quiet", &Route::OwnLimit(id.clone()).hash()).text(tr!("Put in my own limit"));
    let favourite = button("quiet", "", move || app.set(|settings| settings.toggle_favourite(&id)))
        .text_live(move || {
            if face() { tr!("On the bench ✓") } else { tr!("Put on the bench") }.to_owned()
        })
        .pressed(is_favourite);
    lines.push(el("div").class("row-actions").with(own).with(favourite));
    lines
}

/// Which gauge is in hand: its doubt decides how close a reading may come to an edge.
fn gauge_choice(app: App, row: &Row, gauge: RwSignal<GaugeKind>) -> El {
    let (kinds, row) = (app.gauges_for(row), row.id.clone());
    let select = el("select")
        .with_all(kinds.into_iter().map(|kind| {
            el("option")
                .attr("value", kind.name())
                .text(kind.name())
                .attr_live("selected", move || (gauge.get() == kind).then(String::new))
        }))
        .on("change", move |event| {
            let wanted = event_target_value(&event);
            if let Some(kind) = GaugeKind::ALL.into_iter().find(|kind| kind.name() == wanted) {
                gauge.set(kind);
                app.take_in_hand(&row, kind);
            }
        });
    let own = link("quiet", &Route::Gauges.hash()).text(tr!("My gauges"));
    el("div")
        .class("line-field")
        .with(el("label").class("line-field").with(text("span", "", tr!("Gauge"))).with(select))
        .with(own)
}
