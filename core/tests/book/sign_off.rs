//! Signing a build off, and opening it again.

use super::order::folded;
use super::{entry, figure, id, opened};
use pitleaf_core::book::{Book, Entry, Fact, Subject};

fn signed() -> Fact {
    Fact::SignedOff { who: "J.".to_owned() }
}

fn reopened() -> Fact {
    Fact::Reopened { why: "rear housing changed".to_owned() }
}

fn withdrawn(name: &str) -> Fact {
    Fact::Withdrawn { entry: id(name) }
}

fn is_signed_off(book: &Book) -> bool {
    book.is_signed_off(&id("kestrel"))
}

#[test]
fn a_build_is_signed_off_until_it_is_reopened() {
    let mut book = folded(&[opened(), entry("f", 2, figure("0.0020"))]);
    assert!(!is_signed_off(&book), "open");
    book.take(entry("s", 3, signed()));
    assert!(is_signed_off(&book), "signed off");
    assert!(!book.is_signed_off(&id("plover")), "another build is not");
    book.take(entry("n", 4, Fact::Note { about: String::new(), words: "dry".to_owned() }));
    assert!(is_signed_off(&book), "a note opens nothing");
    book.take(entry("r", 5, reopened()));
    assert!(!is_signed_off(&book), "reopened");
    book.take(entry("t", 6, signed()));
    assert!(is_signed_off(&book), "and signed off again");
}

#[test]
fn the_later_word_holds_whichever_came_first() {
    let (signed, reopened) = (entry("s", 3, signed()), entry("r", 4, reopened()));
    assert!(!is_signed_off(&folded(&[reopened, signed, opened()])), "reopened at 4");
}

#[test]
fn a_sign_off_of_another_build_signs_nothing_here() {
    let elsewhere = Entry { build: id("plover"), ..entry("s", 2, signed()) };
    assert!(!is_signed_off(&folded(&[opened(), elsewhere])), "open");
}

#[test]
fn a_withdrawn_sign_off_holds_no_longer() {
    let mut book = folded(&[opened(), entry("s", 2, signed()), entry("w", 3, withdrawn("s"))]);
    assert!(!is_signed_off(&book), "withdrawn");
    book.take(entry("u", 4, Fact::Restored { entry: id("s") }));
    assert!(is_signed_off(&book), "restored");
}

#[test]
fn withdrawing_the_reopening_leaves_the_build_signed_off() {
    let words = [entry("s", 2, signed()), entry("r", 3, reopened()), entry("w", 4, withdrawn("r"))];
    assert!(is_signed_off(&folded(&words)), "as before it was reopened");
}

#[test]
fn every_word_of_it_stays_in_the_history() {
    let book = folded(&[
        opened(),
        entry("s", 2, signed()),
        entry("r", 3, reopened()),
        entry("t", 4, signed()),
        entry("w", 5, withdrawn("t")),
    ]);
    let history: Vec<(&str, bool)> = book
        .history(&id("kestrel"), &Subject::SignOff)
        .map(|line| (&*line.entry.id.0, line.withdrawn))
        .collect();
    assert_eq!(history, [("s", false), ("r", false), ("t", true)], "withdrawn is not deleted");
}
