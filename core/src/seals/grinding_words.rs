//! What is said of grinding a slot's seal: what to do now, and what bounds it.

use super::{GroundBy, History, Refusal, SlotReport, SlotState, Stage, advise, removal_for};
use crate::limits::Row;
use crate::quantity::{Dimension, Unit};
use pitleaf_translated::translated;

/// What is said of grinding.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct GrindingWords {
    /// What to do now.
    pub now: String,
    /// How many it takes and how many may be taken, and what one takes off; may be empty.
    pub beside: String,
}

impl GrindingWords {
    /// Of the seal in a slot, with the grinding of every seal of the build; none where nothing was tried, or
    /// the limit is of no length.
    #[must_use]
    #[translated]
    pub fn of(
        report: &SlotReport<'_>,
        stages: &[Vec<Stage>],
        by: GroundBy,
        row: &Row,
        unit: Unit,
    ) -> Option<Self> {
        if report.trials.is_empty() || row.unit.dimension() != Dimension::Length {
            return None;
        }
        let alone = |now: String| Some(Self { now, beside: String::new() });
        let Ok(history) = &report.history else {
            return alone("No advice while two trials disagree.".to_owned());
        };
        // A gauge read later than any leaf was tried knows more than the leaves.
        match (report.measured, report.gap_state) {
            (Some(_), SlotState::Fits) => return alone(Refusal::Fits.to_string()),
            (Some(_), SlotState::TooWide) => return alone(Refusal::TooWide.to_string()),
            (Some(_), SlotState::Undecided) => {
                return alone("Measure first: it may fit as it is.".to_owned());
            }
            _ => {}
        }
        let removal = removal_for(&history.stages(), stages, by);
        Some(match advise(History::now(history), removal, &row.limit) {
            Ok(advice) => {
                let rate = removal.map(|removal| removal.words(unit)).unwrap_or_default();
                Self { now: advice.words(), beside: format!("{} {rate}", advice.bounds()) }
            }
            Err(refusal) => Self { now: refusal.to_string(), beside: String::new() },
        })
    }
}
