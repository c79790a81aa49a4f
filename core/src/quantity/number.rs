//! A number as typed: decimal or fraction, exact, with the step of its last digit.

use super::Fault;
use crate::language::DECIMAL_SIGN;

/// A typed number, `numerator / denominator`, not reduced: the denominator keeps how finely it was given.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Number {
    numerator: i64,
    denominator: i64,
}

/// Digits that can be held exactly in every unit.
const MOST_DIGITS: usize = 12;
/// The finest fraction of a unit that is read.
const FINEST_FRACTION: i64 = 128;
const GLYPHS: [(char, i64, i64); 9] = [
    ('½', 1, 2),
    ('¼', 1, 4),
    ('¾', 3, 4),
    ('⅛', 1, 8),
    ('⅜', 3, 8),
    ('⅝', 5, 8),
    ('⅞', 7, 8),
    ('⅓', 1, 3),
    ('⅔', 2, 3),
];

impl Number {
    /// Over the denominator.
    #[must_use]
    pub fn numerator(self) -> i64 {
        self.numerator
    }

    /// 10 to the number of decimals, or the fraction's own; one step of the last digit is its inverse.
    #[must_use]
    pub fn denominator(self) -> i64 {
        self.denominator
    }

    /// The nearest floating-point number, for reckoning; comparing goes by the whole numbers.
    #[must_use]
    #[expect(clippy::cast_precision_loss, reason = "twelve digits fit a float's 53 bits")]
    pub fn value(self) -> f64 {
        self.numerator as f64 / self.denominator as f64
    }

    /// The whole number, where the sign in a text may part thousands: three digits behind it, at most three
    /// before, and it is not the language's own decimal sign. It is read as the decimal one all the same.
    ///
    /// # Examples
    /// ```
    /// # if pitleaf_core::language::IS_GERMAN { return }
    /// use pitleaf_core::quantity::Number;
    /// assert_eq!(Number::with_thousands("1,234").as_deref(), Some("1234"));
    /// assert_eq!(Number::with_thousands("1.234"), None);
    /// assert_eq!(Number::with_thousands("0,234"), None);
    /// ```
    #[must_use]
    pub fn with_thousands(text: &str) -> Option<String> {
        let sign = if DECIMAL_SIGN == "." { ',' } else { '.' };
        let (whole, part) = text.trim().split_once(sign)?;
        let digits = |text: &str| text.bytes().all(|byte| byte.is_ascii_digit());
        let is_so = (1..=3).contains(&whole.len())
            && part.len() == 3
            && !whole.starts_with('0')
            && digits(whole)
            && digits(part);
        is_so.then(|| format!("{whole}{part}"))
    }

    /// Reads `0.002`, `,5`, `-1.25`, `1/64`, `1 1/8`, `1-1/8`, `2½`.
    ///
    /// # Errors
    /// [`Fault::Empty`], [`Fault::Unreadable`], [`Fault::TwoPoints`], [`Fault::Exponent`],
    /// [`Fault::TooManyDigits`], [`Fault::MinusZero`] and [`Fault::Fraction`].
    pub fn read(text: &str) -> Result<Self, Fault> {
        let text = text.trim();
        if text.is_empty() {
            return Err(Fault::Empty);
        }
        let (negative, digits) = match text.strip_prefix(['-', '−', '–']) {
            Some(rest) => (true, rest.trim_start()),
            None => (false, text.strip_prefix('+').unwrap_or(text).trim_start()),
        };
        if digits.is_empty() {
            return Err(Fault::unreadable(text));
        }
        let number =
            if digits.contains('/') || digits.chars().any(|c| GLYPHS.iter().any(|g| g.0 == c)) {
                fraction(digits)?
            } else {
                decimal(digits)?
            };
        match (negative, number.numerator) {
            (true, 0) => Err(Fault::MinusZero),
            (true, _) => Ok(Self { numerator: -number.numerator, ..number }),
            (false, _) => Ok(number),
        }
    }
}

fn decimal(text: &str) -> Result<Number, Fault> {
    let points = text.chars().filter(|c| matches!(c, '.' | ',')).count();
    if let Some(odd) = text.chars().find(|c| !c.is_ascii_digit() && !matches!(c, '.' | ',')) {
        let number_before_e =
            matches!(odd, 'e' | 'E') && text.starts_with(|c: char| c.is_ascii_digit());
        return Err(if number_before_e { Fault::Exponent } else { Fault::unreadable(text) });
    }
    if points > 1 {
        return Err(Fault::TwoPoints);
    }
    let (whole, part) = text.split_once(['.', ',']).unwrap_or((text, ""));
    if whole.is_empty() && part.is_empty() {
        return Err(Fault::unreadable(text));
    }
    if whole.len() + part.len() > MOST_DIGITS {
        return Err(Fault::TooManyDigits { most: MOST_DIGITS });
    }
    let numerator = whole
        .bytes()
        .chain(part.bytes())
        .fold(0_i64, |sum, digit| sum * 10 + i64::from(digit - b'0'));
    let denominator = part.bytes().fold(1_i64, |power, _| power * 10);
    Ok(Number { numerator, denominator })
}

fn fraction(text: &str) -> Result<Number, Fault> {
    let (whole, numerator, denominator) =
        match GLYPHS.iter().find_map(|g| Some((text.split_once(g.0)?, g))) {
            Some(((whole, ""), glyph)) => (whole.trim_end(), glyph.1, glyph.2),
            Some(_) => return Err(Fault::Fraction),
            None => {
                let (front, below) = text.split_once('/').ok_or(Fault::Fraction)?;
                let (whole, above) =
                    front.trim().rsplit_once([' ', '-']).unwrap_or(("", front.trim()));
                (whole.trim_end(), small(above)?, small(below.trim())?)
            }
        };
    let whole = if whole.is_empty() { 0 } else { small(whole)? };
    if denominator <= 0 || denominator > FINEST_FRACTION || numerator >= denominator && whole > 0 {
        return Err(Fault::Fraction);
    }
    Ok(Number { numerator: whole * denominator + numerator, denominator })
}

/// A whole number of at most five digits.
fn small(text: &str) -> Result<i64, Fault> {
    if text.is_empty() || text.len() > 5 || !text.bytes().all(|b| b.is_ascii_digit()) {
        return Err(Fault::Fraction);
    }
    Ok(text.bytes().fold(0, |sum, digit| sum * 10 + i64::from(digit - b'0')))
}
