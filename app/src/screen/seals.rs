//! A rotor face's side-seal slots, drawn from the rotor's own outline.

use crate::route::Route;
use crate::state::app;
use crate::widget::CallMark;
use crate::widget::Frame;
use leptos::prelude::*;
use pitleaf_core::book::{BuildId, Face, Slot, call};
use pitleaf_core::limits::{Call, Part};
use pitleaf_core::trochoid::{Engine, Point};
use uom::si::length::millimeter;

/// What a slot shows.
#[derive(Clone, Debug, PartialEq)]
struct SlotState {
    slot: Slot,
    mark: Option<String>,
    gap: Option<String>,
    call: Option<Call>,
    fitted: bool,
}

impl SlotState {
    fn word(&self) -> &'static str {
        match (self.fitted, self.call, &self.gap) {
            (true, ..) => "fitted",
            (_, Some(call), _) => call.word(),
            (_, None, Some(_)) => "measured",
            _ => "not measured",
        }
    }

    fn class(&self) -> &'static str {
        match (self.fitted, self.call) {
            (true, _) => "slot fitted",
            (_, Some(Call::Meets)) => "slot meets",
            (_, Some(Call::DoesNotMeet(_))) => "slot fails",
            (_, Some(Call::TooClose)) => "slot close",
            (_, None) => "slot",
        }
    }
}

/// The row a side seal's gap is checked against in this build.
pub(super) fn gap_row() -> Option<String> {
    let app = app();
    let kind = app.kind();
    app.sheet.with(|sheet| {
        sheet.of_part(Part::SideSeal, kind).find(|row| row.id.starts_with("side-seal-gap")).map(|row| row.id.clone())
    })
}

fn slot_state(build: Option<&BuildId>, slot: Slot) -> SlotState {
    let app = app();
    let mut state = SlotState { slot, mark: None, gap: None, call: None, fitted: false };
    let Some((build, row)) = build.zip(gap_row()) else { return state };
    app.book.with(|book| {
        state.mark = book.mark(build, slot).map(str::to_owned);
        state.fitted = book.is_fitted(build, slot);
        if let Some(figure) = book.figure(build, &row, &slot.to_string()) {
            state.gap = Some(format!("{} {}", figure.text, figure.unit.symbol()));
            state.call = app.sheet.with(|sheet| call(figure, sheet));
        }
    });
    state
}

/// The slots of a face.
#[component]
pub fn Seals(
    /// The rotor.
    rotor: u8,
    /// The face up.
    face: Face,
) -> impl IntoView {
    let app = app();
    let states = Memo::new(move |_| {
        let build = app.build();
        Slot::of_face(rotor, face).into_iter().map(|slot| slot_state(build.as_ref(), slot)).collect::<Vec<_>>()
    });
    let rotors = Memo::new(move |_| app.opening().map_or(2, |opening| opening.2));
    let under = Signal::derive(move || {
        let build = app.build();
        let slots = Slot::of_engine(rotors.get());
        let fitted = slots.iter().filter(|slot| slot_state(build.as_ref(), **slot).fitted).count();
        let name = app.opening().map_or_else(|| "no build open".to_owned(), |opening| opening.0);
        format!("{name} · {fitted} of {} fitted", slots.len())
    });
    view! {
        <Frame title="Seal slots" under=under>
            <main class="page">
                <div class="faces" role="group" aria-label="Face up">
                    {move || (1..=rotors.get()).flat_map(|rotor| [Face::Front, Face::Rear].map(|face| (rotor, face))).map(|(number, side)| view! {
                        <a class="unit" href=Route::Seals(number, side).hash() aria-current=((number, side) == (rotor, face)).then_some("true")>
                            {format!("{number} {}", side.name())}
                        </a>
                    }).collect_view()}
                </div>
                {move || view! { <Map face=face states=states.get()/> }}
                <ul class="rows">
                    {move || states.get().into_iter().map(|state| view! {
                        <li><a class="entry" href=Route::Slot(state.slot).hash()>
                            <CallMark call=state.call/>
                            <span class="entry-words"><b>{state.slot.to_string()}</b><span class="dim">{state.mark.clone().map_or_else(|| "no mark yet".to_owned(), |mark| format!("mark: {mark}"))}</span></span>
                            <span class="entry-when"><span class="number">{state.gap.clone().unwrap_or_else(|| "–".to_owned())}</span><span class="kind">{state.word()}</span></span>
                        </a></li>
                    }).collect_view()}
                </ul>
            </main>
        </Frame>
    }
}

fn path(points: &[Point], close: bool) -> String {
    let mut path = String::new();
    for (index, point) in points.iter().enumerate() {
        let letter = if index == 0 { 'M' } else { 'L' };
        // Tenths of a millimetre are plenty on a phone.
        path.push_str(&format!("{letter}{} {}", tenths(point.x().get::<millimeter>()), tenths(-point.y().get::<millimeter>())));
    }
    if close {
        path.push('Z');
    }
    path
}

fn tenths(value: f64) -> i32 {
    #[expect(clippy::cast_possible_truncation, reason = "a rotor is well under a kilometre")]
    let tenths = (value * 10.0).round() as i32;
    tenths
}

/// The face as it lies on the bench; each slot can be touched.
#[component]
fn Map(face: Face, states: Vec<SlotState>) -> impl IntoView {
    let map = Engine::preset().face_map(face == Face::Rear);
    let length = |length: uom::si::f64::Length| tenths(length.get::<millimeter>());
    let slots = states
        .iter()
        .zip(&map.slots)
        .map(|(state, line)| {
            let middle = line.get(line.len() / 2).copied();
            let label = middle.map(|middle| {
                let inward = 0.62;
                let (x, y) = (tenths(middle.x().get::<millimeter>() * inward), tenths(-middle.y().get::<millimeter>() * inward));
                view! {
                    <text x=x y=y class="slot-name">{state.slot.to_string()}</text>
                    <text x=x y=y + 95 class="slot-gap">{state.gap.clone().unwrap_or_else(|| "–".to_owned())}</text>
                }
            });
            let spoken = format!("{}: {}, {}", state.slot, state.word(), state.mark.clone().unwrap_or_else(|| "no mark".to_owned()));
            view! {
                <a href=Route::Slot(state.slot).hash() aria-label=spoken>
                    <path class="slot-touch" d=path(line, false)/>
                    <path class=state.class() d=path(line, false)/>
                    {label}
                </a>
            }
        })
        .collect_view();
    let corners = map
        .corners
        .iter()
        .zip(["A", "B", "C"])
        .map(|(corner, letter)| {
            let (x, y) = (tenths(corner.x().get::<millimeter>()), tenths(-corner.y().get::<millimeter>()));
            view! { <circle class="corner" cx=x cy=y r=length(map.corner_radius) + 12/><text class="corner-name" x=x y=y + 26>{letter}</text> }
        })
        .collect_view();
    view! {
        <svg class="map" viewBox="-1090 -1090 2180 1840" role="group" aria-label=format!("Rotor, {} face up", face.name())>
            <path class="outline" d=path(&map.outline, true)/>
            <circle class="oil" cx="0" cy="0" r=length(map.oil_radius)/>
            {slots}
            {corners}
        </svg>
    }
}
