//! A trial: what a leaf or the seal itself did in its slot, and what was ground off since the last one.

use super::ground::MOST_GROUND;
use super::leaf_set::tolerance_span;
use super::{Ground, LeafFault, Stack, Written};
use crate::kept::{Json, Kept, Refused};
use crate::quantity::{Amount, Span, Unit};
use crate::{kept_fields, kept_words};
use pitleaf_translated::translated;
use std::fmt;

/// What was seen.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Outcome {
    /// The leaves go in.
    Goes,
    /// The leaves do not go in.
    DoesNotGo,
    /// The seal is free in its slot, but the thinnest leaf does not go in.
    FreeNoLeaf,
    /// The seal goes in, but pushes the corner seal off its place.
    MovesCornerSeal,
    /// The seal will not enter its slot.
    WillNotEnter,
}

kept_words!(Outcome {
    Goes = "goes",
    DoesNotGo = "does-not-go",
    FreeNoLeaf = "free-no-leaf",
    MovesCornerSeal = "moves-corner-seal",
    WillNotEnter = "will-not-enter",
});

impl Outcome {
    /// Every outcome, widest gap first.
    pub const ALL: [Self; 5] =
        [Self::Goes, Self::DoesNotGo, Self::FreeNoLeaf, Self::MovesCornerSeal, Self::WillNotEnter];

    /// In the bench's words.
    #[must_use]
    #[translated]
    pub fn name(self) -> &'static str {
        match self {
            Self::Goes => "goes",
            Self::DoesNotGo => "does not go",
            Self::FreeNoLeaf => "free, but no leaf enters",
            Self::MovesCornerSeal => "moves the corner seal",
            Self::WillNotEnter => "will not enter the slot",
        }
    }

    /// Whether a leaf was in play.
    #[must_use]
    pub fn takes_leaves(self) -> bool {
        matches!(self, Self::Goes | Self::DoesNotGo | Self::FreeNoLeaf)
    }
}

/// Why a trial is not taken.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum TrialFault {
    /// Something is wrong with its leaves.
    Leaf(LeafFault),
    /// A leaf that may be off by all its thickness: itself, and by how much it may be off.
    LeafTooThin(String, String),
    /// "Goes" and the like without a leaf.
    LeafMissing,
    /// A leaf where none is in play.
    LeafNotInPlay(Outcome),
    /// "No leaf enters" with a stack in place of the thinnest leaf.
    NotOneLeaf,
    /// Nothing ground, as a count of 0 is meant; or more than is ever counted.
    Count,
}

impl From<LeafFault> for TrialFault {
    fn from(fault: LeafFault) -> Self {
        Self::Leaf(fault)
    }
}

impl fmt::Display for TrialFault {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Leaf(fault) => fault.fmt(f),
            Self::LeafTooThin(leaf, off) => write!(
                f,
                "A leaf may be off by {off}, so one of {leaf} proves nothing. Check the unit, or try a thicker leaf."
            ),
            Self::LeafMissing => f.write_str("No leaf named. Say which leaf or leaves were tried."),
            Self::LeafNotInPlay(outcome) => write!(
                f,
                "“{}” is said of the seal alone. Take the leaf away, or say whether it goes.",
                outcome.name()
            ),
            Self::NotOneLeaf => {
                f.write_str("“No leaf enters” is said of the thinnest leaf. Name that one alone.")
            }
            Self::Count => write!(
                f,
                "Grinding between two trials is counted from 1 to {MOST_GROUND}. Leave it empty if nothing was ground."
            ),
        }
    }
}

impl std::error::Error for TrialFault {}

/// A trial as written down.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Trial {
    outcome: Outcome,
    leaves: Option<Stack>,
    tolerance: Option<Written>,
    ground: Option<Ground>,
}

impl fmt::Display for Trial {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if let Some(leaves) = &self.leaves {
            write!(f, "{leaves} ")?;
        }
        f.write_str(self.outcome.name())?;
        if let Some(ground) = self.ground {
            write!(f, ", after {} {}", ground.count, ground.by.words(u64::from(ground.count)))?;
        }
        Ok(())
    }
}

impl Trial {
    /// A trial with leaves, each of which may be off its mark by `tolerance` either way.
    ///
    /// # Errors
    /// A [`TrialFault`] with its sentence.
    pub fn with_leaves(
        outcome: Outcome,
        leaves: Stack,
        tolerance: Written,
        ground: Option<Ground>,
    ) -> Result<Self, TrialFault> {
        Self { outcome, leaves: Some(leaves), tolerance: Some(tolerance), ground }.checked()
    }

