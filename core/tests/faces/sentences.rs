//! Every refusal in full, as the bench reads it.

use pitleaf_core::faces::Refusal;
use pitleaf_core::quantity::Bounds;

#[track_caller]
fn says(refusal: Refusal, sentence: &str) {
    assert_eq!(refusal.to_string(), sentence, "{refusal:?}");
}

#[test]
fn too_few() {
    let found = "flatness";
    let too_few = |given| Refusal::TooFew { found, given, needed: 4 };
    says(too_few(0), "No readings yet. Take at least 4 for flatness.");
    says(too_few(1), "One reading is too few for flatness. Take at least 4.");
    says(too_few(2), "2 readings are too few for flatness. Take at least 4.");
}

#[test]
fn places() {
    says(
        Refusal::OneLine,
        "All places lie on one line, which fixes no plane. Add a place well off that line.",
    );
    says(
        Refusal::NoCircle,
        "All points lie on one line, which fixes no circle. Take points all the way round.",
    );
    says(
        Refusal::NoCorners,
        "The three corners must be three different places, not on one line. Pick them again.",
    );
    says(
        Refusal::StepHidden,
        "The swept places can’t be told from a bend of the face. Read on both sides of the swept edge, all the way round.",
    );
}

#[test]
fn figures() {
    says(
        Refusal::Unequal { one: 24, other: 23 },
        "24 readings stand against 23. Each needs its partner: fill the empty ones or take the odd ones out.",
    );
    says(
        Refusal::OutOfBounds { bounds: &Bounds::HEIGHT, reading: Some(2) },
        "Reading 3: A height lies between −25 and 25 mm. Check the decimal point and the unit.",
    );
    says(
        Refusal::OutOfBounds { bounds: &Bounds::GAP, reading: None },
        "A gap lies between 0 and 25 mm. Check the decimal point and the unit.",
    );
    says(
        Refusal::Crossed { reading: 0 },
        "Reading 1: the lesser figure is not below the greater. Swap them, or check the decimal point.",
    );
    says(
        Refusal::Backwards(&Bounds::GAP),
        "A gap is given from the lesser figure to the greater. Swap them.",
    );
    says(
        Refusal::Open { reading: 1 },
        "Reading 2: neither a lower nor an upper figure. Give at least one of them.",
    );
}
