//! Any word with a typing error still finds its row; and what is found is near, by another library's count.

use crate::{limits, tables};
use pitleaf_core::find::{Finder, Index};
use pitleaf_core::limits::Sheet;
use proptest::prelude::*;
use std::collections::BTreeMap;
use std::sync::LazyLock;

static FINDER: LazyLock<Finder> = LazyLock::new(tables);
static SHEET: LazyLock<Sheet> = LazyLock::new(Sheet::starter);

/// Each word of a row that an error leaves legible, with the rows it stands in. Letters alone, and four of
/// them at least: a shorter word with an error is another word.
static WORDS: LazyLock<BTreeMap<String, Vec<&'static str>>> = LazyLock::new(|| {
    let mut words = BTreeMap::<String, Vec<&str>>::new();
    for row in SHEET.rows() {
        let text = format!("{} {} {}", row.what, row.words, row.part.name()).to_lowercase();
        for word in text.split(|letter: char| !letter.is_ascii_alphanumeric()) {
            if word.len() >= 4 && word.bytes().all(|byte| byte.is_ascii_lowercase()) {
                words.entry(word.to_owned()).or_default().push(&row.id);
            }
        }
    }
    words
});

/// What is a word of the trade itself, of something else.
const OTHERS: [&str; 3] = ["crack", "flood", "omp"];

/// A word with one error: a letter too many, one missing, one wrong, or two swapped.
fn mistyped(word: &str, kind: u8, at: usize, letter: char) -> String {
    let mut letters: Vec<char> = word.chars().collect();
    let at = at % letters.len();
    match kind {
        0 => letters.insert(at, letter),
        1 => drop(letters.remove(at)),
        2 => letters[at] = letter,
        _ => letters.swap(at, (at + 1).min(word.len() - 1)),
    }
    letters.into_iter().collect()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(32))]

    /// Every row, by each of its words with an error made at random.
    #[test]
    fn every_row_is_found_by_each_of_its_words_with_one_error(
        kind in 0_u8..4, at in 0_usize..24, letter in proptest::char::range('a', 'z'),
    ) {
        for (word, rows) in &*WORDS {
            let typed = mistyped(word, kind, at, letter);
            if OTHERS.contains(&typed.as_str()) {
                continue;
            }
            let found = limits(&FINDER, &typed);
            for row in rows {
                prop_assert!(found.contains(row), "{row}: {typed:?} for {word:?}");
            }
        }
    }

    /// Against an independent library: `strsim`. What one misspelt word finds is what that library calls
    /// near enough: no more than one error from four letters on, two from eight; or a beginning.
    #[test]
    fn a_misspelling_finds_what_another_library_calls_near(
        words in prop::collection::vec("[a-f]{3,10}", 1..12), typed in "[a-f]{3,10}",
    ) {
        let mut index = Index::default();
        for word in &words {
            index.put(&[(1, word)]);
        }
        let found: Vec<u32> = index.ask(&typed).into_iter().map(|(thing, _)| thing).collect();
        let errors = |word: &str| strsim::osa_distance(&typed, word);
        let allowed = |length: usize| usize::from(length >= 4) + usize::from(length >= 8);
        let starts = |word: &str| (1..=word.len()).map(|end| errors(&word[..end])).min();
        for (thing, word) in (0..).zip(&words) {
            let is_near = errors(word) <= allowed(typed.len().max(word.len()))
                || word.starts_with(&typed)
                || typed.len() >= 5 && starts(word) <= Some(allowed(typed.len()));
            if found.contains(&thing) {
                prop_assert!(is_near, "{typed} finds {word}");
            } else if is_near {
                // Left out only beside a better one.
                let least = words.iter().map(|other| errors(other)).min();
                prop_assert!(least < Some(errors(word)) || words.iter().any(|other| other.starts_with(&typed)), "{typed} does not find {word}");
            }
        }
    }
}
