//! Calculators and tolerance tables for building rotary (Wankel-type) engines.
//!
//! Pure: time and ids come in as arguments, and nothing here knows a browser.
//!
//! - [`quantity`]: text as typed → an exact amount, and back, in any unit.
//! - [`calculators`] and [`help`]: what each answers; what a figure is, how to measure it, why it matters.
//! - [`find`]: one search over everything.
//! - [`language`] and [`letters`]: what differs between English and German besides the texts; letter cases.
//! - [`kept`]: how all of it stands in JSON.
//! - [`limits`]: limit rows, their sources, gauges, and the verdict on a reading.
//! - [`book`]: the entries of a build, and what they add up to.
//! - [`seals`]: places, leaves and brackets, grinding, growth, which seal goes where.
//! - [`air`]: what the air presses at an altitude.
//! - [`trochoid`]: bore, rotor and chambers from four measures.
//! - [`ports`]: when a port opens, what it runs into, how much room is left, and its template.
//! - [`joints`]: threads, clamp, fits, press fits and the oil feed.
//! - [`faces`]: flatness, bores, stack and end play, as measured before stacking.
//! - [`spoken`]: figures, verdicts and steps as they are said.
//! - [`route`]: the order of work, what holds it, what was decided, and the build sheet.

pub mod air;
pub mod book;
pub mod calculators;
mod decimal;
pub mod faces;
pub mod find;
pub mod help;
pub mod joints;
pub mod language;
pub mod letters;
pub mod limits;
pub mod ports;
pub mod quantity;
pub mod route;
pub mod seals;
pub mod spoken;
pub mod trochoid;

pub use pitleaf_kept::{self as kept, kept_fields, kept_variants, kept_words};
