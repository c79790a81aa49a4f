//! A set judged by its spread: springs whose free heights are measured one by one.

use super::set_words::span;
use super::{Place, SetFault};
use crate::letters;
use crate::limits::{Call, Gauge, Limit, decide_computed, limit_line};
use crate::quantity::{Amount, Dimension, Reading, Span, Unit};
use pitleaf_translated::translated;

/// A set's spread against its limit.
#[derive(Clone, Debug, PartialEq)]
pub struct SpreadCheck {
    /// Greatest less least.
    pub spread: Span,
    /// The least piece, by its place in the list: of springs the first to suspect.
    pub least: usize,
    /// The greatest piece.
    pub greatest: usize,
    /// The verdict on the spread; none of a single piece.
    pub call: Option<Call>,
    guard: Span,
    pieces: Vec<(Place, String)>,
    limit: Limit,
}

impl SpreadCheck {
    /// Judges the spread of lengths measured with one gauge.
    ///
    /// # Errors
    /// [`SetFault::Nothing`], [`SetFault::Mixed`].
    pub fn of(
        readings: &[(Place, Reading)],
        limit: &Limit,
        gauge: &Gauge,
    ) -> Result<Self, SetFault> {
        if readings.is_empty() {
            return Err(SetFault::Nothing);
        }
        let edges = [&limit.lower, &limit.upper].into_iter().flatten().map(|edge| edge.amount());
        let amounts = readings.iter().map(|(_, reading)| reading.amount());
        if amounts.chain(edges).any(|amount| amount.dimension() != Dimension::Length) {
            return Err(SetFault::Mixed);
        }
        let whole = |at: &usize| readings[*at].1.amount().above_zero().as_whole();
        let least = (0..readings.len()).min_by_key(whole).unwrap_or(0);
        // The first of the greatest, as of the least.
        let greatest = (0..readings.len()).rev().max_by_key(whole).unwrap_or(0);
        let (low, high) = (&readings[least].1, &readings[greatest].1);
        let spread = high.amount().minus(low.amount());
        // Two readings, each with its own doubt: JCGM 100:2008, 5.1.2, adds them in squares.
        let doubt = |reading| gauge.uncertainty(reading, Unit::Millimetre);
        let standard = Span::nearest(doubt(low).hypot(doubt(high)), Unit::Millimetre);
        let verdict = standard
            .filter(|_| readings.len() > 1 && limit.has_edge())
            .map(|standard| decide_computed(limit, length(spread), standard));
        let call = verdict.as_ref().map(|verdict| verdict.call);
        let guard = verdict.map_or(Span::whole(0, Unit::Millimetre), |verdict| verdict.guard);
        let pieces = readings
            .iter()
            .map(|(place, reading)| {
                (*place, format!("{} {}", reading.number(), reading.unit().symbol()))
            })
            .collect();
        Ok(Self { spread, least, greatest, call, guard, pieces, limit: limit.clone() })
    }

    /// Where the spread stands on its limit's rule, and the doubt of it; none of a single piece.
    #[must_use]
    pub fn hand(&self) -> Option<(Amount, Span)> {
        self.call.map(|_| (length(self.spread), self.guard))
    }

    /// How many, the spread, its verdict, and the shortest and the tallest.
    #[must_use]
    #[translated]
    pub fn words(&self, unit: Unit) -> String {
        let count = self.pieces.len();
        let Some(call) = self.call else {
            return format!("{count} measured. A spread takes two or more.");
        };
        let name = |at: usize| format!("{} at {}", self.pieces[at].0, self.pieces[at].1);
        let shortest = if self.least == self.greatest {
            "All are alike.".to_owned()
        } else {
            format!(
                "Shortest, and the first to suspect: {}. Tallest: {}.",
                name(self.least),
                name(self.greatest)
            )
        };
        format!(
            "{count} measured. Spread {}, {} is allowed: {}. {shortest}",
            span(self.spread, unit),
            limit_line(&self.limit, unit),
            letters::lower(call.word())
        )
    }
}

fn length(spread: Span) -> Amount {
    Amount::whole(0, Unit::Millimetre).plus(spread)
}
