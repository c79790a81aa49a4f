//! What the calculators of faces take: lengths within their bounds. Millimetres inside, [`Length`] outside.

use super::Refusal;
use crate::quantity::{Amount, Bounds, Unit};
use pitleaf_translated::tr;
use std::cmp::Ordering;
use uom::si::f64::Length;
use uom::si::length::millimeter;

/// A coordinate of a place on a face.
pub(super) const PLACE: Bounds = millimetres(tr!("A place on the face"), -1_000, 1_000);
/// A diameter of a bore or a journal.
pub(super) const DIAMETER: Bounds = millimetres(tr!("A diameter"), 1, 500);
/// A standard uncertainty.
pub(super) const UNCERTAINTY: Bounds = millimetres(tr!("An uncertainty"), 0, 5);

pub(super) const fn millimetres(name: &'static str, lowest: i64, highest: i64) -> Bounds {
    Bounds { name, lowest, highest, unit: Unit::Millimetre }
}

/// The millimetres of a length within its bounds; what is no number is out of bounds too.
pub(super) fn taken(
    length: Length,
    bounds: &'static Bounds,
    reading: Option<usize>,
) -> Result<f64, Refusal> {
    let within = Amount::of_length(length).is_some_and(|amount| {
        amount.order(bounds.least()).is_some_and(Ordering::is_ge)
            && amount.order(bounds.greatest()).is_some_and(Ordering::is_le)
    });
    if within { Ok(mm(length)) } else { Err(Refusal::OutOfBounds { bounds, reading }) }
}

/// Every length of a list, as [`taken`], and no fewer than needed.
pub(super) fn all_taken(
    lengths: &[Length],
    bounds: &'static Bounds,
    found: &'static str,
    needed: usize,
) -> Result<Vec<f64>, Refusal> {
    if lengths.len() < needed {
        return Err(Refusal::TooFew { found, given: lengths.len(), needed });
    }
    lengths
        .iter()
        .enumerate()
        .map(|(reading, &length)| taken(length, bounds, Some(reading)))
        .collect()
}

/// A length's millimetres.
pub(super) fn mm(length: Length) -> f64 {
    length.get::<millimeter>()
}

/// A length of so many millimetres.
pub(super) fn of_mm(value: f64) -> Length {
    Length::new::<millimeter>(value)
}

/// Arithmetic mean; the list is not empty.
pub(super) fn mean(values: &[f64]) -> f64 {
    values.iter().sum::<f64>() / count(values.len())
}

/// Least and greatest of a list that is not empty, each with its place; the first of equals.
pub(super) fn extremes(values: &[f64]) -> ((usize, f64), (usize, f64)) {
    let mut least = (0, f64::INFINITY);
    let mut greatest = (0, f64::NEG_INFINITY);
    for (place, &value) in values.iter().enumerate() {
        if value < least.1 {
            least = (place, value);
        }
        if value > greatest.1 {
            greatest = (place, value);
        }
    }
    (least, greatest)
}

/// A count as a float; exact for every list that fits a memory.
#[expect(clippy::cast_precision_loss, reason = "lists are far shorter than 2^53")]
pub(super) fn count(len: usize) -> f64 {
    len as f64
}
