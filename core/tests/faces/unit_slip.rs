//! A reading off by 25.4: asked about where it stands apart, left alone where it need not be one.

use pitleaf_core::faces::unit_slips;
use pitleaf_core::quantity::{Bounds, Reading, Unit};

fn asked(unit: Unit, texts: &[&str]) -> Vec<String> {
    let bounds = Bounds::widest(unit.dimension());
    let readings: Vec<Reading> =
        texts.iter().map(|text| Reading::read(text, unit, bounds).expect("a reading")).collect();
    unit_slips(&readings).iter().map(ToString::to_string).collect()
}

#[test]
fn an_inch_among_millimetres() {
    let asked = asked(Unit::Millimetre, &["43.01", "43.02", "1.6933", "43.00"]);
    let sentence = "Reading 3: 1.6933 mm stands apart; the others lie between 43.00 mm and 43.02 mm. Was it 1.6933 in?";
    assert_eq!(asked, [sentence], "one question");
}

#[test]
fn a_millimetre_among_inches() {
    let asked = asked(Unit::Inch, &["0.0005", "0.0008", "0.0007", "0.017"]);
    let sentence = "Reading 4: 0.017 in stands apart; the others lie between 0.0005 in and 0.0008 in. Was it 0.017 mm?";
    assert_eq!(asked, [sentence], "one question");
}

#[test]
fn micrometres_and_thou() {
    assert_eq!(asked(Unit::Micrometre, &["20", "25", "22", "0.9"]).len(), 1, "thou typed");
    assert!(
        asked(Unit::Micrometre, &["20", "25", "22", "0.9"])[0].ends_with("Was it 0.9 thou?"),
        "and said"
    );
    assert!(
        asked(Unit::Thou, &["1", "0.9", "1.1", "24"])[0].ends_with("Was it 24 µm?"),
        "the other way"
    );
}

#[test]
fn a_figure_converted_once_too_often() {
    let asked = asked(Unit::Millimetre, &["0.02", "0.015", "0.018", "0.45"]);
    let sentence = "Reading 4: 0.45 mm stands apart; the others lie between 0.015 mm and 0.02 mm. It is off by about 25.4, the factor between mm and in. Read it again?";
    assert_eq!(asked, [sentence], "no other unit makes it smaller");
}

#[test]
fn nothing_is_asked_without_cause() {
    for texts in [
        &["43.01", "43.02", "43.00"][..],
        // A high spot, but not by 25.4.
        &["0.02", "0.015", "0.018", "0.20"],
        // A small reading among some of both signs.
        &["0.02", "-0.015", "0.018", "0.0008"],
        &["0", "0", "0", "0.5"],
        // No majority to go by.
        &["43", "1.69", "43", "1.69"],
        &["43", "1.69"],
        &[],
    ] {
        assert_eq!(asked(Unit::Millimetre, texts), [""; 0], "{texts:?}");
    }
    let torque = asked(Unit::NewtonMetre, &["30", "31", "1.2"]);
    assert_eq!(torque, [""; 0], "only lengths");
}
