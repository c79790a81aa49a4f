//! A verdict in words, for the screen and for reading out.

use super::{Call, Edge, Gauge, Limit, Side, Verdict};
use crate::letters::capital;
use crate::quantity::{Amount, Dimension, Reading, Rounding, Span, Unit, places_for};
use pitleaf_translated::translated;

impl Call {
    /// The verdict in a few words.
    #[must_use]
    #[translated]
    pub fn word(self) -> &'static str {
        match self {
            Self::Meets => "Meets",
            Self::DoesNotMeet(_) => "Does not meet",
            Self::TooClose => "Too close to call",
        }
    }
}

impl Verdict {
    /// How far from each edge, what the gauge's doubt does to it, and whether wear has ended the part.
    #[must_use]
    #[translated]
    pub fn explain(&self, limit: &Limit, reading: &Reading, gauge: &Gauge) -> String {
        let unit = reading.unit();
        let mut pieces = Vec::new();
        match self.call {
            Call::Meets | Call::TooClose => pieces.push(self.distances(reading)),
            Call::DoesNotMeet(side) => {
                let (span, words) = match side {
                    Side::Below => (self.above_lower, "under the lower limit"),
                    Side::Above => (self.below_upper, "over the upper limit"),
                };
                if let Some(span) = span {
                    pieces.push(format!("{} {} {words}.", short(span, reading), unit.symbol()));
                }
            }
        }
        if self.call == Call::TooClose {
            pieces.push(self.too_close(reading, gauge));
        }
        pieces.extend(self.wear(limit, reading));
        if self.is_stated {
            pieces.push(format!(
                "{} doubt ±{} {}.",
                capital(gauge.kind.name()),
                doubt(self.guard, reading.unit()),
                unit.symbol()
            ));
        }
        if limit.unit().is_some_and(|own| own != unit) {
            pieces.push(format!("The limit as written: {}.", limit_as_written(limit)));
        }
        pieces.join(" ")
    }

    /// How it stands to the wear limit, where it lies on the worn side of the others.
    #[translated]
    fn wear(&self, limit: &Limit, reading: &Reading) -> Option<String> {
        let line = wear_line(limit, reading.unit());
        let worn = if limit.wears_upwards() { Side::Above } else { Side::Below };
        let is_worn = self.call == Call::DoesNotMeet(worn);
        match self.worn_out? {
            past if (is_worn || past) && self.wear_is_close => {
                Some(format!("Too close to call against {line}."))
            }
            true => Some(format!("Past {line}.")),
            false if is_worn => Some(format!("Not past {line}.")),
            false => None,
        }
    }

    /// What to do about a reading that proves nothing. Where fewer digits were typed than the gauge shows,
    /// that is the first thing to mend.
    #[translated]
    fn too_close(&self, reading: &Reading, gauge: &Gauge) -> String {
        let (step, unit) = (reading.step(), reading.unit());
        if !self.is_stated {
            return format!(
                "Nothing is known of how good the {} is. Choose the gauge, or put its steps and its error in under My gauges.",
                gauge.kind.name()
            );
        }
        let likely = percent(self.conformity);
        let digits_are_missing =
            !gauge.kind.is_stamped() && gauge.resolution.is_some_and(|shown| shown < step);
        if digits_are_missing {
            format!(
                "{likely} likely to meet. The reading was taken as good to its last digit, {} {}: type every digit the gauge shows, or measure again with a finer one.",
                step.shortest(unit, 9),
                unit.symbol()
            )
        } else if self.gauge_too_coarse {
            "The limit is narrower than this gauge’s doubt: no reading with it can prove the part good. Use a finer one.".to_owned()
        } else {
            format!("{likely} likely to meet. Measure again, with a finer gauge if there is one.")
        }
    }

    #[translated]
    fn distances(&self, reading: &Reading) -> String {
        let symbol = reading.unit().symbol();
        let edge = |span: Span, away: &str, past: &str, name: &str| {
            if span.is_zero() {
                format!("exactly on the {name} limit")
            } else {
                let word = if span.is_negative() { past } else { away };
                format!("{} {symbol} {word} the {name}", short(span, reading))
            }
        };
        let lower = self.above_lower.map(|span| edge(span, "above", "under", "lower"));
        let upper = self.below_upper.map(|span| edge(span, "below", "over", "upper"));
        let text = match (lower, upper) {
            (Some(lower), Some(upper)) => format!("{lower}, {upper}."),
            (Some(one), None) | (None, Some(one)) => format!("{one}."),
            (None, None) => String::new(),
        };
        capital(&text)
    }
}

