//! Straightedge and leaf: a bracket of a face's hollow along the lines tried, and the leaf to try next.
//!
//! A straightedge bridges two high spots, and a leaf tells only whether it goes under. Along a line the
//! gap is no more than the flatness of the whole face; between the lines the face is not seen. So the
//! result is a bracket for the lines tried, and never the flatness as a number.

use super::Refusal;
use super::bracket::{checked, greatest, widened};
use crate::quantity::{Amount, Span};
use crate::seals::Bracket;
use pitleaf_translated::translated;
use std::cmp::Ordering;

/// What the lines over a face show.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Hollow {
    /// Each line's bracket, in the order given.
    pub lines: Vec<Bracket>,
    /// The deepest hollow under any line, as the leaves are marked.
    pub deepest: Bracket,
    /// The same, as far as it is proved: to stand against a limit.
    pub proved: Bracket,
    /// The first line that the deepest hollow is known from.
    pub worst: usize,
}

/// Joins the lines tried over a face: for each, the thickest leaf that goes under (`low`) and the thinnest
/// that does not (`high`).
///
/// `doubt` is how far a leaf and the straightedge together may be off, either way.
///
/// # Errors
/// [`Refusal::TooFew`] without a line, [`Refusal::Open`], [`Refusal::Crossed`] and
/// [`Refusal::OutOfBounds`] (leaves within [`crate::quantity::Bounds::GAP`]).
///
/// # Panics
/// When `doubt` is no length.
#[translated]
pub fn hollow(lines: &[Bracket], doubt: Span) -> Result<Hollow, Refusal> {
    if lines.is_empty() {
        return Err(Refusal::TooFew { found: "a hollow", given: 0, needed: 1 });
    }
    let checked = lines.iter().enumerate().map(|(place, &line)| checked(line, place));
    let lines: Vec<Bracket> = checked.collect::<Result<_, _>>()?;
    let deepest = greatest(&lines);
    let worst = lines.iter().position(|line| line.low == deepest.low).unwrap_or(0);
    Ok(Hollow { deepest, proved: widened(deepest, doubt), worst, lines })
}

/// The leaf that tells most next: of those inside the bracket as read, the thickest up to an upper limit,
/// else the thinnest over it; none where no leaf lies inside.
#[must_use]
pub fn next_leaf(deepest: Bracket, limit: Amount, leaves: &[Amount]) -> Option<Amount> {
    let inside = |&leaf: &Amount| deepest.holds(leaf) && deepest.low != Some(leaf);
    let mut inside: Vec<Amount> = leaves.iter().copied().filter(inside).collect();
    inside.sort_by(|one, other| one.order(*other).unwrap_or(Ordering::Equal));
    inside.iter().rfind(|&&leaf| leaf <= limit).or(inside.first()).copied()
}
