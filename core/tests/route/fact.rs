//! The facts of the route in the book's file, and in words.

use super::Shop;
use pitleaf_core::book::{Fact, written};
use pitleaf_core::kept;
use pitleaf_core::limits::{BuildKind, Sheet};
use pitleaf_core::route::{Choice, Edit, RouteFact, Topic, TypedTest, builds, said, set_up};

fn all() -> Vec<RouteFact> {
    let step = || "turns/2".to_owned();
    vec![
        RouteFact::Done { step: step(), who: "J.".to_owned(), why: "late".to_owned() },
        RouteFact::Undone { step: step() },
        RouteFact::LeftAt { step: step() },
        RouteFact::Decided {
            row: "end-play".to_owned(),
            place: String::new(),
            choice: Choice::Accept,
            why: "short race".to_owned(),
        },
        RouteFact::Compression(TypedTest {
            rotor: "1".to_owned(),
            faces: ["700", "690", "710"].map(str::to_owned),
            unit: "kPa".to_owned(),
            speed: "250".to_owned(),
            altitude: "120 m".to_owned(),
            air: String::new(),
        }),
        RouteFact::Said { topic: Topic::Wish, words: "more of it".to_owned() },
        RouteFact::OwnRoute { text: String::new() },
        RouteFact::Archived { is: true },
        RouteFact::Edited(Edit::AddAfter(
            "turns".to_owned(),
            super::edits::step("own-1", &["turns"]),
        )),
        RouteFact::Edited(Edit::Put(super::edits::step("turns", &["<turns"]))),
        RouteFact::Edited(Edit::Remove("turns".to_owned())),
        RouteFact::Edited(Edit::Up("turns".to_owned())),
        RouteFact::Edited(Edit::Down("turns".to_owned())),
    ]
}

#[test]
fn every_fact_reads_back_from_its_list_of_texts() {
    for fact in all() {
        let text = kept::write(&Fact::Route(fact.clone()));
        assert!(text.starts_with("{\"route\":[\""), "{text}");
        let back: Fact = kept::read(&text).unwrap_or_else(|fault| panic!("{text}: {fault}"));
        assert_eq!(back, Fact::Route(fact), "{text}");
    }
    let done = kept::write(&Fact::Route(all()[0].clone()));
    assert_eq!(done, r#"{"route":["done","turns/2","J.","late"]}"#, "as it lies in the book");
}

/// One that a newer version might write is kept aside, not guessed at.
#[test]
fn an_unknown_fact_is_not_read() {
    let entry = |fact: &str| {
        written::read(&format!(
            r#"{{"format":1,"id":"a","build":"b","order":1,"at":1,"fact":{{"route":{fact}}}}}"#
        ))
    };
    for fact in [
        r#"["sung","loudly"]"#,
        "[]",
        r#"["decided","a","b","burn",""]"#,
        r#"["said","gossip","x"]"#,
        r#"["edited","burn","turns"]"#,
        r#"["edited","put","turns","{"]"#,
        r#"["edited","put","turns","{\"stage\":\"lunch\"}"]"#,
    ] {
        assert_eq!(entry(fact), Err(written::Damage::Unreadable), "{fact}");
    }
    assert!(entry(r#"["left","a"]"#).is_ok(), "a known one is");
}

#[test]
fn each_has_words_and_a_subject_of_its_own() {
    let sheet = Sheet::starter();
    let words: Vec<String> = all()
        .iter()
        .map(|fact| {
            let (about, says) = fact.words(&sheet);
            format!("{about}: {says}")
        })
        .collect();
    assert_eq!(
        words,
        [
            "The shaft turns freely with this housing on · rotor 2: done by J., because: late",
            "The shaft turns freely with this housing on · rotor 2: to do again",
            "Left at: The shaft turns freely with this housing on · rotor 2",
            "Decision · End play of the eccentric shaft: accept, because: short race",
            "Compression · rotor 1: 700 / 690 / 710 kPa, cranked at 250 /min, 120 m above the sea",
            "The customer’s words: more of it",
            "Route: the usual one",
            "Build: put away",
            "Route: behind “The shaft turns freely with this housing on”: OWN-1",
            "Route: step changed: TURNS",
            "Route: step taken out: The shaft turns freely with this housing on",
            "Route: step up: The shaft turns freely with this housing on",
            "Route: step down: The shaft turns freely with this housing on",
        ],
        "in the book’s pages"
    );
    let mut subjects: Vec<String> = all().iter().map(RouteFact::subject).collect();
    subjects.sort();
    subjects.dedup();
    assert_eq!(
        subjects.len(),
        7,
        "done and undone are of one step, a route and its changes too: {subjects:?}"
    );
}

#[test]
fn a_set_up_brings_how_the_shop_works_and_nothing_it_found() {
    let mut shop = Shop::demo();
    shop.route(RouteFact::Edited(Edit::Remove("handed-over".to_owned())));
    shop.write(Fact::DowelsSolid { solid: true });
    let facts = set_up(&shop.book, &shop.build);
    assert!(facts.iter().any(|fact| matches!(fact, Fact::Engine(_))), "the measures");
    assert!(
        facts.iter().any(|fact| matches!(fact, Fact::Route(RouteFact::OwnRoute { .. }))),
        "the route"
    );
    let others = facts.iter().filter(|fact| {
        !matches!(fact, Fact::Engine(_) | Fact::Datums(_) | Fact::Route(RouteFact::OwnRoute { .. }))
    });
    assert_eq!(others.count(), 0, "no reading, no mark, nothing done: {facts:?}");
    shop.open("plover", BuildKind::ForcedInduction, 2);
    facts.into_iter().for_each(|fact| shop.write(fact));
    assert_eq!(shop.progress().place("handed-over"), None, "its route as it was changed");
    assert!(shop.book.engine(&shop.build).is_some(), "and it holds there");
    assert_eq!(said(&shop.book, &shop.build, Topic::Wish), "", "that customer said nothing yet");
}

#[test]
fn a_build_is_put_away_and_taken_out_again() {
    let mut shop = Shop::demo();
    assert!(!shop.book.is_archived(&shop.build), "in the list");
    shop.route(RouteFact::Archived { is: true });
    assert!(shop.book.is_archived(&shop.build), "put away");
    shop.route(RouteFact::Archived { is: false });
    assert!(!shop.book.is_archived(&shop.build), "taken out");
}

#[test]
fn builds_are_found_by_name_and_by_customer() {
    let mut shop = Shop::demo();
    shop.open("Plover", BuildKind::ForcedInduction, 2);
    shop.route(RouteFact::Said { topic: Topic::Customer, words: "Team Ärmel".to_owned() });
    shop.open("Merlin", BuildKind::ForcedInduction, 2);
    shop.route(RouteFact::Archived { is: true });
    let found = |query: &str, old: bool| -> Vec<String> {
        builds(&shop.book, query, old).iter().map(|id| id.0.to_string()).collect()
    };
    assert_eq!(found("", false), ["Plover", "kestrel"], "those in work, the last opened first");
    assert_eq!(found("ärmel", false), ["Plover"], "by the customer, in any case");
    assert_eq!(found(" KEST", false), ["kestrel"], "by a part of the name");
    assert_eq!(found("merlin", false), Vec::<String>::new(), "put away");
    assert_eq!(found("", true), ["Merlin"], "among the old ones");
}
