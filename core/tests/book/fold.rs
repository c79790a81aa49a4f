//! The fold: values in force, histories, withdrawal and its undoing.

use super::{entry, figure, id, opened, slot};
use pitleaf_core::book::{Book, Entry, Fact, Subject};
use pitleaf_core::limits::{BuildKind, Edge, Limit, Row, Sheet};
use pitleaf_core::quantity::Unit;

fn book(entries: impl IntoIterator<Item = Entry>) -> Book {
    let mut book = Book::default();
    for entry in entries {
        assert!(book.take(entry), "each entry is new");
    }
    book
}

fn gap(book: &Book) -> Option<&str> {
    book.figure(&id("kestrel"), "side-seal-gap-na", "1F-AB").map(|figure| figure.text.as_str())
}

fn withdrawn(name: &str) -> Fact {
    Fact::Withdrawn { entry: id(name) }
}

#[test]
fn the_latest_figure_is_in_force_and_the_others_are_its_history() {
    let book = book([opened(), entry("a", 2, figure("0.0020")), entry("b", 3, figure("0.0025"))]);
    assert_eq!(gap(&book), Some("0.0025"), "the latest");
    let subject = Subject::Figure("side-seal-gap-na".to_owned(), "1F-AB".to_owned());
    let history: Vec<&str> =
        book.history(&id("kestrel"), &subject).map(|line| &*line.entry.id.0).collect();
    assert_eq!(history, ["a", "b"], "the latest last");
    assert_eq!(book.figure(&id("kestrel"), "side-seal-gap-na", "1F-BC"), None, "another place");
    assert_eq!(book.figure(&id("plover"), "side-seal-gap-na", "1F-AB"), None, "another build");
}

#[test]
fn a_withdrawn_figure_gives_way_and_stays_to_be_found() {
    let mut book = book([
        opened(),
        entry("a", 2, figure("0.0025")),
        entry("b", 3, figure("0.025")),
        entry("c", 4, withdrawn("b")),
    ]);
    assert_eq!(gap(&book), Some("0.0025"), "the one before holds again");
    assert!(book.is_withdrawn(&id("b")), "the slip is withdrawn");
    let lines: Vec<(&str, bool)> =
        book.lines(&id("kestrel")).map(|line| (&*line.entry.id.0, line.withdrawn)).collect();
    assert_eq!(lines, [("kestrel", false), ("a", false), ("b", true), ("c", false)], "all there");

    book.take(entry("d", 5, Fact::Restored { entry: id("b") }));
    assert_eq!(gap(&book), Some("0.025"), "restored");
    book.take(entry("e", 6, withdrawn("b")));
    assert_eq!(gap(&book), Some("0.0025"), "and withdrawn again");
}

#[test]
fn a_withdrawal_may_come_before_its_entry() {
    let book = book([entry("c", 4, withdrawn("b")), entry("b", 3, figure("0.025")), opened()]);
    assert_eq!(gap(&book), None, "withdrawn as it comes");
}

#[test]
fn an_earlier_word_does_not_overrule_a_later_one() {
    let book = book([
        entry("b", 2, figure("0.0025")),
        entry("d", 5, Fact::Restored { entry: id("b") }),
        entry("c", 4, withdrawn("b")),
    ]);
    assert_eq!(gap(&book), Some("0.0025"), "restored at 5, withdrawn at 4");
}

#[test]
fn an_entry_known_already_changes_nothing() {
    let mut book = book([opened(), entry("a", 2, figure("0.0020"))]);
    assert!(!book.take(entry("a", 2, figure("0.0020"))), "not new");
    assert_eq!(book.len(), 2, "and not twice");
}

