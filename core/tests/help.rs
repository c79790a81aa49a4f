//! Help at the place: every figure and every calculator says what it is, how to measure, why it matters.

use pitleaf_core::calculators::Calculator;
use pitleaf_core::help::{Help, Topic};
use pitleaf_core::limits::Sheet;
use std::collections::{HashMap, HashSet};

/// Each text is one or a few short sentences.
#[track_caller]
fn check(about: &str, help: &Help) {
    for (which, text) in [("what", help.what), ("how", help.how.as_str()), ("why", help.why)] {
        assert!(text.ends_with('.'), "{about}, {which}: no sentence: {text:?}");
        assert!(text.len() >= 20, "{about}, {which}: says nothing: {text:?}");
        let longest = text.split(['.', ':', ';']).map(|part| part.split(' ').count()).max();
        assert!(longest <= Some(34), "{about}, {which}: too long a sentence: {text:?}");
    }
}

#[test]
fn every_row_has_all_three_texts() {
    let sheet = Sheet::starter();
    for row in sheet.rows() {
        let help = row.help().unwrap_or_else(|| panic!("{} has no help", row.id));
        check(&row.id, &help);
        assert_eq!(help.how, row.how, "{}: measured as its row says", row.id);
        if let Some(piece) = row.piece() {
            let of_piece = piece.help().unwrap_or_else(|| panic!("{} has no help", piece.id));
            assert_eq!(of_piece.what, help.what, "{}: as its set", piece.id);
        }
    }
}

#[test]
fn every_topic_leads_to_rows_that_are_there_and_each_row_belongs_to_one() {
    let sheet = Sheet::starter();
    let mut of_row = HashMap::new();
    for topic in Topic::all() {
        assert!(!topic.title.is_empty() && !topic.title.ends_with('.'), "{}: a title", topic.id);
        for row in topic.rows {
            assert!(sheet.row(row).is_some(), "{}: no row {row}", topic.id);
            assert_eq!(of_row.insert(*row, topic.id), None, "{row} belongs to two topics");
        }
        if !topic.rows.is_empty() {
            check(topic.id, &topic.help(&sheet));
        }
        assert!(std::ptr::eq(Topic::named(topic.id).expect("by its id"), topic), "{}", topic.id);
    }
    assert_eq!(of_row.len(), sheet.rows().len(), "every row belongs to a topic");
}

#[test]
fn every_calculator_has_all_three_texts() {
    for calculator in Calculator::all() {
        check(calculator.name(), &calculator.help());
        assert!(!calculator.about().is_empty(), "{}: what it answers", calculator.name());
        assert!(!calculator.words().is_empty(), "{}: other words", calculator.name());
    }
}

/// Topics and calculators that say the same of different things would say nothing. Surveys share the
/// topic of what they are read for, each with its own way of measuring.
#[test]
fn no_sentence_stands_twice() {
    let mut seen = HashSet::new();
    let plain = Calculator::PLAIN.map(Calculator::help);
    let topics = Topic::all().flat_map(|topic| [topic.what, topic.why]);
    let calculators = plain.iter().flat_map(|help| [help.what, &help.how, help.why]);
    for text in topics.chain(calculators) {
        for sentence in text.split_inclusive(". ") {
            assert!(seen.insert(sentence.trim().to_owned()), "twice: {sentence:?}");
        }
    }
    let mut names = HashSet::new();
    for calculator in Calculator::all() {
        assert!(names.insert(calculator.name()), "two are called {}", calculator.name());
    }
}

/// Surveys borrow their what and why from the topic of the figure they are made for.
#[test]
fn surveys_speak_of_what_they_are_read_for() {
    use pitleaf_core::faces::Survey;
    for (survey, topic) in [
        (Survey::Flatness, "side-housing-warp"),
        (Survey::EndPlayAfter, "end-play"),
        (Survey::BearingShell, "bearing-seat"),
        (Survey::ApexSealLength, "apex-seal-gap"),
    ] {
        let topic = Topic::named(topic).expect("a topic");
        assert_eq!(Calculator::Survey(survey).help().why, topic.why, "{}", survey.name());
    }
    // A name without a topic would fall back on the first one, which no survey is read for.
    let first = Topic::all().next().expect("a topic");
    for survey in Survey::ALL {
        assert_ne!(Calculator::Survey(survey).help().why, first.why, "{}", survey.name());
    }
}
