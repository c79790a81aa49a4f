//! The limits of a size by its tolerance class.

use super::deviation_rows::{FINE_STEPS, STEPS, Step};
use super::{Class, FitFault, Letter};
use crate::quantity::{Amount, Span, Unit};
use std::cmp::Ordering;

/// The deviations of a size's limits from the nominal size.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Limits {
    /// Lower limit less nominal size (EI, ei).
    pub lower: Span,
    /// Upper limit less nominal size (ES, es).
    pub upper: Span,
}

/// The limits of a nominal size in a tolerance class (ISO 286-1:2010), exactly.
///
/// DIFFERENCE: JS and js are ± half the tolerance to the half micrometre; the first edition of the
/// standard let odd tolerances be rounded down in grades 7 to 11.
///
/// # Errors
/// [`FitFault::Size`] outside the tables, [`FitFault::Undefined`] for a class the standard does not
/// define.
///
/// # Examples
/// ```
/// use pitleaf_core::joints::fits::{Class, limits};
/// use pitleaf_core::quantity::{Amount, Unit};
/// let limits = limits(Amount::whole(50, Unit::Millimetre), Class::read("s6")?)?;
/// assert_eq!(limits.upper.value(Unit::Micrometre), 59.0);
/// assert_eq!(limits.lower.value(Unit::Micrometre), 43.0);
/// # Ok::<(), pitleaf_core::joints::fits::FitFault>(())
/// ```
pub fn limits(nominal: Amount, class: Class) -> Result<Limits, FitFault> {
    let step =
        STEPS.iter().find(|step| spans(step.over, step.to, nominal)).ok_or(FitFault::Size)?;
    let tolerance = step.tolerance[usize::from(class.grade() - Class::GRADES.start())];
    if class.letter() == Letter::Js {
        return Ok(Limits { lower: halves(-tolerance), upper: halves(tolerance) });
    }
    let (from_lower, deviation) = if class.is_hole() {
        hole_deviation(step, nominal, class)
    } else {
        shaft_deviation(step, nominal, class)
    }
    .ok_or(FitFault::Undefined(class))?;
    let (lower, upper) = if from_lower {
        (deviation, deviation + tolerance)
    } else {
        (deviation - tolerance, deviation)
    };
    Ok(Limits { lower: halves(2 * lower), upper: halves(2 * upper) })
}

/// Whether the deviation is that of the lower limit, and the deviation in micrometres.
fn shaft_deviation(step: &Step, nominal: Amount, class: Class) -> Option<(bool, i32)> {
    let [k, m, n, p] = step.k_to_p;
    let deviation = match (class.letter(), class.grade()) {
        (Letter::D | Letter::E | Letter::F | Letter::G | Letter::H, _) => {
            return Some((false, clear(step, class.letter())));
        }
        (Letter::J, 5) => step.j[0],
        (Letter::J, grade) => *step.j.get(usize::from(grade - 6))?,
        (Letter::Js, _) => return None,
        (Letter::K, 5..=7) => k,
        (Letter::K, _) => 0,
        (Letter::M, _) => m,
        (Letter::N, _) => n,
        (Letter::P, _) => p,
        (Letter::R | Letter::S, _) => fine(nominal, class.letter())?,
    };
    Some((true, deviation))
}

/// As [`shaft_deviation`]: holes mirror the shafts, shifted by Δ up to grade 8 (K, M, N) or 7 (P, R, S).
fn hole_deviation(step: &Step, nominal: Amount, class: Class) -> Option<(bool, i32)> {
    let [k, m, n, p] = step.k_to_p;
    let grade = class.grade();
    let delta = |last: u8| {
        if grade <= last { step.delta[usize::from(grade - Class::GRADES.start())] } else { 0 }
    };
    let deviation = match (class.letter(), grade) {
        (Letter::D | Letter::E | Letter::F | Letter::G | Letter::H, _) => {
            return Some((true, -clear(step, class.letter())));
        }
        (Letter::J, 6..=8) => step.hole_j[usize::from(grade - 6)],
        (Letter::J | Letter::Js, _) => return None,
        (Letter::K, ..=8) => delta(8) - k,
        (Letter::K, _) => step.k_n_above_8?[0],
        (Letter::M, _) => delta(8) - m,
        (Letter::N, ..=8) => delta(8) - n,
        (Letter::N, _) => step.k_n_above_8.map_or(0, |above| above[1]),
        (Letter::P, _) => delta(7) - p,
        (Letter::R | Letter::S, _) => delta(7) - fine(nominal, class.letter())?,
    };
    Some((false, deviation))
}

/// The upper deviation of a shaft that is never tight in H: d to h.
fn clear(step: &Step, letter: Letter) -> i32 {
    let [d, e, f, g] = step.d_to_g;
    match letter {
        Letter::D => d,
        Letter::E => e,
        Letter::F => f,
        Letter::G => g,
        _ => 0,
    }
}

fn fine(nominal: Amount, letter: Letter) -> Option<i32> {
    let step = FINE_STEPS.iter().find(|step| spans(step.over, step.to, nominal))?;
    Some(if letter == Letter::R { step.r } else { step.s })
}

fn spans(over: i64, to: i64, size: Amount) -> bool {
    let edge = |mm: i64| size.order(Amount::whole(mm, Unit::Millimetre));
    edge(over) == Some(Ordering::Greater) && edge(to).is_some_and(Ordering::is_le)
}

/// Half micrometres, which every limit of the standard is a whole number of.
fn halves(count: i32) -> Span {
    let nominal = Amount::whole(0, Unit::Micrometre);
    Amount::exact(count.into(), 2, Unit::Micrometre).unwrap_or(nominal).minus(nominal)
}
