//! Readings past a limit or too close to call.

use super::Shop;
use super::compression::test;
use super::sheet::{section, sheet as printed};
use pitleaf_core::book::{Fact, Slot};
use pitleaf_core::faces::{ReadingSet, Survey};
use pitleaf_core::limits::BuildKind;
use pitleaf_core::quantity::{Bounds, Dimension, Unit};
use pitleaf_core::route::{Choice, Copy, OpenPoints, RouteFact, decide_on, fates, past_limits};
use pitleaf_core::seals::{Leaf, Outcome, Stack, Trial, Written};

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

/// Leaves prove a gap as a gauge does: 0.5 mm goes in a slot that may have a tenth of a millimetre.
#[test]
fn a_seal_fitted_past_its_limit_asks_for_a_decision() {
    let mut shop = Shop::new(BuildKind::NaturallyAspirated, 2);
    let slot = Slot::named("1F-BC").expect("a slot");
    let leaf = Leaf::read("0.5", Unit::Millimetre).expect("a leaf");
    let tolerance = Written::read("0.01", Unit::Millimetre, Bounds::widest(Dimension::Length));
    let seen = Trial::with_leaves(
        Outcome::Goes,
        Stack::of(vec![leaf]).expect("one leaf"),
        tolerance.expect("a tolerance"),
        None,
    )
    .expect("a trial");
    shop.write(Fact::Trial { slot, seen: seen.clone() });
    assert_eq!(decisions(&shop), [], "not in its slot: it is still being worked on");
    shop.write(Fact::Fitted { slot, fitted: true });
    assert_eq!(decisions(&shop), [("1F-BC".to_owned(), None)], "fitted all the same");
    let sheet = shop.sheet();
    let open = OpenPoints::of(&shop.book, &shop.build, &sheet);
    assert_eq!(open.undecided.len(), 1, "named at the sign-off: {:?}", open.undecided);
    let says = |shop: &Shop| -> Vec<String> {
        section(&printed(shop, Copy::Shop), "Side-seal slots").rows[0].cells.clone()
    };
    assert_eq!(
        says(&shop),
        ["1F-BC", "", "≥19.29 thou", "≥0.490 mm", "Does not meet", "fitted"],
        "0.49 mm by hand, rounded down"
    );
    shop.route(decide_on("side-seal-gap-na", "1F-BC", Choice::Accept, "a race").expect("taken"));
    assert_eq!(decisions(&shop), [("1F-BC".to_owned(), Some(Choice::Accept))], "said why");
    assert_eq!(says(&shop)[4], "Does not meet\naccept: a race");
    shop.write(Fact::Trial { slot, seen });
    assert_eq!(decisions(&shop), [("1F-BC".to_owned(), None)], "tried anew");
    shop.read("side-seal-gap-na", "1F-BC", "0.07", Unit::Millimetre);
    assert_eq!(decisions(&shop), [], "a gauge says it fits");
}

/// By hand: the mean of 0.20, 0.21 and 0.20 mm is 0.2033 mm, past 0.09 mm.
#[test]
fn a_survey_past_its_limit_asks_until_a_later_one_meets_it() {
    let mut shop = Shop::new(BuildKind::NaturallyAspirated, 2);
    let surveyed = |shop: &mut Shop, of, texts: &[&str]| {
        let texts: Vec<String> = texts.iter().map(|text| (*text).to_owned()).collect();
        shop.write(Fact::Readings(ReadingSet::typed(of, "", Unit::Millimetre, &texts)));
    };
    let ends = |shop: &Shop, copy| section(&printed(shop, copy), "Surveys").rows.clone();
    surveyed(&mut shop, Survey::EndPlay, &["0.20", "0.21", "0.20", "8.05"]);
    assert_eq!(decisions(&shop), [(String::new(), None)], "end play");
    let rows = ends(&shop, Copy::Customer);
    assert!(rows[0].cells[0].ends_with("End play"), "{rows:?}");
    assert!(rows[0].cells[1].starts_with("0.203 mm"), "the mean, with its unit: {rows:?}");
    assert_eq!(rows[0].cells[2], "Does not meet");
    assert!(rows[0].cells[3].contains("Limit "), "the limit and where it is from: {rows:?}");
    assert!(
        rows[0].cells[4].contains("8.05 mm"),
        "every reading by the name of its place: {rows:?}"
    );
    assert!(rows.iter().all(|row| !row.cells[4].contains("0.20, 0.21")), "no row of bare figures");
    shop.route(decide_on("end-play", "", Choice::Replace, "").expect("taken"));
    assert_eq!(ends(&shop, Copy::Customer)[0].cells[2], "Does not meet\nreplace");
    surveyed(&mut shop, Survey::EndPlayAfter, &["0.06", "0.06", "0.06", "8.20"]);
    assert_eq!(decisions(&shop), [], "the later one counts");
    shop.read("end-play", "", "0.30", Unit::Millimetre);
    assert_eq!(decisions(&shop), [(String::new(), None)], "and a reading later still");
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
        "It is not proved to meet its limit: machine it, replace it, or accept it with a written reason.",
        "used again"
    );
    let taken = decide_on(ROW, "rear", Choice::Accept, " one race only ").expect("with a reason");
    assert!(
        matches!(taken, RouteFact::Decided { why, .. } if why == "one race only"),
        "the reason"
    );
    assert!(decide_on("", "shaft", Choice::Reuse, "").is_ok(), "a part that is past nothing");
}

