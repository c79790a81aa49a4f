//! Every sentence a bad text gets, in full.

use Unit::*;
use pitleaf_core::quantity::{Bounds, Fault, Number, Reading, Unit};

#[track_caller]
fn sentence(text: &str, unit: Unit, bounds: &'static Bounds) -> String {
    match Reading::read(text, unit, bounds) {
        Ok(reading) => panic!("{text:?} was taken as {:?}", reading.amount()),
        Err(fault) => fault.to_string(),
    }
}

const EMPTY: &str = "Nothing typed yet. Type the reading.";
const POINTS: &str = "More than one point or comma. Leave only the decimal one.";
const EXPONENT: &str = "Powers of ten are not read. Write the number out in full.";
const DIGITS: &str = "Too many digits. At most 12 can be held exactly.";
const MINUS_ZERO: &str = "Minus zero is no reading. Type 0, or a value below it.";
const FRACTION: &str = "This fraction can’t be read. Write it as 1/64, 1 1/8 or 2½.";

/// Typed as a gap in millimetres.
const GAPS: &[(&str, &str)] = &[
    ("", EMPTY),
    ("   ", EMPTY),
    ("abc", "“abc” is no number. Use digits with one point or comma."),
    ("mm", "“mm” is no number. Use digits with one point or comma."),
    (".", "“.” is no number. Use digits with one point or comma."),
    ("-", "“-” is no number. Use digits with one point or comma."),
    ("+ mm", "“+” is no number. Use digits with one point or comma."),
    ("--2", "“-2” is no number. Use digits with one point or comma."),
    ("1 000", "“1 000” is no number. Use digits with one point or comma."),
    ("2#", "“2#” is no number. Use digits with one point or comma."),
    ("(0.05)", "“(0.05)” is no number. Use digits with one point or comma."),
    ("nothing to read", "“nothing to r…” is no number. Use digits with one point or comma."),
    ("٣", "“٣” is no number. Use digits with one point or comma."),
    ("1..2", POINTS),
    ("1.2.3 mm", POINTS),
    ("1.000,5", POINTS),
    ("1e9", EXPONENT),
    ("1E-3", EXPONENT),
    ("1e+9", EXPONENT),
    ("0000000000001", DIGITS),
    ("0.1234567890123", DIGITS),
    ("-0", MINUS_ZERO),
    ("−0", MINUS_ZERO),
    ("−0.000 in", MINUS_ZERO),
    ("-0/5", MINUS_ZERO),
    ("1/0", FRACTION),
    ("1/", FRACTION),
    ("/", FRACTION),
    ("1/2/3", FRACTION),
    ("1/129 in", FRACTION),
    ("1 9/8 in", FRACTION),
    ("2.5½", FRACTION),
    ("½½", FRACTION),
    ("1½2", FRACTION),
    ("1/3 in", "Not read that finely in in. Check the unit, or write a decimal with fewer digits."),
    ("⅓ mm", "Not read that finely in mm. Check the unit, or write a decimal with fewer digits."),
    (
        "0.00000001",
        "Not read that finely in mm. Check the unit, or write a decimal with fewer digits.",
    ),
    (
        "0.0001 thou",
        "Not read that finely in thou. Check the unit, or write a decimal with fewer digits.",
    ),
    ("2 furlongs", "“furlongs” is no unit known here. Use one from the keys, or none."),
    ("12abc", "“abc” is no unit known here. Use one from the keys, or none."),
    ("1e", "“e” is no unit known here. Use one from the keys, or none."),
    (
        "1 thousandths of it",
        "“thousandths …” is no unit known here. Use one from the keys, or none.",
    ),
    ("5 M", "“M” is not m: m is a thousandth, M a million. Write the unit as on the keys."),
    ("5 Mm", "“Mm” is not mm: m is a thousandth, M a million. Write the unit as on the keys."),
    ("5 mPa", "“mPa” is not MPa: m is a thousandth, M a million. Write the unit as on the keys."),
    ("5 mpa", "“mpa” is not MPa: m is a thousandth, M a million. Write the unit as on the keys."),
    ("2 Pfund", "A “Pfund” is 500 g to some, 453.6 g to others. Write g, kg or lb."),
    ("34 Nm", "N·m measures torque, but length is measured here. Change the unit."),
    ("5°", "° measures angle, but length is measured here. Change the unit."),
    ("-0.05", "A gap lies between 0 and 25 mm. Check the decimal point and the unit."),
    ("25.0000001", "A gap lies between 0 and 25 mm. Check the decimal point and the unit."),
    ("2 in", "A gap lies between 0 and 0.98 in. Check the decimal point and the unit."),
    ("999999999999", "A gap lies between 0 and 25 mm. Check the decimal point and the unit."),
];

