//! Lapping: how much must come off a face, and what that does to the hardened case and to the stack.
//!
//! A lap takes the high spots first. With d off the highest place, a face of flatness f ends no worse
//! than f − d, and a low place as deep as f loses nothing until d passes f. The stack rests on the high
//! spots, so it shortens by d.

use super::Refusal;
use super::input::{millimetres, mm, of_mm, taken};
use crate::quantity::Bounds;
use pitleaf_translated::{tr, translated};
use uom::si::f64::Length;

/// Why lapping comes before hardening. Common practice, no source.
#[translated]
pub const ORDER: &str = "Lap, then harden. Lapping a hardened face takes off its case, deepest where the face stood highest; hardening first leaves the least where wear comes next. Nitriding adds a little height and can bend the face: measure it again when it comes back.";

const FLATNESS: Bounds = millimetres(tr!("The flatness"), 0, 5);
const WORST_PLACE: Bounds = millimetres(tr!("The worst place"), 0, 5);
const WANTED: Bounds = millimetres(tr!("The flatness wanted"), 0, 5);
const CASE: Bounds = millimetres(tr!("The case depth"), 0, 5);
const GROWTH: Bounds = millimetres(tr!("The growth"), 0, 1);

/// What is wanted of a face.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Job {
    /// Flatness as it is: the minimum zone.
    pub flatness: Length,
    /// How far the worst place (a groove, a step) lies under the highest; zero where none is to be cleared.
    pub worst_place: Length,
    /// Flatness wanted.
    pub wanted: Length,
}

/// A figure that is known only to lie between two others.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Range {
    /// The least it can be.
    pub least: Length,
    /// The most it can be.
    pub most: Length,
}

/// What decides how much comes off.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Reason {
    /// The face is good as it is.
    Nothing,
    /// The flatness wanted.
    Flatness,
    /// The worst place.
    WorstPlace,
}

/// What lapping leaves of a hardened case.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CaseLeft {
    /// Some is left everywhere, whatever the case was within its range.
    Everywhere,
    /// It may be gone where most came off: test the hardness there, or harden again.
    InDoubt,
    /// It is gone where most came off, even if it was as deep as its range allows: harden again.
    GoneInPlaces,
}

/// What must come off a face, and what follows.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Plan {
    /// Off the highest place.
    pub removal: Length,
    /// What decides it.
    pub reason: Reason,
    /// Flatness the removal leaves at the most; the lap's own comes on top.
    pub flatness_left: Length,
    /// The case left where most came off, and how sure it is; zero where it may be gone. None where no
    /// case was given.
    pub case: Option<(CaseLeft, Range)>,
    /// What the face adds to the stack's length: below zero shortens it.
    pub stack_change: Range,
}

/// Plans the lapping of one face.
///
/// `case` is the hardened depth there is; `growth` what nitriding afterwards adds to the face.
///
/// # Errors
/// [`Refusal::OutOfBounds`] (the job's figures and the case 0 to 5 mm, the growth 0 to 1 mm) and
/// [`Refusal::Backwards`] for a range.
pub fn plan(job: &Job, case: Option<Range>, growth: Option<Range>) -> Result<Plan, Refusal> {
    let flatness = taken(job.flatness, &FLATNESS, None)?;
    let worst_place = taken(job.worst_place, &WORST_PLACE, None)?;
    let wanted = taken(job.wanted, &WANTED, None)?;
    let case = case.map(|case| ordered(case, &CASE)).transpose()?;
    let (grows_least, grows_most) = match growth {
        Some(growth) => ordered(growth, &GROWTH)?,
        None => (0.0, 0.0),
    };
    let for_flatness = (flatness - wanted).max(0.0);
    let removal = for_flatness.max(worst_place);
    let reason = if removal == 0.0 {
        Reason::Nothing
    } else if worst_place > for_flatness {
        Reason::WorstPlace
    } else {
        Reason::Flatness
    };
    let left = |(least, most): (f64, f64)| {
        let state = if least > removal {
            CaseLeft::Everywhere
        } else if most > removal {
            CaseLeft::InDoubt
        } else {
            CaseLeft::GoneInPlaces
        };
        (state, range((least - removal).max(0.0), (most - removal).max(0.0)))
    };
    Ok(Plan {
        removal: of_mm(removal),
        reason,
        flatness_left: of_mm((flatness - removal).max(0.0)),
        case: case.map(left),
        stack_change: range(grows_least - removal, grows_most - removal),
    })
}

/// The change of the stack's length from all lapped faces together.
#[must_use]
pub fn stack_change(plans: &[Plan]) -> Range {
    let sum = |part: fn(&Range) -> Length| {
        of_mm(plans.iter().map(|plan| mm(part(&plan.stack_change))).sum())
    };
    Range { least: sum(|range| range.least), most: sum(|range| range.most) }
}

fn ordered(range: Range, bounds: &'static Bounds) -> Result<(f64, f64), Refusal> {
    let least = taken(range.least, bounds, None)?;
    let most = taken(range.most, bounds, None)?;
    if least > most { Err(Refusal::Backwards(bounds)) } else { Ok((least, most)) }
}

fn range(least: f64, most: f64) -> Range {
    Range { least: of_mm(least), most: of_mm(most) }
}
