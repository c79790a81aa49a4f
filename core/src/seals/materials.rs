//! How much metals grow with heat. Rows and sources; the builder's own figures stand above them.
//!
//! Callister's figures hold near room temperature. The mean from 20 °C up to running temperature is
//! greater, and no published figure for it is at hand, so each row's upper end is from memory.

use super::GrowthFault;
use pitleaf_translated::{tr, translated};
use uom::si::f64::TemperatureCoefficient;
use uom::si::temperature_coefficient::ppm_per_kelvin;

/// A range of the coefficient of linear expansion.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Expansion {
    /// The least.
    pub least: TemperatureCoefficient,
    /// The greatest.
    pub greatest: TemperatureCoefficient,
}

impl Expansion {
    /// A range in millionths a kelvin, as tables print it.
    ///
    /// # Errors
    /// [`GrowthFault::Expansion`].
    pub fn of_millionths(least: f64, greatest: f64) -> Result<Self, GrowthFault> {
        let of = |value| TemperatureCoefficient::new::<ppm_per_kelvin>(value);
        let expansion = Self { least: of(least), greatest: of(greatest) };
        expansion.fault().map_or(Ok(expansion), Err)
    }

    pub(super) fn fault(self) -> Option<GrowthFault> {
        let sane =
            |value: TemperatureCoefficient| (0.0..=50.0).contains(&value.get::<ppm_per_kelvin>());
        (!sane(self.least) || !sane(self.greatest) || self.least > self.greatest)
            .then_some(GrowthFault::Expansion)
    }
}

/// A row: a metal, near room temperature and up to running temperature, in millionths a kelvin.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Material {
    /// Its name.
    pub name: &'static str,
    /// Near room temperature: W. D. Callister, *Materials Science and Engineering*, Table B.6.
    pub cold: f64,
    /// The mean from 20 °C to `up_to` °C, from memory.
    pub hot: f64,
    /// The end of that range, °C.
    pub up_to: u16,
}

const fn row(name: &'static str, cold: f64, hot: f64, up_to: u16) -> Material {
    Material { name, cold, hot, up_to }
}

/// Where the lower end of every row comes from.
pub const SOURCE_COLD: &str =
    tr!("Published: Callister, Materials Science and Engineering, Table B.6.");
/// Where the upper end of every row comes from.
pub const SOURCE_HOT: &str = tr!("From memory: confirm it for the metal at hand.");

/// The metals of rotors, seals and housings.
#[translated]
pub const MATERIALS: &[Material] = &[
    row("Grey cast iron", 11.4, 13.0, 400),
    row("Ductile cast iron, ferritic (60-40-18)", 11.2, 13.0, 400),
    row("Ductile cast iron, pearlitic (80-55-06)", 10.6, 13.0, 400),
    row("Carbon steel (1020)", 11.7, 13.6, 400),
    row("Alloy steel (4140, 4340)", 12.3, 13.7, 400),
    row("Aluminium casting (356)", 21.5, 23.5, 300),
    row("Aluminium, wrought (6061)", 23.6, 25.4, 300),
    row("Aluminium, wrought (7075)", 23.4, 25.2, 300),
];

impl Material {
    /// From near room temperature to running temperature.
    ///
    /// # Errors
    /// None in fact: every row is read in the tests.
    pub fn expansion(&self) -> Result<Expansion, GrowthFault> {
        Expansion::of_millionths(self.cold, self.hot)
    }

    /// Near room temperature alone, for correcting to 20 °C.
    ///
    /// # Errors
    /// None in fact: every row is read in the tests.
    pub fn near_room(&self) -> Result<Expansion, GrowthFault> {
        Expansion::of_millionths(self.cold, self.cold)
    }
}
