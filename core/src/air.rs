//! The standard atmosphere: what the air presses at an altitude.
//!
//! ISO 2533:1975, which up to 11 km is the US Standard Atmosphere 1976. Its altitude is geopotential; one
//! from a map differs by 6 m at 6000 m, far less than the weather does.

use uom::si::f64::{Length, Pressure};
use uom::si::length::meter;
use uom::si::pressure::pascal;

/// The standard pressure of the air at the sea, in pascals (ISO 2533).
pub const AT_SEA_LEVEL: f64 = 101_325.0;
/// Temperature at the sea in kelvins, and how much of it a metre of altitude takes (ISO 2533).
const WARMTH: f64 = 288.15;
const LAPSE: f64 = 0.0065;
/// g/(lapse · R), with g 9.806 65 m/s² and R 287.052 87 J/(kg·K) (ISO 2533).
const POWER: f64 = 9.806_65 / (LAPSE * 287.052_87);

/// The standard pressure of the air at an altitude above the sea, below 11 km.
#[must_use]
pub fn standard_pressure(altitude: Length) -> Pressure {
    let warmth = 1.0 - LAPSE * altitude.get::<meter>() / WARMTH;
    Pressure::new::<pascal>(AT_SEA_LEVEL * warmth.powf(POWER))
}
