//! Limits by part.

use super::bench::RowLink;
use crate::route::Route;
use crate::state::app;
use crate::widget::Frame;
use leptos::prelude::*;
use pitleaf_core::limits::{Part, Row};

/// The parts, favourites first.
#[component]
pub fn Limits() -> impl IntoView {
    let app = app();
    let favourites = Memo::new(move |_| {
        let kind = app.kind();
        app.sheet.with(|sheet| {
            app.settings.with(|settings| {
                settings.favourites.iter().filter_map(|id| sheet.row(id)).filter(|row| row.build.holds_for(kind)).cloned().collect::<Vec<Row>>()
            })
        })
    });
    let parts = move || {
        let kind = app.kind();
        app.sheet.with(|sheet| {
            Part::ALL
                .map(|part| (part, sheet.of_part(part, kind).count()))
                .into_iter()
                .filter(|(_, count)| *count > 0)
                .collect::<Vec<_>>()
        })
    };
    view! {
        <Frame title="Limits" under="By part; the ones on your bench first">
            <main class="page">
                <ul class="rows" aria-label="On the bench">{move || favourites.get().into_iter().map(|row| view! { <li><RowLink row=row/></li> }).collect_view()}</ul>
                <h2>"Parts"</h2>
                <ul class="tiles" aria-label="Parts">
                    {move || parts().into_iter().map(|(part, count)| view! {
                        <li><a class="tile" href=Route::Part(part).hash()><b>{part.name()}</b><span class="dim">{format!("{count} limits")}</span></a></li>
                    }).collect_view()}
                </ul>
            </main>
        </Frame>
    }
}

/// The limits of one part.
#[component]
pub fn PartLimits(
    /// The part.
    part: Part,
) -> impl IntoView {
    let app = app();
    let rows = move || {
        let kind = app.kind();
        app.sheet.with(|sheet| sheet.of_part(part, kind).cloned().collect::<Vec<_>>())
    };
    let under = Signal::derive(move || format!("Limits for {}", app.kind().name()));
    view! {
        <Frame title=part.name() under=under back=true>
            <main class="page">
                <ul class="rows">{move || rows().into_iter().map(|row| view! { <li><RowLink row=row/></li> }).collect_view()}</ul>
            </main>
        </Frame>
    }
}
