//! The rotor at one shaft angle, and the chamber a place lies in.

use std::f64::consts::{FRAC_PI_3, TAU};

use super::figure::{Local, SealFigure};
use crate::trochoid::{Direction, Point, Trochoid};

const THIRD: f64 = 2.0 * FRAC_PI_3;
/// The directions of the three apexes in the rotor's frame.
const APEXES: [Direction; 3] = [
    Direction { x: 1.0, y: 0.0 },
    Direction { x: -0.5, y: 0.866_025_403_784_438_6 },
    Direction { x: -0.5, y: -0.866_025_403_784_438_6 },
];

/// The sealing figure in the housing at one shaft angle.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Position<'a> {
    pub(crate) figure: &'a SealFigure,
    pub(crate) bore: Trochoid,
    /// A third of θ: the rotor's turn, and the first apex's angle on the bore.
    pub(crate) turn: f64,
    pub(crate) centre: Point,
    back: Direction,
}

/// One apex seal, from its root on the figure to where it touches the bore, in its apex's frame.
#[derive(Debug, Clone, Copy)]
struct Apex {
    lean: f64,
    root: Point,
    contact: Point,
    /// Where the line that parts the chambers begins: the root, or the middle of the nose.
    origin: Point,
}

impl<'a> Position<'a> {
    pub(crate) fn new(figure: &'a SealFigure, bore: Trochoid, theta: f64) -> Self {
        let turn = theta / 3.0;
        Self {
            figure,
            bore,
            turn,
            centre: Point::polar(bore.eccentricity, theta),
            back: Direction::of(-turn),
        }
    }

    /// A place of the housing as the rotor sees it.
    pub(crate) fn seen(&self, place: Point) -> Point {
        (place - self.centre).turned(self.back)
    }

    /// How many apexes an angle on the bore lies past, from the first one's on.
    #[expect(clippy::cast_possible_truncation, reason = "angles stay within a few turns")]
    pub(crate) fn passed(&self, alpha: f64) -> i32 {
        ((alpha - self.turn) / THIRD).floor() as i32
    }

    /// The angle on the bore at which that many apexes are passed.
    pub(crate) fn contact_angle(&self, passed: i32) -> f64 {
        self.turn + THIRD * f64::from(passed)
    }

    /// The chamber of a place outside the figure: that of its third, except right at an apex, where
    /// the line from the seal's root to its contact parts the chambers.
    pub(crate) fn chamber_of(&self, place: Point, local: Local) -> usize {
        if local.x.abs() <= self.figure.end {
            return local.third;
        }
        let index = if local.x > 0.0 { local.third } else { (local.third + 1) % 3 };
        let apex = self.apex(index);
        let from = place.turned(mirrored(APEXES[index])) - apex.origin;
        let along = apex.contact - apex.origin;
        if along.dot(from) <= 0.0 {
            return local.third;
        }
        if along.cross(from) >= 0.0 { index } else { (index + 2) % 3 }
    }

    /// How the area along the edge of a chamber grows up to a place on the figure's edge,
    /// anticlockwise from the middle of the chamber's flank.
    pub(crate) fn edge_sector(&self, chamber: usize, local: Local) -> f64 {
        let own = self.figure.edge_sector(local);
        let whole = 2.0 * self.figure.half_sector;
        match (3 + local.third - chamber) % 3 {
            0 => own,
            1 => own + whole,
            _ => own - whole,
        }
    }

    /// The same up to a place on the apex seal at one end of the chamber.
    pub(crate) fn seal_sector(&self, chamber: usize, index: usize, place: Point) -> f64 {
        let apex = self.apex(index);
        let place = place.turned(mirrored(APEXES[index]));
        let end = if chamber == index { -self.figure.half_sector } else { self.figure.half_sector };
        end + self.figure.nose_sector(apex.lean) + 0.5 * apex.root.cross(place)
    }

    /// Where an apex touches the bore, in the rotor's frame.
    pub(crate) fn contact(&self, index: usize) -> Point {
        self.apex(index).contact.turned(APEXES[index])
    }

    /// The share of the way between two places at which the line crosses an apex seal.
    pub(crate) fn crosses_seal(&self, index: usize, from: Point, to: Point) -> f64 {
        let apex = self.apex(index);
        let along = apex.contact - apex.origin;
        let side = |place: Point| {
            let gap = place.turned(mirrored(APEXES[index])) - apex.origin;
            // Without a nose the seal has no length: any line through the apex will do.
            if along.norm() > 0.0 { along.cross(gap) } else { gap.y }
        };
        let (at_from, at_to) = (side(from), side(to));
        let share = at_from / (at_from - at_to);
        if share.is_finite() { share.clamp(0.0, 1.0) } else { 0.5 }
    }

    fn apex(&self, index: usize) -> Apex {
        let alpha = self.turn + [0.0, THIRD, TAU - THIRD][index];
        let lean = self.bore.lean_at(alpha);
        let way = Direction::of(lean);
        let centre = Point { x: self.bore.radius, y: 0.0 };
        let root = self.figure.root(way);
        let origin = if self.figure.flank.offset < 0.0 { root } else { centre };
        Apex { lean, root, contact: centre.along(way, self.figure.nose), origin }
    }
}

/// The same angle the other way about.
const fn mirrored(way: Direction) -> Direction {
    Direction { x: way.x, y: -way.y }
}

/// The chamber after so many apexes.
pub(crate) const fn chamber_after(passed: i32) -> usize {
    passed.rem_euclid(3).unsigned_abs() as usize
}
