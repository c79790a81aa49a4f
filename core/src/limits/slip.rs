//! Slips: a figure meant in another unit, or with its point elsewhere. Asked about, never assumed.

use super::Limit;
use crate::language;
use crate::quantity::{Amount, Bounds, Dimension, Fault, Number, Reading, Unit};
use pitleaf_translated::translated;
use std::fmt;

/// What a figure that is out of place may have been meant as.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Slip {
    /// The figure is right in this other unit.
    Unit(Unit),
    /// The decimal point stands this many powers of ten off.
    DecimalPoint(i8),
    /// The sign before the last three digits parts thousands.
    Thousands,
    /// A fraction typed under a metric unit.
    Fraction,
    /// So far off that the figure may belong to another limit; nothing near it fits.
    Elsewhere,
}

/// One way a figure may have been meant: what to put in its place, and the unit to read it in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Meant {
    /// The figure alone.
    pub text: String,
    /// Its unit.
    pub unit: Unit,
}

/// A question about what was typed, with the ways it may have been meant, likeliest first.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Question {
    /// The question; empty where the text is refused, which is sentence enough.
    pub words: String,
    /// The ways, at most two.
    pub ways: Vec<Meant>,
}

/// Ways offered at once.
const MOST_WAYS: usize = 2;

/// What to ask about a typed text before it is believed; none where it fits its limit, or says nothing.
///
/// `unit` and `bounds` as in [`Reading::read`]. A text that is refused may still fit in another unit.
#[must_use]
pub fn question(
    limit: &Limit,
    typed: &str,
    unit: Unit,
    bounds: &'static Bounds,
) -> Option<Question> {
    match Reading::read(typed, unit, bounds) {
        Ok(reading) => Question::about(limit, &reading),
        Err(Fault::TooFine(refused) | Fault::OutOfBounds { unit: refused, .. }) => {
            let ways = readable_in(limit, typed, refused, bounds);
            (!ways.is_empty()).then_some(Question { words: String::new(), ways })
        }
        Err(_) => None,
    }
}

/// What a reading may have been meant as, likeliest first; empty where it is in place.
///
/// A reading is out of place where it lies beyond the reach of its limit: past a limit with two edges by
/// more than its width or under a third of its lower edge, over twice an upper edge, under half or over
/// twice a lower edge alone. Units that differ by less than that can't be told apart. Our own choice.
/// Under an upper edge alone, a figure with more digits than any gauge in that unit shows is out of place too.
#[must_use]
pub fn slips(limit: &Limit, reading: &Reading) -> Vec<Slip> {
    let Some(reach) = Reach::of(limit) else { return Vec::new() };
    let Ok(number) = Number::read(reading.number()) else { return Vec::new() };
    let is_beyond = !reach.holds(reading.amount());
    let is_too_fine = !is_beyond && reach.starts_at_zero && is_finer_than_gauges(reading);
    if number.numerator() <= 0 || !(is_beyond || is_too_fine) {
        return Vec::new();
    }
    let fits = |amount: Amount| limit.holds(amount) && reach.holds(amount);
    let unit = reading.unit();
    let units = || {
        let others =
            unit.dimension().units().filter(move |other| *other != unit && is_usual(*other));
        others.filter_map(|other| {
            let amount = Amount::exact(number.numerator(), number.denominator(), other)?;
            // Too fine a figure was never meant finer still.
            (is_beyond || amount > reading.amount()).then_some((Slip::Unit(other), amount))
        })
    };
    let is_natural =
        |(slip, _): &(Slip, _)| !matches!(slip, Slip::Unit(unit) if !is_written_so(number, *unit));
    let points = |powers: &'static [i8]| {
        let moved = powers
            .iter()
            .filter_map(|&power| Some((Slip::DecimalPoint(power), moved(number, power, unit)?)));
        moved.filter(|_| is_beyond)
    };
    let thousands = || {
        let whole = Number::read(&Number::with_thousands(reading.number())?).ok()?;
        let amount = Amount::exact(whole.numerator(), whole.denominator(), unit)?;
        is_beyond.then_some((Slip::Thousands, amount))
    };
    let mut found: Vec<(Slip, Amount)> = thousands()
        .into_iter()
        .chain(units().filter(is_natural))
        .chain(points(&[1, -1, 2, -2]))
        .chain(units().filter(|way| !is_natural(way)))
        .chain(points(&[3, -3]))
        .filter(|(_, amount)| fits(*amount))
        .collect();
    if found.is_empty() {
        // A worn part's figure misses its limit in the right unit too.
        let near = units().filter(is_natural).chain(thousands());
        found = near.filter(|(_, amount)| reach.holds(*amount)).collect();
    }
    let mut slips = Vec::new();
    for (place, (slip, amount)) in found.iter().enumerate() {
        // A point moved by three and inches for thou are the same figure.
        if slips.len() < MOST_WAYS && !found[..place].iter().any(|(_, before)| before == amount) {
            slips.push(*slip);
        }
    }
    if slips.is_empty() && reach.is_far_from(reading.amount()) {
        slips.push(Slip::Elsewhere);
    }
    slips
}

