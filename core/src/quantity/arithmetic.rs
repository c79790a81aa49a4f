//! Order and arithmetic of exact amounts and spans.

use super::{Amount, Span, Unit};
use std::cmp::Ordering;

impl PartialOrd for Amount {
    /// As [`Amount::order`]: none between different dimensions.
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        self.order(*other)
    }
}

impl PartialOrd for Span {
    /// Exact; none between different dimensions.
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        (self.dimension() == other.dimension()).then(|| self.ticks().cmp(&other.ticks()))
    }
}

impl Amount {
    /// The span from the zero of a scale that has one by nature (length, mass, kelvin) to here.
    #[must_use]
    pub fn above_zero(self) -> Span {
        Span::of_ticks(self.dimension(), self.ticks())
    }

    /// The amount a span further down the scale.
    ///
    /// # Panics
    /// When the dimensions differ.
    #[must_use]
    pub fn less(self, span: Span) -> Self {
        self.plus(span.opposite())
    }
}

impl Span {
    /// A whole number of a unit.
    #[must_use]
    pub fn whole(count: i64, unit: Unit) -> Self {
        Self::of_ticks(unit.dimension(), i128::from(count) * unit.ticks())
    }

    /// Both together.
    ///
    /// # Panics
    /// When the dimensions differ.
    #[must_use]
    pub fn plus(self, other: Self) -> Self {
        assert_eq!(self.dimension(), other.dimension(), "a sum needs one dimension");
        Self::of_ticks(self.dimension(), self.ticks() + other.ticks())
    }

    /// `self − other`.
    ///
    /// # Panics
    /// When the dimensions differ.
    #[must_use]
    pub fn minus(self, other: Self) -> Self {
        self.plus(other.opposite())
    }

    /// The same the other way.
    #[must_use]
    pub fn opposite(self) -> Self {
        Self::of_ticks(self.dimension(), -self.ticks())
    }

    /// A number of times over.
    #[must_use]
    pub fn times(self, count: u32) -> Self {
        Self::of_ticks(self.dimension(), self.ticks() * i128::from(count))
    }

    /// How many whole times `part` goes into it, rounded towards minus infinity.
    ///
    /// None where `part` is not above zero, is of another dimension, or goes in beyond counting.
    #[must_use]
    pub fn times_over(self, part: Self) -> Option<i64> {
        if part.dimension() != self.dimension() || part.ticks() <= 0 {
            return None;
        }
        i64::try_from(self.ticks().div_euclid(part.ticks())).ok()
    }

    /// A whole number that orders and adds as the span does, for exact sums of costs.
    #[must_use]
    pub fn as_whole(self) -> i128 {
        self.ticks()
    }
}
