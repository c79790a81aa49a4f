//! What a person may type, and what it amounts to.

use super::read;
use Unit::*;
use pitleaf_core::quantity::{Bounds, Reading, Unit};

/// Typed text, the unit set; then the unit it holds in, its exact figure in micrometres, and its step there.
const LENGTHS: &[(&str, Unit, Unit, &str, f64)] = &[
    ("2 thou", Millimetre, Thou, "50.8", 25.4),
    ("0.002", Inch, Inch, "50.8", 25.4),
    (".002in", Millimetre, Inch, "50.8", 25.4),
    (".002\"", Millimetre, Inch, "50.8", 25.4),
    ("2.0", Thou, Thou, "50.8", 2.54),
    ("0,05", Millimetre, Millimetre, "50", 10.0),
    ("0.0508", Millimetre, Millimetre, "50.8", 0.1),
    ("50.8 µm", Inch, Micrometre, "50.8", 0.1),
    ("50,8um", Inch, Micrometre, "50.8", 0.1),
    ("2½", Thou, Thou, "63.5", 12.7),
    ("2 ½ thou", Inch, Thou, "63.5", 12.7),
    ("¾ thou", Inch, Thou, "19.05", 6.35),
    ("1/64", Inch, Inch, "396.875", 396.875),
    ("1 1/8", Inch, Inch, "28575", 3175.0),
    ("1-1/8 in", Millimetre, Inch, "28575", 3175.0),
    ("−1 1/8 in", Millimetre, Inch, "−28575", 3175.0),
    ("+0.05", Millimetre, Millimetre, "50", 10.0),
    ("-0.05", Millimetre, Millimetre, "−50", 10.0),
    ("- 0.05", Millimetre, Millimetre, "−50", 10.0),
    ("  0.05 MM ", Inch, Millimetre, "50", 10.0),
    ("5.", Millimetre, Millimetre, "5000", 1000.0),
    ("0", Millimetre, Millimetre, "0", 1000.0),
    ("0.000", Inch, Inch, "0", 25.4),
    ("8 cm", Inch, Centimetre, "80000", 10_000.0),
];

#[test]
fn lengths_are_read_as_typed() {
    for (text, set, unit, exact, step) in LENGTHS {
        let reading = read(text, *set);
        assert_eq!(reading.unit(), *unit, "{text:?}: its unit");
        assert_eq!(
            reading.amount().exact_figure(Micrometre, 12).as_deref(),
            Some(*exact),
            "{text:?}"
        );
        let got = reading.step().value(Micrometre);
        assert!((got - step).abs() < 1e-9, "{text:?}: step {got} µm, wanted {step}");
        assert_eq!(reading.text(), text.trim(), "the text stays");
    }
}

/// Typed text, any unit of the dimension meant; then the unit it holds in.
const UNITS: &[(&str, Unit, Unit)] = &[
    ("25 lb-ft", NewtonMetre, PoundForceFoot),
    ("25 ft-lbs", NewtonMetre, PoundForceFoot),
    ("25 ft lbs", NewtonMetre, PoundForceFoot),
    ("25 ftlbs", NewtonMetre, PoundForceFoot),
    ("300 in-lb", NewtonMetre, PoundForceInch),
    ("300 in lbs", NewtonMetre, PoundForceInch),
    ("3.5 kgfm", NewtonMetre, KilogramForceMetre),
    ("3.5 kgm", NewtonMetre, KilogramForceMetre),
    ("3.5 KGM", NewtonMetre, KilogramForceMetre),
    ("6900 Pa", Bar, Pascal),
    ("5 MPa", Bar, Megapascal),
    ("5 Mpa", Bar, Megapascal),
    ("80°", Celsius, Celsius),
    ("180°", Fahrenheit, Fahrenheit),
    ("80 Grad Celsius", Fahrenheit, Celsius),
    ("3,5 kgf·m", NewtonMetre, KilogramForceMetre),
    ("3.5 kg-m", NewtonMetre, KilogramForceMetre),
    ("34 Nm", PoundForceFoot, NewtonMetre),
    ("34 N·m", PoundForceFoot, NewtonMetre),
    ("100 PSI", Bar, Psi),
    ("8.5 kgf/cm2", Bar, KilogramForcePerSquareCentimetre),
    ("690 kPa", Bar, Kilopascal),
    ("29.92 inHg", Bar, InchOfMercury),
    ("654 cc", Litre, Millilitre),
    ("16 US fl oz", Litre, FluidOunce),
    ("180 F", Celsius, Fahrenheit),
    ("-40 °C", Fahrenheit, Celsius),
    ("12 ps", Watt, MetricHorsepower),
    ("90°", Turn, Degree),
    ("1 oz-in", GramMillimetre, OunceInch),
    ("4 lbs", Gram, Pound),
];

