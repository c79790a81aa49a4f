//! Drills by the names a shop uses: millimetres, fractions of an inch, numbers, letters.

use super::drill_rows::{LETTERS, NUMBERS};
use crate::language::IS_GERMAN;
use crate::letters;
use crate::quantity::{Amount, Number, Span, Unit};
use pitleaf_translated::tr;
use std::fmt;

/// A drill.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Drill {
    /// Hundredths of a millimetre.
    Metric(u16),
    /// Sixty-fourths of an inch.
    Fraction(u8),
    /// Number 1 to 60.
    Number(u8),
    /// Letter A to Z.
    Letter(char),
}

/// The four ways drills are sized.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum DrillKind {
    /// Millimetres, by tenths.
    Metric,
    /// Fractions of an inch, by sixty-fourths.
    Fraction,
    /// Numbers.
    Number,
    /// Letters.
    Letter,
}

/// The finest metric drills on a shop's shelf go by tenths.
const METRIC_STEP: u16 = 10;
/// 32 mm: above the largest port's drill.
const METRIC_MOST: u16 = 3200;
/// 1 1/4 in.
const FRACTION_MOST: u8 = 80;

impl Drill {
    /// Every drill, by kind.
    pub fn all() -> impl Iterator<Item = Self> {
        let metric = (1..=METRIC_MOST / METRIC_STEP).skip(9).map(|n| Self::Metric(n * METRIC_STEP));
        let fractions = (1..=FRACTION_MOST).map(Self::Fraction);
        let numbers = (1..=60).map(Self::Number);
        metric.chain(fractions).chain(numbers).chain(('A'..='Z').map(Self::Letter))
    }

    /// Its kind.
    #[must_use]
    pub fn kind(self) -> DrillKind {
        match self {
            Self::Metric(_) => DrillKind::Metric,
            Self::Fraction(_) => DrillKind::Fraction,
            Self::Number(_) => DrillKind::Number,
            Self::Letter(_) => DrillKind::Letter,
        }
    }

    /// Its diameter, exactly; none for a number or letter there is no drill of.
    #[must_use]
    pub fn diameter(self) -> Option<Amount> {
        let of_inch = |sizes: &[u16], place: Option<usize>| {
            Amount::exact(i64::from(*sizes.get(place?)?), 10_000, Unit::Inch)
        };
        match self {
            Self::Metric(hundredths) => Amount::exact(hundredths.into(), 100, Unit::Millimetre),
            Self::Fraction(count) => Amount::exact(count.into(), 64, Unit::Inch),
            Self::Number(number) => of_inch(&NUMBERS, usize::from(number).checked_sub(1)),
            Self::Letter(letter) => of_inch(&LETTERS, (letter as usize).checked_sub('A' as usize)),
        }
    }

    /// The drill a shop calls so: `8.5`, `8,5 mm`, `25/64`, `#7`, `no. 7`, `number 7`, `F`, `letter F`.
    ///
    /// A bare number is millimetres.
    #[must_use]
    pub fn named(text: &str) -> Option<Self> {
        let lower = letters::lower(text.trim());
        let text = lower.strip_suffix("drill").unwrap_or(&lower).trim();
        let number = ["#", "no.", "no", "number", "nr.", "nr"]
            .iter()
            .find_map(|word| text.strip_prefix(word))
            .and_then(|rest| rest.trim().parse().ok());
        let letter =
            text.strip_prefix("letter").or(text.strip_prefix("buchstabe")).unwrap_or(text).trim();
        let mut letters = letter.chars();
        let drill = if let Some(number) = number {
            Self::Number(number)
        } else if let (Some(letter @ 'a'..='z'), None) = (letters.next(), letters.next()) {
            Self::Letter(letter.to_ascii_uppercase())
        } else {
            Self::sized(text)?
        };
        drill.diameter().map(|_| drill)
    }

    fn sized(text: &str) -> Option<Self> {
        let bare =
            text.trim_end_matches(['"', '″']).trim_end_matches("inch").trim_end_matches("in");
        let inches = bare.len() < text.len() || bare.contains('/');
        let number = Number::read(bare.trim_end_matches("mm").trim()).ok()?;
        let per = if inches { 64 } else { 100 };
        let scaled = number.numerator().checked_mul(per)?;
        if scaled <= 0 || scaled % number.denominator() != 0 {
            return None;
        }
        let count = scaled / number.denominator();
        if inches {
            let count = u8::try_from(count).ok().filter(|count| *count <= FRACTION_MOST)?;
            Some(Self::Fraction(count))
        } else {
            let count = u16::try_from(count).ok().filter(|count| *count <= METRIC_MOST)?;
            Some(Self::Metric(count))
        }
    }
}

impl Drill {
    /// As it is said; [`Display`](fmt::Display) is its name in addresses.
    #[must_use]
    pub fn said(self) -> String {
        match self {
            Self::Metric(_) if IS_GERMAN => self.to_string().replace('.', ","),
            Self::Metric(_) | Self::Fraction(_) => self.to_string(),
            Self::Number(number) => tr!("no. {number}"),
            Self::Letter(letter) => tr!("letter {letter}"),
        }
    }
}

impl fmt::Display for Drill {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Metric(hundredths) if hundredths % 10 == 0 => {
                write!(f, "{}.{} mm", hundredths / 100, hundredths / 10 % 10)
            }
            Self::Metric(hundredths) => {
                write!(f, "{}.{:02} mm", hundredths / 100, hundredths % 100)
            }
            Self::Fraction(count) => {
                let (whole, rest) = (count / 64, count % 64);
                let shift = rest.trailing_zeros().min(6);
                match (whole, rest) {
                    (whole, 0) => write!(f, "{whole} in"),
                    (0, rest) => write!(f, "{}/{} in", rest >> shift, 64_u8 >> shift),
                    (whole, rest) => write!(f, "{whole} {}/{} in", rest >> shift, 64_u8 >> shift),
                }
            }
            Self::Number(number) => write!(f, "no. {number}"),
            Self::Letter(letter) => write!(f, "letter {letter}"),
        }
    }
}

/// The nearest drill of each kind, nearest first, with what it is larger by.
///
/// A kind that has nothing within a tenth of the diameter is left out.
#[must_use]
pub fn nearest_drills(diameter: Amount) -> Vec<(Drill, Span)> {
    let kinds = [DrillKind::Metric, DrillKind::Fraction, DrillKind::Number, DrillKind::Letter];
    let size = |span: &Span| span.size().value(Unit::Millimetre);
    let mut found: Vec<(Drill, Span)> = kinds
        .into_iter()
        .filter_map(|kind| {
            Drill::all()
                .filter(|drill| drill.kind() == kind)
                .filter_map(|drill| Some((drill, drill.diameter()?.minus(diameter))))
                .min_by(|a, b| size(&a.1).total_cmp(&size(&b.1)))
        })
        .filter(|(_, span)| size(span) <= diameter.value(Unit::Millimetre) / 10.0)
        .collect();
    found.sort_by(|a, b| size(&a.1).total_cmp(&size(&b.1)));
    found
}
