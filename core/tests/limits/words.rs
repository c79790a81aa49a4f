//! A verdict in words: what is taken of the digits typed, the doubt, and the limit in its own unit.

use super::{limit, read};
use Unit::*;
use pitleaf_core::limits::{Gauge, GaugeKind, Limit, Sheet, decide, limit_lines};
use pitleaf_core::quantity::Unit;

fn explained(limit: &Limit, text: &str, unit: Unit, kind: GaugeKind) -> String {
    let (reading, gauge) = (read(text, unit), Gauge::usual(kind));
    decide(limit, &reading, &gauge).explain(limit, &reading, &gauge)
}

#[track_caller]
fn says(told: &str, piece: &str) {
    assert!(told.contains(piece), "“{piece}” is missing in “{told}”");
}

#[test]
fn digits_left_out_are_named_before_the_gauge_is_blamed() {
    let least = limit("79.94", "", Millimetre);
    let told = explained(&least, "79.9", Millimetre, GaugeKind::OutsideMicrometer);
    says(&told, "good to its last digit, 0.1 mm: type every digit the gauge shows");
    // To the gauge's own step, a micrometre, only a finer gauge helps.
    let told = explained(&least, "79.942", Millimetre, GaugeKind::OutsideMicrometer);
    says(&told, "Measure again, with a finer gauge if there is one.");
    assert!(!told.contains("last digit"), "{told}");
    // Nor is the gauge too coarse for a limit only because digits are missing.
    let narrow = limit("0.04", "0.07", Millimetre);
    let told = explained(&narrow, "0.1", Millimetre, GaugeKind::DialIndicator);
    says(&told, "good to its last digit, 0.1 mm");
    assert!(!told.contains("narrower"), "{told}");
    // Of a gauge of which nothing is known that is said, and how to mend it.
    let told = explained(&least, "79.94", Millimetre, GaugeKind::Other);
    says(&told, "Nothing is known of how good the other gauge is.");
    assert!(!told.contains("doubt ±"), "{told}");
}

/// u = √(r²/12 + m²/3), guard 1.65 u: r 10 µm and m 4 µm give 0.006 1 mm.
#[test]
fn a_doubt_has_two_digits_rounded_up_however_finely_the_reading_is_typed() {
    let wide = limit("79", "81", Millimetre);
    for (text, unit, kind, doubt) in [
        ("79.94", Millimetre, GaugeKind::OutsideMicrometer, "±0.0061 mm"),
        ("79.940", Millimetre, GaugeKind::OutsideMicrometer, "±0.0039 mm"),
        ("80", Millimetre, GaugeKind::OutsideMicrometer, "±0.48 mm"),
        ("80.000000", Millimetre, GaugeKind::VernierCaliper, "±0.031 mm"),
        ("3.15", Inch, GaugeKind::OutsideMicrometer, "±0.0048 in"),
    ] {
        says(&explained(&wide, text, unit, kind), &format!("doubt {doubt}."));
    }
}

#[test]
fn a_limit_stands_in_its_own_unit_beside_any_other() {
    let least = limit("79.94", "", Millimetre);
    for (unit, lines) in [
        (Millimetre, "at least 79.94\u{a0}mm (at least 3.14725\u{a0}in)"),
        (Inch, "at least 3.14725\u{a0}in (at least 79.94\u{a0}mm)"),
    ] {
        assert_eq!(limit_lines(&least, unit), lines, "in {}", unit.symbol());
    }
    // 0.0381 and 0.0762 mm exactly; 0.04 mm is 1.5748 thou, 0.07 mm 2.7559, rounded inward.
    let gap = limit("0.0015", "0.0030", Inch);
    let play = limit("0.04", "0.07", Millimetre);
    let torque = limit("32", "38", NewtonMetre);
    for (limit, unit, lines) in [
        (&gap, Thou, "1.5…3.0\u{a0}thou (0.0015…0.0030\u{a0}in, 0.0381…0.0762\u{a0}mm)"),
        (&gap, Inch, "0.0015…0.0030\u{a0}in (0.0381…0.0762\u{a0}mm)"),
        (&gap, Millimetre, "0.0381…0.0762\u{a0}mm (0.0015…0.0030\u{a0}in)"),
        (&play, Millimetre, "0.04…0.07\u{a0}mm (1.58…2.75\u{a0}thou)"),
        (&play, Thou, "1.58…2.75\u{a0}thou (0.04…0.07\u{a0}mm)"),
        (&torque, NewtonMetre, "32…38\u{a0}N·m"),
    ] {
        assert_eq!(limit_lines(limit, unit), lines, "in {}", unit.symbol());
    }
    let told = explained(&least, "3.15", Inch, GaugeKind::OutsideMicrometer);
    says(&told, "The limit as written: at least 79.94\u{a0}mm.");
    let told = explained(&least, "80.00", Millimetre, GaugeKind::OutsideMicrometer);
    assert!(!told.contains("as written"), "once is enough: {told}");
}

/// Who is told that a part is past its wear limit is told what that limit is, and so is who is not there yet.
#[test]
fn the_wear_limit_is_named_with_its_figure() {
    let sheet = Sheet::starter();
    let play = &sheet.row("end-play").expect("a row").limit;
    let told = |text| explained(play, text, Millimetre, GaugeKind::DialIndicator);
    says(&told("0.120"), "Past the wear limit, 0.09 mm.");
    says(&told("0.080"), "Not past the wear limit, 0.09 mm.");
    says(&told("0.090"), "Too close to call against the wear limit, 0.09 mm.");
    assert!(!told("0.010").contains("wear"), "far too tight is not worn: {}", told("0.010"));
}