/// A distance without its sign, with no more decimals than it needs.
fn short(span: Span, reading: &Reading) -> String {
    let unit = reading.unit();
    span.size().shortest(unit, places_for(reading.step(), unit))
}

/// A doubt with two significant digits, rounded up: how finely a reading was typed makes it no surer.
pub(crate) fn doubt(guard: Span, unit: Unit) -> String {
    guard.show(unit, if guard.is_zero() { 0 } else { places_for(guard, unit) }, Rounding::Up)
}

/// A probability, never as a certainty.
#[translated]
fn percent(probability: f64) -> String {
    let tenths = (probability * 1000.0).round();
    if tenths >= 999.0 {
        "More than 99 %".to_owned()
    } else if tenths <= 9.0 {
        "Less than 1 %".to_owned()
    } else {
        #[expect(clippy::cast_possible_truncation, reason = "between 0 and 100")]
        let whole = (probability * 100.0).round() as i64;
        format!("{whole} %")
    }
}

/// A limit in one line in a unit, and behind it as its source wrote it where that is another, and a length in
/// the other system of units where neither is of it: `1.5…3.0 thou (0.0015…0.0030 in, 0.0381…0.0762 mm)`.
#[must_use]
pub fn limit_lines(limit: &Limit, unit: Unit) -> String {
    let line = limit_line(limit, unit);
    let Some(own) = limit.unit() else { return line };
    let mut beside = Vec::new();
    if own != unit {
        beside.push(limit_as_written(limit));
    }
    if is_metric(own) == is_metric(unit)
        && let Some(other) = other_system(limit, own)
    {
        beside.push(limit_line(limit, other));
    }
    if beside.is_empty() { line } else { format!("{line} ({})", beside.join(", ")) }
}

fn is_metric(unit: Unit) -> bool {
    !matches!(unit, Unit::Inch | Unit::Thou | Unit::Foot)
}

/// Millimetres for inches; for millimetres thou, or inches where thou would be long: 50 thou and more.
fn other_system(limit: &Limit, own: Unit) -> Option<Unit> {
    if own.dimension() != Dimension::Length {
        return None;
    }
    let edges = [&limit.lower, &limit.upper, &limit.wear];
    let is_long = |edge: &Edge| edge.amount() >= Amount::whole(50, Unit::Thou);
    Some(if !is_metric(own) {
        Unit::Millimetre
    } else if edges.into_iter().flatten().any(is_long) {
        Unit::Inch
    } else {
        Unit::Thou
    })
}

/// Where wear ends a part's life: `the wear limit, 0.1 mm`.
#[translated]
pub(crate) fn wear_line(limit: &Limit, unit: Unit) -> String {
    limit.wear.as_ref().map_or_else(String::new, |wear| {
        format!("the wear limit, {} {}", wear.show(unit, Rounding::Nearest), unit.symbol())
    })
}

/// A limit in its own unit.
fn limit_as_written(limit: &Limit) -> String {
    limit.unit().map_or_else(String::new, |unit| limit_line(limit, unit))
}

/// A limit in one line: `0.0015 … 0.0040 in`, rounded inward where the unit is not its own; that there is none
/// where it has no edge.
#[must_use]
#[translated]
pub fn limit_line(limit: &Limit, unit: Unit) -> String {
    let lower = limit.lower.as_ref().map(|edge| edge.show(unit, Rounding::Up));
    let upper = limit.upper.as_ref().map(|edge| edge.show(unit, Rounding::Down));
    let symbol = unit.symbol();
    match (lower, upper) {
        (Some(lower), Some(upper)) => format!("{lower}…{upper}\u{a0}{symbol}"),
        (Some(lower), None) => format!("at least {lower}\u{a0}{symbol}"),
        (None, Some(upper)) => format!("at most {upper}\u{a0}{symbol}"),
        (None, None) => limit.wear.as_ref().map_or_else(
            || "no limit".to_owned(),
            |edge| format!("worn at {} {symbol}", edge.show(unit, Rounding::Nearest)),
        ),
    }
}
