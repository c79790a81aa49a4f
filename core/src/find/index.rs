//! Words and what they stand in: each word once, with the things it leads to.

use super::typing::{Quality, Typed, signs};
use super::words::{asked, words};
use super::{german, synonyms};
use crate::language::IS_GERMAN;
use rustc_hash::FxHashMap;

/// How much a field of a thing counts.
pub type Weight = u8;

/// What is farther below the best answer than this is no answer beside it.
const FAR: Quality = 40;
/// A word of the same meaning is a little less than the word itself.
const SAME_MEANING: Quality = 10;
/// A beginning shorter than this has no meaning yet.
const LEAST_MEANING: usize = 3;

/// Words of numbered things.
#[derive(Debug, Default)]
pub struct Index {
    entries: Vec<Entry>,
    numbers: FxHashMap<Box<str>, u32>,
    things: u32,
}

/// A word, and what it stands in.
#[derive(Debug)]
struct Entry {
    word: Box<str>,
    signs: u32,
    stands_in: Vec<(u32, Weight)>,
}

/// How well a thing answers.
#[derive(Clone, Copy, Debug, Default)]
struct Hit {
    quality: Quality,
    score: u32,
}

impl Index {
    /// Puts the next thing in: its texts, and how much each counts. Things are numbered from 0.
    pub fn put(&mut self, fields: &[(Weight, &str)]) {
        for (weight, text) in fields {
            for word in words(text) {
                word.forms().for_each(|form| self.put_word(form, *weight));
            }
        }
        self.things += 1;
    }

    fn put_word(&mut self, word: &str, weight: Weight) {
        let thing = self.things;
        if let Some(&number) = self.numbers.get(word) {
            let stands_in = &mut self.entries[number as usize].stands_in;
            match stands_in.last_mut() {
                Some((last, most)) if *last == thing => *most = weight.max(*most),
                _ => stands_in.push((thing, weight)),
            }
            return;
        }
        // A phone's book has no four thousand million words.
        let number = u32::try_from(self.entries.len()).unwrap_or(u32::MAX);
        self.numbers.insert(word.into(), number);
        self.entries.push(Entry {
            word: word.into(),
            signs: signs(word),
            stands_in: vec![(thing, weight)],
        });
    }

    /// The numbers of the things that answer every word of a question, best first, with how well they do;
    /// none for an empty one.
    ///
    /// A word is answered by itself, by a word it begins, by one of the same meaning, and but for typing
    /// errors. What is far from the best answer is left out.
    #[must_use]
    pub fn ask(&self, query: &str) -> Vec<(u32, u32)> {
        let mut all: Option<Vec<Hit>> = None;
        for word in asked(query) {
            let mut hits = self.hits(&word.whole);
            if !word.pieces.is_empty() {
                let joined = self.hits(&word.joined);
                let pieces: Vec<Vec<Hit>> =
                    word.pieces.iter().map(|piece| self.hits(piece)).collect();
                for (at, hit) in hits.iter_mut().enumerate() {
                    if hit.quality == 0 {
                        *hit = joined[at];
                    }
                    if hit.quality == 0 {
                        *hit = together(pieces.iter().map(|piece| piece[at]));
                    }
                }
            }
            match &mut all {
                None => all = Some(hits),
                Some(all) => {
                    for (sum, hit) in all.iter_mut().zip(hits) {
                        *sum = if hit.quality == 0 { Hit::default() } else { sum.and(hit) };
                    }
                }
            }
        }
        let all = all.unwrap_or_default();
        let best = all.iter().map(|hit| hit.quality).max().unwrap_or_default();
        // The best first; among equals, the one that was put in first.
        let mut order: Vec<u64> = (0_u32..)
            .zip(&all)
            .filter(|(_, hit)| hit.quality > 0 && hit.quality + FAR >= best)
            .map(|(thing, hit)| u64::from(u32::MAX - hit.score) << 32 | u64::from(thing))
            .collect();
        order.sort_unstable();
        #[expect(clippy::cast_possible_truncation, reason = "both halves were put in above")]
        let parted = |both: u64| (both as u32, u32::MAX - (both >> 32) as u32);
        order.into_iter().map(parted).collect()
    }

    /// Whether any word here answers a word of a question.
    #[must_use]
    pub fn knows(&self, word: &str) -> bool {
        self.hits(word).iter().any(|hit| hit.quality > 0)
    }

    /// How well each thing answers one word.
    fn hits(&self, word: &str) -> Vec<Hit> {
        let mut hits = vec![Hit::default(); self.things as usize];
        let typed = Typed::new(word);
        let others = same_meaning(word, &typed);
        for entry in &self.entries {
            let itself = typed.stands_for(&entry.word, entry.signs);
            let other = others.iter().find(|(other, _)| **other == *entry.word);
            let Some(quality) = itself.max(other.map(|(_, quality)| *quality)) else { continue };
            for &(thing, weight) in &entry.stands_in {
                let hit = &mut hits[thing as usize];
                hit.quality = hit.quality.max(quality);
                // Squared, so that an error in a name counts for less than another word as it stands.
                let quality = u32::from(quality);
                hit.score = hit.score.max(quality * quality * u32::from(weight));
            }
        }
        hits
    }
}

impl Hit {
    /// Both words answered.
    fn and(self, other: Self) -> Self {
        if self.quality == 0 || other.quality == 0 {
            return Self::default();
        }
        Self { quality: self.quality.min(other.quality), score: self.score + other.score }
    }
}

/// The pieces of one word: all must be answered, and weigh as one.
fn together(pieces: impl Iterator<Item = Hit>) -> Hit {
    let mut count = 0;
    let mut sum = Hit { quality: Quality::MAX, score: 0 };
    for piece in pieces {
        sum = sum.and(piece);
        count += 1;
    }
    Hit { score: sum.score.checked_div(count).unwrap_or_default(), ..sum }
}

/// The words of the same meaning, with how well they answer.
fn same_meaning(word: &str, typed: &Typed<'_>) -> Vec<(&'static str, Quality)> {
    let mut others = Vec::new();
    for row in if IS_GERMAN { german::SYNONYMS } else { synonyms::ENGLISH } {
        let best = row.iter().filter_map(|synonym| {
            let quality = typed.stands_for(synonym, signs(synonym));
            quality.filter(|_| word.len() >= LEAST_MEANING || *synonym == word)
        });
        if let Some(quality) = best.max() {
            others.extend(row.iter().map(|synonym| (*synonym, quality - SAME_MEANING)));
        }
    }
    others
}
