//! Joints against published figures, and against the rules the figures follow from.
//!
//! Status of each figure: *P* read in the source or in agreeing transcriptions, *R* recomputed from
//! the published definition, *M* from memory.

mod bad_input;
mod bolts;
mod clamp;
mod fits;
mod heat;
mod oil_line;
mod plan;
mod press;
mod sequence;
mod slip;
mod threads;
mod torsion;
mod words;

/// The one way figures are compared here: `within` is absolute.
#[track_caller]
fn close(got: f64, wanted: f64, within: f64, what: &str) {
    assert!((got - wanted).abs() <= within, "{what}: got {got}, wanted {wanted} ± {within}");
}
