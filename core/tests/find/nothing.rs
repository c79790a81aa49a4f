//! Nothing found is said, with what to try.

use crate::tables;

#[track_caller]
fn check(query: &str, wanted: &str) {
    let finder = tables();
    assert_eq!(finder.find(query), [], "{query:?}");
    assert_eq!(finder.nothing(query), wanted, "{query:?}");
}

#[test]
fn a_strange_word_is_named() {
    check(
        "side seal xylophone",
        "Nothing here is like “xylophone”. Check its letters, or try another word for it: the part’s name, the gauge’s, a word of your note.",
    );
}

#[test]
fn known_words_that_do_not_go_together_are_too_many() {
    check("thermostat backlash", "No one thing answers to all these words. Take one away.");
}

#[test]
fn no_word_asks_for_one() {
    for nothing in ["", " ", "…"] {
        check(nothing, "Type a word: a part, a figure, a tool, a word of a note.");
    }
}
