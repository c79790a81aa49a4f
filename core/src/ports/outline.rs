//! The outline of a port: a closed line of straight edges that does not cross itself.

use pitleaf_translated::translated;
use std::fmt;

use uom::si::{
    area::square_millimeter,
    f64::{Area, Length},
};

use crate::trochoid::{Millimetres, Point};

/// How far from the shaft's axis a point may lie, in mm: no engine the geometry allows is larger.
const FURTHEST: f64 = 1000.0;

/// A closed outline that encloses an area and does not cross itself, in the housing frame.
#[derive(Debug, Clone, PartialEq)]
pub struct Outline {
    /// Anticlockwise, the first not repeated.
    points: Vec<Point>,
}

/// What is wrong with the points of an outline. Rows count from 1.
#[derive(Debug, Clone, PartialEq)]
pub enum OutlineFault {
    /// Fewer than three different points.
    TooFewPoints {
        /// How many there are.
        given: usize,
    },
    /// A coordinate that is not a number, or a metre and more from the axis.
    OutOfReach {
        /// The point's row.
        row: usize,
    },
    /// Two edges cross or touch.
    Crosses {
        /// The row the first edge starts at.
        first: usize,
        /// The row the second edge starts at.
        second: usize,
    },
    /// The points lie on one line.
    NoArea,
    /// A corner's radius is below zero or not a number, or its edges are too short for it.
    Radius {
        /// The corner's row.
        row: usize,
        /// The radius given.
        radius: Length,
    },
}

impl fmt::Display for OutlineFault {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::TooFewPoints { given: 1 } => {
                write!(f, "one point makes no outline: give three or more")
            }
            Self::TooFewPoints { given } => {
                write!(f, "{given} points make no outline: give three or more")
            }
            Self::OutOfReach { row } => {
                write!(f, "row {row} is not a point on this plate: check the number and its unit")
            }
            Self::Crosses { first, second } => write!(
                f,
                "the edge after row {first} and the edge after row {second} cross or touch: put the \
                 points in order round the port"
            ),
            Self::Radius { row, radius } => write!(
                f,
                "the corner in row {row} has no room for a radius of {}: make it smaller",
                Millimetres(*radius)
            ),
            Self::NoArea => {
                write!(f, "all points lie on one line and enclose no area: add a point")
            }
        }
    }
}

impl std::error::Error for OutlineFault {}

impl Outline {
    /// The outline through the given points in order, either way round. Points that repeat the one
    /// before are left out, and so is a last point that repeats the first.
    ///
    /// # Errors
    /// If a point is out of reach, fewer than three remain, all lie on one line, or two edges cross
    /// or touch: all faults of the first of these kinds.
    ///
    /// # Examples
    /// An outline whose edges cross is refused with the rows to look at:
    /// ```
    /// use pitleaf_core::{ports::Outline, trochoid::Point};
    ///
    /// let bow = [(0.0, 0.0), (10.0, 10.0), (10.0, 0.0), (0.0, 10.0)];
    /// let faults = Outline::new(bow.map(|(x, y)| Point::from_millimetres(x, y))).unwrap_err();
    /// assert_eq!(
    ///     faults[0].to_string(),
    ///     "the edge after row 1 and the edge after row 3 cross or touch: put the points in order \
    ///      round the port"
    /// );
    /// ```
    pub fn new(points: impl IntoIterator<Item = Point>) -> Result<Self, Vec<OutlineFault>> {
        let given: Vec<Point> = points.into_iter().collect();
        let faults: Vec<_> = (1..)
            .zip(&given)
            .filter(|(_, point)| !(point.x.abs() < FURTHEST && point.y.abs() < FURTHEST))
            .map(|(row, _)| OutlineFault::OutOfReach { row })
            .collect();
        if !faults.is_empty() {
            return Err(faults);
        }
        let mut rows: Vec<(usize, Point)> = (1..).zip(given).collect();
        rows.dedup_by_key(|(_, point)| *point);
        while rows.len() > 1 && rows.last().map(|row| row.1) == rows.first().map(|row| row.1) {
            rows.pop();
        }
        if rows.len() < 3 {
            return Err(vec![OutlineFault::TooFewPoints { given: rows.len() }]);
        }
        if on_one_line(&rows) {
            return Err(vec![OutlineFault::NoArea]);
        }
        let faults = crossings(&rows);
        if !faults.is_empty() {
            return Err(faults);
        }
        let mut points: Vec<Point> = rows.into_iter().map(|row| row.1).collect();
        if signed_area(&points) < 0.0 {
            points.reverse();
        }
        Ok(Self { points })
    }