/// What to ask about a figure that no limit is at hand for, where it can be read in two ways: a fraction under a
/// metric unit, or a sign that may part thousands.
#[must_use]
pub fn two_readings(typed: &str, unit: Unit, bounds: &'static Bounds) -> Option<Question> {
    let reading = Reading::read(typed, unit, bounds).ok()?;
    let slip = Slip::in_fraction(&reading).or_else(|| {
        let whole = Number::with_thousands(reading.number())?;
        Reading::read(&whole, reading.unit(), bounds).is_ok().then_some(Slip::Thousands)
    })?;
    let words = slip.asked(&reading);
    Some(Question { words, ways: slip.meant(&reading).into_iter().collect() })
}

impl Question {
    /// What to ask about a reading; none where it is in place.
    #[must_use]
    pub fn about(limit: &Limit, reading: &Reading) -> Option<Self> {
        let slips = match Slip::in_fraction(reading) {
            Some(slip) => vec![slip],
            None => slips(limit, reading),
        };
        let words = slips.first()?.asked(reading);
        Some(Self { words, ways: slips.iter().filter_map(|slip| slip.meant(reading)).collect() })
    }
}

impl Slip {
    /// A fraction with a bar under a metric unit, where none was typed behind it.
    fn in_fraction(reading: &Reading) -> Option<Self> {
        let is_bare = reading.text() == reading.number();
        let is_metric = matches!(
            reading.unit(),
            Unit::Millimetre | Unit::Micrometre | Unit::Centimetre | Unit::Metre
        );
        (is_bare && is_metric && reading.number().contains('/')).then_some(Self::Fraction)
    }

    /// What to put in place of a reading; none where that can't be said.
    #[must_use]
    pub fn meant(self, reading: &Reading) -> Option<Meant> {
        let own = reading.unit();
        let number = || reading.number().to_owned();
        Some(match self {
            Self::Unit(unit) => Meant { text: number(), unit },
            Self::Fraction => Meant { text: number(), unit: Unit::Inch },
            Self::Thousands => Meant { text: Number::with_thousands(reading.number())?, unit: own },
            Self::DecimalPoint(power) => {
                let amount = moved(Number::read(reading.number()).ok()?, power, own)?;
                Meant { text: amount.exact_figure(own, 9)?, unit: own }
            }
            Self::Elsewhere => return None,
        })
    }

    /// The question it puts.
    #[translated]
    fn asked(self, reading: &Reading) -> String {
        match self {
            Self::Unit(unit) => format!("Far off. Was that {}?", unit.symbol()),
            Self::DecimalPoint(_) => "Far off. Did the decimal point slip?".to_owned(),
            Self::Thousands => {
                let whole = Number::with_thousands(reading.number()).unwrap_or_default();
                format!("Read as {}. Was that {whole}?", reading.number())
            }
            Self::Fraction => "Fractions are usually of an inch. Was that in?".to_owned(),
            Self::Elsewhere => {
                "Far off. Check the figure, its unit, and that this is the right limit.".to_owned()
            }
        }
    }
}

impl fmt::Display for Meant {
    /// As the key that reads it so says it.
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "Read as {} {}", language::figure(&self.text), self.unit.symbol())
    }
}

