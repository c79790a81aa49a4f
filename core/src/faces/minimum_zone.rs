//! The minimum zone: the two parallel planes closest together that hold all points between them.
//!
//! Rotating planes. The best pair touches either three points and one over their triangle, or two
//! points on each side whose lines cross. So a few working points are solved outright over all such
//! touchings; the points sticking out most on both sides join them; points that no longer touch leave,
//! but only once the zone has grown. The zone of the working points never shrinks and never exceeds
//! the true one, so when nothing sticks out any more, the two are equal: the result is proved, not
//! approached. A pass costs one look at every point, and a dozen passes are usual for thousands.

use super::input::extremes;
use super::support::support;

/// The slopes of the best pair of planes, and the weight of each touching point in the zone's width.
pub(super) struct Zone {
    pub(super) slope: [f64; 2],
    pub(super) weights: Vec<(usize, f64)>,
}

/// Finds the minimum zone of points (x, y, z) of like size in x and y, measured along z.
///
/// `corners` are three points, not on one line as seen along z.
pub(super) fn minimum_zone(points: &[[f64; 3]], corners: [usize; 3]) -> Zone {
    let heights: Vec<f64> = points.iter().map(|point| point[2]).collect();
    let (lowest, highest) = extremes(&heights);
    // What binary floats can tell apart at these heights.
    let tolerance = 1e-13 * (highest.1.abs() + lowest.1.abs());
    let mut working = corners.to_vec();
    add(&mut working, lowest.0);
    add(&mut working, highest.0);
    let mut width = 0.0;
    loop {
        let best = tightest(points, &working);
        if best.width > width + tolerance {
            width = best.width;
            let (low, high) = touching(points, &working, best.slope, tolerance);
            working = corners.to_vec();
            for point in low.into_iter().chain(high) {
                add(&mut working, point);
            }
        }
        let over: Vec<f64> = points.iter().map(|point| above(point, best.slope)).collect();
        let (lowest, highest) = extremes(&over);
        let out = highest.1 - lowest.1 > best.width + tolerance;
        let grown = add(&mut working, lowest.0) | add(&mut working, highest.0);
        if !(out && grown) {
            return Zone {
                slope: best.slope,
                weights: proof(points, &working, best.slope, tolerance),
            };
        }
    }
}

/// A pair of planes for a few points.
#[derive(Clone, Copy)]
struct Planes {
    slope: [f64; 2],
    width: f64,
}

/// The closest pair of planes around a few points, by trying every touching there can be.
fn tightest(points: &[[f64; 3]], working: &[usize]) -> Planes {
    let mut best = Planes { slope: [0.0; 2], width: f64::INFINITY };
    let mut attempt = |one: [f64; 3], other: [f64; 3]| {
        let normal = cross(one, other);
        let slope = [-normal[0] / normal[2], -normal[1] / normal[2]];
        if !slope.iter().all(|part| part.is_finite()) {
            return;
        }
        let (mut low, mut high) = (f64::INFINITY, f64::NEG_INFINITY);
        for &point in working {
            let over = above(&points[point], slope);
            low = low.min(over);
            high = high.max(over);
        }
        if high - low < best.width {
            best = Planes { slope, width: high - low };
        }
    };
    let chord = |from: usize, to: usize| {
        let (from, to) = (&points[working[from]], &points[working[to]]);
        [to[0] - from[0], to[1] - from[1], to[2] - from[2]]
    };
    for a in 0..working.len() {
        for b in a + 1..working.len() {
            for c in b + 1..working.len() {
                attempt(chord(a, b), chord(a, c));
                for d in c + 1..working.len() {
                    attempt(chord(a, b), chord(c, d));
                    attempt(chord(a, c), chord(b, d));
                    attempt(chord(a, d), chord(b, c));
                }
            }
        }
    }
    best
}

/// The working points on the lower and on the upper plane.
fn touching(
    points: &[[f64; 3]],
    working: &[usize],
    slope: [f64; 2],
    tolerance: f64,
) -> (Vec<usize>, Vec<usize>) {
    let over: Vec<f64> = working.iter().map(|&point| above(&points[point], slope)).collect();
    let ((_, low), (_, high)) = extremes(&over);
    let slack = tolerance + 1e-9 * (high - low);
    let near = |edge: f64| {
        working
            .iter()
            .zip(&over)
            .filter(|&(_, over)| (over - edge).abs() <= slack)
            .map(|(&point, _)| point)
            .collect()
    };
    (near(low), near(high))
}

/// The weights of the touching points in the zone's width.
fn proof(
    points: &[[f64; 3]],
    working: &[usize],
    slope: [f64; 2],
    tolerance: f64,
) -> Vec<(usize, f64)> {
    let (low, high) = touching(points, working, slope, tolerance);
    // Without any other support one touching point stands right over another.
    support(points, &low, &high).unwrap_or_else(|| vec![(high[0], 1.0), (low[0], -1.0)])
}

fn above(point: &[f64; 3], slope: [f64; 2]) -> f64 {
    point[2] - slope[0] * point[0] - slope[1] * point[1]
}

fn cross(a: [f64; 3], b: [f64; 3]) -> [f64; 3] {
    [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
}

/// Adds a point that is not there yet; says whether it did.
fn add(working: &mut Vec<usize>, point: usize) -> bool {
    let new = !working.contains(&point);
    if new {
        working.push(point);
    }
    new
}
