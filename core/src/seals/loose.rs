//! Pieces measured before they have a place: seals to be put to slots, apex seals to be shared out.
//!
//! Each is a figure in the book like any other, its place being its number in the box. The row it names
//! stands on no sheet: nothing is judged here.

use super::Written;
use crate::book::{Book, BuildId, EntryId, Fact, Figure, Slot, Subject};
use crate::limits::{GUARD, GaugeKind, Sheet};
use crate::quantity::{Amount, Bounds, Fault, Reading, Span, Unit};

/// What was measured of a loose piece.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum LooseKind {
    /// A side seal's length.
    SideSealLength,
    /// An apex seal's weight.
    ApexSealWeight,
    /// An apex seal's height.
    ApexSealHeight,
}

/// The most pieces of one kind.
pub const MOST_LOOSE: usize = 60;

/// The row a slot's length is written under; its place is the slot.
const SLOT_LENGTH: &str = "Side-seal slot, length";

/// A loose piece as the book has it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Loose {
    /// The entry it stands in.
    pub entry: EntryId,
    /// Its number in the box, from 1.
    pub number: usize,
    /// What it measures.
    pub reading: Reading,
}

impl LooseKind {
    /// The row's name in the book.
    #[must_use]
    pub fn row(self) -> &'static str {
        match self {
            Self::SideSealLength => "Loose side seal, length",
            Self::ApexSealWeight => "Loose apex seal, weight",
            Self::ApexSealHeight => "Loose apex seal, height",
        }
    }

    /// What a sensible reading lies between.
    #[must_use]
    pub fn bounds(self) -> &'static Bounds {
        match self {
            Self::SideSealLength | Self::ApexSealHeight => &Bounds::PIECE,
            Self::ApexSealWeight => Bounds::widest(crate::quantity::Dimension::Mass),
        }
    }

    fn gauge(self) -> GaugeKind {
        match self {
            Self::SideSealLength | Self::ApexSealHeight => GaugeKind::OutsideMicrometer,
            Self::ApexSealWeight => GaugeKind::Balance,
        }
    }

    /// The fact of a piece measured, under its number.
    #[must_use]
    pub fn fact(self, number: usize, reading: &Reading) -> Fact {
        fact(self.row(), &format!("piece {number}"), reading, self.gauge())
    }

    /// The pieces in the box, by number.
    #[must_use]
    pub fn all(self, book: &Book, build: &BuildId) -> Vec<Loose> {
        (1..=MOST_LOOSE)
            .filter_map(|number| {
                let (entry, reading) =
                    current(book, build, self.row(), &format!("piece {number}"))?;
                Some(Loose { entry, number, reading })
            })
            .collect()
    }
}

/// The lowest number free in a box; none where it is full.
#[must_use]
pub fn free_number(pieces: &[Loose]) -> Option<usize> {
    (1..=MOST_LOOSE).find(|number| pieces.iter().all(|piece| piece.number != *number))
}

/// The fact of a slot's length measured.
#[must_use]
pub fn slot_length_fact(slot: Slot, reading: &Reading) -> Fact {
    fact(SLOT_LENGTH, &slot.to_string(), reading, GaugeKind::VernierCaliper)
}

/// The slots of an engine whose length is known, with the entry it stands in.
#[must_use]
pub fn slot_lengths(book: &Book, build: &BuildId, rotors: u8) -> Vec<(Slot, EntryId, Reading)> {
    Slot::of_engine(rotors)
        .into_iter()
        .filter_map(|slot| {
            let (entry, reading) = current(book, build, SLOT_LENGTH, &slot.to_string())?;
            Some((slot, entry, reading))
        })
        .collect()
}

/// How far the room between a seal and a slot may lie from what their lengths say, in 95 of 100 cases.
#[must_use]
pub fn length_doubt(sheet: &Sheet, seal: &Reading, slot: &Reading) -> Span {
    let of = |kind, reading| sheet.gauge(kind).uncertainty(reading, Unit::Millimetre);
    let both = of(GaugeKind::OutsideMicrometer, seal).hypot(of(GaugeKind::VernierCaliper, slot));
    Span::nearest(GUARD * both, Unit::Millimetre).unwrap_or(Span::whole(0, Unit::Millimetre))
}

/// A slot's length from a seal of known length and the gap it left: as a reading, exact.
///
/// # Errors
/// The [`Fault`] of a length beyond what a slot can have.
pub fn slot_from_gap(seal: Amount, gap: &Written) -> Result<Reading, Fault> {
    let length = seal.plus(gap.amount().above_zero());
    let text = length
        .exact_figure(Unit::Millimetre, 7)
        .unwrap_or_else(|| length.show(Unit::Millimetre, 4, crate::quantity::Rounding::Nearest));
    Reading::read(&text, Unit::Millimetre, &Bounds::SIZE)
}

fn fact(row: &str, place: &str, reading: &Reading, gauge: GaugeKind) -> Fact {
    Fact::Figure(Figure {
        row: row.to_owned(),
        place: place.to_owned(),
        text: reading.number().to_owned(),
        unit: reading.unit(),
        gauge,
        instead_of: None,
    })
}

fn current(book: &Book, build: &BuildId, row: &str, place: &str) -> Option<(EntryId, Reading)> {
    let entry = book.current(build, &Subject::Figure(row.to_owned(), place.to_owned()))?;
    match &entry.fact {
        Fact::Figure(figure) => Some((entry.id.clone(), figure.reading().ok()?)),
        _ => None,
    }
}
