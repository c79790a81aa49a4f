//! A binary number to a few decimals, by whole numbers: the library's own float printing would be
//! a good part of what a phone downloads.

use crate::language;
use std::fmt;

/// A number to so many decimals, the last one to nearest.
pub(crate) struct Decimal(pub(crate) f64, pub(crate) u8);

impl fmt::Display for Decimal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self(value, places) = *self;
        let below = 10_u64.pow(u32::from(places));
        let scaled = (value.abs() * below as f64).round();
        if value.is_nan() {
            return f.write_str("NaN");
        }
        let sign = if value < 0.0 && scaled > 0.0 { "-" } else { "" };
        if scaled >= 1e18 {
            return write!(f, "{sign}inf");
        }
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "within 0 … 1e18"
        )]
        let whole = scaled as u64;
        if places == 0 {
            return write!(f, "{sign}{whole}");
        }
        write!(f, "{sign}{}.{:0width$}", whole / below, whole % below, width = usize::from(places))
    }
}

/// A number to so many decimals as it is shown, with the language's decimal sign.
pub(crate) fn shown(value: f64, places: u8) -> String {
    let text = Decimal(value, places).to_string();
    if language::IS_GERMAN { text.replace('.', ",") } else { text }
}

#[cfg(test)]
mod tests {
    use super::Decimal;

    #[track_caller]
    fn shown(value: f64, places: u8, wanted: &str) {
        assert_eq!(Decimal(value, places).to_string(), wanted, "{value} to {places} decimals");
    }

    #[test]
    fn decimals_to_nearest() {
        shown(0.0, 3, "0.000");
        shown(-0.0004, 3, "0.000");
        shown(-0.0006, 3, "-0.001");
        shown(1.9996, 3, "2.000");
        shown(9.615_384, 3, "9.615");
        shown(-12.5, 0, "-13");
        shown(102.05, 1, "102.1");
    }

    #[test]
    fn what_is_no_number_says_so() {
        shown(f64::NAN, 2, "NaN");
        shown(f64::INFINITY, 2, "inf");
        shown(f64::NEG_INFINITY, 2, "-inf");
    }
}
