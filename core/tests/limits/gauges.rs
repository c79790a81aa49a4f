//! What a gauge leaves in doubt: JCGM 100:2008 (GUM), 4.3.7, type B, with the errors its standard allows.

use super::{limit, read};
use Unit::*;
use pitleaf_core::kept;
use pitleaf_core::limits::{
    Call, Edge, ErrorFault, Gauge, GaugeFigure, GaugeKind, PermissibleError, Side, Source, decide,
};
use pitleaf_core::quantity::{Reading, Unit};

#[track_caller]
fn near(got: f64, wanted: f64, what: &str) {
    assert!((got - wanted).abs() <= 1e-9, "{what}: got {got}, wanted {wanted}");
}

fn own(kind: GaugeKind, steps: &str, error: &str) -> Gauge {
    let (steps, error) = Gauge::read(kind, steps, error).expect("a gauge");
    Gauge::own(kind, &steps, &error)
}

/// r/√12 for a resolution r and m/√3 for a greatest error ±m, added in squares; recomputed by hand.
#[test]
fn resolution_and_permissible_error_add_in_squares() {
    let reading = read("50.0", Micrometre);
    for (resolution, error, wanted) in [
        ("10 µm", "0 µm", 2.886_751_346),
        ("0 µm", "3 µm", 1.732_291_353),
        ("10 µm", "3 µm", 3.366_501_646),
        ("1 µm", "4 µm", 2.327_373_341),
    ] {
        let gauge = own(GaugeKind::DialIndicator, resolution, error);
        let got = gauge.uncertainty(&reading, Micrometre);
        near(got, wanted, &format!("resolution {resolution}, error {error}"));
    }
}

/// By hand: ±4 % of 35 N·m is 1.4 N·m (ISO 6789-1), class 1.6 of 1000 kPa is 16 kPa (EN 837-1).
#[test]
fn a_share_of_the_reading_grows_with_it_and_a_share_of_the_span_does_not() {
    let root = 3_f64.sqrt();
    let wrench = own(GaugeKind::TorqueWrench, "0 N·m", "4 %");
    for (text, wanted) in [("35.00000", 1.4), ("70.00000", 2.8)] {
        let guard = wrench.guard(&read(text, NewtonMetre)).value(NewtonMetre);
        near(guard, 1.65 * wanted / root, text);
    }
    // 35 N·m typed in another unit: 25.815 lbf·ft (0.737 562 1 lbf·ft for a newton metre).
    let imperial = wrench.uncertainty(&read("25.815", PoundForceFoot), PoundForceFoot);
    near(imperial, (0.001_f64.powi(2) / 12.0 + (0.04 * 25.815_f64).powi(2) / 3.0).sqrt(), "lbf·ft");
    let gauge = own(GaugeKind::PressureGauge, "0 kPa", "1.6 % of 1000 kPa");
    for text in ["100.000", "900.000"] {
        let got = gauge.uncertainty(&read(text, Kilopascal), Kilopascal);
        let digit: f64 = 0.001;
        near(got, (digit * digit / 12.0 + 16.0 * 16.0 / 3.0).sqrt(), text);
    }
}

#[test]
fn digits_left_out_count_and_digits_added_do_not() {
    let gauge = own(GaugeKind::VernierCaliper, "20 µm", "0 µm");
    let root = 12_f64.sqrt();
    let doubt = |text: &str| gauge.uncertainty(&read(text, Millimetre), Micrometre);
    near(doubt("80.00"), 20.0 / root, "the gauge’s 20 µm");
    near(doubt("80.000"), 20.0 / root, "a digit more");
    near(doubt("80.0"), 100.0 / root, "read to 0.1 mm");
    near(gauge.uncertainty(&read("3.150", Inch), Thou), 1.0 / root, "read to a thou");
}

/// Whatever was typed more finely never made a gauge surer: 690.2 kPa was ten times as sure as 691.
#[test]
fn no_usual_gauge_is_surer_for_a_digit_more() {
    for kind in GaugeKind::ALL {
        let gauge = Gauge::usual(kind);
        let unit = kind.unit();
        let doubt = |text: &str| gauge.uncertainty(&read(text, unit), unit);
        let least = doubt("50.0000");
        for text in ["50", "50.0", "50.00", "50.000"] {
            assert!(doubt(text) >= least, "{}: {text}", kind.name());
        }
        if kind != GaugeKind::Other {
            assert!(least > 0.0, "{} is perfect", kind.name());
        }
    }
}

/// The same leaf however it is typed: 3, 3.0, 3.00; and 2½ as 2.5.
#[test]
fn a_leafs_doubt_is_its_own_whatever_was_typed() {
    let leaf = Gauge::usual(GaugeKind::FeelerLeaf);
    // r 10 µm and m 3 µm: u = √(100/12 + 9/3) µm, 1.65 u = 5.554 µm = 0.218 67 thou.
    let wanted = 1.65 * (100.0_f64 / 12.0 + 3.0).sqrt() / 25.4;
    for text in ["3", "3.0", "3.00", "2½", "2.5", "2"] {
        let guard = leaf.guard(&read(text, Thou)).value(Thou);
        assert!((guard - wanted).abs() < 1e-5, "{text}: ±{guard} thou, wanted ±{wanted}");
    }
    let gap = limit("0.0015", "0.0040", Inch);
    assert_eq!(decide(&gap, &read("3", Thou), &leaf).call, Call::Meets, "a leaf stamped 3");
}

