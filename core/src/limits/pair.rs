//! Two parts that run in each other: each may meet its own limit, and the two not that of the room between them.

use super::{Gauge, GaugeKind, Row, Sheet, Verdict, decide_computed};
use crate::quantity::{Amount, Dimension, Reading, Span, Unit};

/// The rows of two sizes, and of the clearance between them.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Pair {
    /// The row of what sits inside.
    pub inside: &'static str,
    /// The row of what is round it.
    pub outside: &'static str,
    /// The row of the room between them.
    pub clearance: &'static str,
}

/// Every pair whose two sizes and whose clearance the sheet has.
pub const PAIRS: [Pair; 3] = [
    Pair {
        inside: "corner-seal-diameter",
        outside: "rotor-corner-seal-bore",
        clearance: "corner-seal-clearance",
    },
    Pair {
        inside: "shaft-main-journal",
        outside: "main-bearing-bore",
        clearance: "main-bearing-clearance",
    },
    Pair {
        inside: "shaft-rotor-journal",
        outside: "rotor-bearing-bore",
        clearance: "rotor-bearing-clearance",
    },
];

/// What two readings make together.
#[derive(Clone, Debug, PartialEq)]
pub struct Together {
    /// Outside less inside; below zero is interference.
    pub clearance: Amount,
    /// The verdict on it.
    pub verdict: Verdict,
}

impl Pair {
    /// The row of the other of the two; none for a row that is neither.
    #[must_use]
    pub fn other(&self, row: &str) -> Option<&'static str> {
        match row {
            _ if row == self.inside => Some(self.outside),
            _ if row == self.outside => Some(self.inside),
            _ => None,
        }
    }
}

impl Sheet {
    /// Judges the room between two readings, each with the kind of gauge it was taken with; with the row it is
    /// judged by. None where the sheet has no such row, it has no edge, or a reading is no length.
    ///
    /// The two gauges' doubts add up in squares (JCGM 100:2008, 5.1.2). Where nothing is stated of one of them,
    /// nothing is proved.
    #[must_use]
    pub fn judge_pair(
        &self,
        pair: &Pair,
        (inside, inside_gauge): (&Reading, GaugeKind),
        (outside, outside_gauge): (&Reading, GaugeKind),
    ) -> Option<(&Row, Together)> {
        let row = self.row(pair.clearance).filter(|row| row.is_judged_bare())?;
        let are_lengths = [inside.unit(), outside.unit(), row.unit]
            .iter()
            .all(|unit| unit.dimension() == Dimension::Length);
        if !are_lengths {
            return None;
        }
        let gauge = |id, kind| self.row(id).map(|row| self.gauge(row.gauge_meant(kind)));
        let inside_gauge = gauge(pair.inside, inside_gauge)?;
        let outside_gauge = gauge(pair.outside, outside_gauge)?;
        let doubt = |gauge: &Gauge, reading| gauge.uncertainty(reading, Unit::Millimetre);
        let both = doubt(&inside_gauge, inside).hypot(doubt(&outside_gauge, outside));
        let room = outside.amount().minus(inside.amount());
        let clearance = Amount::whole(0, Unit::Millimetre).plus(room);
        let verdict =
            decide_computed(&row.limit, clearance, Span::nearest(both, Unit::Millimetre)?);
        let is_stated =
            [inside_gauge, outside_gauge].iter().all(|gauge| gauge.is_stated(Dimension::Length));
        let verdict = if is_stated { verdict } else { verdict.unstated() };
        Some((row, Together { clearance, verdict }))
    }
}
