//! The rule a reading is drawn on: places from 0 (left end) to 1 (right end).

use super::{Limit, Side};
use crate::quantity::{Amount, Span, Unit};

/// Where edges and reading stand on the drawn rule.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rule {
    /// The lower edge.
    pub lower: Option<f64>,
    /// The upper edge.
    pub upper: Option<f64>,
    /// The wear limit.
    pub wear: Option<f64>,
    /// The reading, held at the end it runs off.
    pub reading: Option<f64>,
    /// The reading lies beyond the rule.
    pub off: Option<Side>,
    /// Half the width of the gauge's doubt.
    pub guard: f64,
}

/// Lays a limit on the rule, with a reading and its guard band if there is one.
///
/// Limits take the middle half, so that a reading somewhat outside still shows how far.
#[must_use]
pub fn rule(limit: &Limit, unit: Unit, reading: Option<(Amount, Span)>) -> Rule {
    let Scale { lower, upper, wear, left, right } = Scale::of(limit, unit);
    let place = |value: f64| (value - left) / (right - left);
    let raw = reading.map(|(amount, _)| place(amount.value(unit)));
    Rule {
        lower: lower.map(place),
        upper: upper.map(place),
        wear: wear.map(place),
        reading: raw.map(|raw| raw.clamp(0.0, 1.0)),
        off: raw.and_then(|raw| match raw {
            _ if raw < 0.0 => Some(Side::Below),
            _ if raw > 1.0 => Some(Side::Above),
            _ => None,
        }),
        guard: reading.map_or(0.0, |(_, guard)| (guard.value(unit) / (right - left)).min(1.0)),
    }
}

/// Where an amount stands on the rule of a limit, held at the end it runs off.
#[must_use]
pub fn place_on_rule(limit: &Limit, unit: Unit, amount: Amount) -> f64 {
    let Scale { left, right, .. } = Scale::of(limit, unit);
    ((amount.value(unit) - left) / (right - left)).clamp(0.0, 1.0)
}

/// A limit's edges in a unit, and the two ends of its rule.
struct Scale {
    lower: Option<f64>,
    upper: Option<f64>,
    wear: Option<f64>,
    left: f64,
    right: f64,
}

impl Scale {
    fn of(limit: &Limit, unit: Unit) -> Self {
        let at = |edge: &Option<super::Edge>| edge.as_ref().map(|edge| edge.amount().value(unit));
        let (lower, upper, wear) = (at(&limit.lower), at(&limit.upper), at(&limit.wear));
        let known: Vec<f64> = [lower, upper, wear].into_iter().flatten().collect();
        let least = known.iter().copied().fold(f64::INFINITY, f64::min);
        let most = known.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        let (left, right) = if lower.is_none() && least > 0.0 {
            // Only an upper edge: the rule starts at nothing.
            (0.0, most * 1.35)
        } else {
            let width = if most > least {
                most - least
            } else {
                (most.abs() * 0.02).max(f64::MIN_POSITIVE)
            };
            (least - width / 2.0, most + width / 2.0)
        };
        Self { lower, upper, wear, left, right }
    }
}