/// ≥ 690 kPa with a tester of class 1.6 to 2000 kPa, ±32 kPa, in steps of 10: 1.65 √(10²/12 + 32²/3) is 30.9 kPa.
#[test]
fn a_tester_proves_nothing_near_the_limit() {
    let least = limit("690", "", Kilopascal);
    let tester = Gauge::usual(GaugeKind::CompressionTester);
    for (text, call) in [
        ("691", Call::TooClose),
        ("690.2", Call::TooClose),
        ("690.20", Call::TooClose),
        ("689.9", Call::TooClose),
        ("720.8", Call::TooClose),
        ("721", Call::Meets),
        ("659.2", Call::TooClose),
        ("659", Call::DoesNotMeet(Side::Below)),
    ] {
        assert_eq!(decide(&least, &read(text, Kilopascal), &tester).call, call, "{text} kPa");
    }
}

#[test]
fn without_a_stated_doubt_nothing_is_proved() {
    let limit = limit("32", "38", Millimetre);
    for text in ["35", "35.000", "10", "90"] {
        let verdict = decide(&limit, &read(text, Millimetre), &Gauge::usual(GaugeKind::Other));
        assert_eq!(verdict.call, Call::TooClose, "{text}");
    }
    let stated = own(GaugeKind::Other, "0.5 mm", "0.5 mm");
    let verdict = decide(&limit, &read("35", Millimetre), &stated);
    assert_eq!(verdict.call, Call::Meets, "once it is stated");
    // A leaf's doubt says nothing of a torque.
    let torque = super::limit("32", "38", NewtonMetre);
    let leaf = Gauge::usual(GaugeKind::FeelerLeaf);
    assert_eq!(decide(&torque, &read("35", NewtonMetre), &leaf).call, Call::TooClose, "a leaf");
}

#[test]
fn every_kind_but_other_has_a_usual_gauge_of_its_own_dimension_and_says_where_it_is_from() {
    let mut names = std::collections::HashSet::new();
    for kind in GaugeKind::ALL {
        let (gauge, dimension) = (Gauge::usual(kind), kind.unit().dimension());
        assert!(names.insert(kind.name()), "{} twice", kind.name());
        let is_other = kind == GaugeKind::Other;
        assert_eq!(gauge.resolution.is_none(), is_other, "{}: steps", kind.name());
        assert_eq!(gauge.permissible_error.is_none(), is_other, "{}: error", kind.name());
        assert_eq!(gauge.is_stated(dimension), !is_other, "{}", kind.name());
        assert_eq!(Gauge::usual_source(kind).is_none(), is_other, "{}: source", kind.name());
        if let Some((standard, source)) = Gauge::usual_source(kind) {
            let wanted =
                if standard.is_empty() { Source::CommonPractice } else { Source::FromMemory };
            assert_eq!(source, wanted, "{}", kind.name());
        }
        // What the screen shows of it can be typed again.
        if !is_other {
            let [steps, error] = gauge.texts();
            assert_eq!(own(kind, &steps, &error), gauge, "{}: {steps}, {error}", kind.name());
        }
    }
}

#[test]
fn an_error_is_read_as_its_paper_states_it() {
    let read = |text: &str| PermissibleError::read(text, Kilopascal);
    for (text, shown) in [
        ("16", "16 kPa"),
        ("2 psi", "2 psi"),
        ("4 %", "4 %"),
        ("4%", "4 %"),
        ("0,5 %", "0.5 %"),
        ("1.6 % of 1000", "1.6 % of 1000 kPa"),
        ("1.6% of 10 bar", "1.6 % of 10 bar"),
    ] {
        let error = read(text).expect(text);
        assert_eq!(error.to_string(), shown, "{text:?}");
        let json = kept::write(&error);
        let again = kept::read::<PermissibleError<Edge>>(&json);
        assert_eq!(again.as_ref(), Ok(&error), "kept as {json}");
    }
    for (text, fault) in [
        ("0 %", ErrorFault::Percent),
        ("-1 %", ErrorFault::Percent),
        ("101 %", ErrorFault::Percent),
        ("0.0001 %", ErrorFault::Percent),
        ("4 % or so", ErrorFault::OfWhat),
        ("4 % 1000", ErrorFault::OfWhat),
    ] {
        assert_eq!(read(text), Err(fault), "{text:?}");
    }
    for text in ["", "abc", "% of 5", "4 % of", "4 % of five", "12 mm"] {
        assert!(matches!(read(text), Err(ErrorFault::Size(_))), "{text:?}: {:?}", read(text));
    }
    // As books before there were shares have it.
    let old = kept::read::<PermissibleError<Edge>>(r#""0.0040 mm""#).expect("an old error");
    assert_eq!(kept::write(&old), r#""0.0040 mm""#, "to the letter");
    let leaf = Gauge::read(GaugeKind::FeelerLeaf, "0.01", "4 %");
    assert_eq!(leaf, Err((GaugeFigure::Error, ErrorFault::Leaf)), "a leaf by percent");
}

/// Differences of temperature: one degree is one kelvin, not 274.
#[test]
fn a_thermometers_error_is_a_difference() {
    let gauge = own(GaugeKind::Thermometer, "0.1 °C", "1 °C");
    let reading: Reading = read("82.0", Celsius);
    let wanted = (0.1_f64 * 0.1 / 12.0 + 1.0 / 3.0).sqrt();
    near(gauge.uncertainty(&reading, Celsius), wanted, "in degrees");
}
