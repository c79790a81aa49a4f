//! End play of the eccentric shaft: which spacer to fit, what it will give, and whether it did.
//!
//! The spacer between the thrust bearings sets the end play one for one. Common practice, no source: a
//! thicker spacer gives more; where an engine is built the other way, [`Sense`] says so.

use super::Refusal;
use super::input::{UNCERTAINTY, millimetres, mm, of_mm, taken};
use super::uncertainty::{Doubt, Measured};
use crate::limits::{Edge, Limit, Verdict};
use crate::quantity::{Amount, Bounds, Rounding, Span, Unit};
use pitleaf_translated::{tr, translated};
use std::fmt;
use uom::si::f64::Length;

const END_PLAY: Bounds = millimetres(tr!("The end play"), 0, 25);
const FITTED: Bounds = millimetres(tr!("The spacer fitted"), 0, 1_000);

/// What a thicker spacer does to the end play.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Sense {
    /// It gives more.
    #[default]
    ThickerGivesMore,
    /// It gives less.
    ThickerGivesLess,
}

/// A spacer at hand.
#[derive(Clone, Debug, PartialEq)]
pub struct Spacer {
    /// Its mark.
    pub mark: String,
    /// Its thickness.
    pub thickness: Measured,
}

/// A spacer with what it would give.
#[derive(Clone, Debug, PartialEq)]
pub struct Choice {
    /// Which of the spacers at hand, from 0.
    pub spacer: usize,
    /// The end play it would give.
    pub predicted: Measured,
    /// How that stands against the limit.
    pub verdict: Verdict,
}

/// End play with the spacer that is in, from repeated readings.
///
/// # Errors
/// [`Refusal::TooFew`] without a reading; [`Refusal::OutOfBounds`] (readings within [`Bounds::GAP`]).
pub fn end_play(readings: &[Length], doubt: &Doubt) -> Result<Measured, Refusal> {
    Measured::repeated(readings, doubt, &Bounds::GAP)
}

/// The spacers at hand, best first: by the chance that the true end play will meet the limit, then by the
/// nearness to its middle.
///
/// `fitted` is the spacer that gave `play`. The one that is in may be among those at hand.
///
/// # Errors
/// [`Refusal::TooFew`] without a spacer; [`Refusal::OutOfBounds`] (end play 0 to 25 mm, the spacer fitted
/// 0 to 1,000 mm, those at hand, counted as readings, within [`Bounds::SIZE`]).
///
/// # Panics
/// When the limit is no length's: the caller has mixed up two rows.
#[translated]
pub fn choose(
    play: &Measured,
    fitted: &Measured,
    at_hand: &[Spacer],
    sense: Sense,
    limit: &Limit,
) -> Result<Vec<Choice>, Refusal> {
    let play_now = exact(play, &END_PLAY, None)?;
    let thickness_now = exact(fitted, &FITTED, None)?;
    if at_hand.is_empty() {
        return Err(Refusal::TooFew { found: "a choice of spacer", given: 0, needed: 1 });
    }
    let mut choices = Vec::with_capacity(at_hand.len());
    for (spacer, piece) in at_hand.iter().enumerate() {
        let thickness = exact(&piece.thickness, &Bounds::SIZE, Some(spacer))?;
        let change = match sense {
            Sense::ThickerGivesMore => thickness.minus(thickness_now),
            Sense::ThickerGivesLess => thickness_now.minus(thickness),
        };
        let value = play_now.plus(change).length().unwrap_or(play.value);
        let uncertainty = play.minus(&piece.thickness.minus(fitted)).uncertainty;
        let predicted = Measured { value, uncertainty };
        if let Some(verdict) = predicted.against(limit) {
            choices.push(Choice { spacer, predicted, verdict });
        }
    }
    let middle = middle(limit);
    let off =
        |choice: &Choice| middle.map_or(0.0, |middle| (mm(choice.predicted.value) - middle).abs());
    choices.sort_by(|one, other| {
        let chance = |choice: &Choice| (choice.verdict.conformity * 1e6).round();
        chance(other).total_cmp(&chance(one)).then(off(one).total_cmp(&off(other)))
    });
    Ok(choices)
}

/// The thickness that would bring the end play to the middle of its limit: what to order or grind.
///
/// None where the limit has not both edges, or the thickness would be out of bounds.
#[must_use]
pub fn ideal_thickness(
    play: &Measured,
    fitted: &Measured,
    sense: Sense,
    limit: &Limit,
) -> Option<Length> {
    let more = middle(limit)? - mm(play.value);
    let change = match sense {
        Sense::ThickerGivesMore => more,
        Sense::ThickerGivesLess => -more,
    };
    let wanted = of_mm(mm(fitted.value) + change);
    taken(wanted, &Bounds::SIZE, None).is_ok().then_some(wanted)
}

/// How the end play measured after fitting compares with the one predicted.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Closing {
    /// The two differ by no more than their doubts explain.
    Agrees {
        /// Measured less predicted.
        difference: Length,
        /// What the doubts explain, either way (95 of 100 cases).
        explained: Length,
    },
    /// They differ by more: something is not as it was thought to be.
    Mismatch {
        /// Measured less predicted.
        difference: Length,
        /// What the doubts explain, either way.
        explained: Length,
    },
}

/// Closes the loop: the end play measured with the chosen spacer in, against the prediction.
///
/// The rule is that of normalized errors (ISO/IEC 17043): |difference| against twice the joint uncertainty.
#[must_use]
pub fn close(predicted: &Measured, measured: &Measured) -> Closing {
    let apart = measured.minus(predicted);
    let (difference, explained) = (apart.value, apart.expanded());
    if mm(difference).abs() <= mm(explained) {
        Closing::Agrees { difference, explained }
    } else {
        Closing::Mismatch { difference, explained }
    }
}

impl fmt::Display for Closing {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (Self::Agrees { difference, explained } | Self::Mismatch { difference, explained }) =
            *self;
        let show = |length: Length| {
            Span::nearest(mm(length).abs(), Unit::Millimetre)
                .map(|span| span.show(Unit::Millimetre, 3, Rounding::Nearest))
                .unwrap_or_default()
        };
        let (by, explained) = (show(difference), show(explained));
        let way = if mm(difference) < 0.0 { "less" } else { "more" };
        match self {
            Self::Agrees { .. } => {
                write!(f, "As predicted: {by} mm {way}, and the gauges explain {explained} mm.")
            }
            Self::Mismatch { .. } => write!(
                f,
                "{by} mm {way} than predicted, and the gauges explain only {explained} mm. Before going on, check that the spacer fitted is the one chosen, that thrust bearings and washers sit flat and clean, and that the bolt is at its torque."
            ),
        }
    }
}

fn exact(
    measured: &Measured,
    bounds: &'static Bounds,
    reading: Option<usize>,
) -> Result<Amount, Refusal> {
    taken(measured.value, bounds, reading)?;
    taken(measured.uncertainty, &UNCERTAINTY, reading)?;
    measured.amount().ok_or(Refusal::OutOfBounds { bounds, reading })
}

/// The middle of a limit with two edges, in millimetres.
fn middle(limit: &Limit) -> Option<f64> {
    let edge = |edge: &Edge| edge.amount().value(Unit::Millimetre);
    Some(f64::midpoint(edge(limit.lower.as_ref()?), edge(limit.upper.as_ref()?)))
}
