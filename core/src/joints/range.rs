//! A quantity known only to lie between two values.

/// The least and the greatest a quantity may be.
///
/// Shape: an interval, both ends inclusive; equal ends where the quantity is known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Range<Q> {
    least: Q,
    greatest: Q,
}

impl<Q: Copy + PartialOrd> Range<Q> {
    /// From `least` to `greatest`; none where they stand the wrong way round, or one is not a number.
    #[must_use]
    pub fn new(least: Q, greatest: Q) -> Option<Self> {
        (least <= greatest).then_some(Self { least, greatest })
    }

    /// A quantity that is known.
    #[must_use]
    pub fn exactly(known: Q) -> Self {
        Self { least: known, greatest: known }
    }

    /// The least it may be.
    #[must_use]
    pub fn least(self) -> Q {
        self.least
    }

    /// The greatest it may be.
    #[must_use]
    pub fn greatest(self) -> Q {
        self.greatest
    }

    /// The range of `of` over this one, where `of` only ever rises or only ever falls.
    #[must_use]
    pub fn map<P: Copy + PartialOrd>(self, of: impl Fn(Q) -> P) -> Range<P> {
        Range::spanning([of(self.least), of(self.greatest)])
    }

    /// The range of `of` over this one and another, where `of` only rises or only falls in each.
    #[must_use]
    pub fn with<R: Copy + PartialOrd, P: Copy + PartialOrd>(
        self,
        other: Range<R>,
        of: impl Fn(Q, R) -> P,
    ) -> Range<P> {
        let (low, high) = (other.least, other.greatest);
        Range::spanning([
            of(self.least, low),
            of(self.least, high),
            of(self.greatest, low),
            of(self.greatest, high),
        ])
    }

    /// This range made wide enough to hold one more value.
    #[must_use]
    pub fn reaching(self, value: Q) -> Self {
        Self::spanning([self.least, self.greatest, value])
    }

    /// The sum of two ranges, end by end.
    #[must_use]
    pub fn plus(self, other: Self) -> Self
    where
        Q: std::ops::Add<Output = Q>,
    {
        Self { least: self.least + other.least, greatest: self.greatest + other.greatest }
    }

    fn spanning<const N: usize>(values: [Q; N]) -> Self {
        values.into_iter().fold(Self::exactly(values[0]), |range, value| Self {
            least: if value < range.least { value } else { range.least },
            greatest: if value > range.greatest { value } else { range.greatest },
        })
    }
}

#[cfg(test)]
mod tests {
    use super::Range;

    #[test]
    fn the_wrong_way_round_is_no_range() {
        assert_eq!(Range::new(2.0, 1.0), None, "least above greatest");
        assert_eq!(Range::new(f64::NAN, 1.0), None, "not a number");
        assert!(Range::new(1.0, 1.0).is_some(), "a known value is a range");
    }

    #[test]
    fn a_falling_function_still_gives_least_first() {
        let range = Range::new(2.0, 4.0).expect("in order");
        assert_eq!(range.map(|x| 1.0 / x), Range::new(0.25, 0.5).expect("in order"), "1/x");
        let other = Range::new(-1.0, 3.0).expect("in order");
        let product = range.with(other, |a, b| a * b);
        assert_eq!((product.least(), product.greatest()), (-4.0, 12.0), "corners of a product");
    }
}
