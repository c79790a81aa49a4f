//! A relief to draw: bands of equal height over a face, between the readings and never past them.
//!
//! Heights are linear over the triangles of a Delaunay triangulation of the places, so the relief passes
//! through every reading and shows no hill or hollow that was not measured.

use super::Refusal;
use super::flatness::Point;
use super::input::{PLACE, all_taken, extremes, mm, of_mm};
use super::support::turn;
use crate::quantity::{Amount, Bounds, Unit};
use pitleaf_translated::translated;
use uom::si::f64::Length;

/// A face's heights, spread between its readings.
#[derive(Clone, Debug, PartialEq)]
pub struct Relief {
    /// x, y and height of each reading.
    points: Vec<[f64; 3]>,
    triangles: Vec<[usize; 3]>,
}

/// All of a face that lies within one step of height.
#[derive(Clone, Debug, PartialEq)]
pub struct Band {
    /// Its lower edge.
    pub lower: Length,
    /// Its upper edge.
    pub upper: Length,
    /// Convex outlines, each a list of places (x, y); together they fill the band without overlap.
    pub pieces: Vec<Vec<[Length; 2]>>,
}

/// Spreads heights over a face: those of the points, or deviations put into their z.
///
/// # Errors
/// [`Refusal::TooFew`] under three points, [`Refusal::OneLine`], [`Refusal::OutOfBounds`] (places within a
/// metre, heights within [`Bounds::HEIGHT`]).
#[translated]
pub fn relief(points: &[Point]) -> Result<Relief, Refusal> {
    let all = |part: fn(&Point) -> Length, bounds| {
        all_taken(&points.iter().map(part).collect::<Vec<_>>(), bounds, "a relief", 3)
    };
    let (x, y) = (all(|point| point.x, &PLACE)?, all(|point| point.y, &PLACE)?);
    let z = all(|point| point.z, &Bounds::HEIGHT)?;
    let places: Vec<delaunator::Point> =
        x.iter().zip(&y).map(|(&x, &y)| delaunator::Point { x, y }).collect();
    let corners = delaunator::triangulate(&places).triangles;
    let triangles: Vec<[usize; 3]> =
        corners.chunks_exact(3).map(|corners| [corners[0], corners[1], corners[2]]).collect();
    if triangles.is_empty() {
        return Err(Refusal::OneLine);
    }
    let points = x.iter().zip(&y).zip(&z).map(|((&x, &y), &z)| [x, y, z]).collect();
    Ok(Relief { points, triangles })
}

impl Relief {
    /// The height at a place; none outside the outermost readings.
    #[must_use]
    pub fn height_at(&self, x: Length, y: Length) -> Option<Length> {
        let at = [mm(x), mm(y)];
        self.triangles.iter().find_map(|&corners| {
            let [a, b, c] = corners.map(|corner| self.points[corner]);
            let [flat_a, flat_b, flat_c] = [a, b, c].map(|[x, y, _]| [x, y]);
            let whole = turn(flat_a, flat_b, flat_c);
            let shares = [
                turn(at, flat_b, flat_c) / whole,
                turn(flat_a, at, flat_c) / whole,
                turn(flat_a, flat_b, at) / whole,
            ];
            let inside = shares.iter().all(|&share| share >= -1e-9);
            inside.then(|| of_mm(shares[0] * a[2] + shares[1] * b[2] + shares[2] * c[2]))
        })
    }

    /// The bands between the lowest and the highest reading, lowest first: at most `most` of them, but two
    /// where heights lie on both sides of zero, which is always an edge. Edges are whole multiples of 1, 2
    /// or 5 (or tens of them) of `unit`, a unit of length.
    #[must_use]
    pub fn bands(&self, unit: Unit, most: u8) -> Vec<Band> {
        let heights: Vec<f64> = self.points.iter().map(|point| point[2]).collect();
        let ((_, low), (_, high)) = extremes(&heights);
        let step = round_step(low, high, unit, most.max(1));
        let (first, last) = numbers(low, high, step);
        let mut bands = Vec::new();
        let mut number = first;
        while number < last {
            let (lower, upper) = (number * step, (number + 1.0) * step);
            // The outermost bands take what binary noise puts past them.
            let from = if number == first { f64::NEG_INFINITY } else { lower };
            let to = if number + 1.0 == last { f64::INFINITY } else { upper };
            let pieces = self
                .triangles
                .iter()
                .map(|corners| corners.map(|corner| self.points[corner]))
                .filter_map(|triangle| slice(&triangle, from, to))
                .collect();
            bands.push(Band { lower: of_mm(lower), upper: of_mm(upper), pieces });
            number += 1.0;
        }
        bands
    }
}

/// The finest round step that makes at most so many bands; in millimetres.
fn round_step(low: f64, high: f64, unit: Unit, most: u8) -> f64 {
    let unit = Amount::whole(1, unit).length().map_or(1.0, mm);
    let bands = |step: f64| {
        let (first, last) = numbers(low, high, step);
        last - first
    };
    // From a thousandth of the range upwards, by tens: no power function is worth its bytes here. A true
    // plane has no range and gets one whole unit.
    let least = (high - low) / 1_000.0;
    if !(least > 0.0 && least.is_finite()) {
        return unit;
    }
    let mut decade = unit;
    while decade > least {
        decade /= 10.0;
    }
    while decade * 10.0 <= least {
        decade *= 10.0;
    }
    loop {
        for digit in [1.0, 2.0, 5.0] {
            if bands(digit * decade) <= f64::from(most) {
                return digit * decade;
            }
        }
        // Heights on both sides of zero always make two bands.
        if decade > (high - low) * 10.0 {
            return decade;
        }
        decade *= 10.0;
    }
}

/// The whole steps that hold a range: first edge and last edge, at least one step apart.
fn numbers(low: f64, high: f64, step: f64) -> (f64, f64) {
    /// A height this part of a step off an edge lies on it.
    const NOISE: f64 = 1e-9;
    let first = (low / step + NOISE).floor();
    (first, (high / step - NOISE).ceil().max(first + 1.0))
}

/// The part of a triangle between two heights; none where nothing is left.
///
/// A level triangle on an edge belongs to the band above it.
fn slice(triangle: &[[f64; 3]; 3], lower: f64, upper: f64) -> Option<Vec<[Length; 2]>> {
    if triangle.iter().all(|corner| corner[2] == upper) {
        return None;
    }
    let over = cut(triangle, |corner| corner[2] - lower);
    let between = cut(&over, |corner| upper - corner[2]);
    (between.len() >= 3)
        .then(|| between.iter().map(|corner| [of_mm(corner[0]), of_mm(corner[1])]).collect())
}

/// A convex outline without what lies below zero of a linear function.
fn cut(outline: &[[f64; 3]], over: impl Fn(&[f64; 3]) -> f64) -> Vec<[f64; 3]> {
    let mut kept = Vec::with_capacity(outline.len() + 1);
    for (place, from) in outline.iter().enumerate() {
        let to = &outline[(place + 1) % outline.len()];
        let (at_from, at_to) = (over(from), over(to));
        if at_from >= 0.0 {
            kept.push(*from);
        }
        if (at_from > 0.0 && at_to < 0.0) || (at_from < 0.0 && at_to > 0.0) {
            let part = at_from / (at_from - at_to);
            kept.push(std::array::from_fn(|axis| from[axis] + part * (to[axis] - from[axis])));
        }
    }
    kept
}
