//! Straightedge and leaf: a bracket of a face's hollow along the lines tried, and the leaf to try next.
//!
//! A straightedge bridges two high spots, and a leaf tells only whether it goes under. Along a line the
//! gap is no more than the flatness of the whole face; between the lines the face is not seen. So the
//! result is a bracket for the lines tried, and never the flatness as a number.

use super::{Bracket, Refusal};
use crate::quantity::Amount;
use std::cmp::Ordering;

/// One line across a face: the thickest leaf that goes under, the thinnest that does not.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Line {
    /// The thickest leaf that goes under; none where none does.
    pub goes: Option<Amount>,
    /// The thinnest leaf that does not; none where all do.
    pub stops: Option<Amount>,
}

/// What the lines over a face show.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Hollow {
    /// Each line's bracket, in the order given.
    pub lines: Vec<Bracket>,
    /// The deepest hollow under any line.
    pub deepest: Bracket,
    /// The first line that the deepest hollow is known from.
    pub worst: usize,
}

/// Joins the lines tried over a face.
///
/// # Errors
/// [`Refusal::TooFew`] without a line, [`Refusal::NoLeaf`], [`Refusal::Crossed`] and [`Refusal::OutOfBounds`] (leaves within [`crate::quantity::Bounds::GAP`]).
pub fn hollow(lines: &[Line]) -> Result<Hollow, Refusal> {
    let lines: Vec<Bracket> = lines
        .iter()
        .enumerate()
        .map(|(place, line)| Bracket::new(line.goes, line.stops, place))
        .collect::<Result<_, _>>()?;
    let none = Refusal::TooFew { found: "a hollow", given: 0, needed: 1 };
    let deepest = Bracket::greatest(&lines).ok_or(none)?;
    let worst = lines.iter().position(|line| line.at_least() == deepest.at_least()).unwrap_or(0);
    Ok(Hollow { lines, deepest, worst })
}

/// The leaf that tells most next: within the bracket, the one at an upper limit if it is in the set, else
/// the thickest under it, else the thinnest over it; none where no leaf lies inside the bracket.
#[must_use]
pub fn next_leaf(bracket: &Bracket, limit: Amount, leaves: &[Amount]) -> Option<Amount> {
    let inside = |leaf: &&Amount| {
        leaf.order(bracket.at_least()) == Some(Ordering::Greater)
            && bracket.at_most().is_none_or(|most| leaf.order(most) == Some(Ordering::Less))
    };
    let mut inside: Vec<Amount> = leaves.iter().filter(inside).copied().collect();
    inside.sort_by(|one, other| one.order(*other).unwrap_or(Ordering::Equal));
    let under = inside.iter().rfind(|leaf| leaf.order(limit).is_some_and(Ordering::is_le));
    under.or(inside.first()).copied()
}
