//! Grinding: what a stroke removes, how many to take now, and how many can be taken: never one more than is safe
//! in an even hand.
//!
//! A stage of s strokes took the gap from one bracket to another, so it removed no less than the gap
//! between the brackets and less than their whole span, and a stroke removed an s-th of that on average.
//! Leaves are coarse: of a single stroke a bracket says little more than that it did not take the whole
//! bracket, of ten in a row ten times as much. So on one seal the stages in a row are taken together, as a
//! *run*, and each stage goes by the run with it in that says most. What is proved comes first: a run that
//! averages a fast stage with slow ones, and so comes out under a rate that another run proves, says
//! nothing. What such a run hides, no leaf has seen: a hand that bore down now and then. So the advice
//! says that it counts on an even one.
//!
//! Hands and stones differ from seal to seal, so seals are not averaged. The seal in hand tells its own
//! rate; until it does, the others speak for it. A rate proved on any of them counts always. All of it is
//! exact: rates are compared as fractions.

use super::bracket::figure;
use super::{Answer, Bracket, GroundBy, Stage};
use crate::limits::{Edge, Limit};
use crate::quantity::{Amount, Dimension, Rounding, Span, Unit};
use pitleaf_translated::translated;
use std::fmt;

/// A rate of removal: a span in a number of strokes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Rate {
    /// Removed in all.
    pub removed: Span,
    /// In how many strokes, at least 1.
    pub strokes: u32,
}

impl Rate {
    /// Whether it is faster than another, exactly.
    #[must_use]
    pub fn is_faster_than(self, other: Self) -> bool {
        self.removed.times(other.strokes) > other.removed.times(self.strokes)
    }

    /// The faster of two.
    fn or_faster(self, other: Self) -> Self {
        if other.is_faster_than(self) { other } else { self }
    }

    /// How many whole strokes take no more than `room`; none at a rate of zero.
    fn strokes_within(self, room: Span) -> Option<i64> {
        room.times(self.strokes).times_over(self.removed)
    }

    /// How many whole strokes take no more than half of `room`; none at a rate of zero.
    fn strokes_within_half(self, room: Span) -> Option<i64> {
        room.times(self.strokes).times_over(self.removed.times(2))
    }

    /// How many strokes it takes to remove `missing` or more; none at a rate of zero.
    fn strokes_for(self, missing: Span) -> Option<i64> {
        self.strokes_within(missing.opposite()).map(|strokes| -strokes)
    }

    /// How many strokes it takes to remove more than `missing`; none at a rate of zero.
    fn strokes_past(self, missing: Span) -> Option<i64> {
        self.strokes_within(missing).map(|strokes| strokes + 1)
    }
}

/// What one stroke (second, pass) removes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Removal {
    /// How it was counted.
    pub by: GroundBy,
    /// No stage was slower; it may be zero.
    pub slowest: Rate,
    /// No stage was faster.
    pub fastest: Rate,
}

impl Removal {
    /// What holds for both: the slower of the slowest, the faster of the fastest.
    #[must_use]
    pub fn and(self, other: Self) -> Self {
        let slowest = if self.slowest.is_faster_than(other.slowest) { other } else { self }.slowest;
        Self { by: self.by, slowest, fastest: self.fastest.or_faster(other.fastest) }
    }
}

/// Stages in a row on one seal, taken together.
#[derive(Clone, Copy)]
struct Run {
    /// Its stages, by their places in the list; the last one included.
    stages: (usize, usize),
    /// No slower than this.
    least: Rate,
    /// No faster than this; none where an end is open.
    most: Option<Rate>,
}

/// Every run of one seal's stages, all counted in one way.
fn runs(stages: &[Stage], by: GroundBy) -> Vec<Run> {
    let mut runs = Vec::new();
    for (first, start) in stages.iter().enumerate() {
        let mut strokes = 0_u32;
        for (last, end) in stages.iter().enumerate().skip(first) {
            if end.ground.by != by {
                break;
            }
            strokes = strokes.saturating_add(end.ground.count);
            if strokes == 0 {
                continue;
            }
            let rate = |removed| Rate { removed, strokes };
            let least = match (start.before.high, end.after.low) {
                (Some(high), Some(low)) if low > high => low.minus(high),
                _ => Span::whole(0, Unit::Millimetre),
            };
            let most = start.before.low.zip(end.after.high).map(|(low, high)| high.minus(low));
            runs.push(Run { stages: (first, last), least: rate(least), most: most.map(rate) });
        }
    }
    runs
}

