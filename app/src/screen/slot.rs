//! One side-seal slot: its mark, its gap, whether its seal is in.

use super::entry_line::EntryLine;
use super::seals::gap_row;
use crate::draft;
use crate::route::Route;
use crate::state::app;
use crate::widget::Frame;
use leptos::prelude::*;
use pitleaf_core::book::{Fact, Slot, Subject};

/// A slot's page.
#[component]
pub fn SlotScreen(
    /// Which (`slot` is Leptos' own word in a view).
    which: Slot,
) -> impl IntoView {
    let slot = which;
    let app = app();
    let hash = Route::Slot(slot).hash();
    let current = Memo::new(move |_| {
        let build = app.build()?;
        app.book.with(|book| book.mark(&build, slot).map(str::to_owned))
    });
    let text = RwSignal::new(draft::at(&hash).map(|draft| draft.text).unwrap_or_default());
    Effect::new(move |_| draft::put(&hash, &text.get(), None));
    let fitted = Memo::new(move |_| app.build().is_some_and(|build| app.book.with(|book| book.is_fitted(&build, slot))));
    let history = Memo::new(move |_| {
        let Some(build) = app.build() else { return Vec::new() };
        let gap = gap_row().map(|row| Subject::Figure(row, slot.to_string()));
        app.book.with(|book| {
            let subjects = [Some(Subject::Mark(slot)), gap, Some(Subject::Fitted(slot))];
            let mut ids: Vec<_> = subjects
                .into_iter()
                .flatten()
                .flat_map(|subject| book.history(&build, &subject).map(|line| (line.entry.order, line.entry.id.clone())).collect::<Vec<_>>())
                .collect();
            ids.sort();
            ids.into_iter().rev().map(|(_, id)| id).collect::<Vec<_>>()
        })
    });
    let save = move |event: leptos::ev::SubmitEvent| {
        event.prevent_default();
        let mark = text.get_untracked().trim().to_owned();
        if !mark.is_empty() {
            app.write(vec![Fact::Mark { slot, mark: mark.clone() }], format!("mark of {slot}: {mark}"), move || text.set(String::new()));
        }
    };
    let fit = move |_| {
        let now = !fitted.get_untracked();
        app.write(vec![Fact::Fitted { slot, fitted: now }], format!("{slot}: seal {}", if now { "fitted" } else { "taken out" }), || {});
    };
    let under = Signal::derive(move || {
        let name = app.opening().map_or_else(|| "no build open".to_owned(), |opening| opening.0);
        format!("{name} · rotor {}, {} face", slot.rotor(), slot.face().name())
    });
    view! {
        <Frame title=format!("Slot {slot}") under=under back=true>
            <main class="page">
                <h2>"Mark"</h2>
                <p class="entry-figure">{move || current.get().unwrap_or_else(|| "no mark yet".to_owned())}</p>
                <form class="form inline" on:submit=save>
                    <label><span>"As scribed on the part"</span>
                        <input type="text" autocomplete="off" placeholder="two dots and a short line" prop:value=text on:input=move |event| text.set(event_target_value(&event))/>
                    </label>
                    <button type="submit" class="button action" disabled=move || text.with(|text| text.trim().is_empty())>"Write down"</button>
                </form>
                <h2>"Seal"</h2>
                <div class="pair">
                    {move || gap_row().map(|row| view! { <a class="plate-link" href=Route::Check { row, place: slot.to_string() }.hash()>"Measure the gap"</a> })}
                    <button type="button" class="plate-link" aria-pressed=move || fitted.get().to_string() on:click=fit>{move || if fitted.get() { "Fitted ✓" } else { "Seal is fitted" }}</button>
                </div>
                <p class="caution"><b>"Care: "</b>"springs under the seals jump. Eye protection when grinding, and hone the burr off before measuring."</p>
                {move || (!history.with(Vec::is_empty)).then(|| view! {
                    <h2>"Written so far"</h2>
                    <ul class="entries">{history.get().into_iter().map(|id| view! { <li><EntryLine id=id/></li> }).collect_view()}</ul>
                })}
            </main>
        </Frame>
    }
}
