//! A lapping plan in words. Nothing in it is done yet, so nothing in it has a verdict.

use super::face::whole_face;
use super::finding::{both, figure};
use super::{Bench, Finding};
use crate::faces::input::of_mm;
use crate::faces::{
    Hardening, Job, ORDER, Plan, Range, Reason, Skin, SkinLeft, Survey, Taken, plan,
};
use crate::limits::Row;
use crate::quantity::Unit;
use pitleaf_translated::translated;
use uom::si::f64::Length;

/// The row of what lapping takes off.
pub(crate) const LAPPED_OFF: &str = "side-housing-lapped-off";

#[translated]
pub(super) fn report(taken: &Taken, piece: &str, bench: &Bench<'_>) -> Vec<Finding> {
    let what = "To come off the highest place";
    let unit = taken.unit;
    let faces = [Survey::Flatness, Survey::Grid, Survey::OwnPlaces];
    // The face as it was read last, in whatever way.
    let read = bench.latest(&faces, piece);
    let measured = read.and_then(|survey| whole_face(&bench.taken(survey, piece)?).ok());
    let now = taken.length(0).or(measured.map(|measured| measured.value));
    let (Some(flatness), Some(wanted)) = (now, taken.length(2)) else {
        let missing = if now.is_none() {
            "Read the face first, or type its flatness."
        } else {
            "Type the flatness wanted."
        };
        return vec![Finding::new(what, String::new(), missing.to_owned()), order()];
    };
    let job = Job { flatness, worst_place: taken.length(1).unwrap_or_else(|| of_mm(0.0)), wanted };
    let written = (bench.skin)(piece);
    let skin = Skin { depth: range(taken, 3).or(written.depth), ..written };
    let finish = taken.length(7);
    let last =
        Hardening { growth: range(taken, 5), compound: range(taken, 8), ..Hardening::default() };
    let finished = Hardening { finish: finish.unwrap_or_default(), ..last };
    let (plan, finished) = match (plan(&job, &skin, &last), plan(&job, &skin, &finished)) {
        (Ok(plan), Ok(finished)) => (plan, finished),
        (Err(refusal), _) | (_, Err(refusal)) => {
            return vec![Finding::refused(what, refusal), order()];
        }
    };
    let from = match read.filter(|_| taken.length(0).is_none()) {
        Some(survey) => {
            format!("Flatness from the readings written down last ({}). ", survey.name())
        }
        None => String::new(),
    };
    let reason = match plan.reason {
        Reason::Nothing => "The face is good as it is.",
        Reason::Flatness => "The flatness wanted decides.",
        Reason::WorstPlace => "The worst place decides.",
    };
    let mut findings = vec![
        Finding::new(
            what,
            both(plan.removal, unit),
            format!(
                "{from}{reason} Flatness left: at most {}, and the lap’s own.",
                figure(plan.flatness_left, unit)
            ),
        ),
        in_all(&plan, bench.row(LAPPED_OFF), unit),
        skin_left(&plan.lapped, unit),
        hardened_last(&plan, last.growth, unit),
        finished_after(&finished, finish, unit),
        order(),
    ];
    findings.iter_mut().for_each(|finding| finding.is_predicted = true);
    findings
}

/// Two places with the least and the most of a figure; one of them stands for both.
fn range(taken: &Taken, place: usize) -> Option<Range> {
    let (least, most) = (taken.length(place), taken.length(place + 1));
    Some(Range { least: least.or(most)?, most: most.or(least)? })
}

/// What this lapping and all before it take off.
#[translated]
fn in_all(plan: &Plan, row: Option<&Row>, unit: Unit) -> Finding {
    let off = &plan.lapped.taken_off;
    let what = "Off since it was hardened, this included";
    let shown = both(off.value, unit);
    let finding = if plan.lapped.is_whole {
        Finding::new(what, shown, String::new())
    } else {
        let says = "At least: what came off before is not known. Give the casting mark below, and what was taken off before.";
        Finding::new(what, shown, says.to_owned())
    };
    // Only a figure of the builder's own has an edge.
    match row.filter(|row| row.limit.has_edge()) {
        Some(row) => {
            let is_over = off.amount().is_some_and(|off| !row.limit.holds(off));
            let finding = finding.with_limit(row, unit);
            if is_over { finding.saying("That would be past it.") } else { finding }
        }
        None => finding,
    }
}

/// What is left of a skin, in words.
#[must_use]
#[translated]
pub fn skin_left(skin: &Skin, unit: Unit) -> Finding {
    let what = "Hardened case left";
    match skin.left() {
        None => Finding::new(
            what,
            String::new(),
            "Can’t say: the case depth is not given. Ask whoever hardened it for the nitriding hardness depth (NHD, ISO 18203). Where nobody knows, ask for hardening again at any removal.".to_owned(),
        ),
        Some((left, range)) => Finding::new(what, span_of(range, unit), says_of(left).to_owned()),
    }
}

#[translated]
fn says_of(left: SkinLeft) -> &'static str {
    match left {
        SkinLeft::Everywhere => "Some is left everywhere.",
        SkinLeft::InDoubt => {
            "It may be gone where most came off: test the hardness there, or harden again."
        }
        SkinLeft::GoneInPlaces => {
            "Gone where most came off, even if it was as deep as said: harden again."
        }
    }
}

/// The first order: nothing is done to the face after it is hardened.
#[translated]
fn hardened_last(plan: &Plan, growth: Option<Range>, unit: Unit) -> Finding {
    let change = span_of(plan.stack_change, unit);
    let says = if growth.is_some() {
        "Below zero is shorter."
    } else {
        "Below zero is shorter. Lapping alone: type what hardening adds, as the hardener says or from thickness before and after."
    };
    Finding::new("Lapped, hardened last: change of the stack’s length", change, says.to_owned())
        .saying("Journals under the rotors, gear mesh, rear seal track and cover move with it: check them. End play moves only where thrust is taken at both ends.")
}

/// The second order: a light finish after hardening.
#[translated]
fn finished_after(plan: &Plan, finish: Option<Length>, unit: Unit) -> Finding {
    let what = "Finished after hardening: change of the stack’s length";
    if finish.is_none() {
        return Finding::new(what, String::new(), "Type what the finish takes off.".to_owned());
    }
    let layer = match plan.compound {
        None => "The compound layer (CLT, ISO 18203) is not given: a few µm may be all of it."
            .to_owned(),
        Some((SkinLeft::Everywhere, range)) => {
            format!("{} of the compound layer stays.", span_of(range, unit))
        }
        Some((SkinLeft::InDoubt, _)) => {
            "The compound layer may be gone where most comes off.".to_owned()
        }
        Some((SkinLeft::GoneInPlaces, _)) => {
            "The compound layer is gone where most comes off; the zone under it is softer."
                .to_owned()
        }
    };
    Finding::new(what, span_of(plan.stack_change, unit), layer)
}

#[translated]
fn span_of(range: Range, unit: Unit) -> String {
    if range.least == range.most {
        both(range.least, unit)
    } else {
        format!("{} to {}", figure(range.least, unit), figure(range.most, unit))
    }
}

#[translated]
fn order() -> Finding {
    Finding::new("Order", String::new(), ORDER.to_owned())
}
