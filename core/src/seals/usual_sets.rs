//! Leaf sets usual on a bench, offered when the builder enters theirs. Rows and sources only.

use super::{Leaf, LeafFault, LeafSet, usual_tolerance};
use crate::quantity::Unit;
use pitleaf_translated::translated;

/// A row: a set as it is sold, and who says so.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct UsualSet {
    /// Its name.
    pub name: &'static str,
    /// The unit its leaves are marked in.
    pub unit: Unit,
    /// The marks, thinnest first.
    pub marks: &'static [&'static str],
    /// Where the marks come from.
    pub source: &'static str,
}

/// Every set offered.
#[translated]
pub const USUAL_SETS: &[UsualSet] = &[
    UsualSet {
        name: "Metric, 8 leaves",
        unit: Unit::Millimetre,
        marks: &["0.05", "0.10", "0.15", "0.20", "0.25", "0.30", "0.40", "0.50"],
        source: "DIN 2275 series, from memory",
    },
    UsualSet {
        name: "Metric, 20 leaves",
        unit: Unit::Millimetre,
        marks: &[
            "0.05", "0.10", "0.15", "0.20", "0.25", "0.30", "0.35", "0.40", "0.45", "0.50", "0.55",
            "0.60", "0.65", "0.70", "0.75", "0.80", "0.85", "0.90", "0.95", "1.00",
        ],
        source: "DIN 2275 series, from memory",
    },
    UsualSet {
        name: "Metric, with the thin leaves",
        unit: Unit::Millimetre,
        marks: &[
            "0.03", "0.04", "0.05", "0.06", "0.07", "0.08", "0.09", "0.10", "0.15", "0.20", "0.25",
            "0.30", "0.40", "0.50",
        ],
        source: "DIN 2275 series and its thinner leaves, from memory",
    },
    UsualSet {
        name: "Inch, thin leaves",
        unit: Unit::Inch,
        marks: &[
            "0.0015", "0.002", "0.003", "0.004", "0.005", "0.006", "0.008", "0.010", "0.012",
            "0.015",
        ],
        source: "from memory",
    },
    UsualSet {
        name: "Inch, 25 leaves",
        unit: Unit::Inch,
        marks: &[
            "0.0015", "0.002", "0.0025", "0.003", "0.004", "0.005", "0.006", "0.007", "0.008",
            "0.009", "0.010", "0.011", "0.012", "0.013", "0.014", "0.015", "0.016", "0.017",
            "0.018", "0.019", "0.020", "0.022", "0.024", "0.025", "0.035",
        ],
        source: "from memory",
    },
];

impl UsualSet {
    /// The set with the usual tolerance, for the builder to correct.
    ///
    /// # Errors
    /// None in fact: every row is read in the tests.
    pub fn set(&self) -> Result<LeafSet, LeafFault> {
        let leaves: Result<Vec<Leaf>, _> =
            self.marks.iter().map(|mark| Leaf::read(mark, self.unit)).collect();
        LeafSet::of(self.name, leaves?, usual_tolerance()?)
    }
}
