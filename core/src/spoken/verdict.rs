//! A verdict as it is said.

use super::quantity;
use crate::letters::lower;
use crate::limits::{Call, Verdict};
use crate::quantity::{Reading, Span, places_for};
use pitleaf_translated::translated;

/// The call, the reading, and how far it lies from the edge that decides: “meets; two and a half thou;
/// one thou above the lower limit”.
#[must_use]
#[translated]
pub fn verdict(verdict: &Verdict, reading: &Reading) -> String {
    let unit = reading.unit();
    let places = places_for(reading.step(), unit);
    let figure = reading.amount().readable(unit, reading.step());
    let mut words = format!("{}; {}", lower(verdict.call.word()), quantity(&figure, unit));
    if let Some((span, away, past, name)) = deciding(verdict) {
        words.push_str("; ");
        words.push_str(&if span.is_zero() {
            format!("exactly on the {name} limit")
        } else {
            let far = quantity(&span.size().shortest(unit, places), unit);
            format!("{far} {} the {name} limit", if span.is_negative() { past } else { away })
        });
    }
    if verdict.worn_out == Some(true) {
        words.push_str(if verdict.wear_is_close {
            "; too close to call against the wear limit"
        } else {
            "; past the wear limit"
        });
    }
    if verdict.call == Call::TooClose {
        words.push_str(if verdict.is_stated {
            "; measure again"
        } else {
            "; how good the gauge is, is not known"
        });
    }
    words
}

/// The edge nearest to the reading, or the one it lies past.
#[translated]
fn deciding(verdict: &Verdict) -> Option<(Span, &'static str, &'static str, &'static str)> {
    let lower = verdict.above_lower.map(|span| (span, "above", "under", "lower"));
    let upper = verdict.below_upper.map(|span| (span, "below", "over", "upper"));
    match (lower, upper) {
        (Some(lower), Some(upper)) => {
            Some(if upper.0.minus(lower.0).is_negative() { upper } else { lower })
        }
        (one, other) => one.or(other),
    }
}
