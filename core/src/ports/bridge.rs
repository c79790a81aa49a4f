//! The bridge left between two ports.

use uom::si::{f64::Length, length::millimeter};

use super::Outline;
use crate::trochoid::Point;

/// The narrowest place between two outlines.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bridge {
    /// Its width; none where the outlines meet.
    pub width: Length,
    /// Its end on the first outline.
    pub from: Point,
    /// Its end on the second.
    pub to: Point,
}

/// The narrowest place between two outlines; a width of 0 if they cross or one holds the other.
#[must_use]
pub fn bridge(one: &Outline, other: &Outline) -> Bridge {
    let mut best = (f64::INFINITY, Point::default(), Point::default());
    let mut narrow = |near: f64, from: Point, to: Point| {
        if near < best.0 {
            best = (near, from, to);
        }
    };
    for edge in one.edges() {
        for beside in other.edges() {
            if let Some(place) = meeting(edge, beside) {
                return Bridge { width: Length::default(), from: place, to: place };
            }
            for point in [edge.0, edge.1] {
                let foot = nearest_on(beside, point);
                narrow((foot - point).norm(), point, foot);
            }
            for point in [beside.0, beside.1] {
                let foot = nearest_on(edge, point);
                narrow((foot - point).norm(), foot, point);
            }
        }
    }
    let (width, from, to) = best;
    if one.contains(to) || other.contains(from) {
        return Bridge { width: Length::default(), from, to };
    }
    Bridge { width: Length::new::<millimeter>(width), from, to }
}

pub(super) fn nearest_on((from, to): (Point, Point), point: Point) -> Point {
    let way = to - from;
    let share = (point - from).dot(way) / way.dot(way);
    from.between(to, share.clamp(0.0, 1.0))
}

fn meeting((a, b): (Point, Point), (c, d): (Point, Point)) -> Option<Point> {
    let (way, other) = (b - a, d - c);
    let spread = way.cross(other);
    let share = (c - a).cross(other) / spread;
    let along = (c - a).cross(way) / spread;
    let within = |share: f64| (0.0..=1.0).contains(&share);
    (within(share) && within(along)).then(|| a.between(b, share))
}
