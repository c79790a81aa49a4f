//! The one judge of a reading held against a row, wherever its verdict is shown.

use super::{Gauge, GaugeKind, Row, Sheet, Verdict, decide};
use crate::quantity::Reading;

/// A verdict, with the gauge whose doubt it rests on.
#[derive(Clone, Debug, PartialEq)]
pub struct Judged {
    /// The gauge: the builder's own of its kind, else the usual one.
    pub gauge: Gauge,
    /// The verdict.
    pub verdict: Verdict,
}

impl Sheet {
    /// Judges a reading of a row, taken with a gauge of a kind; none where the row has no edge to keep,
    /// measures something else, or a bare figure can't be compared with it ([`Row::needs_conditions`]).
    ///
    /// Check, slots, book, build sheet, comparison, decisions and speech all ask here, so that one reading
    /// has one verdict.
    #[must_use]
    pub fn judge(&self, row: &Row, reading: &Reading, kind: GaugeKind) -> Option<Judged> {
        let gauge = self.gauge(row.gauge_meant(kind));
        let of_row = reading.amount().dimension() == row.unit.dimension();
        (of_row && row.is_judged_bare())
            .then(|| Judged { verdict: decide(&row.limit, reading, &gauge), gauge })
    }
}
