//! Every unit against NIST SP 811 (2008), appendix B, and the exact definitions behind it.

use super::read;
use Unit::*;
use pitleaf_core::quantity::{Amount, Dimension, Rounding, Unit};
use std::collections::HashSet;

/// One of the first unit is so much of the second, exactly; and as SP 811 prints it, where it rounds.
type Row = (Unit, Unit, &'static str, &'static str);

/// NIST SP 811 (2008), appendix B.8 and B.9; the exact figures are its definitions multiplied out:
/// in 25.4 mm, lb 0.453 592 37 kg, standard gravity 9.806 65 m/s², US gallon 231 in³.
const SP_811: &[Row] = &[
    (Inch, Millimetre, "25.4", ""),
    (Thou, Micrometre, "25.4", ""),
    (Foot, Millimetre, "304.8", ""),
    (PoundForce, Newton, "4.4482216152605", "4.448222"),
    (KilogramForce, Newton, "9.80665", ""),
    (PoundForceFoot, NewtonMetre, "1.3558179483314004", "1.355818"),
    (PoundForceInch, NewtonMetre, "0.1129848290276167", "0.1129848"),
    (KilogramForceMetre, NewtonMetre, "9.80665", ""),
    (KilogramForceCentimetre, NewtonMetre, "0.0980665", ""),
    (KilogramForcePerSquareCentimetre, Kilopascal, "98.0665", ""),
    (Atmosphere, Kilopascal, "101.325", ""),
    (InchOfMercury, Kilopascal, "3.386388640341", "3.386389"),
    (Bar, Kilopascal, "100", ""),
    (CubicInch, Millilitre, "16.387064", "16.38706"),
    (FluidOunce, Millilitre, "29.5735295625", "29.57353"),
    (Quart, Millilitre, "946.352946", "946.3529"),
    (Pound, Gram, "453.59237", "453.5924"),
    (Ounce, Gram, "28.349523125", "28.34952"),
    (Horsepower, Watt, "745.69987158227022", "745.6999"),
    (MetricHorsepower, Watt, "735.49875", "735.4988"),
    (GallonPerMinute, LitrePerMinute, "3.785411784", "3.785412"),
];

/// Multiples by the definition of the prefix, the minute and the turn; and products of rows above.
const DEFINED: &[Row] = &[
    (Millimetre, Micrometre, "1000", ""),
    (Centimetre, Millimetre, "10", ""),
    (Metre, Millimetre, "1000", ""),
    (Megapascal, Kilopascal, "1000", ""),
    (Hectopascal, Kilopascal, "0.1", ""),
    (Kilopascal, Pascal, "1000", ""),
    (Litre, Millilitre, "1000", ""),
    (Kilogram, Gram, "1000", ""),
    (Kilonewton, Newton, "1000", ""),
    (Kilowatt, Watt, "1000", ""),
    (Turn, Degree, "360", ""),
    (Degree, ArcMinute, "60", ""),
    (MillilitrePerSecond, LitrePerMinute, "0.06", ""),
    (MillilitrePerMinute, LitrePerMinute, "0.001", ""),
    (GramInch, GramMillimetre, "25.4", ""),
    // Recomputed: 28.349 523 125 g × 25.4 mm.
    (OunceInch, GramMillimetre, "720.077887375", ""),
];

#[test]
fn each_unit_is_exactly_what_its_definition_says() {
    for (from, to, exact, _) in SP_811.iter().chain(DEFINED) {
        let figure = Amount::whole(1, *from).exact_figure(*to, 16);
        assert_eq!(figure.as_deref(), Some(*exact), "1 {} in {}", from.symbol(), to.symbol());
    }
}

#[test]
fn each_unit_rounds_to_the_printed_row() {
    for (from, to, _, printed) in SP_811.iter().filter(|row| !row.3.is_empty()) {
        let places = u8::try_from(printed.split_once('.').unwrap().1.len()).unwrap();
        let figure = Amount::whole(1, *from).show(*to, places, Rounding::Nearest);
        assert_eq!(figure, *printed, "1 {} in {}", from.symbol(), to.symbol());
    }
}

/// The psi has no end as a decimal of the pascal. SP 811: 6.894 757 E+03; lbf ÷ in² to 16 digits.
#[test]
fn a_psi_is_a_pound_force_on_a_square_inch() {
    let psi = Amount::whole(1, Psi);
    assert_eq!(psi.show(Kilopascal, 6, Rounding::Nearest), "6.894757", "as printed");
    assert_eq!(psi.show(Kilopascal, 15, Rounding::Nearest), "6.894757293168361", "to 16 digits");
    assert_eq!(psi.exact_figure(Kilopascal, 16), None, "no decimal holds it");
    // 4.448 221 615 260 5 N ÷ 6.4516 cm², times 6.4516.
    let whole = read("6.4516 psi", Bar).amount();
    assert_eq!(whole.exact_figure(Kilopascal, 16).as_deref(), Some("44.482216152605"), "exactly");
}

/// SP 811, B.9: t/°C = (t/°F − 32)/1.8, T/K = t/°C + 273.15.
#[test]
fn temperatures_keep_their_own_zero() {
    for (typed, unit, wanted) in [
        ("-40 °F", Celsius, "-40"),
        ("68 °F", Celsius, "20"),
        ("212 °F", Celsius, "100"),
        ("-40 °C", Fahrenheit, "-40"),
        ("20 °C", Kelvin, "293.15"),
        ("0.15 K", Celsius, "-273"),
        ("180 °F", Kelvin, "355.3722"),
    ] {
        let places =
            u8::try_from(wanted.split_once('.').map_or(0, |(_, part)| part.len())).unwrap();
        let shown = read(typed, Celsius).amount().show(unit, places, Rounding::Nearest);
        assert_eq!(shown.replace('−', "-"), wanted, "{typed} in {}", unit.symbol());
    }
}

/// What gauges and scales show: no unit may call that too fine.
#[test]
fn three_decimals_can_be_typed_in_every_unit() {
    for unit in Unit::all() {
        assert_eq!(read("1.234", unit).text(), "1.234", "{}", unit.symbol());
    }
}

#[test]
fn no_unit_goes_unchecked() {
    let checked: HashSet<Unit> = SP_811
        .iter()
        .chain(DEFINED)
        .flat_map(|row| [row.0, row.1])
        .chain([Psi, Celsius, Fahrenheit, Kelvin])
        .collect();
    for unit in Unit::all() {
        assert!(checked.contains(&unit), "{} has no outside figure", unit.symbol());
    }
}

#[test]
fn every_dimension_has_units_and_no_unit_stands_in_two() {
    let counted: usize = Dimension::ALL.iter().map(|dimension| dimension.units().count()).sum();
    assert_eq!(counted, Unit::all().count(), "each unit once");
    for dimension in Dimension::ALL {
        assert!(dimension.units().all(|unit| unit.dimension() == dimension), "{dimension:?}");
        assert!(dimension.units().count() >= 2, "{} has nothing to convert", dimension.name());
    }
}
