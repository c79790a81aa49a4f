//! A set in words, and a set's readings as the book has them.

use super::{Matched, Place, SetCheck};
use crate::book::{Book, BuildId};
use crate::limits::{Call, Row};
use crate::quantity::without_zeros;
use crate::quantity::{Reading, Rounding, Span, Unit, places_for};
use pitleaf_translated::translated;

/// The readings in force of a row at each place of its part, on an engine of so many rotors.
///
/// Those of another dimension, written before a row was changed, are left out.
#[must_use]
pub fn set_readings(
    book: &Book,
    build: &BuildId,
    row: &Row,
    rotors: u8,
) -> Vec<(Place, Option<Reading>)> {
    Place::of_part(row.part, rotors)
        .into_iter()
        .map(|place| {
            let reading = book
                .figure(build, &row.id, &place.to_string())
                .and_then(|figure| figure.reading().ok())
                .filter(|reading| reading.amount().dimension() == row.unit.dimension());
            (place, reading)
        })
        .collect()
}

impl SetCheck {
    /// How many meet, the spread, and the worst one.
    #[must_use]
    #[translated]
    pub fn words(&self, unit: Unit) -> String {
        let (meet, fail, close) = self.counts();
        let mut counts = vec![format!("{} measured: {meet} meet", self.verdicts.len())];
        if fail > 0 {
            counts.push(format!("{fail} {} not", if fail == 1 { "does" } else { "do" }));
        }
        if close > 0 {
            counts.push(format!("{close} too close to call"));
        }
        let mut words = format!("{}.", counts.join(", "));
        if self.verdicts.len() > 1 {
            words.push_str(&format!(
                " Spread {}. Nearest to a limit or farthest past it: {}",
                span(self.spread, unit),
                self.verdicts[self.worst].0
            ));
            let verdict = &self.verdicts[self.worst].1;
            match verdict.call {
                Call::Meets => words.push('.'),
                call => words.push_str(&format!(", {}.", crate::letters::lower(call.word()))),
            }
        }
        words
    }
}

impl Matched {
    /// How nearly alike the sets are: by weight as wholes, by height within each.
    #[must_use]
    #[translated]
    pub fn spread_words(&self, is_by_weight: bool, unit: Unit) -> String {
        let spread = span(self.spread, unit);
        if is_by_weight {
            format!("The heaviest set less the lightest: {spread}.")
        } else {
            format!("Within a set at most {spread} apart.")
        }
    }

    /// A line for each rotor: "Rotor 1: pieces 1, 4 and 6."
    #[must_use]
    #[translated]
    pub fn words(&self, numbers: &[usize]) -> Vec<String> {
        let name = |at: &usize| numbers.get(*at).copied().unwrap_or(at + 1).to_string();
        self.rotors
            .iter()
            .enumerate()
            .map(|(rotor, pieces)| {
                let mut pieces: Vec<String> = pieces.iter().map(name).collect();
                let last = pieces.pop().unwrap_or_default();
                let list = if pieces.is_empty() {
                    format!("piece {last}")
                } else {
                    format!("pieces {} and {last}", pieces.join(", "))
                };
                format!("Rotor {}: {list}.", rotor + 1)
            })
            .collect()
    }
}

/// A span as text, to a tenth of the last digit that matters.
pub(super) fn span(span: Span, unit: Unit) -> String {
    let places = match unit.dimension() {
        crate::quantity::Dimension::Length => places_for(Span::whole(1, Unit::Micrometre), unit),
        _ => 3,
    };
    let text = span.show(unit, places, Rounding::Up);
    format!("{} {}", without_zeros(&text), unit.symbol())
}
