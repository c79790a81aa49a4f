//! The minimum zone: the two parallel planes closest together that hold all points between them.
//!
//! Rotating planes. The best pair touches either three points and one over their triangle, or two
//! points on each side whose lines cross. So a few working points are solved outright over all such
//! touchings; the points sticking out most on both sides join them; points that no longer touch leave,
//! but only once the zone has grown. The zone of the working points never shrinks and never exceeds
//! the true one, so when nothing sticks out any more, the two are equal: the result is proved, not
//! approached. A pass costs one look at every point, and a dozen passes are usual for thousands.

use super::input::extremes;

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
                weights: weights(points, &working, best.slope, tolerance)
                    .unwrap_or_else(|| vec![(highest.0, 1.0), (lowest.0, -1.0)]),
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

/// The weights that make the zone's width of the touching points' heights: those of the triangle and
/// the point over it, or of the two chords where they cross. They are the proof that the zone is least.
fn weights(
    points: &[[f64; 3]],
    working: &[usize],
    slope: [f64; 2],
    tolerance: f64,
) -> Option<Vec<(usize, f64)>> {
    let (low, high) = touching(points, working, slope, tolerance);
    let triangle = |lone: &[usize], three: &[usize], sign: f64| {
        for (a, b, c) in triples(three) {
            for &point in lone {
                if let Some(shares) = shares(points, [a, b, c], point)
                    && shares.iter().all(|&share| share >= -1e-9)
                {
                    let [a, b, c] = [(a, shares[0]), (b, shares[1]), (c, shares[2])]
                        .map(|(corner, share)| (corner, -sign * share));
                    return Some(vec![(point, sign), a, b, c]);
                }
            }
        }
        None
    };
    triangle(&high, &low, 1.0)
        .or_else(|| triangle(&low, &high, -1.0))
        .or_else(|| crossing(points, &low, &high))
}

fn triples(of: &[usize]) -> impl Iterator<Item = (usize, usize, usize)> {
    (0..of.len()).flat_map(move |a| {
        (a + 1..of.len()).flat_map(move |b| (b + 1..of.len()).map(move |c| (of[a], of[b], of[c])))
    })
}

/// The barycentric shares of a place in a triangle as seen along z; none in a triangle without area.
pub(super) fn shares(points: &[[f64; 3]], [a, b, c]: [usize; 3], at: usize) -> Option<[f64; 3]> {
    let [a, b, c, at] = [a, b, c, at].map(|point| [points[point][0], points[point][1]]);
    let area = turn(a, b, c);
    let shares = [turn(at, b, c) / area, turn(a, at, c) / area, turn(a, b, at) / area];
    shares.iter().all(|share| share.is_finite()).then_some(shares)
}

/// Two chords, one on each plane, that cross as seen along z.
fn crossing(points: &[[f64; 3]], low: &[usize], high: &[usize]) -> Option<Vec<(usize, f64)>> {
    let flat = |point: usize| [points[point][0], points[point][1]];
    let pairs = |of: &[usize]| -> Vec<(usize, usize)> {
        of.iter()
            .enumerate()
            .flat_map(|(place, &one)| of[place + 1..].iter().map(move |&other| (one, other)))
            .collect()
    };
    for (a, b) in pairs(high) {
        for (c, d) in pairs(low) {
            let (from, to, left, right) = (flat(a), flat(b), flat(c), flat(d));
            let (at_from, at_to) = (turn(left, right, from), turn(left, right, to));
            let (at_left, at_right) = (turn(from, to, left), turn(from, to, right));
            let along = at_from / (at_from - at_to);
            let across = at_left / (at_left - at_right);
            if [along, across].iter().all(|part| (-1e-9..=1.0 + 1e-9).contains(part)) {
                return Some(vec![(a, 1.0 - along), (b, along), (c, across - 1.0), (d, -across)]);
            }
        }
    }
    None
}

/// Twice the signed area of a triangle.
fn turn(a: [f64; 2], b: [f64; 2], c: [f64; 2]) -> f64 {
    (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])
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
