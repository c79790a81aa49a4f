//! What a gauge leaves in doubt: JCGM 100:2008 (GUM), 4.3.7, type B.

use super::{limit, read, span};
use Unit::{Bar, Inch, Micrometre, Millimetre, NewtonMetre, Thou};
use pitleaf_core::limits::{Call, Gauge, GaugeKind, decide, decide_unassisted};
use pitleaf_core::quantity::Unit;

#[track_caller]
fn near(got: f64, wanted: f64, what: &str) {
    assert!((got - wanted).abs() <= 1e-9, "{what}: got {got}, wanted {wanted}");
}

/// r/√12 for a resolution r and m/√3 for a greatest error ±m, added in squares; recomputed by hand.
#[test]
fn resolution_and_permissible_error_add_in_squares() {
    let gauge = |resolution, error| Gauge {
        kind: GaugeKind::DialIndicator,
        resolution: Some(span(resolution, Micrometre)),
        permissible_error: Some(span(error, Micrometre)),
    };
    let reading = read("50.0", Micrometre);
    for (resolution, error, wanted) in [
        ("10", "0", 2.886_751_346),
        ("0", "3", 1.732_291_353),
        ("10", "3", 3.366_501_646),
        ("1", "4", 2.327_373_341),
    ] {
        let got = gauge(resolution, error).uncertainty(&reading, Micrometre);
        near(got, wanted, &format!("resolution {resolution}, error {error}"));
    }
}

#[test]
fn the_coarser_of_gauge_and_last_digit_counts() {
    let gauge = Gauge {
        kind: GaugeKind::VernierCaliper,
        resolution: Some(span("20", Micrometre)),
        permissible_error: None,
    };
    let root = 12_f64.sqrt();
    near(
        gauge.uncertainty(&read("80.00", Millimetre), Micrometre),
        20.0 / root,
        "the gauge’s 20 µm",
    );
    near(gauge.uncertainty(&read("80.0", Millimetre), Micrometre), 100.0 / root, "read to 0.1 mm");
    near(gauge.uncertainty(&read("3.150", Inch), Thou), 1.0 / root, "read to a thou");
}

#[test]
fn a_gauge_of_lengths_leaves_a_torque_to_its_last_digit() {
    let leaf = Gauge::usual(GaugeKind::FeelerLeaf);
    near(leaf.uncertainty(&read("35", NewtonMetre), NewtonMetre), 1.0 / 12_f64.sqrt(), "1 N·m");
}

#[test]
fn without_a_gauge_the_last_digit_is_all_the_doubt() {
    let limit = limit("32", "38", NewtonMetre);
    let reading = read("35", NewtonMetre);
    let unassisted = decide_unassisted(&limit, &reading);
    assert_eq!(unassisted, decide(&limit, &reading, &Gauge::usual(GaugeKind::Other)), "the same");
    near(unassisted.guard.value(NewtonMetre), 0.476_313_972, "1.65 × 1 N·m ÷ √12");
    assert_eq!(unassisted.call, Call::Meets, "3 N·m inside both edges");
}

#[test]
fn every_kind_has_a_usual_gauge_and_a_name_of_its_own() {
    let mut names = std::collections::HashSet::new();
    for kind in GaugeKind::ALL {
        let gauge = Gauge::usual(kind);
        assert!(names.insert(kind.name()), "{} twice", kind.name());
        assert_eq!(gauge.resolution.is_none(), kind == GaugeKind::Other, "{}", kind.name());
        assert_eq!(gauge.permissible_error.is_none(), kind == GaugeKind::Other, "{}", kind.name());
        let own = read("1.000", Bar).step().value(Bar) / 12_f64.sqrt();
        near(gauge.uncertainty(&read("1.000", Bar), Bar), own, kind.name());
    }
}
