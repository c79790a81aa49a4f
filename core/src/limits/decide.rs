//! The verdict on a reading, with the doubt of the gauge.
//!
//! Decision rule: ISO 14253-1:2017, default for 95 %: a guard band of 1.65 u inside each edge proves
//! conformity, 1.65 u outside proves the opposite, and between the two nothing is proved.
//! Probability of conformity: JCGM 106:2012, clause 7, a normal distribution about the reading.

use super::{Gauge, Limit};
use crate::quantity::{Amount, Reading, Span, Unit};

/// The guard band's factor for 95 % (ISO 14253-1:2017).
const GUARD: f64 = 1.65;

/// Which edge.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Side {
    /// Below the lower edge.
    Below,
    /// Above the upper edge.
    Above,
}

/// What can be said of a reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Call {
    /// Proved inside.
    Meets,
    /// Proved outside, past this edge.
    DoesNotMeet(Side),
    /// The gauge's doubt reaches over an edge: this reading proves nothing.
    TooClose,
}

/// The verdict on a reading.
#[derive(Clone, Debug, PartialEq)]
pub struct Verdict {
    /// The call.
    pub call: Call,
    /// Whether the bare figure lies within the edges, exactly; equal to an edge is within.
    pub within: bool,
    /// The probability, 0 to 1, that the true size meets the limit.
    pub conformity: f64,
    /// Reading less the lower edge; negative is outside.
    pub above_lower: Option<Span>,
    /// Upper edge less the reading; negative is outside.
    pub below_upper: Option<Span>,
    /// Past the wear limit; none where there is none.
    pub worn_out: Option<bool>,
    /// The guard band: how far inside an edge a reading must lie to prove it.
    pub guard: Span,
    /// The limit is narrower than two guard bands: no reading with this gauge can prove it.
    pub gauge_too_coarse: bool,
}

/// Judges a reading taken with a gauge against a limit.
///
/// # Panics
/// When limit and reading are of different dimensions: the caller has mixed up two rows.
#[must_use]
pub fn decide(limit: &Limit, reading: &Reading, gauge: &Gauge) -> Verdict {
    let unit = reading.unit();
    decide_computed(limit, reading.amount(), unit, gauge.uncertainty(reading, unit))
}

/// Judges a reading whose only known doubt is its own last digit.
///
/// # Panics
/// As [`decide`].
#[must_use]
pub fn decide_unassisted(limit: &Limit, reading: &Reading) -> Verdict {
    let unit = reading.unit();
    decide_computed(limit, reading.amount(), unit, reading.step().value(unit) / 12_f64.sqrt())
}

/// Judges a result computed from several readings, with its standard uncertainty in `unit`.
///
/// # Panics
/// As [`decide`].
#[must_use]
pub fn decide_computed(limit: &Limit, amount: Amount, unit: Unit, uncertainty: f64) -> Verdict {
    let above_lower = limit.lower.as_ref().map(|edge| amount.minus(edge.amount()));
    let below_upper = limit.upper.as_ref().map(|edge| edge.amount().minus(amount));
    let inside = |span: Option<Span>| span.map(|span| span.value(unit));
    let (lower, upper) = (inside(above_lower), inside(below_upper));
    let guard = GUARD * uncertainty;
    let proved_inside = |distance: Option<f64>| distance.is_none_or(|distance| distance >= guard);
    let proved_outside = |distance: Option<f64>| distance.is_some_and(|distance| distance < -guard);
    let call = if proved_outside(lower) {
        Call::DoesNotMeet(Side::Below)
    } else if proved_outside(upper) {
        Call::DoesNotMeet(Side::Above)
    } else if proved_inside(lower) && proved_inside(upper) {
        Call::Meets
    } else {
        Call::TooClose
    };
    // Nothing over nothing is no number: a size on the edge and known without doubt is taken as even.
    let deviates = |distance: f64| if distance == 0.0 { 0.0 } else { distance / uncertainty };
    let below = upper.map_or(1.0, |distance| normal(deviates(distance)));
    let above = lower.map_or(0.0, |distance| normal(-deviates(distance)));
    Verdict {
        call,
        within: limit.holds(amount),
        conformity: (below - above).clamp(0.0, 1.0),
        above_lower,
        below_upper,
        worn_out: limit.is_worn_out(amount),
        guard: Span::nearest(guard, unit).unwrap_or(amount.minus(amount)),
        gauge_too_coarse: lower
            .zip(upper)
            .is_some_and(|(lower, upper)| lower + upper < 2.0 * guard),
    }
}

/// Φ: the share of a normal distribution below `deviate` standard deviations.
fn normal(deviate: f64) -> f64 {
    libm::erfc(-deviate / std::f64::consts::SQRT_2) / 2.0
}
