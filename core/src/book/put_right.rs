//! Putting a figure right, and taking back what was written: nothing is overwritten, and the history shows both.

use super::{Book, Entry, EntryId, Fact, Figure};
use pitleaf_translated::translated;

/// What the book writes when a figure is put right: the new one, and the old one withdrawn with it.
#[must_use]
pub fn put_right(old: &EntryId, figure: Figure) -> Vec<Fact> {
    let figure = Figure { instead_of: Some(old.clone()), ..figure };
    vec![Fact::Figure(figure), Fact::Withdrawn { entry: old.clone() }]
}

impl Book {
    /// What takes entries back that were written together.
    ///
    /// One that withdrew another lets that hold again; any other is withdrawn.
    #[must_use]
    pub fn take_back(&self, ids: &[EntryId]) -> Vec<Fact> {
        let back = |id: &EntryId| match self.entry(id).map(|entry| &entry.fact) {
            Some(Fact::Withdrawn { entry }) => Fact::Restored { entry: entry.clone() },
            Some(Fact::Restored { entry }) => Fact::Withdrawn { entry: entry.clone() },
            _ => Fact::Withdrawn { entry: id.clone() },
        };
        ids.iter().map(back).collect()
    }

    /// What lets entries hold again that [`Self::take_back`] took back.
    #[must_use]
    pub fn hold_again(&self, ids: &[EntryId]) -> Vec<Fact> {
        let again = |id: &EntryId| match self.entry(id).map(|entry| &entry.fact) {
            Some(fact @ (Fact::Withdrawn { .. } | Fact::Restored { .. })) => fact.clone(),
            _ => Fact::Restored { entry: id.clone() },
        };
        ids.iter().map(again).collect()
    }

    /// The entry that puts a withdrawn one right; none where it was only withdrawn.
    #[must_use]
    pub fn put_right_by(&self, id: &EntryId) -> Option<&Entry> {
        let old = self.entry(id).filter(|_| self.is_withdrawn(id))?;
        let puts_right = |fact: &Fact| match fact {
            Fact::Figure(figure) => figure.instead_of.as_ref() == Some(id),
            _ => false,
        };
        let mut lines = self.lines(&old.build).rev().filter(|line| !line.withdrawn);
        lines.find(|line| puts_right(&line.entry.fact)).map(|line| line.entry)
    }

    /// What became of an entry that no longer counts; none while it counts.
    #[must_use]
    #[translated]
    pub fn fate(&self, id: &EntryId) -> Option<String> {
        if !self.is_withdrawn(id) {
            return None;
        }
        Some(match self.put_right_by(id).map(|entry| &entry.fact) {
            Some(Fact::Figure(figure)) => format!("put right by {}", figure.shown()),
            _ => "withdrawn".to_owned(),
        })
    }
}