    /// A trial of the seal alone.
    ///
    /// # Errors
    /// A [`TrialFault`] with its sentence.
    pub fn without_leaves(outcome: Outcome, ground: Option<Ground>) -> Result<Self, TrialFault> {
        Self { outcome, leaves: None, tolerance: None, ground }.checked()
    }

    fn checked(self) -> Result<Self, TrialFault> {
        if let Some(tolerance) = &self.tolerance {
            let span = tolerance_span(tolerance)?;
            let leaves = self.leaves.iter().flat_map(Stack::leaves);
            if let Some(leaf) =
                leaves.into_iter().find(|leaf| leaf.thickness().above_zero() <= span)
            {
                return Err(TrialFault::LeafTooThin(leaf.to_string(), tolerance.to_string()));
            }
        }
        if self.ground.is_some_and(|ground| !(1..=MOST_GROUND).contains(&ground.count)) {
            return Err(TrialFault::Count);
        }
        match (self.outcome, &self.leaves) {
            (outcome, Some(_)) if !outcome.takes_leaves() => {
                Err(TrialFault::LeafNotInPlay(outcome))
            }
            (outcome, None) if outcome.takes_leaves() => Err(TrialFault::LeafMissing),
            (Outcome::FreeNoLeaf, Some(stack)) if stack.leaves().len() > 1 => {
                Err(TrialFault::NotOneLeaf)
            }
            _ => Ok(self),
        }
    }

    /// What was seen.
    #[must_use]
    pub fn outcome(&self) -> Outcome {
        self.outcome
    }

    /// With which leaves; none where none was in play.
    #[must_use]
    pub fn leaves(&self) -> Option<&Stack> {
        self.leaves.as_ref()
    }

    /// What was ground off since the trial before.
    #[must_use]
    pub fn ground(&self) -> Option<Ground> {
        self.ground
    }

    /// What each of its leaves may be off.
    pub(super) fn tolerance(&self) -> Span {
        self.tolerance
            .as_ref()
            .map_or(Span::whole(0, Unit::Millimetre), |tolerance| tolerance.amount().above_zero())
    }

    /// The least gap that can have shown this; inclusive.
    #[must_use]
    pub fn least_gap(&self) -> Option<Amount> {
        match (self.outcome, &self.leaves) {
            (Outcome::Goes, Some(stack)) => Some(stack.thickness().less(self.doubt(stack))),
            (Outcome::FreeNoLeaf, _) => Some(Amount::whole(0, Unit::Millimetre)),
            _ => None,
        }
    }

    /// The gap that can't have shown this any more: it was narrower.
    ///
    /// A seal that moves the corner seal, or will not enter, is longer than its place: a gap below zero.
    #[must_use]
    pub fn gap_is_under(&self) -> Option<Amount> {
        match (self.outcome, &self.leaves) {
            (Outcome::DoesNotGo | Outcome::FreeNoLeaf, Some(stack)) => {
                Some(stack.thickness().plus(self.doubt(stack)))
            }
            (Outcome::MovesCornerSeal | Outcome::WillNotEnter, _) => {
                Some(Amount::whole(0, Unit::Millimetre))
            }
            _ => None,
        }
    }

    /// Each leaf of a stack adds its own doubt.
    fn doubt(&self, stack: &Stack) -> Span {
        let count = u32::try_from(stack.leaves().len()).unwrap_or(u32::MAX);
        self.tolerance().times(count)
    }
}

impl Kept for Trial {
    fn json(&self) -> Json<'_> {
        let Self { outcome, leaves, tolerance, ground } = self;
        kept_fields!(@write outcome, leaves: left_out, tolerance: left_out, ground: left_out)
    }

    fn of_json(json: &Json<'_>) -> Result<Self, Refused> {
        let fields = json.fields()?;
        Self {
            outcome: Kept::of_json(fields.at("outcome"))?,
            leaves: Kept::of_json(fields.at("leaves"))?,
            tolerance: Kept::of_json(fields.at("tolerance"))?,
            ground: Kept::of_json(fields.at("ground"))?,
        }
        .checked()
        .map_err(|fault| Refused::because(&fault))
    }
}
