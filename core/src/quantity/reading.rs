//! A reading: the text as typed, what it amounts to, and the step of its last digit.

use super::{Amount, Bounds, Fault, Number, Span, Unit};
use crate::letters;

/// A reading as a person typed it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Reading {
    text: String,
    unit: Unit,
    amount: Amount,
    step: Span,
}

impl Reading {
    /// Reads a typed text: a number, and behind it a unit if one was typed; else `unit` holds.
    ///
    /// # Errors
    /// A [`Fault`] with the sentence to show; nothing is guessed.
    ///
    /// # Examples
    /// *2 thou and 0.0508 mm are the same length:*
    /// ```
    /// use pitleaf_core::quantity::{Bounds, Reading, Unit};
    /// let thou = Reading::read("2 thou", Unit::Millimetre, &Bounds::GAP)?;
    /// let metric = Reading::read("0,0508", Unit::Millimetre, &Bounds::GAP)?;
    /// assert_eq!(thou.amount(), metric.amount());
    /// # Ok::<(), pitleaf_core::quantity::Fault>(())
    /// ```
    pub fn read(text: &str, unit: Unit, bounds: &'static Bounds) -> Result<Self, Fault> {
        let wanted = bounds.unit.dimension();
        let trimmed = text.trim();
        let (digits, suffix) = split_unit(trimmed);
        let typed = if suffix.is_empty() {
            unit
        } else if digits.is_empty() {
            return Err(Fault::unreadable(suffix));
        } else {
            match Unit::named(suffix) {
                Some(typed) => typed,
                None if looks_like_exponent(suffix) => return Err(Fault::Exponent),
                None => return Err(Fault::of_unit(suffix)),
            }
        };
        // Degrees behind a temperature are those of the scale that is set.
        let is_degrees = typed == Unit::Degree && matches!(unit, Unit::Celsius | Unit::Fahrenheit);
        let typed = if is_degrees && wanted == unit.dimension() { unit } else { typed };
        if typed.dimension() != wanted {
            return Err(Fault::OtherDimension { typed, wanted });
        }
        let number = Number::read(digits)?;
        let amount = Amount::exact(number.numerator(), number.denominator(), typed)
            .ok_or(Fault::TooFine(typed))?;
        let step = Span::part(number.denominator(), typed).ok_or(Fault::TooFine(typed))?;
        if amount.ticks() < bounds.least().ticks() || amount.ticks() > bounds.greatest().ticks() {
            return Err(Fault::OutOfBounds { bounds, unit: typed });
        }
        Ok(Self { text: trimmed.to_owned(), unit: typed, amount, step })
    }

    /// The unit typed behind a number, if there is one that is known.
    #[must_use]
    pub fn unit_behind(text: &str) -> Option<Unit> {
        Unit::named(split_unit(text.trim()).1)
    }

    /// The unit in which a typed text is read: the one behind it, if it is one of what is measured; else the one
    /// set.
    ///
    /// # Examples
    /// ```
    /// use pitleaf_core::quantity::{Reading, Unit};
    /// assert_eq!(Reading::unit_of(".0025\"", Unit::Thou), Unit::Inch);
    /// assert_eq!(Reading::unit_of("2½", Unit::Thou), Unit::Thou);
    /// assert_eq!(Reading::unit_of("3 N·m", Unit::Thou), Unit::Thou);
    /// ```
    #[must_use]
    pub fn unit_of(text: &str, set: Unit) -> Unit {
        let typed = Self::unit_behind(text);
        typed.filter(|typed| typed.dimension() == set.dimension()).unwrap_or(set)
    }

    /// A typed text with the unit behind it taken off; none where there is none that is known.
    #[must_use]
    pub fn without_unit(text: &str) -> Option<String> {
        Self::unit_behind(text).map(|_| Self::number_of(text).to_owned())
    }

    /// A typed text without the letters behind it.
    #[must_use]
    pub fn number_of(text: &str) -> &str {
        split_unit(text.trim()).0
    }

    /// A bare number with this unit behind it; none where the text names a unit, or no number stands in it.
    ///
    /// # Examples
    /// ```
    /// use pitleaf_core::quantity::{Reading, Unit};
    /// assert_eq!(Reading::with_unit_named(" 2½", Unit::Thou).as_deref(), Some("2½ thou"));
    /// assert_eq!(Reading::with_unit_named("0.05 mm", Unit::Thou), None);
    /// assert_eq!(Reading::with_unit_named("1/0", Unit::Thou), None);
    /// ```
    #[must_use]
    pub fn with_unit_named(text: &str, unit: Unit) -> Option<String> {
        let (digits, suffix) = split_unit(text.trim());
        let is_bare = suffix.is_empty() && Number::read(digits).is_ok();
        is_bare.then(|| format!("{digits} {}", unit.symbol()))
    }

    /// As typed, without outer spaces.
    #[must_use]
    pub fn text(&self) -> &str {
        &self.text
    }

    /// The number alone as typed, without a unit behind it.
    #[must_use]
    pub fn number(&self) -> &str {
        split_unit(&self.text).0
    }

    /// The unit typed, or the one that was set.
    #[must_use]
    pub fn unit(&self) -> Unit {
        self.unit
    }

    /// Exactly what it amounts to.
    #[must_use]
    pub fn amount(&self) -> Amount {
        self.amount
    }

    /// One step of the last digit given: the reading's own resolution.
    #[must_use]
    pub fn step(&self) -> Span {
        self.step
    }
}

/// Splits the number from the unit behind it.
fn split_unit(text: &str) -> (&str, &str) {
    let end = text
        .char_indices()
        .find(|(_, c)| letters::is_letter(*c) || matches!(c, '"' | '″' | '°' | '′' | '\''))
        .map_or(text.len(), |(place, _)| place);
    (text[..end].trim_end(), text[end..].trim())
}

/// `e9`, `E-3`: a power of ten behind a number.
fn looks_like_exponent(suffix: &str) -> bool {
    let rest = suffix.strip_prefix(['e', 'E']).map(|rest| rest.trim_start_matches(['+', '-', '−']));
    rest.is_some_and(|digits| !digits.is_empty() && digits.bytes().all(|b| b.is_ascii_digit()))
}
