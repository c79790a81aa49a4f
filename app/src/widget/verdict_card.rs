//! The verdict: mark, word, how far, how sure.

use super::call_mark;
use crate::dom::{El, el, text};
use crate::signal::*;
use pitleaf_core::limits::Call;
use pitleaf_translated::tr;

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
pub fn verdict_card(shown: Memo<Shown>) -> El {
    el("section")
        .attrs(&[("role", "status"), ("aria-label", tr!("Verdict"))])
        .attr_live("class", move || {
            let class = match shown.with(|shown| shown.call) {
                Some(Call::Meets) => "verdict meets",
                Some(Call::DoesNotMeet(_)) => "verdict fails",
                Some(Call::TooClose) => "verdict close",
                None => "verdict none",
            };
            Some(class.to_owned())
        })
        .live(move || {
            shown.with(|shown| {
                let words = el("div").with(text("p", "verdict-word", &shown.word)).with(text(
                    "p",
                    "verdict-words",
                    &shown.words,
                ));
                vec![call_mark(shown.call), words]
            })
        })
}
