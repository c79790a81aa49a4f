//! Finding rows by the trade's words.

use pitleaf_core::limits::{Row, Sheet, find};

fn row(id: &str, what: &str, words: &str) -> Row {
    let end_play = Sheet::starter().row("end-play").expect("the sheet has it").clone();
    Row { id: id.to_owned(), what: what.to_owned(), words: words.to_owned(), ..end_play }
}

fn rows() -> Vec<Row> {
    vec![
        row("play", "End play of the shaft", "float thrust e-shaft"),
        row("runout", "Shaft runout", "bent TIR"),
        row("gap", "Side seal gap", "side-seal feeler"),
        row("warp", "Warp of a face", "side flatness"),
    ]
}

#[track_caller]
fn check(query: &str, wanted: &[&str]) {
    let rows = rows();
    let found: Vec<&str> = find(rows.iter(), query).iter().map(|row| row.id.as_str()).collect();
    assert_eq!(found, wanted, "{query:?}");
}

#[test]
fn each_word_must_begin_a_word_of_the_row() {
    check("run", &["runout"]);
    check("unout", &[]);
    check("shaft run", &["runout"]);
    check("run shaft", &["runout"]);
    check("run seal", &[]);
    check("TIR", &["runout"]);
    check("tir", &["runout"]);
}

#[test]
fn words_of_the_name_count_most_and_whole_words_more() {
    check("side", &["gap", "warp"]);
    check("shaft", &["play", "runout"]);
    check("fl", &["play", "warp"]);
}

#[test]
fn a_hyphen_joins_and_parts() {
    check("e-shaft", &["play", "runout"]);
    check("eshaft", &["play"]);
    check("side-seal", &["gap"]);
    check("sideseal", &["gap"]);
    check("end-play", &["play"]);
    check("run-shaft", &["runout"]);
    check("run-seal", &[]);
}

#[test]
fn nothing_is_found_by_nothing() {
    for query in ["", "  ", "-", "…", "½"] {
        check(query, &[]);
    }
}

#[test]
fn part_and_gauge_are_words_too() {
    check("dial end", &["play"]);
    check("assembled warp", &["warp"]);
}