/// The units in which a refused figure makes sense, those that fit the limit first.
fn readable_in(limit: &Limit, typed: &str, unit: Unit, bounds: &'static Bounds) -> Vec<Meant> {
    let text = Reading::number_of(typed);
    let Ok(number) = Number::read(text) else { return Vec::new() };
    let reach = Reach::of(limit);
    let near: Vec<(Amount, Meant)> = unit
        .dimension()
        .units()
        .filter(|other| *other != unit && is_usual(*other) && is_written_so(number, *other))
        .filter_map(|other| {
            let amount = Reading::read(text, other, bounds).ok()?.amount();
            let is_likely = reach.as_ref().is_none_or(|reach| reach.holds(amount));
            is_likely.then(|| (amount, Meant { text: text.to_owned(), unit: other }))
        })
        .collect();
    let (fit, miss): (Vec<_>, Vec<_>) =
        near.into_iter().partition(|(amount, _)| limit.holds(*amount));
    fit.into_iter().chain(miss).map(|(_, meant)| meant).take(MOST_WAYS).collect()
}

/// How far from its limit a reading may lie before it is doubted.
struct Reach {
    low: f64,
    high: f64,
    unit: Unit,
    /// No edge below: any small reading meets.
    starts_at_zero: bool,
}

impl Reach {
    /// None where the limit has no edge, or lies about zero with one edge alone.
    fn of(limit: &Limit) -> Option<Self> {
        let unit = limit.unit()?;
        let at = |edge: &Option<super::Edge>| edge.as_ref().map(|edge| edge.amount().value(unit));
        let (mut lower, mut upper) = (at(&limit.lower), at(&limit.upper));
        // What is worn but not yet done is in place.
        let wear = at(&limit.wear);
        if limit.wears_upwards() {
            upper = wear.or(upper);
        } else {
            lower = wear.or(lower);
        }
        let reach = |low: f64, high: f64, starts_at_zero: bool| {
            Some(Self { low, high, unit, starts_at_zero })
        };
        match (lower, upper) {
            (Some(lower), Some(upper)) => {
                let width = upper - lower;
                let least = if lower > 0.0 && unit.dimension() != Dimension::Temperature {
                    (lower - width).max(lower / 3.0)
                } else {
                    lower - width
                };
                reach(least, upper + width, false)
            }
            (None, Some(upper)) if upper > 0.0 => reach(0.0, upper * 2.0, true),
            (Some(lower), None) if lower > 0.0 => {
                let fresh = at(&limit.lower).unwrap_or(lower);
                reach(lower / 2.0, fresh * 2.0, false)
            }
            _ => None,
        }
    }

    fn holds(&self, amount: Amount) -> bool {
        (self.low..=self.high).contains(&amount.value(self.unit))
    }

    /// Ten times past it: more than wear or a bad fit explains.
    fn is_far_from(&self, amount: Amount) -> bool {
        let value = amount.value(self.unit);
        value > self.high * 10.0 || value < self.low / 10.0
    }
}

/// Units of parts and their gauges: a figure in one of the others is a moved point.
fn is_usual(unit: Unit) -> bool {
    !matches!(unit, Unit::Centimetre | Unit::Metre | Unit::Foot | Unit::Pascal | Unit::Hectopascal)
}

/// Whether a shop writes such a figure in such a unit: a quarter of a thou is not read, nor a tenth of a
/// micrometre. Common practice, no source.
fn is_written_so(number: Number, unit: Unit) -> bool {
    let least = match unit {
        Unit::Thou => 0.5,
        Unit::Micrometre => 1.0,
        Unit::Millimetre => 0.005,
        Unit::Inch => 0.0001,
        _ => 0.0,
    };
    number.value() >= least
}

/// Whether a reading has finer digits than any gauge in its unit shows: 0.001 mm, 0.0001 in.
/// Common practice, no source.
fn is_finer_than_gauges(reading: &Reading) -> bool {
    let unit = reading.unit();
    let finest = match unit {
        Unit::Millimetre => 0.001,
        Unit::Inch => 0.0001,
        Unit::Thou | Unit::Micrometre => 0.1,
        _ => return false,
    };
    reading.step().value(unit) < finest * 0.999
}

fn moved(number: Number, power: i8, unit: Unit) -> Option<Amount> {
    let times = 10_i64.checked_pow(u32::from(power.unsigned_abs()))?;
    let (top, bottom) = (number.numerator(), number.denominator());
    if power > 0 {
        Amount::exact(top.checked_mul(times)?, bottom, unit)
    } else {
        Amount::exact(top, bottom.checked_mul(times)?, unit)
    }
}
