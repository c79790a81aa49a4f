//! Widths in words: housings, rotors, apex seals, and the stack they make.

use super::finding::{both, figure};
use super::{Bench, Finding};
use crate::faces::{
    Clearance, Measured, Point, Refusal, Survey, Taken, Widths, apex_seal_end_gap, housings_apart,
    piece_words, rotor_side_clearance, stack_length, taper, widths,
};
use crate::limits::BuildKind;
use crate::quantity::Unit;
use pitleaf_translated::translated;
use uom::si::f64::Length;

fn of(taken: &Taken) -> Result<Widths, Refusal> {
    let lengths: Vec<Length> = taken.lengths().into_iter().map(|(_, length)| length).collect();
    widths(&lengths, &taken.doubt)
}

/// Least, greatest and spread, and the taper where the places have a map.
#[translated]
fn sizes(
    taken: &Taken,
    widths: &Widths,
    least_row: Option<&str>,
    spread_row: Option<&str>,
    bench: &Bench<'_>,
) -> Vec<Finding> {
    let (unit, read) = (taken.unit, taken.lengths());
    let name = |at: usize| taken.said(read[at].0);
    let least = &widths.sizes.least;
    let mean =
        format!("At {}. Mean {}.", name(widths.least_at), figure(widths.sizes.mean.value, unit));
    let spread = widths.sizes.greatest.minus(least);
    let greatest = format!("Greatest at {}.", name(widths.greatest_at));
    let mut findings = vec![
        Finding::measured("Least", least, unit)
            .against(least, least_row.and_then(|row| bench.row(row)), unit)
            .saying(&mean),
        Finding::measured("Spread, greatest less least", &spread, unit)
            .against(&spread, spread_row.and_then(|row| bench.row(row)), unit)
            .saying(&greatest),
    ];
    let point = |&(place, z): &(usize, Length)| {
        let [x, y] = taken.places[place].at?;
        Some(Point { x, y, z })
    };
    let points: Vec<Point> = read.iter().filter_map(point).collect();
    if let Ok(taper) = taper(&points) {
        let says = format!(
            "Widest towards {}. Waves and burrs beside it: {}.",
            name(taper.widest),
            figure(taper.rest, unit)
        );
        findings.push(Finding::new("Taper, side to side", both(taper.across, unit), says));
    }
    findings
}

#[translated]
pub(super) fn side_report(taken: &Taken, bench: &Bench<'_>) -> Vec<Finding> {
    match of(taken) {
        Ok(widths) => sizes(taken, &widths, None, Some("side-housing-thickness-spread"), bench),
        Err(refusal) => vec![Finding::refused("Thickness", refusal)],
    }
}

/// A rotor, its housing or its apex seals, and the room between them as far as all are read.
#[translated]
pub(super) fn rotor_report(
    survey: Survey,
    taken: &Taken,
    piece: &str,
    bench: &Bench<'_>,
) -> Vec<Finding> {
    let own = match of(taken) {
        Ok(widths) => widths,
        Err(refusal) => return vec![Finding::refused(survey.name(), refusal)],
    };
    let (least, spread) = match survey {
        Survey::HousingWidth => (Some("rotor-housing-width"), Some("rotor-housing-width-spread")),
        _ => (None, None),
    };
    let mut findings = sizes(taken, &own, least, spread, bench);
    let other = |of_survey: Survey| {
        if of_survey == survey {
            Some(own.clone())
        } else {
            of(&bench.taken(of_survey, piece)?).ok()
        }
    };
    let Some(housing) = other(Survey::HousingWidth) else {
        findings.push(missing(Survey::HousingWidth));
        return findings;
    };
    if let Some(rotor) = other(Survey::RotorWidth) {
        let both_sides = Clearance::of(&housing.sizes, &rotor.sizes);
        let each = rotor_side_clearance(&housing, &rotor);
        findings.push(
            Finding::clearance(
                "Rotor’s room, both sides together",
                &both_sides,
                bench.row("rotor-side-clearance"),
                taken.unit,
            )
            .saying(&format!(
                "{} on each face, the rotor in the middle.",
                figure(each.mean.value, taken.unit)
            )),
        );
    } else {
        findings.push(missing(Survey::RotorWidth));
    }
    if let Some(seals) = other(Survey::ApexSealLength) {
        let row = match bench.kind {
            BuildKind::ForcedInduction => "apex-seal-gap-fi",
            _ => "apex-seal-gap-na",
        };
        let gap = apex_seal_end_gap(&housing, &seals);
        findings.push(Finding::clearance(
            "Apex seals’ end gap, both ends together",
            &gap,
            bench.row(row),
            taken.unit,
        ));
    } else if survey != Survey::RotorWidth {
        findings.push(missing(Survey::ApexSealLength));
    }
    findings
}

#[translated]
fn missing(survey: Survey) -> Finding {
    Finding::new(
        survey.name(),
        String::new(),
        "Not read yet: the room between the parts needs it.".to_owned(),
    )
}

/// The stack of the whole engine, from the widths written down.
#[must_use]
#[translated]
pub fn stack(bench: &Bench<'_>, unit: Unit) -> Vec<Finding> {
    // One micrometer: its own error goes into every part alike.
    const MICROMETER: u8 = 1;
    let mut parts = Vec::new();
    let mut missing = Vec::new();
    let mut housings = Vec::new();
    for survey in [Survey::SideThickness, Survey::HousingWidth] {
        for piece in survey.pieces(bench.rotors) {
            match bench.taken(survey, &piece).and_then(|taken| of(&taken).ok()) {
                Some(widths) => {
                    parts.push(widths.in_stack(MICROMETER));
                    if survey == Survey::HousingWidth {
                        housings.push((piece, widths));
                    }
                }
                None => missing.push(format!("{} ({})", piece_words(&piece), survey.name())),
            }
        }
    }
    let what = "Length of the stack";
    let mut findings = vec![if missing.is_empty() {
        match stack_length(&parts) {
            Ok(length) => Finding::measured(what, &length, unit)
                .saying("Mean widths, not clamped. One micrometer’s error counts in every part."),
            Err(refusal) => Finding::refused(what, refusal),
        }
    } else {
        Finding::new(what, String::new(), format!("Still to be read: {}.", missing.join("; ")))
    }];
    let (names, widths): (Vec<String>, Vec<Widths>) = housings.into_iter().unzip();
    if widths.len() > 1
        && let Some((apart, least, greatest)) = housings_apart(&widths)
    {
        let apart: Measured = apart;
        findings.push(
            Finding::measured("Rotor housings, wider less narrower", &apart, unit)
                .against(&apart, bench.row("rotor-housing-pair-spread"), unit)
                .saying(&format!(
                    "Narrowest {}, widest {}.",
                    piece_words(&names[least]),
                    piece_words(&names[greatest])
                )),
        );
    }
    findings
}
