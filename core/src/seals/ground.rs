//! What was ground off between two trials: so many strokes, seconds or passes.

use super::TrialFault;
use crate::{kept_fields, kept_words};
use pitleaf_translated::translated;

/// The most strokes between two trials.
pub(super) const MOST_GROUND: u32 = 10_000;

/// How grinding is counted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum GroundBy {
    /// Strokes on a stone or file.
    Strokes,
    /// Seconds at a wheel.
    Seconds,
    /// Passes of a grinder.
    Passes,
}

kept_words!(GroundBy {
    Strokes = "strokes",
    Seconds = "seconds",
    Passes = "passes",
});

impl GroundBy {
    /// One of it, and many.
    #[must_use]
    #[translated]
    pub fn words(self, count: u64) -> &'static str {
        match (self, count) {
            (Self::Strokes, 1) => "stroke",
            (Self::Strokes, _) => "strokes",
            (Self::Seconds, 1) => "second",
            (Self::Seconds, _) => "seconds",
            (Self::Passes, 1) => "pass",
            (Self::Passes, _) => "passes",
        }
    }
}

/// What was ground off since the trial before.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Ground {
    /// How many.
    pub count: u32,
    /// Of what.
    pub by: GroundBy,
}

kept_fields!(Ground { count, by });

impl GroundBy {
    /// Every way of counting.
    pub const ALL: [Self; 3] = [Self::Strokes, Self::Seconds, Self::Passes];
}

impl Ground {
    /// Reads a typed count; empty or 0 means that nothing was ground.
    ///
    /// # Errors
    /// [`TrialFault::Count`].
    pub fn read(text: &str, by: GroundBy) -> Result<Option<Self>, TrialFault> {
        let text = text.trim();
        if text.is_empty() {
            return Ok(None);
        }
        match text.parse() {
            Ok(0) => Ok(None),
            Ok(count) if count <= MOST_GROUND => Ok(Some(Self { count, by })),
            _ => Err(TrialFault::Count),
        }
    }
}
