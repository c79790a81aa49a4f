//! A lapping plan in words.

use super::face::whole_face;
use super::finding::{both, figure};
use super::{Bench, Finding};
use crate::faces::input::of_mm;
use crate::faces::{CaseLeft, Job, Measured, ORDER, Range, Reason, Survey, Taken, plan};
use pitleaf_translated::translated;
use uom::si::f64::Length;

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
    let range = |least: Option<Length>, most: Option<Length>| {
        Some(Range { least: least.or(most)?, most: most.or(least)? })
    };
    let job = Job { flatness, worst_place: taken.length(1).unwrap_or_else(|| of_mm(0.0)), wanted };
    let case = range(taken.length(3), taken.length(4));
    let growth = range(taken.length(5), taken.length(6));
    let plan = match plan(&job, case, growth) {
        Ok(plan) => plan,
        Err(refusal) => return vec![Finding::refused(what, refusal), order()],
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
    let removal = Measured {
        value: plan.removal,
        uncertainty: measured.map_or(of_mm(0.0), |measured| measured.uncertainty),
    };
    let mut findings = vec![
        Finding::new(
            what,
            both(plan.removal, unit),
            format!(
                "{from}{reason} Flatness left: at most {}, and the lap’s own.",
                figure(plan.flatness_left, unit)
            ),
        )
        .against(&removal, bench.row("side-housing-lapped-off"), unit),
    ];
    findings.push(match plan.case {
        None => Finding::new(
            "Hardened case left",
            String::new(),
            "Depth not given. Ask whoever hardened it: the case may be gone after lapping."
                .to_owned(),
        ),
        Some((left, range)) => Finding::new(
            "Hardened case left",
            span_of(range, unit),
            match left {
                CaseLeft::Everywhere => "Some is left everywhere.",
                CaseLeft::InDoubt => {
                    "It may be gone where most came off: test the hardness there, or harden again."
                }
                CaseLeft::GoneInPlaces => {
                    "Gone where most came off, even if it was as deep as said: harden again."
                }
            }
            .to_owned(),
        ),
    });
    findings.push(Finding::new(
        "Change of the stack’s length",
        span_of(plan.stack_change, unit),
        "Below zero is shorter. End play, gear and cover move with it: check them again."
            .to_owned(),
    ));
    findings.push(order());
    findings
}

#[translated]
fn span_of(range: Range, unit: crate::quantity::Unit) -> String {
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
