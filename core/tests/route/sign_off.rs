//! Signing off over what is open.

use super::Shop;
use super::compression::test;
use pitleaf_core::book::{Fact, Slot};
use pitleaf_core::limits::BuildKind;
use pitleaf_core::quantity::Unit;
use pitleaf_core::route::{Choice, Open, OpenPoints, RouteFact, SignFault, Topic, decide_on, said};

fn points(shop: &Shop) -> OpenPoints {
    OpenPoints::of(&shop.book, &shop.build, &shop.sheet())
}

#[test]
fn open_points_are_named_and_need_a_reason() {
    let mut shop = Shop::new(BuildKind::NaturallyAspirated, 1);
    shop.read("end-play", "", "0.200", Unit::Millimetre);
    let open = points(&shop);
    assert!(
        open.holds.iter().any(|hold| hold.words.starts_with("Springs are in")),
        "{:?}",
        open.holds
    );
    assert!(
        open.steps.iter().any(|step| step.words.starts_with("First start")),
        "{:?}",
        open.steps
    );
    assert_eq!(
        open.undecided,
        ["End play of the eccentric shaft: 0.200 mm, limit 0.04…0.07\u{a0}mm"],
        "past its limit"
    );
    let said_of = |who, why| open.sign(who, why).expect_err("refused").to_string();
    assert_eq!(said_of(" ", "x"), "Say who signs it off.", "by nobody");
    let count = open.count();
    assert_eq!(
        said_of("J.", ""),
        format!(
            "Not signed off: {count} points are open. Close them, or write down why it is signed off all the same."
        ),
        "in silence"
    );
    for fact in open.sign("J.", "sold as a core engine").expect("with a reason") {
        shop.write(fact);
    }
    assert!(shop.book.is_signed_off(&shop.build), "signed");
    assert_eq!(
        said(&shop.book, &shop.build, Topic::SignedOver),
        format!("{count} open: sold as a core engine"),
        "the reason stays"
    );
}

#[test]
fn a_compression_past_its_limit_is_named_until_it_is_decided() {
    let mut shop = Shop::new(BuildKind::NaturallyAspirated, 1);
    shop.route(RouteFact::Compression(test("1", ["104", "103", "90"], "psi")));
    // The others lie within their tester's doubt of the limit.
    let of_the_third = |shop: &Shop| -> Vec<String> {
        let open = points(shop).undecided.into_iter();
        open.filter(|line| line.starts_with("Rotor 1, face 3")).collect()
    };
    assert_eq!(
        of_the_third(&shop),
        [
            "Rotor 1, face 3, Compression, each face, naturally aspirated: 90 psi, limit at least 690\u{a0}kPa"
        ],
        "620 kPa"
    );
    shop.route(decide_on("compression-na", "Rotor 1, face 3", Choice::Machine, "").expect("taken"));
    assert!(of_the_third(&shop).is_empty(), "decided");
}

/// Each sort of open point alone asks for a reason: none of them is counted by the others.
#[test]
fn any_open_point_alone_needs_a_reason() {
    let one = || vec![Open { key: "x".to_owned(), words: "one of it".to_owned() }];
    for open in [
        OpenPoints { holds: one(), ..OpenPoints::default() },
        OpenPoints { undecided: vec!["one of it".to_owned()], ..OpenPoints::default() },
        OpenPoints { unproved: one(), ..OpenPoints::default() },
        OpenPoints { steps: one(), ..OpenPoints::default() },
    ] {
        assert_eq!(open.sign("J.", " "), Err(SignFault::Open(1)), "{open:?}");
        let facts = open.sign("J.", "agreed").expect("with a reason");
        assert!(
            matches!(&facts[0], Fact::Route(RouteFact::Said { words, .. }) if words == "1 open: agreed"),
            "{facts:?}"
        );
    }
    let facts = OpenPoints::default().sign(" J. ", "").expect("nothing is open");
    assert_eq!(facts[1], Fact::SignedOff { who: "J.".to_owned() });
}

/// What is open leads to where it is closed.
#[test]
fn open_points_know_their_place() {
    let mut shop = Shop::new(BuildKind::NaturallyAspirated, 2);
    let slot = Slot::named("2R-AB").expect("a slot");
    shop.write(Fact::Fitted { slot, fitted: true });
    let open = points(&shop);
    let progress = shop.progress();
    for of in open.holds.iter().chain(&open.steps) {
        let place = progress.place(&of.key).expect("a station");
        assert_eq!(progress.words(place), of.words);
    }
    assert_eq!(open.unproved[0].key, "2R-AB");
}

#[test]
fn no_reason_goes_over_a_dry_front_bearing() {
    let mut shop = Shop::new(BuildKind::NaturallyAspirated, 1);
    shop.write(Fact::DowelsSolid { solid: true });
    let said = points(&shop).sign("J.", "it will be fine").expect_err("refused").to_string();
    assert!(said.starts_with("Not to be signed off: the upper dowels are solid"), "{said}");
}
