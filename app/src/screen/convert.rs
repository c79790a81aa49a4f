//! One figure in every unit at once.

use crate::draft;
use crate::route::Route;
use crate::state::app;
use crate::widget::{Frame, Keypad, UnitKeys};
use leptos::prelude::*;
use pitleaf_core::quantity::{
    Amount, Bounds, Dimension, Fault, Reading, Rounding, Span, Tolerance, Unit, conversions, nearest_leaf, nearest_sixty_fourth, places_for,
};

/// The converter.
#[component]
pub fn Convert() -> impl IntoView {
    let app = app();
    let hash = Route::Convert.hash();
    let kept = draft::at(&hash);
    let unit = RwSignal::new(kept.as_ref().and_then(|draft| draft.unit).unwrap_or(Unit::Millimetre));
    let text = RwSignal::new(kept.map(|draft| draft.text).unwrap_or_default());
    Effect::new(move |_| draft::put(&hash, &text.get(), Some(unit.get())));
    let dimension = Signal::derive(move || unit.get().dimension());
    let units = Signal::derive(move || dimension.get().units().collect::<Vec<_>>());
    let choose = move |event| {
        let wanted = event_target_value(&event);
        if let Some(dimension) = Dimension::ALL.into_iter().find(|dimension| dimension.name() == wanted) {
            let remembered = app.settings.with_untracked(|settings| settings.unit(dimension));
            if let Some(first) = remembered.or_else(|| dimension.units().next()) {
                unit.set(first);
            }
        }
    };
    let answer = move || {
        let bounds = Bounds::widest(dimension.get());
        let text = text.get();
        if text.contains('±') {
            return match Tolerance::read(&text, unit.get(), bounds) {
                Ok(tolerance) => view! { <Limits tolerance=tolerance/> }.into_any(),
                Err(fault) => refusal(&fault).into_any(),
            };
        }
        match Reading::read(&text, unit.get(), bounds) {
            Ok(reading) => view! { <All reading=reading/> }.into_any(),
            Err(fault) => refusal(&fault).into_any(),
        }
    };
    view! {
        <Frame title="Convert" under="One figure, every unit; exact where it can be">
            <div class="check" class:left-handed=move || app.settings.with(|settings| settings.left_handed)>
                <div class="check-answer">
                    <div class="figure-line">
                        <input
                            class="figure"
                            class:long=move || text.with(|text| text.chars().count() > 8)
                            aria-label="Figure"
                            inputmode="none"
                            autocomplete="off"
                            autocapitalize="off"
                            spellcheck="false"
                            placeholder="0"
                            prop:value=text
                            on:input=move |event| text.set(event_target_value(&event))
                        />
                        <span class="figure-unit">{move || unit.get().symbol()}</span>
                    </div>
                    {answer}
                </div>
                <div class="check-keys">
                    <label class="line-field">
                        <span>"What"</span>
                        <select on:change=choose prop:value=move || dimension.get().name()>
                            {Dimension::ALL.map(|dimension| view! { <option value=dimension.name()>{dimension.name()}</option> }).collect_view()}
                        </select>
                    </label>
                    <UnitKeys units=units unit=unit/>
                    <Keypad text=text extra=[("±", "±", "plus or minus"), ("−", "-", "Minus")]>
                        <button type="button" class="key" aria-label="Fraction bar" on:click=move |_| text.update(|text| text.push('/'))>"/"</button>
                        <button type="button" class="key" on:click=move |_| text.set(String::new())>"Clear"</button>
                    </Keypad>
                </div>
            </div>
        </Frame>
    }
}

fn refusal(fault: &Fault) -> impl IntoView + use<> {
    let empty = *fault == Fault::Empty;
    view! { <p class="refusal" class:empty=empty role="status">{if empty { "Type a figure. A drawing’s 11 ± 0.3 gives limits, rounded inward.".to_owned() } else { fault.to_string() }}</p> }
}

#[component]
fn All(reading: Reading) -> impl IntoView {
    let rows = conversions(&reading)
        .into_iter()
        .map(|converted| {
            let exact = match &converted.exact {
                Some(exact) if *exact == converted.rounded => "exact".to_owned(),
                Some(exact) => format!("exactly {exact}"),
                None => "rounded".to_owned(),
            };
            view! { <tr><th scope="row">{converted.unit.symbol()}</th><td class="number">{converted.rounded}</td><td class="dim">{exact}</td></tr> }
        })
        .collect_view();
    view! {
        <table class="units-table" aria-label="In every unit"><tbody>{rows}</tbody></table>
        <Near amount=reading.amount() step=reading.step()/>
    }
}

/// The nearest leaf of a usual set and the nearest 64th, for lengths.
#[component]
fn Near(amount: Amount, step: Span) -> impl IntoView {
    let off = move |rest: Span, unit: Unit| {
        let places = places_for(step, unit).min(5);
        if rest.is_zero() {
            "exactly".to_owned()
        } else {
            let way = if rest.is_negative() { "under it" } else { "over it" };
            format!("{} {} {way}", rest.size().show(unit, places, Rounding::Nearest), unit.symbol())
        }
    };
    nearest_sixty_fourth(amount).map(|((whole, numerator, denominator), rest)| {
        let fraction = match (whole, numerator) {
            (whole, 0) => format!("{whole} in"),
            (0, _) => format!("{numerator}/{denominator} in"),
            _ => format!("{whole} {numerator}/{denominator} in"),
        };
        let leaves = pitleaf_core::quantity::usual_leaves();
        let leaf = nearest_leaf(amount, &leaves).map(|(leaf, rest)| {
            view! { <tr><th scope="row">"leaf"</th><td class="number">{format!("{} mm", leaf.show(Unit::Millimetre, 2, Rounding::Nearest))}</td><td class="dim">{off(rest, Unit::Millimetre)}</td></tr> }
        });
        view! {
            <table class="units-table" aria-label="Nearest"><tbody>
                <tr><th scope="row">"1/64"</th><td class="number">{fraction}</td><td class="dim">{off(rest, Unit::Inch)}</td></tr>
                {leaf}
            </tbody></table>
        }
    })
}

/// A tolerance as limits in every unit, rounded inward.
#[component]
fn Limits(tolerance: Tolerance) -> impl IntoView {
    let rows = tolerance
        .limits()
        .into_iter()
        .map(|(unit, coarse, fine)| {
            view! {
                <tr><th scope="row">{unit.symbol()}</th><td class="number">{format!("{} … {}", coarse.0, coarse.1)}</td><td class="dim number">{format!("{} … {}", fine.0, fine.1)}</td></tr>
            }
        })
        .collect_view();
    view! {
        <p class="plain">"Limits rounded inward: nothing shown here admits what the drawing rejects."</p>
        <table class="units-table" aria-label="Limits in every unit"><tbody>{rows}</tbody></table>
    }
}
