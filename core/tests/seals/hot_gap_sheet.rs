//! The hot gap from typed texts: the same figures as worked out by hand, and every fault said.

use pitleaf_core::quantity::Unit;
use pitleaf_core::seals::{TypedHotGap, TypedPiece};

fn piece(own: &str, coldest: &str, hottest: &str) -> TypedPiece {
    TypedPiece {
        material: Some(0),
        own: own.to_owned(),
        coldest: coldest.to_owned(),
        hottest: hottest.to_owned(),
    }
}

fn typed() -> TypedHotGap {
    TypedHotGap {
        seal_length: "50".to_owned(),
        corner_diameter: "10".to_owned(),
        least_gap: "0.05".to_owned(),
        greatest_gap: String::new(),
        bench: "20".to_owned(),
        pieces: [piece("10", "120", "120"), piece("10", "220", "220"), piece("10", "120", "120")],
        length: Some(Unit::Millimetre),
        temperature: Some(Unit::Celsius),
    }
}

#[test]
fn a_hotter_seal_of_the_same_metal_closes_the_gap_by_its_own_growth() {
    // Rotor and corners grow by 1.001; the seal by 1.002: 60.05·1.001 − 10·1.001 − 50·1.002 = 0.000 05 mm.
    let gap = typed().work_out().expect("a band");
    let (least, greatest) = gap.hot.amounts().expect("amounts");
    for amount in [least, greatest] {
        let got = amount.value(Unit::Millimetre);
        assert!((got - 0.000_05).abs() < 1e-6, "the gap came to {got} mm");
    }
    assert_eq!(gap.reference_words(Unit::Millimetre), None, "the bench was at 20 °C");
}

#[test]
fn a_cold_bench_is_corrected_to_20_degrees() {
    let mut cold = typed();
    cold.bench = "50 °F".to_owned();
    // Ten kelvin of 10 millionths on a gap of 0.05 mm are nothing to be seen.
    let gap = cold.work_out().expect("a band");
    assert_eq!(
        gap.reference_words(Unit::Millimetre).as_deref(),
        Some("At 20 °C, where lengths are compared (ISO 1): 0.050 mm to 0.051 mm.")
    );
}

#[test]
fn every_fault_is_said_with_its_field() {
    let mut bad = typed();
    bad.seal_length = String::new();
    bad.least_gap = "-1".to_owned();
    bad.bench = "warm".to_owned();
    bad.pieces[1].hottest = "4000".to_owned();
    bad.pieces[2].own = "tomato".to_owned();
    let faults = bad.work_out().expect_err("five faults");
    assert_eq!(faults.len(), 5, "{faults:#?}");
    assert_eq!(faults[0], "Seal’s length: Nothing typed yet. Type the reading.");
    assert!(faults[1].starts_with("Least cold gap: A gap lies between 0"), "{}", faults[1]);
    assert_eq!(faults[2], "Bench: “warm” is no number. Use digits with one point or comma.");
    assert!(faults[3].starts_with("Side seal, hottest: A temperature lies"), "{}", faults[3]);
    assert_eq!(
        faults[4],
        "Corner seal: two figures in millionths a kelvin are wanted, as “10.5 to 12”, the lower first."
    );
    let mut crossed = typed();
    crossed.pieces[0].coldest = "300".to_owned();
    assert_eq!(
        crossed.work_out().expect_err("crossed"),
        ["The coldest temperature lies above the hottest. Swap them."]
    );
}

#[test]
fn what_was_typed_is_written_beside_the_answer() {
    let mut typed = typed();
    typed.bench = "59 °F".to_owned();
    typed.greatest_gap = "3 thou".to_owned();
    typed.pieces[1].own = String::new();
    assert_eq!(
        typed.words(),
        "Seal 50 mm, corner seal 10 mm, cold gap 0.05 mm to 3 thou at 59 °F. Rotor: 10 millionths a kelvin, 120 °C to 120 °C. Side seal: Grey cast iron, 220 °C to 220 °C. Corner seal: 10 millionths a kelvin, 120 °C to 120 °C."
    );
}

/// A metal taken in silence would decide the answer.
#[test]
fn no_gap_comes_out_before_each_metal_is_chosen() {
    let mut unchosen = typed();
    for piece in &mut unchosen.pieces {
        *piece = TypedPiece { own: String::new(), material: None, ..piece.clone() };
    }
    let faults = unchosen.work_out().expect_err("nothing is chosen");
    assert_eq!(
        faults,
        [
            "Rotor: choose its metal.",
            "Side seal: choose its metal.",
            "Corner seal: choose its metal."
        ]
    );
    assert_eq!(TypedPiece::default().material, None, "nothing to begin with");
}
