//! The greatest error a gauge's maker allows, as standards and papers state it.

use super::Edge;
use crate::kept::{Json, Kept, Refused};
use crate::language;
use crate::quantity::{Amount, Fault, Number, Reading, Span, Unit};
use pitleaf_translated::{tr, translated};
use std::fmt;

/// A percentage, in thousandths of a percent.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Percent(u32);

/// The greatest error, either way. `Size` is a [`Span`] to reckon with, or an [`Edge`] as it was typed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PermissibleError<Size = Span> {
    /// The same at every reading: a micrometer.
    Fixed(Size),
    /// A share of the reading: a torque wrench by ISO 6789-1.
    OfReading(Percent),
    /// A share of what the gauge shows at most: the class of a pressure gauge by EN 837-1.
    OfSpan(Percent, Size),
}

/// Why a permissible error was not taken.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum ErrorFault {
    /// Its size can't be read.
    Size(Fault),
    /// A percentage of nothing, of more than everything, or finer than a thousandth.
    Percent,
    /// Something behind the percent sign that is not understood.
    OfWhat,
    /// A leaf is not good to a share of its reading.
    Leaf,
}

impl Percent {
    /// Reads the figure before the sign: more than 0, at most 100, to a thousandth.
    fn read(text: &str) -> Result<Self, ErrorFault> {
        let number = Number::read(text).map_err(ErrorFault::Size)?;
        let thousandths = i128::from(number.numerator()) * 1000;
        let denominator = i128::from(number.denominator());
        let whole = (thousandths % denominator == 0).then_some(thousandths / denominator);
        whole
            .filter(|whole| (1..=100_000).contains(whole))
            .and_then(|whole| u32::try_from(whole).ok())
            .map(Self)
            .ok_or(ErrorFault::Percent)
    }

    /// As a factor.
    fn share(self) -> f64 {
        f64::from(self.0) / 100_000.0
    }
}

impl fmt::Display for Percent {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (whole, part) = (self.0 / 1000, format!("{:03}", self.0 % 1000));
        match part.trim_end_matches('0') {
            "" => write!(f, "{whole}"),
            part => write!(f, "{whole}.{part}"),
        }
    }
}

impl PermissibleError<Edge> {
    /// Reads `0.004 mm`, `4 %` of the reading, or `1.6 % of 1000 kPa`; `unit` holds where none is typed.
    ///
    /// # Errors
    /// An [`ErrorFault`] with the sentence to show.
    pub fn read(text: &str, unit: Unit) -> Result<Self, ErrorFault> {
        let size = |text: &str| Edge::read(text, unit).map_err(ErrorFault::Size);
        let Some((percent, of)) = text.split_once('%') else { return size(text).map(Self::Fixed) };
        let percent = Percent::read(percent)?;
        let of = of.trim();
        // "of" is how it stands in the book, in every language.
        match of.strip_prefix("of").or_else(|| of.strip_prefix(OF)) {
            _ if of.is_empty() => Ok(Self::OfReading(percent)),
            Some(span) => size(span).map(|span| Self::OfSpan(percent, span)),
            None => Err(ErrorFault::OfWhat),
        }
    }

    /// The unit of its size; none of a share of the reading.
    #[must_use]
    pub fn unit(&self) -> Option<Unit> {
        match self {
            Self::Fixed(size) | Self::OfSpan(_, size) => Some(size.unit()),
            Self::OfReading(_) => None,
        }
    }

    /// What to reckon with.
    #[must_use]
    pub fn spans(&self) -> PermissibleError {
        match self {
            Self::Fixed(size) => PermissibleError::Fixed(size.size()),
            Self::OfReading(percent) => PermissibleError::OfReading(*percent),
            Self::OfSpan(percent, size) => PermissibleError::OfSpan(*percent, size.size()),
        }
    }

    /// In words, with "of" as given.
    fn words(&self, of: &str) -> String {
        let edge = |edge: &Edge| format!("{} {}", edge.text(), edge.unit().symbol());
        match self {
            Self::Fixed(size) => edge(size),
            Self::OfReading(percent) => format!("{percent} %"),
            Self::OfSpan(percent, size) => format!("{percent} % {of} {}", edge(size)),
        }
    }
}

/// Between the percentage and what it is a share of.
const OF: &str = tr!("of");

impl From<Edge> for PermissibleError<Edge> {
    fn from(size: Edge) -> Self {
        Self::Fixed(size)
    }
}

impl fmt::Display for PermissibleError<Edge> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&language::figure(&self.words(OF)))
    }
}

impl Kept for PermissibleError<Edge> {
    fn json(&self) -> Json<'_> {
        Json::words(&self.words("of"))
    }

    fn of_json(json: &Json<'_>) -> Result<Self, Refused> {
        let text = json.text()?;
        let size = text.rsplit_once("of ").map_or(text, |(_, size)| size);
        match Reading::unit_behind(size) {
            // A share of the reading has no unit.
            None if !text.ends_with('%') => {
                Err(Refused::because(&tr!("a gauge’s error without its unit")))
            }
            unit => Self::read(text, unit.unwrap_or(Unit::Millimetre))
                .map_err(|fault| Refused::because(&fault)),
        }
    }
}

impl PermissibleError {
    /// How large it is at a reading, in `unit`; none where it is of another dimension.
    ///
    /// A share of the reading counts from the zero of the unit's scale.
    #[must_use]
    pub fn at(self, reading: Amount, unit: Unit) -> Option<f64> {
        let value =
            |span: Span| (span.dimension() == unit.dimension()).then(|| span.value(unit).abs());
        match self {
            Self::Fixed(span) => value(span),
            Self::OfReading(percent) => Some(percent.share() * reading.value(unit).abs()),
            Self::OfSpan(percent, span) => value(span).map(|span| percent.share() * span),
        }
    }

    /// As it is typed, in `unit`.
    #[must_use]
    pub fn text(self, unit: Unit) -> String {
        let figure = |span: Span| {
            // Of another unit's dimension there is nothing to show.
            if span.dimension() == unit.dimension() {
                format!("{} {}", span.shortest(unit, 6), unit.symbol())
            } else {
                String::new()
            }
        };
        match self {
            Self::Fixed(span) => figure(span),
            Self::OfReading(percent) => language::figure(&format!("{percent} %")),
            Self::OfSpan(percent, span) => {
                format!("{} % {OF} {}", language::figure(&percent.to_string()), figure(span))
            }
        }
    }
}

impl fmt::Display for ErrorFault {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Size(fault) => fault.fmt(f),
            Self::Percent => {
                f.write_str("A percentage lies above 0 and up to 100, with at most three decimals.")
            }
            Self::OfWhat => f.write_str(
                "Write 4 % for a share of the reading, or 1.6 % of 1000 kPa for a share of what the gauge shows at most.",
            ),
            Self::Leaf => f.write_str("A leaf is good to a length, not to a percentage. Give a length."),
        }
    }
}

impl std::error::Error for ErrorFault {}
