//! One reading in every unit of its dimension at once.

use super::{Amount, Reading, Rounding, Span, Unit, places_for};
use crate::language::DECIMAL_SIGN;
use pitleaf_translated::translated;

/// A reading shown in one unit.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Converted {
    /// The unit.
    pub unit: Unit,
    /// To nearest, with a tenth of the reading's own step.
    pub rounded: String,
    /// The exact figure, where a dozen decimals can tell it.
    pub exact: Option<String>,
}

impl Converted {
    /// What is shown large, and what is said beside it: the exact figure where it has at most one decimal
    /// more than the rounded one, else the rounded one, which is what a tool can be set to.
    #[must_use]
    #[translated]
    pub fn shown(&self) -> (&str, String) {
        let places =
            |figure: &str| figure.split_once(DECIMAL_SIGN).map_or(0, |(_, part)| part.len());
        match &self.exact {
            Some(exact) if places(exact) <= places(&self.rounded) + 1 => {
                (exact, "exact".to_owned())
            }
            Some(exact) => (&self.rounded, format!("exactly {exact}")),
            None => (&self.rounded, "rounded".to_owned()),
        }
    }
}

/// A reading in all its units.
pub type Conversion = Vec<Converted>;

/// The reading in every unit of its dimension.
#[must_use]
pub fn conversions(reading: &Reading) -> Conversion {
    const MOST: u8 = 12;
    let amount = reading.amount();
    amount
        .dimension()
        .units()
        .map(|unit| Converted {
            unit,
            rounded: amount.show(unit, places_for(reading.step(), unit), Rounding::Nearest),
            exact: amount.exact_figure(unit, MOST),
        })
        .collect()
}

/// The whole 64th of an inch nearest to a length, reduced, and what remains: length − fraction.
///
/// The fraction comes as (whole inches, numerator, denominator). None where that is nothing, below zero, and
/// for other dimensions.
#[must_use]
pub fn nearest_sixty_fourth(amount: Amount) -> Option<((i64, i64, i64), Span)> {
    let step = Span::part(64, Unit::Inch)?.ticks();
    if amount.dimension() != Unit::Inch.dimension() || amount.ticks() < 0 {
        return None;
    }
    let count = i64::try_from((amount.ticks() * 2 + step) / (step * 2)).ok()?;
    let nearest = Amount::exact(count, 64, Unit::Inch).filter(|_| count > 0)?;
    let (whole, mut numerator, mut denominator) = (count / 64, count % 64, 64);
    while numerator % 2 == 0 && denominator > 1 {
        numerator /= 2;
        denominator /= 2;
    }
    Some(((whole, numerator, denominator), amount.minus(nearest)))
}

/// The leaf of a set nearest to a length, and what remains: length − leaf; none where more remains than
/// half the leaf, which no leaf comes near to.
#[must_use]
pub fn nearest_leaf(amount: Amount, leaves: &[Amount]) -> Option<(Amount, Span)> {
    leaves
        .iter()
        .filter(|leaf| leaf.dimension() == amount.dimension())
        .map(|&leaf| (leaf, amount.minus(leaf)))
        .min_by_key(|(_, rest)| rest.ticks().abs())
        .filter(|(leaf, rest)| rest.ticks().abs() * 2 <= leaf.ticks())
}

/// The leaves of a usual metric set, 0.03 to 1.00 mm (DIN 2275 series, from memory).
#[must_use]
pub fn usual_leaves() -> Vec<Amount> {
    const HUNDREDTHS: [i64; 26] = [
        3, 4, 5, 6, 7, 8, 9, 10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80, 85, 90,
        95, 100,
    ];
    HUNDREDTHS.iter().map(|&count| Amount::whole(count * 10, Unit::Micrometre)).collect()
}
