//! The ledger of a face: all that was lapped off it and grown on it, in every build of the book.
//!
//! A housing goes from build to build; its casting mark says that it is the same one.

use super::face_work::{FaceWork, Operation};
use super::input::{mm, of_mm};
use super::report::{LAPPED_OFF, both};
use super::skin::Skin;
use super::uncertainty::Measured;
use crate::book::{Book, BuildId, Entry, Fact, Subject};
use crate::limits::{Call, GaugeKind, Sheet};
use crate::quantity::{Bounds, Reading, Unit};
use crate::seals::Written;
use pitleaf_translated::translated;
use uom::si::f64::Length;

/// All that was done to a face, the latest last.
#[derive(Clone, Debug, PartialEq)]
pub struct Ledger<'book> {
    /// The mark it is known by.
    pub mark: String,
    /// What was done.
    pub lines: Vec<LedgerLine<'book>>,
    /// The skin it has now.
    pub skin: Skin,
    /// What all hardenings together added, as far as that was measured.
    pub grown: Length,
}

/// One line of it.
#[derive(Clone, Debug, PartialEq)]
pub struct LedgerLine<'book> {
    /// The entry that says so.
    pub entry: &'book Entry,
    /// What was done.
    pub work: FaceWork,
}

impl<'book> Ledger<'book> {
    /// The ledger of a face of a build; none where its mark was never given in that build.
    #[must_use]
    pub fn of(book: &'book Book, build: &BuildId, sheet: &Sheet, piece: &str) -> Option<Self> {
        let mark = works(book).rev().find_map(|(entry, work)| {
            (entry.build == *build && work.piece == piece).then_some(&work.mark)
        })?;
        Some(Self::of_mark(book, sheet, piece, mark))
    }

    /// The ledger of the face of this mark; without a line where the book knows none such.
    ///
    /// What was typed against the sheet's row of it counts too, on every face of that housing that has nothing
    /// of its own about a lapping in that build.
    #[must_use]
    pub fn of_mark(book: &'book Book, sheet: &Sheet, piece: &str, mark: &str) -> Self {
        let mut lines: Vec<LedgerLine<'book>> = works(book)
            .filter(|(_, work)| work.is_of(piece, mark))
            .map(|(entry, work)| LedgerLine { entry, work: work.clone() })
            .collect();
        for at in 0..lines.len() {
            let (build, piece) = (&lines[at].entry.build, lines[at].work.piece.clone());
            let is_of_build = |line: &LedgerLine<'_>| line.entry.build == *build;
            let is_told = lines[..at].iter().any(is_of_build)
                || lines
                    .iter()
                    .any(|line| is_of_build(line) && line.work.operation == Operation::Lapped);
            if !is_told {
                lines.extend(typed(book, build, &piece, mark));
            }
        }
        lines.sort_by(|one, other| one.entry.place().cmp(&other.entry.place()));
        let (skin, grown) = fold(&lines, sheet);
        Self { mark: mark.to_owned(), lines, skin, grown }
    }
}

impl Ledger<'_> {
    /// How the skin stands; none where its depth is not known.
    #[must_use]
    pub fn call(&self) -> Option<Call> {
        self.skin.left().map(|(left, _)| left.call())
    }

    /// What came off since the face was hardened, in both unit systems.
    #[must_use]
    #[translated]
    pub fn off_words(&self) -> String {
        let off = both(self.skin.taken_off.value, Unit::Millimetre);
        if self.skin.is_whole { off } else { format!("{off}, and what is not known") }
    }
}

/// Whether a lapping is written down for a face in a build, or for every face of a housing.
#[must_use]
pub(crate) fn is_lapped(book: &Book, build: &BuildId, piece: &str, faces: &[String]) -> bool {
    let is_of = |face: &&String| **face == piece || housing_of(face) == piece;
    let mut faces = faces.iter().filter(is_of).peekable();
    faces.peek().is_some()
        && faces.all(|face| {
            works(book).any(|(entry, work)| {
                entry.build == *build && work.piece == *face && work.operation == Operation::Lapped
            })
        })
}

