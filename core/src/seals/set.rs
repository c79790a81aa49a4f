//! A set measured in one go: its spread and its worst piece, and sets matched over the rotors.

use super::Place;
use crate::limits::{Call, Gauge, Limit, Verdict, decide};
use crate::quantity::{Amount, Reading, Span};
use pitleaf_translated::translated;
use std::fmt;

/// A set checked against a limit.
#[derive(Clone, Debug, PartialEq)]
pub struct SetCheck {
    /// The verdict on each piece, in the order given.
    pub verdicts: Vec<(Place, Verdict)>,
    /// The piece nearest to an edge or farthest past one, by its place in the list.
    pub worst: usize,
    /// Greatest less least.
    pub spread: Span,
}

/// What is wrong with a set.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SetFault {
    /// No piece at all.
    Nothing,
    /// One piece was measured in another kind of unit.
    Mixed,
    /// The pieces do not share out over the rotors.
    Uneven {
        /// How many there are.
        pieces: usize,
        /// Over how many rotors.
        rotors: u8,
    },
    /// More pieces than every way of sharing out can be tried for.
    TooMany,
}

/// The most pieces matched by weight: 12, the apex seals of four rotors.
const MOST_WEIGHED: usize = 12;

impl fmt::Display for SetFault {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Nothing => f.write_str("Nothing measured yet. Type at least one reading."),
            Self::Mixed => {
                f.write_str("One reading measures something else than the limit. Check its unit.")
            }
            Self::Uneven { pieces, rotors } => write!(
                f,
                "{pieces} pieces do not share out evenly over {rotors} rotors. Add the missing ones, or leave some out."
            ),
            Self::TooMany => write!(
                f,
                "At most {MOST_WEIGHED} pieces are matched by weight at once. Match each kind by itself."
            ),
        }
    }
}

impl std::error::Error for SetFault {}

impl SetCheck {
    /// Checks each piece of a set measured with one gauge.
    ///
    /// # Errors
    /// [`SetFault::Nothing`], [`SetFault::Mixed`].
    pub fn of(
        readings: &[(Place, Reading)],
        limit: &Limit,
        gauge: &Gauge,
    ) -> Result<Self, SetFault> {
        let (_, first) = readings.first().ok_or(SetFault::Nothing)?;
        let dimension = first.amount().dimension();
        let edges = [&limit.lower, &limit.upper].into_iter().flatten().map(|edge| edge.amount());
        let amounts = readings.iter().map(|(_, reading)| reading.amount());
        if amounts.chain(edges).any(|amount| amount.dimension() != dimension) {
            return Err(SetFault::Mixed);
        }
        let verdicts: Vec<(Place, Verdict)> = readings
            .iter()
            .map(|(place, reading)| (*place, decide(limit, reading, gauge)))
            .collect();
        let margin = |verdict: &Verdict| {
            [verdict.above_lower, verdict.below_upper]
                .into_iter()
                .flatten()
                .map(Span::as_whole)
                .min()
                .unwrap_or(i128::MAX)
        };
        let worst = (0..verdicts.len()).min_by_key(|&at| margin(&verdicts[at].1)).unwrap_or(0);
        let amounts: Vec<Amount> = readings.iter().map(|(_, reading)| reading.amount()).collect();
        Ok(Self { verdicts, worst, spread: spread(&amounts) })
    }

    /// How many are proved inside, proved outside, and too close to call.
    #[must_use]
    pub fn counts(&self) -> (usize, usize, usize) {
        let count = |of: fn(Call) -> bool| {
            self.verdicts.iter().filter(|(_, verdict)| of(verdict.call)).count()
        };
        (
            count(|call| call == Call::Meets),
            count(|call| matches!(call, Call::DoesNotMeet(_))),
            count(|call| call == Call::TooClose),
        )
    }
}

/// Greatest less least of amounts of one dimension, of which there is at least one.
fn spread(amounts: &[Amount]) -> Span {
    let first = amounts[0];
    let of = |wins: fn(&Amount, &Amount) -> bool| {
        amounts.iter().copied().fold(first, |best, one| if wins(&one, &best) { one } else { best })
    };
    of(|a, b| a > b).minus(of(|a, b| a < b))
}

