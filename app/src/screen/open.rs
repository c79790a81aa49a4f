//! Opening a build.

use crate::route::Route;
use crate::state::app;
use crate::widget::Frame;
use leptos::prelude::*;
use pitleaf_core::book::demo;
use pitleaf_core::limits::BuildKind;

/// Name, how it breathes, how many rotors; and the builds there are.
#[component]
pub fn Open() -> impl IntoView {
    let app = app();
    let name = RwSignal::new(String::new());
    let kind = RwSignal::new(BuildKind::NaturallyAspirated);
    let rotors = RwSignal::new(2_u8);
    let open = move |event: leptos::ev::SubmitEvent| {
        event.prevent_default();
        let words = name.get_untracked().trim().to_owned();
        if !words.is_empty() {
            app.open_build(words, kind.get_untracked(), rotors.get_untracked(), false, Vec::new());
        }
    };
    let open_demo = move |_| app.open_build(demo::NAME.to_owned(), demo::KIND, demo::ROTORS, true, demo::facts());
    let builds = move || {
        app.book.with(|book| {
            let named = |id| book.opening(&id).map(|(name, kind, ..)| (id.clone(), name.to_owned(), kind));
            book.builds().into_iter().filter_map(named).collect::<Vec<_>>()
        })
    };
    let kind_key = move |choice: BuildKind| {
        view! { <button type="button" class="unit" aria-pressed=move || (kind.get() == choice).to_string() on:click=move |_| kind.set(choice)>{choice.name()}</button> }
    };
    view! {
        <Frame title="Open a build" under="An engine’s own pages in the book" back=true>
            <main class="page">
                <form class="form" on:submit=open>
                    <label><span>"Name"</span><input type="text" autocomplete="off" placeholder="the customer’s engine" prop:value=name on:input=move |event| name.set(event_target_value(&event))/></label>
                    <div class="units" role="group" aria-label="How it breathes">{kind_key(BuildKind::NaturallyAspirated)}{kind_key(BuildKind::ForcedInduction)}</div>
                    <div class="units" role="group" aria-label="Rotors">
                        {(1..=4_u8).map(|count| view! {
                            <button type="button" class="unit" aria-pressed=move || (rotors.get() == count).to_string() on:click=move |_| rotors.set(count)>
                                {format!("{count} {}", if count == 1 { "rotor" } else { "rotors" })}
                            </button>
                        }).collect_view()}
                    </div>
                    <button type="submit" class="button action" disabled=move || name.with(|name| name.trim().is_empty())>"Open"</button>
                </form>
                {move || {
                    let builds = builds();
                    (!builds.is_empty()).then(|| view! {
                        <h2>"Builds in the book"</h2>
                        <ul class="rows">{builds.into_iter().map(|(id, name, kind)| {
                            let take = move |_| {
                                app.set(|settings| settings.build = Some(id.0.to_string()));
                                app.go(&Route::Bench);
                            };
                            view! { <li><button type="button" class="row-link" on:click=take><b>{name}</b><span class="row-limit">{kind.name()}</span></button></li> }
                        }).collect_view()}</ul>
                    })
                }}
                <button type="button" class="quiet" on:click=open_demo>"Open the demo engine (invented figures)"</button>
            </main>
        </Frame>
    }
}
