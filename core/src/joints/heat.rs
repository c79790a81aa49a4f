//! What heat does to a joint: the clamp of bolts through a stack that grows more than they do, and solid
//! dowels between parts that grow unlike.
//!
//! Each length grows by L·α·ΔT from the temperature it was tightened or fitted at. Metals and temperatures
//! come as ranges, so the answers are ranges, and no better than they are.

use super::clamp::Stiffness;
use super::{Range, Refusal};
use crate::seals::{Expansion, GrowthFault, Temperatures, length_at};
use pitleaf_translated::{tr, translated};
use uom::num_traits::Zero;
use uom::si::f64::{Force, Length};

/// A length of one metal, cold, and how warm it gets.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Piece {
    /// Its length at the temperature it was tightened or fitted at.
    pub length: Length,
    /// What it is made of.
    pub expansion: Expansion,
    /// How warm it gets.
    pub running: Temperatures,
}

impl Piece {
    /// How much longer it gets from a temperature.
    ///
    /// # Errors
    /// A [`GrowthFault`] with its sentence.
    pub fn growth(&self, from: Temperatures) -> Result<Range<Length>, GrowthFault> {
        let grown = length_at(self.length, self.expansion, from, self.running)?;
        let band = Range::exactly(grown.least - self.length);
        Ok(band.reaching(grown.greatest - self.length))
    }
}

/// What stands beside the hot clamp.
pub const BOUND: &str = tr!(
    "Reckoned as if the housings gave nothing: the true change is smaller. Seals and gaskets that set lose clamp on top."
);

/// How much more the pieces a bolt holds grow than the bolt does; below zero they grow less.
///
/// # Errors
/// A [`GrowthFault`] with its sentence.
pub fn stretched_by(
    pieces: &[Piece],
    bolt: &Piece,
    tightened_at: Temperatures,
) -> Result<Range<Length>, GrowthFault> {
    let mut held = Range::exactly(Length::zero());
    for piece in pieces {
        held = held.plus(piece.growth(tightened_at)?);
    }
    let bolt = bolt.growth(tightened_at)?;
    Ok(held.with(bolt, |held, bolt| held - bolt))
}

/// The clamp of a bolt once hot: what it was, and what being stretched adds to it at most. Never below nothing.
#[must_use]
pub fn hot_clamp(
    cold: Range<Force>,
    stiffness: Stiffness,
    stretched: Range<Length>,
) -> Range<Force> {
    let nothing = Force::zero();
    let at_most = stretched.map(|stretched| stiffness * stretched);
    let hot = cold.plus(at_most);
    // The housings give way too, so that less of it comes about than the bound: any share of it may.
    let hot = hot.reaching(cold.least()).reaching(cold.greatest());
    hot.map(|force| if force < nothing { nothing } else { force })
}

/// Two solid dowels across parts that grow unlike.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DowelsHot {
    /// How much one part grows past the other between the dowels, whichever it is.
    pub past: Range<Length>,
    /// How much of that the fits of the dowels give; nothing where they are tight.
    pub room: Range<Length>,
}

/// What heat does to two dowels.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DowelsVerdict {
    /// The fits give as much as the parts grow apart.
    Free,
    /// Perhaps.
    MayFight,
    /// They do not.
    Fight,
}

/// Two dowels a spacing apart, through two parts that grow unlike.
///
/// `clearances` are hole less dowel in the one part and in the other, below zero a press: each dowel gives way
/// by half of both, so two give both, and a press gives nothing.
///
/// # Errors
/// A [`GrowthFault`] with its sentence; both parts must have one spacing.
pub fn dowels(
    one: &Piece,
    other: &Piece,
    fitted_at: Temperatures,
    clearances: [Range<Length>; 2],
) -> Result<DowelsHot, GrowthFault> {
    let (one, other) = (one.growth(fitted_at)?, other.growth(fitted_at)?);
    let past = one.with(other, |one, other| one - other);
    let nothing = Length::zero();
    // Either way round: past zero the least is none.
    let size = past.map(Length::abs);
    let crosses = past.least() <= nothing && past.greatest() >= nothing;
    let past = if crosses { size.reaching(nothing) } else { size };
    let loose = |fit: Range<Length>| fit.map(|gap| if gap < nothing { nothing } else { gap });
    Ok(DowelsHot { past, room: loose(clearances[0]).plus(loose(clearances[1])) })
}

impl DowelsHot {
    /// Whether the fits give enough.
    #[must_use]
    pub fn verdict(&self) -> DowelsVerdict {
        if self.past.greatest() <= self.room.least() {
            DowelsVerdict::Free
        } else if self.past.least() <= self.room.greatest() {
            DowelsVerdict::MayFight
        } else {
            DowelsVerdict::Fight
        }
    }
}

impl DowelsVerdict {
    /// In a sentence.
    #[must_use]
    #[translated]
    pub fn words(self) -> &'static str {
        match self {
            Self::Free => "The fits give as much as the parts grow apart.",
            Self::MayFight => {
                "The parts may grow further apart than the fits give: the dowels then bend, or their holes in the softer part wear oval."
            }
            Self::Fight => {
                "The parts grow further apart than the fits give: two tight solid dowels fight that, bend, or wear their holes in the softer part oval. Fit one of the two looser along the line between them."
            }
        }
    }
}

impl From<GrowthFault> for Refusal {
    fn from(fault: GrowthFault) -> Self {
        Self::Growth(fault)
    }
}
