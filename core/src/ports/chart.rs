//! The open area over a chamber's cycle, as a curve to draw.

use std::fmt::Write;

use uom::si::{angle::degree, area::square_millimeter, f64::Angle};

use super::{Opening, Sweep, View};
use crate::trochoid::Chamber;

/// The width of the chart: a degree of the shaft is one step; gas exchange in the middle.
pub const WIDTH: i32 = 1080;
/// The height of the chart, for the greatest area.
pub const HEIGHT: i32 = 240;
/// Samples left out between two that are drawn: half a degree is finer than a phone shows.
const STRIDE: usize = 3;

/// Curves of one or more ports over the same cycle, to one scale.
#[derive(Debug, Clone, PartialEq)]
pub struct Chart {
    /// Each port's curve as an SVG path, in the order given.
    pub curves: Vec<String>,
    /// Each port's openings and closings: how far across.
    pub events: Vec<Vec<(i32, i32)>>,
}

impl Chart {
    /// The curves of the ports' sweeps for the first chamber.
    #[must_use]
    pub fn of(sweeps: &[&Sweep], view: View) -> Self {
        let top = sweeps
            .iter()
            .map(|sweep| sweep.greatest().area.get::<square_millimeter>())
            .fold(1.0, f64::max);
        let curves = sweeps.iter().map(|sweep| curve(sweep, view, top)).collect();
        let events = sweeps
            .iter()
            .map(|sweep| {
                let event = |opening: &Opening| {
                    [opening.opens(Chamber::First), opening.closes(Chamber::First)]
                        .map(|theta| across(view, theta))
                        .into()
                };
                sweep.openings().iter().map(event).collect()
            })
            .collect();
        Self { curves, events }
    }
}

fn curve(sweep: &Sweep, view: View, top: f64) -> String {
    let step = sweep.step();
    let mut points: Vec<(i32, i32)> = sweep
        .areas(Chamber::First)
        .enumerate()
        .step_by(STRIDE)
        .map(|(i, area)| {
            let up = area.get::<square_millimeter>() / top;
            (across(view, step * i as f64), HEIGHT - whole(up * f64::from(HEIGHT)))
        })
        .collect();
    points.sort_unstable();
    let mut data = format!("M0 {HEIGHT}");
    for (x, y) in points {
        // Writing to a string can't fail.
        let _ = write!(data, "L{x} {y}");
    }
    let _ = write!(data, "L{WIDTH} {HEIGHT}Z");
    data
}

/// How far across the chart the first chamber is at the shaft angle θ.
#[must_use]
pub fn across(view: View, theta: Angle) -> i32 {
    let cycle = view.cycle_angle(Chamber::First, theta).get::<degree>();
    whole((cycle + 540.0).rem_euclid(1080.0))
}

/// The shaft angle θ at which the first chamber is so many tenths of a degree across the chart.
#[must_use]
pub fn theta_at(view: View, tenths: i32) -> Angle {
    view.theta(Angle::new::<degree>(0.1 * f64::from(tenths) - 540.0))
}

/// How many tenths of a degree across the chart the shaft comes to by turning on.
#[must_use]
pub fn turned_on(tenths: i32, by: Angle) -> i32 {
    (tenths + whole(by.get::<degree>() * 10.0)).rem_euclid(10 * WIDTH)
}

fn whole(value: f64) -> i32 {
    #[expect(clippy::cast_possible_truncation, reason = "a chart is about a thousand wide")]
    let whole = value.round() as i32;
    whole
}