/// The housing of a face: `intermediate-1` of its rear face.
fn housing_of(piece: &str) -> &str {
    match piece.rsplit_once('-') {
        Some((housing, _)) => housing,
        None => piece,
    }
}

/// All that is written of faces, in every build, withdrawn entries left out.
fn works(book: &Book) -> impl DoubleEndedIterator<Item = (&Entry, &FaceWork)> {
    book.of_the_shop().filter_map(|entry| match &entry.fact {
        Fact::FaceWork(work) => Some((entry, work)),
        _ => None,
    })
}

/// What was typed against the row of the sheet for a face; older books name its housing alone.
fn typed<'book>(
    book: &'book Book,
    build: &BuildId,
    piece: &str,
    mark: &str,
) -> Option<LedgerLine<'book>> {
    let at = |place: &str| {
        book.current(build, &Subject::Figure(LAPPED_OFF.to_owned(), place.to_owned()))
    };
    let entry = at(piece).or_else(|| at(housing_of(piece)))?;
    let Fact::Figure(figure) = &entry.fact else { return None };
    let off = Written::read(&figure.text, figure.unit, &Bounds::DEVIATION).ok()?;
    let work = FaceWork {
        piece: piece.to_owned(),
        mark: mark.to_owned(),
        operation: Operation::Lapped,
        figure: Some(off),
        least: None,
        most: None,
    };
    Some(LedgerLine { entry, work })
}

/// The skin as all that was done leaves it, and what was grown on it.
fn fold(lines: &[LedgerLine<'_>], sheet: &Sheet) -> (Skin, Length) {
    let (mut skin, mut grown) = (Skin::default(), 0.0);
    let is_new =
        |at: usize| lines[..at].iter().all(|line| line.entry.build != lines[at].entry.build);
    for first in (0..lines.len()).filter(|&at| is_new(at)) {
        let build = &lines[first].entry.build;
        let works = || {
            let of_build = lines.iter().filter(|line| line.entry.build == *build);
            of_build.map(|line| &line.work)
        };
        // How it came in is where its build begins, whenever that was written down; the last word counts.
        for work in works().filter(|work| work.operation == Operation::CameIn) {
            skin.depth = work.depth().or(skin.depth);
        }
        let said = works().filter(|work| work.operation == Operation::CameIn);
        if let Some(said) = said.filter_map(|work| change(work, sheet)).next_back()
            // Another shop may have lapped it since: of what is said and what the book has, the more counts.
            && (!skin.is_whole || said.value > skin.taken_off.value)
        {
            skin = Skin { taken_off: said, is_whole: true, ..skin };
        }
        for work in works() {
            let change = change(work, sheet).unwrap_or_default();
            match work.operation {
                Operation::CameIn => {}
                Operation::Lapped | Operation::Finished => skin = skin.after(&change),
                Operation::Hardened => {
                    grown += mm(change.value);
                    skin = Skin {
                        depth: work.depth(),
                        taken_off: Measured::default(),
                        is_whole: true,
                    };
                }
            }
        }
    }
    (skin, of_mm(grown))
}

/// A difference of two thicknesses read with the same micrometer: their doubts add up in squares (JCGM 100, 5.1.2).
fn change(work: &FaceWork, sheet: &Sheet) -> Option<Measured> {
    let figure = work.figure.as_ref()?;
    let text = figure.to_string();
    let reading = Reading::read(&text, figure.unit(), &Bounds::DEVIATION).ok()?;
    let gauge = sheet.gauge(GaugeKind::OutsideMicrometer);
    let single = gauge.uncertainty(&reading, Unit::Millimetre);
    let value = figure.amount().length()?;
    // Nothing off is no difference that was measured.
    let uncertainty = if mm(value) == 0.0 { 0.0 } else { single * 2.0_f64.sqrt() };
    Some(Measured { value, uncertainty: of_mm(uncertainty) })
}
