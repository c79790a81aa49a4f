//! Slips of the finger that are noticed, and figures that are left alone.

use super::{limit, read, worn};
use Unit::*;
use pitleaf_core::limits::{Slip, slip};
use pitleaf_core::quantity::Unit;

#[track_caller]
fn check(limit: &pitleaf_core::limits::Limit, cases: &[(&str, Unit, Option<Slip>)]) {
    for (text, unit, wanted) in cases {
        assert_eq!(slip(limit, &read(text, *unit)), *wanted, "{text} {}", unit.symbol());
    }
}

#[test]
fn a_gap_with_two_edges() {
    check(
        &limit("0.028", "0.078", Millimetre),
        &[
            ("0.25", Millimetre, None),
            ("0.5", Millimetre, Some(Slip::DecimalPoint(-1))),
            ("0.7", Millimetre, Some(Slip::DecimalPoint(-1))),
            ("0.78", Millimetre, Some(Slip::DecimalPoint(-1))),
            ("0.28", Millimetre, Some(Slip::DecimalPoint(-1))),
            ("5", Millimetre, Some(Slip::DecimalPoint(-2))),
            ("50", Millimetre, Some(Slip::DecimalPoint(-3))),
            ("2", Millimetre, Some(Slip::Unit(Thou))),
            ("2", Inch, Some(Slip::DecimalPoint(-3))),
            ("0.05", Inch, Some(Slip::Unit(Millimetre))),
            ("0.05", Millimetre, None),
            ("0.10", Millimetre, None),
            ("0.9", Millimetre, None),
            ("0", Millimetre, None),
        ],
    );
}

/// 0.07 × 10⁻¹ and 0.7 × 10⁻¹ are no exact floats: a slip that lands on an edge is still seen.
#[test]
fn a_slip_onto_an_edge_is_seen() {
    for digit in 1..=9 {
        let (lower, typed) = (format!("0.0{digit}"), format!("0.{digit}"));
        let narrow = limit(&lower, &format!("{lower}01"), Millimetre);
        let wanted = Some(Slip::DecimalPoint(-1));
        assert_eq!(slip(&narrow, &read(&typed, Millimetre)), wanted, "{typed} onto {lower}");
    }
}

#[test]
fn a_size_with_a_lower_edge_alone() {
    check(
        &limit("79.94", "", Millimetre),
        &[
            ("7.994", Millimetre, Some(Slip::DecimalPoint(1))),
            ("799.6", Millimetre, Some(Slip::DecimalPoint(-1))),
            ("3.148", Millimetre, Some(Slip::Unit(Inch))),
            ("0.2625", Millimetre, None),
            ("79.90", Millimetre, None),
            ("80.01", Millimetre, None),
            ("40", Millimetre, None),
        ],
    );
}

#[test]
fn a_warp_with_an_upper_edge_alone() {
    check(
        &limit("", "0.04", Millimetre),
        &[
            ("0.3", Millimetre, Some(Slip::DecimalPoint(-1))),
            ("0.06", Millimetre, None),
            ("1.5", Millimetre, Some(Slip::DecimalPoint(-2))),
            ("0.9", Inch, Some(Slip::DecimalPoint(-3))),
        ],
    );
}

#[test]
fn other_dimensions_than_lengths() {
    check(
        &limit("32", "38", NewtonMetre),
        &[
            ("3.5", NewtonMetre, Some(Slip::DecimalPoint(1))),
            ("25.5", NewtonMetre, Some(Slip::Unit(PoundForceFoot))),
            ("300", NewtonMetre, Some(Slip::Unit(PoundForceInch))),
            ("29", NewtonMetre, None),
        ],
    );
    check(&limit("80", "84", Celsius), &[("180", Celsius, Some(Slip::Unit(Fahrenheit)))]);
    check(&limit("690", "", Kilopascal), &[("105", Kilopascal, Some(Slip::Unit(Psi)))]);
}

#[test]
fn a_wear_limit_stands_in_for_an_upper_edge() {
    let limit = worn(limit("", "", Millimetre), "0.40", Millimetre);
    assert_eq!(slip(&limit, &read("3", Millimetre)), Some(Slip::DecimalPoint(-1)), "0.3");
    assert_eq!(slip(&super::limit("", "", Millimetre), &read("3", Millimetre)), None, "no edge");
}
