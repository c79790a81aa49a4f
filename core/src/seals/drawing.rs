//! A slot's mark drawn with the finger: strokes as small integers.

use crate::kept::{Json, Kept, Refused};
use pitleaf_translated::translated;
use std::fmt;

/// A drawing: strokes of points (x, y), each 0 to 255, from the upper left of a square.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Drawing(Vec<Vec<[u8; 2]>>);

/// A drawing of more points than a mark has.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TooMuchInk;

const MOST_POINTS: usize = 2_000;

impl fmt::Display for TooMuchInk {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("That is more than a mark. Draw it again with fewer lines.")
    }
}

impl std::error::Error for TooMuchInk {}

impl Drawing {
    /// A drawing of strokes; empty strokes, and points where the finger rested, are left out.
    ///
    /// # Errors
    /// [`TooMuchInk`] beyond 2000 points.
    pub fn of(strokes: Vec<Vec<[u8; 2]>>) -> Result<Self, TooMuchInk> {
        let strokes: Vec<Vec<[u8; 2]>> = strokes
            .into_iter()
            .map(|mut stroke| {
                stroke.dedup();
                stroke
            })
            .filter(|stroke| !stroke.is_empty())
            .collect();
        if strokes.iter().map(Vec::len).sum::<usize>() > MOST_POINTS {
            return Err(TooMuchInk);
        }
        Ok(Self(strokes))
    }

    /// Its strokes, in the order drawn.
    #[must_use]
    pub fn strokes(&self) -> &[Vec<[u8; 2]>] {
        &self.0
    }
}

impl Kept for Drawing {
    fn json(&self) -> Json<'_> {
        self.0.json()
    }

    fn of_json(json: &Json<'_>) -> Result<Self, Refused> {
        Self::of(Kept::of_json(json)?).map_err(|fault| Refused::because(&fault))
    }
}