#[test]
fn marks_and_fitted_seals_are_kept_by_slot() {
    let mark = |text: &str| Fact::Mark { slot: slot("2R-AB"), mark: text.to_owned() };
    let fitted = |fitted| Fact::Fitted { slot: slot("2R-AB"), fitted };
    let kestrel = id("kestrel");
    let mut book = book([
        opened(),
        entry("a", 2, mark("two dots")),
        entry("b", 3, mark("two dots and a short line")),
        entry("c", 4, fitted(true)),
    ]);
    assert_eq!(book.mark(&kestrel, slot("2R-AB")), Some("two dots and a short line"), "the latest");
    assert_eq!(book.mark(&kestrel, slot("2F-AB")), None, "the other face");
    assert!(book.is_fitted(&kestrel, slot("2R-AB")), "fitted");
    assert!(!book.is_fitted(&kestrel, slot("2R-BC")), "its neighbour is not");
    book.take(entry("d", 5, fitted(false)));
    assert!(!book.is_fitted(&kestrel, slot("2R-AB")), "taken out again");
}

#[test]
fn builds_are_listed_last_opened_first() {
    let opened_as = |name: &str, order| {
        let fact = Fact::Opened {
            name: name.to_uppercase(),
            kind: BuildKind::ForcedInduction,
            rotors: 3,
            demo: false,
        };
        Entry { build: id(name), ..entry(name, order, fact) }
    };
    let stray = Entry { build: id("unopened"), ..entry("n", 9, figure("1")) };
    let mut book = book([opened_as("plover", 7), opened(), stray]);
    assert_eq!(book.builds(), [id("plover"), id("kestrel")], "not by name, and no unopened one");
    assert_eq!(
        book.opening(&id("plover")),
        Some(("PLOVER", BuildKind::ForcedInduction, 3, false)),
        "as opened"
    );
    book.take(entry("w", 10, withdrawn("plover")));
    assert_eq!(book.builds(), [id("kestrel")], "a withdrawn build is not listed");
    assert_eq!(book.opening(&id("plover")), None, "nor open");
}

#[test]
fn the_next_order_is_past_every_other() {
    assert_eq!(Book::default().next_order(), 1, "an empty book");
    let book = book([entry("b", 41, figure("1")), opened()]);
    assert_eq!(book.next_order(), 42, "one more than the greatest");
}

fn own_row() -> Row {
    let mut row = Sheet::starter().row("end-play").expect("the sheet has it").clone();
    row.limit.upper = Edge::read("0.06", Unit::Millimetre).ok();
    row
}

fn end_play(book: &Book) -> Option<String> {
    let sheet = book.sheet();
    sheet.row("end-play")?.limit.upper.as_ref().map(|edge| edge.text().to_owned())
}

#[test]
fn a_limit_of_ones_own_takes_the_sheets_place_until_withdrawn() {
    let mut book = book([opened(), entry("mine", 2, Fact::Limit(Box::new(own_row())))]);
    assert_eq!(end_play(&book).as_deref(), Some("0.06"), "one’s own");
    book.take(entry("w", 3, withdrawn("mine")));
    assert_eq!(end_play(&book).as_deref(), Some("0.07"), "the sheet’s again");
}

#[test]
fn a_limit_that_cant_be_used_does_not_reach_the_sheet() {
    let useless = Row { limit: Limit::default(), ..own_row() };
    let book = book([opened(), entry("mine", 2, Fact::Limit(Box::new(useless)))]);
    assert_eq!(end_play(&book).as_deref(), Some("0.07"), "the sheet’s");
    assert_eq!(book.own_limits(None).count(), 1, "but it stays in the book");
}

/// The end play's upper limit as it holds for a build.
#[track_caller]
fn holds(book: &Book, build: &str, upper: &str) {
    let sheet = book.sheet_for(Some(&id(build)));
    let row = sheet.row("end-play").expect("the sheet has it");
    assert_eq!(row.limit.upper.as_ref().map(Edge::text), Some(upper), "for {build}");
}

fn upper(text: &str) -> Box<Row> {
    let mut row = own_row();
    row.limit.upper = Edge::read(text, Unit::Millimetre).ok();
    Box::new(row)
}

fn of(build: &str, entry: Entry) -> Entry {
    Entry { build: id(build), ..entry }
}