#[test]
fn units_are_read_as_shops_write_them() {
    for (text, set, unit) in UNITS {
        assert_eq!(read(text, *set).unit(), *unit, "{text:?}");
    }
}

#[test]
fn the_number_stands_apart_from_its_unit() {
    for (text, number) in
        [("2 thou", "2"), (".002in", ".002"), ("1 1/8 in", "1 1/8"), ("0,05", "0,05")]
    {
        assert_eq!(read(text, Millimetre).number(), number, "{text:?}");
    }
}

/// What SI writes with another prefix is never read as ours: BIPM, The International System of Units,
/// 9th edition (2019), table 7 (m 10⁻³, M 10⁶) and 3.1 (prefix symbols keep their case).
#[test]
fn no_prefix_is_read_as_another() {
    for unit in Unit::all() {
        let symbol = unit.symbol();
        let other = match symbol.chars().next() {
            Some('m') => symbol.replacen('m', "M", 1),
            Some('M') => symbol.replacen('M', "m", 1),
            _ => continue,
        };
        assert_eq!(Unit::named(&other), None, "{other} is not {symbol}");
        assert_eq!(Unit::with_prefix_mistaken(&other), Some(unit), "and that is said");
    }
    assert_eq!(Unit::named("Mbar"), None, "nor that of the bar");
    for (text, unit) in [
        ("mbar", Hectopascal),
        ("MM", Millimetre),
        ("KPA", Kilopascal),
        ("CM", Centimetre),
        ("Mil", Thou),
    ] {
        assert_eq!(Unit::named(text), Some(unit), "{text}: no prefix changes");
    }
}

/// Task: a manual says 3.5 kgf·m. 3.5 × 9.806 65 = 34.323 275 N·m; ÷ 1.355 817 948… = 25.315 548 lbf·ft.
#[test]
fn a_foreign_manuals_torque() {
    let torque = read("3.5 kgf·m", NewtonMetre).amount();
    assert_eq!(torque.exact_figure(NewtonMetre, 12).as_deref(), Some("34.323275"), "N·m");
    let shown = torque.show(PoundForceFoot, 6, pitleaf_core::quantity::Rounding::Nearest);
    assert_eq!(shown, "25.315548", "lbf·ft");
}

#[test]
fn both_ends_of_the_bounds_are_taken() {
    for bounds in [&Bounds::GAP, &Bounds::SIZE, &Bounds::HEIGHT, &Bounds::DEVIATION] {
        for (end, wanted) in [(bounds.lowest, bounds.least()), (bounds.highest, bounds.greatest())]
        {
            let reading = Reading::read(&end.to_string(), bounds.unit, bounds).unwrap();
            assert_eq!(reading.amount(), wanted, "{}: {end}", bounds.name);
            let outside = if end == bounds.highest { end + 1 } else { end - 1 };
            let refused = Reading::read(&outside.to_string(), bounds.unit, bounds);
            assert!(refused.is_err(), "{}: {outside} lies outside", bounds.name);
        }
    }
}