/// The least of the limit itself: a micrometer can't say on which side it lies.
#[test]
fn a_reading_too_close_to_call_asks_for_a_decision() {
    let mut shop = Shop::new(BuildKind::NaturallyAspirated, 2);
    shop.read("rotor-housing-width", "rotor-1", "79.94", Unit::Millimetre);
    assert_eq!(decisions(&shop), [("rotor-1".to_owned(), None)], "on the edge");
    let open = || OpenPoints::of(&shop.book, &shop.build, &shop.sheet()).undecided;
    let [said] = open().try_into().expect("one open point");
    assert!(
        said.starts_with(
            "rotor 1, Rotor housing, width at the trochoid: 79.94 mm, too close to call"
        ),
        "{said}"
    );
    let rows = section(
        &printed(&shop, Copy::Customer),
        "Past a limit or too close to call, and what became of parts",
    )
    .rows
    .clone();
    assert_eq!(rows[0].cells[1], "79.94 mm\nToo close to call");
    shop.route(
        decide_on("rotor-housing-width", "rotor-1", Choice::Accept, "measured twice")
            .expect("taken"),
    );
    assert!(OpenPoints::of(&shop.book, &shop.build, &shop.sheet()).undecided.is_empty(), "decided");
}

/// By hand: 690 kPa is the least allowed, and 691 and 692 lie within a gauge's doubt of it.
#[test]
fn a_compression_too_close_to_call_asks_for_a_decision() {
    let mut shop = Shop::new(BuildKind::NaturallyAspirated, 1);
    shop.route(RouteFact::Compression(test("1", ["690", "800", "790"], "kPa")));
    assert_eq!(decisions(&shop), [("Rotor 1, face 1".to_owned(), None)], "on the edge");
}

/// What a spacer would give is no reading: 0.20 mm predicted asks for nothing.
#[test]
fn a_prediction_is_no_open_point() {
    let mut shop = Shop::new(BuildKind::NaturallyAspirated, 2);
    let surveyed = |shop: &mut Shop, of, texts: &[&str]| {
        let texts: Vec<String> = texts.iter().map(|text| (*text).to_owned()).collect();
        shop.write(Fact::Readings(ReadingSet::typed(of, "", Unit::Millimetre, &texts)));
    };
    surveyed(&mut shop, Survey::EndPlay, &["0.055", "0.055", "0.055", "8.00"]);
    surveyed(&mut shop, Survey::Spacers, &["8.30", "8.40"]);
    let sheet = shop.sheet();
    let past = past_limits(&shop.book, &shop.build, &sheet);
    let what: Vec<_> = past.iter().map(|past| (&past.row.id, &past.reading)).collect();
    assert!(what.is_empty(), "{what:?}");
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

/// A gap typed before the seal was ground is not that of the seal that goes in.
#[test]
fn a_gap_typed_before_grinding_is_past_no_more() {
    let mut shop = Shop::new(BuildKind::NaturallyAspirated, 2);
    let slot = Slot::named("1F-AB").expect("a slot");
    shop.read("side-seal-gap-na", "1F-AB", "0.01", Unit::Millimetre);
    assert_eq!(decisions(&shop), [("1F-AB".to_owned(), None)], "too tight");
    shop.write(Fact::FreshSeal { slot });
    assert_eq!(decisions(&shop), [], "of another seal");
    shop.read("side-seal-gap-na", "1F-AB", "0.01", Unit::Millimetre);
    assert_eq!(decisions(&shop), [("1F-AB".to_owned(), None)], "of this one");
}

/// A seal ticked off without a proof is open at the sign-off.
#[test]
fn a_seal_fitted_without_a_proof_is_open_at_the_sign_off() {
    let mut shop = Shop::new(BuildKind::NaturallyAspirated, 2);
    let slot = Slot::named("1F-BC").expect("a slot");
    let leaf = Leaf::read("0.05", Unit::Millimetre).expect("a leaf");
    let tolerance = Written::read("0.001", Unit::Millimetre, Bounds::widest(Dimension::Length));
    let seen = Trial::with_leaves(
        Outcome::Goes,
        Stack::of(vec![leaf]).expect("one leaf"),
        tolerance.expect("a tolerance"),
        None,
    );
    let open = |shop: &Shop| OpenPoints::of(&shop.book, &shop.build, &shop.sheet()).unproved;
    shop.write(Fact::Fitted { slot, fitted: true });
    let said = open(&shop);
    assert_eq!(said.len(), 1, "nothing was tried at all");
    assert_eq!(said[0].key, "1F-BC");
    assert!(said[0].words.starts_with("1F-BC: not measured, limit 1.5…3.0"), "{}", said[0].words);
    shop.write(Fact::Fitted { slot, fitted: false });
    shop.write(Fact::Trial { slot, seen: seen.expect("a trial") });
    assert!(open(&shop).is_empty(), "not in its slot");
    shop.write(Fact::Fitted { slot, fitted: true });
    let said = open(&shop);
    assert_eq!(said.len(), 1);
    assert!(said[0].words.starts_with("1F-BC: can’t say yet, gap "), "{}", said[0].words);
    // Typed from a gauge, and on the edge: one reading, named once.
    shop.read("side-seal-gap-na", "1F-BC", "0.0030", Unit::Inch);
    assert_eq!(decisions(&shop), [("1F-BC".to_owned(), None)], "too close to call");
    assert!(open(&shop).is_empty(), "and not once more: {:?}", open(&shop));
    shop.write(Fact::Fitted { slot, fitted: false });
    assert!(open(&shop).is_empty(), "out again");
}
