//! The verdict against JCGM 106:2012 and ISO 14253-1:2017.

use super::{limit, read, span};
use Unit::{Inch, Millimetre};
use pitleaf_core::limits::{Call, Gauge, GaugeKind, Side, decide, decide_with_uncertainty};
use pitleaf_core::quantity::Unit;

#[track_caller]
fn near(got: f64, wanted: f64, within: f64, what: &str) {
    assert!((got - wanted).abs() <= within, "{what}: got {got}, wanted {wanted}");
}

/// Lower and upper edge, reading, standard uncertainty; the printed and the recomputed probability.
type Row = (&'static str, &'static str, &'static str, &'static str, f64, f64);

/// JCGM 106:2012, clauses 7.4, 7.3.2 and 7.3.3: inputs and two digits from memory; six recomputed
/// from p = Φ((U−y)/u) − Φ((L−y)/u).
const JCGM_106: &[Row] = &[
    ("12.5", "16.3", "13.6", "1.8", 0.66, 0.662_630),
    ("", "-5.40", "-5.47", "0.05", 0.92, 0.919_243),
    ("490", "", "509.7", "8.6", 0.99, 0.989_010),
];

#[test]
fn probability_of_conformity() {
    for (lower, upper, reading, uncertainty, printed, recomputed) in JCGM_106 {
        let verdict = decide_with_uncertainty(
            &limit(lower, upper, Millimetre),
            &read(reading, Millimetre),
            span(uncertainty, Millimetre),
        );
        near(verdict.conformity, *printed, 0.005, reading);
        near(verdict.conformity, *recomputed, 0.000_000_5, reading);
    }
}

/// Φ(1.645) = 0.950 015 and Φ(2) = 0.977 250: tables of the normal distribution.
#[test]
fn the_normal_distribution() {
    for (reading, wanted) in [("-1.645", 0.950_015), ("-2", 0.977_250), ("2", 0.022_750)] {
        let verdict = decide_with_uncertainty(
            &limit("", "0", Millimetre),
            &read(reading, Millimetre),
            span("1", Millimetre),
        );
        near(verdict.conformity, wanted, 0.000_000_5, reading);
    }
}

/// ISO 14253-1:2017, default rule: guard band 1.65 u. Limits 10.00 … 10.05 and u 0.005 accept
/// 10.00825 … 10.04175 and reject below 9.99175 and above 10.05825. A tenth of a nanometre decides.
#[test]
fn the_guard_band_is_exact_at_its_own_edges() {
    let limit = limit("10.00", "10.05", Millimetre);
    for (reading, call) in [
        ("10.00825", Call::Meets),
        ("10.0082499", Call::TooClose),
        ("10.04175", Call::Meets),
        ("10.0417501", Call::TooClose),
        ("9.99175", Call::TooClose),
        ("9.9917499", Call::DoesNotMeet(Side::Below)),
        ("10.05825", Call::TooClose),
        ("10.0582501", Call::DoesNotMeet(Side::Above)),
        ("10.025", Call::Meets),
    ] {
        let verdict =
            decide_with_uncertainty(&limit, &read(reading, Millimetre), span("0.005", Millimetre));
        assert_eq!(verdict.call, call, "{reading}");
        assert_eq!(verdict.guard, span("0.00825", Millimetre), "1.65 × 0.005");
        assert!(!verdict.gauge_too_coarse, "{reading}");
    }
}

#[test]
fn the_guard_bands_edge_is_exact_in_inches_too() {
    // 10.00825 mm and 10.04175 mm are no whole ten-thousandths of an inch; the 0.0001 in beside them are.
    let limit = limit("10.00", "10.05", Millimetre);
    for (reading, call) in [
        ("0.39402", Call::TooClose),
        ("0.39403", Call::Meets),
        ("0.39534", Call::Meets),
        ("0.39535", Call::TooClose),
    ] {
        let verdict =
            decide_with_uncertainty(&limit, &read(reading, Inch), span("0.005", Millimetre));
        assert_eq!(verdict.call, call, "{reading} in");
    }
}

#[test]
fn a_limit_narrower_than_two_guard_bands_wants_a_finer_gauge() {
    let reading = read("10.005", Millimetre);
    let verdict = |upper, uncertainty| {
        decide_with_uncertainty(
            &limit("10.0000", upper, Millimetre),
            &reading,
            span(uncertainty, Millimetre),
        )
    };
    assert!(!verdict("10.0165", "0.005").gauge_too_coarse, "just two guard bands wide");
    assert!(verdict("10.0164", "0.005").gauge_too_coarse, "a little less");
    assert!(!verdict("", "5").gauge_too_coarse, "one edge can always be kept clear of");
}

#[test]
fn a_reading_on_the_edge_meets_it_and_proves_nothing() {
    // A micrometer good to 4 µm reads 79.94 against at least 79.94.
    let verdict = decide(
        &limit("79.94", "", Millimetre),
        &read("79.94", Millimetre),
        &Gauge::usual(GaugeKind::OutsideMicrometer),
    );
    assert!(verdict.within, "equal to the edge is within");
    assert_eq!(verdict.call, Call::TooClose, "but not proved");
    near(verdict.conformity, 0.5, 1e-12, "as likely as not");
    assert_eq!(verdict.above_lower, Some(span("0", Millimetre)), "no distance");
    assert_eq!(verdict.below_upper, None, "no upper edge");
}

#[test]
fn distances_are_exact_and_negative_outside() {
    let verdict = decide_with_uncertainty(
        &limit("0.0015", "0.0030", Inch),
        &read("0.08", Millimetre),
        span("0", Millimetre),
    );
    assert_eq!(verdict.above_lower, Some(span("0.0419", Millimetre)), "0.08 less 0.0381 mm");
    assert_eq!(verdict.below_upper, Some(span("-0.0038", Millimetre)), "0.0762 less 0.08 mm");
    assert!(!verdict.within, "outside");
}

#[test]
fn a_reading_without_doubt_is_judged_by_its_figure_alone() {
    let limit = limit("1", "2", Millimetre);
    for (reading, call, conformity) in [
        ("1", Call::Meets, 1.0),
        ("2", Call::Meets, 1.0),
        ("0.9999999", Call::DoesNotMeet(Side::Below), 0.0),
        ("2.0000001", Call::DoesNotMeet(Side::Above), 0.0),
    ] {
        let verdict =
            decide_with_uncertainty(&limit, &read(reading, Millimetre), span("0", Millimetre));
        assert_eq!(verdict.call, call, "{reading}");
        near(verdict.conformity, conformity, 0.0, reading);
    }
}

/// A leaf of 2½ thou in a gap of 1½ to 3 thou: 0.0127 mm from the nearer edge, the guard band 0.0056 mm.
#[test]
fn two_and_a_half_thou_is_a_good_side_seal_gap() {
    let verdict = decide(
        &limit("0.0015", "0.0030", Inch),
        &read("2½ thou", Inch),
        &Gauge::usual(GaugeKind::FeelerLeaf),
    );
    assert_eq!(verdict.call, Call::Meets, "{verdict:?}");
    assert_eq!(verdict.below_upper, Some(span("0.0127", Millimetre)), "half a thou to spare");
}
