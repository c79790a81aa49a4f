//! What the book adds up to: slots with their marks, steps where they stand, notes in force.

use crate::of_kind;
use pitleaf_core::book::{Book, Entry, EntryId, FORMAT, Fact, Slot};
use pitleaf_core::find::{Finder, Kind, Place};
use pitleaf_core::limits::{BuildKind, Edge, Limit, Sheet};
use pitleaf_core::quantity::Unit;
use pitleaf_core::route::{RouteFact, Topic};

/// A book that is written to entry by entry.
#[derive(Default)]
struct Shop {
    book: Book,
    order: u64,
}

impl Shop {
    fn write(&mut self, build: &str, id: &str, fact: Fact) {
        self.order += 1;
        let (id, build) = (EntryId(id.into()), EntryId(build.into()));
        self.book.take(Entry { format: FORMAT, id, build, order: self.order, at: 0, fact });
    }

    fn open(&mut self, build: &str, kind: BuildKind) {
        let fact = Fact::Opened { name: build.to_owned(), kind, rotors: 2, demo: true };
        self.write(build, build, fact);
    }

    fn note(&mut self, build: &str, id: &str, words: &str) {
        self.write(build, id, Fact::Note { about: String::new(), words: words.to_owned() });
    }

    fn finder(&self, build: &str) -> Finder {
        Finder::of(&self.book, Some(&EntryId(build.into())), &self.book.sheet())
    }
}

fn kestrel() -> Shop {
    let mut shop = Shop::default();
    shop.open("kestrel", BuildKind::NaturallyAspirated);
    shop
}

/// The places of a kind that answer, best first.
fn places(finder: &Finder, kind: Kind, query: &str) -> Vec<Place> {
    of_kind(finder, kind, query).into_iter().map(|found| found.place.clone()).collect()
}

fn entries(ids: &[&str]) -> Vec<Place> {
    ids.iter().map(|id| Place::Entry(EntryId((*id).into()))).collect()
}

#[test]
fn slots_are_found_by_name_and_by_their_mark() {
    let mut shop = kestrel();
    let slot = Slot::named("1F-AB").expect("a slot");
    shop.write("kestrel", "m", Fact::Mark { slot, mark: "two dots and a short line".to_owned() });
    shop.write("kestrel", "f", Fact::Fitted { slot, fitted: true });
    let finder = shop.finder("kestrel");
    for query in ["1F-AB", "1fab", "slot 1f ab", "two dots", "doots line"] {
        let found = of_kind(&finder, Kind::Slot, query);
        assert_eq!(found.first().map(|found| &found.place), Some(&Place::Slot(slot)), "{query:?}");
        assert_eq!(found[0].below, "two dots and a short line · seal fitted");
    }
    assert_eq!(places(&finder, Kind::Slot, "slot rotor 2").len(), 6, "the slots of a rotor");
    let none = Finder::of(&shop.book, None, &Sheet::starter());
    assert_eq!(places(&none, Kind::Slot, "slot"), [], "no build in hand, no slots");
}

#[test]
fn notes_are_found_while_they_hold_in_any_build_the_latest_first() {
    let mut shop = kestrel();
    shop.note("kestrel", "a", "Customer wants the bridge ports kept small");
    shop.note("kestrel", "b", "Bridge of the rear port is thin");
    shop.open("plover", BuildKind::ForcedInduction);
    shop.note("plover", "c", "bridge cracked");
    shop.note("kestrel", "d", "bridge, never mind");
    shop.write("kestrel", "w", Fact::Withdrawn { entry: EntryId("d".into()) });
    let finder = shop.finder("kestrel");
    assert_eq!(places(&finder, Kind::Note, "brigde"), entries(&["b", "a", "c"]));
    let found = of_kind(&finder, Kind::Note, "cracked");
    assert_eq!(
        (found[0].title.as_str(), found[0].below.as_str()),
        ("bridge cracked", "Note · plover")
    );
    shop.write("kestrel", "r", Fact::Restored { entry: EntryId("d".into()) });
    assert_eq!(places(&shop.finder("kestrel"), Kind::Note, "never"), entries(&["d"]));
}

#[test]
fn what_was_said_anew_is_found_and_what_it_replaced_is_not() {
    let mut shop = kestrel();
    let said =
        |words: &str| Fact::Route(RouteFact::Said { topic: Topic::Wish, words: words.to_owned() });
    shop.write("kestrel", "a", said("hillclimb"));
    shop.write("kestrel", "b", said("autocross"));
    let finder = shop.finder("kestrel");
    assert_eq!(places(&finder, Kind::Note, "autocross"), entries(&["b"]));
    assert_eq!(places(&finder, Kind::Note, "hillclimb"), []);
}

#[test]
fn a_step_leads_to_the_first_thing_it_is_still_to_be_made_on() {
    let mut shop = kestrel();
    let step = |finder: &Finder| {
        let found = of_kind(finder, Kind::Step, "corner seal turned");
        (found[0].place.clone(), found[0].below.clone())
    };
    let key = |key: &str| Place::Step(key.to_owned());
    let (place, below) = step(&shop.finder("kestrel"));
    assert_eq!(place, key("corners-straight/2"), "stacked from the rear");
    assert!(below.ends_with("Hold · rotor 2, held"), "{below}");
    let done = Fact::Route(RouteFact::Done {
        step: "corners-straight/2".to_owned(),
        who: "J.".to_owned(),
        why: "shown by torch".to_owned(),
    });
    shop.write("kestrel", "done", done);
    let finder = shop.finder("kestrel");
    assert_eq!(step(&finder).0, key("corners-straight/1"), "the next rotor’s");
    assert_eq!(places(&finder, Kind::Note, "torch"), entries(&["done"]), "and its reason is found");
}

#[test]
fn limits_are_those_of_the_build_in_hand_with_the_builders_own() {
    let mut shop = kestrel();
    let gap = |finder: &Finder| places(finder, Kind::Limit, "side seal to corner seal");
    let limit = |id: &str| Place::Limit(id.to_owned());
    let found = gap(&shop.finder("kestrel"));
    assert!(found.contains(&limit("side-seal-gap-na")), "{found:?}");
    assert!(!found.contains(&limit("side-seal-gap-fi")), "of the other sort of build");
    let mut row = Sheet::starter().row("end-play").expect("a row").clone();
    row.what = "Float of the shaft, our own".to_owned();
    row.limit = Limit { upper: Edge::read("0.08", Unit::Millimetre).ok(), ..Limit::default() };
    shop.write("kestrel", "own", Fact::Limit(Box::new(row)));
    let finder = shop.finder("kestrel");
    let own = of_kind(&finder, Kind::Limit, "our own float");
    assert_eq!(own[0].place, limit("end-play"));
    assert!(own[0].below.contains("0.08"), "{}", own[0].below);
}

#[test]
fn a_long_note_is_cut_in_the_list_and_found_by_its_end() {
    let mut shop = kestrel();
    shop.note("kestrel", "a", &format!("{} lighthouse", "ö".repeat(400)));
    let finder = shop.finder("kestrel");
    let found = of_kind(&finder, Kind::Note, "lighthouse");
    assert_eq!(found[0].title.chars().count(), 121, "{}", found[0].title);
}
