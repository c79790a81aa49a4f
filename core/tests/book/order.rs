//! Any order, any number of times: the same book.

use super::{entry, figure, id, opened, slot};
use pitleaf_core::book::{Book, Entry, Fact, Subject};
use pitleaf_core::kept;
use pitleaf_core::limits::Sheet;
use proptest::prelude::*;
use proptest::sample::select;

/// A fact about one of few things, so that facts meet.
pub(super) fn facts() -> impl Strategy<Value = Fact> {
    let slots = select(vec!["1F-AB", "1R-BC", "2R-CA"]).prop_map(slot);
    let names = (0_u8..12).prop_map(|name| id(&format!("e{name}")));
    prop_oneof![
        select(vec!["0.0020", "0.0025", "2 thou"]).prop_map(figure),
        (slots.clone(), select(vec!["two dots", "a line"]))
            .prop_map(|(slot, mark)| Fact::Mark { slot, mark: mark.to_owned() }),
        (slots, any::<bool>()).prop_map(|(slot, fitted)| Fact::Fitted { slot, fitted }),
        names.clone().prop_map(|entry| Fact::Withdrawn { entry }),
        names.prop_map(|entry| Fact::Restored { entry }),
        Just(Fact::Note { about: String::new(), words: "bearing blue".to_owned() }),
        Just(Fact::Limit(Box::new(Sheet::starter().rows()[0].clone()))),
        Just(Fact::BuildLimit(Box::new(Sheet::starter().rows()[0].clone()))),
        Just(opened().fact),
        Just(Fact::SignedOff { who: String::new() }),
        Just(Fact::Reopened { why: String::new() }),
    ]
}

/// Entries of two builds with ids of their own and orders that two phones may have given alike.
fn entries() -> impl Strategy<Value = Vec<Entry>> {
    let one = (facts(), 1_u64..8, any::<bool>());
    prop::collection::vec(one, 0..12).prop_map(|facts| {
        let numbered = facts.into_iter().enumerate();
        numbered
            .map(|(place, (fact, order, elsewhere))| {
                let entry = entry(&format!("e{place}"), order, fact);
                if elsewhere { Entry { build: id("e0"), ..entry } } else { entry }
            })
            .collect()
    })
}

/// The entries, then the places of some of them taken in again, all in some order.
fn shuffled() -> impl Strategy<Value = (Vec<Entry>, Vec<Entry>)> {
    entries().prop_flat_map(|entries| {
        let again = prop::collection::vec(any::<prop::sample::Index>(), 0..6);
        (Just(entries), again).prop_flat_map(|(entries, again)| {
            let mut many = entries.clone();
            if !entries.is_empty() {
                many.extend(again.iter().map(|index| index.get(&entries).clone()));
            }
            (Just(entries), Just(many).prop_shuffle())
        })
    })
}

/// Everything the book tells.
pub(super) fn told(book: &Book) -> String {
    let builds = [id("kestrel"), id("e0")];
    let subjects: Vec<Subject> = book.entries().filter_map(|entry| entry.fact.subject()).collect();
    let lines: Vec<_> = builds.iter().map(|build| book.lines(build).collect::<Vec<_>>()).collect();
    let current: Vec<_> = builds
        .iter()
        .flat_map(|build| subjects.iter().map(|subject| book.current(build, subject)))
        .collect();
    let histories: Vec<_> = builds
        .iter()
        .flat_map(|build| {
            subjects.iter().map(|subject| book.history(build, subject).collect::<Vec<_>>())
        })
        .collect();
    let openings: Vec<_> = builds.iter().map(|build| book.opening(build)).collect();
    let own: Vec<_> = book.of_the_shop().collect();
    let signed: Vec<_> = builds.iter().map(|build| book.is_signed_off(build)).collect();
    format!(
        "{lines:?}{current:?}{histories:?}{openings:?}{own:?}{signed:?}{:?}{}",
        book.builds(),
        book.next_order()
    )
}

pub(super) fn folded(entries: &[Entry]) -> Book {
    let mut book = Book::default();
    for entry in entries {
        book.take(entry.clone());
    }
    book
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(128) })]

    #[test]
    fn any_order_any_number_of_times((entries, many) in shuffled()) {
        let (once, mixed) = (folded(&entries), folded(&many));
        prop_assert_eq!(told(&once), told(&mixed));
        prop_assert_eq!(mixed.len(), entries.len());
    }

    /// Two phones that share some entries: either taking in the other's ends with the same book.
    #[test]
    fn two_books_join_either_way(entries in entries(), sides in prop::collection::vec(0_u8..3, 12)) {
        let on = |side: u8| -> Vec<Entry> {
            entries.iter().zip(&sides).filter(|(_, at)| **at == side || **at == 2).map(|(entry, _)| entry.clone()).collect()
        };
        let (ours, theirs) = (on(0), on(1));
        let (mut here, mut there) = (folded(&ours), folded(&theirs));
        for entry in &theirs { here.take(entry.clone()); }
        for entry in &ours { there.take(entry.clone()); }
        prop_assert_eq!(told(&here), told(&there));
        prop_assert_eq!(here.len(), entries.len());
    }

    /// Withdrawn and restored is as if nothing had been said.
    #[test]
    fn restoring_undoes_withdrawing(entries in entries(), index in any::<prop::sample::Index>()) {
        prop_assume!(!entries.is_empty());
        let name = index.get(&entries).id.clone();
        let mut book = folded(&entries);
        prop_assume!(!book.is_withdrawn(&name));
        let before: Vec<bool> = entries.iter().map(|entry| book.is_withdrawn(&entry.id)).collect();
        book.take(entry("w", book.next_order(), Fact::Withdrawn { entry: name.clone() }));
        prop_assert!(book.is_withdrawn(&name));
        book.take(entry("r", book.next_order(), Fact::Restored { entry: name }));
        let after: Vec<bool> = entries.iter().map(|entry| book.is_withdrawn(&entry.id)).collect();
        prop_assert_eq!(before, after);
    }

    /// Through text and back, entry for entry.
    #[test]
    fn entries_read_back(entries in entries()) {
        let text = kept::write(&entries);
        prop_assert_eq!(kept::read::<Vec<Entry>>(&text).unwrap(), entries);
    }
}

#[test]
fn a_clock_set_back_changes_no_order() {
    let mut late = entry("late", 3, figure("0.0025"));
    late.at = 0;
    let mut further = entry("further", 4, figure("2 thou"));
    further.at = 1;
    let mut book = folded(&[further, late, entry("early", 2, figure("0.0020")), opened()]);
    let kestrel = id("kestrel");
    let lines: Vec<&str> = book.lines(&kestrel).map(|line| &*line.entry.id.0).collect();
    assert_eq!(
        lines,
        ["kestrel", "early", "late", "further"],
        "as written, whatever the clock said"
    );
    let entries: Vec<&str> = book.entries().map(|entry| &*entry.id.0).collect();
    assert_eq!(entries, lines, "and the whole book");
    let text = |book: &Book| {
        book.figure(&kestrel, "side-seal-gap-na", "1F-AB").map(|figure| figure.text.clone())
    };
    assert_eq!(text(&book).as_deref(), Some("2 thou"), "the one written last");
    let mut next = entry("next", book.next_order(), figure("0.0030"));
    next.at = 0;
    book.take(next);
    assert_eq!(text(&book).as_deref(), Some("0.0030"), "the next one with the clock at naught");
}
