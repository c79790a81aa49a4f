//! Parts past a limit, and what becomes of them: machined, replaced, or accepted for a written reason.

use super::fact::subject_of_decision;
use super::{Choice, RouteFact};
use crate::book::{Book, BuildId, Entry, Fact, Figure, Subject, call};
use crate::gather::Gather;
use crate::limits::{Call, Sheet};
use std::fmt;

/// A reading past its limit, with the decision on it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Past<'book> {
    /// The reading in force.
    pub figure: &'book Figure,
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

/// Every reading in force that does not meet its limit. A decision older than the reading no longer counts.
#[must_use]
pub fn past_limits<'book>(book: &'book Book, build: &BuildId, sheet: &Sheet) -> Vec<Past<'book>> {
    figures(book, build)
        .filter_map(|(entry, figure)| {
            let call = call(figure, sheet).filter(|call| matches!(call, Call::DoesNotMeet(_)))?;
            Some(Past { figure, call, decision: decided(book, build, figure, entry) })
        })
        .gather()
}

/// What was decided of a reading after it was written.
pub(super) fn decided<'book>(
    book: &'book Book,
    build: &BuildId,
    figure: &Figure,
    read: &Entry,
) -> Option<(Choice, &'book str)> {
    let subject = Subject::Route(subject_of_decision(&figure.row, &figure.place));
    let entry = book.current(build, &subject)?;
    match &entry.fact {
        Fact::Route(RouteFact::Decided { choice, why, .. }) if entry.order > read.order => {
            Some((*choice, why))
        }
        _ => None,
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
