//! A bracket: what a go and a no-go tell of a gap. Never a number.

use super::Refusal;
use crate::limits::{Call, Edge, Limit, Side};
use crate::quantity::{Amount, Bounds, Span};
use std::cmp::Ordering;

/// A gap held between two figures, exactly as they were typed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Bracket {
    at_least: Amount,
    at_most: Option<Amount>,
}

impl Bracket {
    /// The gap lets `goes` through and keeps `stops` out; either may be missing.
    ///
    /// `reading` is its place in a list, for the sentence.
    ///
    /// # Errors
    /// [`Refusal::Crossed`] when the leaf that goes is not the thinner; [`Refusal::OutOfBounds`]
    /// outside [`Bounds::GAP`]; [`Refusal::NoLeaf`] when both are missing.
    pub fn new(
        goes: Option<Amount>,
        stops: Option<Amount>,
        reading: usize,
    ) -> Result<Self, Refusal> {
        let within = |amount: &Amount| {
            amount.order(Bounds::GAP.least()).is_some_and(Ordering::is_ge)
                && amount.order(Bounds::GAP.greatest()).is_some_and(Ordering::is_le)
        };
        if !goes.iter().chain(&stops).all(within) {
            return Err(Refusal::OutOfBounds { bounds: &Bounds::GAP, reading: Some(reading) });
        }
        match (goes, stops) {
            (None, None) => Err(Refusal::NoLeaf { line: reading }),
            (Some(goes), Some(stops)) if goes.order(stops) != Some(Ordering::Less) => {
                Err(Refusal::Crossed { reading })
            }
            _ => Ok(Self { at_least: goes.unwrap_or(Bounds::GAP.least()), at_most: stops }),
        }
    }

    /// The gap is no less than this.
    #[must_use]
    pub fn at_least(&self) -> Amount {
        self.at_least
    }

    /// The gap is less than this; none where every leaf tried went in.
    #[must_use]
    pub fn at_most(&self) -> Option<Amount> {
        self.at_most
    }

    /// The gap taken over several brackets where the greatest counts.
    #[must_use]
    pub fn greatest(brackets: &[Self]) -> Option<Self> {
        let first = *brackets.first()?;
        Some(brackets.iter().fold(first, |all, one| Self {
            at_least: larger(all.at_least, one.at_least),
            at_most: all.at_most.zip(one.at_most).map(|(all, one)| larger(all, one)),
        }))
    }

    /// What the bracket proves against a limit, when each leaf or mark may be off by `doubt` either way.
    ///
    /// It proves only what holds for every gap in the bracket. A leaf that stops leaves the gap below it,
    /// so one of just the upper limit's size proves that the limit is met.
    ///
    /// # Panics
    /// When the limit is no length's: the caller has mixed up two rows.
    #[must_use]
    pub fn against(&self, limit: &Limit, doubt: Span) -> Call {
        let doubt = doubt.size();
        let reaches = |greater: Amount, lesser: Amount| !greater.minus(lesser).is_negative();
        let upper = limit.upper.as_ref().map(Edge::amount);
        let lower = limit.lower.as_ref().map(Edge::amount);
        let at_most = self.at_most.map(|stops| stops.plus(doubt));
        if upper.is_some_and(|upper| !reaches(upper.plus(doubt), self.at_least)) {
            return Call::DoesNotMeet(Side::Above);
        }
        if lower.zip(at_most).is_some_and(|(lower, most)| reaches(lower, most)) {
            return Call::DoesNotMeet(Side::Below);
        }
        let under_upper =
            upper.is_none_or(|upper| at_most.is_some_and(|most| reaches(upper, most)));
        let over_lower = lower.is_none_or(|lower| reaches(self.at_least, lower.plus(doubt)));
        if under_upper && over_lower { Call::Meets } else { Call::TooClose }
    }
}

fn larger(one: Amount, other: Amount) -> Amount {
    if one.order(other) == Some(Ordering::Less) { other } else { one }
}
