//! Joining books: what a file would bring, shown before anything is taken in.

use super::{Book, BuildId, Entry, EntryId, Subject};
use rustc_hash::FxHashSet;

/// What a file's entries would do to a book. Nothing is taken in yet.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Coming {
    /// Entries the book does not know, in order.
    pub new: Vec<Entry>,
    /// How many it knows already.
    pub known: usize,
    /// Ids of entries that say something else here, or elsewhere in the file: one of the two was
    /// tampered with. What is here stays.
    pub altered: Vec<EntryId>,
    /// Places where both books say something of their own. Both are kept, the later one is shown.
    pub conflicts: Vec<Conflict>,
}

/// Two values for one thing, written without knowing of each other.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Conflict {
    /// In which build.
    pub build: BuildId,
    /// Of what.
    pub subject: Subject,
    /// The value in force here.
    pub here: EntryId,
    /// The latest of the file.
    pub theirs: EntryId,
    /// The value in force once both are joined; the same as `here` where that is the later one.
    pub joined: EntryId,
}

/// What entries would bring to a book, the same in whichever order they stand.
///
/// An entry that stands in the file twice is new once and known once. Where the two say different
/// things, it is named among the altered, and of the two the one comes that [`Book::take`] would keep.
#[must_use]
pub fn coming(book: &Book, entries: Vec<Entry>) -> Coming {
    let mut coming = Coming::default();
    let mut new = Book::default();
    for entry in entries {
        let here = book.entry(&entry.id);
        match here.or_else(|| new.entry(&entry.id)) {
            Some(known) if *known == entry => coming.known += 1,
            Some(_) => {
                coming.altered.push(entry.id.clone());
                if here.is_none() {
                    new.take(entry);
                }
            }
            None => {
                new.take(entry);
            }
        }
    }
    coming.altered.sort();
    coming.altered.dedup();
    coming.new = new.entries().cloned().collect();
    coming.conflicts = conflicts(book, &new, &coming.new);
    coming
}

/// Where a new entry is about something of which the book has a value in force.
fn conflicts(book: &Book, file: &Book, new: &[Entry]) -> Vec<Conflict> {
    let mut asked = FxHashSet::default();
    let about: Vec<(BuildId, Subject, EntryId)> = new
        .iter()
        .filter_map(|entry| Some((entry.build.clone(), entry.fact.subject()?)))
        .filter(|about| asked.insert(about.clone()))
        .filter_map(|(build, subject)| {
            let here = book.current(&build, &subject)?.id.clone();
            Some((build, subject, here))
        })
        .collect();
    if about.is_empty() {
        return Vec::new();
    }
    let mut joined = book.clone();
    for entry in new {
        joined.take(entry.clone());
    }
    about
        .into_iter()
        .filter_map(|(build, subject, here)| {
            let theirs = file.history(&build, &subject).next_back()?.entry.id.clone();
            let joined = joined.current(&build, &subject)?.id.clone();
            Some(Conflict { build, subject, here, theirs, joined })
        })
        .collect()
}
