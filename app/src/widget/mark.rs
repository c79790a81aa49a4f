//! The mark of a verdict: a shape and a stroke beside its word.

use leptos::prelude::*;
use pitleaf_core::limits::Call;

/// Circle and tick, square and cross, diamond and bar; a thin ring for nothing measured.
#[component]
pub fn CallMark(
    /// The call, if there is one.
    #[prop(into)]
    call: Signal<Option<Call>>,
) -> impl IntoView {
    move || {
        let picture = match call.get() {
            Some(Call::Meets) => view! { <circle cx="20" cy="20" r="16"/><path d="m12 20 6 6 11-12"/> }.into_any(),
            Some(Call::DoesNotMeet(_)) => {
                view! { <rect x="4" y="4" width="32" height="32"/><rect x="8" y="8" width="24" height="24" class="inner"/><path d="m14 14 12 12m0-12L14 26"/> }.into_any()
            }
            Some(Call::TooClose) => view! { <path d="M20 3 37 20 20 37 3 20z" class="dashed"/><path d="M12 20h16"/> }.into_any(),
            None => view! { <circle cx="20" cy="20" r="16" class="thin"/> }.into_any(),
        };
        view! { <svg viewBox="0 0 40 40" class="call-mark" aria-hidden="true">{picture}</svg> }
    }
}
