//! The place on a trochoid nearest to a point, and so how far in or out the point lies.

use std::f64::consts::TAU;

use super::{Direction, Point, Trochoid};

/// A trochoid prepared for asking how far points are from it.
#[derive(Debug, Clone)]
pub(crate) struct Nearest {
    curve: Trochoid,
    samples: Vec<Point>,
}

/// The foot of the perpendicular from a point.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Foot {
    /// The generating angle of the foot.
    pub(crate) alpha: f64,
    /// How far out of the curve the point lies; below zero inside.
    pub(crate) outside: f64,
}

const SAMPLES: u32 = 72;

impl Nearest {
    pub(crate) fn new(curve: Trochoid) -> Self {
        let step = TAU / f64::from(SAMPLES);
        let samples = (0..SAMPLES).map(|i| curve.generator(step * f64::from(i))).collect();
        Self { curve, samples }
    }

    pub(crate) const fn curve(&self) -> Trochoid {
        self.curve
    }

    /// The foot nearest to `point`. The offset curve has its feet where the curve before the
    /// offset has them, so the search runs on that.
    pub(crate) fn foot(&self, point: Point) -> Foot {
        let step = TAU / f64::from(SAMPLES);
        let (mut start, mut least, mut alpha) = (0.0, f64::INFINITY, 0.0);
        for sample in &self.samples {
            let gap = point - *sample;
            if gap.dot(gap) < least {
                least = gap.dot(gap);
                start = alpha;
            }
            alpha += step;
        }
        let alpha = self.perpendicular(point, start, step);
        let normal = Direction::of(self.curve.normal_angle(alpha));
        let outside = normal.dot(point - self.curve.generator(alpha)) - self.curve.offset;
        Foot { alpha, outside }
    }

    /// Newton's method from the nearest sample, kept within one sample to either side.
    fn perpendicular(&self, point: Point, start: f64, step: f64) -> f64 {
        let Trochoid { eccentricity: e, radius: r, .. } = self.curve;
        let mut alpha = start;
        for _ in 0..12 {
            let (sin, cos) = alpha.sin_cos();
            let (sin3, cos3) = (3.0 * alpha).sin_cos();
            let gap = point - Point { x: r * cos + e * cos3, y: r * sin + e * sin3 };
            let rate = Point { x: -r * sin - 3.0 * e * sin3, y: r * cos + 3.0 * e * cos3 };
            let bend = Point { x: -r * cos - 9.0 * e * cos3, y: -r * sin - 9.0 * e * sin3 };
            let slope = rate.dot(rate) - gap.dot(bend);
            // At a nearest place the distance bends upward.
            if slope <= 0.0 {
                return alpha;
            }
            let advance = gap.dot(rate) / slope;
            let next = (alpha + advance).clamp(start - step, start + step);
            if (next - alpha).abs() < 1e-15 {
                return next;
            }
            alpha = next;
        }
        alpha
    }
}

#[cfg(test)]
mod tests {
    use super::{Nearest, Point, TAU, Trochoid};

    #[test]
    fn points_beside_the_curve_find_their_foot() {
        for (radius, offset) in [(105.0, 0.0), (102.0, 3.0), (75.0, 4.0)] {
            let curve = Trochoid { eccentricity: 15.0, radius, offset };
            let nearest = Nearest::new(curve);
            for i in 0..997 {
                let alpha = TAU * f64::from(i) / 997.0;
                for outside in [-7.0, -1e-6, 0.0, 2.0] {
                    let foot = nearest.foot(curve.offset_by(outside).at(alpha));
                    assert!(
                        (foot.outside - outside).abs() < 1e-11,
                        "R {radius}, a {offset}, α {alpha}: got {foot:?}, wanted {outside} mm"
                    );
                }
            }
        }
    }

    #[test]
    fn a_point_anywhere_is_as_near_as_the_nearest_of_many_samples() {
        let curve = Trochoid { eccentricity: 15.0, radius: 102.0, offset: 3.0 };
        let nearest = Nearest::new(curve);
        let samples = curve.polyline(20_000);
        for i in 0..2000_u32 {
            let place = |n: u32| f64::from(i * n % 2003) / 2003.0 * 300.0 - 150.0;
            let point = Point { x: place(617), y: place(1301) };
            let wanted = samples.iter().map(|s| (*s - point).norm()).fold(f64::INFINITY, f64::min);
            let got = nearest.foot(point).outside.abs();
            assert!((got - wanted).abs() < 2e-3, "{point:?}: got {got}, wanted {wanted} mm");
        }
    }
}
