//! Readings not proved to meet their limit, past it or too close to call, and what becomes of the part: machined,
//! replaced, or accepted for a written reason.

use super::compression::{Finding, record_in};
use super::fact::subject_of_decision;
use super::pairs::pairs;
use super::{Choice, Open, RouteFact};
use crate::book::{Book, BuildId, Entry, Fact, Figure, Slot, Subject, call};
use crate::faces::report::{LAPPED_OFF, on_bench, report};
use crate::faces::{Ledger, ReadingSet, Survey};
use crate::language;
use crate::limits::{Call, Row, Sheet, limit_line, place_words};
use crate::seals::{SIDE_SEAL_GAP, SlotReport, SlotState, engine_report, gap_row};
use pitleaf_translated::translated;
use std::fmt;

/// A reading past its limit or too close to call, with the decision on it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Past<'book> {
    /// The row whose limit it does not prove to meet.
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
    /// A part that is not proved to meet its limit is not simply used again.
    PastLimit,
}

/// The entries of a build in force, in the order they were written.
fn in_force<'book>(book: &'book Book, build: &BuildId) -> impl Iterator<Item = &'book Entry> {
    book.lines(build).filter_map(move |line| {
        let now = book.current(build, &line.entry.fact.subject()?)?;
        (now.id == line.entry.id).then_some(now)
    })
}

/// The figures of a build in force, in the order they were written.
pub(super) fn figures<'book>(
    book: &'book Book,
    build: &BuildId,
) -> impl Iterator<Item = (&'book Entry, &'book Figure)> {
    in_force(book, build).filter_map(|entry| match &entry.fact {
        Fact::Figure(figure) => Some((entry, figure)),
        _ => None,
    })
}

/// The surveys of a build in force, in the order they were written.
pub(super) fn surveys<'book>(
    book: &'book Book,
    build: &BuildId,
) -> impl Iterator<Item = (&'book Entry, &'book ReadingSet)> {
    in_force(book, build).filter_map(|entry| match &entry.fact {
        Fact::Readings(set) => Some((entry, set)),
        _ => None,
    })
}

impl Past<'_> {
    /// What it is of: the piece, and what was measured on it.
    #[must_use]
    pub fn name(&self) -> String {
        format!("{} {}", place_words(&self.place), self.row.what).trim().to_owned()
    }
}

/// Every reading in force that does not prove to meet its limit, those of the compression behind the others.
/// A decision older than the reading no longer counts.
#[must_use]
pub fn past_limits<'book>(
    book: &'book Book,
    build: &BuildId,
    sheet: &'book Sheet,
) -> Vec<Past<'book>> {
    // Plain loops: chains of iterators are more code on the phone.
    let mut past = Vec::new();
    let all = read(book, build, sheet);
    for Read { row, place, reading, call, order } in &all {
        let is_latest = |other: &Read<'_>| {
            other.row.id != row.id || other.place != *place || other.order <= *order
        };
        if *call != Call::Meets && all.iter().all(is_latest) {
            let (place, reading) = (place.clone(), reading.clone());
            let decision = decided(book, build, (&row.id, &place), *order);
            past.push(Past { row, place, reading, call: *call, decision });
        }
    }
    for (report, row, order) in past_slots(book, build, sheet) {
        if let Some(call) = report.gap_state.call() {
            let place = report.slot.to_string();
            let reading = report.gap(row.spoken_unit());
            let decision = decided(book, build, (&row.id, &place), order);
            past.push(Past { row, place, reading, call, decision });
        }
    }
    for (Finding { row, call, what, figure, .. }, decision) in record_in(book, build, sheet) {
        let row = row.as_deref().and_then(|row| sheet.row(row));
        if let (Some(row), Some(call)) = (row, call)
            && call != Call::Meets
        {
            past.push(Past { row, place: what, reading: figure, call, decision });
        }
    }
    past
}

/// A figure that stands against a row of the sheet.
struct Read<'book> {
    row: &'book Row,
    place: String,
    reading: String,
    call: Call,
    /// Of its entry.
    order: u64,
}

/// Single readings, and what surveys found: of one row on one piece the latest counts, whichever it is.
fn read<'book>(book: &'book Book, build: &BuildId, sheet: &'book Sheet) -> Vec<Read<'book>> {
    let mut all = Vec::new();
    for (entry, figure) in figures(book, build) {
        let Figure { row, place, text, unit, .. } = figure;
        if is_of_earlier_seal(book, build, entry, figure) {
            continue;
        }
        if let (Some(row), Some(call)) = (sheet.row(row), call(figure, sheet)) {
            let reading = format!("{} {}", language::figure(text), unit.symbol());
            all.push(Read { row, place: place.clone(), reading, call, order: entry.order });
        }
    }
    for (entry, set) in surveys(book, build) {
        let found = on_bench(book, Some(build), sheet, None, |bench| report(set, bench));
        // What a spacer would give is a prediction: it names no row.
        for found in found.unwrap_or_default() {
            let row = found.row.as_deref().and_then(|row| sheet.row(row));
            if let (Some(row), Some(call), false) = (row, found.call, found.is_predicted) {
                let (place, reading) = (set.piece.clone(), found.figure);
                all.push(Read { row, place, reading, call, order: entry.order });
            }
        }
    }
    all.extend(skins(book, build, sheet));
    for pair in pairs(book, build, sheet) {
        let (reading, call) = (pair.figure(pair.row.unit), pair.together.verdict.call);
        all.push(Read { row: pair.row, place: pair.place, reading, call, order: pair.order });
    }
    all
}

