//! Slips of the finger that are noticed, and figures that are left alone.

use super::{limit, read, worn};
use Unit::*;
use pitleaf_core::limits::{Limit, Question, Slip, question, slips, two_readings};
use pitleaf_core::quantity::{Bounds, Reading, Rounding, Unit};
use proptest::prelude::*;
use proptest::sample::select;

#[track_caller]
fn check(limit: &Limit, cases: &[(&str, Unit, Option<Slip>)]) {
    for (text, unit, wanted) in cases {
        let got = slips(limit, &read(text, *unit));
        assert_eq!(got.first(), wanted.as_ref(), "{text} {}: {got:?}", unit.symbol());
    }
}

/// The question about a gap, and what its keys say.
#[track_caller]
fn asked(limit: &Limit, text: &str, unit: Unit, bounds: &'static Bounds) -> (String, Vec<String>) {
    let Question { words, ways } =
        question(limit, text, unit, bounds).unwrap_or_else(|| panic!("{text}: not asked"));
    (words, ways.iter().map(ToString::to_string).collect())
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
            ("50", Millimetre, Some(Slip::Unit(Micrometre))),
            ("2", Millimetre, Some(Slip::Unit(Thou))),
            ("2", Inch, Some(Slip::Unit(Thou))),
            ("0.05", Inch, Some(Slip::Unit(Millimetre))),
            ("0.05", Millimetre, None),
            ("0.10", Millimetre, None),
            ("0.0508", Millimetre, None),
            // 0.9 thou is 0.0229 mm: a tight gap, yet one that is met.
            ("0.9", Millimetre, Some(Slip::Unit(Thou))),
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
        let wanted = Slip::DecimalPoint(-1);
        let got = slips(&narrow, &read(&typed, Millimetre));
        assert_eq!(got.first(), Some(&wanted), "{typed} onto {lower}");
    }
}

/// Too small makes a builder grind, and grinding has no way back: that side asks as well.
#[test]
fn a_figure_far_too_small_is_asked_about_with_a_key_that_reads_it_so() {
    let gap = limit("0.0015", "0.0030", Inch);
    for (text, words, keys) in [
        ("0.06", "Far off. Was that mm?", &["Read as 0.06 mm"][..]),
        ("0.05", "Far off. Was that mm?", &["Read as 0.05 mm"]),
        ("0.06 thou", "Far off. Was that mm?", &["Read as 0.06 mm"]),
        (".003", "Far off. Was that in?", &["Read as .003 in"]),
        ("0,003", "Far off. Was that in?", &["Read as 0,003 in"]),
        // Refused, for it is finer than a thousandth of a thou; in inches it is the usual way to write 2½ thou.
        (".0025", "", &["Read as .0025 in"]),
        ("0.25", "Far off. Did the decimal point slip?", &["Read as 2.5 thou"]),
        ("25", "Far off. Did the decimal point slip?", &["Read as 2.5 thou"]),
        ("79.94", "Far off. Was that µm?", &["Read as 79.94 µm"]),
    ] {
        let got = asked(&gap, text, Thou, &Bounds::GAP);
        assert_eq!(got.0, words, "{text} thou");
        assert_eq!(got.1, keys, "{text} thou");
    }
    let inches = asked(&gap, "0,0635", Inch, &Bounds::GAP);
    let wanted = ("Far off. Was that mm?".to_owned(), vec!["Read as 0,0635 mm".to_owned()]);
    assert_eq!(inches, wanted, "0,0635 in");
    for honest in ["1", "0.7", "1.4", "2½", "4"] {
        assert_eq!(question(&gap, honest, Thou, &Bounds::GAP), None, "{honest} thou");
    }
}

#[test]
fn a_refused_figure_offers_the_unit_it_makes_sense_in() {
    let gap = limit("0.0015", "0.0030", Inch);
    let width = limit("79.94", "", Millimetre);
    let refused = |limit, text, bounds| asked(limit, text, Inch, bounds);
    let none = String::new();
    let got = refused(&width, "79.94", &Bounds::SIZE);
    assert_eq!(got, (none.clone(), vec!["Read as 79.94 mm".to_owned()]), "a width");
    let got = refused(&gap, "2½", &Bounds::GAP);
    assert_eq!(got, (none, vec!["Read as 2½ thou".to_owned()]), "a gap");
    let typed = asked(&gap, ".0025 thou", Millimetre, &Bounds::GAP);
    assert_eq!(typed.1, ["Read as .0025 in"], "the unit typed gives way as the one set does");
    let warp = refused(&limit("", "0.40", Millimetre), "0.5", &Bounds::DEVIATION);
    assert_eq!(
        warp.1,
        ["Read as 0.5 thou", "Read as 0.5 mm"],
        "what meets stands before what is near"
    );
    for text in ["", "abc", "1..2", "-2", "2 furlongs", "3 N·m"] {
        assert_eq!(question(&gap, text, Inch, &Bounds::GAP), None, "{text:?}: no unit mends it");
    }
    assert_eq!(question(&gap, "-0.05", Inch, &Bounds::GAP), None, "below zero in every unit");
}

