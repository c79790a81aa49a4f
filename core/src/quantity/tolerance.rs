//! A drawing's `11 ± 0.3`, and what a gauge in another unit may show.

use super::{Amount, Bounds, Fault, Reading, Rounding, Span, Unit, places_for};
use crate::gather::Gather;

/// Two limits from a nominal size and its tolerance.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Tolerance {
    lower: Amount,
    upper: Amount,
    step: Span,
}

/// The lower and the upper limit as figures.
pub(super) type Figures = (String, String);

impl Tolerance {
    /// Reads `11 ± 0.3`, in the unit typed behind or the one set.
    ///
    /// # Errors
    /// The [`Fault`] of either number, or of a limit out of bounds.
    pub fn read(text: &str, unit: Unit, bounds: &'static Bounds) -> Result<Self, Fault> {
        let (nominal, tolerance) = text.split_once('±').ok_or(Fault::Empty)?;
        let tolerance = Reading::read(tolerance, unit, bounds)?;
        let nominal = Reading::read(nominal, tolerance.unit(), bounds)?;
        let width = tolerance.amount().minus(Amount::whole(0, tolerance.unit()));
        if width.is_negative() {
            return Err(Fault::unreadable(text));
        }
        let lower = nominal.amount().plus(width.opposite());
        let upper = nominal.amount().plus(width);
        let step = if nominal.step().ticks() < tolerance.step().ticks() {
            nominal.step()
        } else {
            tolerance.step()
        };
        Ok(Self { lower, upper, step })
    }

    /// The lower and upper limit, exactly.
    #[must_use]
    pub fn edges(&self) -> (Amount, Amount) {
        (self.lower, self.upper)
    }

    /// The limits with a number of decimals of a unit, rounded inward (ANSI/IEEE 268, now IEEE/ASTM SI 10).
    #[must_use]
    pub fn inward(&self, unit: Unit, places: u8) -> Figures {
        (self.lower.show(unit, places, Rounding::Up), self.upper.show(unit, places, Rounding::Down))
    }

    /// The limits in every unit: as a gauge is read, and with one decimal more.
    #[must_use]
    pub fn limits(&self) -> Vec<(Unit, Figures, Figures)> {
        self.lower
            .dimension()
            .units()
            .map(|unit| {
                let fine = places_for(self.step, unit);
                (unit, self.inward(unit, fine.saturating_sub(1)), self.inward(unit, fine))
            })
            .gather()
    }
}
