//! Parts past a limit.

use super::Shop;
use super::compression::test;
use pitleaf_core::limits::BuildKind;
use pitleaf_core::quantity::Unit;
use pitleaf_core::route::{Choice, RouteFact, decide_on, fates, past_limits};

const ROW: &str = "side-housing-warp";

fn shop() -> Shop {
    let mut shop = Shop::new(BuildKind::NaturallyAspirated, 2);
    shop.read(ROW, "front", "0.01", Unit::Millimetre);
    shop.read(ROW, "rear", "0.30", Unit::Millimetre);
    shop
}

fn decisions(shop: &Shop) -> Vec<(String, Option<Choice>)> {
    let sheet = shop.sheet();
    let past = past_limits(&shop.book, &shop.build, &sheet);
    past.iter().map(|past| (past.place.clone(), past.decision.map(|(choice, _)| choice))).collect()
}

#[test]
fn a_reading_past_its_limit_asks_for_a_decision() {
    let mut shop = shop();
    assert_eq!(decisions(&shop), [("rear".to_owned(), None)], "the one that does not meet");
    shop.route(decide_on(ROW, "rear", Choice::Machine, "").expect("taken"));
    assert_eq!(decisions(&shop), [("rear".to_owned(), Some(Choice::Machine))], "decided");
    shop.read(ROW, "rear", "0.25", Unit::Millimetre);
    assert_eq!(
        decisions(&shop),
        [("rear".to_owned(), None)],
        "read anew: an older word is no answer"
    );
    shop.read(ROW, "rear", "0.01", Unit::Millimetre);
    assert_eq!(decisions(&shop), [], "machined and good");
}

/// By hand: 600 kPa under 690, 180 kPa over 150; means of 800 and 690 are 110 apart, over 100.
#[test]
fn a_compression_past_its_limit_asks_for_a_decision() {
    let mut shop = Shop::new(BuildKind::NaturallyAspirated, 2);
    let tested = |shop: &mut Shop, rotor: &str, faces| {
        shop.route(RouteFact::Compression(test(rotor, faces, "kPa")));
    };
    let decided = |shop: &mut Shop, row: &str, place: &str, choice| {
        shop.route(decide_on(row, place, choice, "a spare engine").expect("taken"));
    };
    const FACE: &str = "Rotor 2, face 2";
    const SPREAD: &str = "Rotor 2, spread over its faces";
    const BETWEEN: &str = "Between rotors, highest mean less lowest";
    let open = |places: &[&str]| -> Vec<_> {
        places.iter().map(|place| ((*place).to_owned(), None)).collect()
    };
    tested(&mut shop, "1", ["800", "790", "810"]);
    assert_eq!(decisions(&shop), [], "all of it meets");
    tested(&mut shop, "2", ["780", "600", "770"]);
    assert_eq!(decisions(&shop), open(&[FACE, SPREAD]), "a face, and the chambers too far apart");
    decided(&mut shop, "compression-na", FACE, Choice::Replace);
    decided(&mut shop, "compression-face-spread", SPREAD, Choice::Accept);
    let taken =
        [(FACE.to_owned(), Some(Choice::Replace)), (SPREAD.to_owned(), Some(Choice::Accept))];
    assert_eq!(decisions(&shop), taken, "each by its own word");
    tested(&mut shop, "1", ["800", "800", "800"]);
    assert_eq!(decisions(&shop), taken, "the other rotor’s test changes nothing");
    tested(&mut shop, "2", ["780", "610", "770"]);
    assert_eq!(decisions(&shop), open(&[FACE, SPREAD]), "tested anew: older words are no answers");

    tested(&mut shop, "2", ["691", "690", "689"]);
    let between = |shop: &Shop| decisions(shop).last().cloned().expect("one at least");
    assert_eq!(between(&shop), (BETWEEN.to_owned(), None), "rotors too far apart");
    decided(&mut shop, "compression-rotor-spread", BETWEEN, Choice::Machine);
    assert_eq!(between(&shop), (BETWEEN.to_owned(), Some(Choice::Machine)), "decided");
    tested(&mut shop, "1", ["801", "801", "801"]);
    assert_eq!(between(&shop), (BETWEEN.to_owned(), None), "either rotor’s test makes it anew");
    shop.withdraw_last();
    assert_eq!(between(&shop).1, Some(Choice::Machine), "that test was withdrawn");
}

#[test]
fn accepting_needs_a_reason_and_reuse_is_no_answer() {
    let refused =
        |choice, why| decide_on(ROW, "rear", choice, why).expect_err("refused").to_string();
    assert_eq!(
        refused(Choice::Accept, " "),
        "Write down why it is accepted: the customer reads it on the build sheet.",
        "accepted in silence"
    );
    assert_eq!(
        refused(Choice::Reuse, "fine"),
        "It is past its limit: machine it, replace it, or accept it with a written reason.",
        "used again"
    );
    let taken = decide_on(ROW, "rear", Choice::Accept, " one race only ").expect("with a reason");
    assert!(
        matches!(taken, RouteFact::Decided { why, .. } if why == "one race only"),
        "the reason"
    );
    assert!(decide_on("", "shaft", Choice::Reuse, "").is_ok(), "a part that is past nothing");
}

#[test]
fn the_last_word_on_a_part_holds() {
    let mut shop = shop();
    shop.route(decide_on("", "shaft", Choice::Reuse, "").expect("taken"));
    shop.route(decide_on("", "shaft", Choice::Replace, "cracked").expect("taken"));
    assert_eq!(
        fates(&shop.book, &shop.build),
        [("shaft", Choice::Replace, "cracked")],
        "the later"
    );
    shop.withdraw_last();
    assert_eq!(fates(&shop.book, &shop.build), [("shaft", Choice::Reuse, "")], "withdrawn");
}
