//! A face's reading under the conditions of its limit: at the sea, and at the limit's own cranking speed.

use super::Compression;
use crate::quantity::Unit;
use pitleaf_translated::{tr, translated};
use std::fmt;

/// How near a speed counts as the limit's own, in turns a minute: a starter wanders so much while it
/// cranks. Common practice, no source.
const NEAR: u32 = 10;
/// The greatest error of a cranking speed as the tester shows it, in turns a minute either way. From memory.
const SPEED_ERROR: f64 = 5.0;
/// How far past two speeds their line is trusted, as a share of what lies between them.
const BEYOND: f64 = 0.25;

/// What stands in place of a verdict.
pub const NOT_COMPARED: &str = tr!("Can’t be compared");

/// A reading under the conditions of its limit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Compared {
    /// The pressure, in kilopascals.
    pub pressure: f64,
    /// Its standard uncertainty, in kilopascals.
    pub uncertainty: f64,
    /// Whether it is brought to the limit's speed by two tests.
    pub by_two_speeds: bool,
}

/// Why a reading can't be compared with its limit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NotCompared {
    /// The speed it was cranked at, in whole turns a minute.
    pub cranked: i64,
    /// The limit's.
    pub wanted: u32,
}

impl Compression {
    /// Whether it was cranked as fast as another, near enough.
    pub(super) fn is_cranked_like(&self, other: &Self) -> bool {
        (self.speed.value() - other.speed.value()).abs() <= f64::from(NEAR)
    }
}

/// A face under the conditions of a limit that holds at `wanted` turns a minute. `doubt` is a reading's
/// standard uncertainty in kilopascals; `others` are tests of the same engine in the same state.
///
/// # Errors
/// [`NotCompared`] where neither this test is near enough to that speed, nor the line between it and
/// another reaches there.
pub fn compare(
    test: &Compression,
    others: &[Compression],
    face: usize,
    wanted: u32,
    doubt: impl Fn(&Compression) -> f64,
) -> Result<Compared, NotCompared> {
    let at = f64::from(wanted);
    let cranked = test.speed.value();
    let (pressure, own, air, by_two_speeds) = if (cranked - at).abs() <= f64::from(NEAR) {
        let (pressure, own) = at_sea_level(test, face, &doubt);
        (pressure, own, test.air.doubt(), false)
    } else {
        let lines = others.iter().filter_map(|other| {
            let line = between((test, other), face, at, &doubt)?;
            Some((other, line))
        });
        let from = |other: &Compression| (other.speed.value() - at).abs();
        let nearest = lines.min_by(|(one, _), (two, _)| from(one).total_cmp(&from(two)));
        let (other, (pressure, own)) = nearest.ok_or_else(|| NotCompared {
            cranked: test.speed.numerator() / test.speed.denominator(),
            wanted,
        })?;
        // One weather over both: its doubts do not make up for each other.
        (pressure, own, test.air.doubt().max(other.air.doubt()), true)
    };
    Ok(Compared { pressure, uncertainty: own.hypot(pressure * air), by_two_speeds })
}

/// A face referred to the sea, with what gauge and reading leave in doubt; in kilopascals.
fn at_sea_level(
    test: &Compression,
    face: usize,
    doubt: &impl Fn(&Compression) -> f64,
) -> (f64, f64) {
    let factor = test.air.to_sea_level();
    (test.faces[face].amount().value(Unit::Kilopascal) * factor, doubt(test) * factor)
}

/// On the line through two tests at two speeds; none where they lie too near each other, the speed too far
/// from both, or the faster one reads less, which no engine does.
fn between(
    (one, two): (&Compression, &Compression),
    face: usize,
    at: f64,
    doubt: &impl Fn(&Compression) -> f64,
) -> Option<(f64, f64)> {
    let (slow, fast) = (one.speed.value(), two.speed.value());
    let apart = fast - slow;
    let share = (at - slow) / apart;
    if apart.abs() < 2.0 * f64::from(NEAR) || !(-BEYOND..=1.0 + BEYOND).contains(&share) {
        return None;
    }
    let (first, second) = (at_sea_level(one, face, doubt), at_sea_level(two, face, doubt));
    let slope = (second.0 - first.0) / apart;
    if slope <= 0.0 {
        return None;
    }
    let of_speed = slope * SPEED_ERROR / 3_f64.sqrt();
    // One tester at both: its error is the same in them, while the speeds are read apart.
    let tester = (1.0 - share) * first.1 + share * second.1;
    let speeds = (1.0 - share).hypot(share) * of_speed;
    let pressure = first.0 + share * (second.0 - first.0);
    Some((pressure, tester.hypot(speeds)))
}

impl fmt::Display for NotCompared {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self { cranked, wanted } = self;
        write!(
            f,
            "Cranked at {cranked} a minute; the limit holds at {wanted}. Crank it within {NEAR} of that, or test it at two speeds on one day, so that {wanted} lies between them."
        )
    }
}
