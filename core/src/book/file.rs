//! The book as one file: JSON that a person can read, to carry away and to join with another.

use super::{Book, Entry, FORMAT, written};
use serde::Deserialize;
use serde_json::value::RawValue;
use std::fmt;

const KIND: &str = "pitleaf book";

#[derive(Deserialize)]
struct In<'text> {
    file: String,
    format: u32,
    #[serde(borrow)]
    entries: Vec<&'text RawValue>,
}

/// Why a file was not taken in. Nothing of it was.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum FileFault {
    /// Larger than any book.
    TooLarge,
    /// No JSON of ours.
    NotABook,
    /// Written by a newer version.
    Newer,
    /// One of its entries can't be read: which, counted from 1.
    Entry(usize, written::Damage),
}

impl fmt::Display for FileFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::TooLarge => f.write_str("Nothing taken in: the file is larger than any book. Choose the one saved by “Save as a file”."),
            Self::NotABook => f.write_str("Nothing taken in: this file is no book. Choose one saved by “Save as a file”."),
            Self::Newer => f.write_str("Nothing taken in: a newer Pitleaf wrote this book. Bring this one up to date first."),
            Self::Entry(number, damage) => write!(f, "Nothing taken in: entry {number} of the file is {damage}. Save the file anew from its phone."),
        }
    }
}

impl std::error::Error for FileFault {}

/// The largest file taken in, in bytes.
pub const MOST: usize = 48 << 20;

/// The whole book as a file's text: one entry a line, so that a person can read and compare it.
///
/// # Errors
/// None in practice: every entry has a JSON form. The error is serde's.
pub fn write(book: &Book) -> Result<String, serde_json::Error> {
    let mut text = format!("{{\"file\":\"{KIND}\",\"format\":{FORMAT},\"entries\":[");
    for (index, entry) in book.entries().enumerate() {
        text.push_str(if index == 0 { "\n" } else { ",\n" });
        text.push_str(&serde_json::to_string(entry)?);
    }
    text.push_str("\n]}\n");
    Ok(text)
}

/// The entries of a file's text: all of them, or none.
///
/// # Errors
/// The first [`FileFault`].
pub fn read(text: &str) -> Result<Vec<Entry>, FileFault> {
    if text.len() > MOST {
        return Err(FileFault::TooLarge);
    }
    let read: In<'_> = serde_json::from_str(text).map_err(|_| FileFault::NotABook)?;
    if read.file != KIND {
        return Err(FileFault::NotABook);
    }
    if read.format > FORMAT {
        return Err(FileFault::Newer);
    }
    read.entries
        .iter()
        .enumerate()
        .map(|(index, raw)| {
            written::read(raw.get()).map_err(|damage| FileFault::Entry(index + 1, damage))
        })
        .collect()
}
