//! Rounding: to nearest for readings, inward for limits.

use super::read;
use Unit::*;
use pitleaf_core::limits::{Edge, Limit};
use pitleaf_core::quantity::{
    Amount, Bounds, Dimension, Rounding, Tolerance, Unit, places_for, thou_words,
};

/// NIST SP 811 (2008), B.7.1: 6.974 951 5 to three, five and seven digits; ties to the even digit.
#[test]
fn readings_round_to_nearest_and_ties_to_even() {
    let amount = read("6.9749515", Millimetre).amount();
    for (places, wanted) in [(2, "6.97"), (4, "6.9750"), (6, "6.974952")] {
        assert_eq!(amount.show(Millimetre, places, Rounding::Nearest), wanted, "{places} decimals");
    }
    for (typed, wanted) in [("0.5", "0"), ("1.5", "2"), ("2.5", "2"), ("-0.5", "0"), ("-1.5", "−2")]
    {
        let shown = read(typed, Millimetre).amount().show(Millimetre, 0, Rounding::Nearest);
        assert_eq!(shown, wanted, "{typed}");
    }
}

/// NIST SP 811 (2008), B.7.2: 36 ft is 11.0 m, its last digit as coarse as what was measured.
#[test]
fn thirty_six_feet_are_eleven_metres() {
    assert_eq!(read("36 ft", Metre).amount().show(Metre, 1, Rounding::Nearest), "11.0", "SP 811");
}

/// ANSI/IEEE 268 (now IEEE/ASTM SI 10) and ASME A112.18.1-2018, annex A.2 e: 11 ± 0.3 mm in
/// thousandths of an inch is 0.422 to 0.444, never 0.421 or 0.445.
#[test]
fn limits_round_inward() {
    let upper = read("11.3", Millimetre).amount();
    let lower = read("10.7", Millimetre).amount();
    assert_eq!(upper.show(Inch, 3, Rounding::Down), "0.444", "upper");
    assert_eq!(lower.show(Inch, 3, Rounding::Up), "0.422", "lower");
    assert_eq!(upper.show(Inch, 3, Rounding::Nearest), "0.445", "what nearest would admit");
    assert_eq!(lower.show(Inch, 3, Rounding::Nearest), "0.421", "what nearest would admit");
}

/// ISO 129-1 writes deviations with their signs behind the size: the limits are the sums.
#[test]
fn a_drawings_tolerance_is_read_in_each_of_its_forms() {
    for (text, unit, lower, upper) in [
        ("11±0.3", Millimetre, "10.7", "11.3"),
        ("11 +/- 0.3", Millimetre, "10.7", "11.3"),
        ("11 +- 0,3", Millimetre, "10.7", "11.3"),
        ("11 +0.3/-0.1", Millimetre, "10.9", "11.3"),
        ("11 +0.3 -0.1", Millimetre, "10.9", "11.3"),
        ("11 -0.1 +0.3", Millimetre, "10.9", "11.3"),
        ("11 + 0.3 / − 0.1 mm", Inch, "10.9", "11.3"),
        ("11 mm ± 0.3", Inch, "10.7", "11.3"),
        ("11 +0.3/-0", Millimetre, "11", "11.3"),
        ("11 +0.3 +0.1", Millimetre, "11.1", "11.3"),
        ("-5 +0.3/-0.1", Millimetre, "−5.1", "−4.7"),
        ("1-1/8 in +0.01/-0.01", Millimetre, "28.321", "28.829"),
    ] {
        assert!(Tolerance::is_typed(text), "{text}: seen");
        let read = Tolerance::read(text, unit, Bounds::widest(Dimension::Length));
        let (low, high) = read.unwrap_or_else(|fault| panic!("{text}: {fault}")).edges();
        let shown = [low, high].map(|edge| edge.exact_figure(Millimetre, 6).expect("exact"));
        assert_eq!(shown, [lower, upper], "{text}");
    }
    for text in ["11", "-11", "1-1/8", "1e+9", "1 1/8", "", "+3", "--", "abc"] {
        assert!(!Tolerance::is_typed(text), "{text}: no tolerance");
    }
    let torque = Tolerance::read("35 +2/-3", NewtonMetre, Bounds::widest(Dimension::Torque));
    let (low, high) = torque.expect("a torque has a tolerance too").edges();
    assert_eq!((low, high), (read("32", NewtonMetre).amount(), read("37", NewtonMetre).amount()));
}

