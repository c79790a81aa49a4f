//! Checking a reading against a limit: type it, and the verdict stands there.

use crate::device::Awake;
use crate::draft;
use crate::route::Route;
use crate::state::app;
use crate::widget::{Frame, Keypad, RulePicture, Shown, UnitKeys, VerdictCard};
use leptos::prelude::*;
use pitleaf_core::book::{Fact, Figure};
use pitleaf_core::limits::{Gauge, Row, Verdict, decide, limit_line, places, slip};
use pitleaf_core::quantity::{Dimension, Fault, Reading, Rounding, Unit, places_for, thou_words};

/// The check of a row, on one piece or on none in particular.
#[component]
pub fn Check(
    /// The row's id.
    row: String,
    /// The piece.
    place: String,
) -> impl IntoView {
    let app = app();
    let found = app.sheet.with_untracked(|sheet| sheet.row(&row).cloned());
    match found {
        Some(row) => view! { <RowCheck row=row place=place/> }.into_any(),
        None => view! {
            <Frame title="No such limit" back=true>
                <p class="plain">"The sheet has no row of this name. It may belong to another phone’s book."</p>
            </Frame>
        }
        .into_any(),
    }
}

#[component]
fn RowCheck(row: Row, place: String) -> impl IntoView {
    let app = app();
    let awake = Awake::default();
    awake.hold();
    on_cleanup({
        let awake = send_wrapper::SendWrapper::new(awake);
        move || awake.release()
    });

    let hash = Route::Check { row: row.id.clone(), place: place.clone() }.hash();
    let kept = draft::at(&hash);
    let dimension = row.unit.dimension();
    let usual = app.settings.with_untracked(|settings| settings.unit(dimension)).unwrap_or_else(|| usual_unit(&row));
    let unit = RwSignal::new(kept.as_ref().and_then(|draft| draft.unit).unwrap_or(usual));
    let text = RwSignal::new(kept.map(|draft| draft.text).unwrap_or_default());
    Effect::new({
        let hash = hash.clone();
        move |_| draft::put(&hash, &text.get(), Some(unit.get()))
    });

    let bounds = row.bounds();
    let reading: Memo<Result<Reading, Fault>> = Memo::new(move |_| Reading::read(&text.get(), unit.get(), bounds));
    let gauge = Gauge::usual(row.gauge);
    let limit = StoredValue::new(row.limit.clone());
    let verdict: Memo<Option<Verdict>> =
        Memo::new(move |_| reading.with(|reading| reading.as_ref().ok().map(|reading| limit.with_value(|limit| decide(limit, reading, &gauge)))));
    let shown = Signal::derive(move || {
        reading.with(|reading| match reading {
            Ok(reading) => verdict.with(|verdict| {
                verdict.as_ref().map_or_else(nothing_yet, |verdict| {
                    limit.with_value(|limit| {
                        let mut words = verdict.explain(limit, reading, &gauge);
                        if let Some(slip) = slip(limit, reading) {
                            words = format!("{slip} {words}");
                        }
                        Shown { call: Some(verdict.call), word: verdict.call.word().to_owned(), words }
                    })
                })
            }),
            Err(Fault::Empty) => limit.with_value(|limit| Shown {
                call: None,
                word: "Limit".to_owned(),
                words: format!("{}. Type the reading.", limit_line(limit, unit.get())),
            }),
            Err(fault) => Shown { call: None, word: "Can’t read that".to_owned(), words: fault.to_string() },
        })
    });
    let hand = Signal::derive(move || {
        reading.with(|reading| reading.as_ref().ok().map(Reading::amount)).zip(verdict.with(|verdict| verdict.as_ref().map(|verdict| verdict.guard)))
    });
    let write = {
        let row = row.clone();
        let place = place.clone();
        move || {
            let Ok(reading) = reading.get_untracked() else { return };
            let figure = Figure {
                row: row.id.clone(),
                place: place.clone(),
                text: reading.number().to_owned(),
                unit: reading.unit(),
                gauge: row.gauge,
            };
            let said = format!("{} {}{}", figure.text, figure.unit.symbol(), if place.is_empty() { String::new() } else { format!(" on {place}") });
            app.write(vec![Fact::Figure(figure)], said, move || text.set(String::new()));
        }
    };
    let by_key = {
        let write = write.clone();
        move |event: leptos::ev::KeyboardEvent| {
            if event.key() == "Enter" {
                write();
            }
        }
    };
    let under = {
        let place = place.clone();
        Signal::derive(move || {
            let build = app.opening().map(|(name, kind, ..)| format!("{name} · {}", kind.name()));
            let pieces = [build, (!place.is_empty()).then(|| place.clone())];
            pieces.into_iter().flatten().collect::<Vec<_>>().join(" · ")
        })
    };
    let units = shown_units(dimension);
    let unit_choice = units.clone();
    view! {
        <Frame title=row.what.clone() under=under back=true>
            <div class="check" class:left-handed=move || app.settings.with(|settings| settings.left_handed)>
                <div class="check-answer">
                    <div class="figure-line">
                        <input
                            class="figure"
                            class:long=move || text.with(|text| text.chars().count() > 8)
                            aria-label="Reading"
                            inputmode="none"
                            autocomplete="off"
                            autocapitalize="off"
                            spellcheck="false"
                            placeholder="0"
                            prop:value=text
                            on:input=move |event| text.set(event_target_value(&event))
                            on:keydown=by_key
                        />
                        <span class="figure-unit">{move || unit.get().symbol()}</span>
                    </div>
                    <p class="figure-others">{move || reading.with(|reading| reading.as_ref().map_or_else(|_| "\u{a0}".to_owned(), other_units))}</p>
                    <RulePicture limit=row.limit.clone() unit=unit reading=hand/>
                    <VerdictCard shown=shown/>
                    <Place row=row.clone() place=place.clone()/>
                    <Source row=row.clone()/>
                </div>
                <div class="check-keys">
                    <UnitKeys units=unit_choice unit=unit/>
                    <Keypad text=text extra=extra_keys(&row)>
                        <button
                            type="button"
                            class="key action wide"
                            disabled=move || reading.with(Result::is_err)
                            on:click=move |_| write()
                        >"Write down"</button>
                    </Keypad>
                </div>
            </div>
        </Frame>
    }
}

