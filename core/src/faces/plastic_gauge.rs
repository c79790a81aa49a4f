//! Plastic gauge strips: squeezed flat in a bearing, then held against the marks of their scale.
//!
//! The strip's width falls between two marks, so each end of a strip is a bracket. Its clearance is that
//! of one side and one direction, with the shaft not turned; a bore gauge sees all of them.

use super::Refusal;
use super::bracket::{checked, greatest};
use super::clearance::Clearance;
use crate::quantity::Amount;
use crate::seals::Bracket;
use pitleaf_translated::translated;

/// One strip: the clearances of the marks that its width lies between, at either end. A strip of even
/// width has the same marks at both.
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
    /// All clearances seen lie in it.
    pub seen: Bracket,
    /// The first strip whose two ends lie in different intervals: the bearing tapers.
    pub tapered: Option<usize>,
}

/// Sums up the strips of one bearing.
///
/// # Errors
/// [`Refusal::TooFew`] without a strip; [`Refusal::Crossed`] where an end's marks are changed over, or the
/// tight end shows more room than the loose one; [`Refusal::Open`] without any mark;
/// [`Refusal::OutOfBounds`] (marks within [`crate::quantity::Bounds::GAP`]).
#[translated]
pub fn strips(strips: &[Strip]) -> Result<Strips, Refusal> {
    if strips.is_empty() {
        return Err(Refusal::TooFew { found: "a clearance by plastic gauge", given: 0, needed: 1 });
    }
    let mut ends = Vec::with_capacity(strips.len());
    for (reading, strip) in strips.iter().enumerate() {
        let (loose, tight) = (checked(strip.loose, reading)?, checked(strip.tight, reading)?);
        if tight.low > loose.low {
            return Err(Refusal::Crossed { reading });
        }
        ends.push((loose, tight));
    }
    let loose: Vec<Bracket> = ends.iter().map(|end| end.0).collect();
    let apart =
        |(loose, tight): &(Bracket, Bracket)| tight.high.is_some() && tight.high <= loose.low;
    Ok(Strips {
        seen: Bracket { low: least(&ends), ..greatest(&loose) },
        tapered: ends.iter().position(apart),
    })
}

/// The least clearance that any tight end may have.
fn least(ends: &[(Bracket, Bracket)]) -> Option<Amount> {
    ends.iter().filter_map(|end| end.1.low).reduce(|all, one| if one < all { one } else { all })
}

impl Strips {
    /// Whether strips and gauges can both be right: the two ranges, the gauges' widened by ±2 standard
    /// uncertainties, have something in common. None where a figure is no number.
    #[must_use]
    pub fn agree_with(&self, clearance: &Clearance) -> Option<bool> {
        let least = Amount::of_length(clearance.least.value - clearance.least.expanded())?;
        let most = Amount::of_length(clearance.most.value + clearance.most.expanded())?;
        let under = self.seen.low.is_none_or(|low| most >= low);
        Some(under && self.seen.high.is_none_or(|high| least < high))
    }
}
