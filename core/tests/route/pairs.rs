//! Parts that run in each other, judged together: on both checks, among the decisions and on the sheet.

use super::Shop;
use super::sheet::{section, sheet};
use pitleaf_core::book::Figure;
use pitleaf_core::limits::{
    BuildKind, Call, GaugeKind, PAIRS, PermissibleError, Side, decide_computed,
};
use pitleaf_core::quantity::{Amount, Span, Unit};
use pitleaf_core::route::{Choice, Copy, Paired, decide_on, pairs, pairs_with, past_limits};
use proptest::prelude::*;

fn shop() -> Shop {
    Shop::new(BuildKind::NaturallyAspirated, 2)
}

/// What the check of a row shows of the pair while this is typed.
fn on_the_check<'sheet>(
    shop: &Shop,
    sheet: &'sheet pitleaf_core::limits::Sheet,
    (row, place): (&str, &str),
    text: &str,
    gauge: GaugeKind,
) -> Vec<Paired<'sheet>> {
    let figure = Figure {
        row: row.to_owned(),
        place: place.to_owned(),
        text: text.to_owned(),
        unit: Unit::Millimetre,
        gauge,
        instead_of: None,
    };
    let reading = figure.reading().expect("a reading");
    pairs_with(&shop.book, &shop.build, sheet, (row, place), &reading, gauge)
}

#[test]
fn every_row_of_a_pair_stands_in_the_sheet() {
    let sheet = shop().sheet();
    for pair in PAIRS {
        for id in [pair.inside, pair.outside, pair.clearance] {
            let row = sheet.row(id).unwrap_or_else(|| panic!("{id} is no row"));
            assert_eq!(row.unit, Unit::Millimetre, "{id}");
        }
        assert_eq!(pair.other(pair.inside), Some(pair.outside), "from inside");
        assert_eq!(pair.other(pair.outside), Some(pair.inside), "from outside");
        assert_eq!(pair.other(pair.clearance), None, "the clearance is neither");
    }
}

/// By hand: seal 10.993 and bore 11.008 mm meet their own limits; the 0.015 mm between them are 0.005 under the
/// least of 0.020. Usual gauges: u² = 1²/12 + 4²/3 and 2²/12 + 6²/3 µm², together 4.20 µm, guard band 6.9 µm;
/// with gauges of ±1 µm 0.89 µm, guard band 1.5 µm.
#[test]
fn a_seal_and_a_bore_that_meet_alone_do_not_meet_together() {
    let mut shop = shop();
    for kind in [GaugeKind::OutsideMicrometer, GaugeKind::BoreGauge] {
        let edge =
            |text: &str| pitleaf_core::limits::Edge::read(text, Unit::Millimetre).expect("it");
        shop.write(pitleaf_core::book::Fact::Gauge {
            kind,
            resolution: edge("0.001"),
            error: PermissibleError::Fixed(edge("0.001")),
        });
    }
    let limits = shop.sheet();
    let read = |shop: &mut Shop, row: &str, place: &str, text: &str| {
        shop.read(row, place, text, Unit::Millimetre);
    };
    let bore = ("rotor-corner-seal-bore", "1");
    let seal = ("corner-seal-diameter", "1F-A");
    let check =
        |shop: &Shop, of, text| on_the_check(shop, &limits, of, text, GaugeKind::OutsideMicrometer);
    assert_eq!(check(&shop, seal, "10.993"), [], "nothing to judge it with");
    read(&mut shop, bore.0, bore.1, "11.008");
    let found = check(&shop, seal, "10.993");
    assert_eq!(found.len(), 1, "{found:?}");
    assert_eq!(found[0].together.verdict.call, Call::DoesNotMeet(Side::Below), "too tight");
    assert_eq!(
        found[0].words(Unit::Millimetre),
        "Corner seal in its bore, clearance: Does not meet. Together 0.015 mm, limit 0.020…0.048\u{a0}mm (0.788…1.889\u{a0}thou). With rotor 1 · Rotor, corner-seal bore: 11.008 mm.",
        "what the check says"
    );
    assert_eq!(check(&shop, ("corner-seal-diameter", "2F-A"), "10.993"), [], "of another rotor");
    read(&mut shop, seal.0, seal.1, "10.993");
    assert_eq!(check(&shop, bore, "11.008").len(), 1, "and from the bore’s check");
    let past = past_limits(&shop.book, &shop.build, &limits);
    let [pair] = past.as_slice() else { panic!("the pair alone: {past:?}") };
    assert_eq!((pair.row.id.as_str(), pair.place.as_str()), ("corner-seal-clearance", "1F-A"));
    assert_eq!((pair.reading.as_str(), pair.decision), ("0.015 mm", None));
    let decision = decide_on("corner-seal-clearance", "1F-A", Choice::Replace, "");
    shop.route(decision.expect("taken"));
    let printed = sheet(&shop, Copy::Customer);
    let line = &section(&printed, "Parts that run in each other").rows[0];
    assert_eq!(line.call, Some(Call::DoesNotMeet(Side::Below)), "{line:?}");
    assert_eq!(line.cells[0], "1F-A · Corner seal in its bore, clearance", "which");
    assert_eq!(line.cells[1], "0.015 mm", "what");
    assert_eq!(line.cells[4], "Does not meet\nreplace", "and what became of it");
    // The clearance itself, measured later, is the later word.
    read(&mut shop, "corner-seal-clearance", "1F-A", "0.034");
    assert_eq!(past_limits(&shop.book, &shop.build, &limits), [], "measured");
}

