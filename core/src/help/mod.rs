//! Help at the place for each figure: what it is, how to measure it, why it matters.
//!
//! Rows of the sheet that share a meaning share a [`Topic`]; how to measure is each row's own.

mod engine;
mod parts;
mod seals;

use crate::limits::{Row, Sheet};

/// The three texts about a figure.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Help {
    /// What it is.
    pub what: &'static str,
    /// How to measure it, or what to put in.
    pub how: String,
    /// Why it matters.
    pub why: &'static str,
}

/// What rows of the sheet have in common.
#[derive(Debug)]
pub struct Topic {
    /// Its name in addresses.
    pub id: &'static str,
    /// Its name.
    pub title: &'static str,
    /// The ids of its rows.
    pub rows: &'static [&'static str],
    /// What is measured.
    pub what: &'static str,
    /// Why it matters.
    pub why: &'static str,
}

const TABLES: [&[Topic]; 3] = [seals::TOPICS, parts::TOPICS, engine::TOPICS];

impl Topic {
    /// The first of all.
    pub(crate) const FIRST: &'static Self = &seals::TOPICS[0];

    /// Every topic.
    pub fn all() -> impl Iterator<Item = &'static Self> {
        TABLES.into_iter().flatten()
    }

    /// The topic with an id.
    #[must_use]
    pub fn named(id: &str) -> Option<&'static Self> {
        Self::all().find(|topic| topic.id == id)
    }

    /// The topic of a row, or of the pieces of a set; none for a row that no starter sheet has.
    #[must_use]
    pub fn of_row(id: &str) -> Option<&'static Self> {
        let is_of = |row: &&str| {
            // A piece of a set is named like its set: "…-piece" beside "…-spread".
            **row == *id
                || id
                    .strip_suffix("-piece")
                    .is_some_and(|set| row.strip_suffix("-spread") == Some(set))
        };
        Self::all().find(|topic| topic.rows.iter().any(&is_of))
    }

    /// Its three texts, measured as the sheet says of its first row.
    #[must_use]
    pub fn help(&self, sheet: &Sheet) -> Help {
        let how = self.rows.first().and_then(|id| sheet.row(id)).map(|row| row.how.clone());
        Help { what: self.what, how: how.unwrap_or_default(), why: self.why }
    }
}

impl Row {
    /// The three texts of a row; none for one that no starter sheet has.
    #[must_use]
    pub fn help(&self) -> Option<Help> {
        let topic = Topic::of_row(&self.id)?;
        Some(Help { what: topic.what, how: self.how.clone(), why: topic.why })
    }
}
