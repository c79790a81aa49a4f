//! Signing off: what is still open is named, and goes over only with a written reason.

use super::decision::{not_compared, unproved_slots};
use super::{Past, Progress, RouteFact, State, Topic, cuts, past_limits};
use crate::book::{Book, BuildId, Fact};
use crate::joints::oil_feed::{Feed, Held};
use crate::limits::{Call, Sheet, limit_line, place_words};
use pitleaf_translated::translated;
use std::fmt;

/// An open point with what it is of.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Open {
    /// The key of its station, or the name of its slot.
    pub key: String,
    /// What is open.
    pub words: String,
}

/// What is open in a build.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct OpenPoints {
    /// Holds not found true.
    pub holds: Vec<Open>,
    /// Readings past a limit or too close to call, without a decision.
    pub undecided: Vec<String>,
    /// Seals in their slots with a gap that nothing has proved.
    pub unproved: Vec<Open>,
    /// Steps not done.
    pub steps: Vec<Open>,
    /// Readings that can't be compared with their limit, each with why: to be seen, and no open points.
    pub not_compared: Vec<String>,
    /// Solid dowels without an oil feed: no reason goes over that.
    pub no_oil: bool,
}

/// Why a build was not signed off.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum SignFault {
    /// The front bearing would run dry.
    NoOil,
    /// So many points are open, and no reason was written down.
    Open(usize),
    /// By nobody.
    NoName,
}

impl OpenPoints {
    /// What is open in a build.
    #[must_use]
    #[translated]
    pub fn of(book: &Book, build: &BuildId, sheet: &Sheet) -> Self {
        let mut points = Self::default();
        if let Some(progress) = Progress::of(book, build, sheet) {
            for (place, standing) in progress.standings.iter().enumerate() {
                let open = Open { key: standing.station.key(), words: progress.words(place) };
                match standing.state {
                    State::Done => {}
                    _ if standing.station.is_hold() => points.holds.push(open),
                    _ => points.steps.push(open),
                }
            }
        }
        let past = past_limits(book, build, sheet);
        points.undecided = past
            .iter()
            .filter(|past| past.decision.is_none())
            .map(|Past { row, place, reading, call, .. }| {
                let on = if place.is_empty() {
                    String::new()
                } else {
                    format!("{}, ", place_words(place))
                };
                let limit = limit_line(&row.limit, row.unit);
                let what = &row.what;
                match call {
                    Call::TooClose => {
                        format!("{on}{what}: {reading}, too close to call, limit {limit}")
                    }
                    _ => format!("{on}{what}: {reading}, limit {limit}"),
                }
            })
            .collect();
        let cuts = cuts(book, build);
        let undecided = cuts.iter().filter(|cut| cut.is_undecided());
        points.undecided.extend(undecided.map(|cut| format!("{}: {}", cut.name(), cut.words)));
        points.not_compared = not_compared(book, build, sheet);
        points.unproved = unproved_slots(book, build, sheet);
        points.no_oil = Feed::of(book, build).sign_off() == Err(Held);
        points
    }

    /// How many there are.
    #[must_use]
    pub fn count(&self) -> usize {
        self.holds.len() + self.undecided.len() + self.unproved.len() + self.steps.len()
    }

    /// What the book writes when the build is signed off.
    ///
    /// # Errors
    /// The [`SignFault`].
    #[translated]
    pub fn sign(&self, who: &str, why: &str) -> Result<Vec<Fact>, SignFault> {
        let (who, why) = (who.trim().to_owned(), why.trim().to_owned());
        if self.no_oil {
            return Err(SignFault::NoOil);
        }
        if who.is_empty() {
            return Err(SignFault::NoName);
        }
        let count = self.count();
        if count > 0 && why.is_empty() {
            return Err(SignFault::Open(count));
        }
        let words = if count > 0 { format!("{count} open: {why}") } else { String::new() };
        let over = Fact::Route(RouteFact::Said { topic: Topic::SignedOver, words });
        Ok(vec![over, Fact::SignedOff { who }])
    }
}

impl fmt::Display for SignFault {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NoOil => Held.fmt(f),
            Self::Open(1) => f.write_str("Not signed off: 1 point is open. Close it, or write down why it is signed off all the same."),
            Self::Open(count) => write!(f, "Not signed off: {count} points are open. Close them, or write down why it is signed off all the same."),
            Self::NoName => f.write_str("Say who signs it off."),
        }
    }
}

impl std::error::Error for SignFault {}