/// Faces lapped through their case, or perhaps: by all that was done to them in every build.
fn skins<'book>(book: &'book Book, build: &BuildId, sheet: &'book Sheet) -> Vec<Read<'book>> {
    let Some((_, _, rotors, _)) = book.opening(build) else { return Vec::new() };
    let skin = |place: String| {
        let ledger = Ledger::of(book, build, sheet, &place)?;
        let (row, reading) = (sheet.row(LAPPED_OFF)?, ledger.off_words());
        let order = ledger.lines.last()?.entry.order;
        Some(Read { row, place, reading, call: ledger.call()?, order })
    };
    Survey::Lapping.pieces(rotors).into_iter().filter_map(skin).collect()
}

/// Whether a gap was typed before the slot's last trial or fresh seal, which tell more of it as it is now.
pub(super) fn is_of_earlier_seal(
    book: &Book,
    build: &BuildId,
    entry: &Entry,
    figure: &Figure,
) -> bool {
    figure.row.starts_with(SIDE_SEAL_GAP)
        && Slot::named(&figure.place)
            .and_then(|slot| book.current(build, &Subject::Seal(slot)))
            .is_some_and(|seal| entry.place() < seal.place())
}

/// Slots whose seal is fitted although no trial proves the gap, with what is known of it. A gap typed from a
/// gauge is a reading like any other.
#[translated]
pub(super) fn unproved_slots(book: &Book, build: &BuildId, sheet: &Sheet) -> Vec<Open> {
    let Some((_, kind, rotors, _)) = book.opening(build) else { return Vec::new() };
    let Some(row) = gap_row(sheet, kind) else { return Vec::new() };
    engine_report(book, build, rotors, sheet, row)
        .into_iter()
        .filter(|report| report.state == SlotState::FittedUnproved && report.measured.is_none())
        .map(|report| {
            let (slot, state) = (report.slot, report.gap_state.name());
            let limit = limit_line(&row.limit, row.spoken_unit());
            let words = match report.gap(row.spoken_unit()) {
                gap if gap.is_empty() => format!("{slot}: {state}, limit {limit}"),
                gap => format!("{slot}: {state}, gap {gap}, limit {limit}"),
            };
            Open { key: slot.to_string(), words }
        })
        .collect()
}

/// Readings that can't be compared with their limit: what, the figure, and why.
pub(super) fn not_compared(book: &Book, build: &BuildId, sheet: &Sheet) -> Vec<String> {
    let mut found = Vec::new();
    for (_, figure) in figures(book, build) {
        if let Some(row) = sheet.row(&figure.row)
            && let Some(why) = row.needs_conditions()
        {
            found.push(format!("{}: {}. {why}", row.what, figure.shown()));
        }
    }
    for (finding, _) in record_in(book, build, sheet) {
        if !finding.not_compared.is_empty() {
            let what = language::said(&finding.what);
            found.push(format!("{what}: {}. {}", finding.figure, finding.not_compared));
        }
    }
    found
}

/// Slots whose seal is fitted although its trials prove the gap past the limit, with the order of the last
/// trial. A gap typed from a gauge is a reading like any other.
fn past_slots<'book>(
    book: &'book Book,
    build: &BuildId,
    sheet: &'book Sheet,
) -> Vec<(SlotReport<'book>, &'book Row, u64)> {
    let mut past = Vec::new();
    let Some((_, kind, rotors, _)) = book.opening(build) else { return past };
    let Some(row) = gap_row(sheet, kind) else { return past };
    for report in engine_report(book, build, rotors, sheet, row) {
        let last = report.trials.last().and_then(|(id, _)| book.entry(id));
        if let Some(last) = last
            && report.measured.is_none()
            && report.state.is_fitted_past()
        {
            past.push((report, row, last.order));
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
#[translated]
pub fn decision_words(decision: Option<(Choice, &str)>) -> String {
    match decision {
        None => "not decided".to_owned(),
        Some((choice, "")) => choice.name().to_owned(),
        Some((choice, why)) => format!("{}: {why}", choice.name()),
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
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::NoReason => {
                "Write down why it is accepted: the customer reads it on the build sheet."
            }
            Self::PastLimit => {
                "It is not proved to meet its limit: machine it, replace it, or accept it with a written reason."
            }
        })
    }
}

impl std::error::Error for DecisionFault {}
