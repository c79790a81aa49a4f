//! A test that could be read: three faces, how fast the engine was cranked, and the air it drew.

use crate::air::{AT_SEA_LEVEL, standard_pressure};
use crate::quantity::{Amount, Number, Reading, Span, Unit};
use std::cmp::Ordering;

/// How far the weather takes the air's pressure from the standard one, in hectopascals either way.
/// From memory: at the sea it seldom leaves 983 to 1043 hPa.
const WEATHER: f64 = 30.0;
/// The greatest error of a barometer in a workshop, in hectopascals either way. From memory.
const BAROMETER: f64 = 3.0;

/// The air that the engine drew.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Air {
    /// Its pressure, absolute.
    pub pressure: Amount,
    /// How far it may be from that, either way.
    pub band: Span,
}

/// A test that could be read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Compression {
    /// The three faces.
    pub faces: [Reading; 3],
    /// Cranking speed, in turns of the shaft a minute.
    pub speed: Number,
    /// The air.
    pub air: Air,
}

fn hectopascals(count: f64) -> Span {
    Span::nearest(count, Unit::Hectopascal).unwrap_or_else(|| Span::whole(0, Unit::Hectopascal))
}

impl Air {
    /// Of an altitude: the standard atmosphere's, give or take the weather. None for what is no length.
    #[must_use]
    pub fn at(altitude: Amount) -> Option<Self> {
        let pressure = Amount::of_pressure(standard_pressure(altitude.length()?))?;
        Some(Self { pressure, band: hectopascals(WEATHER) })
    }

    /// As a barometer showed it.
    #[must_use]
    pub fn read(barometer: &Reading) -> Self {
        let half_step = barometer.step().value(Unit::Hectopascal) / 2.0;
        Self { pressure: barometer.amount(), band: hectopascals(BAROMETER.max(half_step)) }
    }

    /// Whether it can be the same air as another, within the bands of both.
    #[must_use]
    pub fn can_be(&self, other: &Self) -> bool {
        let apart = self.pressure.minus(other.pressure).size();
        apart <= self.band.plus(other.band)
    }

    /// By how much a reading is to be multiplied to be the sea's: a gauge shows p (rⁿ − 1), where p is the
    /// pressure of the air drawn in.
    #[must_use]
    pub fn to_sea_level(&self) -> f64 {
        AT_SEA_LEVEL / 1000.0 / self.pressure.value(Unit::Kilopascal)
    }

    /// Its relative standard uncertainty: band over √3 (JCGM 100:2008, 4.3.7).
    #[must_use]
    pub fn doubt(&self) -> f64 {
        self.band.value(Unit::Kilopascal) / 3_f64.sqrt() / self.pressure.value(Unit::Kilopascal)
    }
}

impl Compression {
    /// The lowest face.
    #[must_use]
    pub fn lowest(&self) -> &Reading {
        let by = |one: &&Reading, two: &&Reading| one.amount().order(two.amount());
        self.faces
            .iter()
            .min_by(|one, two| by(one, two).unwrap_or(Ordering::Equal))
            .unwrap_or(&self.faces[0])
    }

    /// Highest less lowest, exactly.
    #[must_use]
    pub fn spread(&self) -> Span {
        let spreads = self.faces.iter().map(|face| face.amount().minus(self.lowest().amount()));
        spreads
            .max_by(
                |one, two| {
                    if one.minus(*two).is_negative() { Ordering::Less } else { Ordering::Greater }
                },
            )
            .unwrap_or_else(|| self.faces[0].amount().minus(self.faces[0].amount()))
    }

    /// Mean of the three faces, in a unit: for the evenness between rotors.
    pub(super) fn mean(&self, unit: Unit) -> f64 {
        self.faces.iter().map(|face| face.amount().value(unit)).sum::<f64>() / 3.0
    }

    /// The coarsest last digit of the three.
    pub(super) fn step(&self) -> Span {
        let steps = self.faces.iter().map(Reading::step);
        steps
            .reduce(|one, two| if one.minus(two).is_negative() { two } else { one })
            .unwrap_or_else(|| self.faces[0].step())
    }

    pub(super) fn unit(&self) -> Unit {
        self.faces[0].unit()
    }
}
