//! What can be wrong with a typed quantity, each with its sentence for the bench.

use super::show::without_zeros;
use super::{Amount, Bounds, Dimension, Rounding, Unit};
use crate::letters;
use pitleaf_translated::translated;
use std::fmt;

/// Why a text was not taken as a reading. The text itself stays where it was typed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Fault {
    /// Nothing was typed.
    Empty,
    /// A piece that is no number; cut to what fits a line.
    Unreadable(String),
    /// More than one decimal point or comma.
    TwoPoints,
    /// A power of ten, as in `1e9`.
    Exponent,
    /// More digits than can be held exactly.
    TooManyDigits {
        /// The most that can.
        most: usize,
    },
    /// Minus zero, which is nearly always a slip.
    MinusZero,
    /// A fraction that isn't one.
    Fraction,
    /// Finer than this unit can be held exactly.
    TooFine(Unit),
    /// Letters behind the number that name no unit.
    UnknownUnit(String),
    /// A unit with m for M, or M for m: off by a factor of 10⁹.
    Prefix {
        /// As typed.
        typed: String,
        /// The unit it would be.
        meant: Unit,
    },
    /// A pound that is two things: 500 g by German custom, 453.592 37 g as the lb.
    TwoPounds,
    /// A unit of another kind of thing.
    OtherDimension {
        /// The unit typed.
        typed: Unit,
        /// What is measured here.
        wanted: Dimension,
    },
    /// Outside what can be sensible here.
    OutOfBounds {
        /// The bounds it missed.
        bounds: &'static Bounds,
        /// The unit it was typed in, in which the sentence speaks.
        unit: Unit,
    },
}

impl Fault {
    /// An unreadable piece, cut so that the sentence stays one.
    pub(super) fn unreadable(text: &str) -> Self {
        Self::Unreadable(cut(text))
    }

    /// What is wrong with a unit that is not taken; an unknown one is cut likewise.
    pub(super) fn of_unit(text: &str) -> Self {
        match Unit::with_prefix_mistaken(text) {
            Some(meant) => Self::Prefix { typed: text.to_owned(), meant },
            None if letters::lower(text) == "pfund" => Self::TwoPounds,
            None => Self::UnknownUnit(cut(text)),
        }
    }
}

fn cut(text: &str) -> String {
    const MOST: usize = 12;
    if text.chars().count() <= MOST {
        return text.to_owned();
    }
    text.chars().take(MOST).chain(['…']).collect()
}

impl fmt::Display for Fault {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Empty => f.write_str("Nothing typed yet. Type the reading."),
            Self::Unreadable(text) => {
                write!(f, "“{text}” is no number. Use digits with one point or comma.")
            }
            Self::TwoPoints => {
                f.write_str("More than one point or comma. Leave only the decimal one.")
            }
            Self::Exponent => {
                f.write_str("Powers of ten are not read. Write the number out in full.")
            }
            Self::TooManyDigits { most } => {
                write!(f, "Too many digits. At most {most} can be held exactly.")
            }
            Self::MinusZero => {
                f.write_str("Minus zero is no reading. Type 0, or a value below it.")
            }
            Self::Fraction => {
                f.write_str("This fraction can’t be read. Write it as 1/64, 1 1/8 or 2½.")
            }
            Self::TooFine(unit) => write!(
                f,
                "Not read that finely in {}. Check the unit, or write a decimal with fewer digits.",
                unit.symbol()
            ),
            Self::UnknownUnit(text) => {
                write!(f, "“{text}” is no unit known here. Use one from the keys, or none.")
            }
            Self::Prefix { typed, meant } => write!(
                f,
                "“{typed}” is not {}: m is a thousandth, M a million. Write the unit as on the keys.",
                meant.symbol()
            ),
            Self::TwoPounds => {
                f.write_str("A “Pfund” is 500 g to some, 453.6 g to others. Write g, kg or lb.")
            }
            Self::OtherDimension { typed, wanted } => write!(
                f,
                "{} measures {}, but {} is measured here. Change the unit.",
                typed.symbol(),
                typed.dimension().name(),
                wanted.name()
            ),
            Self::OutOfBounds { bounds, unit } => write!(
                f,
                "{} lies between {} and {} {}. Check the decimal point and the unit.",
                bounds.name,
                edge(bounds.least(), *unit, Rounding::Up),
                edge(bounds.greatest(), *unit, Rounding::Down),
                unit.symbol()
            ),
        }
    }
}

impl std::error::Error for Fault {}

fn edge(amount: Amount, unit: Unit, inward: Rounding) -> String {
    without_zeros(&amount.show(unit, 2, inward)).to_owned()
}