#[test]
fn each_bad_text_gets_its_sentence() {
    for (text, wanted) in GAPS {
        assert_eq!(sentence(text, Millimetre, &Bounds::GAP), *wanted, "{text:?}");
    }
}

#[test]
fn four_hundred_digits_are_too_many() {
    assert_eq!(sentence(&"9".repeat(400), Millimetre, &Bounds::SIZE), DIGITS, "whole");
    let fine = format!("0.{}", "3".repeat(400));
    assert_eq!(sentence(&fine, Inch, &Bounds::SIZE), DIGITS, "decimals");
    assert_eq!(
        sentence(&format!("1/{}", "9".repeat(400)), Inch, &Bounds::SIZE),
        FRACTION,
        "fraction"
    );
}

#[test]
fn bounds_are_told_in_the_unit_typed_and_inward() {
    for (text, bounds, wanted) in [
        ("26", &Bounds::HEIGHT, "A height lies between −25 and 25 mm."),
        ("-1 in", &Bounds::HEIGHT, "A height lies between −0.98 and 0.98 in."),
        ("1001", &Bounds::SIZE, "A size lies between 0 and 1000 mm."),
        ("40 in", &Bounds::SIZE, "A size lies between 0 and 39.37 in."),
        ("5.1", &Bounds::DEVIATION, "A deviation lies between 0 and 5 mm."),
        ("5100 µm", &Bounds::DEVIATION, "A deviation lies between 0 and 5000 µm."),
        ("200 thou", &Bounds::DEVIATION, "A deviation lies between 0 and 196.85 thou."),
    ] {
        let wanted = format!("{wanted} Check the decimal point and the unit.");
        let got = sentence(text, Millimetre, bounds);
        assert_eq!(got, wanted, "{text:?}");
    }
}

#[test]
fn every_dimension_says_its_own_bounds() {
    for (text, unit, wanted) in [
        ("100001 mm", Millimetre, "A length lies between −100000 and 100000 mm."),
        ("10001", NewtonMetre, "A torque lies between 0 and 10000 N·m."),
        ("-2", Bar, "A pressure lies between −1 and 10000 bar."),
        ("-1", Millilitre, "A volume lies between 0 and 1000000 mL."),
        ("-1", Gram, "A mass lies between 0 and 1000000 g."),
        ("-1", Newton, "A force lies between 0 and 1000000 N."),
        ("-1", Kilowatt, "A power lies between 0 and 10000 kW."),
        ("-460", Fahrenheit, "A temperature lies between −459.4 and 5432 °F."),
        ("3601", Degree, "An angle lies between −3600 and 3600 °."),
        ("-1", LitrePerMinute, "A flow lies between 0 and 100000 L/min."),
        ("-1", GramMillimetre, "An unbalance lies between 0 and 1000000 g·mm."),
    ] {
        let wanted = format!("{wanted} Check the decimal point and the unit.");
        let got = sentence(text, unit, Bounds::widest(unit.dimension()));
        assert_eq!(got, wanted, "{text:?}");
    }
}

#[test]
fn a_number_alone_tells_a_power_of_ten_from_letters() {
    assert_eq!(Number::read("1e9"), Err(Fault::Exponent), "a power of ten");
    assert_eq!(Number::read("e9"), Err(Fault::Unreadable("e9".to_owned())), "no number before it");
}
