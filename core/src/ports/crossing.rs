//! Where a straight edge runs through the sealing figure.

use super::figure::SealFigure;
use crate::trochoid::Point;

/// The shares of the way at which the edge enters and leaves the figure, if it meets it at all.
///
/// The figure is what lies below three graphs at once. How far an edge is above one graph is a
/// convex function of the way along it, so each graph gives one interval.
pub(crate) fn covered(figure: &SealFigure, from: Point, to: Point) -> Option<(f64, f64)> {
    let mut covered = (0.0_f64, 1.0_f64);
    for third in 0..3 {
        let (from, to) = (SealFigure::local_to(from, third), SealFigure::local_to(to, third));
        let start = Point { x: from.x, y: from.y };
        let end = Point { x: to.x, y: to.y };
        let (enter, leave) = Above { figure, start, way: end - start }.below()?;
        covered = (covered.0.max(enter), covered.1.min(leave));
    }
    (covered.0 < covered.1).then_some(covered)
}

/// How far an edge is above one graph.
struct Above<'a> {
    figure: &'a SealFigure,
    start: Point,
    way: Point,
}

impl Above<'_> {
    fn at(&self, share: f64) -> f64 {
        let (x, y) = (self.start.x + self.way.x * share, self.start.y + self.way.y * share);
        y - self.figure.height(x)
    }

    fn slope(&self, share: f64) -> f64 {
        self.way.y - self.way.x * self.figure.slope(self.start.x + self.way.x * share)
    }

    /// The interval in which the edge is below.
    fn below(&self) -> Option<(f64, f64)> {
        match (self.at(0.0) <= 0.0, self.at(1.0) <= 0.0) {
            (true, true) => Some((0.0, 1.0)),
            (true, false) => Some((0.0, self.root(0.0, 1.0))),
            (false, true) => Some((self.root(1.0, 0.0), 1.0)),
            (false, false) => {
                let dip = self.dip()?;
                Some((self.root(dip, 0.0), self.root(dip, 1.0)))
            }
        }
    }

    /// A share at which an edge that begins and ends above is below. The tangents at both ends of
    /// an interval bound the function from below.
    fn dip(&self) -> Option<f64> {
        let (mut low, mut high) = (0.0, 1.0);
        for _ in 0..60 {
            let (at_low, at_high) = (self.at(low), self.at(high));
            let (down, up) = (self.slope(low), self.slope(high));
            if down >= 0.0 || up <= 0.0 {
                return None;
            }
            let meet = (at_high - at_low + down * low - up * high) / (down - up);
            if at_low + down * (meet - low) > 0.0 {
                return None;
            }
            let middle = if meet > low && meet < high { meet } else { 0.5 * (low + high) };
            if self.at(middle) <= 0.0 {
                return Some(middle);
            }
            if self.slope(middle) < 0.0 {
                low = middle;
            } else {
                high = middle;
            }
        }
        None
    }

    /// The root between a share below and a share above. Newton's method from above converges from
    /// one side on a convex function; bisection takes over where the nose ends abruptly.
    fn root(&self, below: f64, above: f64) -> f64 {
        let (mut below, mut above) = (below, above);
        for _ in 0..60 {
            let height = self.at(above);
            let next = above - height / self.slope(above);
            let between = (next - below) * (next - above) <= 0.0;
            let next = if between { next } else { 0.5 * (below + above) };
            if (next - above).abs() < 1e-15 {
                return next;
            }
            if self.at(next) > 0.0 {
                above = next;
            } else if between {
                // Newton's step can pass the root by rounding only.
                return next;
            } else {
                below = next;
            }
        }
        above
    }
}
