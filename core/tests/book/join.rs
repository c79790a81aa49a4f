//! What a file would bring, told before anything is taken in.

use super::order::{folded, told};
use super::{entry, figure, id, opened, slot};
use pitleaf_core::book::{Coming, Conflict, Entry, Fact, Subject, coming};

fn mark(words: &str) -> Fact {
    Fact::Mark { slot: slot("1F-AB"), mark: words.to_owned() }
}

/// What entries would bring to a book of others, which must not change.
#[track_caller]
fn brought(here: &[Entry], file: Vec<Entry>) -> Coming {
    let book = folded(here);
    let before = told(&book);
    let coming = coming(&book, file);
    assert_eq!(told(&book), before, "nothing is taken in yet");
    coming
}

#[test]
fn what_is_known_is_told_from_what_is_new() {
    let (known, new) = (entry("a", 2, figure("0.0020")), entry("b", 3, mark("two dots")));
    let wanted = Coming { new: vec![new.clone()], known: 2, ..Coming::default() };
    assert_eq!(brought(&[opened(), known.clone()], vec![opened(), new, known]), wanted, "one new");
}

#[test]
fn nothing_brings_nothing() {
    assert_eq!(brought(&[opened()], Vec::new()), Coming::default(), "an empty file");
}

#[test]
fn new_entries_come_in_order() {
    let file = vec![entry("c", 4, figure("3 thou")), entry("b", 3, figure("2 thou")), opened()];
    let coming = brought(&[], file);
    let names: Vec<&str> = coming.new.iter().map(|entry| &*entry.id.0).collect();
    assert_eq!(names, ["kestrel", "b", "c"], "by order, not as they stood");
    assert_eq!(coming.conflicts, [], "no conflict within the file");
}

#[test]
fn an_entry_twice_in_the_file_comes_once() {
    let twice = entry("a", 2, figure("0.0020"));
    let wanted = Coming { new: vec![twice.clone()], known: 1, ..Coming::default() };
    assert_eq!(brought(&[opened()], vec![twice.clone(), twice]), wanted, "new once, known once");
}

#[test]
fn an_entry_that_says_something_else_here_is_left_out() {
    let (ours, theirs) = (entry("a", 2, figure("0.0020")), entry("a", 2, figure("0.0090")));
    let wanted = Coming { altered: vec![id("a")], ..Coming::default() };
    for (here, file) in [(&ours, &theirs), (&theirs, &ours)] {
        let coming = brought(&[opened(), here.clone()], vec![file.clone(), file.clone()]);
        assert_eq!(coming, wanted, "named once, and not taken in");
    }
}

#[test]
fn an_entry_twice_in_the_file_with_other_words_is_named_and_comes_once() {
    let (one, other) = (entry("a", 2, figure("0.0020")), entry("a", 2, figure("0.0090")));
    let there = brought(&[opened()], vec![one.clone(), other.clone()]);
    assert_eq!(there.altered, [id("a")], "one of the two was tampered with");
    assert_eq!(there.new.len(), 1, "an id is taken in once");
    assert_eq!(brought(&[opened()], vec![other, one]), there, "the same one either way");
}

#[test]
fn two_marks_for_one_slot_are_a_conflict_and_the_later_is_shown() {
    let conflict = |here: &str, theirs: &str, joined: &str| {
        vec![Conflict {
            build: id("kestrel"),
            subject: Subject::Mark(slot("1F-AB")),
            here: id(here),
            theirs: id(theirs),
            joined: id(joined),
        }]
    };
    let (early, late) = (entry("early", 2, mark("two dots")), entry("late", 3, mark("a cross")));
    let coming = brought(&[opened(), early.clone()], vec![late.clone()]);
    assert_eq!(coming.conflicts, conflict("early", "late", "late"), "theirs is the later");
    assert_eq!(coming.new, std::slice::from_ref(&late), "and comes");
    let coming = brought(&[opened(), late.clone()], vec![early.clone()]);
    assert_eq!(coming.conflicts, conflict("late", "early", "late"), "ours is the later and stays");
    assert_eq!(coming.new, std::slice::from_ref(&early), "theirs comes all the same");

    let mut joined = folded(&[opened(), late]);
    coming.new.into_iter().for_each(|entry| assert!(joined.take(entry), "new"));
    let history: Vec<&str> = joined
        .history(&id("kestrel"), &Subject::Mark(slot("1F-AB")))
        .map(|line| &*line.entry.id.0)
        .collect();
    assert_eq!(history, ["early", "late"], "both are kept");
    assert_eq!(joined.mark(&id("kestrel"), slot("1F-AB")), Some("a cross"), "the later is shown");
}

#[test]
fn a_place_is_in_conflict_once_however_often_it_was_marked() {
    let file = vec![entry("b", 3, mark("a cross")), entry("c", 4, mark("one long line"))];
    let coming = brought(&[opened(), entry("a", 2, mark("two dots"))], file);
    let told: Vec<[&str; 3]> = coming
        .conflicts
        .iter()
        .map(|both| [&both.here, &both.theirs, &both.joined].map(|id| &*id.0))
        .collect();
    assert_eq!(told, [["a", "c", "c"]], "the latest of theirs");
}

#[test]
fn what_only_one_book_speaks_of_is_no_conflict() {
    let elsewhere = Entry { build: id("plover"), ..entry("b", 3, mark("a cross")) };
    let other_slot = Fact::Mark { slot: slot("1R-AB"), mark: "a cross".to_owned() };
    let withdrawn = entry("w", 3, Fact::Withdrawn { entry: id("a") });
    let here = [opened(), entry("a", 2, mark("two dots")), withdrawn];
    for (file, why) in [
        (elsewhere, "another build"),
        (entry("b", 4, other_slot), "another slot"),
        (entry("b", 4, figure("0.0020")), "another matter"),
        (entry("b", 4, mark("a cross")), "ours is withdrawn"),
    ] {
        assert_eq!(brought(&here, vec![file]).conflicts, [], "{why}");
    }
}