    /// The points, anticlockwise.
    #[must_use]
    pub fn points(&self) -> &[Point] {
        &self.points
    }

    /// The area enclosed.
    #[must_use]
    pub fn area(&self) -> Area {
        Area::new::<square_millimeter>(signed_area(&self.points))
    }

    /// The middle of the area enclosed; of a hollow outline it may lie outside.
    #[must_use]
    pub fn middle(&self) -> Point {
        let start = self.points[0];
        let (mut sum, mut x, mut y) = (0.0, 0.0, 0.0);
        for (from, to) in self.edges() {
            let (from, to) = (from - start, to - start);
            let twice = from.cross(to);
            sum += twice;
            x += twice * (from.x + to.x);
            y += twice * (from.y + to.y);
        }
        start + Point { x: x / (3.0 * sum), y: y / (3.0 * sum) }
    }

    /// The outline as seen from the other side of the plate: mirrored in the short axis.
    #[must_use]
    pub fn mirrored(&self) -> Self {
        let points = self.points.iter().rev().map(|p| Point { x: -p.x, y: p.y }).collect();
        Self { points }
    }

    /// Whether the point lies inside.
    #[must_use]
    pub fn contains(&self, point: Point) -> bool {
        self.edges().fold(false, |inside, (from, to)| {
            let beside = (from.y > point.y) != (to.y > point.y)
                && point.x < from.x + (point.y - from.y) * (to.x - from.x) / (to.y - from.y);
            inside != beside
        })
    }

    /// The edges in order.
    pub(crate) fn edges(&self) -> impl Iterator<Item = (Point, Point)> {
        self.points.iter().zip(self.points.iter().cycle().skip(1)).map(|(from, to)| (*from, *to))
    }
}

fn signed_area(points: &[Point]) -> f64 {
    let next = points.iter().cycle().skip(1);
    points.iter().zip(next).map(|(from, to)| 0.5 * from.cross(*to)).sum()
}

/// Whether no point is off the line through the first two, by more than rounding.
fn on_one_line(rows: &[(usize, Point)]) -> bool {
    let (start, way) = (rows[0].1, rows[1].1 - rows[0].1);
    rows.iter().all(|(_, point)| way.cross(*point - start).abs() < 1e-9 * way.norm())
}

/// All pairs of edges that cross or touch, found along x so that long outlines stay quick.
fn crossings(rows: &[(usize, Point)]) -> Vec<OutlineFault> {
    let count = rows.len();
    let edge = |i: usize| (rows[i].1, rows[(i + 1) % count].1);
    let left = |i: usize| edge(i).0.x.min(edge(i).1.x);
    let mut order: Vec<usize> = (0..count).collect();
    order.sort_by(|a, b| left(*a).total_cmp(&left(*b)));
    let mut found = Vec::new();
    for (rank, &i) in order.iter().enumerate() {
        let right = edge(i).0.x.max(edge(i).1.x);
        for &j in order[rank + 1..].iter().take_while(|j| left(**j) <= right) {
            let (first, second) = (i.min(j), i.max(j));
            let neighbours = second - first == 1 || (first == 0 && second == count - 1);
            let touch = if neighbours {
                let (middle, before, after) = if second - first == 1 && count > 2 {
                    (edge(second).0, edge(first).0, edge(second).1)
                } else {
                    (edge(first).0, edge(second).0, edge(first).1)
                };
                folds_back(before - middle, after - middle)
            } else {
                cross(edge(first), edge(second))
            };
            if touch {
                found.push((rows[first].0, rows[second].0));
            }
        }
    }
    found.sort_unstable();
    found.into_iter().map(|(first, second)| OutlineFault::Crosses { first, second }).collect()
}

/// Whether an edge runs back over the one before.
fn folds_back(before: Point, after: Point) -> bool {
    before.cross(after) == 0.0 && before.dot(after) > 0.0
}

/// Whether two edges without a shared end have a point in common.
fn cross((a, b): (Point, Point), (c, d): (Point, Point)) -> bool {
    let side = |from: Point, to: Point, of: Point| (to - from).cross(of - from);
    let (c_side, d_side) = (side(a, b, c), side(a, b, d));
    let (a_side, b_side) = (side(c, d, a), side(c, d, b));
    if c_side * d_side > 0.0 || a_side * b_side > 0.0 {
        return false;
    }
    // What is left either crosses, or lies on one line and may still be apart along it.
    let apart = |p: f64, q: f64, r: f64, s: f64| p.max(q) < r.min(s) || r.max(s) < p.min(q);
    !(apart(a.x, b.x, c.x, d.x) || apart(a.y, b.y, c.y, d.y))
}
