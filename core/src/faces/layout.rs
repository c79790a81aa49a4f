//! Places to read on a side housing, named by the clock, on both sides of the swept edge.
//!
//! The edge of the band that the side seals sweep runs a few millimetres inside the bore's outline, and
//! the land under the rotor housing begins on it. Common practice, no source.

use super::Refusal;
use super::input::{millimetres, of_mm, taken};
use crate::quantity::Bounds;
use crate::trochoid::Trochoid;
use pitleaf_translated::tr;
use std::f64::consts::TAU;
use std::fmt;
use uom::si::angle::radian;
use uom::si::f64::{Angle, Length};

/// Which ring of places.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ring {
    /// The land under the rotor housing, which no seal touches.
    Land,
    /// The band that the side seals sweep.
    Swept,
}

/// A place to read on a face. As a text it is its key in the book.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spot {
    /// Clock hour, 1 to 12, with the long axis upright; 12 lies towards x of the housing frame, 3 away
    /// from its y.
    pub hour: u8,
    /// Its ring.
    pub ring: Ring,
    /// Along the long axis.
    pub x: Length,
    /// Along the short axis.
    pub y: Length,
}

impl fmt::Display for Spot {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let ring = match self.ring {
            Ring::Land => "land",
            Ring::Swept => "swept band",
        };
        write!(f, "{} o’clock, {ring}", self.hour)
    }
}

const ASIDE: Bounds = millimetres(tr!("A distance from the bore’s outline"), 1, 30);

/// Twelve places a ring, by the clock: the land first, `aside` outside the bore's outline, then the swept
/// band, as far inside it; `aside` must reach past the swept edge. In the housing frame of
/// [`crate::trochoid`].
///
/// # Errors
/// [`Refusal::OutOfBounds`]: 1 to 30 mm aside.
pub fn side_housing_spots(bore: Trochoid, aside: Length) -> Result<Vec<Spot>, Refusal> {
    let aside = of_mm(taken(aside, &ASIDE, None)?);
    let ring = |ring: Ring, curve: Trochoid| {
        (1..=12_u8).map(move |hour| {
            // The clock runs against the angle.
            let point = curve.point(Angle::new::<radian>(-TAU * f64::from(hour) / 12.0));
            Spot { hour, ring, x: point.x(), y: point.y() }
        })
    };
    let land = ring(Ring::Land, bore.beside(aside));
    Ok(land.chain(ring(Ring::Swept, bore.beside(-aside))).collect())
}
