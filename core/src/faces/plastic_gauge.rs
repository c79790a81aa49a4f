//! Plastic gauge strips: squeezed flat in a bearing, then held against the marks of their scale.
//!
//! The strip's width falls between two marks, so each end of a strip is a bracket. Its clearance is that
//! of one side and one direction, with the shaft not turned; a bore gauge sees all of them.

use super::clearance::Clearance;
use super::{Bracket, Refusal};
use crate::quantity::Amount;
use std::cmp::Ordering;

/// One strip: the marks that its width lies between, at the end where the clearance is greater and at the
/// other. A strip of even width has the same marks at both.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Strip {
    /// The narrower end: more room.
    pub loose: Bracket,
    /// The wider end: less room.
    pub tight: Bracket,
}

/// What the strips of one bearing show.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Strips {
    /// No clearance seen is less than this.
    pub at_least: Amount,
    /// No clearance seen is as much as this; none where a strip stayed narrower than its last mark.
    pub at_most: Option<Amount>,
    /// The first strip whose two ends lie in different intervals: the bearing tapers.
    pub tapered: Option<usize>,
}

/// Sums up the strips of one bearing.
///
/// # Errors
/// [`Refusal::TooFew`] without a strip; [`Refusal::Crossed`] where a tight end shows more room than its loose one.
pub fn strips(strips: &[Strip]) -> Result<Strips, Refusal> {
    let first = strips.first().ok_or(Refusal::TooFew {
        found: "a clearance by plastic gauge",
        given: 0,
        needed: 1,
    })?;
    let above = |one: Amount, other: Amount| one.order(other) == Some(Ordering::Greater);
    let wrong = |strip: &Strip| above(strip.tight.at_least(), strip.loose.at_least());
    if let Some(reading) = strips.iter().position(wrong) {
        return Err(Refusal::Crossed { reading });
    }
    let apart = |strip: &Strip| {
        strip.tight.at_most().is_some_and(|most| !above(most, strip.loose.at_least()))
    };
    let loose: Vec<Bracket> = strips.iter().map(|strip| strip.loose).collect();
    Ok(Strips {
        at_least: strips
            .iter()
            .map(|strip| strip.tight.at_least())
            .fold(first.tight.at_least(), |least, one| if above(least, one) { one } else { least }),
        at_most: Bracket::greatest(&loose).and_then(|greatest| greatest.at_most()),
        tapered: strips.iter().position(apart),
    })
}

impl Strips {
    /// Whether strips and gauges can both be right: the two ranges, the gauges' widened by ±2 standard
    /// uncertainties, have something in common. None where a figure is no number.
    #[must_use]
    pub fn agree_with(&self, clearance: &Clearance) -> Option<bool> {
        let least = Amount::of_length(clearance.least.value - clearance.least.expanded())?;
        let most = Amount::of_length(clearance.most.value + clearance.most.expanded())?;
        let reaches = |greater: Amount, lesser: Amount| !greater.minus(lesser).is_negative();
        Some(reaches(most, self.at_least) && self.at_most.is_none_or(|top| reaches(top, least)))
    }
}
