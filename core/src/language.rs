//! The language the app is compiled in: English, or German with the feature `german`.
//!
//! Texts come translated out of the compiler (`pitleaf-translated`). Here is what else differs.

use crate::letters::lower;
use pitleaf_translated::tr;

/// Whether this is the German app.
pub const IS_GERMAN: bool = cfg!(feature = "german");

/// The language as browsers and voices know it (BCP 47).
pub const TAG: &str = if IS_GERMAN { "de-DE" } else { "en-GB" };

/// The language's own name for itself.
pub const NAME: &str = if IS_GERMAN { "Deutsch" } else { "English" };

/// The other language: its tag, its site as seen from this one's, and its own name for itself.
pub const OTHER: (&str, &str, &str) =
    if IS_GERMAN { ("en", "../", "English") } else { ("de", "de/", "Deutsch") };

/// What stands between whole units and tenths where a figure is shown. Both are read.
pub const DECIMAL_SIGN: &str = if IS_GERMAN { "," } else { "." };

/// A figure as it was typed or written, with the decimal sign of the language.
#[must_use]
pub fn figure(text: &str) -> String {
    if IS_GERMAN { text.replace('.', DECIMAL_SIGN) } else { text.to_owned() }
}

/// A name as it stands inside a sentence: in lower case, but for German nouns.
#[must_use]
pub fn inside(name: &str) -> String {
    if IS_GERMAN { name.to_owned() } else { lower(name) }
}

/// Parts of names that are keys in the book, and how they are said. A key is the same in every language.
const PARTS: &[(&str, &str)] = &[
    ("piece", tr!("piece")),
    ("Rotor", tr!("Rotor")),
    ("face", tr!("face")),
    ("spread over its faces", tr!("spread over its faces")),
    ("Between rotors", tr!("Between rotors")),
    ("highest mean less lowest", tr!("highest mean less lowest")),
    ("rotor", tr!("rotor")),
    ("front", tr!("front")),
    ("rear", tr!("rear")),
    ("intermediate", tr!("intermediate")),
    ("main", tr!("main")),
    ("flywheel", tr!("flywheel")),
    ("front end", tr!("front end")),
    ("rear end", tr!("rear end")),
    ("upper dowel", tr!("upper dowel")),
    ("lower dowel", tr!("lower dowel")),
    ("leading plug", tr!("leading plug")),
    ("trailing plug", tr!("trailing plug")),
    ("middle", tr!("middle")),
    ("along", tr!("along")),
    ("across", tr!("across")),
    ("up and down", tr!("up and down")),
    ("diagonal from", tr!("diagonal from")),
    ("to", tr!("to")),
    ("goes under", tr!("goes under")),
    ("does not", tr!("does not")),
    ("at least", tr!("at least")),
    ("under", tr!("under")),
    ("o’clock", tr!("o’clock")),
    ("land", tr!("land")),
    ("swept band", tr!("swept band")),
    ("row", tr!("row")),
    ("column", tr!("column")),
    ("place", tr!("place")),
    ("corner", tr!("corner")),
    ("flank", tr!("flank")),
    ("seal", tr!("seal")),
    ("strip", tr!("strip")),
    ("narrow end", tr!("narrow end")),
    ("wide end", tr!("wide end")),
    ("spacer", tr!("spacer")),
    ("reading", tr!("reading")),
    ("spacer that is in", tr!("spacer that is in")),
    ("flatness now", tr!("flatness now")),
    ("worst place", tr!("worst place")),
    ("under the highest", tr!("under the highest")),
    ("flatness wanted", tr!("flatness wanted")),
    ("case depth", tr!("case depth")),
    ("growth in hardening", tr!("growth in hardening")),
    ("finish after hardening", tr!("finish after hardening")),
    ("compound layer", tr!("compound layer")),
    ("least", tr!("least")),
    ("most", tr!("most")),
];

/// The most words of a part.
const LONGEST: usize = 4;

/// A key as it is said: `2 o’clock, land` stays so in English, and is `2 Uhr, Dichtsteg` in German. What
/// is no part of a key, such as a number, stays.
#[must_use]
pub fn said(key: &str) -> String {
    if !IS_GERMAN {
        return key.to_owned();
    }
    let pieces = key.split(", ").map(|piece| {
        let words: Vec<&str> = piece.split(' ').collect();
        let mut said: Vec<&str> = Vec::new();
        let mut at = 0;
        while at < words.len() {
            let known = (1..=LONGEST.min(words.len() - at)).rev().find_map(|count| {
                let part = words[at..at + count].join(" ");
                let (_, says) = PARTS.iter().find(|(name, _)| *name == part)?;
                Some((count, *says))
            });
            let (count, says) = known.unwrap_or((1, words[at]));
            said.push(says);
            at += count;
        }
        said.join(" ")
    });
    pieces.collect::<Vec<_>>().join(", ")
}