#[test]
fn an_edge_and_a_reading_far_from_it_stay_a_reading() {
    let gap = limit("0.0015", "0.0030", Inch);
    for text in ["0.06", ".003", "0.25", "25"] {
        let reading = Reading::read(text, Thou, &Bounds::GAP).expect("asked about, not refused");
        assert!(!gap.holds(reading.amount()), "{text} thou is judged as it stands");
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
            ("0.2625", Millimetre, Some(Slip::Elsewhere)),
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
            ("0.25", Millimetre, Some(Slip::DecimalPoint(-1))),
            ("0.06", Millimetre, None),
            ("1.5", Millimetre, Some(Slip::Unit(Thou))),
            ("0.9", Inch, Some(Slip::Unit(Thou))),
            ("0.03", Inch, Some(Slip::Unit(Millimetre))),
            // 0.06 mm fails, 0.06 thou would pass: but no gauge shows a hundredth of a thou.
            ("0.06", Thou, Some(Slip::Unit(Millimetre))),
            ("0.03", Thou, Some(Slip::Unit(Millimetre))),
            ("0.0015", Millimetre, Some(Slip::Unit(Inch))),
            ("0.002", Millimetre, None),
            ("0.2", Thou, None),
            ("1.25", Thou, None),
        ],
    );
}

#[test]
fn other_dimensions_than_lengths() {
    check(
        &limit("32", "38", NewtonMetre),
        &[
            ("3.5", NewtonMetre, Some(Slip::Unit(KilogramForceMetre))),
            ("25.5", NewtonMetre, Some(Slip::Unit(PoundForceFoot))),
            ("300", NewtonMetre, Some(Slip::Unit(PoundForceInch))),
            ("29", NewtonMetre, None),
        ],
    );
    let both = slips(&limit("32", "38", NewtonMetre), &read("3.5", NewtonMetre));
    assert_eq!(both[1..], [Slip::DecimalPoint(1)], "and a moved point is offered too");
    check(&limit("80", "84", Celsius), &[("180", Celsius, Some(Slip::Unit(Fahrenheit)))]);
    check(&limit("690", "", Kilopascal), &[("105", Kilopascal, Some(Slip::Unit(Psi)))]);
}

/// A compression wears downwards: its wear limit lies under its lower edge.
#[test]
fn a_row_that_wears_downwards_asks_as_well() {
    let compression = worn(limit("690", "", Kilopascal), "590", Kilopascal);
    check(
        &compression,
        &[
            ("105", Bar, Some(Slip::Unit(Psi))),
            ("72", Kilopascal, Some(Slip::DecimalPoint(1))),
            ("7200", Kilopascal, Some(Slip::DecimalPoint(-1))),
            ("7.2", Kilopascal, Some(Slip::Unit(Bar))),
            ("720", Bar, Some(Slip::Unit(Kilopascal))),
            ("7.2", Psi, Some(Slip::Unit(Bar))),
            ("7.2", Bar, None),
            ("8.5", Bar, None),
            ("600", Kilopascal, None),
            ("105", Psi, None),
        ],
    );
}

#[test]
fn a_wear_limit_stands_in_for_an_upper_edge() {
    let limit = worn(limit("", "", Millimetre), "0.40", Millimetre);
    let got = slips(&limit, &read("4.5", Millimetre));
    assert_eq!(got.first(), Some(&Slip::Unit(Thou)), "4½ thou");
    let got = slips(&super::limit("", "", Millimetre), &read("3", Millimetre));
    assert_eq!(got, [], "no edge");
}

#[test]
fn a_fraction_is_of_an_inch() {
    let gap = limit("", "0.40", Millimetre);
    let (words, keys) = asked(&gap, "1/64", Millimetre, &Bounds::GAP);
    assert_eq!(words, "Fractions are usually of an inch. Was that in?", "under mm");
    assert_eq!(keys, ["Read as 1/64 in"], "one touch");
    for (text, unit) in [("1/64", Inch), ("1/64 mm", Millimetre), ("½", Millimetre), ("1/2", Thou)]
    {
        let words = question(&gap, text, unit, &Bounds::GAP).map(|question| question.words);
        assert!(words.is_none_or(|words| !words.starts_with("Fractions")), "{text} {unit:?}");
    }
}

