//! The verdict on a reading, with the doubt of the gauge.
//!
//! Decision rule: ISO 14253-1:2017, default for 95 %: a guard band of 1.65 u inside each edge proves
//! conformity, 1.65 u outside proves the opposite, and between the two nothing is proved.
//! Probability of conformity: JCGM 106:2012, clause 7, a normal distribution about the reading.

use super::{Gauge, Limit};
use crate::quantity::{Amount, Reading, Span, Unit};

/// The guard band's factor for 95 % (ISO 14253-1:2017).
pub(crate) const GUARD: f64 = 1.65;

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
    /// The probability, 0 to 1, that the true size meets the limit; 0 where the gauge's doubt is not known.
    pub conformity: f64,
    /// Reading less the lower edge; negative is outside.
    pub above_lower: Option<Span>,
    /// Upper edge less the reading; negative is outside.
    pub below_upper: Option<Span>,
    /// Past the wear limit; none where there is none.
    pub worn_out: Option<bool>,
    /// The gauge's doubt reaches over the wear limit: whether it is past is not proved.
    pub wear_is_close: bool,
    /// Something is known of the gauge's doubt; without that nothing is proved.
    pub is_stated: bool,
    /// The guard band: how far inside an edge a reading must lie to prove it.
    pub guard: Span,
    /// The limit is narrower than two guard bands: no reading with this gauge can prove it.
    pub gauge_too_coarse: bool,
}

/// Judges a reading taken with a gauge against a limit. With a gauge of which no doubt is stated nothing is
/// proved, whatever it reads.
///
/// # Panics
/// When limit and reading are of different dimensions: the caller has mixed up two rows.
#[must_use]
pub fn decide(limit: &Limit, reading: &Reading, gauge: &Gauge) -> Verdict {
    let unit = reading.unit();
    let uncertainty = gauge.uncertainty(reading, unit);
    let verdict = judge(limit, reading.amount(), unit, uncertainty, reading.step());
    if gauge.is_stated(unit.dimension()) { verdict } else { verdict.unstated() }
}

impl Verdict {
    /// The same of a gauge of which nothing is stated: it proves nothing.
    pub(super) fn unstated(self) -> Self {
        Self { call: Call::TooClose, conformity: 0.0, is_stated: false, ..self }
    }
}

/// Judges a reading of stated standard uncertainty, as a calibration sheet or a budget gives it.
///
/// # Panics
/// As [`decide`], and when the uncertainty is of another dimension.
#[must_use]
pub fn decide_with_uncertainty(limit: &Limit, reading: &Reading, standard: Span) -> Verdict {
    assert_eq!(
        standard.dimension(),
        reading.unit().dimension(),
        "an uncertainty is of its reading’s dimension"
    );
    let unit = reading.unit();
    judge(limit, reading.amount(), unit, standard.size().value(unit), reading.step())
}

/// Judges a length computed from several readings, with its standard uncertainty.
///
/// # Panics
/// As [`decide`], and when length or uncertainty is none.
#[must_use]
pub fn decide_computed(limit: &Limit, length: Amount, standard: Span) -> Verdict {
    let unit = Unit::Millimetre;
    let whole = (length.dimension(), standard.dimension());
    assert_eq!(whole, (unit.dimension(), unit.dimension()), "only lengths are computed");
    let standard = standard.size();
    judge(limit, length, unit, standard.value(unit), standard)
}

/// `coarse` as for [`guard`].
fn judge(limit: &Limit, amount: Amount, unit: Unit, uncertainty: f64, coarse: Span) -> Verdict {
    let lower = limit.lower.as_ref().map(|edge| amount.minus(edge.amount()));
    let upper = limit.upper.as_ref().map(|edge| edge.amount().minus(amount));
    let guard = guard(uncertainty, unit, coarse);
    let proved_inside =
        |inside: Option<Span>| inside.is_none_or(|distance| !distance.minus(guard).is_negative());
    let proved_outside =
        |inside: Option<Span>| inside.is_some_and(|distance| distance.plus(guard).is_negative());
    let call = if proved_outside(lower) {
        Call::DoesNotMeet(Side::Below)
    } else if proved_outside(upper) {
        Call::DoesNotMeet(Side::Above)
    } else if proved_inside(lower) && proved_inside(upper) {
        Call::Meets
    } else {
        Call::TooClose
    };
    let missed = |inside: Option<Span>| {
        inside.map_or(0.0, |distance| beyond(distance.value(unit), uncertainty))
    };
    Verdict {
        call,
        within: limit.holds(amount),
        conformity: (1.0 - missed(lower) - missed(upper)).clamp(0.0, 1.0),
        above_lower: lower,
        below_upper: upper,
        worn_out: limit.is_worn_out(amount),
        wear_is_close: limit
            .wear
            .as_ref()
            .is_some_and(|wear| wear.amount().minus(amount).size().minus(guard).is_negative()),
        is_stated: true,
        guard,
        gauge_too_coarse: lower
            .zip(upper)
            .is_some_and(|(lower, upper)| lower.plus(upper).minus(guard.plus(guard)).is_negative()),
    }
}

/// The guard band of a standard uncertainty: a whole number of ticks, so that a reading on its edge is judged
/// exactly; `coarse` where it is beyond what can be held.
pub(super) fn guard(uncertainty: f64, unit: Unit, coarse: Span) -> Span {
    Span::nearest(GUARD * uncertainty, unit).unwrap_or(coarse)
}

/// The probability that the true size lies past an edge, for a reading `distance` inside it.
fn beyond(distance: f64, uncertainty: f64) -> f64 {
    if uncertainty > 0.0 {
        libm::erfc(distance / uncertainty / std::f64::consts::SQRT_2) / 2.0
    } else {
        f64::from(u8::from(distance < 0.0))
    }
}
