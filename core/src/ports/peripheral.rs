//! Peripheral ports: through the bore's surface, opened and closed by the apex seals.

use pitleaf_translated::translated;
use std::{
    f64::consts::{PI, TAU},
    fmt,
    num::NonZeroU32,
};

use uom::si::{
    angle::radian,
    area::square_millimeter,
    f64::{Angle, Area, Length},
    length::millimeter,
};

use super::{
    Opening, Sweep,
    sweep::{Sample, angle_of},
};
use crate::trochoid::{Geometry, Millimetres, Nearest, Point, SectorArea};

/// The place on the bore in a direction from the shaft's axis, the angle counted anticlockwise from the
/// long axis. The bore is even about both axes, so it is the same place however the plate is looked at.
#[must_use]
pub fn on_bore(geometry: &Geometry, angle: Angle) -> Point {
    let (bore, wanted) = (geometry.bore(), angle.get::<radian>());
    let mut alpha = wanted;
    // Direction and bore angle never differ much, and grow nearly alike: each step leaves less than a
    // half of the error.
    for _ in 0..60 {
        let point = bore.at(alpha);
        let off = wanted - point.y.atan2(point.x);
        alpha += (off + PI).rem_euclid(TAU) - PI;
    }
    bore.at(alpha)
}

/// How far from the bore an edge may be given and still be taken as lying on it.
const NEAR: f64 = 1.0;

/// A port in the bore's surface, of one width between two edges.
#[derive(Debug, Clone)]
pub struct PeripheralPort {
    bore: SectorArea,
    /// The bore's angle at the edge the apex seal meets first, from 0 to a whole turn.
    first: f64,
    /// At the other edge, after the first.
    second: f64,
    width: f64,
}

/// Why two edges make no peripheral port.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum PeripheralFault {
    /// An edge is not on the bore.
    OffTheBore {
        /// Which edge, 1 or 2.
        edge: usize,
        /// How far it is off.
        off: Length,
    },
    /// Both edges are the same place.
    NoOpening,
    /// The width is none, or more than the housing's.
    Width {
        /// What was given.
        given: Length,
        /// The housing's width.
        housing: Length,
    },
}

impl fmt::Display for PeripheralFault {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {
            Self::OffTheBore { edge, off } => write!(
                f,
                "edge {edge} of the port is {} off the bore: give a point on the bore",
                Millimetres(off)
            ),
            Self::NoOpening => {
                write!(f, "both edges of the port are the same place: give the other edge too")
            }
            Self::Width { given, housing } => write!(
                f,
                "a port {} wide does not fit a housing {} wide: measure across the housing",
                Millimetres(given),
                Millimetres(housing)
            ),
        }
    }
}

impl std::error::Error for PeripheralFault {}

impl PeripheralPort {
    /// The port from `first` anticlockwise to `second` (housing frame, both on the bore), of one
    /// `width` across the housing.
    ///
    /// # Errors
    /// If an edge is more than 1 mm off the bore, both are the same place, or the width does not
    /// fit the housing.
    pub fn new(
        geometry: &Geometry,
        first: Point,
        second: Point,
        width: Length,
    ) -> Result<Self, PeripheralFault> {
        let nearest = Nearest::new(geometry.bore());
        let mut angles = [0.0; 2];
        for (edge, (angle, point)) in (1..).zip(angles.iter_mut().zip([first, second])) {
            let foot = nearest.foot(point);
            if foot.outside.abs() > NEAR || foot.outside.is_nan() {
                let off = Length::new::<millimeter>(foot.outside.abs());
                return Err(PeripheralFault::OffTheBore { edge, off });
            }
            *angle = foot.alpha.rem_euclid(TAU);
        }
        let housing = geometry.housing_width();
        if !(width > Length::default() && width <= housing) {
            return Err(PeripheralFault::Width { given: width, housing });
        }
        let [first, second] = angles;
        let span = (second - first).rem_euclid(TAU);
        if span < 1e-9 {
            return Err(PeripheralFault::NoOpening);
        }
        let bore = SectorArea::new(geometry.bore());
        Ok(Self { bore, first, second: first + span, width: width.get::<millimeter>() })
    }

    /// Its area, measured along the bore.
    #[must_use]
    pub fn area(&self) -> Area {
        Area::new::<square_millimeter>(self.between(self.first, self.second))
    }

    /// Sweeps the port over a chamber's full cycle.
    #[must_use]
    pub fn sweep(&self, per_turn: NonZeroU32) -> Sweep {
        let per_turn = per_turn.get();
        let samples = (0..3 * per_turn as usize)
            .map(|step| {
                let area = self.open_at(angle_of(step, per_turn));
                Sample { area, open: area > 0.0 }
            })
            .collect();
        // The leading apex opens the port at its first edge, the trailing one closes it at its
        // second.
        let opens = (3.0 * self.first - TAU).rem_euclid(3.0 * TAU);
        let closes = opens + 3.0 * (self.second - self.first) + TAU;
        Sweep { per_turn, openings: vec![Opening { opens, closes }], samples }
    }

    /// The area open to the first chamber, between its two apexes.
    fn open_at(&self, theta: f64) -> f64 {
        let trailing = (theta / 3.0).rem_euclid(TAU);
        let leading = trailing + TAU / 3.0;
        // The port may lie a turn ahead of the trailing apex or behind it.
        [-TAU, 0.0, TAU]
            .map(|turn| (trailing.max(self.first + turn), leading.min(self.second + turn)))
            .iter()
            .filter(|(from, to)| to > from)
            .map(|(from, to)| self.between(*from, *to))
            .sum()
    }

    fn between(&self, from: f64, to: f64) -> f64 {
        (self.bore.length(to) - self.bore.length(from)) * self.width
    }
}
