//! A place on the plate, and a direction across it.

use std::ops::{Add, Sub};

use uom::si::{f64::Length, length::millimeter};

/// A place on the plate. It holds millimetres, which is what drawings and outlines are made in.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Point {
    pub(crate) x: f64,
    pub(crate) y: f64,
}

impl Point {
    /// The place at `x` along the long axis and `y` along the short one.
    #[must_use]
    pub fn new(x: Length, y: Length) -> Self {
        Self::from_millimetres(x.get::<millimeter>(), y.get::<millimeter>())
    }

    /// The place at the given millimetres.
    #[must_use]
    pub const fn from_millimetres(x: f64, y: f64) -> Self {
        Self { x, y }
    }

    /// Both coordinates in millimetres, as a drawing wants them.
    #[must_use]
    pub const fn millimetres(self) -> (f64, f64) {
        (self.x, self.y)
    }

    /// How far along the long axis.
    #[must_use]
    pub fn x(self) -> Length {
        Length::new::<millimeter>(self.x)
    }

    /// How far along the short axis.
    #[must_use]
    pub fn y(self) -> Length {
        Length::new::<millimeter>(self.y)
    }

    /// How far it is to another place.
    #[must_use]
    pub fn distance(self, other: Self) -> Length {
        Length::new::<millimeter>((self - other).norm())
    }

    pub(crate) fn polar(radius: f64, angle: f64) -> Self {
        let (sin, cos) = angle.sin_cos();
        Self { x: radius * cos, y: radius * sin }
    }

    /// Turned about the origin by the angle whose cosine and sine `by` holds.
    pub(crate) const fn turned(self, by: Direction) -> Self {
        Self { x: self.x * by.x - self.y * by.y, y: self.x * by.y + self.y * by.x }
    }

    pub(crate) const fn along(self, way: Direction, distance: f64) -> Self {
        Self { x: self.x + way.x * distance, y: self.y + way.y * distance }
    }

    pub(crate) const fn between(self, other: Self, share: f64) -> Self {
        Self { x: self.x + (other.x - self.x) * share, y: self.y + (other.y - self.y) * share }
    }

    pub(crate) const fn dot(self, other: Self) -> f64 {
        self.x * other.x + self.y * other.y
    }

    pub(crate) const fn cross(self, other: Self) -> f64 {
        self.x * other.y - self.y * other.x
    }

    /// The direction from the origin to here; none at the origin itself.
    pub(crate) fn direction(self) -> Option<Direction> {
        let norm = self.norm();
        (norm > 0.0).then(|| Direction { x: self.x / norm, y: self.y / norm })
    }

    pub(crate) fn norm(self) -> f64 {
        self.dot(self).sqrt()
    }
}

impl Add for Point {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self { x: self.x + other.x, y: self.y + other.y }
    }
}

impl Sub for Point {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self { x: self.x - other.x, y: self.y - other.y }
    }
}

/// A direction across the plate: a vector of length one, without a unit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Direction {
    pub(crate) x: f64,
    pub(crate) y: f64,
}

impl Direction {
    /// Its share along the long axis, from -1 to 1.
    #[must_use]
    pub const fn x(self) -> f64 {
        self.x
    }

    /// Its share along the short axis, from -1 to 1.
    #[must_use]
    pub const fn y(self) -> f64 {
        self.y
    }

    pub(crate) fn of(angle: f64) -> Self {
        let (y, x) = angle.sin_cos();
        Self { x, y }
    }

    pub(crate) const fn dot(self, point: Point) -> f64 {
        self.x * point.x + self.y * point.y
    }

    pub(crate) const fn cross(self, point: Point) -> f64 {
        self.x * point.y - self.y * point.x
    }
}
