//! One search over everything: limits, calculators and their tables, steps, slots, notes, help.
//!
//! By the trade's words, by words of the same meaning, by both names of a unit, and with typing errors.

mod finder;
mod found;
mod german;
mod index;
mod synonyms;
mod typing;
mod words;

pub use finder::{Finder, Group};
pub use found::{Found, Kind, Place};
pub use index::{Index, Weight};
