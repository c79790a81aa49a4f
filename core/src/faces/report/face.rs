//! A face in words: flatness, warp, high and low spots, the step worn by the side seals.

use super::finding::{both, figure};
use super::{Bench, Finding};
use crate::faces::survey::LANDS;
use crate::faces::{
    Across, Measured, Point, Reference, Refusal, Taken, far_corners, flatness, hollow, next_leaf,
    step_and_warp, steps_across,
};
use crate::limits::{Call, GaugeKind, Row, Side};
use crate::quantity::{Amount, Span, Unit};
use crate::seals::{Answer, Bracket};
use pitleaf_translated::{tr, translated};
use uom::si::f64::Length;

/// The points read, with the number of the place of each.
fn points(taken: &Taken) -> Vec<(usize, Point)> {
    let at = |(place, z): (usize, Length)| {
        let [x, y] = taken.places[place].at?;
        Some((place, Point { x, y, z }))
    };
    taken.lengths().into_iter().filter_map(at).collect()
}

/// A face ready to draw.
#[derive(Clone, Debug, PartialEq)]
pub struct Levelled {
    /// Every point read, with its height over the middle of the minimum zone.
    pub points: Vec<Point>,
    /// The highest of them.
    pub highest: Point,
    /// The lowest.
    pub lowest: Point,
}

/// Levels the points of a face by the minimum zone, for its relief.
///
/// # Errors
/// As [`flatness()`].
pub fn levelled(taken: &Taken) -> Result<Levelled, Refusal> {
    let points: Vec<Point> = points(taken).into_iter().map(|(_, point)| point).collect();
    let flat = flatness(&points, Reference::MinimumZone)?;
    let points = flat.levelled(&points);
    let (highest, lowest) = (points[flat.highest()], points[flat.lowest()]);
    Ok(Levelled { points, highest, lowest })
}

/// The flatness of the whole face by the minimum zone, and how far the worst place lies under the highest.
pub(super) fn whole_face(taken: &Taken) -> Result<Measured, Refusal> {
    let points: Vec<Point> = points(taken).into_iter().map(|(_, point)| point).collect();
    Ok(flatness(&points, Reference::MinimumZone)?.measured(&taken.doubt))
}

/// The limit of a face's warp.
fn warp_row<'a>(piece: &str, bench: &Bench<'a>) -> Option<&'a Row> {
    let rotor = piece.starts_with("rotor");
    bench.row(if rotor { "rotor-housing-warp" } else { "side-housing-warp" })
}

/// A face read on the builder's own grid or at their own places: the whole of it, without telling worn band from land.
pub(super) fn grid_report(taken: &Taken, piece: &str, bench: &Bench<'_>) -> Vec<Finding> {
    match whole(taken, warp_row(piece, bench)) {
        Ok(findings) => findings,
        Err(refusal) => vec![Finding::refused(WHOLE, refusal)],
    }
}

const WHOLE: &str = tr!("Flatness, whole face");

#[translated]
pub(super) fn flatness_report(taken: &Taken, bench: &Bench<'_>) -> Vec<Finding> {
    let mut findings = match whole(taken, None) {
        Ok(findings) => findings,
        Err(refusal) => return vec![Finding::refused(WHOLE, refusal)],
    };
    let land: Vec<Point> = points(taken)
        .into_iter()
        .filter(|(place, _)| *place < LANDS)
        .map(|(_, point)| point)
        .collect();
    let what = "Warp of the land";
    findings.insert(
        0,
        match flatness(&land, Reference::MinimumZone) {
            Ok(flat) => {
                let warp = flat.measured(&taken.doubt);
                Finding::measured(what, &warp, taken.unit)
                    .against(&warp, bench.row("side-housing-warp"), taken.unit)
                    .saying("Clear of the worn band.")
            }
            Err(refusal) => Finding::refused(what, refusal),
        },
    );
    findings.extend(steps(taken, bench));
    findings
}

#[translated]
fn whole(taken: &Taken, row: Option<&Row>) -> Result<Vec<Finding>, Refusal> {
    let unit = taken.unit;
    let (places, points): (Vec<usize>, Vec<Point>) = points(taken).into_iter().unzip();
    let zone = flatness(&points, Reference::MinimumZone)?;
    let other = |name: &str, reference: Reference| {
        flatness(&points, reference).map(|flat| format!("{name} {}", figure(flat.value(), unit)))
    };
    let compared = format!(
        "Minimum zone, the least any plane gives. {}; {}.",
        other("By least squares", Reference::LeastSquares)?,
        other("levelled on three corners", Reference::Corners(far_corners(&points)?))?
    );
    let named = |spots: Vec<usize>| {
        const MOST: usize = 3;
        let names: Vec<String> =
            spots.iter().take(MOST).map(|&spot| taken.said(places[spot])).collect();
        let more = spots.len().saturating_sub(MOST);
        let rest = if more > 0 { format!(" and {more} more") } else { String::new() };
        format!("{}{rest}", names.join("; "))
    };
    // Spots within a fifth of the whole are spoken of together.
    let near = zone.value() / 5.0;
    let within = format!("Within {} of the farthest.", figure(near, unit));
    let flat = zone.measured(&taken.doubt);
    Ok(vec![
        Finding::measured(WHOLE, &flat, unit).against(&flat, row, unit).saying(&compared),
        Finding::new(
            "High spots",
            String::new(),
            format!("{}. {within}", named(zone.high_spots(near))),
        ),
        Finding::new(
            "Low spots",
            String::new(),
            format!("{}. {within}", named(zone.low_spots(near))),
        ),
    ])
}

