//! Compression ratios, and the recess in the rotor that makes one.

use pitleaf_translated::translated;
use std::fmt;

use uom::si::{f64::Volume, volume::cubic_centimeter};

use super::Chambers;
use crate::decimal::shown;

/// Why a ratio or a recess can't be worked out.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum RatioFault {
    /// The recess is below zero or not a number.
    Recess(Volume),
    /// The wanted ratio is 1 or less, or not a number.
    NotARatio(f64),
    /// The wanted ratio is more than the engine has with no recess at all.
    AboveTheoretical {
        /// The ratio asked for.
        wanted: f64,
        /// The ratio without a recess.
        theoretical: f64,
    },
}

impl fmt::Display for RatioFault {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Recess(recess) => write!(
                f,
                "a recess of {} cm³ can't be: pour it again and give a volume of 0 or more",
                shown(recess.get::<cubic_centimeter>(), 2)
            ),
            Self::NotARatio(wanted) => {
                write!(f, "a compression ratio of {} can't be: give one above 1", shown(*wanted, 2))
            }
            Self::AboveTheoretical { wanted, theoretical } => write!(
                f,
                "a ratio of {} is out of reach: with no recess at all this geometry gives {}",
                shown(*wanted, 2),
                shown(*theoretical, 2)
            ),
        }
    }
}

impl std::error::Error for RatioFault {}

impl Chambers {
    /// The ratio of greatest to least volume with no recess in the rotor.
    #[must_use]
    pub fn theoretical_ratio(&self) -> f64 {
        (self.greatest_volume() / self.least_volume()).value
    }

    /// The ratio with a recess of the given volume in each flank.
    ///
    /// # Errors
    /// If the recess is below zero or not finite.
    pub fn ratio(&self, recess: Volume) -> Result<f64, RatioFault> {
        if !(recess.is_finite() && recess >= Volume::default()) {
            return Err(RatioFault::Recess(recess));
        }
        Ok(((self.greatest_volume() + recess) / (self.least_volume() + recess)).value)
    }

    /// The recess each flank needs for a wanted ratio.
    ///
    /// # Errors
    /// If the ratio is not above 1, or above the theoretical one.
    pub fn recess_for(&self, wanted: f64) -> Result<Volume, RatioFault> {
        if !(wanted.is_finite() && wanted > 1.0) {
            return Err(RatioFault::NotARatio(wanted));
        }
        let theoretical = self.theoretical_ratio();
        if wanted > theoretical {
            return Err(RatioFault::AboveTheoretical { wanted, theoretical });
        }
        Ok((self.greatest_volume() - self.least_volume() * wanted) / (wanted - 1.0))
    }
}
