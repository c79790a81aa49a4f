//! A clearance between a hole or a gap and what sits in it, from several readings of each.

use super::uncertainty::Measured;
use crate::limits::{Call, Limit, Verdict};

/// The room between two measured parts; below zero is interference.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Clearance {
    /// Worst case tight: the least outside less the greatest inside.
    pub least: Measured,
    /// Mean outside less mean inside.
    pub mean: Measured,
    /// Worst case loose: the greatest outside less the least inside.
    pub most: Measured,
}

/// Least, mean and greatest of a size read at several places.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sizes {
    /// The least reading.
    pub least: Measured,
    /// The mean.
    pub mean: Measured,
    /// The greatest reading.
    pub greatest: Measured,
}

impl Clearance {
    /// The room that `inside` has in `outside`.
    #[must_use]
    pub fn of(outside: &Sizes, inside: &Sizes) -> Self {
        Self {
            least: outside.least.minus(&inside.greatest),
            mean: outside.mean.minus(&inside.mean),
            most: outside.greatest.minus(&inside.least),
        }
    }

    /// The same as interference of a pressed fit: signs turned, least and most changed over.
    #[must_use]
    pub fn interference(&self) -> Self {
        Self {
            least: self.most.times(-1.0),
            mean: self.mean.times(-1.0),
            most: self.least.times(-1.0),
        }
    }

    /// Half of it: the room on each side of a part that sits in the middle.
    #[must_use]
    pub fn per_side(&self) -> Self {
        Self {
            least: self.least.times(0.5),
            mean: self.mean.times(0.5),
            most: self.most.times(0.5),
        }
    }

    /// The verdict that counts: the worse of the tight and the loose end. Proved to meet only if both are.
    ///
    /// None where a figure is no number.
    ///
    /// # Panics
    /// When the limit is no length's: the caller has mixed up two rows.
    #[must_use]
    pub fn against(&self, limit: &Limit) -> Option<Verdict> {
        let (tight, loose) = (self.least.against(limit)?, self.most.against(limit)?);
        Some(if is_worse(&loose, &tight) { loose } else { tight })
    }
}

/// Whether a verdict is worse than another.
pub(super) fn is_worse(one: &Verdict, other: &Verdict) -> bool {
    let rank = |verdict: &Verdict| match verdict.call {
        Call::DoesNotMeet(_) => 2,
        Call::TooClose => 1,
        Call::Meets => 0,
    };
    (rank(one), -one.conformity) > (rank(other), -other.conformity)
}