fn nothing_yet() -> Shown {
    Shown { call: None, word: "Not measured".to_owned(), words: String::new() }
}

/// A gap in an inch sheet is spoken of in thou.
fn usual_unit(row: &Row) -> Unit {
    use pitleaf_core::limits::Input;
    match (row.unit, row.input) {
        (Unit::Inch, Input::Gap | Input::Deviation | Input::Height) => Unit::Thou,
        (unit, _) => unit,
    }
}

fn shown_units(dimension: Dimension) -> Vec<Unit> {
    match dimension {
        Dimension::Length => vec![Unit::Thou, Unit::Inch, Unit::Millimetre, Unit::Micrometre],
        _ => dimension.units().take(4).collect(),
    }
}

/// The half for thou, and the minus where a reading may lie below zero.
fn extra_keys(row: &Row) -> [(&'static str, &'static str, &'static str); 2] {
    let below_zero = row.bounds().lowest < 0;
    [("½", "½", "and a half"), if below_zero { ("−", "-", "Minus") } else { ("/", "/", "Fraction bar") }]
}

/// The reading in the units it was not typed in.
fn other_units(reading: &Reading) -> String {
    let amount = reading.amount();
    let show = |unit: Unit| format!("{} {}", amount.show(unit, places_for(reading.step(), unit), Rounding::Nearest), unit.symbol());
    if amount.dimension() == Dimension::Length {
        let metric = matches!(reading.unit(), Unit::Millimetre | Unit::Micrometre | Unit::Centimetre | Unit::Metre);
        let thou = format!("{} thou", thou_words(amount));
        let inch = show(Unit::Inch);
        let millimetre = show(Unit::Millimetre);
        match reading.unit() {
            Unit::Thou => format!("{inch}   {millimetre}"),
            Unit::Micrometre => format!("{millimetre}   {inch}"),
            _ if metric => format!("{inch}   {thou}"),
            _ => format!("{millimetre}   {thou}"),
        }
    } else {
        amount.dimension().units().filter(|unit| *unit != reading.unit()).take(2).map(show).collect::<Vec<_>>().join("   ")
    }
}

/// Which piece this is; choosing another goes to its check.
#[component]
fn Place(row: Row, place: String) -> impl IntoView {
    let app = app();
    let rotors = app.opening().map_or(2, |opening| opening.2);
    let choices = places(row.part, rotors);
    let id = row.id.clone();
    (!choices.is_empty()).then(|| {
        let choose = move |event| {
            app.go(&Route::Check { row: id.clone(), place: event_target_value(&event) });
        };
        view! {
            <label class="line-field">
                <span>"Piece"</span>
                <select on:change=choose>
                    <option value="" selected=place.is_empty()>"none in particular"</option>
                    {choices.into_iter().map(|choice| view! {
                        <option value=choice.clone() selected={choice == place}>{choice.clone()}</option>
                    }).collect_view()}
                </select>
            </label>
        }
    })
}

/// Where the limit comes from, how to measure, and the way to put one's own in its place.
#[component]
fn Source(row: Row) -> impl IntoView {
    let app = app();
    let id = row.id.clone();
    let favourite = {
        let id = id.clone();
        move || app.settings.with(|settings| settings.favourites.contains(&id))
    };
    let toggle = {
        let id = id.clone();
        move |_| {
            app.set(|settings| {
                if settings.favourites.contains(&id) {
                    settings.favourites.retain(|old| *old != id);
                } else {
                    settings.favourites.push(id.clone());
                }
            });
        }
    };
    let pressed = favourite.clone();
    view! {
        <p class="source">{row.source.to_string()}</p>
        {(!row.caution.is_empty()).then(|| view! { <p class="caution"><b>"Care: "</b>{row.caution.clone()}</p> })}
        <p class="how">{format!("With {}. {}", row.gauge.name(), row.how)}</p>
        {(!row.note.is_empty()).then(|| view! { <p class="how">{row.note.clone()}</p> })}
        <div class="row-actions">
            <a class="quiet" href=Route::OwnLimit(id).hash()>"Put in my own limit"</a>
            <button type="button" class="quiet" aria-pressed=move || pressed().to_string() on:click=toggle>
                {move || if favourite() { "On the bench ✓" } else { "Put on the bench" }}
            </button>
        </div>
    }
}
