//! Step wear: the ledge that side seals sweep into a face, told apart from the face's warp.
//!
//! Two ways. Read across the swept edge, a short way on each side: over that distance warp is nothing.
//! Or from a map of the whole face: a smooth bend (a quadratic surface) and a step of the swept places,
//! fitted together by least squares; neither can take the other's share where both sides were read.

use super::Refusal;
use super::flatness::{Point, Reference, flatness};
use super::input::{PLACE, all_taken, count, extremes, mean, mm, of_mm};
use super::least_squares::fit;
use super::uncertainty::{Doubt, Measured};
use crate::quantity::Bounds;
use pitleaf_translated::translated;
use uom::si::f64::Length;

/// Two readings across the edge of the swept band.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Across {
    /// On the land that no seal touches.
    pub land: Length,
    /// On the band that the side seals sweep.
    pub swept: Length,
}

/// Step wear from pairs across the edge.
#[derive(Clone, Debug, PartialEq)]
pub struct Steps {
    /// The step at each place: land less swept; above zero is worn.
    pub steps: Vec<Measured>,
    /// The place with the deepest step, the first of equals.
    pub worst: usize,
    /// The mean step.
    pub mean: Measured,
}

/// The step at each place read across the swept edge.
///
/// # Errors
/// [`Refusal::TooFew`] without a pair, [`Refusal::OutOfBounds`] (heights within [`Bounds::HEIGHT`]).
#[translated]
pub fn steps_across(pairs: &[Across], doubt: &Doubt) -> Result<Steps, Refusal> {
    let all = |part: fn(&Across) -> Length| {
        all_taken(&pairs.iter().map(part).collect::<Vec<_>>(), &Bounds::HEIGHT, "step wear", 1)
    };
    let (land, swept) = (all(|pair| pair.land)?, all(|pair| pair.swept)?);
    let doubt = mm(doubt.taken()?.single()) * 2.0_f64.sqrt();
    let depths: Vec<f64> = land.iter().zip(&swept).map(|(land, swept)| land - swept).collect();
    let measured =
        |depth: f64, doubt: f64| Measured { value: of_mm(depth), uncertainty: of_mm(doubt) };
    Ok(Steps {
        worst: extremes(&depths).1.0,
        mean: measured(mean(&depths), doubt / count(depths.len()).sqrt()),
        steps: depths.into_iter().map(|depth| measured(depth, doubt)).collect(),
    })
}

/// Step wear and warp, told apart on a map of a face.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Apart {
    /// How far the swept band lies under the land, on average; above zero is worn.
    pub step: Measured,
    /// The minimum zone of the smooth bend alone: what the face would measure without the step.
    pub warp: Length,
    /// The standard deviation of what neither explains: scratches, and the gauge's noise.
    pub rest: Length,
}

/// Tells step wear from warp on a map of a face, each point marked as swept or not.
///
/// The step's uncertainty is not taken below what the readings' own doubt gives, nor below what their
/// scatter about the model gives.
///
/// # Errors
/// As [`flatness`]; [`Refusal::Unequal`]; [`Refusal::TooFew`] under nine points; [`Refusal::StepHidden`]
/// where the places leave step and bend mixed.
#[translated]
pub fn step_and_warp(points: &[Point], swept: &[bool], doubt: &Doubt) -> Result<Apart, Refusal> {
    const UNKNOWNS: usize = 7;
    const NEEDED: usize = UNKNOWNS + 2;
    if points.len() != swept.len() {
        return Err(Refusal::Unequal { one: points.len(), other: swept.len() });
    }
    let found = "telling step from warp";
    let all = |part: fn(&Point) -> Length, bounds| {
        all_taken(&points.iter().map(part).collect::<Vec<_>>(), bounds, found, NEEDED)
    };
    let (x, y) = (all(|point| point.x, &PLACE)?, all(|point| point.y, &PLACE)?);
    let z = all(|point| point.z, &Bounds::HEIGHT)?;
    let reading = mm(doubt.taken()?.single());
    // Refuses a single line of places with its own sentence, before the model calls it a mix.
    flatness(points, Reference::LeastSquares)?;
    let (x_middle, y_middle) = (mean(&x), mean(&y));
    let size = x
        .iter()
        .map(|x| (x - x_middle).abs())
        .chain(y.iter().map(|y| (y - y_middle).abs()))
        .fold(0.0, f64::max);
    let rows: Vec<[f64; UNKNOWNS]> = x
        .iter()
        .zip(&y)
        .zip(swept)
        .map(|((x, y), &swept)| {
            let (x, y) = ((x - x_middle) / size, (y - y_middle) / size);
            [1.0, x, y, x * x, x * y, y * y, f64::from(u8::from(swept))]
        })
        .collect();
    let model = fit(&rows, &z).ok_or(Refusal::StepHidden)?;
    let squares: f64 = rows.iter().zip(&z).map(|(row, z)| (z - model.at(row)).powi(2)).sum();
    let rest = (squares / count(z.len() - UNKNOWNS)).sqrt();
    let bend: Vec<Point> = points
        .iter()
        .zip(&rows)
        .map(|(point, &[_, _, _, xx, xy, yy, _])| {
            let [_, _, _, in_xx, in_xy, in_yy, _] = model.coefficients;
            Point { z: of_mm(in_xx * xx + in_xy * xy + in_yy * yy), ..*point }
        })
        .collect();
    let noise = model.cofactor[UNKNOWNS - 1][UNKNOWNS - 1].sqrt();
    Ok(Apart {
        step: Measured {
            value: of_mm(-model.coefficients[UNKNOWNS - 1]),
            uncertainty: of_mm(rest.max(reading) * noise),
        },
        warp: flatness(&bend, Reference::MinimumZone)?.value(),
        rest: of_mm(rest),
    })
}

impl Steps {
    /// The deepest step.
    #[must_use]
    pub fn deepest(&self) -> Measured {
        self.steps[self.worst]
    }

    /// How much deeper the worst step is than the mean one: wear to one side.
    #[must_use]
    pub fn uneven(&self) -> Length {
        of_mm(mm(self.deepest().value) - mm(self.mean.value))
    }
}
