//! Slips of the finger: a reading that would meet its limit with the point moved or the unit changed.

use super::Limit;
use crate::quantity::{Amount, Number, Reading, Unit};

/// What a far-off reading may have been meant as. To be asked, never assumed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Slip {
    /// The decimal point stands this many powers of ten off.
    DecimalPoint(i8),
    /// The figure is right in this other unit.
    Unit(Unit),
}

/// Whether a reading far outside its limit would meet it after one common slip.
///
/// Far is outside the limit widened by its own width on both sides. A limit with one edge alone is
/// taken to reach from zero to an upper edge, or a tenth past a lower one.
#[must_use]
pub fn slip(limit: &Limit, reading: &Reading) -> Option<Slip> {
    let unit = reading.unit();
    let number = Number::read(reading.number()).ok()?;
    let (top, bottom) = (number.numerator(), number.denominator());
    if top <= 0 || !is_far(limit, reading.amount().value(unit), unit)? {
        return None;
    }
    let meets = |meant: Option<Amount>| {
        meant.is_some_and(|amount| {
            limit.holds(amount) && is_far(limit, amount.value(unit), unit) == Some(false)
        })
    };
    let moved = |power: i8| match 10_i64.pow(u32::from(power.unsigned_abs())) {
        times if power > 0 => Amount::exact(top.checked_mul(times)?, bottom, unit),
        times => Amount::exact(top, bottom.checked_mul(times)?, unit),
    };
    [1_i8, -1, 2, -2, 3, -3]
        .into_iter()
        .find(|&power| meets(moved(power)))
        .map(Slip::DecimalPoint)
        .or_else(|| {
            unit.dimension()
                .units()
                // Too large for any part: a figure in one of these is a moved point.
                .filter(|other| !matches!(other, Unit::Centimetre | Unit::Metre | Unit::Foot))
                .filter(|other| *other != unit)
                .find(|&other| meets(Amount::exact(top, bottom, other)))
                .map(Slip::Unit)
        })
}

/// None where the limit has no edge to be far from.
fn is_far(limit: &Limit, value: f64, unit: Unit) -> Option<bool> {
    let lower = limit.lower.as_ref().map(|edge| edge.amount().value(unit));
    let upper = limit.upper.as_ref().or(limit.wear.as_ref()).map(|edge| edge.amount().value(unit));
    let (lower, upper) = match (lower, upper) {
        (Some(lower), Some(upper)) => (lower, upper),
        (None, Some(upper)) => (0.0, upper),
        (Some(lower), None) => (lower, lower * 1.1),
        (None, None) => return None,
    };
    let width = upper - lower;
    Some(value < lower - width || value > upper + width)
}
