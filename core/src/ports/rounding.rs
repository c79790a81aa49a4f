//! Outlines with rounded corners.

use std::f64::consts::{FRAC_PI_2, PI};

use uom::si::{f64::Length, length::millimeter};

use super::{Outline, OutlineFault};
use crate::trochoid::{Direction, Point};

/// How far a side of the polygon that stands for an arc may lie inside it, in mm.
const SAGITTA: f64 = 0.001;

/// A corner of an outline, and the radius it is rounded to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Corner {
    /// Where the edges would meet.
    pub point: Point,
    /// The radius; 0 for a sharp corner.
    pub radius: Length,
}

impl Outline {
    /// The outline through the given corners. Arcs become polygons within a thousandth of a
    /// millimetre.
    ///
    /// # Errors
    /// As for [`Outline::new`], and if a radius is below zero or the edges beside it are too short.
    pub fn rounded(corners: &[Corner]) -> Result<Self, Vec<OutlineFault>> {
        // What is wrong with the corners themselves is said first.
        Self::new(corners.iter().map(|corner| corner.point))?;
        let count = corners.len();
        let fits = |length: Length| length >= Length::default() && length.is_finite();
        let mut faults: Vec<_> = (1..)
            .zip(corners)
            .filter(|(_, corner)| !fits(corner.radius))
            .map(|(row, corner)| OutlineFault::Radius { row, radius: corner.radius })
            .collect();
        let bends: Vec<Bend> = (0..count)
            .map(|i| {
                Bend::new(corners[(i + count - 1) % count], corners[i], corners[(i + 1) % count])
            })
            .collect();
        if faults.is_empty() {
            faults.extend((0..count).filter_map(|i| {
                let (before, after) = (&bends[(i + count - 1) % count], &bends[(i + 1) % count]);
                let bend = &bends[i];
                let short = bend.tangent > 0.0
                    && (bend.tangent + before.tangent > bend.before + 1e-9
                        || bend.tangent + after.tangent > bend.after + 1e-9);
                short.then(|| OutlineFault::Radius { row: i + 1, radius: corners[i].radius })
            }));
        }
        if !faults.is_empty() {
            return Err(faults);
        }
        Self::new(bends.iter().flat_map(Bend::points))
    }
}

/// A corner with its edges.
struct Bend {
    point: Point,
    radius: f64,
    before: f64,
    after: f64,
    /// The direction of the edge that leads here.
    arrives: f64,
    /// How far the outline turns here, to the left above zero.
    turn: f64,
    /// How far along its edges the arc begins and ends.
    tangent: f64,
}

impl Bend {
    fn new(last: Corner, corner: Corner, next: Corner) -> Self {
        let (arrives, leaves) = (corner.point - last.point, next.point - corner.point);
        let turn = arrives.cross(leaves).atan2(arrives.dot(leaves));
        let radius = corner.radius.get::<millimeter>();
        Self {
            point: corner.point,
            radius,
            before: arrives.norm(),
            after: leaves.norm(),
            arrives: arrives.y.atan2(arrives.x),
            turn,
            tangent: radius * (0.5 * turn.abs()).tan(),
        }
    }

    fn points(&self) -> Vec<Point> {
        if self.radius == 0.0 || self.turn == 0.0 {
            return vec![self.point];
        }
        let side = self.turn.signum();
        let start = self.point.along(Direction::of(self.arrives), -self.tangent);
        let centre = start.along(Direction::of(self.arrives + side * FRAC_PI_2), self.radius);
        let widest = 2.0 * (1.0 - SAGITTA / self.radius).max(0.5).acos();
        let mut steps = 1.0;
        while self.turn.abs() / steps > widest {
            steps += 1.0;
        }
        let first = self.arrives + side * FRAC_PI_2 + PI;
        let mut points = vec![start];
        let mut step = 1.0;
        while step <= steps {
            let way = Direction::of(first + self.turn * step / steps);
            points.push(centre.along(way, self.radius));
            step += 1.0;
        }
        points
    }
}
