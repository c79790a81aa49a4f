//! The hold on a build whose upper dowels became solid: they shut the oil passage to the front bearing.

use crate::book::{Book, BuildId, Fact, Subject};
use pitleaf_translated::translated;
use std::fmt;

/// What the book says of the oil to the front bearing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Feed {
    /// Nothing was written of the upper dowels.
    NotKnown,
    /// Hollow dowels: the passage is open.
    Passage,
    /// Solid dowels, and an outside feed is recorded.
    Outside,
    /// Solid dowels, and no feed: the build is held.
    Shut,
}

impl Feed {
    /// As a build's entries in force have it.
    #[must_use]
    pub fn of(book: &Book, build: &BuildId) -> Self {
        let fact = |subject| book.current(build, &subject).map(|entry| &entry.fact);
        match fact(Subject::Dowels) {
            Some(Fact::DowelsSolid { solid: true }) if fact(Subject::OilFeed).is_some() => {
                Self::Outside
            }
            Some(Fact::DowelsSolid { solid: true }) => Self::Shut,
            Some(Fact::DowelsSolid { solid: false }) => Self::Passage,
            _ => Self::NotKnown,
        }
    }

    /// Whether the build may be signed off as far as this oil goes.
    ///
    /// # Errors
    /// [`Held`] while solid dowels shut the passage and no outside feed is recorded.
    ///
    /// A build of which nothing is written is not held: hollow dowels are as the engine was made.
    pub fn sign_off(self) -> Result<(), Held> {
        if self == Self::Shut { Err(Held) } else { Ok(()) }
    }
}

impl fmt::Display for Feed {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::NotKnown => "Nothing is written of the upper dowels yet.",
            Self::Passage => "Hollow upper dowels: the passage to the front bearing is open.",
            Self::Outside => {
                "Solid upper dowels, and an outside feed to the front bearing is recorded."
            }
            Self::Shut => return Held.fmt(f),
        })
    }
}

/// Why a build may not be signed off.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Held;

impl fmt::Display for Held {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Not to be signed off: the upper dowels are solid and shut the oil passage to the front bearing. Record the outside feed, or say that the dowels are hollow.")
    }
}

impl std::error::Error for Held {}
