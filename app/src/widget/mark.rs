//! The mark of a verdict: a shape and a stroke beside its word.

use crate::dom::{El, svg};
use pitleaf_core::limits::Call;

/// Circle and tick, square and cross, diamond and bar; a thin ring for nothing measured.
pub fn call_mark(call: Option<Call>) -> El {
    let paths: &[(&str, &str)] = match call {
        Some(Call::Meets) => &[("M20 4a16 16 0 1 0 .1 0z", ""), ("m12 20 6 6 11-12", "")],
        Some(Call::DoesNotMeet(_)) => {
            &[("M4 4h32v32H4z", ""), ("M8 8h24v24H8z", "inner"), ("m14 14 12 12m0-12L14 26", "")]
        }
        Some(Call::TooClose) => &[("M20 3 37 20 20 37 3 20z", "dashed"), ("M12 20h16", "")],
        None => &[("M20 4a16 16 0 1 0 .1 0z", "thin")],
    };
    svg("svg")
        .attrs(&[("viewBox", "0 0 40 40"), ("class", "call-mark"), ("aria-hidden", "true")])
        .with_all(
            paths.iter().map(|(path, class)| svg("path").attrs(&[("d", path), ("class", class)])),
        )
}
