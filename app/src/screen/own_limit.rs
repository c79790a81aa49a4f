//! The builder's own limit, in place of the sheet's, with where it is from.

use crate::device;
use crate::route::Route;
use crate::state::app;
use crate::widget::Frame;
use leptos::prelude::*;
use pitleaf_core::book::Fact;
use pitleaf_core::limits::{Edge, Limit, Row, Source};
use pitleaf_core::quantity::Unit;

/// The form for one row.
#[component]
pub fn OwnLimit(
    /// The row's id.
    row: String,
) -> impl IntoView {
    let app = app();
    match app.sheet.with_untracked(|sheet| sheet.row(&row).cloned()) {
        Some(row) => view! { <Form row=row/> }.into_any(),
        None => view! { <Frame title="No such limit" back=true><p class="plain">"The sheet has no row of this name."</p></Frame> }.into_any(),
    }
}

#[component]
fn Form(row: Row) -> impl IntoView {
    let app = app();
    let text_of = |edge: &Option<Edge>| edge.as_ref().map(|edge| edge.text().to_owned()).unwrap_or_default();
    let lower = RwSignal::new(text_of(&row.limit.lower));
    let upper = RwSignal::new(text_of(&row.limit.upper));
    let wear = RwSignal::new(text_of(&row.limit.wear));
    let from = RwSignal::new(String::new());
    let who = RwSignal::new(String::new());
    let unit = RwSignal::new(row.unit);
    let wrong = RwSignal::new(Vec::<String>::new());
    let units: Vec<Unit> = row.unit.dimension().units().take(4).collect();
    let title = row.what.clone();
    let row = StoredValue::new(row);
    let save = move |event: leptos::ev::SubmitEvent| {
        event.prevent_default();
        let mut faults = Vec::new();
        let mut edge = |name: &str, text: RwSignal<String>| {
            let text = text.get_untracked();
            if text.trim().is_empty() {
                return None;
            }
            Edge::read(&text, unit.get_untracked()).map_err(|fault| faults.push(format!("{name}: {fault}"))).ok()
        };
        let limit = Limit { lower: edge("Lower", lower), upper: edge("Upper", upper), wear: edge("Wear", wear) };
        let source = Source::Yours {
            who: who.get_untracked().trim().to_owned(),
            when: device::moment(device::now()),
            from: from.get_untracked().trim().to_owned(),
        };
        let own = row.with_value(|row| Row { limit, unit: unit.get_untracked(), source, ..row.clone() });
        faults.extend(own.faults().iter().map(ToString::to_string));
        if from.with_untracked(|from| from.trim().is_empty()) {
            faults.push("Say where it is from: the manual and its page.".to_owned());
        }
        if faults.is_empty() {
            let back = Route::Check { row: own.id.clone(), place: String::new() };
            app.write(vec![Fact::Limit(Box::new(own))], "your own limit".to_owned(), move || app.go(&back));
        }
        wrong.set(faults);
    };
    let field = |name: &'static str, text: RwSignal<String>, hint: &'static str| {
        view! { <label><span>{name}</span><input type="text" autocomplete="off" placeholder=hint prop:value=text on:input=move |event| text.set(event_target_value(&event))/></label> }
    };
    view! {
        <Frame title="My own limit" under=title back=true>
            <main class="page">
                <form class="form" on:submit=save>
                    <div class="units" role="group" aria-label="Unit">
                        {units.into_iter().map(|choice| view! {
                            <button type="button" class="unit" aria-pressed=move || (unit.get() == choice).to_string() on:click=move |_| unit.set(choice)>{choice.symbol()}</button>
                        }).collect_view()}
                    </div>
                    {field("Lower limit", lower, "none")}
                    {field("Upper limit", upper, "none")}
                    {field("Wear limit", wear, "none")}
                    {field("From", from, "the manual, its page")}
                    {field("Entered by", who, "may stay empty")}
                    <ul class="faults" role="alert">{move || wrong.get().into_iter().map(|words| view! { <li>{words}</li> }).collect_view()}</ul>
                    <button type="submit" class="button action">"Put it in"</button>
                </form>
            </main>
        </Frame>
    }
}
