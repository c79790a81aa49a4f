//! The open area of a port over a chamber's full cycle.

use std::{f64::consts::TAU, num::NonZeroU32};

use uom::si::{
    angle::{degree, radian},
    area::square_millimeter,
    f64::{Angle, Area},
};

use super::{OpenAreas, Opening, Port};
use crate::trochoid::Chamber;

/// The open area at evenly spaced shaft angles, for all three chambers.
///
/// The chambers see the same rotor a turn of the shaft apart, so one turn worked out for all three
/// is the full 1080° of each.
#[derive(Debug, Clone, PartialEq)]
pub struct Sweep {
    pub(super) per_turn: u32,
    pub(super) openings: Vec<Opening>,
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
        let mut sweeping = Sweeping::new(per_turn);
        sweeping.go_on(self, per_turn.get());
        sweeping.finish(self)
    }
}

/// A sweep that goes on so many steps at a time: a phone's frame has no room for all of it.
#[derive(Debug, Clone)]
pub(super) struct Sweeping {
    per_turn: u32,
    next: u32,
    samples: Vec<Sample>,
}

impl Sweeping {
    pub(super) fn new(per_turn: NonZeroU32) -> Self {
        let per_turn = per_turn.get();
        Self { per_turn, next: 0, samples: vec![Sample::default(); 3 * per_turn as usize] }
    }

    /// Goes on at most so many steps. Whether that was the last of them.
    pub(super) fn go_on(&mut self, port: &Port, steps: u32) -> bool {
        let end = self.per_turn.min(self.next.saturating_add(steps));
        let turn = self.per_turn as usize;
        let mut seen = Vec::new();
        for step in self.next as usize..end as usize {
            let open = port.open_at(angle_of(step, self.per_turn), &mut seen);
            for chamber in 0..3 {
                self.samples[step + chamber * turn] =
                    Sample { area: open.areas[chamber], open: open.open[chamber] };
            }
        }
        self.next = end;
        end == self.per_turn
    }

    /// The sweep, once it has gone all the way.
    pub(super) fn finish(self, port: &Port) -> Sweep {
        let mut sweep =
            Sweep { per_turn: self.per_turn, openings: Vec::new(), samples: self.samples };
        sweep.openings = port.openings(&sweep);
        sweep
    }
}

impl Sweep {
    /// The shaft angle between samples.
    #[must_use]
    pub fn step(&self) -> Angle {
        Angle::new::<degree>(360.0 / f64::from(self.per_turn))
    }

    /// Every stretch of a chamber's cycle over which the port is open, in order of opening. What
    /// opens and closes again within one step is not seen.
    #[must_use]
    pub fn openings(&self) -> &[Opening] {
        &self.openings
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
        angle_of(step, self.per_turn)
    }

    /// The first chamber's open area between the steps.
    #[expect(clippy::cast_possible_truncation, reason = "the place is within the samples")]
    pub(super) fn between(&self, theta: f64) -> f64 {
        let count = self.samples.len();
        let place = (theta / TAU * f64::from(self.per_turn)).rem_euclid(count as f64);
        let before = place as usize % count;
        let share = place.fract();
        let (low, high) = (self.samples[before].area, self.samples[(before + 1) % count].area);
        low + (high - low) * share
    }
}

pub(super) fn angle_of(step: usize, per_turn: u32) -> f64 {
    TAU * step as f64 / f64::from(per_turn)
}
