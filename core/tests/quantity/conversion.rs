//! One reading in all units, the nearest 64th and the nearest leaf; and the seam to uom.

use super::read;
use Unit::*;
use pitleaf_core::quantity::{
    Amount, Bounds, Dimension, Reading, Unit, conversions, nearest_leaf, nearest_sixty_fourth,
};

#[test]
fn a_reading_shows_in_every_unit_of_its_dimension() {
    let rows: Vec<(&str, String, Option<String>)> = conversions(&read("2.0 thou", Millimetre))
        .into_iter()
        .map(|row| (row.unit.symbol(), row.rounded, row.exact))
        .collect();
    let row = |symbol, rounded: &str, exact: &str| {
        (symbol, rounded.to_owned(), (!exact.is_empty()).then(|| exact.to_owned()))
    };
    assert_eq!(
        rows,
        [
            row("mm", "0.0508", "0.0508"),
            row("in", "0.00200", "0.002"),
            row("thou", "2.00", "2"),
            row("µm", "50.8", "50.8"),
            row("cm", "0.00508", "0.00508"),
            row("m", "0.0000508", "0.0000508"),
            row("ft", "0.0001667", ""),
        ],
        "2.0 thou"
    );
}

/// The largest amounts with the most decimals: nothing may pass what the arithmetic holds.
#[test]
fn the_ends_of_every_bound_convert() {
    for dimension in Dimension::ALL {
        let bounds = Bounds::widest(dimension);
        assert_eq!(bounds.unit.dimension(), dimension, "{} has bounds", dimension.name());
        for end in [bounds.lowest, bounds.highest] {
            let reading = Reading::read(&end.to_string(), bounds.unit, bounds).unwrap();
            let rows = conversions(&reading);
            assert_eq!(rows.len(), dimension.units().count(), "{end} {}", bounds.unit.symbol());
            for row in rows.iter().filter_map(|row| Some((row.unit, row.exact.as_deref()?))) {
                let back = Reading::read(row.1, row.0, bounds).map(|reading| reading.amount());
                assert_eq!(back, Ok(reading.amount()), "{} {}", row.1, row.0.symbol());
            }
        }
    }
}

#[test]
fn the_nearest_sixty_fourth_comes_reduced_with_what_remains() {
    for (text, fraction, rest) in [
        ("1/8 in", (0, 1, 8), 0.0),
        ("10 mm", (0, 25, 64), 78.125),
        ("25.4 mm", (1, 0, 1), 0.0),
        ("0.5 mm", (0, 1, 64), 103.125),
        ("63.5 mm", (2, 1, 2), 0.0),
        ("0.3 mm", (0, 1, 64), -96.875),
    ] {
        let (got, remains) = nearest_sixty_fourth(read(text, Millimetre).amount()).unwrap();
        assert_eq!(got, fraction, "{text}");
        let remains = remains.value(Micrometre);
        assert!((remains - rest).abs() < 1e-9, "{text}: {remains} µm remain, wanted {rest}");
    }
    for nothing in ["0 mm", "0.1 mm"] {
        let amount = read(nothing, Millimetre).amount();
        assert_eq!(nearest_sixty_fourth(amount), None, "{nothing}: nothing is no fraction");
    }
    assert_eq!(nearest_sixty_fourth(read("-1 mm", Millimetre).amount()), None, "below zero");
    assert_eq!(nearest_sixty_fourth(read("1 N·m", NewtonMetre).amount()), None, "a torque");
}

