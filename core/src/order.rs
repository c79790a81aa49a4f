//! Sorting short lists in little code.

use std::cmp::Ordering;

/// Sorting by insertion: stable, and for the tens of items of a screen as quick as any. The standard
/// library's merge sort is expanded anew for every type and order, half a kilobyte each; it stays where
/// a list can be long.
pub trait InOrder<T> {
    /// As `sort_by`.
    fn order_by(&mut self, compare: impl FnMut(&T, &T) -> Ordering);

    /// As `sort_by_key`.
    fn order_by_key<K: Ord>(&mut self, mut key: impl FnMut(&T) -> K) {
        self.order_by(|one, other| key(one).cmp(&key(other)));
    }
}

impl<T> InOrder<T> for [T] {
    fn order_by(&mut self, mut compare: impl FnMut(&T, &T) -> Ordering) {
        for end in 1..self.len() {
            let mut at = end;
            while at > 0 && compare(&self[at], &self[at - 1]) == Ordering::Less {
                self.swap(at, at - 1);
                at -= 1;
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::InOrder;
    use proptest::prelude::*;

    proptest! {
        /// The first of each pair decides, the second shows whether equals kept their places.
        #[test]
        fn as_the_standard_library_does(first in proptest::collection::vec(0_u8..5, 0..40)) {
            let mut ours: Vec<(u8, usize)> = first.into_iter().zip(0..).collect();
            let mut theirs = ours.clone();
            ours.order_by_key(|pair| pair.0);
            theirs.sort_by_key(|pair| pair.0);
            prop_assert_eq!(&ours, &theirs);
            ours.order_by(|one, other| other.1.cmp(&one.1));
            theirs.sort_by_key(|pair| std::cmp::Reverse(pair.1));
            prop_assert_eq!(ours, theirs);
        }
    }
}
