//! Finding a row by any word the trade uses for it.

use super::Row;

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
        rows.filter_map(|row| Some((score(row, &wanted)?, row))).collect();
    found.sort_by_key(|&(score, _)| std::cmp::Reverse(score));
    found.into_iter().map(|(_, row)| row).collect()
}

fn score(row: &Row, wanted: &[String]) -> Option<u32> {
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
    wanted
        .iter()
        .map(|word| {
            fields
                .iter()
                .flat_map(|(weight, field)| field.iter().map(move |have| (*weight, have)))
                .filter(|(_, have)| have.starts_with(word.as_str()))
                .map(|(weight, have)| weight * 2 + u32::from(have == word))
                .max()
        })
        .sum()
}

/// Lower-case words; a hyphen both joins and parts ("e-shaft" is found as "eshaft", "e" and "shaft").
fn words(text: &str) -> Vec<String> {
    let lower = text.to_lowercase();
    let mut found = Vec::new();
    for piece in
        lower.split(|c: char| !c.is_alphanumeric() && c != '-').filter(|piece| !piece.is_empty())
    {
        if piece.contains('-') {
            found.push(piece.replace('-', ""));
        } else {
            found.push(piece.to_owned());
        }
    }
    found
}