#[test]
fn a_limit_of_one_engine_holds_for_its_build_alone() {
    let mut book = book([opened(), entry("mine", 2, Fact::BuildLimit(upper("0.06")))]);
    holds(&book, "kestrel", "0.06");
    holds(&book, "plover", "0.07");
    assert_eq!(end_play(&book).as_deref(), Some("0.07"), "the shop’s sheet is as it was");
    assert_eq!(book.own_limits(Some(&id("kestrel"))).count(), 1, "own rows of the one");
    assert_eq!(book.own_limits(Some(&id("plover"))).count(), 0, "and of the other");
    let history = Subject::Limit("end-play".to_owned());
    assert!(book.current(&id("kestrel"), &history).is_some(), "it has a history");
    book.take(entry("w", 3, withdrawn("mine")));
    holds(&book, "kestrel", "0.07");
}

#[test]
fn an_engines_own_limit_stands_above_the_shops_and_the_latest_of_its_build_counts() {
    let mut book = book([
        opened(),
        entry("one", 2, Fact::BuildLimit(upper("0.06"))),
        of("plover", entry("all", 3, Fact::Limit(upper("0.05")))),
    ]);
    // Later, but put in at another engine.
    holds(&book, "kestrel", "0.06");
    holds(&book, "plover", "0.05");
    holds(&book, "avocet", "0.05");
    // Every engine, said at the one that had its own.
    book.take(entry("every", 4, Fact::Limit(upper("0.055"))));
    for build in ["kestrel", "plover", "avocet"] {
        holds(&book, build, "0.055");
    }
    book.take(of("plover", entry("again", 5, Fact::Limit(upper("0.065")))));
    holds(&book, "kestrel", "0.065");
}

#[test]
fn a_limit_written_before_there_were_two_kinds_holds_for_all() {
    let text = r#"{"format":1,"id":"old","build":"kestrel","order":2,"at":0,"fact":{"limit":{"id":"end-play","part":"assembly","what":"End play","gauge":"dial-indicator","input":"gap","unit":"mm","limit":{"upper":"0.06 mm"},"build":"any","source":{"yours":{"who":"","when":"","from":"page 4"}}}}}"#;
    let old: Entry = pitleaf_core::kept::read(text).expect("an entry of an older version");
    let book = book([opened(), old]);
    holds(&book, "kestrel", "0.06");
    holds(&book, "plover", "0.06");
}

#[test]
fn a_figure_reads_back_as_it_was_typed() {
    let Fact::Figure(figure) = figure("2½ thou") else { panic!("a figure is a figure") };
    let reading = figure.reading().unwrap();
    assert_eq!((reading.text(), reading.unit()), ("2½ thou", Unit::Thou), "text and unit");
    let bad = pitleaf_core::book::Figure { text: "1..2".to_owned(), ..figure };
    let sentence = bad.reading().unwrap_err().to_string();
    assert_eq!(sentence, "More than one point or comma. Leave only the decimal one.", "refused");
}

#[test]
fn a_withdrawal_names_what_it_withdraws() {
    let book = book([
        opened(),
        entry("b", 2, figure("0.025")),
        entry("c", 3, withdrawn("b")),
        entry("d", 4, Fact::Restored { entry: id("b") }),
        entry("e", 5, withdrawn("elsewhere")),
    ]);
    let sheet = book.sheet();
    let words = |name: &str| {
        let words = book.words(book.entry(&id(name)).expect("an entry"), &sheet);
        (words.about, words.says)
    };
    let named = "1F-AB · Side seal to corner seal, naturally aspirated: 0.025 in";
    assert_eq!(words("c"), ("Withdrawn".to_owned(), named.to_owned()), "withdrawn");
    assert_eq!(words("d"), ("Holds again".to_owned(), named.to_owned()), "restored");
    assert_eq!(words("e").1, "an entry not in this book", "of another phone");
    assert_eq!(words("b").1, "0.025 in", "any other as it is");
}

#[test]
fn what_is_said_of_a_slot_leads_to_it() {
    let ab = slot("1F-AB");
    let note = Fact::Note { about: "1F-AB".to_owned(), words: String::new() };
    assert_eq!(figure("0.002").slot(), Some(ab), "a reading at it");
    assert_eq!(Fact::FreshSeal { slot: ab }.slot(), Some(ab), "a seal of it");
    assert_eq!(opened().fact.slot(), None, "a build");
    assert_eq!(note.slot(), None, "words");
}
