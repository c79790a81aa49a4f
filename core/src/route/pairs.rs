//! Parts that run in each other, judged together as soon as both are read.

use super::decision::figures;
use crate::book::{Book, BuildId, Figure};
use crate::language;
use crate::limits::{GaugeKind, PAIRS, Pair, Row, Sheet, Together, limit_lines, place_words};
use crate::quantity::{Reading, Rounding, Span, Unit, places_for};
use crate::seals::Place;
use pitleaf_translated::translated;

/// Two readings judged together.
#[derive(Clone, Debug, PartialEq)]
pub struct Paired<'sheet> {
    /// The row of the room between them.
    pub row: &'sheet Row,
    /// On which piece: the narrower of the two names.
    pub place: String,
    /// The reading of the other part, with its piece and its row's name.
    pub other: String,
    /// What the two make.
    pub together: Together,
    /// The order of the later of the two entries; of the other's alone while this one is not written.
    pub order: u64,
}

/// A reading in hand or in the book, of a row on a piece.
struct Side<'a> {
    row: &'a str,
    place: &'a str,
    reading: Reading,
    gauge: GaugeKind,
    order: u64,
}

impl<'a> Side<'a> {
    fn of(figure: &'a Figure, order: u64) -> Option<Self> {
        let Figure { row, place, gauge, .. } = figure;
        Some(Self { row, place, reading: figure.reading().ok()?, gauge: *gauge, order })
    }

    /// Judged together with the other side.
    fn with<'sheet>(
        &self,
        other: &Side<'_>,
        pair: &Pair,
        sheet: &'sheet Sheet,
    ) -> Option<Paired<'sheet>> {
        let (inside, outside) = if self.row == pair.inside { (self, other) } else { (other, self) };
        let judged = sheet.judge_pair(
            pair,
            (&inside.reading, inside.gauge),
            (&outside.reading, outside.gauge),
        );
        let (row, together) = judged?;
        // A rotor's bore may stand for all six; the seal in it has a name of its own.
        let place = if inside.place.len() >= outside.place.len() { inside } else { outside }.place;
        let what = sheet.row(other.row).map_or(other.row, |row| row.what.as_str());
        let figure = format!(
            "{} {}",
            language::figure(other.reading.number()),
            other.reading.unit().symbol()
        );
        let other_words = if other.place.is_empty() {
            format!("{what}: {figure}")
        } else {
            format!("{} · {what}: {figure}", place_words(other.place))
        };
        Some(Paired {
            row,
            place: place.to_owned(),
            other: other_words,
            together,
            order: self.order.max(other.order),
        })
    }
}

/// What a reading makes with the other part's reading in force, for each piece it can sit in.
#[must_use]
pub fn pairs_with<'sheet>(
    book: &Book,
    build: &BuildId,
    sheet: &'sheet Sheet,
    (row, place): (&str, &str),
    reading: &Reading,
    gauge: GaugeKind,
) -> Vec<Paired<'sheet>> {
    let hand = Side { row, place, reading: reading.clone(), gauge, order: 0 };
    let mut all = Vec::new();
    for pair in &PAIRS {
        let Some(other) = pair.other(row) else { continue };
        for (entry, figure) in figures(book, build).filter(|(_, figure)| figure.row == other) {
            if belong(place, &figure.place) {
                let side = Side::of(figure, entry.order);
                all.extend(side.and_then(|side| hand.with(&side, pair, sheet)));
            }
        }
    }
    all
}

/// Every pair of which both are read, in the order of the table.
#[must_use]
pub fn pairs<'sheet>(book: &Book, build: &BuildId, sheet: &'sheet Sheet) -> Vec<Paired<'sheet>> {
    let sides: Vec<Side<'_>> =
        figures(book, build).filter_map(|(entry, figure)| Side::of(figure, entry.order)).collect();
    let mut all = Vec::new();
    for pair in &PAIRS {
        for inside in sides.iter().filter(|side| side.row == pair.inside) {
            for outside in sides.iter().filter(|side| side.row == pair.outside) {
                if belong(inside.place, outside.place) {
                    all.extend(inside.with(outside, pair, sheet));
                }
            }
        }
    }
    all
}

/// Whether two pieces sit in each other: of one name, or a rotor and what is on it.
fn belong(one: &str, other: &str) -> bool {
    let on_rotor = |rotor: &str, place: &str| match (Place::read(rotor), Place::read(place)) {
        (Ok(Place::Rotor(rotor)), Ok(place)) => place.rotor() == rotor,
        _ => false,
    };
    one == other || on_rotor(one, other) || on_rotor(other, one)
}

impl Paired<'_> {
    /// The room between the two, in a unit.
    #[must_use]
    pub fn figure(&self, unit: Unit) -> String {
        let places = places_for(Span::whole(10, Unit::Micrometre), unit);
        format!(
            "{} {}",
            self.together.clearance.show(unit, places, Rounding::Nearest),
            unit.symbol()
        )
    }

    /// What the two make, beside the verdict of the one in hand.
    #[must_use]
    #[translated]
    pub fn words(&self, unit: Unit) -> String {
        let (room, limit) = (self.figure(unit), limit_lines(&self.row.limit, unit));
        format!(
            "{}: {}. Together {room}, limit {limit}. With {}.",
            self.row.what,
            self.together.verdict.call.word(),
            self.other
        )
    }
}
