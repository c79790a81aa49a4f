//! The least-squares circle through points of a bore or a journal, and the roundness it leaves.
//!
//! ISO 12181-1:2011, the least squares reference circle: the sum of squared distances to it is least.

use super::Refusal;
use super::input::{PLACE, all_taken, extremes, mean, of_mm};
use super::least_squares::fit;
use uom::si::f64::Length;

/// A circle of least squares.
#[derive(Clone, Debug, PartialEq)]
pub struct Circle {
    /// Its centre, to the right.
    pub x: Length,
    /// Its centre, upwards.
    pub y: Length,
    /// Its radius.
    pub radius: Length,
    /// How far each point lies outside it.
    pub deviations: Vec<Length>,
    /// Roundness: the farthest outside less the farthest inside.
    pub roundness: Length,
}

/// Fits a circle to at least four points (x, y).
///
/// # Errors
/// [`Refusal::TooFew`], [`Refusal::NoCircle`], [`Refusal::OutOfBounds`] (points within a metre).
pub fn least_squares_circle(points: &[[Length; 2]]) -> Result<Circle, Refusal> {
    let axis = |axis: usize| {
        let along: Vec<Length> = points.iter().map(|point| point[axis]).collect();
        all_taken(&along, &PLACE, "roundness", 4)
    };
    let (x, y) = (axis(0)?, axis(1)?);
    let (x_middle, y_middle) = (mean(&x), mean(&y));
    let (x, y): (Vec<f64>, Vec<f64>) =
        x.iter().zip(&y).map(|(x, y)| (x - x_middle, y - y_middle)).unzip();
    let mut circle = algebraic(&x, &y).ok_or(Refusal::NoCircle)?;
    // Gauss and Newton: from the algebraic circle a real bore is there after three steps.
    const STEPS: usize = 50;
    const SETTLED: f64 = 1e-13;
    for _ in 0..STEPS {
        let step = improved(&x, &y, circle).ok_or(Refusal::NoCircle)?;
        for (part, change) in circle.iter_mut().zip(step) {
            *part += change;
        }
        if step.iter().all(|change| change.abs() <= SETTLED * circle[2].abs()) {
            break;
        }
    }
    let [x_centre, y_centre, radius] = circle;
    let deviations: Vec<f64> =
        x.iter().zip(&y).map(|(x, y)| (x - x_centre).hypot(y - y_centre) - radius).collect();
    let ((_, inside), (_, outside)) = extremes(&deviations);
    Ok(Circle {
        x: of_mm(x_centre + x_middle),
        y: of_mm(y_centre + y_middle),
        radius: of_mm(radius),
        deviations: deviations.into_iter().map(of_mm).collect(),
        roundness: of_mm(outside - inside),
    })
}

/// The circle x² + y² = 2ax + 2by + c nearest in the algebraic sense: a good place to start from.
fn algebraic(x: &[f64], y: &[f64]) -> Option<[f64; 3]> {
    let size = x.iter().chain(y).fold(0.0_f64, |most, part| most.max(part.abs()));
    let rows: Vec<[f64; 3]> = x.iter().zip(y).map(|(x, y)| [x / size, y / size, 1.0]).collect();
    let squares: Vec<f64> = rows.iter().map(|row| row[0] * row[0] + row[1] * row[1]).collect();
    let [a, b, c] = fit(&rows, &squares)?.coefficients;
    let (a, b) = (a / 2.0, b / 2.0);
    let radius = (c + a * a + b * b).sqrt();
    Some([a * size, b * size, radius * size])
}

/// The change of centre and radius that the points ask for, to first order.
fn improved(x: &[f64], y: &[f64], [x_centre, y_centre, radius]: [f64; 3]) -> Option<[f64; 3]> {
    let (rows, off): (Vec<[f64; 3]>, Vec<f64>) = x
        .iter()
        .zip(y)
        .map(|(x, y)| {
            let (right, up) = (x - x_centre, y - y_centre);
            let distance = right.hypot(up);
            ([right / distance, up / distance, 1.0], distance - radius)
        })
        .unzip();
    let step = fit(&rows, &off)?.coefficients;
    step.iter().all(|change| change.is_finite()).then_some(step)
}
