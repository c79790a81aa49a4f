//! The next leaf or stack to try, so that a limit is decided in the fewest tries.
//!
//! A stack marked t, each of whose leaves may be off, has a true thickness in t ± d. It *goes* where
//! the gap is no narrower, so "goes" proves gap ≥ t − d and "does not go" proves gap < t + d; the first
//! is certain to be seen where gap ≥ t + d, the second where gap < t − d.
//!
//! Two questions are open, one for each edge of the limit, and each has two answers. That makes four
//! kinds of stack that can answer something: *goes* proves the gap at or over the lower edge (kind 1) or
//! over the upper (2); *does not go* proves it under the lower edge (3) or not over the upper (4).
//! Of each kind one stack is enough: the one certain to answer for the widest range of gaps, with the
//! fewest leaves among equals. Any other stack of the kind answers only where that one does, too.
//! What remains is a game of at most four stacks against the worst case, solved exactly: a state is the
//! bracket, a try leads to one of two brackets, and the value is the greatest number of tries left.
//! Among stacks of equal value the one of fewest leaves is proposed, and among those the one with the
//! fewest tries to be expected over gaps spread evenly through the bracket.
//!
//! Work: one pass over the stacks (4 525 for 30 leaves and stacks of three), then at most a few hundred
//! states. The tests prove the number of tries against every decision tree over all stacks of small sets.

use super::{Answer, Bracket, LeafSet, MOST_LEAVES, Proof, Stack, thickest};
use crate::limits::Limit;
use crate::quantity::{Amount, Span, Unit};

/// What to do next about a gap and its limit.
#[derive(Clone, Debug, PartialEq)]
pub enum NextLeaf {
    /// The limit is decided.
    Decided(Answer),
    /// No leaf or stack of this set is certain to prove more than is known.
    SetCannotSay,
    /// Try this.
    Try(Try),
}

/// A proposed try.
#[derive(Clone, Debug, PartialEq)]
pub struct Try {
    /// The leaf, or the leaves to put together.
    pub stack: Stack,
    /// The most tries left, this one among them.
    pub most_tries: u8,
    /// The gap, if it goes.
    pub if_it_goes: Bracket,
    /// The gap, if it does not.
    pub if_not: Bracket,
}

/// A stack in numbers: which leaves, what it is marked, what it may be off.
#[derive(Clone, Copy, Debug)]
struct Candidate {
    leaves: [usize; MOST_LEAVES],
    count: usize,
    least: Amount,
    most: Amount,
}

/// The next leaf or stack that decides most about a limit, with stacks of at most `most_leaves` (1 to 3).
#[must_use]
pub fn next_leaf(bracket: Bracket, limit: &Limit, set: &LeafSet, most_leaves: usize) -> NextLeaf {
    let standing = bracket.against(limit);
    if standing.answer() != Answer::CannotSay {
        return NextLeaf::Decided(standing.answer());
    }
    let mut deciders = Deciders::default();
    each_candidate(set, most_leaves, |candidate| deciders.consider(limit, candidate));
    let deciders = deciders.list();
    let game = Game { limit, deciders: &deciders };
    let Some((value, candidate)) = game.best(bracket) else { return NextLeaf::SetCannotSay };
    let leaves =
        candidate.leaves[..candidate.count].iter().map(|&place| set.leaves()[place].clone());
    match Stack::of(leaves.collect()) {
        Ok(stack) => NextLeaf::Try(Try {
            stack,
            most_tries: value.worst,
            if_it_goes: goes(bracket, candidate),
            if_not: refuses(bracket, candidate),
        }),
        // Unreachable: a candidate has one to three different leaves and is no thicker than a stack may be.
        Err(_) => NextLeaf::SetCannotSay,
    }
}

