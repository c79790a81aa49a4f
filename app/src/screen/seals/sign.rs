//! A slot's state as a sign: its shape says it without colour.

use crate::dom::{El, svg};
use pitleaf_core::seals::SlotState;

/// Thin ring, triangle to be ground, dashed diamond, opposed arrows, ringed tick, crossed square, full disc with a tick, a
/// cross or a dash.
pub(super) fn sign(state: SlotState) -> El {
    const RING: &str = "M20 4a16 16 0 1 0 .1 0z";
    let paths: &[(&str, &str)] = match state {
        SlotState::NotMeasured => &[(RING, "thin")],
        SlotState::ToGrind => &[("M20 5 37 34H3z", ""), ("M13 25h14", "")],
        SlotState::Undecided => &[("M20 3 37 20 20 37 3 20z", "dashed"), ("M12 20h16", "")],
        SlotState::Disagree => &[("M4 13h30l-8-8", ""), ("M36 27H6l8 8", "")],
        SlotState::Fits => &[(RING, ""), ("m12 20 6 6 11-12", "")],
        SlotState::TooWide => {
            &[("M4 4h32v32H4z", ""), ("M8 8h24v24H8z", "inner"), ("m14 14 12 12m0-12L14 26", "")]
        }
        SlotState::Fitted => &[(RING, "full"), ("m12 20 6 6 11-12", "on-full")],
        SlotState::FittedUnproved => &[(RING, "full"), ("M13 20h14", "on-full")],
        SlotState::FittedTooTight | SlotState::FittedTooWide => {
            &[(RING, "full"), ("m14 14 12 12m0-12L14 26", "on-full")]
        }
    };
    svg("svg")
        .attrs(&[("viewBox", "0 0 40 40"), ("class", "call-mark"), ("aria-hidden", "true")])
        .with_all(
            paths.iter().map(|(path, class)| svg("path").attrs(&[("d", path), ("class", class)])),
        )
}

/// The class of a state's stroke on the map and of its card.
pub(super) fn class(state: SlotState) -> &'static str {
    match state {
        SlotState::NotMeasured => "unmeasured",
        SlotState::ToGrind => "grind",
        SlotState::Undecided | SlotState::FittedUnproved => "close",
        SlotState::Disagree => "disagree",
        SlotState::Fits => "meets",
        SlotState::TooWide | SlotState::FittedTooTight | SlotState::FittedTooWide => "fails",
        SlotState::Fitted => "fitted",
    }
}
