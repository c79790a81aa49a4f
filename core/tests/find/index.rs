//! Words of things, and which come first.

use pitleaf_core::find::Index;

fn index() -> Index {
    let mut index = Index::default();
    for (name, words) in [
        ("End play of the shaft", "float thrust e-shaft"),
        ("Shaft runout", "bent TIR"),
        ("Side seal gap", "side-seal feeler"),
        ("Warp of a face", "side flatness"),
    ] {
        index.put(&[(8, name), (5, words), (1, "dial")]);
    }
    index
}

/// The things found, by their numbers.
#[track_caller]
fn check(query: &str, wanted: &[u32]) {
    let found: Vec<u32> = index().ask(query).into_iter().map(|(thing, _)| thing).collect();
    assert_eq!(found, wanted, "{query:?}");
}

const PLAY: u32 = 0;
const RUNOUT: u32 = 1;
const GAP: u32 = 2;
const WARP: u32 = 3;

#[test]
fn each_word_must_be_answered() {
    check("run", &[RUNOUT]);
    check("shaft run", &[RUNOUT]);
    check("run shaft", &[RUNOUT]);
    check("run seal", &[]);
    check("TIR", &[RUNOUT]);
}

#[test]
fn words_of_the_name_count_most_and_whole_words_more() {
    check("side", &[GAP, WARP]);
    check("shaft", &[PLAY, RUNOUT]);
    check("fl", &[PLAY, WARP]);
}

#[test]
fn a_hyphen_joins_and_parts() {
    check("side-seal", &[GAP]);
    check("sideseal", &[GAP]);
    check("end-play", &[PLAY]);
    check("run-shaft", &[RUNOUT]);
    check("run-seal", &[]);
    check("e-shaft", &[PLAY, RUNOUT]);
}

#[test]
fn a_word_itself_comes_before_one_of_the_same_meaning_and_one_mistyped() {
    let mut index = Index::default();
    for name in ["shin", "spacer", "shim"] {
        index.put(&[(1, name)]);
    }
    let found: Vec<u32> = index.ask("shim").into_iter().map(|(thing, _)| thing).collect();
    assert_eq!(found, [2, 1, 0], "the word, its meaning, a word that is like it");
}

#[test]
fn what_is_far_from_the_best_answer_is_left_out() {
    let mut index = Index::default();
    for name in ["backlash", "backlush", "bucklesh"] {
        index.put(&[(1, name)]);
    }
    let of = |query: &str| index.ask(query).len();
    assert_eq!(of("backlash"), 2, "itself and one error; two errors are no answer beside it");
    assert_eq!(of("backlosh"), 3, "where nothing is better, two errors are");
}

#[test]
fn nothing_is_found_by_nothing() {
    for query in ["", "  ", "-", "…", "½"] {
        check(query, &[]);
    }
}