/// The step at each hour read on both rings, and the step told from warp on the whole map.
#[translated]
fn steps(taken: &Taken, bench: &Bench<'_>) -> Vec<Finding> {
    let unit = taken.unit;
    let pair = |hour: usize| {
        Some((hour, Across { land: taken.length(hour)?, swept: taken.length(hour + LANDS)? }))
    };
    let (hours, pairs): (Vec<usize>, Vec<Across>) = (0..LANDS).filter_map(pair).unzip();
    let mut findings = Vec::new();
    if let Ok(steps) = steps_across(&pairs, &taken.doubt) {
        let row = bench.row("side-housing-step-side-seal");
        let deepest = steps.deepest();
        let name = taken.said(hours[steps.worst]);
        let where_to = name.split_once(',').map_or(name.as_str(), |(hour, _)| hour);
        findings.push(
            Finding::measured("Step worn by the side seals", &deepest, unit)
                .against(&deepest, row, unit)
                .saying(&format!(
                    "Deepest at {where_to}; mean {}.",
                    figure(steps.mean.value, unit)
                )),
        );
    }
    let (places, points): (Vec<usize>, Vec<Point>) = points(taken).into_iter().unzip();
    let swept: Vec<bool> = places.iter().map(|&place| place >= LANDS).collect();
    let what = "Step told from warp";
    findings.push(match step_and_warp(&points, &swept, &taken.doubt) {
        Ok(apart) => Finding::measured(what, &apart.step, unit).saying(&format!(
            "That is the step of the swept band, on average; the face without it is bent by {}. Neither explains {}.",
            figure(apart.warp, unit),
            figure(apart.rest, unit)
        )),
        Err(refusal) => Finding::refused(what, refusal),
    });
    findings
}

/// Each line's two leaves, and what all of them prove.
#[translated]
pub(super) fn straightedge_report(taken: &Taken, piece: &str, bench: &Bench<'_>) -> Vec<Finding> {
    let what = "Deepest hollow under the straightedge";
    let lines = brackets(taken, 0..taken.places.len());
    let brackets: Vec<Bracket> = lines.iter().map(|line| line.1).collect();
    let gauge = bench.sheet.gauge(GaugeKind::StraightedgeAndLeaf);
    let thickest = taken.readings.iter().flatten().map(crate::quantity::Reading::amount);
    let errors = thickest.map(|leaf| gauge.error(leaf, Unit::Micrometre));
    let doubt = Span::nearest(errors.fold(0.0, f64::max), Unit::Micrometre)
        .unwrap_or_else(|| Span::whole(0, Unit::Micrometre));
    let found = match hollow(&brackets, doubt) {
        Ok(found) => found,
        Err(refusal) => return vec![Finding::refused(what, refusal)],
    };
    let row = warp_row(piece, bench);
    let worst = taken.said(lines[found.worst].0);
    let worst = worst.rsplit_once(',').map_or(worst.as_str(), |(line, _)| line);
    let says = format!(
        "Deepest line: {worst}. Proved, with leaf and straightedge off by up to {}: {}. A bracket for the lines tried, not the flatness of the face.",
        both_span(doubt, taken.unit),
        found.proved.words(taken.unit)
    );
    let mut finding = Finding::new(what, found.deepest.words(taken.unit), says);
    if let Some(row) = row {
        finding = bracketed(finding, found.proved, row, taken.unit);
        let upper = row.limit.upper.as_ref().map(crate::limits::Edge::amount);
        let next = upper.and_then(|upper| next_leaf(found.deepest, upper, &bench.leaves));
        if let Some(leaf) = next.filter(|_| finding.call == Some(Call::TooClose)) {
            finding =
                finding.saying(&format!("Try the leaf of {} next.", both_amount(leaf, taken.unit)));
        }
    }
    vec![finding]
}

/// Places in twos, the lesser figure first; the number of the first place of each.
pub(super) fn brackets(taken: &Taken, places: std::ops::Range<usize>) -> Vec<(usize, Bracket)> {
    let amount =
        |place: usize| taken.readings.get(place)?.as_ref().map(crate::quantity::Reading::amount);
    let of = |place: usize| (place, Bracket { low: amount(place), high: amount(place + 1) });
    places.step_by(2).map(of).filter(|(_, bracket)| *bracket != Bracket::default()).collect()
}

/// A bracket against its row.
pub(super) fn bracketed(mut finding: Finding, bracket: Bracket, row: &Row, unit: Unit) -> Finding {
    finding.call = Some(match bracket.against(&row.limit).answer() {
        Answer::Meets => Call::Meets,
        Answer::TooTight => Call::DoesNotMeet(Side::Below),
        Answer::TooWide => Call::DoesNotMeet(Side::Above),
        Answer::CannotSay => Call::TooClose,
    });
    finding.with_limit(row, unit)
}

fn both_amount(amount: Amount, unit: Unit) -> String {
    amount.length().map(|length| both(length, unit)).unwrap_or_default()
}

fn both_span(span: Span, unit: Unit) -> String {
    both_amount(Amount::whole(0, Unit::Millimetre).plus(span), unit)
}