/// Pieces shared out over rotors.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Matched {
    /// For each rotor from the front, the pieces by their places in the list.
    pub rotors: Vec<Vec<usize>>,
    /// By weight: heaviest set less lightest. By height: the greatest spread within one set.
    pub spread: Span,
}

/// Shares pieces out so that the sets weigh as nearly the same as can be. Every way is tried.
///
/// # Errors
/// A [`SetFault`] with its sentence.
pub fn match_by_weight(weights: &[Amount], rotors: u8) -> Result<Matched, SetFault> {
    let each = share(weights, rotors)?;
    if weights.len() > MOST_WEIGHED {
        return Err(SetFault::TooMany);
    }
    let whole: Vec<i128> = weights.iter().map(|weight| weight.above_zero().as_whole()).collect();
    let rotors = usize::from(rotors);
    let mut search = Search { weights: &whole, each, best: None };
    search.put(0, &mut vec![Vec::new(); rotors]);
    // There is always a way: the pieces share out evenly.
    let sets = search.best.map(|(_, sets)| sets).unwrap_or_default();
    let zero = weights[0].less(weights[0].above_zero());
    let sums: Vec<Amount> = sets
        .iter()
        .map(|set| set.iter().fold(zero, |sum, &piece| sum.plus(weights[piece].above_zero())))
        .collect();
    Ok(Matched { rotors: sets, spread: spread(&sums) })
}

/// Shares pieces out so that within each set heights differ as little as can be.
///
/// Sorted and cut in turn: any other sharing has a set that spans as much or more.
///
/// # Errors
/// A [`SetFault`] with its sentence.
pub fn match_by_height(heights: &[Amount], rotors: u8) -> Result<Matched, SetFault> {
    let each = share(heights, rotors)?;
    let mut order: Vec<usize> = (0..heights.len()).collect();
    order.sort_by_key(|&piece| heights[piece].above_zero().as_whole());
    let sets: Vec<Vec<usize>> = order.chunks(each).map(<[usize]>::to_vec).collect();
    let spreads = sets.iter().map(|set| {
        let of_set: Vec<Amount> = set.iter().map(|&piece| heights[piece]).collect();
        spread(&of_set)
    });
    let none = heights[0].minus(heights[0]);
    let widest = spreads.fold(none, |most, one| if one > most { one } else { most });
    Ok(Matched { rotors: sets, spread: widest })
}

/// How many pieces each rotor gets.
fn share(pieces: &[Amount], rotors: u8) -> Result<usize, SetFault> {
    let first = pieces.first().ok_or(SetFault::Nothing)?;
    if pieces.iter().any(|piece| piece.dimension() != first.dimension()) {
        return Err(SetFault::Mixed);
    }
    let count = usize::from(rotors);
    if count == 0 || !pieces.len().is_multiple_of(count) {
        return Err(SetFault::Uneven { pieces: pieces.len(), rotors });
    }
    Ok(pieces.len() / count)
}

/// A search through every way of sharing out, sets that differ in name alone taken once.
struct Search<'a> {
    weights: &'a [i128],
    each: usize,
    best: Option<(i128, Vec<Vec<usize>>)>,
}

impl Search<'_> {
    fn put(&mut self, piece: usize, sets: &mut Vec<Vec<usize>>) {
        if piece == self.weights.len() {
            let sums: Vec<i128> =
                sets.iter().map(|set| set.iter().map(|&at| self.weights[at]).sum()).collect();
            let spread = sums.iter().max().unwrap_or(&0) - sums.iter().min().unwrap_or(&0);
            if self.best.as_ref().is_none_or(|(known, _)| spread < *known) {
                self.best = Some((spread, sets.clone()));
            }
            return;
        }
        for at in 0..sets.len() {
            if sets[at].len() < self.each {
                sets[at].push(piece);
                self.put(piece + 1, sets);
                sets[at].pop();
            }
            if sets[at].is_empty() {
                break;
            }
        }
    }
}
