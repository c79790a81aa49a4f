//! A bearing pressed into its seat, in words: the interference, and whether it grips.

use super::bearing::read;
use super::finding::{both, figure};
use super::{Bench, Finding};
use crate::faces::clearance::Sizes;
use crate::faces::{Clearance, Cylinder, Refusal, Survey, Taken, bearing_clearance};
use crate::joints::fits::{self, Fit, FitKind};
use crate::quantity::{Amount, Unit};
use pitleaf_translated::translated;
use uom::si::f64::Length;

#[translated]
pub(super) fn report(
    survey: Survey,
    taken: &Taken,
    piece: &str,
    bench: &Bench<'_>,
) -> Vec<Finding> {
    let own = match read(taken) {
        Ok((cylinder, _)) => cylinder,
        Err(refusal) => return vec![Finding::refused(survey.name(), refusal)],
    };
    let mut findings = vec![diameters(&own, taken)];
    let (seat, shell) = match survey {
        Survey::BearingSeat => (Some(own), other(Survey::BearingShell, piece, bench)),
        _ => (other(Survey::BearingSeat, piece, bench), Some(own)),
    };
    match seat.zip(shell) {
        Some((seat, shell)) => findings.extend(fit(&seat, &shell, taken)),
        None => findings.push(Finding::new(
            "Interference",
            String::new(),
            "Read the seat and the bearing’s outside: both are needed.".to_owned(),
        )),
    }
    findings
}

fn other(of: Survey, piece: &str, bench: &Bench<'_>) -> Option<Cylinder> {
    let read: Result<_, Refusal> = read(&bench.taken(of, piece)?);
    read.ok().map(|read| read.0)
}

#[translated]
fn diameters(cylinder: &Cylinder, taken: &Taken) -> Finding {
    let Sizes { least, mean, greatest } = &cylinder.sizes;
    let unit = taken.unit;
    Finding::measured("Mean diameter", mean, unit).saying(&format!(
        "{} to {}; {} out of round.",
        figure(least.value, unit),
        figure(greatest.value, unit),
        figure(cylinder.out_of_round[cylinder.worst_place], unit)
    ))
}

/// The interference with its range, and what it is as a fit.
#[translated]
fn fit(seat: &Cylinder, shell: &Cylinder, taken: &Taken) -> Vec<Finding> {
    let (interference, unit) = (bearing_clearance(seat, shell).interference(), taken.unit);
    let sizes = |of: &Cylinder| {
        let edge = |length| Amount::of_length(length);
        fits::Sizes::new(edge(of.sizes.least.value)?, edge(of.sizes.greatest.value)?).ok()
    };
    let kind = sizes(seat).zip(sizes(shell)).map(|(seat, shell)| Fit::of(seat, shell).kind());
    vec![
        Finding::new(
            "Interference",
            both(interference.mean.value, unit),
            range(&interference, unit),
        ),
        Finding::new("Grip", grip(&interference).to_owned(), String::new())
            .saying(match kind {
                Some(FitKind::Interference) => "An interference fit at every place read.",
                Some(FitKind::Transition) => {
                    "A transition fit: tight at some places, loose at others."
                }
                Some(FitKind::Clearance) => "A clearance fit: it would fall out.",
                None => "",
            })
            .saying(
                "How hard it grips also takes the wall around it and both metals: see Press fit.",
            ),
    ]
}

/// Its ends: the least is the loosest place.
#[translated]
fn range(interference: &Clearance, unit: Unit) -> String {
    let (least, most) = (&interference.least, &interference.most);
    format!(
        "Least {}, most {}. ±{} in 95 of 100 cases.",
        figure(least.value, unit),
        figure(most.value, unit),
        figure(least.expanded().max(most.expanded()), unit)
    )
}

/// Whether it grips, as far as the gauges can tell.
#[translated]
fn grip(interference: &Clearance) -> &'static str {
    let none = Length::default();
    let (least, most) = (&interference.least, &interference.most);
    if least.value - least.expanded() > none {
        "grips all round"
    } else if most.value + most.expanded() < none {
        "does not grip"
    } else if interference.mean.value > none {
        "grips, but may be loose at places"
    } else {
        "may not grip"
    }
}
