//! Growth: the cold gap at the bench becomes a band of gaps in the running engine.
//!
//! A side seal lies between two corner seals on a rotor. Along the slot, from the middle of one
//! corner-seal bore to that of the other, the rotor spans seal + two corner-seal radii + gap. Each
//! grows on its own: L(T) = L(20 °C)·(1 + α·(T − 20 °C)), 20 °C being the reference for lengths
//! (ISO 1:2022). Materials and temperatures come as ranges, so the answer is a band.
//!
//! Temperatures inside a running engine are estimates, and the band is no better than they are.

use super::materials::Expansion;
use crate::quantity::{Amount, Unit};
use pitleaf_translated::{tr, translated};
use uom::si::f64::{
    Length, Ratio, TemperatureCoefficient, TemperatureInterval, ThermodynamicTemperature,
};
use uom::si::ratio::ratio;
use uom::si::temperature_interval::kelvin as kelvin_interval;
use uom::si::thermodynamic_temperature::{degree_celsius, kelvin};

/// What to say beside every hot gap.
pub const ESTIMATE: &str = tr!(
    "An estimate: nobody knows the temperatures inside a running engine well. The engine’s own manual stands above this figure."
);

/// A range of temperature; both ends the same where it was measured.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Temperatures {
    /// The coldest it may be.
    pub coldest: ThermodynamicTemperature,
    /// The hottest it may be.
    pub hottest: ThermodynamicTemperature,
}

/// A piece along the slot: what it is made of and how hot it runs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Piece {
    /// What it is made of.
    pub expansion: Expansion,
    /// How hot it runs.
    pub running: Temperatures,
}

/// The chain of pieces along a slot, as measured cold.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Chain {
    /// The side seal's length.
    pub seal: Length,
    /// From a corner seal's middle to where the side seal meets it, once.
    pub corner_radius: Length,
    /// The least gap, cold.
    pub least_gap: Length,
    /// The greatest gap, cold.
    pub greatest_gap: Length,
    /// The bench's temperature, and the parts' with it.
    pub bench: Temperatures,
}

/// A band of gaps; below zero the seal jams against its corner seals.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Band {
    /// The least.
    pub least: Length,
    /// The greatest.
    pub greatest: Length,
}

/// Why there is no band.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum GrowthFault {
    /// The least gap lies above the greatest.
    GapCrossed,
    /// A range of temperatures upside down.
    TemperaturesCrossed,
    /// A length of 0 or less where a part must be.
    NoLength,
    /// A temperature no part of an engine has: below −60 °C or above 1200 °C.
    Temperature,
    /// A coefficient out of order: below 0, upside down, or above 50·10⁻⁶/K.
    Expansion,
}

impl std::fmt::Display for GrowthFault {
    #[translated]
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(match self {
            Self::GapCrossed => "The least gap lies above the greatest. Swap them.",
            Self::TemperaturesCrossed => "The coldest temperature lies above the hottest. Swap them.",
            Self::NoLength => "A seal and a corner seal are longer than 0. Type their sizes.",
            Self::Temperature => {
                "A part of an engine lies between −60 °C and 1200 °C. Check the temperature and its unit."
            }
            Self::Expansion => {
                "A metal grows by 0 to 50 millionths a kelvin, the lower figure first. Check the material."
            }
        })
    }
}

impl std::error::Error for GrowthFault {}

impl Temperatures {
    /// One temperature, as measured.
    #[must_use]
    pub fn of(temperature: ThermodynamicTemperature) -> Self {
        Self { coldest: temperature, hottest: temperature }
    }

    /// 20 °C, the reference temperature for lengths (ISO 1:2022).
    #[must_use]
    pub fn reference() -> Self {
        Self::of(ThermodynamicTemperature::new::<degree_celsius>(20.0))
    }

    fn fault(self) -> Option<GrowthFault> {
        let sane =
            |t: ThermodynamicTemperature| (-60.0..=1200.0).contains(&t.get::<degree_celsius>());
        if !sane(self.coldest) || !sane(self.hottest) {
            return Some(GrowthFault::Temperature);
        }
        (self.coldest > self.hottest).then_some(GrowthFault::TemperaturesCrossed)
    }
}

/// The factor a length grows by from one temperature to another.
fn factor(
    coefficient: TemperatureCoefficient,
    from: ThermodynamicTemperature,
    to: ThermodynamicTemperature,
) -> Ratio {
    let growth = |t: ThermodynamicTemperature| {
        let reference = Temperatures::reference().coldest;
        let above = TemperatureInterval::new::<kelvin_interval>(
            t.get::<kelvin>() - reference.get::<kelvin>(),
        );
        Ratio::new::<ratio>(1.0) + coefficient * above
    };
    growth(to) / growth(from)
}

