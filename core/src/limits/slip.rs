//! Slips of the finger: a reading that would meet its limit with the point moved or the unit changed.

use super::Limit;
use crate::quantity::{Amount, Reading, Unit};

/// What a far-off reading may have been meant as. To be asked, never assumed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Slip {
    /// The decimal point stands this many powers of ten off.
    DecimalPoint(i8),
    /// The figure is right in this other unit.
    Unit(Unit),
}

/// Whether a reading far outside its limit would meet it, or come near, after one common slip.
///
/// Near is within the limit widened by its own width; far is a reading that is not.
#[must_use]
pub fn slip(limit: &Limit, reading: &Reading) -> Option<Slip> {
    let unit = reading.unit();
    let value = reading.amount().value(unit);
    let lower = limit.lower.as_ref().map(|edge| edge.amount().value(unit));
    let upper = limit.upper.as_ref().or(limit.wear.as_ref()).map(|edge| edge.amount().value(unit));
    let (lower, upper) = match (lower, upper) {
        (Some(lower), Some(upper)) => (lower, upper),
        (None, Some(upper)) => (0.0, upper),
        _ => return None,
    };
    let width = upper - lower;
    let near = |value: f64| value >= lower - width && value <= upper + width;
    let plausible = |value: f64| value > 0.0 && value >= lower && value <= upper;
    if near(value) || value == 0.0 {
        return None;
    }
    for power in [1_i8, -1, 2, -2, 3, -3] {
        if plausible(value * 10_f64.powi(i32::from(power))) {
            return Some(Slip::DecimalPoint(power));
        }
    }
    [Unit::Millimetre, Unit::Inch, Unit::Thou, Unit::Micrometre]
        .into_iter()
        .filter(|other| *other != unit && other.dimension() == unit.dimension())
        .find(|&other| {
            Amount::nearest(value, other).is_some_and(|meant| plausible(meant.value(unit)))
        })
        .map(Slip::Unit)
}
