//! Words for reading out: figures, verdicts and steps as one person at the bench says them to another.
//!
//! In the German app, [`german`] says numbers and units.
//!
//! How a figure is said (“two and a half thou”, “nought point nought five millimetres”) is common
//! practice, no source.

mod figure;
pub mod german;
mod units;
mod verdict;

pub use figure::{figure, whole};
use pitleaf_translated::translated;
pub use units::{of_unit, quantity};
pub use verdict::verdict;

use crate::route::Standing;

/// A step: what to do, on what, and the care it needs.
#[must_use]
#[translated]
pub fn step(standing: &Standing) -> String {
    let step = &standing.station.step;
    let mut said = sentence(&step.words);
    said.push_str(&sentence(&standing.station.place_words()));
    if !step.care.is_empty() {
        said.push_str(&sentence(&format!("Care: {}", step.care)));
    }
    said.trim_end().to_owned()
}

/// With one full stop behind it, so that the voice pauses there; nothing where there is nothing.
fn sentence(words: &str) -> String {
    match words.trim_end_matches('.') {
        "" => String::new(),
        words => format!("{words}. "),
    }
}
