//! A rotor's test as typed.

use super::{Air, Compression, PRESSURE};
use crate::book::{Book, BuildId};
use crate::quantity::{Bounds, Fault, Number, Reading, Rounding, Unit};
use crate::route::RouteFact;
use crate::route::description::current;
use crate::route::fact::subject_of_test;
use pitleaf_translated::{tr, translated};
use std::fmt;

/// A rotor's test as typed.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct TypedTest {
    /// The rotor, from 1 at the front.
    pub rotor: String,
    /// The readings of the three faces, in the order the tester gave them.
    pub faces: [String; 3],
    /// Their unit, by its symbol.
    pub unit: String,
    /// Cranking speed, in turns a minute.
    pub speed: String,
    /// Altitude above the sea, with its unit; may be empty where the air's pressure is given.
    pub altitude: String,
    /// Pressure of the air as a barometer on the spot shows it; may be empty where the altitude is given.
    pub air: String,
}

/// The least and the greatest cranking speed taken, in turns of the shaft a minute.
pub const SPEEDS: (i64, i64) = (50, 1000);

const ALTITUDE: Bounds =
    Bounds { name: tr!("An altitude"), lowest: -500, highest: 6000, unit: Unit::Metre };
const AIR: Bounds =
    Bounds {
        name: tr!("The air’s pressure"), lowest: 450, highest: 1100, unit: Unit::Hectopascal
    };

/// What is wrong with a test as typed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum CompressionFault {
    /// A face's reading, counted from 1.
    Face(usize, Fault),
    /// The unit is none of pressure.
    Unit,
    /// The cranking speed.
    Speed,
    /// The altitude.
    Altitude(Fault),
    /// The air's pressure.
    Air(Fault),
    /// The air's pressure is not that of the altitude: what the air there presses, in words.
    AirOfAltitude(String),
}

impl TypedTest {
    pub(in crate::route) fn texts(&self) -> Vec<String> {
        let [one, two, three] = self.faces.clone();
        let Self { rotor, unit, speed, altitude, air, .. } = self.clone();
        vec![rotor, one, two, three, unit, speed, altitude, air]
    }

    /// From its texts; those of older books end before the air's pressure.
    pub(in crate::route) fn of_texts(
        mut next: impl FnMut() -> String,
    ) -> Result<Self, &'static str> {
        let rotor = next();
        let faces = [next(), next(), next()];
        let (unit, speed) = (next(), next());
        Ok(Self { rotor, faces, unit, speed, altitude: next(), air: next() })
    }

    /// In a line: faces, unit, speed, altitude or air.
    #[must_use]
    pub fn words(&self) -> String {
        format!("{} {}, {}", self.faces.join(" / "), self.unit, self.conditions())
    }

    /// Speed and air in words.
    #[must_use]
    #[translated]
    pub fn conditions(&self) -> String {
        let Self { speed, altitude, air, .. } = self;
        match (altitude.is_empty(), air.is_empty()) {
            (_, true) => format!("cranked at {speed} /min, {altitude} above the sea"),
            (true, _) => format!("cranked at {speed} /min, air at {air}"),
            _ => format!("cranked at {speed} /min, {altitude} above the sea, air at {air}"),
        }
    }

    /// The test, read.
    ///
    /// # Errors
    /// The first [`CompressionFault`].
    pub fn read(&self) -> Result<Compression, CompressionFault> {
        let unit =
            Unit::named(&self.unit).filter(|unit| unit.dimension() == PRESSURE.unit.dimension());
        let unit = unit.ok_or(CompressionFault::Unit)?;
        let face = |index: usize| {
            Reading::read(&self.faces[index], unit, &PRESSURE)
                .map_err(|fault| CompressionFault::Face(index + 1, fault))
        };
        let faces = [face(0)?, face(1)?, face(2)?];
        let speed = Number::read(&self.speed).map_err(|_| CompressionFault::Speed)?;
        let (least, most) = SPEEDS;
        if speed.numerator() < least * speed.denominator()
            || speed.numerator() > most * speed.denominator()
        {
            return Err(CompressionFault::Speed);
        }
        Ok(Compression { faces, speed, air: self.read_air()? })
    }

    /// By the barometer where one was read, else by the altitude.
    fn read_air(&self) -> Result<Air, CompressionFault> {
        let at_altitude = || {
            let altitude = Reading::read(&self.altitude, Unit::Metre, &ALTITUDE)
                .map_err(CompressionFault::Altitude)?;
            Air::at(altitude.amount()).ok_or(CompressionFault::Altitude(Fault::Empty))
        };
        if self.air.is_empty() {
            return at_altitude();
        }
        let read =
            Reading::read(&self.air, Unit::Hectopascal, &AIR).map_err(CompressionFault::Air)?;
        let air = Air::read(&read);
        if !self.altitude.is_empty() {
            let expected = at_altitude()?;
            if !air.can_be(&expected) {
                let (unit, nearest) = (read.unit(), Rounding::Nearest);
                let places = if unit == Unit::Hectopascal { 0 } else { 2 };
                let figure = expected.pressure.show(unit, places, nearest);
                return Err(CompressionFault::AirOfAltitude(format!("{figure} {}", unit.symbol())));
            }
        }
        Ok(air)
    }

    /// The last test of a rotor in the book.
    #[must_use]
    pub fn of<'book>(book: &'book Book, build: &BuildId, rotor: u8) -> Option<&'book Self> {
        match current(book, build, subject_of_test(&rotor.to_string()))? {
            RouteFact::Compression(test) => Some(test),
            _ => None,
        }
    }
}

impl fmt::Display for CompressionFault {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Face(face, fault) => write!(f, "Face {face}: {fault}"),
            Self::Unit => f.write_str("Give the readings in a unit of pressure: kPa, psi, bar."),
            Self::Speed => write!(
                f,
                "Give the cranking speed in turns a minute, {} to {}: a reading without it says little.",
                SPEEDS.0, SPEEDS.1
            ),
            Self::Altitude(Fault::Empty) => f.write_str(
                "Give the altitude, with m or ft behind it, or the air’s pressure: thin air reads low.",
            ),
            Self::Altitude(fault) => write!(f, "Altitude: {fault}"),
            Self::Air(fault) => write!(f, "Air’s pressure: {fault}"),
            Self::AirOfAltitude(expected) => write!(
                f,
                "At this altitude a barometer stands near {expected}. A weather report gives what it would be at the sea: leave the air’s pressure empty, or read a barometer where the engine stands."
            ),
        }
    }
}

impl std::error::Error for CompressionFault {}
