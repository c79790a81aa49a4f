//! An exact amount of one dimension, and the exact difference of two.

use super::{Dimension, Unit};
use std::cmp::Ordering;
use uom::si::f64 as si;

/// An exact amount: a whole number of its dimension's ticks.
///
/// Shape: a point on a scale (a size, a temperature). The difference of two is a [`Span`].
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Amount {
    dimension: Dimension,
    ticks: i128,
}

/// The exact difference of two amounts of one dimension; it may be negative.
///
/// A span of temperature has no zero of its own, which is why it is not an [`Amount`].
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Span {
    dimension: Dimension,
    ticks: i128,
}

impl Amount {
    /// `numerator / denominator` of a unit, where that is a whole number of ticks; otherwise none.
    #[must_use]
    pub fn exact(numerator: i64, denominator: i64, unit: Unit) -> Option<Self> {
        let scaled = i128::from(numerator).checked_mul(unit.ticks())?;
        let denominator = i128::from(denominator);
        if denominator == 0 || scaled % denominator != 0 {
            return None;
        }
        Some(Self {
            dimension: unit.dimension(),
            ticks: (scaled / denominator).checked_add(unit.zero())?,
        })
    }

    /// A whole number of a unit.
    #[must_use]
    pub fn whole(count: i64, unit: Unit) -> Self {
        Self { dimension: unit.dimension(), ticks: i128::from(count) * unit.ticks() + unit.zero() }
    }

    /// The amount nearest to `value` of a unit. For results of physics, never for what was typed.
    ///
    /// None where `value` is not finite or beyond what can be held.
    #[must_use]
    pub fn nearest(value: f64, unit: Unit) -> Option<Self> {
        let span = Span::nearest(value, unit)?;
        Some(Self { dimension: span.dimension, ticks: span.ticks.checked_add(unit.zero())? })
    }

    /// What it measures.
    #[must_use]
    pub fn dimension(self) -> Dimension {
        self.dimension
    }

    pub(super) fn ticks(self) -> i128 {
        self.ticks
    }

    /// The value in a unit, as a binary float, for physics and drawing only.
    #[must_use]
    pub fn value(self, unit: Unit) -> f64 {
        debug_assert_eq!(
            self.dimension,
            unit.dimension(),
            "a value needs its own dimension’s unit"
        );
        ratio(self.ticks - unit.zero(), unit.ticks())
    }

    /// Exact order; none between different dimensions.
    #[must_use]
    pub fn order(self, other: Self) -> Option<Ordering> {
        (self.dimension == other.dimension).then(|| self.ticks.cmp(&other.ticks))
    }

    /// `self − other`, exactly.
    ///
    /// # Panics
    /// When the dimensions differ: the caller has mixed up two rows.
    #[must_use]
    pub fn minus(self, other: Self) -> Span {
        assert_eq!(
            self.dimension, other.dimension,
            "a difference needs two amounts of one dimension"
        );
        Span { dimension: self.dimension, ticks: self.ticks - other.ticks }
    }

    /// The amount a span further up the scale.
    ///
    /// # Panics
    /// When the dimensions differ.
    #[must_use]
    pub fn plus(self, span: Span) -> Self {
        assert_eq!(self.dimension, span.dimension, "a sum needs one dimension");
        Self { dimension: self.dimension, ticks: self.ticks + span.ticks }
    }

    /// As a length on [`uom`]; none if it isn't one.
    #[must_use]
    pub fn length(self) -> Option<si::Length> {
        (self.dimension == Dimension::Length)
            .then(|| si::Length::new::<uom::si::length::meter>(self.value(Unit::Metre)))
    }

    /// As a torque on [`uom`]; none if it isn't one.
    #[must_use]
    pub fn torque(self) -> Option<si::Torque> {
        (self.dimension == Dimension::Torque).then(|| {
            si::Torque::new::<uom::si::torque::newton_meter>(self.value(Unit::NewtonMetre))
        })
    }

    /// As a temperature on [`uom`]; none if it isn't one.
    #[must_use]
    pub fn temperature(self) -> Option<si::ThermodynamicTemperature> {
        (self.dimension == Dimension::Temperature).then(|| {
            si::ThermodynamicTemperature::new::<uom::si::thermodynamic_temperature::kelvin>(
                self.value(Unit::Kelvin),
            )
        })
    }

    /// As a pressure on [`uom`]; none if it isn't one.
    #[must_use]
    pub fn pressure(self) -> Option<si::Pressure> {
        (self.dimension == Dimension::Pressure).then(|| {
            si::Pressure::new::<uom::si::pressure::kilopascal>(self.value(Unit::Kilopascal))
        })
    }

    /// The amount nearest to a length on [`uom`].
    #[must_use]
    pub fn of_length(length: si::Length) -> Option<Self> {
        Self::nearest(length.get::<uom::si::length::meter>(), Unit::Metre)
    }
}

impl Span {
    /// `1 / denominator` of a unit, where that is a whole number of ticks.
    #[must_use]
    pub fn part(denominator: i64, unit: Unit) -> Option<Self> {
        let denominator = i128::from(denominator);
        (denominator != 0 && unit.ticks() % denominator == 0)
            .then(|| Self { dimension: unit.dimension(), ticks: unit.ticks() / denominator })
    }

    /// The span nearest to `value` of a unit.
    ///
    /// None where `value` is not finite or beyond what can be held.
    #[must_use]
    pub fn nearest(value: f64, unit: Unit) -> Option<Self> {
        // An f64 below 2^126 fits an i128 whole; the cast is checked by the bound.
        let ticks = (value * float(unit.ticks())).round();
        #[expect(clippy::cast_possible_truncation, reason = "bounded just before")]
        (ticks.abs() < 8.5e37).then(|| Self { dimension: unit.dimension(), ticks: ticks as i128 })
    }

    /// What it measures.
    #[must_use]
    pub fn dimension(self) -> Dimension {
        self.dimension
    }

    pub(super) fn ticks(self) -> i128 {
        self.ticks
    }

    pub(super) const fn of_ticks(dimension: Dimension, ticks: i128) -> Self {
        Self { dimension, ticks }
    }

    /// The value in a unit, as a binary float, for physics and drawing only.
    #[must_use]
    pub fn value(self, unit: Unit) -> f64 {
        debug_assert_eq!(
            self.dimension,
            unit.dimension(),
            "a value needs its own dimension’s unit"
        );
        ratio(self.ticks, unit.ticks())
    }

    /// No difference at all.
    #[must_use]
    pub fn is_zero(self) -> bool {
        self.ticks == 0
    }

    /// Below zero.
    #[must_use]
    pub fn is_negative(self) -> bool {
        self.ticks < 0
    }

    /// Without its sign.
    #[must_use]
    pub fn size(self) -> Self {
        Self { dimension: self.dimension, ticks: self.ticks.abs() }
    }
}

/// A quotient of two whole numbers as the nearest float within one rounding of each.
fn ratio(numerator: i128, denominator: i128) -> f64 {
    float(numerator) / float(denominator)
}

#[expect(clippy::cast_precision_loss, reason = "the nearest float is what is asked for")]
fn float(whole: i128) -> f64 {
    whole as f64
}
