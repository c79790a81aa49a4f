//! A bearing in words: bore, journal, the clearance between them, and what plastic strips say.

use super::face::{bracketed, brackets};
use super::finding::figure;
use super::{Bench, Finding};
use crate::faces::clearance::is_worse;
use crate::faces::{
    Clearance, Cylinder, Measured, Refusal, Strip, Strips, Survey, Taken, bearing_clearance,
    cylinder, strips,
};
use crate::limits::Call;
use pitleaf_translated::translated;
use uom::si::f64::Length;

/// How the keys of the main bearings begin; a key is no text, so it stands outside what is translated.
const MAIN: &str = "main";

/// Two directions at each place; places not read in both are left out. The first place number of each.
pub(super) fn read(taken: &Taken) -> Result<(Cylinder, Vec<usize>), Refusal> {
    let both = |place: usize| Some((place, vec![taken.length(place)?, taken.length(place + 1)?]));
    let (at, diameters): (Vec<usize>, Vec<Vec<Length>>) =
        (0..taken.places.len()).step_by(2).filter_map(both).unzip();
    Ok((cylinder(&diameters, &taken.doubt)?, at))
}

#[translated]
pub(super) fn report(
    survey: Survey,
    taken: &Taken,
    piece: &str,
    bench: &Bench<'_>,
) -> Vec<Finding> {
    let main = piece.starts_with(MAIN);
    let mut findings = match survey {
        Survey::PlasticGauge => Vec::new(),
        _ => own(survey, taken, main, bench),
    };
    let other =
        |of: Survey| if of == survey { Some(taken.clone()) } else { bench.taken(of, piece) };
    let of = |survey| other(survey).and_then(|taken| read(&taken).ok()).map(|read| read.0);
    let row = bench.row(if main { "main-bearing-clearance" } else { "rotor-bearing-clearance" });
    let clearance = of(Survey::Bore)
        .zip(of(Survey::Journal))
        .map(|(bore, journal)| bearing_clearance(&bore, &journal));
    match &clearance {
        Some(clearance) => findings.push(
            Finding::clearance("Clearance", clearance, row, taken.unit).saying(negative(clearance)),
        ),
        None => findings.push(Finding::new(
            "Clearance",
            String::new(),
            "Read bore and journal: both are needed.".to_owned(),
        )),
    }
    if let Some(squeezed) = other(Survey::PlasticGauge) {
        findings.push(plastic(&squeezed, clearance.as_ref(), bench, main));
    }
    findings
}

#[translated]
fn negative(clearance: &Clearance) -> &'static str {
    if clearance.least.value < Length::default() {
        "Below zero: it is a press fit there, not a bearing."
    } else {
        ""
    }
}

/// Bore or journal alone.
#[translated]
fn own(survey: Survey, taken: &Taken, main: bool, bench: &Bench<'_>) -> Vec<Finding> {
    let (cylinder, at) = match read(taken) {
        Ok(read) => read,
        Err(refusal) => return vec![Finding::refused(survey.name(), refusal)],
    };
    let unit = taken.unit;
    let row = bench.row(match (survey, main) {
        (Survey::Bore, true) => "main-bearing-bore",
        (Survey::Bore, false) => "rotor-bearing-bore",
        (_, true) => "shaft-main-journal",
        (_, false) => "shaft-rotor-journal",
    });
    let sizes = &cylinder.sizes;
    let greatest = ("Greatest diameter", &sizes.greatest, cylinder.greatest_at);
    let least = ("Least diameter", &sizes.least, cylinder.least_at);
    // Where it is worn; the other end stands there instead where it is the worse against the limit.
    let (worn, other) = if survey == Survey::Bore { (greatest, least) } else { (least, greatest) };
    let verdict = |size: &Measured| row.and_then(|row| size.against(&row.limit));
    let is_other = verdict(other.1)
        .zip(verdict(worn.1))
        .is_some_and(|(other, worn)| other.call != Call::Meets && is_worse(&other, &worn));
    let (what, size, place) = if is_other { other } else { worn };
    let roundness =
        (survey == Survey::Journal).then(|| bench.row("shaft-journal-roundness")).flatten();
    let single = taken.doubt.single();
    let oval = Measured {
        value: cylinder.out_of_round[cylinder.worst_place],
        uncertainty: single * 2.0_f64.sqrt(),
    };
    let end = |at: usize| {
        let name = taken.said(at);
        name.rsplit_once(',').map_or(name.as_str(), |(end, _)| end).to_owned()
    };
    let mut findings = vec![
        Finding::measured(what, size, unit).against(size, row, unit).saying(&format!(
            "At the {}. Mean {}.",
            taken.said(at[place.0] + place.1),
            figure(cylinder.sizes.mean.value, unit)
        )),
        Finding::measured("Out of round", &oval, unit).against(&oval, roundness, unit).saying(
            &format!(
                "Worst at the {}. Two points see no lobes of an odd number.",
                end(at[cylinder.worst_place])
            ),
        ),
    ];
    if let Some(taper) = &cylinder.taper {
        findings.push(Finding::measured("Taper", taper, unit).against(taper, roundness, unit));
    }
    findings
}

/// The strips, and whether the gauges can be right beside them.
#[translated]
fn plastic(taken: &Taken, clearance: Option<&Clearance>, bench: &Bench<'_>, main: bool) -> Finding {
    let what = "By plastic strips";
    let ends = brackets(taken, 0..taken.places.len());
    let at = |place: usize| ends.iter().find(|end| end.0 == place).map(|end| end.1);
    // A strip read at one end only is taken as even.
    let strip = |first: usize| {
        let (loose, tight) = (at(first), at(first + 2));
        Some(Strip { loose: loose.or(tight)?, tight: tight.or(loose)? })
    };
    let read: Vec<Strip> = [0, 4].into_iter().filter_map(strip).collect();
    let Strips { seen, tapered } = match strips(&read) {
        Ok(strips) => strips,
        Err(refusal) => return Finding::refused(what, refusal),
    };
    let mut finding =
        Finding::new(what, seen.words(taken.unit), "One side and one direction only.".to_owned());
    let row = bench.row(if main { "main-bearing-clearance" } else { "rotor-bearing-clearance" });
    if let Some(row) = row {
        finding = bracketed(finding, seen, row, taken.unit);
    }
    if tapered.is_some() {
        finding = finding.saying("The strip’s ends differ: the bearing tapers.");
    }
    match clearance.and_then(|clearance| Strips { seen, tapered }.agree_with(clearance)) {
        Some(true) => finding.saying("Bore and journal agree with it."),
        Some(false) => finding.saying("Bore and journal do not agree with it: measure both again."),
        None => finding,
    }
}
