//! Why a set of readings was not taken, each with its sentence for the bench.

use crate::quantity::{Bounds, Fault};
use pitleaf_translated::translated;
use std::fmt;

/// What is wrong with a set of readings. Nothing is computed from a set that is refused.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Refusal {
    /// Not enough readings to say anything.
    TooFew {
        /// What was to be found: "flatness".
        found: &'static str,
        /// Readings given.
        given: usize,
        /// Readings that would do.
        needed: usize,
    },
    /// Two lists that belong together are of different lengths.
    Unequal {
        /// Readings in the one.
        one: usize,
        /// Readings in the other.
        other: usize,
    },
    /// All places lie on one line, or on one spot: no plane is fixed by them.
    OneLine,
    /// All points lie on one line, or on one spot: no circle is fixed by them.
    NoCircle,
    /// The corners named are no three different places of the set.
    NoCorners,
    /// A value outside what can be sensible, or none at all.
    OutOfBounds {
        /// The bounds it missed.
        bounds: &'static Bounds,
        /// Which reading of a list, from 0; none where there is only one.
        reading: Option<usize>,
    },
    /// A leaf or mark given as the lesser is not less than the greater.
    Crossed {
        /// Which reading, from 0.
        reading: usize,
    },
    /// A range whose lesser end is above its greater one; the bounds name it.
    Backwards(&'static Bounds),
    /// Neither a lower nor an upper figure: no leaf tried, no mark read.
    Open {
        /// Which reading, from 0.
        reading: usize,
    },
    /// Swept and unswept places lie so that a step can't be told from a bend.
    StepHidden,
}

impl Refusal {
    /// The same, its reading counted on from those before.
    pub(super) fn counted_from(self, before: usize) -> Self {
        match self {
            Self::OutOfBounds { bounds, reading } => {
                Self::OutOfBounds { bounds, reading: reading.map(|reading| reading + before) }
            }
            other => other,
        }
    }
}

impl fmt::Display for Refusal {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {
            Self::TooFew { found, given: 0, needed } => {
                write!(f, "No readings yet. Take at least {needed} for {found}.")
            }
            Self::TooFew { found, given: 1, needed } => {
                write!(f, "One reading is too few for {found}. Take at least {needed}.")
            }
            Self::TooFew { found, given, needed } => {
                write!(f, "{given} readings are too few for {found}. Take at least {needed}.")
            }
            Self::Unequal { one, other } => write!(
                f,
                "{one} readings stand against {other}. Each needs its partner: fill the empty ones or take the odd ones out."
            ),
            Self::OneLine => f.write_str(
                "All places lie on one line, which fixes no plane. Add a place well off that line.",
            ),
            Self::NoCircle => f.write_str(
                "All points lie on one line, which fixes no circle. Take points all the way round.",
            ),
            Self::NoCorners => f.write_str(
                "The three corners must be three different places, not on one line. Pick them again.",
            ),
            Self::OutOfBounds { bounds, reading } => {
                if let Some(reading) = reading {
                    write!(f, "Reading {}: ", reading + 1)?;
                }
                write!(f, "{}", Fault::OutOfBounds { bounds, unit: bounds.unit })
            }
            Self::Backwards(bounds) => {
                write!(f, "{} is given from the lesser figure to the greater. Swap them.", bounds.name)
            }
            Self::Open { reading } => write!(
                f,
                "Reading {}: neither a lower nor an upper figure. Give at least one of them.",
                reading + 1
            ),
            Self::Crossed { reading } => write!(
                f,
                "Reading {}: the lesser figure is not below the greater. Swap them, or check the decimal point.",
                reading + 1
            ),
            Self::StepHidden => f.write_str(
                "The swept places can’t be told from a bend of the face. Read on both sides of the swept edge, all the way round.",
            ),
        }
    }
}

impl std::error::Error for Refusal {}
