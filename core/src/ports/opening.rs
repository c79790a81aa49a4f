//! When a port opens and closes, to the last digit.

use std::f64::consts::TAU;

use uom::si::{angle::radian, f64::Angle};

use super::{Port, Sweep};
use crate::trochoid::Chamber;

/// One stretch of the shaft's turning over which a port is open to a chamber.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Opening {
    /// The first chamber's θ at which the port opens, from 0 to 1080°.
    pub(crate) opens: f64,
    /// The θ at which it closes, after `opens`.
    pub(crate) closes: f64,
}

impl Opening {
    /// The shaft angle θ at which the port opens to a chamber, from 0° to 1080°.
    #[must_use]
    pub fn opens(&self, chamber: Chamber) -> Angle {
        let angle = self.opens - chamber.lead().get::<radian>();
        Angle::new::<radian>(angle.rem_euclid(3.0 * TAU))
    }

    /// The shaft angle θ at which it closes: `opens` and the duration after it.
    #[must_use]
    pub fn closes(&self, chamber: Chamber) -> Angle {
        self.opens(chamber) + self.duration()
    }

    /// How long it stays open.
    #[must_use]
    pub fn duration(&self) -> Angle {
        Angle::new::<radian>(self.closes - self.opens)
    }
}

impl Port {
    /// Every stretch over which the port is open. The sweep shows between which steps the port opens
    /// and closes; from there it is searched out by halves until nothing is left to halve.
    pub(super) fn openings(&self, sweep: &Sweep) -> Vec<Opening> {
        let samples = &sweep.samples;
        let count = samples.len();
        let Some(shut) = samples.iter().position(|sample| !sample.open) else {
            return vec![Opening { opens: 0.0, closes: 3.0 * TAU }];
        };
        let mut openings = Vec::new();
        let mut opened = None;
        for i in shut..shut + count {
            let (now, next) = (samples[i % count].open, samples[(i + 1) % count].open);
            if now == next {
                continue;
            }
            let at = self.change(sweep.angle(i), sweep.angle(i + 1), now);
            match opened.take() {
                None => opened = Some(at),
                Some(opens) => openings.push(Opening { opens, closes: at }),
            }
        }
        for opening in &mut openings {
            let turns = (opening.opens / (3.0 * TAU)).floor() * 3.0 * TAU;
            opening.opens -= turns;
            opening.closes -= turns;
        }
        openings.sort_by(|a, b| a.opens.total_cmp(&b.opens));
        openings
    }

    /// The first chamber's θ between two at which the port opens, or shuts if it was open.
    fn change(&self, from: f64, to: f64, was: bool) -> f64 {
        let mut seen = Vec::new();
        let (mut low, mut high) = (from, to);
        for _ in 0..32 {
            let middle = 0.5 * (low + high);
            if self.open_at(middle, &mut seen).open[0] == was {
                low = middle;
            } else {
                high = middle;
            }
        }
        0.5 * (low + high)
    }
}