/// No text makes it panic, and what comes out is in order.
#[test]
fn any_tolerance_is_read_or_refused() {
    const PIECES: [&str; 12] = ["1", "0.3", "+", "-", "−", "/", "±", " ", "mm", "½", "é", "\u{a0}"];
    for number in 0..PIECES.len().pow(4) {
        let text: String = (0..4_u32)
            .map(|place| PIECES[number / PIECES.len().pow(place) % PIECES.len()])
            .collect();
        if let Ok(tolerance) = Tolerance::read(&text, Millimetre, Bounds::widest(Dimension::Length))
        {
            let (low, high) = tolerance.edges();
            assert!(low <= high, "{text}");
        }
    }
}

#[test]
fn inward_goes_the_right_way_below_zero_too() {
    let amount = read("-0.0015", Millimetre).amount();
    assert_eq!(amount.show(Millimetre, 3, Rounding::Down), "−0.002", "down is further below");
    assert_eq!(amount.show(Millimetre, 3, Rounding::Up), "−0.001", "up is nearer to zero");
    assert_eq!(amount.show(Millimetre, 2, Rounding::Up), "0.00", "and zero has no sign");
}

/// ASME A112.18.1-2018, annex A.2: a reading of 0.236 may not become 0.24 in order to pass.
#[test]
fn a_reading_is_not_rounded_in_order_to_pass() {
    let limit = Limit { lower: Edge::read("0.24", Inch).ok(), ..Limit::default() };
    assert!(!limit.holds(read("0.236", Inch).amount()), "0.236 in against at least 0.24 in");
    assert!(limit.holds(read("6.096 mm", Inch).amount()), "0.24 in exactly, typed in millimetres");
}

#[test]
fn an_edge_keeps_the_zeros_its_source_printed() {
    for (text, unit, wanted) in [
        ("0.0030", Inch, "0.0030"),
        ("80", Millimetre, "80"),
        ("42.970", Millimetre, "42.970"),
        ("1/64", Inch, "0.015625"),
        ("2½", Thou, "2.5"),
        ("0,40 mm", Inch, "0.40"),
    ] {
        let edge = Edge::read(text, unit).unwrap();
        assert_eq!(edge.show(edge.unit(), Rounding::Down), wanted, "{text}");
    }
}

#[test]
fn an_edge_shows_a_tenth_of_its_step_in_another_unit() {
    let upper = Edge::read("0.0030", Inch).unwrap();
    assert_eq!(upper.show(Millimetre, Rounding::Down), "0.0762", "exact");
    let upper = Edge::read("0.078", Millimetre).unwrap();
    assert_eq!(upper.show(Inch, Rounding::Down), "0.003070", "0.078 mm is 0.00307086… in");
    assert_eq!(upper.show(Inch, Rounding::Up), "0.003071", "as a lower edge");
    assert_eq!(upper.show(Thou, Rounding::Down), "3.070", "in thou");
}

#[test]
fn decimals_keep_a_tenth_of_the_step() {
    for (typed, unit, wanted) in [
        ("0.05 mm", Millimetre, 3),
        ("0.05 mm", Inch, 5),
        ("0.05 mm", Thou, 2),
        ("2 thou", Millimetre, 3),
        ("0.001 mm", Metre, 7),
        ("100 mm", Micrometre, 0),
    ] {
        let reading = read(typed, Millimetre);
        assert_eq!(places_for(reading.step(), unit), wanted, "{typed} in {}", unit.symbol());
    }
}

#[test]
fn thou_are_said_as_a_shop_says_them() {
    for (text, wanted) in [
        ("2.5", "2½"),
        ("0.75", "¾"),
        ("1.25", "1¼"),
        ("12", "12"),
        ("0", "0"),
        ("2.1", "2.10"),
        ("0.0508 mm", "2"),
        ("0.05 mm", "1.97"),
        ("-2.5", "−2.50"),
    ] {
        assert_eq!(thou_words(read(text, Thou).amount()), wanted, "{text}");
    }
}

#[test]
fn an_exact_figure_is_told_only_where_decimals_can() {
    assert_eq!(
        Amount::whole(2, Thou).exact_figure(Millimetre, 12).as_deref(),
        Some("0.0508"),
        "thou"
    );
    assert_eq!(Amount::whole(1, Millimetre).exact_figure(Inch, 12), None, "1/25.4 has no end");
    assert_eq!(
        Amount::exact(1, 64, Inch).unwrap().exact_figure(Inch, 6).as_deref(),
        Some("0.015625"),
        "1/64"
    );
    assert_eq!(Amount::exact(1, 64, Inch).unwrap().exact_figure(Inch, 5), None, "a digit short");
}