#[test]
fn a_comma_that_may_part_thousands_is_asked_about_where_the_limit_says_so() {
    let pressure = limit("1000", "1300", Kilopascal);
    let bounds = Bounds::widest(Kilopascal.dimension());
    let (words, keys) = asked(&pressure, "1,234", Kilopascal, bounds);
    assert_eq!(
        (words.as_str(), keys[0].as_str()),
        ("Read as 1,234. Was that 1234?", "Read as 1234 kPa")
    );
    let width = limit("1.2", "1.3", Millimetre);
    assert_eq!(question(&width, "1,234", Millimetre, &Bounds::SIZE), None, "a decimal comma");
}

#[test]
fn without_a_limit_two_readings_are_asked_about_where_both_are_sensible() {
    let asked = |text: &str, unit: Unit, bounds| {
        let question = two_readings(text, unit, bounds)?;
        Some((question.words, question.ways.iter().map(ToString::to_string).collect::<Vec<_>>()))
    };
    let lengths = Bounds::widest(Millimetre.dimension());
    let thousands =
        ("Read as 1,234. Was that 1234?".to_owned(), vec!["Read as 1234 mm".to_owned()]);
    assert_eq!(asked("1,234", Millimetre, lengths), Some(thousands), "a comma in English");
    assert_eq!(asked("1,234", Metre, lengths), None, "1234 m is no length here");
    let fraction = "Fractions are usually of an inch. Was that in?".to_owned();
    let key = vec!["Read as 1/64 in".to_owned()];
    assert_eq!(asked("1/64", Millimetre, lengths), Some((fraction, key)), "a fraction");
    for text in ["1.234", "0,234", "1,23", "1234,567", "12,3456", "1/64 mm", "abc", ""] {
        assert_eq!(asked(text, Millimetre, lengths), None, "{text:?} is read in one way");
    }
}

/// Figures of a shop in its units, with the fineness its gauges have there.
const LENGTHS: [(Unit, u8); 4] = [(Millimetre, 3), (Inch, 4), (Thou, 1), (Micrometre, 0)];

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    /// A limit with two edges, in micrometres, and a reading inside it: nothing is asked in any unit.
    #[test]
    fn what_meets_is_never_asked_about(
        lower in 0_i64..100_000, width in 1_i64..2_000, part in 0.0_f64..=1.0,
        unit in select(LENGTHS.map(|(unit, _)| unit).to_vec()),
    ) {
        let both = limit(&lower.to_string(), &(lower + width).to_string(), Micrometre);
        let upper = limit("", &(lower + width).to_string(), Micrometre);
        #[expect(clippy::cast_possible_truncation, clippy::cast_precision_loss, reason = "small")]
        let typed = lower + (width as f64 * part).floor() as i64;
        let typed = read(&typed.to_string(), Micrometre).amount().show(unit, 3, Rounding::Nearest);
        let reading = read(&typed, unit);
        prop_assume!(both.holds(reading.amount()));
        prop_assert_eq!(slips(&both, &reading), []);
        // Without a lower edge, as long as a gauge could have shown it.
        if unit == Millimetre {
            prop_assert_eq!(slips(&upper, &reading), []);
        }
    }

    /// A figure in one unit that meets, read in another in which it is out of reach: asked about, and one
    /// of the keys is what was meant.
    #[test]
    fn a_figure_in_the_wrong_unit_is_asked_about(
        lower in 20_i64..90_000, width in 10_i64..200, part in 0.0_f64..=1.0,
        meant in select(LENGTHS.to_vec()), hand in select(LENGTHS.map(|(unit, _)| unit).to_vec()),
    ) {
        let (meant, places) = meant;
        prop_assume!(meant != hand);
        let limit = limit(&lower.to_string(), &(lower + width).to_string(), Micrometre);
        #[expect(clippy::cast_possible_truncation, clippy::cast_precision_loss, reason = "small")]
        let size = lower + (width as f64 * part).floor() as i64;
        let figure = read(&size.to_string(), Micrometre).amount().show(meant, places, Rounding::Nearest);
        prop_assume!(limit.holds(read(&figure, meant).amount()));
        let question = question(&limit, &figure, hand, Bounds::widest(hand.dimension()));
        let question = question.expect("asked about");
        prop_assert!(
            question.ways.iter().any(|way| read(&way.text, way.unit).amount() == read(&figure, meant).amount()),
            "{} {} under {}: {:?}", figure, meant.symbol(), hand.symbol(), question
        );
    }
}
