//! Amounts as text: to nearest for a reading, inward for a limit, never a raw float.

use super::{Amount, Span, Unit};
use crate::language::DECIMAL_SIGN;

/// Which way the last shown digit goes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Rounding {
    /// To the nearest, ties to even (NIST SP 811, B.7.1). For readings.
    Nearest,
    /// Towards minus infinity. For an upper limit: what is shown never admits more.
    Down,
    /// Towards plus infinity. For a lower limit.
    Up,
}

impl Amount {
    /// The figure in a unit with a number of decimals, without the unit's symbol.
    #[must_use]
    pub fn show(self, unit: Unit, places: u8, rounding: Rounding) -> String {
        debug_assert_eq!(
            self.dimension(),
            unit.dimension(),
            "a figure needs its own dimension’s unit"
        );
        figure(self.ticks() - unit.zero(), unit.ticks(), places, rounding)
    }

    /// The figure a reading of this step is shown as: exact if one digit more than a tenth of the step
    /// is enough for that, otherwise to nearest.
    #[must_use]
    pub fn readable(self, unit: Unit, step: Span) -> String {
        let places = places_for(step, unit);
        self.exact_figure(unit, places + 1)
            .unwrap_or_else(|| self.show(unit, places, Rounding::Nearest))
    }

    /// Whether `places` decimals of a unit tell the amount exactly.
    #[must_use]
    pub fn is_exact(self, unit: Unit, places: u8) -> bool {
        let rest = (self.ticks() - unit.zero()) % unit.ticks();
        (0..places).fold(rest, |rest, _| rest * 10 % unit.ticks()) == 0
    }

    /// The exact figure with no more decimals than it needs, if `most` decimals are enough.
    #[must_use]
    pub fn exact_figure(self, unit: Unit, most: u8) -> Option<String> {
        (0..=most)
            .find(|&places| self.is_exact(unit, places))
            .map(|places| self.show(unit, places, Rounding::Nearest))
    }
}

impl Span {
    /// The figure with no more decimals than it needs to be exact, or `most` to nearest.
    #[must_use]
    pub fn shortest(self, unit: Unit, most: u8) -> String {
        let exact = (0..most).find(|&places| self.ticks() * power(places) % unit.ticks() == 0);
        self.show(unit, exact.unwrap_or(most), Rounding::Nearest)
    }

    /// The figure in a unit with a number of decimals, without the unit's symbol.
    #[must_use]
    pub fn show(self, unit: Unit, places: u8, rounding: Rounding) -> String {
        debug_assert_eq!(
            self.dimension(),
            unit.dimension(),
            "a figure needs its own dimension’s unit"
        );
        figure(self.ticks(), unit.ticks(), places, rounding)
    }
}

/// Decimals of `unit` that keep a tenth of `step`, at most nine: enough that nobody is misled, not more.
#[must_use]
pub fn places_for(step: Span, unit: Unit) -> u8 {
    const MOST: u8 = 9;
    (0..MOST).find(|&places| unit.ticks() * 10 <= step.ticks() * power(places)).unwrap_or(MOST)
}

/// A length in thou as a shop says it: `2½`, `¾`, `12`; decimals where quarters don't do.
#[must_use]
pub fn thou_words(amount: Amount) -> String {
    let quarters = amount.ticks() * 4;
    let thou = Unit::Thou.ticks();
    if quarters % thou != 0 || quarters < 0 {
        return amount.show(Unit::Thou, 2, Rounding::Nearest);
    }
    let quarters = quarters / thou;
    let part = ["", "¼", "½", "¾"][usize::try_from(quarters % 4).unwrap_or(0)];
    match quarters / 4 {
        0 if !part.is_empty() => part.to_owned(),
        whole => format!("{whole}{part}"),
    }
}

/// A figure without the zeros at its end, and without a decimal sign that nothing follows.
pub(crate) fn without_zeros(figure: &str) -> &str {
    if figure.contains(DECIMAL_SIGN) {
        figure.trim_end_matches('0').trim_end_matches(DECIMAL_SIGN)
    } else {
        figure
    }
}

fn power(places: u8) -> i128 {
    10_i128.pow(u32::from(places))
}

fn figure(ticks: i128, unit: i128, places: u8, rounding: Rounding) -> String {
    // Digit by digit: scaled at once, a large amount would pass what an i128 holds.
    let (mut floor, mut rest) = (ticks.div_euclid(unit), ticks.rem_euclid(unit));
    for _ in 0..places {
        floor = floor * 10 + rest * 10 / unit;
        rest = rest * 10 % unit;
    }
    let rounded = match rounding {
        Rounding::Down => floor,
        Rounding::Up => floor + i128::from(rest > 0),
        Rounding::Nearest => {
            floor + i128::from(rest * 2 > unit || rest * 2 == unit && floor % 2 != 0)
        }
    };
    let sign = if rounded < 0 { "−" } else { "" };
    let size = rounded.unsigned_abs();
    let below = power(places).unsigned_abs();
    match places {
        0 => format!("{sign}{size}"),
        _ => {
            let width = usize::from(places);
            format!("{sign}{}{DECIMAL_SIGN}{:0width$}", size / below, size % below)
        }
    }
}
