//! The book as one file: JSON that a person can read, to carry away and to join with another.

use super::{Book, Entry, FORMAT, written};
use crate::kept::{self, Json, Kept, Refused};
use pitleaf_translated::translated;
use std::fmt;

const KIND: &str = "pitleaf book";

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
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::TooLarge => f.write_str("Nothing taken in: the file is larger than any book. Choose the one saved by “Save as a file”."),
            Self::NotABook => f.write_str("Nothing taken in: this file is no book. Choose one saved by “Save as a file”."),
            Self::Newer => f.write_str("Nothing taken in: a newer Pitleaf wrote this book. Bring this one up to date first."),
            Self::Entry(number, damage @ (written::Damage::Limit(_) | written::Damage::Gauge)) => write!(f, "Nothing taken in: entry {number} of the file is {damage} Put it right on its phone, then save the file anew."),
            Self::Entry(number, damage) => write!(f, "Nothing taken in: entry {number} of the file is {damage}. Save the file anew from its phone."),
        }
    }
}

impl std::error::Error for FileFault {}

/// The largest file taken in, in bytes.
pub const MOST: usize = 48 << 20;

/// The whole book as a file's text: one entry a line, so that a person can read and compare it.
#[must_use]
pub fn write(book: &Book) -> String {
    let mut text = format!("{{\"file\":\"{KIND}\",\"format\":{FORMAT},\"entries\":[");
    for (index, entry) in book.entries().enumerate() {
        text.push_str(if index == 0 { "\n" } else { ",\n" });
        text.push_str(&kept::write(entry));
    }
    text.push_str("\n]}\n");
    text
}

/// The entries of a file's text: all of them, or none.
///
/// # Errors
/// The first [`FileFault`].
pub fn read(text: &str) -> Result<Vec<Entry>, FileFault> {
    if text.len() > MOST {
        return Err(FileFault::TooLarge);
    }
    let (mut entries, mut damaged) = (Vec::new(), None);
    let whole = Json::read_each(text, "entries", |json| {
        // After the first that can't be read, the rest only has to be JSON.
        if damaged.is_none() {
            match written::of_json(&json) {
                Ok(entry) => entries.push(entry),
                Err(damage) => damaged = Some(FileFault::Entry(entries.len() + 1, damage)),
            }
        }
    })
    .map_err(|_| FileFault::NotABook)?;
    let read = || {
        let fields = whole.fields()?;
        fields.at("entries").list()?;
        Ok::<_, Refused>((fields.at("file").text()? == KIND, u32::of_json(fields.at("format"))?))
    };
    match read() {
        Ok((true, format)) if format <= FORMAT => {}
        Ok((true, _)) => return Err(FileFault::Newer),
        _ => return Err(FileFault::NotABook),
    }
    damaged.map_or(Ok(entries), Err)
}