/// The rates that one seal's stages can have had, in one way of counting.
///
/// None where no run bounds the fastest: a gap bracketed at its lower end before, at its upper end after.
#[must_use]
pub fn removal(stages: &[Stage], by: GroundBy) -> Option<Removal> {
    let runs = runs(stages, by);
    let proved = runs.iter().map(|run| run.least).reduce(Rate::or_faster)?;
    // A run of one stage says how slow that stage was; a longer one only how slow they were together.
    let alone = runs.iter().filter(|run| run.stages.0 == run.stages.1).map(|run| run.least);
    let slowest = alone.reduce(|one, other| if one.is_faster_than(other) { other } else { one })?;
    let closest = |stage: usize| {
        runs.iter()
            .filter(|run| run.stages.0 <= stage && stage <= run.stages.1)
            .filter_map(|run| run.most)
            .filter(|most| most.is_faster_than(proved))
            .reduce(|one, other| if one.is_faster_than(other) { other } else { one })
    };
    let bound = (0..stages.len()).filter_map(closest).reduce(Rate::or_faster);
    // A stage with an open end can't say how fast it was, only how fast at least.
    let is_bounded = runs.iter().any(|run| run.most.is_some());
    is_bounded.then(|| Removal {
        by,
        slowest,
        fastest: bound.map_or(proved, |bound| bound.or_faster(proved)),
    })
}

/// The rates to go by for one seal: its own where it tells one, else those of all the seals ground so far;
/// and never less than any of them proves.
#[must_use]
pub fn removal_for(own: &[Stage], seals: &[Vec<Stage>], by: GroundBy) -> Option<Removal> {
    let all = || seals.iter().filter_map(|seal| removal(seal, by));
    let known = removal(own, by).or_else(|| all().reduce(Removal::and))?;
    let proved = seals.iter().flat_map(|seal| runs(seal, by)).map(|run| run.least);
    Some(Removal { fastest: proved.fold(known.fastest, Rate::or_faster), ..known })
}

/// How many strokes; the ends are those of what is known.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Strokes {
    /// No fewer.
    pub fewest: u64,
    /// No more; none where the slowest rate is zero, so that nothing bounds it.
    pub most: Option<u64>,
}

/// What can be ground now and in all.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Advice {
    /// How it is counted.
    pub by: GroundBy,
    /// To be taken now: at the fastest rate the gap comes to the middle of its limit or stays under it. Where not
    /// even one does, a single one that is safe; none where the gap may fit as it is.
    pub now: u64,
    /// Safe: even at the fastest rate the gap stays inside the upper limit.
    pub safe: u64,
    /// Until the gap first meets the lower limit.
    pub until_it_fits: Strokes,
    /// Until one more would take the gap over the upper limit.
    pub left_in_all: Strokes,
}

/// Why no number of strokes is advised.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Refusal {
    /// It fits already.
    Fits,
    /// It is too wide already.
    TooWide,
    /// The limit has no upper edge to stay inside of.
    NoUpperLimit,
    /// Nothing was refused yet, so the gap may be anything.
    GapUnknown,
    /// Too tight, and the rate is not known.
    RateUnknown,
    /// It may fit as it is, and the rate is not known.
    MayFit,
    /// The gap may be over the upper limit now, for all that is known.
    MayBeOver,
    /// Not one stroke is safe at the fastest rate.
    NotOne,
}

impl fmt::Display for Refusal {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Fits => "It fits: grind no more.",
            Self::TooWide => {
                "Too wide already, and a seal can’t be made longer. Take a fresh seal for this slot."
            }
            Self::NoUpperLimit => {
                "No advice: this limit has no upper edge to stay inside of. Give it one on the sheet."
            }
            Self::GapUnknown => {
                "Measure first: nothing was refused, so the gap may be any width. Try a thicker leaf."
            }
            Self::RateUnknown => {
                "Take one or two, then measure. What one takes off is not known yet: count them, try the leaves before and after, and it is worked out."
            }
            Self::MayFit => {
                "Measure first: it may fit as it is. What one takes off is not known yet."
            }
            Self::MayBeOver => {
                "Measure first: the gap may be over the upper limit as it is."
            }
            Self::NotOne => {
                "Measure closer first: at your fastest so far, even one could make it too wide."
            }
        })
    }
}

impl std::error::Error for Refusal {}

