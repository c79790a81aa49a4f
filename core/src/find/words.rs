//! The words of a text, as they are looked for.

use super::{german, synonyms};
use crate::language::IS_GERMAN;
use crate::letters;

/// A word in all its forms: as written, joined, and parted at its hyphens.
#[derive(Debug)]
pub(super) struct Word {
    /// As written: `side-seal`, `7/16-20`, `m10x1.25`.
    pub(super) whole: String,
    /// Without its hyphens, `sideseal`; empty where it has none.
    pub(super) joined: String,
    /// Its pieces, `side` and `seal`; none where it is of one piece.
    pub(super) pieces: Vec<String>,
}

impl Word {
    /// Every form of it.
    pub(super) fn forms(&self) -> impl Iterator<Item = &String> {
        let joined = Some(&self.joined).filter(|joined| !joined.is_empty());
        std::iter::once(&self.whole).chain(joined).chain(&self.pieces)
    }
}

/// Words of so little meaning that they count only where nothing else is asked.
pub(super) const SMALL: &[&str] = &[
    "a", "an", "and", "are", "at", "by", "do", "for", "from", "how", "is", "it", "my", "of", "on",
    "or", "the", "to", "what", "why", "with",
];

/// The words of a text, in lower case.
pub(super) fn words(text: &str) -> Vec<Word> {
    even(text)
        .split(|letter: char| !letters::is_of_word(letter) && !"-./#".contains(letter))
        .map(|piece| piece.trim_end_matches(['.', '-', '/']).trim_start_matches('/'))
        .filter(|piece| piece.contains(letters::is_of_word))
        .map(word)
        .collect()
}

/// More words than a person asks by; the rest of a pasted page is not looked at.
const MOST_ASKED: usize = 12;

/// The words a question asks: those of little meaning only where there are no others.
pub(super) fn asked(query: &str) -> Vec<Word> {
    let mut all = words(query);
    if !IS_GERMAN {
        all = all.into_iter().flat_map(parted).collect();
    }
    let small = if IS_GERMAN { german::SMALL } else { SMALL };
    let is_small = |word: &Word| small.contains(&word.whole.as_str());
    if !all.iter().all(is_small) {
        all.retain(|word| !is_small(word));
    }
    all.truncate(MOST_ASKED);
    all
}

/// The words that one word of a question is for.
fn parted(word: Word) -> Vec<Word> {
    let two = synonyms::RUN_TOGETHER.iter().find(|(one, _)| *one == word.whole);
    two.map_or_else(|| vec![word], |(_, two)| words(two))
}

/// Whether a word is a figure, or has one in it: then no letter of it may be another.
pub(super) fn has_figure(word: &str) -> bool {
    word.bytes().any(|byte| byte.is_ascii_digit())
}

fn word(piece: &str) -> Word {
    // What has figures in it is parted at hyphens alone: 7/16-20 is not of sevenths.
    let parts_at: &[char] = if has_figure(piece) { &['-'] } else { &['-', '/', '.'] };
    let pieces: Vec<String> =
        piece.split(parts_at).filter(|piece| !piece.is_empty()).map(str::to_owned).collect();
    let is_one = pieces.len() == 1 && pieces[0] == piece;
    Word {
        whole: piece.to_owned(),
        joined: if is_one { String::new() } else { pieces.concat() },
        pieces: if is_one { Vec::new() } else { pieces },
    }
}

/// Lower case, one kind of ×, one kind of minus, points for the commas of figures, no spaces round a ×
/// between figures.
fn even(text: &str) -> String {
    let lower = letters::lower(text);
    let mut even = String::new();
    let mut rest = lower.chars().peekable();
    while let Some(letter) = rest.next() {
        let is_before_figure = rest.peek().is_some_and(char::is_ascii_digit);
        even.push(match letter {
            '×' | '*' => 'x',
            '−' | '–' => '-',
            ',' if is_before_figure => '.',
            letter => letter,
        });
    }
    even.replace(" x ", "x")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(text: &str, wanted: &[&str]) {
        let all = words(text);
        let forms: Vec<&str> = all.iter().flat_map(Word::forms).map(String::as_str).collect();
        assert_eq!(forms, wanted, "{text:?}");
    }

    #[test]
    fn texts_are_parted_as_a_shop_reads_them() {
        check("Side seal, end gap.", &["side", "seal", "end", "gap"]);
        check("E-Shaft", &["e-shaft", "eshaft", "e", "shaft"]);
        check("M10 × 1,25", &["m10x1.25"]);
        check("7/16–20 UNF", &["7/16-20", "7/1620", "7/16", "20", "unf"]);
        check("L/min", &["l/min", "lmin", "l", "min"]);
        check("−4 port", &["-4", "4", "4", "port"]);
        check(".201 in, #7", &[".201", "in", "#7"]);
        check("… – “½” /", &[]);
    }

    #[test]
    fn words_of_little_meaning_count_only_alone() {
        let plain =
            |query: &str| asked(query).into_iter().map(|word| word.whole).collect::<Vec<_>>();
        assert_eq!(plain("what is the end play"), ["end", "play"]);
        assert_eq!(plain("what"), ["what"]);
        assert_eq!(plain(&"page ".repeat(1_000_000)).len(), 12, "a pasted page");
    }
}
