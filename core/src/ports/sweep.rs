//! The open area of a port over a chamber's full cycle.

use std::num::NonZeroU32;

use uom::si::{
    angle::{degree, radian},
    area::square_millimeter,
    f64::{Angle, Area},
};

use super::{OpenAreas, Port};
use crate::trochoid::Chamber;

/// The open area at evenly spaced shaft angles, for all three chambers.
///
/// The chambers see the same rotor a turn of the shaft apart, so one turn worked out for all three
/// is the full 1080° of each.
#[derive(Debug, Clone, PartialEq)]
pub struct Sweep {
    per_turn: u32,
    /// The first chamber's, from θ = 0 on.
    pub(super) samples: Vec<Sample>,
}

/// The first chamber at one shaft angle.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub(super) struct Sample {
    pub(super) area: f64,
    pub(super) open: bool,
}

impl Port {
    /// The open area to each chamber at the shaft angle θ.
    #[must_use]
    pub fn open_areas(&self, theta: Angle) -> OpenAreas {
        self.open_at(theta.get::<radian>(), &mut Vec::new())
    }

    /// Sweeps the port over a chamber's full cycle, with so many steps to a turn of the shaft.
    #[must_use]
    pub fn sweep(&self, per_turn: NonZeroU32) -> Sweep {
        let per_turn = per_turn.get();
        let mut samples = vec![Sample::default(); 3 * per_turn as usize];
        let mut seen = Vec::new();
        for step in 0..per_turn {
            let open = self.open_at(angle_of(step, per_turn), &mut seen);
            for chamber in 0..3 {
                let at = step as usize + chamber * per_turn as usize;
                samples[at] = Sample { area: open.areas[chamber], open: open.open[chamber] };
            }
        }
        Sweep { per_turn, samples }
    }
}

impl Sweep {
    /// The shaft angle between samples.
    #[must_use]
    pub fn step(&self) -> Angle {
        Angle::new::<degree>(360.0 / f64::from(self.per_turn))
    }

    /// The open area to a chamber at each step of its full cycle, from θ = 0 on.
    pub fn areas(&self, chamber: Chamber) -> impl Iterator<Item = Area> {
        let lead = chamber.index() * self.per_turn as usize;
        let count = self.samples.len();
        (0..count)
            .map(move |i| Area::new::<square_millimeter>(self.samples[(i + lead) % count].area))
    }

    /// The first chamber's shaft angle at a step, in radians.
    pub(super) fn angle(&self, step: usize) -> f64 {
        angle_of(u32::try_from(step).unwrap_or(u32::MAX), self.per_turn)
    }
}

fn angle_of(step: u32, per_turn: u32) -> f64 {
    std::f64::consts::TAU * f64::from(step) / f64::from(per_turn)
}
