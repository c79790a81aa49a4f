//! How well a typed word stands for another: exactly, as its beginning, or but for typing errors.
//!
//! A typing error is a letter too many, a letter missing, a wrong letter, or two neighbours swapped; no
//! letter takes part in two of them (optimal string alignment).

use super::synonyms::AS_WRITTEN;
use super::words::has_figure;

/// How well a word answers, of 100; none for one that does not.
pub(super) type Quality = u8;

/// It is the word.
pub(super) const EXACT: Quality = 100;
/// It is the word's beginning.
const BEGINNING: Quality = 80;
/// It is the word but for its plural s.
const PLURAL: Quality = 95;
/// It is the word but for one error.
const ONE_ERROR: Quality = 70;
/// Each further error.
const FURTHER_ERROR: Quality = 15;
/// It is the word's beginning but for errors.
const WRONG_BEGINNING: Quality = 45;

/// The longest word in which errors are looked for.
const LONGEST: usize = 24;
/// A wrong beginning says little of a word before this length.
const LEAST_BEGINNING: usize = 5;

/// How many errors a word of so many letters may have: none that is short, for it would be another word.
const fn allowed(letters: usize) -> usize {
    match letters {
        0..=3 => 0,
        4..=7 => 1,
        _ => 2,
    }
}

/// A word as it is typed, made ready to be held against many.
pub(super) struct Typed<'query> {
    text: &'query str,
    letters: Vec<char>,
    signs: u32,
    is_plain: bool,
}

/// Which letters stand in a word, five bits of each: enough to pass most words by.
pub(super) fn signs(word: &str) -> u32 {
    word.chars().fold(0, |signs, letter| signs | 1 << (u32::from(letter) % 32))
}

impl<'query> Typed<'query> {
    pub(super) fn new(text: &'query str) -> Self {
        let mut letters = Vec::new();
        letters.extend(text.chars());
        Self {
            text,
            signs: signs(text),
            is_plain: !has_figure(text) && !AS_WRITTEN.contains(&text),
            letters,
        }
    }

    /// How well it stands for a word with these signs.
    pub(super) fn stands_for(&self, word: &str, signs: u32) -> Option<Quality> {
        if let Some(rest) = word.strip_prefix(self.text) {
            return Some(match rest {
                "" => EXACT,
                "s" => PLURAL,
                _ => BEGINNING,
            });
        }
        let typed = self.letters.len();
        // Each error brings in one letter at most that the word has not.
        let strange = (self.signs & !signs).count_ones() as usize;
        if !self.is_plain || strange > allowed(typed + 1) || has_figure(word) {
            return None;
        }
        let (errors, beginning, length) = errors(&self.letters, word)?;
        if errors <= allowed(typed.max(length)) {
            return Some(ONE_ERROR - FURTHER_ERROR * (Quality::try_from(errors).ok()?.max(1) - 1));
        }
        (typed >= LEAST_BEGINNING && beginning <= allowed(typed)).then_some(WRONG_BEGINNING)
    }
}

/// The least errors between a typed word and another, those between it and the other's nearest beginning,
/// and the other's letters; none where one is too long to be looked at.
fn errors(typed: &[char], word: &str) -> Option<(usize, usize, usize)> {
    if typed.len() > LONGEST {
        return None;
    }
    // Rows of the table of errors between beginnings: the one before last, the last, and the one in hand.
    let mut rows = [[0_usize; LONGEST + 1]; 3];
    for (at, errors) in rows[1].iter_mut().enumerate() {
        *errors = at;
    }
    let mut beginning = typed.len();
    let mut before = None;
    let mut length = 0;
    for letter in word.chars() {
        length += 1;
        if length > LONGEST {
            return None;
        }
        let [two, one, row] = &mut rows;
        row[0] = length;
        for at in 1..=typed.len() {
            let is_same = typed[at - 1] == letter;
            let mut least =
                (one[at - 1] + usize::from(!is_same)).min(one[at] + 1).min(row[at - 1] + 1);
            if at > 1 && Some(typed[at - 1]) == before && typed[at - 2] == letter {
                least = least.min(two[at - 2] + 1);
            }
            row[at] = least;
        }
        beginning = beginning.min(row[typed.len()]);
        before = Some(letter);
        rows.rotate_left(1);
    }
    Some((rows[1][typed.len()], beginning, length))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[track_caller]
    fn check(typed: &str, word: &str, wanted: Option<Quality>) {
        assert_eq!(Typed::new(typed).stands_for(word, signs(word)), wanted, "{typed} for {word}");
    }

    #[test]
    fn better_is_what_is_nearer() {
        check("feeler", "feeler", Some(100));
        check("feel", "feeler", Some(80));
        check("leave", "leaves", Some(95));
        check("feler", "feeler", Some(70));
        check("schim", "shim", Some(70));
        check("torqe", "torque", Some(70));
        check("tourqe", "torque", None);
        check("comprsion", "compression", Some(55));
        check("compers", "compression", Some(45));
    }

    #[test]
    fn short_words_and_figures_are_taken_as_they_are() {
        check("oli", "oil", None);
        check("sel", "seal", Some(70));
        check("m10", "m11", None);
        check("7/16-20", "7/16-28", None);
        check("nm", "mm", None);
        check("omp", "comp", None);
    }

    proptest! {
        /// Against an independent library: `strsim`, optimal string alignment.
        #[test]
        fn errors_are_counted_as_another_library_counts_them(
            typed in "[a-e]{0,9}", word in "[a-eé]{1,9}",
        ) {
            let letters: Vec<char> = typed.chars().collect();
            let (all, beginning, length) = errors(&letters, &word).expect("short words");
            prop_assert_eq!(all, strsim::osa_distance(&typed, &word), "{} {}", typed, word);
            prop_assert_eq!(length, word.chars().count());
            let starts = word.char_indices().map(|(at, letter)| &word[..at + letter.len_utf8()]);
            let least = starts.map(|start| strsim::osa_distance(&typed, start)).min();
            prop_assert_eq!(Some(beginning.min(typed.len())), least.map(|least| least.min(typed.len())));
        }

        /// Passing words by must not lose one: what the other library finds near enough is found.
        #[test]
        fn nothing_near_is_passed_by(typed in "[a-z]{4,9}", word in "[a-z]{4,9}") {
            let errors = strsim::osa_distance(&typed, &word);
            let most = allowed(typed.len().max(word.len()));
            let found = Typed::new(&typed).stands_for(&word, signs(&word));
            prop_assert_eq!(errors <= most || word.starts_with(&typed), found.is_some_and(|found| found > WRONG_BEGINNING));
        }
    }
}
