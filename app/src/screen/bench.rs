//! The bench: what is open, what was last touched, and finding anything by its trade word.

use super::entry_line::EntryLine;
use crate::route::Route;
use crate::state::{Keeping, app};
use crate::widget::Frame;
use leptos::prelude::*;
use pitleaf_core::book::{Face, demo};
use pitleaf_core::limits::{Row, find, limit_line};

/// The bench.
#[component]
pub fn Bench() -> impl IntoView {
    let app = app();
    let query = RwSignal::new(String::new());
    let opening = Memo::new(move |_| app.opening());
    let title = Signal::derive(move || opening.get().map_or_else(|| "Bench".to_owned(), |(name, ..)| name));
    let under = Signal::derive(move || {
        opening.get().map_or_else(
            || "No build open yet".to_owned(),
            |(_, kind, rotors, demo)| {
                let invented = if demo { " · invented figures" } else { "" };
                format!("{} · {rotors} {}{invented}", kind.name(), if rotors == 1 { "rotor" } else { "rotors" })
            },
        )
    });
    let found = move || {
        let query = query.get();
        app.sheet.with(|sheet| {
            let kind = app.kind();
            let rows = sheet.rows().iter().filter(|row| row.build.holds_for(kind));
            find(rows, &query).into_iter().take(8).cloned().collect::<Vec<_>>()
        })
    };
    view! {
        <Frame title=title under=under>
            <main class="page">
                <Lasting/>
                <label class="search">
                    <span class="unseen">"Find a limit by any word"</span>
                    <input
                        type="search"
                        placeholder="Find: warp, e-shaft, end float…"
                        autocomplete="off"
                        prop:value=query
                        on:input=move |event| query.set(event_target_value(&event))
                    />
                </label>
                {move || {
                    if query.with(|query| query.trim().is_empty()) {
                        view! { <Resting/> }.into_any()
                    } else {
                        let rows = found();
                        if rows.is_empty() {
                            view! { <p class="plain" role="status">"No limit answers to that. Try the part’s name."</p> }.into_any()
                        } else {
                            view! { <ul class="rows" aria-label="Found">{rows.into_iter().map(|row| view! { <li><RowLink row=row/></li> }).collect_view()}</ul> }.into_any()
                        }
                    }
                }}
            </main>
        </Frame>
    }
}

/// What the bench shows while nothing is looked for.
#[component]
fn Resting() -> impl IntoView {
    let app = app();
    let favourites = Memo::new(move |_| {
        let kind = app.kind();
        app.sheet.with(|sheet| {
            app.settings.with(|settings| {
                let rows = settings.favourites.iter().filter_map(|id| sheet.row(id));
                rows.filter(|row| row.build.holds_for(kind)).cloned().collect::<Vec<Row>>()
            })
        })
    });
    let last = Memo::new(move |_| {
        let build = app.build();
        app.book.with(|book| {
            build.map(|build| book.lines(&build).rev().take(3).map(|line| line.entry.id.clone()).collect::<Vec<_>>()).unwrap_or_default()
        })
    });
    let has_build = move || app.build().is_some();
    view! {
        {move || (!has_build()).then(|| view! { <Start/> })}
        <h2>"Check a limit"</h2>
        <ul class="tiles" aria-label="Favourite limits">
            {move || favourites.get().into_iter().map(|row| view! { <li><Tile row=row/></li> }).collect_view()}
        </ul>
        <div class="pair">
            <a class="plate-link" href=Route::Limits.hash()>"All limits"</a>
            <a class="plate-link" href=Route::Seals(1, Face::Front).hash()>"Seal slots"</a>
        </div>
        {move || (!last.with(Vec::is_empty)).then(|| view! {
            <h2>"Last written"</h2>
            <ul class="entries">{last.get().into_iter().map(|id| view! { <li><EntryLine id=id/></li> }).collect_view()}</ul>
        })}
        {move || has_build().then(|| view! { <a class="quiet" href=Route::Open.hash()>"Open another build"</a> })}
        <p class="foot">"The engine’s own manual and local rules stand above every figure here."</p>
    }
}

/// The first thing a newcomer presses.
#[component]
fn Start() -> impl IntoView {
    let app = app();
    let open_demo = move |_| app.open_build(demo::NAME.to_owned(), demo::KIND, demo::ROTORS, true, demo::facts());
    view! {
        <div class="start">
            <p>"Check any reading against a limit right away. To write figures down, open a build."</p>
            <a class="button action" href=Route::Open.hash()>"Open a build"</a>
            <button type="button" class="button" on:click=open_demo>"Look at the demo engine"</button>
        </div>
    }
}

/// Says plainly when nothing written will last, and what was kept aside.
#[component]
fn Lasting() -> impl IntoView {
    let app = app();
    view! {
        {move || match app.keeping.get() {
            Keeping::NotKept(fault) => Some(view! { <p class="caution" role="alert">{fault.to_string()}</p> }),
            Keeping::Opening | Keeping::Kept => None,
        }}
        {move || {
            let count = app.aside.with(Vec::len);
            (count > 0).then(|| view! { <p class="caution"><a href=Route::Book.hash()>{format!("{count} records could not be read; they are kept as they are. See the book.")}</a></p> })
        }}
    }
}

/// A favourite: its name and its limit.
#[component]
fn Tile(row: Row) -> impl IntoView {
    let app = app();
    let limit = row.limit.clone();
    let unit = row.unit;
    view! {
        <a class="tile" href=Route::Check { row: row.id.clone(), place: String::new() }.hash()>
            <b>{row.what.clone()}</b>
            <span class="number">{move || limit_line(&limit, app.settings.with(|settings| settings.unit(unit.dimension())).unwrap_or(unit))}</span>
        </a>
    }
}

/// A row in a list: its name, its limit, how sure it is.
#[component]
pub(super) fn RowLink(row: Row) -> impl IntoView {
    view! {
        <a class="row-link" href=Route::Check { row: row.id.clone(), place: String::new() }.hash()>
            <b>{row.what.clone()}</b>
            <span class="row-limit">
                <span class="number">{limit_line(&row.limit, row.unit)}</span>
                <span class="kind">{row.source.kind()}</span>
            </span>
        </a>
    }
}
