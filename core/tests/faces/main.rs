//! Faces, bores and end play against what can be proved, what standards print, and bad input.

mod bores;
mod end_play;
mod flatness;
mod lapping;
mod leaves;
mod ledger;
mod own_places;
mod relief;
mod runout;
mod sentences;
mod stack;
mod step_wear;
mod survey;
mod uncertainty;
mod unit_slip;

use pitleaf_core::faces::{Doubt, Point, ReadingSet, SetFault, Taken};
use pitleaf_core::limits::{Edge, Gauge, Limit};
use pitleaf_core::quantity::{Amount, Unit};
use pitleaf_core::trochoid::Geometry;
use uom::si::f64::Length;
use uom::si::length::millimeter;

/// A length in millimetres.
fn mm(value: f64) -> Length {
    Length::new::<millimeter>(value)
}

/// A set read with the usual gauge, on the preset engine's parts.
fn read(set: &ReadingSet) -> Result<Taken, SetFault> {
    set.read_with(&Gauge::usual(set.gauge), Geometry::preset().bore())
}

/// Readings that scatter by so many millimetres, with a gauge of no error.
fn scatter(value: f64) -> Doubt {
    Doubt { scatter: mm(value), gauge: mm(0.0) }
}

fn number(length: Length) -> f64 {
    length.get::<millimeter>()
}

fn lengths(values: &[f64]) -> Vec<Length> {
    values.iter().copied().map(mm).collect()
}

fn points(rows: &[(f64, f64, f64)]) -> Vec<Point> {
    rows.iter().map(|&(x, y, z)| Point { x: mm(x), y: mm(y), z: mm(z) }).collect()
}

fn micrometres(count: i64) -> Amount {
    Amount::whole(count, Unit::Micrometre)
}

/// A limit in millimetres; an empty text is no edge.
fn limit(lower: &str, upper: &str) -> Limit {
    let edge = |text: &str| {
        (!text.is_empty()).then(|| Edge::read(text, Unit::Millimetre).expect("an edge of the test"))
    };
    Limit { lower: edge(lower), upper: edge(upper), wear: None }
}

#[track_caller]
fn close_to(got: Length, wanted: f64, within: f64) {
    let got = number(got);
    assert!((got - wanted).abs() <= within, "got {got} mm, wanted {wanted} ± {within} mm");
}
