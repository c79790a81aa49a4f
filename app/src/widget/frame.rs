//! The frame of every screen: its head, the notice line, and the way to the other screens under the thumb.

use crate::route::Route;
use crate::state::{Notice, app};
use leptos::prelude::*;
use pitleaf_core::book::Face;

/// A screen's head, with "back" where there is somewhere to go back to, and what stands under it.
#[component]
pub fn Frame(
    /// What the screen is about.
    #[prop(into)]
    title: Signal<String>,
    /// The line under it.
    #[prop(into, optional)]
    under: Signal<String>,
    /// Whether "back" is shown.
    #[prop(optional)]
    back: bool,
    /// The screen.
    children: Children,
) -> impl IntoView {
    let app = app();
    let parent = move || app.route.with(|route| route.parent().hash());
    view! {
        <header class="head">
            {back.then(|| view! { <a class="back" href=parent aria-label="Back">{chevron()}</a> })}
            <div class="head-words">
                <h1>{title}</h1>
                <p class="under">{under}</p>
            </div>
            <a class="head-action" href=Route::Settings.hash() aria-label="Settings">{sliders()}</a>
        </header>
        {children()}
    }
}

fn chevron() -> impl IntoView {
    view! { <svg viewBox="0 0 24 24" aria-hidden="true" class="icon"><path d="M15 4 7 12l8 8"/></svg> }
}

fn sliders() -> impl IntoView {
    view! { <svg viewBox="0 0 24 24" aria-hidden="true" class="icon"><path d="M3 7h8m6 0h4M3 17h4m6 0h8"/><circle cx="14" cy="7" r="3"/><circle cx="10" cy="17" r="3"/></svg> }
}

/// The way to the main screens.
#[component]
pub fn Nav() -> impl IntoView {
    let app = app();
    let place = move |name: &'static str, to: Route, here: fn(&Route) -> bool| {
        view! {
            <a href=to.hash() aria-current=move || app.route.with(here).then_some("page")>{name}</a>
        }
    };
    view! {
        <nav class="nav" aria-label="Screens">
            {place("Bench", Route::Bench, |route| matches!(route, Route::Bench | Route::Open | Route::Settings))}
            {place("Limits", Route::Limits, |route| {
                matches!(route, Route::Limits | Route::Part(_) | Route::Check { .. } | Route::OwnLimit(_))
            })}
            {place("Convert", Route::Convert, |route| matches!(route, Route::Convert))}
            {place("Seals", Route::Seals(1, Face::Front), |route| matches!(route, Route::Seals(..) | Route::Slot(_)))}
            {place("Book", Route::Book, |route| matches!(route, Route::Book | Route::Entry(_)))}
        </nav>
    }
}

/// What was just done, with its undo; or what went wrong.
#[component]
pub fn NoticeBar() -> impl IntoView {
    let app = app();
    let close = move |_| app.notice.set(None);
    view! {
        <div class="notices" role="status" aria-live="polite">
            {move || app.notice.get().map(|notice| match notice {
                Notice::Written(id, said) => view! {
                    <div class="notice">
                        <p><b>"Written"</b>" "{said}</p>
                        <button class="quiet" on:click=move |_| app.withdraw(&id)>"Undo"</button>
                        <button class="quiet" on:click=close aria-label="Close this line">"×"</button>
                    </div>
                }.into_any(),
                Notice::Said(said) => view! {
                    <div class="notice"><p>{said}</p><button class="quiet" on:click=close aria-label="Close this line">"×"</button></div>
                }.into_any(),
                Notice::Wrong(said) => view! {
                    <div class="notice wrong" role="alert"><p>{said}</p><button class="quiet" on:click=close aria-label="Close this line">"×"</button></div>
                }.into_any(),
            })}
        </div>
    }
}
