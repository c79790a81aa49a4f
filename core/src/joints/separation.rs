//! Firing pressure against the clamp: what holds the stack of housings together.
//!
//! The gas pushes the side housings apart over the chamber's area as seen along the shaft. Of that
//! force the fasteners take a share C and the faces lose the rest of their clamp, (1 − C)·P (Shigley,
//! *Mechanical Engineering Design*, section 8-7). C = 0 is the safe side for the faces.

use super::assumption::spread;
use super::bounds::{self, CHAMBER_AREA, CLAMP, FIRING_PRESSURE, LOAD_SHARE};
use super::{Assumption, Range, Refusal};
use crate::trochoid::{self, Geometry};
use pitleaf_translated::translated;
use uom::si::angle::degree;
use uom::si::area::square_centimeter;
use uom::si::f64::{Angle, Area, Force, Pressure, Ratio};
use uom::si::force::{kilonewton, newton};
use uom::si::pressure::bar;

/// A chamber at one angle of the shaft.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Chamber {
    /// Its pressure over that of the air.
    pub pressure: Range<Pressure>,
    /// Its area seen along the shaft, from the trochoid.
    pub area: Area,
}

impl Chamber {
    /// The chamber of an engine at an angle of the shaft after its least volume.
    #[must_use]
    pub fn after_top(geometry: &Geometry, angle: Angle, pressure: Range<Pressure>) -> Self {
        // The first chamber is least at a quarter turn.
        let shaft = Angle::new::<degree>(90.0) + angle;
        let area = trochoid::Chambers::new(geometry).area(trochoid::Chamber::First, shaft);
        Self { pressure, area }
    }
}

/// The pull on the stack.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Separation {
    /// The separating force.
    pub force: Range<Force>,
    /// The clamp left on the faces; below zero they have parted.
    pub clamp_left: Range<Force>,
    /// The share of the clamp that is used up; from 1 the faces part.
    pub share: Range<Ratio>,
    /// What decides most.
    pub weakest: Assumption,
}

impl Separation {
    /// Whether the faces stay shut, in a sentence.
    #[must_use]
    #[translated]
    pub fn words(&self) -> &'static str {
        let nothing = Force::new::<newton>(0.0);
        if self.clamp_left.least() > nothing {
            "The faces stay shut, even with the least clamp and the highest pressure given."
        } else if self.clamp_left.greatest() > nothing {
            "The faces may part: more clamp, or less pressure."
        } else {
            "The faces part: more clamp, or less pressure."
        }
    }
}

/// The separating force of chambers firing at once, against a clamp.
///
/// # Errors
/// A clamp out of [`CLAMP`], a pressure out of [`FIRING_PRESSURE`], an area out of [`CHAMBER_AREA`], a share out of
/// [`LOAD_SHARE`]; [`Refusal::NoClamp`] where the clamp may be nothing.
pub fn separation(
    clamp: Range<Force>,
    chambers: &[Chamber],
    fastener_share: Range<f64>,
) -> Result<Separation, Refusal> {
    let nothing = Force::new::<newton>(0.0);
    check_clamp(clamp)?;
    LOAD_SHARE.check(fastener_share.least())?;
    LOAD_SHARE.check(fastener_share.greatest())?;
    let mut force = Range::exactly(nothing);
    for chamber in chambers {
        CHAMBER_AREA.check(chamber.area.get::<square_centimeter>())?;
        for pressure in [chamber.pressure.least(), chamber.pressure.greatest()] {
            bounds::check(&FIRING_PRESSURE, pressure.get::<bar>())?;
        }
        force = force.plus(chamber.pressure.map(|pressure| pressure * chamber.area));
    }
    let from_faces = fastener_share.with(force, |share, force| (1.0 - share) * force);
    Ok(Separation {
        force,
        clamp_left: clamp.with(from_faces, |clamp, lost| clamp - lost),
        share: from_faces.with(clamp, |lost, clamp| lost / clamp),
        weakest: Assumption::widest([
            (Assumption::FiringPressure, spread(force)),
            (Assumption::Clamp, spread(clamp)),
            (Assumption::LoadShare, spread(fastener_share.map(|share| 1.0 - share))),
        ]),
    })
}

/// A clamp that is there: a newton at the least.
pub(super) fn check_clamp(clamp: Range<Force>) -> Result<(), Refusal> {
    for force in [clamp.least(), clamp.greatest()] {
        bounds::check(&CLAMP, force.get::<kilonewton>())?;
    }
    if clamp.least() >= Force::new::<newton>(1.0) { Ok(()) } else { Err(Refusal::NoClamp) }
}
