//! What is read out.

use num2words::Num2Words;
use pitleaf_core::limits::{Edge, Gauge, GaugeKind, Limit, decide};
use pitleaf_core::quantity::{Bounds, Reading, Unit};
use pitleaf_core::spoken::{figure, of_unit, quantity, verdict, whole};
use proptest::prelude::*;

/// Another library's words, with neither commas nor its “and”, which it says in some places only.
fn theirs(number: u32) -> String {
    let words = Num2Words::new(number).to_words().expect("a whole number");
    words.replace(',', "").replace(" and ", " ")
}

proptest! {
    #[test]
    fn whole_numbers_as_another_library_says_them(number in 0_u32..1_000_000) {
        let (ours, theirs) = (whole(number).replace(" and ", " "), theirs(number));
        let theirs = if number == 0 { "nought".to_owned() } else { theirs };
        prop_assert_eq!(ours, theirs);
    }

    /// Every digit behind the point is said by itself, so none is lost.
    #[test]
    fn decimals_are_said_digit_by_digit(count in 0_u32..10_000, digits in "[0-9]{1,6}") {
        let words = figure(&format!("{count}.{digits}"));
        let (before, behind) = words.split_once(" point ").expect("a point");
        prop_assert_eq!(before, whole(count));
        let said: Vec<String> = digits.bytes().map(|digit| whole(u32::from(digit - b'0'))).collect();
        prop_assert_eq!(behind, said.join(" "));
    }
}

#[test]
fn where_and_stands() {
    assert_eq!(whole(105), "one hundred and five", "hundreds");
    assert_eq!(whole(2005), "two thousand and five", "a thousand and less than a hundred");
    assert_eq!(whole(2100), "two thousand one hundred", "no ‘and’ before a hundred");
    assert_eq!(whole(1_000_000), "1000000", "beyond: digits");
}

#[test]
fn figures_with_their_unit_as_a_shop_says_them() {
    for (text, unit, said) in [
        ("2.5", Unit::Thou, "two and a half thou"),
        ("0.5", Unit::Thou, "half a thou"),
        ("0.25", Unit::Inch, "a quarter of an inch"),
        ("3.75", Unit::Thou, "three and three quarters thou"),
        ("0.75", Unit::Inch, "three quarters of an inch"),
        ("1", Unit::Millimetre, "one millimetre"),
        ("1.0", Unit::Inch, "one inch"),
        ("2.0", Unit::Thou, "two thou"),
        ("0.05", Unit::Millimetre, "nought point nought five millimetres"),
        ("-0.5", Unit::Millimetre, "minus half a millimetre"),
        ("−1", Unit::Millimetre, "minus one millimetre"),
        ("-0.05", Unit::Millimetre, "minus nought point nought five millimetres"),
        ("105", Unit::NewtonMetre, "one hundred and five newton metres"),
        ("1/8", Unit::Inch, "1/8 inches"),
    ] {
        assert_eq!(quantity(text, unit), said, "{text} {}", unit.symbol());
    }
}

#[test]
fn no_two_units_of_one_dimension_are_said_alike() {
    for unit in Unit::all() {
        for other in unit.dimension().units().filter(|other| *other != unit) {
            assert_ne!(of_unit(unit), of_unit(other), "{} and {}", unit.symbol(), other.symbol());
        }
    }
}

fn said(lower: Option<&str>, upper: Option<&str>, text: &str, gauge: GaugeKind) -> String {
    let edge = |text: Option<&str>| text.map(|text| Edge::read(text, Unit::Thou).expect("an edge"));
    let limit = Limit { lower: edge(lower), upper: edge(upper), wear: edge(None) };
    let bounds = Bounds::widest(Unit::Thou.dimension());
    let reading = Reading::read(text, Unit::Thou, bounds).expect("a reading");
    verdict(&decide(&limit, &reading, &Gauge::usual(gauge)), &reading)
}

/// What is said of wear is what is shown: 0.092 mm against 0.09 with a dial indicator is not proved past it.
#[test]
fn speech_is_no_surer_of_wear_than_the_screen() {
    let edge = |text: &str| Edge::read(text, Unit::Millimetre).ok();
    let limit = Limit { lower: edge("0.04"), upper: edge("0.07"), wear: edge("0.09") };
    let gauge = Gauge::usual(GaugeKind::DialIndicator);
    for (text, close) in [("0.092", true), ("0.120", false)] {
        let bounds = Bounds::widest(Unit::Millimetre.dimension());
        let reading = Reading::read(text, Unit::Millimetre, bounds).expect("a reading");
        let decided = decide(&limit, &reading, &gauge);
        let (shown, aloud) =
            (decided.explain(&limit, &reading, &gauge), verdict(&decided, &reading));
        assert_eq!(shown.contains("Too close to call against the wear"), close, "{shown}");
        assert_eq!(aloud.contains("too close to call against the wear"), close, "{aloud}");
        assert_eq!(aloud.contains("past the wear limit"), !close, "{aloud}");
    }
}

#[test]
fn a_gauge_of_unknown_doubt_is_named_and_not_measured_with_again() {
    let aloud = said(Some("1.5"), Some("4"), "2.5", GaugeKind::Other);
    assert!(aloud.starts_with("too close to call;"), "{aloud}");
    assert!(aloud.ends_with("; how good the gauge is, is not known"), "{aloud}");
}

#[test]
fn a_verdict_names_the_call_the_reading_and_the_edge_that_decides() {
    let leaf = GaugeKind::FeelerLeaf;
    for (lower, upper, text, words) in [
        (
            Some("1.5"),
            Some("4"),
            "2.5",
            "meets; two and a half thou; one thou above the lower limit",
        ),
        (
            Some("1.5"),
            Some("4"),
            "3.5",
            "meets; three and a half thou; half a thou below the upper limit",
        ),
        (Some("1.5"), Some("4"), "5", "does not meet; five thou; one thou over the upper limit"),
        (
            Some("1.5"),
            Some("4"),
            "0.5",
            "does not meet; half a thou; one thou under the lower limit",
        ),
        (None, Some("4"), "2", "meets; two thou; two thou below the upper limit"),
        (
            Some("1.5"),
            Some("4"),
            "1.5",
            "too close to call; one and a half thou; exactly on the lower limit; measure again",
        ),
    ] {
        assert_eq!(said(lower, upper, text, leaf), words, "{text} between {lower:?} and {upper:?}");
    }
}
