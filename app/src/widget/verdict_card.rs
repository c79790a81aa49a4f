//! The verdict: mark, word, how far, how sure.

use super::CallMark;
use leptos::prelude::*;
use pitleaf_core::limits::Call;

/// A verdict ready to show.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Shown {
    /// The call; none while nothing can be judged.
    pub call: Option<Call>,
    /// The word.
    pub word: String,
    /// The lines under it.
    pub words: String,
}

/// The card under the rule.
#[component]
pub fn VerdictCard(
    /// What to show.
    #[prop(into)]
    shown: Signal<Shown>,
) -> impl IntoView {
    let call = Signal::derive(move || shown.with(|shown| shown.call));
    let class = move || match call.get() {
        Some(Call::Meets) => "verdict meets",
        Some(Call::DoesNotMeet(_)) => "verdict fails",
        Some(Call::TooClose) => "verdict close",
        None => "verdict none",
    };
    view! {
        <section class=class role="status" aria-label="Verdict">
            <CallMark call=call/>
            <div>
                <p class="verdict-word">{move || shown.with(|shown| shown.word.clone())}</p>
                <p class="verdict-words">{move || shown.with(|shown| shown.words.clone())}</p>
            </div>
        </section>
    }
}
