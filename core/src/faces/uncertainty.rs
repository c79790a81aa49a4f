//! Measured lengths and how their doubts add up: JCGM 100:2008 (GUM).

use super::Refusal;
use super::input::{UNCERTAINTY, all_taken, count, mean, mm, of_mm, taken};
use crate::limits::{Gauge, Limit, Verdict, decide_computed};
use crate::quantity::{Amount, Bounds, Dimension, Reading, Span, Unit};
use pitleaf_translated::translated;
use uom::si::f64::Length;

/// A length with its standard uncertainty (one standard deviation).
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Measured {
    /// The best estimate.
    pub value: Length,
    /// Its standard uncertainty.
    pub uncertainty: Length,
}

/// The doubt of readings taken with one gauge, as standard uncertainties: what each reading has by itself,
/// and what all of them share.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Doubt {
    /// Of each reading by itself: its last digit.
    pub scatter: Length,
    /// The gauge's own error, the same in every reading: taking more of them does not average it out.
    pub gauge: Length,
}

/// One source of doubt in a result.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Contribution {
    /// How much the result changes per change of this input: 1 for a part of a stack.
    pub sensitivity: f64,
    /// The input's standard uncertainty.
    pub uncertainty: Length,
    /// The error it shares with others, such as one micrometer's own: those of one number go up and down
    /// together. None for what scatters by itself.
    pub shared: Option<u8>,
}

impl Doubt {
    /// The doubt of readings taken with a gauge: r/√12 for the coarsest step among them or the gauge's own,
    /// m/√3 for the gauge's greatest error (4.3.7).
    #[must_use]
    pub fn of(readings: &[Reading], gauge: &Gauge) -> Self {
        let unit = Unit::Millimetre;
        let lengths =
            readings.iter().filter(|reading| reading.amount().dimension() == Dimension::Length);
        // Without a reading, the gauge alone.
        let none = (gauge.own_steps(unit), gauge.error(Amount::whole(0, unit), unit));
        let (step, error) = lengths.fold(none, |(step, error): (f64, f64), reading| {
            let own = gauge.error(reading.amount(), unit);
            (step.max(gauge.steps(reading, unit)), error.max(own))
        });
        Self { scatter: of_mm(step / 12_f64.sqrt()), gauge: of_mm(error / 3_f64.sqrt()) }
    }

    /// The standard uncertainty of one reading: both together.
    #[must_use]
    pub fn single(&self) -> Length {
        of_mm(mm(self.scatter).hypot(mm(self.gauge)))
    }

    /// The doubt of a mean of so many readings: the scatter shrinks, the gauge's error stays.
    pub(super) fn of_mean(&self, readings: usize) -> Self {
        Self { scatter: self.scatter / count(readings).sqrt(), ..*self }
    }

    /// The same, once both parts lie within the bounds of an uncertainty.
    pub(super) fn taken(&self) -> Result<Self, Refusal> {
        taken(self.scatter, &UNCERTAINTY, None)?;
        taken(self.gauge, &UNCERTAINTY, None)?;
        Ok(*self)
    }
}

impl Measured {
    /// A reading with the doubt of its gauge; none if it isn't a length.
    #[must_use]
    pub fn of(reading: &Reading, gauge: &Gauge) -> Option<Self> {
        let value = reading.amount().length()?;
        Some(Self { value, uncertainty: of_mm(gauge.uncertainty(reading, Unit::Millimetre)) })
    }

    /// The mean of readings repeated at one place, their scatter (4.2.3: s/√n) joined to the doubt of one.
    ///
    /// Readings that repeat round alike, so neither the last digit nor the gauge's error averages out.
    ///
    /// # Errors
    /// [`Refusal::TooFew`] without readings; [`Refusal::OutOfBounds`] (readings within `bounds`).
    #[translated]
    pub fn repeated(
        readings: &[Length],
        doubt: &Doubt,
        bounds: &'static Bounds,
    ) -> Result<Self, Refusal> {
        let values = all_taken(readings, bounds, "a mean", 1)?;
        let single = mm(doubt.taken()?.single());
        Ok(Self {
            value: of_mm(mean(&values)),
            uncertainty: of_mm(scatter_of_mean(&values).hypot(single)),
        })
    }

    /// ± this holds the true value in about 95 of 100 cases (coverage factor 2; 6.3.3).
    #[must_use]
    pub fn expanded(&self) -> Length {
        2.0 * self.uncertainty
    }

    /// The value as an exact amount, to the nearest 0.1 nm; none where it is no number.
    #[must_use]
    pub fn amount(&self) -> Option<Amount> {
        Amount::of_length(self.value)
    }

    /// The verdict against a limit on a length; none where value or uncertainty is no number.
    ///
    /// # Panics
    /// When the limit is no length's: the caller has mixed up two rows.
    #[must_use]
    pub fn against(&self, limit: &Limit) -> Option<Verdict> {
        let standard = Span::nearest(mm(self.uncertainty), Unit::Millimetre)?;
        self.amount().map(|amount| decide_computed(limit, amount, standard))
    }

    /// `self − other`, the two measured independently.
    ///
    /// With one gauge for both, its own error cancels in part, and this errs on the careful side.
    #[must_use]
    pub fn minus(&self, other: &Self) -> Self {
        Self {
            value: self.value - other.value,
            uncertainty: of_mm(mm(self.uncertainty).hypot(mm(other.uncertainty))),
        }
    }

    /// A fraction of it, such as each side's half.
    #[must_use]
    pub fn times(&self, factor: f64) -> Self {
        Self { value: self.value * factor, uncertainty: self.uncertainty * factor.abs() }
    }
}

/// The combined standard uncertainty: independent doubts in squares (5.1.2), shared ones first in sums (5.2.2).
#[must_use]
pub fn combined(contributions: &[Contribution]) -> Length {
    let effect = |part: &Contribution| part.sensitivity * mm(part.uncertainty);
    let alone = contributions.iter().filter(|part| part.shared.is_none()).map(effect);
    let mut names: Vec<u8> = contributions.iter().filter_map(|part| part.shared).collect();
    names.sort_by(Ord::cmp);
    names.dedup();
    let together = names.into_iter().map(|name| {
        contributions.iter().filter(|part| part.shared == Some(name)).map(effect).sum::<f64>()
    });
    of_mm(alone.chain(together).fold(0.0, f64::hypot))
}

/// The experimental standard deviation of the mean; nothing for a single reading.
fn scatter_of_mean(values: &[f64]) -> f64 {
    if values.len() < 2 {
        return 0.0;
    }
    let mean = mean(values);
    let squares: f64 = values.iter().map(|value| (value - mean).powi(2)).sum();
    (squares / count(values.len() - 1) / count(values.len())).sqrt()
}
