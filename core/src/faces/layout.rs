//! Places to read on a side housing, named by the clock, on both sides of the swept edge.
//!
//! The bore's outline is the peritrochoid x = e cos 3α + R cos α, y = e sin 3α + R sin α (K. Yamamoto,
//! *Rotary Engine*), here with its long axis upright. The edge of the band that the
//! side seals sweep runs a few millimetres inside it: `aside` must reach past it. Common practice, no source.

use super::Refusal;
use super::input::{millimetres, of_mm, taken};
use crate::quantity::Bounds;
use std::f64::consts::TAU;
use std::fmt;
use uom::si::f64::Length;

/// Which ring of places.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ring {
    /// The land under the rotor housing, which no seal touches.
    Land,
    /// The band that the side seals sweep.
    Swept,
}

/// A place to read on a face.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spot {
    /// Clock hour, 1 to 12, as one looks at the face; 12 is an end of the long axis.
    pub hour: u8,
    /// Its ring.
    pub ring: Ring,
    /// To the right of the shaft.
    pub x: Length,
    /// Over the shaft.
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

const RADIUS: Bounds = millimetres("A generating radius", 20, 500);
const ECCENTRICITY: Bounds = millimetres("An eccentricity", 1, 100);
const ASIDE: Bounds = millimetres("A distance from the outline", 1, 30);

/// Twelve places a ring, by the clock: the land first, then the swept band; `aside` of the outline
/// outwards and inwards along the line from the shaft.
///
/// # Errors
/// [`Refusal::OutOfBounds`]: radius 20 to 500 mm, eccentricity 1 to 100 mm, distance aside 1 to 30 mm.
pub fn side_housing_spots(
    radius: Length,
    eccentricity: Length,
    aside: Length,
) -> Result<Vec<Spot>, Refusal> {
    let radius = taken(radius, &RADIUS, None)?;
    let eccentricity = taken(eccentricity, &ECCENTRICITY, None)?;
    let aside = taken(aside, &ASIDE, None)?;
    let ring = |ring: Ring, offset: f64| {
        (1..=12_u8).map(move |hour| {
            let angle = f64::from(hour) * TAU / 12.0;
            // Upright: the long axis, along which cos 3α and cos α add up, points to 12.
            let up = eccentricity * (3.0 * angle).cos() + radius * angle.cos();
            let right = eccentricity * (3.0 * angle).sin() + radius * angle.sin();
            let stretch = 1.0 + offset / up.hypot(right);
            Spot { hour, ring, x: of_mm(right * stretch), y: of_mm(up * stretch) }
        })
    };
    Ok(ring(Ring::Land, aside).chain(ring(Ring::Swept, -aside)).collect())
}
