//! A port's figures: how large it is, when it is open and how long.

use uom::si::{
    angle::{degree, radian},
    angular_velocity::radian_per_second,
    area::square_millimeter,
    f64::{Angle, AngularVelocity, Area},
};

use super::{Opening, Sweep};

/// Open area summed over the shaft's angle.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default)]
pub struct AngleArea {
    /// In mm²·rad.
    pub(super) sum: f64,
}

/// Open area summed over time.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default)]
pub struct TimeArea {
    /// In mm²·s.
    sum: f64,
}

impl AngleArea {
    /// In mm²·° of the eccentric shaft.
    #[must_use]
    pub fn square_millimetre_degrees(self) -> f64 {
        Angle::new::<radian>(self.sum).get::<degree>()
    }

    /// The same over time at a shaft speed; none if the shaft stands still.
    #[must_use]
    pub fn at(self, speed: AngularVelocity) -> Option<TimeArea> {
        let speed = speed.get::<radian_per_second>();
        (speed.is_finite() && speed > 0.0).then(|| TimeArea { sum: self.sum / speed })
    }
}

impl TimeArea {
    /// In mm²·s.
    #[must_use]
    pub fn square_millimetre_seconds(self) -> f64 {
        self.sum
    }
}

/// The greatest open area and where it is reached.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Greatest {
    /// The area.
    pub area: Area,
    /// The first chamber's shaft angle θ.
    pub theta: Angle,
}

/// What can be said of a port from its sweep.
#[derive(Debug, Clone, PartialEq)]
pub struct PortFigures {
    /// The port's area inside the bore.
    pub area: Area,
    /// When it is open, in order of opening.
    pub openings: Vec<Opening>,
    /// The greatest area open at once.
    pub greatest: Greatest,
    /// The open area summed over the shaft's angle, for one chamber's cycle.
    pub angle_area: AngleArea,
}

impl PortFigures {
    /// The figures of a port with the given area inside the bore.
    #[must_use]
    pub fn new(area: Area, sweep: &Sweep) -> Self {
        Self {
            area,
            openings: sweep.openings().to_vec(),
            greatest: sweep.greatest(),
            angle_area: sweep.angle_area(),
        }
    }

    /// What a cut changed: these figures less those of the stock port.
    #[must_use]
    pub fn since(&self, stock: &Self) -> Change {
        let pair = match (stock.openings.as_slice(), self.openings.as_slice()) {
            ([before], [after]) => Some((*before, *after)),
            _ => None,
        };
        let turned = |from: f64, to: f64| Angle::new::<radian>(nearest_turn(to - from));
        Change {
            area: self.area - stock.area,
            opens_later: pair.map(|(before, after)| turned(before.opens, after.opens)),
            closes_later: pair.map(|(before, after)| turned(before.closes, after.closes)),
            duration: pair.map(|(before, after)| after.duration() - before.duration()),
            greatest: self.greatest.area - stock.greatest.area,
            angle_area: AngleArea { sum: self.angle_area.sum - stock.angle_area.sum },
        }
    }
}

/// What changed from a stock port to a cut one. The times are there if each port opens once.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Change {
    /// Area gained.
    pub area: Area,
    /// How much later it opens; below zero earlier.
    pub opens_later: Option<Angle>,
    /// How much later it closes; below zero earlier.
    pub closes_later: Option<Angle>,
    /// Duration gained.
    pub duration: Option<Angle>,
    /// Greatest open area gained.
    pub greatest: Area,
    /// Angle-area gained.
    pub angle_area: AngleArea,
}

/// An angle brought within half a cycle of zero.
fn nearest_turn(angle: f64) -> f64 {
    let cycle = 3.0 * std::f64::consts::TAU;
    angle - cycle * (angle / cycle).round()
}

impl Sweep {
    /// The greatest area open at once, to the step of the sweep.
    #[must_use]
    pub fn greatest(&self) -> Greatest {
        let mut best = (0, 0.0);
        for (step, sample) in self.samples.iter().enumerate() {
            if sample.area > best.1 {
                best = (step, sample.area);
            }
        }
        Greatest {
            area: Area::new::<square_millimeter>(best.1),
            theta: Angle::new::<radian>(self.angle(best.0)),
        }
    }

    /// The open area summed over one chamber's cycle, by the trapezoid rule.
    #[must_use]
    pub fn angle_area(&self) -> AngleArea {
        let sum: f64 = self.samples.iter().map(|sample| sample.area).sum();
        AngleArea { sum: sum * self.step().get::<radian>() }
    }
}
