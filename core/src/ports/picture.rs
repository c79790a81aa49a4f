//! The plate as it is drawn: whole hundredths of a millimetre, y downward, as the builder sees it.

use std::fmt::Write;

use uom::si::{
    angle::degree,
    f64::{Angle, Length},
    length::millimeter,
};

use super::View;
use crate::trochoid::{Direction, Engine, Flank, Geometry, Point};

/// A part of the plate in the picture, as seen.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Frame {
    /// The left edge, in hundredths of a millimetre.
    pub left: i32,
    /// The upper edge, y downward.
    pub top: i32,
    /// The width.
    pub width: i32,
    /// The height.
    pub height: i32,
}

impl Frame {
    /// The whole plate, out to the coolant land.
    #[must_use]
    pub fn of(engine: &Engine) -> Self {
        Self::around(&engine.coolant_land().polyline(72), Length::new::<millimeter>(3.0))
    }

    /// What holds all the points with a margin around them.
    #[must_use]
    pub fn around(points: &[Point], margin: Length) -> Self {
        let start = (f64::MAX, f64::MIN);
        let span = |of: fn(&Point) -> f64| {
            points.iter().map(of).fold(start, |(low, high), v| (low.min(v), high.max(v)))
        };
        let (x, y) = (span(|p| p.x), span(|p| p.y));
        let margin = margin.get::<millimeter>();
        let hundredths =
            |low: f64, high: f64| (hundredths(low - margin), hundredths(high - low + 2.0 * margin));
        let (left, width) = hundredths(x.0, x.1);
        let (top, height) = hundredths(-y.1, -y.0);
        Self { left, top, width, height }
    }

    /// Grown about its middle to the shape of another: pictures keep their height as they change.
    #[must_use]
    pub fn shaped_like(self, other: Self) -> Self {
        let (wide, high) = (i64::from(other.width), i64::from(other.height));
        let small = |value: i64, least: i32| i32::try_from(value).unwrap_or(least).max(least);
        let width = small(i64::from(self.height) * wide / high.max(1), self.width);
        let height = small(i64::from(width) * high / wide.max(1), self.height);
        Self {
            left: self.left - (width - self.width) / 2,
            top: self.top - (height - self.height) / 2,
            width,
            height,
        }
    }

    /// As an SVG's `viewBox`.
    #[must_use]
    pub fn view_box(self) -> String {
        format!("{} {} {} {}", self.left, self.top, self.width, self.height)
    }

    /// The place as seen at a share of the picture's width and height.
    #[must_use]
    pub fn place(self, across: f64, down: f64) -> Point {
        let at =
            |start: i32, size: i32, share: f64| 0.01 * (f64::from(start) + f64::from(size) * share);
        Point { x: at(self.left, self.width, across), y: -at(self.top, self.height, down) }
    }
}

/// Where a point as seen lies in the picture.
#[must_use]
pub fn drawn(point: Point) -> (i32, i32) {
    (hundredths(point.x), hundredths(-point.y))
}

/// How large a numbered mark is in the picture: its radius.
pub const MARK: i32 = 1120;

/// Where numbered marks stand in the picture, each beside its place as seen: nearer the shaft, and as far
/// on as it takes to keep clear of the marks before it. A line from the mark leads to the place.
#[must_use]
pub fn marks(places: &[Point]) -> Vec<(i32, i32)> {
    // In millimetres: a little more than the radius.
    const BESIDE: f64 = 0.0125 * MARK as f64;
    let mut marks: Vec<(i32, i32)> = Vec::new();
    for place in places {
        let inward = Point { x: -place.x, y: -place.y }.direction();
        let way = inward.unwrap_or(Direction { x: 0.0, y: 1.0 });
        let is_free = |at: (i32, i32)| {
            marks.iter().all(|other| {
                let (x, y) = (f64::from(at.0 - other.0), f64::from(at.1 - other.1));
                x.hypot(y) >= f64::from(2 * MARK)
            })
        };
        let far_on = |step: u32| drawn(place.along(way, BESIDE * f64::from(step)));
        // So many marks never lie in a row that none of a hundred steps is free.
        marks.push((1..100).map(far_on).find(|at| is_free(*at)).unwrap_or(far_on(1)));
    }
    marks
}

/// A length in the picture.
#[must_use]
pub fn drawn_length(length: Length) -> i32 {
    hundredths(length.get::<millimeter>())
}

/// A line through points as seen, as an SVG path.
#[must_use]
pub fn path(points: impl IntoIterator<Item = Point>, closed: bool) -> String {
    let mut data = String::new();
    for (i, point) in points.into_iter().enumerate() {
        let (x, y) = drawn(point);
        // Writing to a string can't fail.
        let _ = write!(data, "{}{x} {y}", if i == 0 { 'M' } else { 'L' });
    }
    if closed && !data.is_empty() {
        data.push('Z');
    }
    data
}

/// The flank, or the side seal's line, all round the rotor, in the rotor's frame.
#[must_use]
pub fn flank_round(flank: Flank) -> Vec<Point> {
    let third = flank.polyline(64);
    let turns = [0.0, 1.0, 2.0].map(|k| Direction::of(std::f64::consts::TAU * k / 3.0));
    turns.iter().flat_map(|turn| third.iter().map(|point| point.turned(*turn))).collect()
}

/// Where the rotor stands, as an SVG transform of a picture of it in its own frame (y upward, which
/// the view's own mirroring then turns over).
#[must_use]
pub fn rotor_transform(geometry: &Geometry, view: View, theta: Angle) -> String {
    let pose = geometry.pose(theta);
    let (x, y) = drawn(view.turn_over(pose.centre));
    let turn = hundredths(pose.turn.get::<degree>());
    // As seen with the shaft turning against the clock, a turn to the left is one below zero here.
    let (sign, mirror) = match view.rotation {
        super::Rotation::Anticlockwise => ("-", ""),
        super::Rotation::Clockwise => ("", "scale(-1 1)"),
    };
    format!("translate({x} {y})rotate({sign}{}.{:02}){mirror}", turn / 100, turn % 100)
}

fn hundredths(value: f64) -> i32 {
    #[expect(clippy::cast_possible_truncation, reason = "a plate is well under a kilometre")]
    let whole = (value * 100.0).round() as i32;
    whole
}
