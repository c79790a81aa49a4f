//! Pitleaf's screens: touches into calls, answers into pictures. Every figure shown is computed in `pitleaf-core`.

#![allow(unreachable_pub, reason = "the component macro writes `pub` into private modules")]

mod device;
mod draft;
mod route;
mod screen;
mod settings;
mod state;
mod store;
mod widget;

use leptos::prelude::*;
use route::Route;
use screen::{Bench, BookScreen, Check, Convert, EntryScreen, Limits, Open, OwnLimit, PartLimits, Seals, SettingsScreen, SlotScreen};
use settings::Light;
use state::App;
use widget::{Nav, NoticeBar};

fn main() {
    console_error_panic_hook::set_once();
    leptos::mount::mount_to_body(Shell);
    if let Some(start) = document().get_element_by_id("start") {
        start.remove();
    }
}

#[component]
fn Shell() -> impl IntoView {
    let app = App::new();
    provide_context(app);
    app.open_book();
    let listener = window_event_listener(leptos::ev::hashchange, move |_| {
        app.route.set(Route::read(&window().location().hash().unwrap_or_default()));
        app.notice.set(None);
    });
    on_cleanup(move || listener.remove());
    Effect::new(move |_| {
        let light = match app.settings.with(|settings| settings.light) {
            Light::Phone => "phone",
            Light::Dark => "dark",
            Light::Sun => "sun",
        };
        if let Some(root) = document().document_element() {
            // Only a look: a browser that refuses keeps the phone's own.
            let _ = root.set_attribute("data-light", light);
        }
    });
    let screen = move || match app.route.get() {
        Route::Bench => view! { <Bench/> }.into_any(),
        Route::Open => view! { <Open/> }.into_any(),
        Route::Limits => view! { <Limits/> }.into_any(),
        Route::Part(part) => view! { <PartLimits part=part/> }.into_any(),
        Route::Check { row, place } => view! { <Check row=row place=place/> }.into_any(),
        Route::OwnLimit(row) => view! { <OwnLimit row=row/> }.into_any(),
        Route::Convert => view! { <Convert/> }.into_any(),
        Route::Seals(rotor, face) => view! { <Seals rotor=rotor face=face/> }.into_any(),
        Route::Slot(slot) => view! { <SlotScreen which=slot/> }.into_any(),
        Route::Book => view! { <BookScreen/> }.into_any(),
        Route::Entry(id) => view! { <EntryScreen id=id/> }.into_any(),
        Route::Settings => view! { <SettingsScreen/> }.into_any(),
    };
    view! {
        <div class="shell">
            <div class="screen">{screen}</div>
            <NoticeBar/>
            <Nav/>
        </div>
    }
}
