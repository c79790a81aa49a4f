//! What can be sensible in each place a number is typed: one table gives the check, the sentence and the tests' range.

use super::{Amount, Dimension, Unit};
use pitleaf_translated::{tr, translated};

/// The least and the greatest amount taken in one place.
#[derive(Debug, PartialEq, Eq)]
pub struct Bounds {
    /// The sentence's subject: "A gap".
    pub name: &'static str,
    /// The least, inclusive, in whole units.
    pub lowest: i64,
    /// The greatest, inclusive, in whole units.
    pub highest: i64,
    /// The unit of both.
    pub unit: Unit,
}

const fn bounds(name: &'static str, lowest: i64, highest: i64, unit: Unit) -> Bounds {
    Bounds { name, lowest, highest, unit }
}

impl Bounds {
    /// A clearance between two parts: never below zero.
    pub const GAP: Self = bounds(tr!("A gap"), 0, 25, Unit::Millimetre);
    /// A size of a part, measured over its faces.
    pub const SIZE: Self = bounds(tr!("A size"), 0, 1_000, Unit::Millimetre);
    /// The length of a piece that is there.
    pub const PIECE: Self = bounds(tr!("The length of a piece"), 1, 1_000, Unit::Millimetre);
    /// A height over or under a face; below zero means sunk.
    pub const HEIGHT: Self = bounds(tr!("A height"), -25, 25, Unit::Millimetre);
    /// A departure from the true form (warp, wear, runout): never below zero.
    pub const DEVIATION: Self = bounds(tr!("A deviation"), 0, 5, Unit::Millimetre);

    /// The widest bounds of each dimension, for the converter and for rows of no special kind.
    #[must_use]
    pub fn widest(dimension: Dimension) -> &'static Self {
        #[translated]
        const WIDEST: &[Bounds] = &[
            bounds("A length", -100_000, 100_000, Unit::Millimetre),
            bounds("A torque", 0, 10_000, Unit::NewtonMetre),
            bounds("A pressure", -1, 10_000, Unit::Bar),
            bounds("A volume", 0, 1_000_000, Unit::Millilitre),
            bounds("A mass", 0, 1_000_000, Unit::Gram),
            bounds("A force", 0, 1_000_000, Unit::Newton),
            bounds("A power", 0, 10_000, Unit::Kilowatt),
            bounds("A temperature", -273, 3_000, Unit::Celsius),
            bounds("An angle", -3_600, 3_600, Unit::Degree),
            bounds("A flow", 0, 100_000, Unit::LitrePerMinute),
            bounds("An unbalance", 0, 1_000_000, Unit::GramMillimetre),
        ];
        WIDEST.iter().find(|row| row.unit.dimension() == dimension).unwrap_or(&WIDEST[0])
    }

    /// The least amount taken.
    #[must_use]
    pub fn least(&self) -> Amount {
        Amount::whole(self.lowest, self.unit)
    }

    /// The greatest amount taken.
    #[must_use]
    pub fn greatest(&self) -> Amount {
        Amount::whole(self.highest, self.unit)
    }
}
