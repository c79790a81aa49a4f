//! The twist of tightening: what a bolt bears while the wrench is on it.
//!
//! A torque pulls a bolt and twists it at once. What counts against its strength is both together (von
//! Mises), after VDI 2230: σ_red = √(σ² + 3τ²), the twist taken by the whole stress section as it yields,
//! τ = 12·M_G/(π·d_s³); M_G = F·(P/2π + µ·d₂/√3) is what of the torque reaches the thread.
//!
//! The friction of the thread is not known by itself. It is had from the torque and the clamp, taken as the
//! same under the head, which rubs on a mean diameter of 1.25 d (Shigley, *Mechanical Engineering Design*,
//! 9th edition, equation 8-26); so all of the scatter is taken for friction.

use super::Range;
use super::threads::{Thread, length};
use pitleaf_translated::tr;
use std::f64::consts::{PI, TAU};
use uom::si::f64::{Energy, Force, Length, Pressure, Ratio, Torque};
use uom::si::ratio::ratio;

/// What the answer takes for granted, said beside it.
pub const TAKEN: &str = tr!(
    "With the twist while the wrench is on it (VDI 2230, von Mises). Thread friction is had from K, taken as the same under the head, which rubs on 1.25 times the thread’s diameter (Shigley, eq. 8-26)."
);

/// The mean diameter a head rubs on, over the thread's.
const HEAD: f64 = 1.25;

/// Over a circle's thread at 30° a flank: 1/cos 30°, halved with the diameter.
const FLANK: f64 = 0.577_350_269_189_625_8;

/// The coefficient of friction, alike in thread and under the head, with which a torque gives a clamp.
///
/// Zero where the torque is less than the thread's own rise needs.
#[must_use]
pub fn friction(torque: Torque, force: Force, thread: Thread) -> Ratio {
    let arm: Length = Energy::from(torque) / force;
    let rubbing = FLANK * thread.pitch_diameter() + 0.5 * HEAD * length(thread.diameter());
    ((arm - rise(thread)) / rubbing).max(Ratio::new::<ratio>(0.0))
}

/// Pull and twist together, as one stress, at a clamp with a friction in the thread.
#[must_use]
pub fn equivalent(force: Force, friction: Ratio, thread: Thread) -> Pressure {
    let area = thread.stress_area();
    let across: Length = (area * (4.0 / PI)).sqrt();
    let arm = rise(thread) + FLANK * friction * thread.pitch_diameter();
    // τ/σ = 12·F·arm/(π·d³) over 4·F/(π·d²).
    let twist = (3.0 * arm / across).get::<ratio>();
    (force / area) * (1.0 + 3.0 * twist * twist).sqrt()
}

/// Pull and twist together over a range of clamps that one torque gives: the greater clamp is the one with less
/// friction, and bears the more all the same.
#[must_use]
pub fn while_tightened(torque: Torque, force: Range<Force>, thread: Thread) -> Range<Pressure> {
    force.map(|force| equivalent(force, friction(torque, force, thread), thread))
}

fn rise(thread: Thread) -> Length {
    length(thread.pitch()) / TAU
}
