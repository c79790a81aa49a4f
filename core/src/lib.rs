//! Calculators and tolerance tables for building rotary (Wankel-type) engines.
//!
//! Pure: time and ids come in as arguments, and nothing here knows a browser.
//!
//! - [`quantity`]: text as typed → an exact amount, and back, in any unit.
//! - [`joints`]: threads, clamp, fits, press fits and the oil feed.
//! - [`limits`]: limit rows, their sources, gauges, and the verdict on a reading.
//! - [`seals`]: places, leaves and brackets, grinding, growth, which seal goes where.
//! - [`book`]: the entries of a build, and what they add up to.
//! - [`trochoid`]: bore, rotor and chambers from four measures.
//! - [`faces`]: flatness, bores, stack and end play, as measured before stacking.
//! - [`ports`]: when a port opens, what it runs into, how much room is left, and its template.

pub mod book;
mod letters;
pub mod joints;
pub mod faces;
pub mod limits;
pub mod ports;
pub mod quantity;
pub mod seals;
pub mod trochoid;