/// Gauges for lengths, and one of which nothing is stated.
const GAUGES: [GaugeKind; 5] = [
    GaugeKind::OutsideMicrometer,
    GaugeKind::BoreGauge,
    GaugeKind::VernierCaliper,
    GaugeKind::DialIndicator,
    GaugeKind::Other,
];

proptest! {
    /// Any two sizes, gauges and pair: both checks, the book's list and the sheet say what the rule says of the
    /// difference with both doubts in squares.
    #[test]
    fn a_pair_has_one_verdict_wherever_it_stands(
        which in 0..PAIRS.len(),
        (inner, room) in (-60..60_i64, -40..140_i64),
        gauges in (0..GAUGES.len(), 0..GAUGES.len()),
    ) {
        let pair = &PAIRS[which];
        let mut shop = shop();
        let limits = shop.sheet();
        let nominal = [11_000, 43_000, 74_000][which];
        let sizes = [nominal + inner, nominal + inner + room];
        let texts = sizes.map(|um| format!("{}.{:03}", um / 1000, um % 1000));
        let kinds = [GAUGES[gauges.0], GAUGES[gauges.1]];
        for ((row, text), gauge) in [pair.inside, pair.outside].iter().zip(&texts).zip(kinds) {
            shop.write(pitleaf_core::book::Fact::Figure(Figure {
                row: (*row).to_owned(),
                place: String::new(),
                text: text.clone(),
                unit: Unit::Millimetre,
                gauge,
                instead_of: None,
            }));
        }
        // The usual gauges' figures, by JCGM 100, 4.3.7: r/√12 and m/√3, here in micrometres.
        let square = |kind: GaugeKind| {
            let gauge = limits.gauge(kind);
            let steps = gauge.resolution.map_or(0.0, |span| span.value(Unit::Micrometre));
            let error = match gauge.permissible_error {
                Some(PermissibleError::Fixed(span)) => span.value(Unit::Micrometre),
                _ => 0.0,
            };
            steps.max(1.0).powi(2) / 12.0 + error.powi(2) / 3.0
        };
        let doubt = (square(kinds[0]) + square(kinds[1])).sqrt() / 1000.0;
        let row = limits.row(pair.clearance).expect("a row");
        let by_rule = decide_computed(
            &row.limit,
            Amount::whole(room, Unit::Micrometre),
            Span::nearest(doubt, Unit::Millimetre).expect("a span"),
        );
        // Nothing is stated of another gauge, so that with it nothing is proved.
        let is_stated = !kinds.contains(&GaugeKind::Other);
        let wanted = if is_stated { by_rule.call } else { Call::TooClose };
        let listed = pairs(&shop.book, &shop.build, &limits);
        let inside = on_the_check(&shop, &limits, (pair.inside, ""), &texts[0], kinds[0]);
        let outside = on_the_check(&shop, &limits, (pair.outside, ""), &texts[1], kinds[1]);
        for found in [&listed, &inside, &outside] {
            prop_assert_eq!(found.len(), 1);
            let verdict = &found[0].together.verdict;
            prop_assert_eq!(verdict.call, wanted, "{:?} {:?}", texts, kinds);
            let off = (verdict.conformity - by_rule.conformity).abs();
            prop_assert!(!is_stated || off < 1e-6, "{verdict:?} {by_rule:?}");
            prop_assert_eq!(found[0].together.clearance, Amount::whole(room, Unit::Micrometre));
        }
        let printed = sheet(&shop, Copy::Customer);
        let line = &section(&printed, "Parts that run in each other").rows[0];
        prop_assert_eq!(line.call, Some(wanted));
        let past = past_limits(&shop.book, &shop.build, &limits);
        let is_open = past.iter().any(|past| past.row.id == pair.clearance);
        prop_assert_eq!(is_open, wanted != Call::Meets);
    }
}
