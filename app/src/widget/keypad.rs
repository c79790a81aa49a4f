//! Our own keys: large, under the thumb, and acting before the finger lifts.

use crate::device;
use crate::state::app;
use leptos::prelude::*;
use pitleaf_core::quantity::Unit;

/// A press that acts at touch-down, and still answers keyboards and screen readers, which send only a click.
fn on_press(
    act: impl Fn() + Clone + 'static,
) -> (impl Fn(leptos::ev::PointerEvent) + Clone, impl Fn(leptos::ev::MouseEvent) + Clone) {
    let app = app();
    let touched = StoredValue::new(false);
    let by_touch = {
        let act = act.clone();
        move |event: leptos::ev::PointerEvent| {
            if event.button() != 0 {
                return;
            }
            touched.set_value(true);
            if app.settings.with_untracked(|settings| settings.buzz) {
                device::buzz();
            }
            act();
        }
    };
    let by_click = move |_| {
        if !touched.try_update_value(std::mem::take).unwrap_or(false) {
            act();
        }
    };
    (by_touch, by_click)
}

/// The figure keys, writing into `text`.
///
/// `extra` takes the place of the key beside 6; `action` stands at the bottom right.
#[component]
pub fn Keypad(
    /// What is typed.
    text: RwSignal<String>,
    /// The two keys of the last column, as (face, what it types, spoken).
    extra: [(&'static str, &'static str, &'static str); 2],
    /// The button at the bottom right.
    children: Children,
) -> impl IntoView {
    let key = move |face: &'static str, types: &'static str, spoken: &'static str| {
        let (by_touch, by_click) = on_press(move || text.update(|text| text.push_str(types)));
        view! { <button type="button" class="key" aria-label=spoken on:pointerdown=by_touch on:click=by_click>{face}</button> }
    };
    let digit = move |face: &'static str| key(face, face, face);
    let (erase_touch, erase_click) = on_press(move || {
        text.update(|text| {
            text.pop();
        });
    });
    let [upper, lower] = extra;
    view! {
        <div class="keypad" role="group" aria-label="Figure keys">
            {digit("7")} {digit("8")} {digit("9")}
            <button type="button" class="key" aria-label="Delete the last character" on:pointerdown=erase_touch on:click=erase_click>
                <svg viewBox="0 0 28 20" class="icon" aria-hidden="true"><path d="M9 2h17v16H9L2 10zM14 7l6 6m0-6-6 6"/></svg>
            </button>
            {digit("4")} {digit("5")} {digit("6")} {key(upper.0, upper.1, upper.2)}
            {digit("1")} {digit("2")} {digit("3")} {key(lower.0, lower.1, lower.2)}
            {digit("0")} {key(".", ".", "Decimal point")}
            {children()}
        </div>
    }
}

/// The unit switch.
#[component]
pub fn UnitKeys(
    /// The units to choose from.
    #[prop(into)]
    units: Signal<Vec<Unit>>,
    /// The one set.
    unit: RwSignal<Unit>,
) -> impl IntoView {
    let app = app();
    view! {
        <div class="units" role="group" aria-label="Unit">
            {move || units.get().into_iter().map(|choice| view! {
                <button
                    type="button"
                    class="unit"
                    aria-pressed=move || (unit.get() == choice).to_string()
                    on:click=move |_| {
                        unit.set(choice);
                        app.set(|settings| settings.remember(choice));
                    }
                >{choice.symbol()}</button>
            }).collect_view()}
        </div>
    }
}