/// How much can be ground now, and how much is left in all.
///
/// # Errors
/// A [`Refusal`] with its sentence, where what is known does not carry an answer.
pub fn advise(now: Bracket, removal: Option<Removal>, limit: &Limit) -> Result<Advice, Refusal> {
    let answer = now.against(limit).answer();
    match answer {
        Answer::Meets => return Err(Refusal::Fits),
        Answer::TooWide => return Err(Refusal::TooWide),
        Answer::TooTight | Answer::CannotSay => {}
    }
    let may_fit = answer == Answer::CannotSay;
    // An edge of another dimension is no edge for a gap.
    let edge = |edge: &Option<Edge>| {
        edge.as_ref().map(Edge::amount).filter(|edge| edge.dimension() == Dimension::Length)
    };
    let upper = edge(&limit.upper).ok_or(Refusal::NoUpperLimit)?;
    let high = now.high.ok_or(Refusal::GapUnknown)?;
    if high > upper {
        return Err(Refusal::MayBeOver);
    }
    let removal = removal.ok_or(if may_fit { Refusal::MayFit } else { Refusal::RateUnknown })?;
    let safe = count(removal.fastest.strokes_within(upper.minus(high))).unwrap_or(0);
    if safe == 0 {
        return Err(Refusal::NotOne);
    }
    let wanted = edge(&limit.lower).unwrap_or(Amount::whole(0, Unit::Millimetre));
    // Up to the middle, doubled so that it stays exact: from `high` half the way from edge to edge is left, and
    // what lies below the lower edge.
    let twice = upper.minus(high).plus(wanted.minus(high));
    let aimed = count(removal.fastest.strokes_within_half(twice)).unwrap_or(0);
    let to_take = if may_fit { 0 } else { aimed.clamp(1, safe) };
    // The gap is at least `low` and under `high`; a stroke takes more than the slowest rate and less than the fastest.
    let slowest = |strokes: fn(Rate, Span) -> Option<i64>, edge: Amount| {
        count(now.low.and_then(|low| strokes(removal.slowest, edge.minus(low))))
    };
    Ok(Advice {
        by: removal.by,
        now: to_take,
        safe,
        until_it_fits: Strokes {
            fewest: count(removal.fastest.strokes_past(wanted.minus(high))).unwrap_or(0),
            most: slowest(Rate::strokes_for, wanted),
        },
        left_in_all: Strokes {
            fewest: safe,
            most: slowest(|rate, room| rate.strokes_for(room).map(|n| n - 1), upper),
        },
    })
}

/// A count from a whole number; below zero means none are needed.
fn count(strokes: Option<i64>) -> Option<u64> {
    strokes.map(|strokes| u64::try_from(strokes).unwrap_or(0))
}

impl Advice {
    /// What to do now.
    #[must_use]
    #[translated]
    pub fn words(&self) -> String {
        match self.now {
            0 => "Measure first: it may fit as it is.".to_owned(),
            now => format!("Take {now} {}, then measure.", self.by.words(now)),
        }
    }

    /// What bounds it: how many it takes, and how many may be taken at all.
    #[must_use]
    #[translated]
    pub fn bounds(&self) -> String {
        let Strokes { fewest, most } = self.until_it_fits;
        let to_fit = match most {
            _ if self.now == 0 => String::new(),
            Some(most) if most == fewest => format!("To fit it takes {most}. "),
            Some(most) => format!("To fit it takes {fewest} to {most}. "),
            None => format!("To fit it takes at least {fewest}. "),
        };
        format!("{to_fit}At your fastest so far, more than {} could make it too wide.", self.safe)
    }
}

impl Removal {
    /// What one takes off, rounded outward: "A stroke takes off 0.001 mm to 0.004 mm."
    #[must_use]
    #[translated]
    pub fn words(&self, unit: Unit) -> String {
        let each = |rate: Rate, rounding: Rounding| {
            let zero = Amount::whole(0, Unit::Millimetre);
            let value = rate.removed.value(Unit::Millimetre) / f64::from(rate.strokes);
            Amount::nearest(value, Unit::Millimetre).map_or_else(
                || figure(zero, unit, rounding),
                |amount| figure(amount, unit, rounding),
            )
        };
        format!(
            "One {} takes off {} to {}.",
            self.by.words(1),
            each(self.slowest, Rounding::Down),
            each(self.fastest, Rounding::Up)
        )
    }
}
