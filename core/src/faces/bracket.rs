//! Brackets as read off leaves and strips: checked, joined, and widened by what a leaf may be off.

use super::Refusal;
use crate::quantity::{Amount, Bounds, Span};
use crate::seals::Bracket;

/// The bracket of a gap that can't be below zero, once it makes sense.
pub(super) fn checked(bracket: Bracket, reading: usize) -> Result<Bracket, Refusal> {
    let bounds = &Bounds::GAP;
    let within = |amount: &Amount| (bounds.least()..=bounds.greatest()).contains(amount);
    if !bracket.low.iter().chain(&bracket.high).all(within) {
        return Err(Refusal::OutOfBounds { bounds, reading: Some(reading) });
    }
    if bracket == Bracket::default() {
        return Err(Refusal::Open { reading });
    }
    if bracket.is_empty() {
        return Err(Refusal::Crossed { reading });
    }
    Ok(Bracket { low: bracket.low.or(Some(bounds.least())), ..bracket })
}

/// The bracket of the greatest of several gaps; the default of none.
pub(super) fn greatest(brackets: &[Bracket]) -> Bracket {
    brackets
        .iter()
        .copied()
        .reduce(|all, one| Bracket {
            low: if one.low > all.low { one.low } else { all.low },
            // One gap without an upper end leaves the greatest without one.
            high: all.high.zip(one.high).map(|(all, one)| if one > all { one } else { all }),
        })
        .unwrap_or_default()
}

/// What is proved when each leaf may be off by `doubt` either way; a gap is never below zero.
pub(super) fn widened(bracket: Bracket, doubt: Span) -> Bracket {
    let doubt = doubt.size();
    let zero = Bounds::GAP.least();
    let less = |low: Amount| {
        let room = low.minus(zero).minus(doubt);
        if room.is_negative() { zero } else { zero.plus(room) }
    };
    Bracket { low: bracket.low.map(less), high: bracket.high.map(|high| high.plus(doubt)) }
}
