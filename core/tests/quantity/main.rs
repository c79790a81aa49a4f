//! Quantities against the outside: units, rounding, reading, faults, and what holds for every input.

mod conversion;
mod faults;
mod properties;
mod reading;
mod rounding;
mod units;

use pitleaf_core::quantity::{Bounds, Reading, Unit};

/// A reading of any size, in the unit behind the number.
#[track_caller]
fn read(text: &str, unit: Unit) -> Reading {
    match Reading::read(text, unit, Bounds::widest(unit.dimension())) {
        Ok(reading) => reading,
        Err(fault) => panic!("{text:?} in {}: {fault}", unit.symbol()),
    }
}
