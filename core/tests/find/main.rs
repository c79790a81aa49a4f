//! One search over everything.

mod book;
mod errors;
mod index;
mod limits;
mod nothing;
mod ranking;
mod words;

use pitleaf_core::book::Book;
use pitleaf_core::find::{Finder, Found, Kind, Place};
use pitleaf_core::limits::Sheet;

/// Everything that can be found without a book.
fn tables() -> Finder {
    Finder::of(&Book::default(), None, &Sheet::starter())
}

/// What of one kind answers a question, best first.
fn of_kind<'finder>(finder: &'finder Finder, kind: Kind, query: &str) -> Vec<&'finder Found> {
    let groups = finder.find(query);
    groups.into_iter().find(|group| group.kind == kind).map(|group| group.found).unwrap_or_default()
}

/// The ids of the limits that answer a question.
fn limits<'finder>(finder: &'finder Finder, query: &str) -> Vec<&'finder str> {
    let found = of_kind(finder, Kind::Limit, query);
    let id = |found: &'finder Found| match &found.place {
        Place::Limit(id) => id.as_str(),
        other => panic!("a limit leads to {other:?}"),
    };
    found.into_iter().map(id).collect()
}
