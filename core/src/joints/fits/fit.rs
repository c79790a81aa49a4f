//! The fit of a hole and a shaft: by class, by an inch allowance, or as measured.

use super::{Class, FitFault, limits};
use crate::quantity::{Amount, Rounding, Span, Unit};
use pitleaf_translated::translated;

/// The least and the greatest size of a hole or a shaft.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Sizes {
    least: Amount,
    greatest: Amount,
}

/// What a pair of limits comes to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FitKind {
    /// Never tight.
    Clearance,
    /// Loose or tight, as the pair happens to be.
    Transition,
    /// Never loose.
    Interference,
}

impl FitKind {
    /// In words.
    #[must_use]
    #[translated]
    pub fn name(self) -> &'static str {
        match self {
            Self::Clearance => "clearance",
            Self::Transition => "transition",
            Self::Interference => "interference",
        }
    }
}

/// The clearance between a hole and a shaft: least and greatest. Below zero it is an interference.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Fit {
    /// Least hole less greatest shaft.
    pub least_clearance: Span,
    /// Greatest hole less least shaft.
    pub greatest_clearance: Span,
}

impl Sizes {
    /// Limits of size as typed, in whichever units; an inch allowance is given so.
    ///
    /// # Errors
    /// [`FitFault::Swapped`] where they stand the wrong way round.
    pub fn new(least: Amount, greatest: Amount) -> Result<Self, FitFault> {
        match least.order(greatest) {
            Some(order) if order.is_le() => Ok(Self { least, greatest }),
            _ => Err(FitFault::Swapped),
        }
    }

    /// One piece as measured.
    #[must_use]
    pub fn measured(size: Amount) -> Self {
        Self { least: size, greatest: size }
    }

    /// The limits of a nominal size in a tolerance class.
    ///
    /// # Errors
    /// As [`limits()`].
    pub fn of_class(nominal: Amount, class: Class) -> Result<Self, FitFault> {
        let limits = limits(nominal, class)?;
        Ok(Self { least: nominal.plus(limits.lower), greatest: nominal.plus(limits.upper) })
    }

    /// The least size.
    #[must_use]
    pub fn least(self) -> Amount {
        self.least
    }

    /// The greatest size.
    #[must_use]
    pub fn greatest(self) -> Amount {
        self.greatest
    }

    /// Whether a measured size lies within, exactly; at a limit is within.
    #[must_use]
    pub fn holds(self, size: Amount) -> bool {
        let at = |other: Amount| size.order(other);
        at(self.least).is_some_and(std::cmp::Ordering::is_ge)
            && at(self.greatest).is_some_and(std::cmp::Ordering::is_le)
    }
}

impl Fit {
    /// The fit of a hole and a shaft.
    ///
    /// # Examples
    /// *A measured pin in a hole held by its class:*
    /// ```
    /// use pitleaf_core::joints::fits::{Class, Fit, FitKind, Sizes};
    /// use pitleaf_core::quantity::{Amount, Unit};
    /// let mm = |hundredths| Amount::exact(hundredths, 1000, Unit::Millimetre).expect("exact");
    /// let hole = Sizes::of_class(mm(12_000), Class::read("H7")?)?;
    /// let fit = Fit::of(hole, Sizes::measured(mm(12_021)));
    /// assert_eq!(fit.kind(), FitKind::Interference);
    /// assert_eq!(fit.greatest_clearance.value(Unit::Micrometre), -3.0);
    /// # Ok::<(), pitleaf_core::joints::fits::FitFault>(())
    /// ```
    #[must_use]
    pub fn of(hole: Sizes, shaft: Sizes) -> Self {
        Self {
            least_clearance: hole.least.minus(shaft.greatest),
            greatest_clearance: hole.greatest.minus(shaft.least),
        }
    }

    /// What it comes to. A least clearance of nothing still counts as a clearance fit (H7/h6).
    #[must_use]
    pub fn kind(self) -> FitKind {
        let never_loose =
            self.greatest_clearance.is_negative() || self.greatest_clearance.is_zero();
        match (self.least_clearance.is_negative(), never_loose) {
            (false, _) => FitKind::Clearance,
            (true, true) => FitKind::Interference,
            (true, false) => FitKind::Transition,
        }
    }

    /// In words, in a unit, with as many decimals: `0.018…0.059 mm tight`, `0.021 mm tight to 0.010 mm loose`.
    #[must_use]
    #[translated]
    pub fn words(self, unit: Unit, places: u8) -> String {
        let (least, greatest) = (self.least_clearance, self.greatest_clearance);
        let figure = |span: Span| span.size().show(unit, places, Rounding::Nearest);
        let symbol = unit.symbol();
        let between = |one: String, other: String| {
            if one == other { one } else { format!("{one}…{other}") }
        };
        match self.kind() {
            FitKind::Clearance => {
                format!("{} {symbol} loose", between(figure(least), figure(greatest)))
            }
            FitKind::Interference => {
                format!("{} {symbol} tight", between(figure(greatest), figure(least)))
            }
            FitKind::Transition => {
                format!("{} {symbol} tight to {} {symbol} loose", figure(least), figure(greatest))
            }
        }
    }
}
