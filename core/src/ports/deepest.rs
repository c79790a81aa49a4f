//! The place on an outline that reaches furthest into something.

use super::Outline;
use crate::trochoid::Point;

/// How finely the place is found, in mm.
const FINE: f64 = 1e-4;
/// Stretches no longer than this, in mm, are as good as straight for any curve on a plate.
const SHORT: f64 = 0.05;

/// The greatest depth along an outline and where it is reached. The depth must change no faster
/// than the point moves, as a distance does; then a stretch whose ends are shallow for its length
/// can be left out.
pub(crate) fn deepest(outline: &Outline, depth: impl Fn(Point) -> f64) -> (f64, Point) {
    let mut best = (f64::NEG_INFINITY, Point::default());
    for (from, to) in outline.edges() {
        let mut stretches = vec![((from, depth(from)), (to, depth(to)))];
        while let Some((start, end)) = stretches.pop() {
            for (place, at) in [start, end] {
                if at > best.0 {
                    best = (at, place);
                }
            }
            let length = (end.0 - start.0).norm();
            if length > SHORT && 0.5 * (start.1 + end.1 + length) > best.0 + FINE {
                let middle = start.0.between(end.0, 0.5);
                let middle = (middle, depth(middle));
                stretches.push((start, middle));
                stretches.push((middle, end));
            }
        }
    }
    best
}
