//! Finding a row by any word the trade uses for it.

use super::Row;
use crate::gather::Gather;
use crate::letters;
use crate::order::InOrder;

/// The rows that answer a query, best first; none for an empty query.
///
/// Each word of the query must begin a word of the row, in any order. Words of the name count most.
#[must_use]
pub fn find<'rows>(rows: impl Iterator<Item = &'rows Row>, query: &str) -> Vec<&'rows Row> {
    let wanted = words(query);
    if wanted.is_empty() {
        return Vec::new();
    }
    let mut found: Vec<(u32, &Row)> =
        rows.filter_map(|row| Some((score(row, &wanted)?, row))).gather();
    found.order_by_key(|&(score, _)| std::cmp::Reverse(score));
    found.into_iter().map(|(_, row)| row).gather()
}

fn score(row: &Row, wanted: &[Vec<String>]) -> Option<u32> {
    const NAME: u32 = 8;
    const WORDS: u32 = 5;
    const PART: u32 = 3;
    const REST: u32 = 1;
    let fields = [
        (NAME, words(&row.what)),
        (WORDS, words(&row.words)),
        (PART, words(row.part.name())),
        (REST, words(row.gauge.name())),
    ];
    let one = |word: &String| {
        fields
            .iter()
            .flat_map(|(weight, field)| field.iter().flatten().map(move |have| (*weight, have)))
            .filter(|(_, have)| have.starts_with(word.as_str()))
            .map(|(weight, have)| weight * 2 + u32::from(have == word))
            .max()
    };
    // "side-seal" is asked for as "sideseal", or else as "side" and "seal", which weigh as one word.
    let asked = |forms: &Vec<String>| {
        let (joined, pieces) = forms.split_first()?;
        let parted = || {
            let sum: u32 = pieces.iter().map(one).sum::<Option<u32>>()?;
            sum.checked_div(u32::try_from(pieces.len()).ok()?)
        };
        one(joined).or_else(parted)
    };
    wanted.iter().map(asked).sum()
}

/// Lower-case words, each in all its forms, the joined one first: a hyphen both joins and parts
/// ("e-shaft" is "eshaft", "e" and "shaft").
fn words(text: &str) -> Vec<Vec<String>> {
    letters::lower(text)
        .split(|c: char| !letters::is_of_word(c) && c != '-')
        .map(|piece| {
            let pieces: Vec<&str> = piece.split('-').filter(|piece| !piece.is_empty()).gather();
            let joined = pieces.concat();
            let parted = if pieces.len() > 1 { pieces } else { Vec::new() };
            std::iter::once(joined).chain(parted.into_iter().map(str::to_owned)).gather()
        })
        .filter(|forms: &Vec<String>| !forms[0].is_empty())
        .gather()
}