/// The leaf or stack that parts a bracket most evenly: for measuring closer once the limit is decided or can't be.
///
/// None where the bracket has an open end, or no stack is certain to fall inside it.
#[must_use]
pub fn halving_leaf(bracket: Bracket, set: &LeafSet, most_leaves: usize) -> Option<Stack> {
    let (low, high) = (bracket.low?, bracket.high?);
    let mut best: Option<(Span, Candidate)> = None;
    each_candidate(set, most_leaves, |candidate| {
        if candidate.least <= low || candidate.most >= high {
            return;
        }
        // What is left in the worse case.
        let (left, right) = (candidate.most.minus(low), high.minus(candidate.least));
        let worse = if left > right { left } else { right };
        if best.is_none_or(|(known, _)| worse < known) {
            best = Some((worse, candidate));
        }
    });
    let candidate = best?.1;
    let leaves =
        candidate.leaves[..candidate.count].iter().map(|&place| set.leaves()[place].clone());
    Stack::of(leaves.collect()).ok()
}

/// Every stack of a set no thicker than may be used: single leaves first, then pairs, then threes.
fn each_candidate(set: &LeafSet, most_leaves: usize, mut take: impl FnMut(Candidate)) {
    let tolerance = set.tolerance().amount().above_zero();
    let thickness: Vec<Span> =
        set.leaves().iter().map(|leaf| leaf.thickness().above_zero()).collect();
    let zero = Amount::whole(0, Unit::Millimetre);
    let thickest = thickest().above_zero();
    let mut offer = |leaves: [usize; MOST_LEAVES], count: usize| {
        let sum = leaves[1..count]
            .iter()
            .fold(thickness[leaves[0]], |sum, &leaf| sum.plus(thickness[leaf]));
        if sum > thickest {
            return false;
        }
        let doubt = tolerance.times(u32::try_from(count).unwrap_or(u32::MAX));
        let marked = zero.plus(sum);
        take(Candidate { leaves, count, least: marked.less(doubt), most: marked.plus(doubt) });
        true
    };
    let many = thickness.len();
    for a in 0..many {
        offer([a, 0, 0], 1);
    }
    if most_leaves >= 2 {
        for a in 0..many {
            // Leaves are sorted: once a stack is too thick, so is every one after it.
            (a + 1..many).take_while(|&b| offer([a, b, 0], 2)).count();
        }
    }
    if most_leaves >= 3 {
        for a in 0..many {
            for b in a + 1..many {
                (b + 1..many).take_while(|&c| offer([a, b, c], 3)).count();
            }
        }
    }
}

/// The best stack of each kind; see the head of this file.
#[derive(Default)]
struct Deciders {
    at_least_lower: Option<Candidate>,
    over_upper: Option<Candidate>,
    under_lower: Option<Candidate>,
    at_most_upper: Option<Candidate>,
}

impl Deciders {
    fn consider(&mut self, limit: &Limit, candidate: Candidate) {
        // Certain to go from `most` up: the lower the better. Certain to be refused under `least`: the higher the better.
        let lower = |known: &Candidate| candidate.most < known.most;
        let higher = |known: &Candidate| candidate.least > known.least;
        if let Some(edge) = limit.lower.as_ref().map(crate::limits::Edge::amount) {
            put(&mut self.at_least_lower, candidate, candidate.least >= edge, lower);
            put(&mut self.under_lower, candidate, candidate.most <= edge, higher);
        }
        if let Some(edge) = limit.upper.as_ref().map(crate::limits::Edge::amount) {
            put(&mut self.over_upper, candidate, candidate.least > edge, lower);
            put(&mut self.at_most_upper, candidate, candidate.most <= edge, higher);
        }
    }

    fn list(self) -> Vec<Decider> {
        let rows = [
            (self.under_lower, true, Proof::Breaks),
            (self.at_least_lower, true, Proof::Keeps),
            (self.at_most_upper, false, Proof::Keeps),
            (self.over_upper, false, Proof::Breaks),
        ];
        rows.into_iter()
            .filter_map(|(candidate, of_lower, proves)| {
                Some(Decider { candidate: candidate?, of_lower, proves })
            })
            .collect()
    }
}

