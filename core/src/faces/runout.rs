//! Runout of a shaft from a dial indicator at evenly spaced places round it.
//!
//! The first harmonic of the readings is eccentricity and its direction; what remains is out-of-round.
//! For an eccentricity e on a radius r the two mix by no more than e²/2r: 0.02 µm for 0.05 mm on 60 mm.
//! Resting in a V-block, lobes of the shaft move it too: between centres the reading is its own.

use super::Refusal;
use super::input::{all_taken, count, extremes, mean, mm, of_mm};
use super::uncertainty::{Doubt, Measured};
use crate::quantity::Bounds;
use std::f64::consts::TAU;
use uom::si::angle::radian;
use uom::si::f64::{Angle, Length};

/// What a turn of the shaft shows.
#[derive(Clone, Debug, PartialEq)]
pub struct Runout {
    /// Total indicator reading: greatest less least.
    pub total: Measured,
    /// How far the section's middle lies off the axis; half of what it alone adds to the total.
    pub eccentricity: Measured,
    /// Where the high side is, from place 1 in the order of the readings, 0 to a whole turn.
    pub direction: Angle,
    /// The standard uncertainty of the direction; none where the eccentricity is lost in the noise.
    pub direction_uncertainty: Option<Angle>,
    /// Greatest less least of what remains without the eccentricity.
    pub out_of_round: Length,
    /// What remains at each place.
    pub remains: Vec<Length>,
    /// The place with the greatest reading, the first of equals.
    pub highest: usize,
}

/// Places round a shaft that are usual; any other number from 8 to 72 will do.
pub const USUAL_PLACES: [usize; 2] = [8, 12];

/// Analyses readings at evenly spaced places; a higher reading is farther from the axis.
///
/// # Errors
/// [`Refusal::TooFew`] under eight places; [`Refusal::OutOfBounds`] (readings within [`Bounds::HEIGHT`]).
pub fn runout(readings: &[Length], doubt: &Doubt) -> Result<Runout, Refusal> {
    let values = all_taken(readings, &Bounds::HEIGHT, "runout", USUAL_PLACES[0])?;
    let doubt = mm(doubt.taken()?.single());
    let places = count(values.len());
    let angle = |place: usize| TAU * count(place) / places;
    let wave = |part: fn(f64) -> f64| {
        let sum: f64 =
            values.iter().enumerate().map(|(place, value)| value * part(angle(place))).sum();
        2.0 / places * sum
    };
    let (cosine, sine) = (wave(f64::cos), wave(f64::sin));
    let middle = mean(&values);
    let remains: Vec<f64> = values
        .iter()
        .enumerate()
        .map(|(place, value)| {
            value - middle - cosine * angle(place).cos() - sine * angle(place).sin()
        })
        .collect();
    let ((_, least), (highest, greatest)) = extremes(&values);
    let ((_, low), (_, high)) = extremes(&remains);
    let eccentricity = cosine.hypot(sine);
    let noise = doubt * (2.0 / places).sqrt();
    let direction = sine.atan2(cosine);
    let direction = if direction < 0.0 { direction + TAU } else { direction };
    Ok(Runout {
        total: Measured {
            value: of_mm(greatest - least),
            uncertainty: of_mm(doubt * 2.0_f64.sqrt()),
        },
        eccentricity: Measured { value: of_mm(eccentricity), uncertainty: of_mm(noise) },
        direction: Angle::new::<radian>(direction),
        direction_uncertainty: (eccentricity > 2.0 * noise)
            .then(|| Angle::new::<radian>(noise / eccentricity)),
        out_of_round: of_mm(high - low),
        remains: remains.into_iter().map(of_mm).collect(),
        highest,
    })
}
