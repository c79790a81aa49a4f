//! Parts past a limit.

use super::Shop;
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
    past.iter()
        .map(|past| (past.figure.place.clone(), past.decision.map(|(choice, _)| choice)))
        .collect()
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
