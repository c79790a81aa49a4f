//! The bolts of a joint as they are drawn: each with its letter and its turn, and the wrench's way between them.

use super::bolts::{Bolts, turn};
use super::sequence::Order;
use crate::ports::picture::{Frame, drawn};
use crate::trochoid::Point;
use std::fmt::Write;
use uom::si::f64::Length;
use uom::si::length::millimeter;

/// A bolt in the picture.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Mark {
    /// What it is called.
    pub name: String,
    /// Where its middle is.
    pub at: (i32, i32),
    /// When its turn comes, and where that stands; none while there is no order.
    pub turn: Option<(String, (i32, i32))>,
}

/// The picture, in hundredths of a millimetre, y downward.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct BoltPicture {
    /// What it shows.
    pub frame: Frame,
    /// The radius of each bolt's round.
    pub radius: i32,
    /// Every bolt.
    pub marks: Vec<Mark>,
    /// The wrench's way, from each bolt's edge to that of the next, as an SVG path.
    pub way: String,
    /// The arrowheads at its ends, as an SVG path.
    pub heads: String,
}

/// The bolts within an outline of their housing, which may be empty.
///
/// Bolts known by name alone stand nowhere: there are no marks then.
#[must_use]
pub fn picture(bolts: &Bolts, order: Option<&Order>, outline: &[Point]) -> BoltPicture {
    const MARGIN: f64 = 28.0;
    let places = bolts.places();
    let all: Vec<Point> = places.iter().chain(outline).copied().collect();
    let around = if all.is_empty() { &[Point::default()][..] } else { &all };
    let frame = Frame::around(around, Length::new::<millimeter>(MARGIN));
    // Many bolts need smaller rounds.
    let radius = frame.width / if places.len() > 24 { 44 } else { 30 };
    let middle = Point {
        x: 0.01 * (f64::from(frame.left) + 0.5 * f64::from(frame.width)),
        y: -0.01 * (f64::from(frame.top) + 0.5 * f64::from(frame.height)),
    };
    let marks = (1_u16..).zip(&places).map(|(bolt, place)| {
        let turns = order.and_then(|order| order.bolts().iter().position(|&next| next == bolt));
        let turned = turns.and_then(|turns| u16::try_from(turns + 1).ok()).map(turn);
        let beside = beside(*place, middle, 0.01 * f64::from(radius));
        Mark {
            name: bolts.name(bolt),
            at: drawn(*place),
            turn: turned.map(|turn| (turn, drawn(beside))),
        }
    });
    let mut picture = BoltPicture {
        frame,
        radius,
        marks: marks.collect(),
        way: String::new(),
        heads: String::new(),
    };
    let turns = order.map(Order::bolts).unwrap_or_default();
    for pair in turns.windows(2) {
        let at = |bolt: u16| places.get(usize::from(bolt.saturating_sub(1))).copied();
        if let (Some(from), Some(to)) = (at(pair[0]), at(pair[1])) {
            picture.leg(from, to);
        }
    }
    picture
}

impl BoltPicture {
    /// One leg of the way, with its arrowhead at the next bolt's edge.
    fn leg(&mut self, from: Point, to: Point) {
        let edge = 0.01 * f64::from(self.radius);
        let long = (to - from).norm();
        // Rounds that touch leave no room for a line between them.
        let Some(way) = (to - from).direction().filter(|_| long > 3.0 * edge) else { return };
        let (start, end) = (from.along(way, edge), from.along(way, long - edge));
        let foot = end.along(way, -0.9 * edge);
        let across = crate::trochoid::Direction { x: -way.y, y: way.x };
        let (left, right) = (foot.along(across, 0.4 * edge), foot.along(across, -0.4 * edge));
        let [start, foot, end, left, right] = [start, foot, end, left, right].map(drawn);
        // Writing to a string can't fail.
        let _ = write!(self.way, "M{} {}L{} {}", start.0, start.1, foot.0, foot.1);
        let _ = write!(
            self.heads,
            "M{} {}L{} {}L{} {}Z",
            end.0, end.1, left.0, left.1, right.0, right.1
        );
    }
}

/// Beside a bolt, away from the middle: above it where it is the middle.
fn beside(place: Point, middle: Point, radius: f64) -> Point {
    let up = crate::trochoid::Direction { x: 0.0, y: 1.0 };
    place.along((place - middle).direction().unwrap_or(up), 1.9 * radius)
}
