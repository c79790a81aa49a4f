//! Lapping: how much must come off a face, and what that does to its hardened skin and to the stack.
//!
//! A lap takes the high spots first. With d off the highest place, a face of flatness f ends no worse
//! than f − d, and a low place as deep as f loses nothing until d passes f. The stack rests on the high
//! spots, so it shortens by d.

use super::Refusal;
use super::input::{UNCERTAINTY, millimetres, mm, of_mm, taken};
use super::skin::{Skin, SkinLeft};
use super::uncertainty::Measured;
use crate::quantity::Bounds;
use pitleaf_translated::{tr, translated};
use uom::si::f64::Length;

/// The two orders of lapping and hardening. Common practice, no source.
#[translated]
pub const ORDER: &str = "Two orders are in use, common practice, no source. Lap, then harden: the whole new skin stays, but hardening adds height, roughens the face and can bend it, and nothing trues it afterwards. Rough lap, harden, then a light finish: true and smooth, but the finish takes off the compound layer first. Agree on one with whoever hardens. Either way, measure flatness, thickness and roughness after the last of it.";

const FLATNESS: Bounds = millimetres(tr!("The flatness"), 0, 5);
const WORST_PLACE: Bounds = millimetres(tr!("The worst place"), 0, 5);
const WANTED: Bounds = millimetres(tr!("The flatness wanted"), 0, 5);
const CASE: Bounds = millimetres(tr!("The case depth"), 0, 5);
const GROWTH: Bounds = millimetres(tr!("The growth"), 0, 1);
const FINISH: Bounds = millimetres(tr!("The finish"), 0, 1);
const COMPOUND: Bounds = millimetres(tr!("The compound layer"), 0, 1);
const BEFORE: Bounds = millimetres(tr!("What came off before"), 0, 5);

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

/// The hardening that follows.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Hardening {
    /// What it adds to the face.
    pub growth: Option<Range>,
    /// What a finish takes off after it; zero where the face is hardened last.
    pub finish: Length,
    /// The new compound layer (CLT).
    pub compound: Option<Range>,
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
    /// The skin the face has then.
    pub lapped: Skin,
    /// The new compound layer as the finish leaves it; none where it was not given.
    pub compound: Option<(SkinLeft, Range)>,
    /// What the face adds to the stack's length: below zero shortens it.
    pub stack_change: Range,
}

/// Plans the lapping of one face that has a `skin`, and is hardened afterwards.
///
/// # Errors
/// [`Refusal::OutOfBounds`] (the job's figures, the case and what came off before 0 to 5 mm; growth, finish and
/// compound layer 0 to 1 mm) and [`Refusal::Backwards`] for a range.
pub fn plan(job: &Job, skin: &Skin, hardening: &Hardening) -> Result<Plan, Refusal> {
    let flatness = taken(job.flatness, &FLATNESS, None)?;
    let worst_place = taken(job.worst_place, &WORST_PLACE, None)?;
    let wanted = taken(job.wanted, &WANTED, None)?;
    skin.depth.map(|depth| ordered(depth, &CASE)).transpose()?;
    taken(skin.taken_off.value, &BEFORE, None)?;
    taken(skin.taken_off.uncertainty, &UNCERTAINTY, None)?;
    let (grows_least, grows_most) = match hardening.growth {
        Some(growth) => ordered(growth, &GROWTH)?,
        None => (0.0, 0.0),
    };
    let finish = taken(hardening.finish, &FINISH, None)?;
    hardening.compound.map(|compound| ordered(compound, &COMPOUND)).transpose()?;
    let for_flatness = (flatness - wanted).max(0.0);
    let removal = for_flatness.max(worst_place);
    let reason = if removal == 0.0 {
        Reason::Nothing
    } else if worst_place > for_flatness {
        Reason::WorstPlace
    } else {
        Reason::Flatness
    };
    let off = |millimetres| Measured { value: of_mm(millimetres), uncertainty: of_mm(0.0) };
    let new_layer = Skin { depth: hardening.compound, taken_off: off(finish), is_whole: true };
    Ok(Plan {
        removal: of_mm(removal),
        reason,
        flatness_left: of_mm((flatness - removal).max(0.0)),
        lapped: skin.after(&off(removal)),
        compound: new_layer.left(),
        stack_change: range(grows_least - removal - finish, grows_most - removal - finish),
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
