//! Joining is set union: commutative, associative, idempotent, even where one id has other contents.

use super::order::{facts, folded, told};
use super::{entry, figure, id};
use pitleaf_core::book::{Book, Entry, coming, file};
use proptest::prelude::*;

/// A book's entries: of few ids and few facts, so that one id comes with several contents.
fn entries() -> impl Strategy<Value = Vec<Entry>> {
    let one = (0_u8..6, facts(), 1_u64..5, any::<bool>());
    prop::collection::vec(one, 0..10).prop_map(|entries| {
        let named = entries.into_iter().map(|(name, fact, order, elsewhere)| {
            let entry = entry(&format!("e{name}"), order, fact);
            if elsewhere { Entry { build: id("e0"), ..entry } } else { entry }
        });
        named.collect()
    })
}

/// The book of two books.
fn joined(one: &Book, other: &Book) -> Book {
    let mut both = one.clone();
    for entry in other.entries() {
        both.take(entry.clone());
    }
    both
}

/// All that a book holds and tells.
fn whole(book: &Book) -> (String, String) {
    (file::write(book), told(book))
}

#[test]
fn of_two_contents_of_one_id_the_same_one_is_kept() {
    let (one, other) = (entry("a", 2, figure("0.0020")), entry("a", 7, figure("0.0090")));
    let (here, there) = (folded(&[one.clone(), other.clone()]), folded(&[other, one]));
    assert_eq!(whole(&here), whole(&there), "whichever came first");
    assert_eq!(here.len(), 1, "an id is there once");
    let kept = here.entries().next().expect("one is kept");
    assert_eq!(here.next_order(), kept.order + 1, "the one left out leaves no trace");
}

#[test]
fn taking_says_whether_the_book_changed() {
    let (one, other) = (entry("a", 2, figure("0.0020")), entry("a", 7, figure("0.0090")));
    let mut book = Book::default();
    assert!(book.take(one.clone()), "new");
    let changed = book.take(other.clone());
    assert_eq!(changed, book.entry(&id("a")) == Some(&other), "changed if the other is kept");
    assert!(!book.take(one) && !book.take(other), "both were weighed already");
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(256) })]

    #[test]
    fn either_way_round(a in entries(), b in entries()) {
        let (a, b) = (folded(&a), folded(&b));
        prop_assert_eq!(whole(&joined(&a, &b)), whole(&joined(&b, &a)));
    }

    #[test]
    fn in_any_grouping(a in entries(), b in entries(), c in entries()) {
        let (a, b, c) = (folded(&a), folded(&b), folded(&c));
        let (first, last) = (joined(&joined(&a, &b), &c), joined(&a, &joined(&b, &c)));
        prop_assert_eq!(whole(&first), whole(&last));
    }

    #[test]
    fn any_number_of_times(a in entries(), b in entries()) {
        let (a, b) = (folded(&a), folded(&b));
        prop_assert_eq!(whole(&joined(&a, &a)), whole(&a));
        let once = joined(&a, &b);
        prop_assert_eq!(whole(&joined(&once, &b)), whole(&once));
        prop_assert_eq!(whole(&joined(&once, &a)), whole(&once));
    }

    #[test]
    fn entry_by_entry_in_any_order(entries in entries().prop_flat_map(|entries| (Just(entries.clone()), Just(entries).prop_shuffle()))) {
        let (one, other) = entries;
        prop_assert_eq!(whole(&folded(&one)), whole(&folded(&other)));
    }

    /// What a file would bring does not hang on the order within it; taken in, it brings no more.
    #[test]
    fn what_is_coming_comes_once(
        here in entries(),
        files in entries().prop_flat_map(|file| (Just(file.clone()), Just(file).prop_shuffle())),
    ) {
        let mut book = folded(&here);
        let (first, shuffled) = (coming(&book, files.0.clone()), coming(&book, files.1));
        prop_assert_eq!(&first.new, &shuffled.new);
        prop_assert_eq!(&first.altered, &shuffled.altered);
        prop_assert_eq!(&first.conflicts, &shuffled.conflicts);

        let had = book.len();
        for entry in &first.new {
            prop_assert!(book.take(entry.clone()));
        }
        prop_assert_eq!(book.len(), had + first.new.len());
        prop_assert!(files.0.iter().all(|entry| book.entry(&entry.id).is_some()));
        let again = coming(&book, files.0);
        prop_assert_eq!((again.new, again.conflicts), (vec![], vec![]));
    }
}