/// The least and the greatest factor over the ranges. It is monotone in each argument, so the corners tell.
fn factors(expansion: Expansion, from: Temperatures, to: Temperatures) -> (Ratio, Ratio) {
    let mut least = Ratio::new::<ratio>(f64::INFINITY);
    let mut greatest = Ratio::new::<ratio>(f64::NEG_INFINITY);
    for coefficient in [expansion.least, expansion.greatest] {
        for start in [from.coldest, from.hottest] {
            for end in [to.coldest, to.hottest] {
                let factor = factor(coefficient, start, end);
                least = least.min(factor);
                greatest = greatest.max(factor);
            }
        }
    }
    (least, greatest)
}

/// A length as it would be at another temperature: a band, from the ranges given.
///
/// # Errors
/// A [`GrowthFault`] with its sentence.
pub fn length_at(
    length: Length,
    expansion: Expansion,
    from: Temperatures,
    to: Temperatures,
) -> Result<Band, GrowthFault> {
    let fault = expansion.fault().or(from.fault()).or(to.fault());
    if let Some(fault) = fault {
        return Err(fault);
    }
    let (least, greatest) = factors(expansion, from, to);
    let (a, b) = (length * least, length * greatest);
    Ok(Band { least: a.min(b), greatest: a.max(b) })
}

/// The gap in the running engine.
///
/// # Errors
/// A [`GrowthFault`] with its sentence.
pub fn hot_gap(
    chain: &Chain,
    rotor: Piece,
    seal: Piece,
    corner: Piece,
) -> Result<Band, GrowthFault> {
    if chain.least_gap > chain.greatest_gap {
        return Err(GrowthFault::GapCrossed);
    }
    let nothing = Length::default();
    if chain.seal <= nothing || chain.corner_radius < nothing {
        return Err(GrowthFault::NoLength);
    }
    // All parts share the bench's temperature, so each of its ends is taken through the whole chain.
    // Between the ends the gap strays from a straight line by less than a nanometre.
    let cold = gap_from(chain, chain.bench.coldest, [rotor, seal, corner])?;
    let warm = gap_from(chain, chain.bench.hottest, [rotor, seal, corner])?;
    if let Some(fault) = chain.bench.fault() {
        return Err(fault);
    }
    Ok(Band { least: cold.least.min(warm.least), greatest: cold.greatest.max(warm.greatest) })
}

/// The gap in the running engine from one temperature of the bench.
fn gap_from(
    chain: &Chain,
    bench: ThermodynamicTemperature,
    [rotor, seal, corner]: [Piece; 3],
) -> Result<Band, GrowthFault> {
    let grown = |length: Length, piece: Piece| {
        length_at(length, piece.expansion, Temperatures::of(bench), piece.running)
    };
    let seal_hot = grown(chain.seal, seal)?;
    let corners_hot = grown(2.0 * chain.corner_radius, corner)?;
    let solid = chain.seal + 2.0 * chain.corner_radius;
    let least_span = grown(solid + chain.least_gap, rotor)?.least;
    let greatest_span = grown(solid + chain.greatest_gap, rotor)?.greatest;
    Ok(Band {
        least: least_span - seal_hot.greatest - corners_hot.greatest,
        greatest: greatest_span - seal_hot.least - corners_hot.least,
    })
}

/// The gap the parts would have at 20 °C, all of them having the bench's temperature when measured.
///
/// # Errors
/// A [`GrowthFault`] with its sentence.
pub fn gap_at_reference(
    chain: &Chain,
    rotor: Expansion,
    seal: Expansion,
    corner: Expansion,
) -> Result<Band, GrowthFault> {
    let at = |expansion| Piece { expansion, running: Temperatures::reference() };
    hot_gap(chain, at(rotor), at(seal), at(corner))
}

impl Band {
    /// Both ends as amounts to the nearest 0.1 nm; none where they can't be held.
    #[must_use]
    pub fn amounts(self) -> Option<(Amount, Amount)> {
        Some((Amount::of_length(self.least)?, Amount::of_length(self.greatest)?))
    }

    /// The band in a sentence.
    #[must_use]
    #[translated]
    pub fn words(self, unit: Unit) -> String {
        use super::bracket::figure;
        use crate::quantity::Rounding::{Down, Up};
        let Some((least, greatest)) = self.amounts() else {
            return "The hot gap can’t be told.".to_owned();
        };
        let zero = Amount::whole(0, Unit::Millimetre);
        let band = format!("{} to {}", figure(least, unit, Down), figure(greatest, unit, Up));
        if greatest < zero {
            format!("Hot, the seal jams: the gap comes to {band}.")
        } else if least < zero {
            format!("Hot, the seal may jam: the gap comes to {band}.")
        } else {
            format!("Hot, the gap comes to {band}.")
        }
    }
}
