//! What a report is written from beside its own readings.

use super::SpacerChoice;
use crate::book::{Book, BuildId, Subject};
use crate::faces::{Ledger, ReadingSet, Sense, Skin, Survey, Taken};
use crate::limits::{BuildKind, Row, Sheet};
use crate::quantity::{Amount, usual_leaves};
use crate::seals::{Leaf, leaf_set};
use crate::trochoid::{Engine, Trochoid};

/// What a report is written from beside its own readings.
pub struct Bench<'a> {
    /// The sheet in force.
    pub sheet: &'a Sheet,
    /// How the build breathes.
    pub kind: BuildKind,
    /// Its rotors.
    pub rotors: u8,
    /// Its bore, along which its housings are read.
    pub bore: Trochoid,
    /// The leaves at hand.
    pub leaves: Vec<Amount>,
    /// What a thicker spacer does.
    pub sense: Sense,
    /// The spacer chosen, if one was.
    pub chosen: Option<SpacerChoice>,
    /// The set in force of another survey on a piece.
    pub set: &'a dyn Fn(Survey, &str) -> Option<ReadingSet>,
    /// When that was written, by the order of its entry.
    pub order: &'a dyn Fn(Survey, &str) -> Option<u64>,
    /// The skin of a face, by what is written of it in every build.
    pub skin: &'a dyn Fn(&str) -> Skin,
}

impl<'a> Bench<'a> {
    pub(super) fn row(&self, id: &str) -> Option<&'a Row> {
        self.sheet.row(id)
    }

    /// Of several surveys on a piece, the one written last.
    pub(super) fn latest(&self, of: &[Survey], piece: &str) -> Option<Survey> {
        let written = |survey: &Survey| Some(((self.order)(*survey, piece)?, *survey));
        of.iter().filter_map(written).max_by_key(|(order, _)| *order).map(|(_, survey)| survey)
    }

    /// Another set on the same piece; one that can't be read counts as none.
    pub(super) fn taken(&self, of: Survey, piece: &str) -> Option<Taken> {
        let set = (self.set)(of, piece)?;
        set.read_with(&self.sheet.gauge(set.gauge), self.bore).ok()
    }
}

/// Calls `report` with what a book says of a build; with the usual where none is open. What a thicker spacer does
/// is as it was when one was chosen, unless it is said.
pub fn on_bench<T>(
    book: &Book,
    build: Option<&BuildId>,
    sheet: &Sheet,
    sense: Option<Sense>,
    report: impl FnOnce(&Bench<'_>) -> T,
) -> T {
    let opening = build.and_then(|build| book.opening(build));
    let (kind, rotors) = opening.map_or((BuildKind::Any, 2), |(_, kind, rotors, _)| (kind, rotors));
    let engine = build.and_then(|build| book.engine(build)?.engine().ok());
    let chosen = build.and_then(|build| book.spacer(build)).cloned();
    let sense = sense
        .or_else(|| chosen.as_ref().map(SpacerChoice::sense))
        .unwrap_or(Sense::ThickerGivesMore);
    report(&Bench {
        sheet,
        kind,
        rotors,
        bore: engine.unwrap_or_else(Engine::preset).geometry().bore(),
        leaves: leaf_set(book)
            .map_or_else(usual_leaves, |set| set.leaves().iter().map(Leaf::thickness).collect()),
        sense,
        chosen,
        set: &|of, piece| book.readings(build?, of, piece).cloned(),
        order: &|of, piece| {
            let subject = Subject::Readings(of, piece.to_owned());
            book.current(build?, &subject).map(|entry| entry.order)
        },
        skin: &|piece| {
            let ledger = build.and_then(|build| Ledger::of(book, build, sheet, piece));
            ledger.map(|ledger| ledger.skin).unwrap_or_default()
        },
    })
}
