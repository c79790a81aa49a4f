//! The trials of one seal in its slot, in order: the bracket at each state it was ground to.
//!
//! Grinding only widens a gap. So what went in once goes in for good, and what is refused now was
//! refused before; each state is bounded by those before and after it as well as by its own trials.

use super::{Bracket, Ground, Outcome, Trial};
use crate::letters::capital;
use crate::quantity::Span;
use pitleaf_translated::translated;
use std::fmt;

/// Grinding between two brackets.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Stage {
    /// The gap before.
    pub before: Bracket,
    /// The gap after.
    pub after: Bracket,
    /// What was ground in between.
    pub ground: Ground,
}

/// What the trials of one seal add up to.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct History {
    brackets: Vec<Bracket>,
    ground: Vec<Ground>,
}

/// Two trials that can't both be right.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Contradiction {
    /// Its place in the trials: it says the gap is at least so wide.
    pub wide: usize,
    /// Its place in the trials: it says the gap is narrower.
    pub narrow: usize,
    sentence: String,
}

impl fmt::Display for Contradiction {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.sentence)
    }
}

impl std::error::Error for Contradiction {}

impl History {
    /// The history of a seal's trials, the oldest first.
    ///
    /// # Errors
    /// The first [`Contradiction`], by the trial that brought it in.
    pub fn of(trials: &[Trial]) -> Result<Self, Contradiction> {
        for narrow in 0..trials.len() {
            if let Some(fault) = first_against(trials, narrow) {
                return Err(fault);
            }
        }
        let mut history = Self::default();
        for trial in trials {
            let seen = Bracket { low: trial.least_gap(), high: trial.gap_is_under() };
            match (history.brackets.last_mut(), trial.ground()) {
                (Some(last), None) => *last = last.and(seen),
                (Some(_), Some(ground)) => {
                    history.ground.push(ground);
                    history.brackets.push(seen);
                }
                // Grinding before the first trial says nothing: there is no gap to compare with.
                (None, _) => history.brackets.push(seen),
            }
        }
        history.carry();
        Ok(history)
    }

    /// Each state is at least as wide as the one before it.
    fn carry(&mut self) {
        let mut low = None;
        for bracket in &mut self.brackets {
            *bracket = bracket.and(Bracket { low, high: None });
            low = bracket.low;
        }
        let mut high = None;
        for bracket in self.brackets.iter_mut().rev() {
            *bracket = bracket.and(Bracket { low: None, high });
            high = bracket.high;
        }
    }

    /// The gap as it is now.
    #[must_use]
    pub fn now(&self) -> Bracket {
        self.brackets.last().copied().unwrap_or_default()
    }

    /// Each grinding with the gap before and after it.
    #[must_use]
    pub fn stages(&self) -> Vec<Stage> {
        self.brackets
            .windows(2)
            .zip(&self.ground)
            .map(|(pair, &ground)| Stage { before: pair[0], after: pair[1], ground })
            .collect()
    }
}

/// The first contradiction among trials up to `last`, with `last` as one of the two.
fn first_against(trials: &[Trial], last: usize) -> Option<Contradiction> {
    (0..last).flat_map(|first| [(first, last), (last, first)]).find_map(|(wide, narrow)| {
        let ground = clash(trials, wide, narrow)?;
        let sentence = words(&trials[wide], &trials[narrow], ground);
        Some(Contradiction { wide, narrow, sentence })
    })
}

/// Whether one trial shows a gap at least as wide as another rules out; if so, whether grinding lay between.
///
/// The narrow one must come later or in the same state: a gap that was narrow before grinding may be wide after.
fn clash(trials: &[Trial], wide: usize, narrow: usize) -> Option<bool> {
    let (early, late) = (wide.min(narrow), wide.max(narrow));
    let ground = trials[early + 1..=late].iter().any(|trial| trial.ground().is_some());
    if ground && narrow < wide {
        return None;
    }
    let (wide, narrow) = (&trials[wide], &trials[narrow]);
    let least = wide.least_gap()?;
    let under = narrow.gap_is_under()?;
    // A leaf in both stacks is the same piece of steel: its own doubt cancels out.
    let shared = shared_doubt(wide, narrow);
    (least.plus(shared) >= under.less(shared)).then_some(ground)
}

/// The doubt of the leaves that lie in both stacks.
fn shared_doubt(one: &Trial, other: &Trial) -> Span {
    let (Some(a), Some(b)) = (one.leaves(), other.leaves()) else {
        return one.tolerance().times(0);
    };
    if one.outcome() != Outcome::Goes || one.tolerance() != other.tolerance() {
        return one.tolerance().times(0);
    }
    let shared = a
        .leaves()
        .iter()
        .filter(|leaf| b.leaves().iter().any(|other| other.thickness() == leaf.thickness()))
        .count();
    one.tolerance().times(u32::try_from(shared).unwrap_or(0))
}

#[translated]
fn words(wide: &Trial, narrow: &Trial, ground: bool) -> String {
    let stack = |trial: &Trial| trial.leaves().map(ToString::to_string).unwrap_or_default();
    let one = match wide.outcome() {
        Outcome::FreeNoLeaf => "the seal was free in its slot".to_owned(),
        _ => format!("{} went", stack(wide)),
    };
    let joint = if ground { "but after grinding" } else { "but" };
    let other = match narrow.outcome() {
        Outcome::DoesNotGo => format!("{} did not", stack(narrow)),
        Outcome::FreeNoLeaf => format!("{} did not, as the thinnest leaf", stack(narrow)),
        Outcome::MovesCornerSeal => "the seal moved the corner seal".to_owned(),
        _ => "the seal would not enter its slot".to_owned(),
    };
    let why = if ground { ", for grinding only widens a gap" } else { "" };
    let sentence = format!("{one}, {joint} {other}: one of the two is wrong{why}.");
    capital(&sentence)
}
