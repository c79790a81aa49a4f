//! Runout in words, and its direction to draw.

use super::finding::figure;
use super::{Bench, Finding};
use crate::faces::{Refusal, Runout, Taken, runout};
use crate::quantity::{Amount, Rounding, Unit};
use pitleaf_translated::translated;
use std::f64::consts::TAU;
use uom::si::angle::radian;
use uom::si::f64::Length;

/// The key of the flywheel's place; no text, so it stands outside what is translated.
const FLYWHEEL: &str = "flywheel";

fn read(taken: &Taken) -> Result<Option<Runout>, Refusal> {
    let lengths: Vec<Length> = taken.lengths().into_iter().map(|(_, length)| length).collect();
    // The direction needs evenly spaced places: all or none.
    if lengths.len() < taken.places.len() {
        Ok(None)
    } else {
        runout(&lengths, &taken.doubt).map(Some)
    }
}

/// Where the high side of a shaft is, for drawing: to the right and up, as parts of the circle's radius;
/// and half the angle it may be off, where the direction is more than noise.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Direction {
    /// Along x of the places' circle.
    pub x: f64,
    /// Along y.
    pub y: f64,
}

/// The direction of a shaft's high side on the circle of its places; none while it is lost in the noise or
/// not all places are read.
#[must_use]
pub fn direction(taken: &Taken) -> Option<Direction> {
    let runout = read(taken).ok()??;
    runout.direction_uncertainty?;
    let angle = runout.direction.get::<radian>();
    // The places run clockwise from the top, as they are drawn.
    Some(Direction { x: angle.cos(), y: -angle.sin() })
}

#[translated]
pub(super) fn report(taken: &Taken, piece: &str, bench: &Bench<'_>) -> Vec<Finding> {
    let what = "Runout, whole reading";
    let unit = taken.unit;
    let runout = match read(taken) {
        Ok(Some(runout)) => runout,
        Ok(None) => {
            let says = format!(
                "Read all {} places: the direction needs them evenly spaced.",
                taken.places.len()
            );
            return vec![Finding::new(what, String::new(), says)];
        }
        Err(refusal) => return vec![Finding::refused(what, refusal)],
    };
    let row = bench.row(if piece == FLYWHEEL { "flywheel-runout" } else { "shaft-runout" });
    let whole = Finding::measured(what, &runout.total, unit)
        .against(&runout.total, row, unit)
        .saying(&format!("Highest at {}.", taken.said(runout.highest)));
    let off = Finding::measured("Off centre", &runout.eccentricity, unit).saying(&match runout.direction_uncertainty {
        None => "No more than the gauge’s noise: it has no direction.".to_owned(),
        Some(uncertainty) => {
            let turn = runout.direction.get::<radian>() / TAU;
            let places = taken.places.len();
            format!(
                "High side {} from place 1 in the order of the places, ±{} in 95 of 100 cases; nearest to {}.",
                degrees(runout.direction.get::<radian>()),
                degrees(2.0 * uncertainty.get::<radian>()),
                taken.said(nearest(turn, places))
            )
        }
    });
    let rest =
        format!("{} remains without it: out of round, or dirt.", figure(runout.out_of_round, unit));
    vec![whole, off, Finding::new("Out of round", figure(runout.out_of_round, unit), rest)]
}

fn degrees(angle: f64) -> String {
    Amount::nearest(angle.to_degrees(), Unit::Degree)
        .map(|angle| format!("{}°", angle.show(Unit::Degree, 0, Rounding::Nearest)))
        .unwrap_or_default()
}

/// The place nearest to a part of a turn.
fn nearest(turn: f64, places: usize) -> usize {
    let off = |place: usize| {
        let apart =
            (turn - crate::faces::input::count(place) / crate::faces::input::count(places)).abs();
        apart.min(1.0 - apart)
    };
    (0..places).min_by(|&one, &other| off(one).total_cmp(&off(other))).unwrap_or(0)
}
