//! Settings.

use crate::settings::Light;
use crate::state::app;
use crate::widget::Frame;
use leptos::prelude::*;

/// Light, thumb, buzz.
#[component]
pub fn SettingsScreen() -> impl IntoView {
    let app = app();
    let light = move |choice: Light, name: &'static str| {
        view! {
            <button type="button" class="unit" aria-pressed=move || (app.settings.with(|settings| settings.light) == choice).to_string()
                on:click=move |_| app.set(|settings| settings.light = choice)>{name}</button>
        }
    };
    view! {
        <Frame title="Settings" under="Kept on this phone" back=true>
            <main class="page">
                <h2>"Light"</h2>
                <div class="units" role="group" aria-label="Light">{light(Light::Phone, "as the phone")}{light(Light::Dark, "dark")}{light(Light::Sun, "sun")}</div>
                <h2>"Thumb"</h2>
                <div class="units" role="group" aria-label="Thumb">
                    <button type="button" class="unit" aria-pressed=move || (!app.settings.with(|settings| settings.left_handed)).to_string() on:click=move |_| app.set(|settings| settings.left_handed = false)>"right"</button>
                    <button type="button" class="unit" aria-pressed=move || app.settings.with(|settings| settings.left_handed).to_string() on:click=move |_| app.set(|settings| settings.left_handed = true)>"left"</button>
                </div>
                <h2>"Keys"</h2>
                <div class="units" role="group" aria-label="Keys">
                    <button type="button" class="unit" aria-pressed=move || app.settings.with(|settings| settings.buzz).to_string() on:click=move |_| app.set(|settings| settings.buzz = !settings.buzz)>"buzz on a press"</button>
                </div>
                <h2>"Where limits come from"</h2>
                <p class="plain">"No limit shipped with Pitleaf is from a published manual: each row says whether it is common practice or from memory. Put in your own manual’s figures at the limit itself."</p>
            </main>
        </Frame>
    }
}
