//! A rotor's flank: the inner envelope of the bore, as the rotor sees it.

use std::f64::consts::{FRAC_PI_3, FRAC_PI_6};

use uom::si::{angle::radian, f64::Angle};

use super::{Direction, Point, quadrature::integral};

/// The inner envelope of a trochoid in the rotor's frame, offset outward by a distance.
///
/// With the bore's own offset it is the flank's edge; with less, the line of the side seal inside
/// it. Where the offset is below zero neighbouring lines cross, and each ends on the line to its
/// apex.
///
/// Seen from the rotor, the generating point at the angle u runs on a circle about R exp(iu) with
/// the radius 2e sin(3u/2). The flank is the inner envelope of those circles, a closed form.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Flank {
    pub(crate) eccentricity: f64,
    pub(crate) radius: f64,
    pub(crate) offset: f64,
}

/// A place on a flank, in the rotor's frame with the first apex on the x axis.
#[derive(Debug, Clone, Copy)]
pub(crate) struct FlankPlace {
    pub(crate) point: Point,
    pub(crate) normal_angle: f64,
    /// How fast the place moves with u.
    pub(crate) speed: f64,
}

impl Flank {
    /// The flank from the first apex to the second as `count` points, evenly spaced in the angle u,
    /// in the rotor's frame (origin at its centre, x towards the first apex).
    #[must_use]
    pub fn polyline(self, count: u32) -> Vec<Point> {
        let end = self.end();
        let span = 2.0 * (FRAC_PI_3 - end);
        let steps = f64::from(count.max(2) - 1);
        (0..count.max(2)).map(|i| self.at(end + span * f64::from(i) / steps).point).collect()
    }

    /// The angle of the outward normal at the flank's first end, from the line to the apex.
    #[must_use]
    pub fn end_normal(self) -> Angle {
        Angle::new::<radian>(self.at(self.end()).normal_angle)
    }

    /// Points round the nose of the first apex seal, from one lean of its normal to another, where the
    /// flank has `per_flank`; none where the offset leaves no nose.
    pub(crate) fn nose(self, from: f64, to: f64, per_flank: u32) -> Vec<Point> {
        let steps = (per_flank / 8).max(16);
        if self.offset <= 0.0 {
            return Vec::new();
        }
        let apex = Point { x: self.radius, y: 0.0 };
        (0..=steps)
            .map(|i| from + (to - from) * f64::from(i) / f64::from(steps))
            .map(|lean| apex.along(Direction::of(lean), self.offset))
            .collect()
    }

    pub(crate) fn at(self, u: f64) -> FlankPlace {
        let Self { eccentricity: e, radius: r, offset } = self;
        let (s, c) = (1.5 * u).sin_cos();
        let sin_delta = 3.0 * e / r * c;
        let cos_delta = (1.0 - sin_delta * sin_delta).sqrt();
        let reach = 2.0 * e * s - offset;
        let unit = Direction::of(u);
        let point = Point { x: r - reach * cos_delta, y: -reach * sin_delta }.turned(unit);
        let turning = 1.0 - 4.5 * e / r * s / cos_delta;
        FlankPlace {
            point,
            normal_angle: u + sin_delta.asin(),
            speed: r * cos_delta - reach * turning,
        }
    }

    /// The u at which the flank begins: 0, or where it meets the line to the apex.
    pub(crate) fn end(self) -> f64 {
        if self.offset >= 0.0 {
            return 0.0;
        }
        // Below the crossing the line runs on the far side of the apex's radius.
        let (mut low, mut high) = (0.0, FRAC_PI_6);
        for _ in 0..60 {
            let middle = 0.5 * (low + high);
            if self.at(middle).point.y < 0.0 {
                low = middle;
            } else {
                high = middle;
            }
        }
        0.5 * (low + high)
    }

    /// The area swept by the line from the rotor's centre along half the flank.
    pub(crate) fn half_sector(self) -> f64 {
        integral(self.end(), FRAC_PI_3, 12, |u| {
            let place = self.at(u);
            0.5 * Direction::of(place.normal_angle).dot(place.point) * place.speed
        })
    }
}
