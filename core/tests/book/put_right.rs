//! A figure put right: the new one counts, the old one stays in the history, and it can be undone.

use super::{entry, figure, id, opened};
use pitleaf_core::book::{Book, Entry, Fact, Figure, Subject, put_right};

fn book(entries: impl IntoIterator<Item = Entry>) -> Book {
    let mut book = Book::default();
    entries.into_iter().for_each(|entry| {
        book.take(entry);
    });
    book
}

fn typed(text: &str) -> Figure {
    match figure(text) {
        Fact::Figure(figure) => figure,
        other => panic!("no figure: {other:?}"),
    }
}

/// Facts written in one go, their entries named one after another.
fn written(book: &mut Book, names: &[&str], facts: Vec<Fact>) {
    assert_eq!(names.len(), facts.len(), "{facts:?}");
    for (name, fact) in names.iter().zip(facts) {
        let order = book.next_order();
        book.take(entry(name, order, fact));
    }
}

fn in_force(book: &Book) -> Vec<String> {
    let build = id("kestrel");
    book.lines(&build)
        .filter(|line| !line.withdrawn)
        .filter_map(|line| match &line.entry.fact {
            Fact::Figure(figure) => Some(figure.text.clone()),
            _ => None,
        })
        .collect()
}

fn corrected() -> Book {
    let mut book = book([opened(), entry("wrong", 2, figure("0.00025"))]);
    written(&mut book, &["right", "gone"], put_right(&id("wrong"), typed("0.0025")));
    book
}

#[test]
fn the_new_figure_counts_and_the_old_one_says_by_what_it_was_put_right() {
    let book = corrected();
    assert_eq!(in_force(&book), ["0.0025"], "one figure, not two");
    assert_eq!(book.fate(&id("wrong")).as_deref(), Some("put right by 0.0025 in"));
    assert_eq!(book.fate(&id("right")), None, "it counts");
    let subject = Subject::Figure("side-seal-gap-na".to_owned(), "1F-AB".to_owned());
    assert_eq!(book.history(&id("kestrel"), &subject).count(), 2, "both stay in the history");
}

#[test]
fn on_another_piece_it_is_put_right_all_the_same() {
    let mut book = book([opened(), entry("wrong", 2, figure("0.0025"))]);
    let right = Figure { place: "1F-BC".to_owned(), ..typed("0.0025") };
    written(&mut book, &["right", "gone"], put_right(&id("wrong"), right));
    let of = |place: &str| book.figure(&id("kestrel"), "side-seal-gap-na", place);
    assert_eq!(of("1F-AB"), None, "nothing was measured there");
    assert!(of("1F-BC").is_some(), "but here");
}

#[test]
fn undone_the_old_figure_counts_again_and_redone_the_new_one() {
    let mut book = corrected();
    let both = [id("right"), id("gone")];
    let back = book.take_back(&both);
    written(&mut book, &["back-1", "back-2"], back);
    assert_eq!(in_force(&book), ["0.00025"], "as before");
    assert_eq!(book.fate(&id("right")).as_deref(), Some("withdrawn"));
    let again = book.hold_again(&both);
    written(&mut book, &["again-1", "again-2"], again);
    assert_eq!(in_force(&book), ["0.0025"], "as corrected");
    assert_eq!(book.fate(&id("wrong")).as_deref(), Some("put right by 0.0025 in"));
}

/// The right one withdrawn by itself puts nothing right any more.
#[test]
fn a_correction_that_is_withdrawn_puts_nothing_right() {
    let mut book = corrected();
    written(&mut book, &["gone-2"], vec![Fact::Withdrawn { entry: id("right") }]);
    assert_eq!(in_force(&book), Vec::<String>::new(), "neither counts");
    assert_eq!(book.fate(&id("wrong")).as_deref(), Some("withdrawn"));
}

#[test]
fn what_was_only_withdrawn_is_called_so() {
    let mut book = book([opened(), entry("wrong", 2, figure("0.00025"))]);
    let back = book.take_back(&[id("wrong")]);
    assert_eq!(back, [Fact::Withdrawn { entry: id("wrong") }]);
    written(&mut book, &["gone"], back);
    assert_eq!(book.fate(&id("wrong")).as_deref(), Some("withdrawn"));
    assert_eq!(book.hold_again(&[id("wrong")]), [Fact::Restored { entry: id("wrong") }]);
}

/// A book written before figures could be put right is still read, and one that stands for itself is
/// written as it was then.
#[test]
fn a_figure_of_an_older_book_reads_and_is_written_as_before() {
    let old = r#"{"format":1,"id":"a","build":"kestrel","order":2,"at":0,"fact":{"figure":{"row":"end-play","text":"0.05","unit":"mm","gauge":"dial-indicator"}}}"#;
    let read: Entry = pitleaf_core::kept::read(old).expect("an entry of an older book");
    match &read.fact {
        Fact::Figure(figure) => assert_eq!(figure.instead_of, None),
        other => panic!("no figure: {other:?}"),
    }
    assert!(!pitleaf_core::kept::write(&read).contains("instead_of"), "nothing added");
}

/// What is said once a figure is written: how it stands as well.
#[test]
fn what_was_written_is_told_with_its_verdict() {
    let sheet = pitleaf_core::limits::Sheet::starter();
    let told =
        |text: &str, place: &str| Figure { place: place.to_owned(), ..typed(text) }.told(&sheet);
    assert_eq!(told("0.00025", "2R-AB"), "0.00025 in on 2R-AB: does not meet");
    assert_eq!(told("0.0022", ""), "0.0022 in: meets");
    let unknown = Figure { row: "no-such-row".to_owned(), ..typed("0.0022") };
    assert_eq!(unknown.told(&sheet), "0.0022 in on 1F-AB", "nothing to hold it against");
}
