//! The trochoid and the curves that run beside it at a fixed distance.

use std::f64::consts::TAU;

use uom::si::{
    angle::radian,
    area::square_millimeter,
    f64::{Angle, Area, Length},
    length::millimeter,
};

use super::{Direction, Geometry, Point, SectorArea};

/// The curve (e cos 3α + R cos α, e sin 3α + R sin α), offset outward by a distance.
///
/// It is the bore when R is the generating radius and the offset is the apex seal's; the coolant
/// land when the offset is larger; the path of a corner seal when R is the seal's distance from the
/// rotor's centre, with offsets of plus and minus its radius for the edges of its track.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Trochoid {
    pub(crate) eccentricity: f64,
    pub(crate) radius: f64,
    pub(crate) offset: f64,
}

impl Trochoid {
    /// The curve that runs `distance` further out than this one, or further in if negative.
    #[must_use]
    pub fn beside(self, distance: Length) -> Self {
        self.offset_by(distance.get::<millimeter>())
    }

    /// By how much its drawings are enlarged to fill the frame that the preset engine's fill.
    #[must_use]
    pub fn drawing_scale(self) -> f64 {
        Geometry::preset().bore().radius / self.radius
    }

    /// The point at the generating angle α.
    #[must_use]
    pub fn point(self, alpha: Angle) -> Point {
        self.at(alpha.get::<radian>())
    }

    /// The outward normal at the generating angle α.
    #[must_use]
    pub fn normal(self, alpha: Angle) -> Direction {
        Direction::of(self.normal_angle(alpha.get::<radian>()))
    }

    /// How far the normal leans away from the line to the rotor's centre: the lean of the apex
    /// seal. It is never more than asin(3e/R).
    #[must_use]
    pub fn lean(self, alpha: Angle) -> Angle {
        Angle::new::<radian>(self.lean_at(alpha.get::<radian>()))
    }

    /// The greatest lean, asin(3e/R).
    #[must_use]
    pub fn greatest_lean(self) -> Angle {
        Angle::new::<radian>(self.steepest_lean())
    }

    /// The radius of curvature at α: positive where the bore is hollow as seen from the shaft,
    /// negative at the waist of an ordinary bore, where it bulges inward.
    #[must_use]
    pub fn curvature_radius(self, alpha: Angle) -> Length {
        Length::new::<millimeter>(self.curvature_radius_at(alpha.get::<radian>()))
    }

    /// The length once round.
    #[must_use]
    pub fn perimeter(self) -> Length {
        Length::new::<millimeter>(SectorArea::new(self).length(TAU))
    }

    /// The area inside.
    #[must_use]
    pub fn enclosed_area(self) -> Area {
        Area::new::<square_millimeter>(SectorArea::new(self).area(0.0, TAU))
    }

    /// The whole curve as `count` points, evenly spaced in α and without repeating the first.
    #[must_use]
    pub fn polyline(self, count: u32) -> Vec<Point> {
        (0..count).map(|i| self.at(TAU * f64::from(i) / f64::from(count))).collect()
    }

    pub(crate) fn offset_by(self, distance: f64) -> Self {
        Self { offset: self.offset + distance, ..self }
    }

    /// The point at α before the offset.
    pub(crate) fn generator(self, alpha: f64) -> Point {
        Point::polar(self.radius, alpha) + Point::polar(self.eccentricity, 3.0 * alpha)
    }

    pub(crate) fn at(self, alpha: f64) -> Point {
        let generator = self.generator(alpha);
        if self.offset == 0.0 {
            return generator;
        }
        generator.along(Direction::of(self.normal_angle(alpha)), self.offset)
    }

    pub(crate) fn steepest_lean(self) -> f64 {
        (3.0 * self.eccentricity / self.radius).asin()
    }

    pub(crate) fn lean_at(self, alpha: f64) -> f64 {
        let (sin, cos) = (2.0 * alpha).sin_cos();
        let three = 3.0 * self.eccentricity;
        (three * sin).atan2(self.radius + three * cos)
    }

    /// The angle of the outward normal; it grows by a full turn when α does.
    pub(crate) fn normal_angle(self, alpha: f64) -> f64 {
        alpha + self.lean_at(alpha)
    }

    /// How fast the point before the offset moves with α.
    pub(crate) fn generator_speed(self, alpha: f64) -> f64 {
        let three = 3.0 * self.eccentricity;
        let square = self.radius * self.radius
            + three * three
            + 2.0 * three * self.radius * (2.0 * alpha).cos();
        square.sqrt()
    }

    /// How fast the normal turns with α: below zero where the curve bulges inward.
    pub(crate) fn normal_rate(self, alpha: f64) -> f64 {
        let (e, r) = (self.eccentricity, self.radius);
        let speed = self.generator_speed(alpha);
        (r * r + 27.0 * e * e + 12.0 * e * r * (2.0 * alpha).cos()) / (speed * speed)
    }

    pub(crate) fn curvature_radius_at(self, alpha: f64) -> f64 {
        self.generator_speed(alpha) / self.normal_rate(alpha) + self.offset
    }
}