fn put(
    place: &mut Option<Candidate>,
    candidate: Candidate,
    is_of_kind: bool,
    better: impl Fn(&Candidate) -> bool,
) {
    if is_of_kind && place.as_ref().is_none_or(better) {
        *place = Some(candidate);
    }
}

/// A stack with the answer it is kept for.
struct Decider {
    candidate: Candidate,
    of_lower: bool,
    proves: Proof,
}

impl Decider {
    /// Whether some gap of the bracket is certain to get the answer, and the question is still open.
    fn is_useful(&self, bracket: Bracket, limit: &Limit) -> bool {
        let standing = bracket.against(limit);
        let (question, by_going) = if self.of_lower {
            (standing.lower, self.proves == Proof::Keeps)
        } else {
            (standing.upper, self.proves == Proof::Breaks)
        };
        let reachable = if by_going {
            bracket.high.is_none_or(|high| high > self.candidate.most)
        } else {
            bracket.low.is_none_or(|low| low < self.candidate.least)
        };
        question == Proof::Open && standing.answer() == Answer::CannotSay && reachable
    }
}

fn goes(bracket: Bracket, candidate: Candidate) -> Bracket {
    bracket.and(Bracket { low: Some(candidate.least), high: None })
}

fn refuses(bracket: Bracket, candidate: Candidate) -> Bracket {
    bracket.and(Bracket { low: None, high: Some(candidate.most) })
}

/// How many tries are left: at worst, and to be expected.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Tries {
    worst: u8,
    expected: f64,
}

struct Game<'a> {
    limit: &'a Limit,
    deciders: &'a [Decider],
}

impl Game<'_> {
    /// The best try in a bracket with its value; none where nothing can be learnt for certain.
    fn best(&self, bracket: Bracket) -> Option<(Tries, Candidate)> {
        let mut best: Option<(Tries, Candidate)> = None;
        for decider in self.deciders.iter().filter(|one| one.is_useful(bracket, self.limit)) {
            let candidate = decider.candidate;
            let value = self.value_of(bracket, candidate);
            let better = |known: Tries, other: Candidate| {
                (value.worst, candidate.count, value.expected)
                    < (known.worst, other.count, known.expected)
            };
            if best.is_none_or(|(known, other)| better(known, other)) {
                best = Some((value, candidate));
            }
        }
        best
    }

    fn value_of(&self, bracket: Bracket, candidate: Candidate) -> Tries {
        let none = Tries { worst: 0, expected: 0.0 };
        let after = |next: Bracket| {
            if next.is_empty() { none } else { self.best(next).map_or(none, |(tries, _)| tries) }
        };
        let (wide, narrow) = (after(goes(bracket, candidate)), after(refuses(bracket, candidate)));
        let chance = self.chance_of_going(bracket, candidate);
        Tries {
            worst: 1 + wide.worst.max(narrow.worst),
            expected: 1.0 + chance * wide.expected + (1.0 - chance) * narrow.expected,
        }
    }

    /// The share of the bracket's gaps a stack goes in, if they are spread evenly; for breaking ties only.
    ///
    /// An open end is taken at 0, or at twice the thickest stack in play.
    fn chance_of_going(&self, bracket: Bracket, candidate: Candidate) -> f64 {
        let value = |amount: Amount| amount.value(Unit::Millimetre);
        let middle = f64::midpoint(value(candidate.least), value(candidate.most));
        let thickest =
            self.deciders.iter().map(|one| value(one.candidate.most)).fold(middle, f64::max);
        let low = bracket.low.map_or(0.0, value);
        let high = bracket.high.map_or(2.0 * thickest, value);
        if high > low { ((high - middle) / (high - low)).clamp(0.0, 1.0) } else { 0.5 }
    }
}