/// Leaves of 0.05 to 1.00 mm by 0.05: the 20-leaf series of DIN 2275, from memory.
#[test]
fn the_nearest_leaf_comes_with_what_remains() {
    let leaves: Vec<Amount> =
        (1..=20).map(|count| Amount::exact(count * 5, 100, Millimetre).unwrap()).collect();
    for (text, leaf, rest) in
        [("2.5 thou", "0.05", 13.5), ("0.08", "0.10", -20.0), ("1.5", "1.00", 500.0)]
    {
        let (got, remains) = nearest_leaf(read(text, Millimetre).amount(), &leaves).unwrap();
        assert_eq!(got, read(leaf, Millimetre).amount(), "{text}");
        let remains = remains.value(Micrometre);
        assert!((remains - rest).abs() < 1e-9, "{text}: {remains} µm remain, wanted {rest}");
    }
    for far in ["3", "1.51", "0.02", "0"] {
        assert_eq!(
            nearest_leaf(read(far, Millimetre).amount(), &leaves),
            None,
            "{far}: no leaf near"
        );
    }
    assert_eq!(nearest_leaf(read("1", Gram).amount(), &leaves), None, "a mass has no leaf");
}

/// uom's own foot pound-force is off by 8.7e-8; through an amount the torque is exact to a float's last digit.
#[test]
fn physics_takes_the_exact_figure() {
    use uom::si::{length::millimeter, pressure::pascal, torque::newton_meter};
    let near = |got: f64, wanted: f64| (got - wanted).abs() <= wanted.abs() * 1e-15;
    let torque = read("1 lbf·ft", NewtonMetre).amount().torque().unwrap().get::<newton_meter>();
    assert!(near(torque, 1.355_817_948_331_400_4), "{torque}");
    let pressure = read("1 psi", Bar).amount().pressure().unwrap().get::<pascal>();
    assert!(near(pressure, 6_894.757_293_168_361), "{pressure}");
    let length = read("1 in", Inch).amount().length().unwrap();
    assert!(near(length.get::<millimeter>(), 25.4), "{length:?}");
    assert_eq!(Amount::of_length(length), Some(Amount::whole(1, Inch)), "and back");
    let temperature = read("68 °F", Celsius).amount().temperature().unwrap();
    let kelvin = temperature.get::<uom::si::thermodynamic_temperature::kelvin>();
    assert!(near(kelvin, 293.15), "{kelvin}");
}

#[test]
fn an_amount_is_physics_of_its_own_dimension_only() {
    let torque = read("1", NewtonMetre).amount();
    assert!(torque.length().is_none() && torque.pressure().is_none(), "a torque is neither");
    assert!(torque.temperature().is_none(), "nor a temperature");
    assert!(read("1", Inch).amount().torque().is_none(), "a length is no torque");
}

#[test]
fn what_is_no_number_becomes_no_amount() {
    for value in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, 1e300] {
        assert_eq!(Amount::nearest(value, Millimetre), None, "{value}");
    }
    assert_eq!(Amount::nearest(0.0508, Millimetre), Some(Amount::whole(2, Thou)), "to the tick");
    let freezing = read("0 °C", Celsius).amount();
    assert_eq!(Amount::nearest(32.0, Fahrenheit), Some(freezing), "with the unit’s own zero");
}

#[track_caller]
fn shown(text: &str, unit: Unit, large: &str, beside: &str) {
    let rows = conversions(&read(text, unit));
    let row = rows.iter().find(|row| row.unit == unit).expect("a unit of its dimension");
    assert_eq!(row.shown(), (large, beside.to_owned()), "{text} in {}", unit.symbol());
}

#[test]
fn what_a_tool_can_be_set_to_is_shown_large() {
    shown("1/2 in", Millimetre, "12.7", "exact");
    shown("1 3/4 in", Millimetre, "44.45", "exact");
    shown("0.0025 in", Millimetre, "0.0635", "exact");
    shown("1/2 in", Inch, "0.5", "exact");
    shown("1/2 in", Foot, "0.042", "rounded");
    shown("2.0 thou", Thou, "2", "exact");
    shown("100 mm", Metre, "0.1", "exact");
    shown("3.5 kgf·m", NewtonMetre, "34.32", "exactly 34.323275");
    shown("98765432.1 µm", Metre, "98.7654321", "exact");
    shown("1/128 in", Metre, "0.00020", "exactly 0.0001984375");
    shown("1/128 in", Millimetre, "0.20", "exactly 0.1984375");
}
