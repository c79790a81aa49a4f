//! Parts past a limit, and what becomes of them: machined, replaced, or accepted for a written reason.

use super::compression::{Finding, record_in};
use super::fact::subject_of_decision;
use super::{Choice, RouteFact};
use crate::book::{Book, BuildId, Entry, Fact, Figure, Subject, call};
use crate::limits::{Call, Row, Sheet, place_words};
use std::fmt;

/// A reading past its limit, with the decision on it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Past<'book> {
    /// The row whose limit it is past.
    pub row: &'book Row,
    /// On what it was read: a piece, or the rotor and face of a compression; may be empty.
    pub place: String,
    /// The reading in force, with its unit.
    pub reading: String,
    /// How it stands.
    pub call: Call,
    /// What was decided since it was read, and why.
    pub decision: Option<(Choice, &'book str)>,
}

/// Why a decision was not taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DecisionFault {
    /// Accepted without a reason.
    NoReason,
    /// A part past its limit is not simply used again.
    PastLimit,
}

/// The figures of a build in force, in the order they were written.
pub(super) fn figures<'book>(
    book: &'book Book,
    build: &BuildId,
) -> impl Iterator<Item = (&'book Entry, &'book Figure)> {
    book.lines(build).filter_map(move |line| {
        let Fact::Figure(figure) = &line.entry.fact else { return None };
        let now = book.current(build, &line.entry.fact.subject()?)?;
        (now.id == line.entry.id).then_some((now, figure))
    })
}

impl Past<'_> {
    /// What it is of: the piece, and what was measured on it.
    #[must_use]
    pub fn name(&self) -> String {
        format!("{} {}", place_words(&self.place), self.row.what).trim().to_owned()
    }
}

/// Every reading in force that does not meet its limit, those of the compression behind the others. A
/// decision older than the reading no longer counts.
#[must_use]
pub fn past_limits<'book>(
    book: &'book Book,
    build: &BuildId,
    sheet: &'book Sheet,
) -> Vec<Past<'book>> {
    // Plain loops: chains of iterators are more code on the phone.
    let mut past = Vec::new();
    for (entry, figure) in figures(book, build) {
        let Figure { row, place, text, unit, .. } = figure;
        if let (Some(row), Some(call @ Call::DoesNotMeet(_))) =
            (sheet.row(row), call(figure, sheet))
        {
            let reading = format!("{text} {}", unit.symbol());
            let decision = decided(book, build, (&row.id, place), entry.order);
            past.push(Past { row, place: place.clone(), reading, call, decision });
        }
    }
    for (Finding { row, call, what, figure, .. }, decision) in record_in(book, build, sheet) {
        let row = row.as_deref().and_then(|row| sheet.row(row));
        if let (Some(row), Some(call @ Call::DoesNotMeet(_))) = (row, call) {
            past.push(Past { row, place: what, reading: figure, call, decision });
        }
    }
    past
}

/// What was decided of a row on a place after it was read, at the order `read` of the book.
pub(super) fn decided<'book>(
    book: &'book Book,
    build: &BuildId,
    (row, place): (&str, &str),
    read: u64,
) -> Option<(Choice, &'book str)> {
    let entry = book.current(build, &Subject::Route(subject_of_decision(row, place)))?;
    match &entry.fact {
        Fact::Route(RouteFact::Decided { choice, why, .. }) if entry.order > read => {
            Some((*choice, why))
        }
        _ => None,
    }
}

/// A decision in words; that none was taken, where none was.
#[must_use]
pub fn decision_words(decision: Option<(Choice, &str)>) -> String {
    match decision {
        None => "not decided".to_owned(),
        Some((choice, "")) => choice.word().to_owned(),
        Some((choice, why)) => format!("{}: {why}", choice.word()),
    }
}

/// What the book writes of a decision on a reading past its limit.
///
/// # Errors
/// [`DecisionFault`].
pub fn decide_on(
    row: &str,
    place: &str,
    choice: Choice,
    why: &str,
) -> Result<RouteFact, DecisionFault> {
    match choice {
        Choice::Reuse if !row.is_empty() => return Err(DecisionFault::PastLimit),
        Choice::Accept if why.trim().is_empty() => return Err(DecisionFault::NoReason),
        _ => {}
    }
    Ok(RouteFact::Decided {
        row: row.to_owned(),
        place: place.to_owned(),
        choice,
        why: why.trim().to_owned(),
    })
}

/// The fates of whole parts, the last word on each.
#[must_use]
pub fn fates<'book>(book: &'book Book, build: &BuildId) -> Vec<(&'book str, Choice, &'book str)> {
    let mut fates: Vec<(&str, Choice, &str)> = Vec::new();
    for line in book.lines(build).filter(|line| !line.withdrawn) {
        if let Fact::Route(RouteFact::Decided { row, place, choice, why }) = &line.entry.fact
            && row.is_empty()
        {
            fates.retain(|(part, ..)| part != place);
            fates.push((place, *choice, why));
        }
    }
    fates
}

impl fmt::Display for DecisionFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::NoReason => {
                "Write down why it is accepted: the customer reads it on the build sheet."
            }
            Self::PastLimit => {
                "It is past its limit: machine it, replace it, or accept it with a written reason."
            }
        })
    }
}

impl std::error::Error for DecisionFault {}
