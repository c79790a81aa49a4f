//! The fold: entries in any order, any number of times → the same book.

use super::{BuildId, Entry, EntryId, Fact, Figure, Slot};
use crate::limits::{BuildKind, Row, Sheet};
use std::collections::{BTreeMap, HashMap};

/// An entry's place in the book: its order, then its id where two phones wrote at once.
#[derive(Clone, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
struct Place(u64, EntryId);

/// What a history is kept of.
#[derive(Clone, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Subject {
    /// A row measured at a place.
    Figure(String, String),
    /// A slot's mark.
    Mark(Slot),
    /// A slot's mark, drawn.
    Drawing(Slot),
    /// Trials in a slot, and fresh seals taken for it.
    Seal(Slot),
    /// The feeler leaves on the bench.
    Leaves,
    /// Whether a slot's seal is fitted.
    Fitted(Slot),
    /// The order a joint is tightened in.
    TighteningOrder(String),
    /// The passes of a joint.
    Tightened(String),
    /// Whether the upper dowels are solid.
    Dowels,
    /// The outside oil feed.
    OilFeed,
    /// A limit of the builder's own.
    Limit(String),
}

impl Fact {
    /// What the fact adds a value to; none for notes and for facts about entries.
    #[must_use]
    pub fn subject(&self) -> Option<Subject> {
        match self {
            Self::Figure(figure) => Some(Subject::Figure(figure.row.clone(), figure.place.clone())),
            Self::Mark { slot, .. } => Some(Subject::Mark(*slot)),
            Self::Drawing { slot, .. } => Some(Subject::Drawing(*slot)),
            Self::Trial { slot, .. } | Self::FreshSeal { slot } => Some(Subject::Seal(*slot)),
            Self::Leaves(_) => Some(Subject::Leaves),
            Self::Fitted { slot, .. } => Some(Subject::Fitted(*slot)),
            Self::TighteningOrder { joint, .. } => Some(Subject::TighteningOrder(joint.clone())),
            Self::Tightened { joint, .. } => Some(Subject::Tightened(joint.clone())),
            Self::DowelsSolid { .. } => Some(Subject::Dowels),
            Self::OilFeed { .. } => Some(Subject::OilFeed),
            Self::Limit(row) => Some(Subject::Limit(row.id.clone())),
            Self::Opened { .. }
            | Self::Note { .. }
            | Self::Withdrawn { .. }
            | Self::Restored { .. } => None,
        }
    }
}

/// All entries known, and what they add up to.
#[derive(Clone, Debug, Default)]
pub struct Book {
    entries: BTreeMap<Place, Entry>,
    places: HashMap<EntryId, Place>,
    /// The latest word on an entry: where it was said, and whether it says withdrawn.
    withdrawals: HashMap<EntryId, (Place, bool)>,
    builds: BTreeMap<BuildId, Build>,
}

/// What a build’s entries add up to.
#[derive(Clone, Debug, Default)]
struct Build {
    histories: BTreeMap<Subject, Vec<Place>>,
    lines: Vec<Place>,
}

/// An entry with what later entries made of it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Line<'book> {
    /// The entry.
    pub entry: &'book Entry,
    /// Whether it was withdrawn, and not restored since.
    pub withdrawn: bool,
}

impl Book {
    /// Takes an entry in. One with a known id changes nothing.
    ///
    /// Returns whether it was new.
    pub fn take(&mut self, entry: Entry) -> bool {
        if self.places.contains_key(&entry.id) {
            return false;
        }
        let place = Place(entry.order, entry.id.clone());
        self.places.insert(entry.id.clone(), place.clone());
        match &entry.fact {
            Fact::Withdrawn { entry } => self.say_withdrawn(entry, &place, true),
            Fact::Restored { entry } => self.say_withdrawn(entry, &place, false),
            _ => {}
        }
        let build = self.builds.entry(entry.build.clone()).or_default();
        put_in_order(&mut build.lines, place.clone());
        if let Some(subject) = entry.fact.subject() {
            put_in_order(build.histories.entry(subject).or_default(), place.clone());
        }
        self.entries.insert(place, entry);
        true
    }

    fn say_withdrawn(&mut self, entry: &EntryId, place: &Place, withdrawn: bool) {
        let word =
            self.withdrawals.entry(entry.clone()).or_insert_with(|| (place.clone(), withdrawn));
        if word.0 < *place {
            *word = (place.clone(), withdrawn);
        }
    }

    /// The order the next entry is to carry.
    #[must_use]
    pub fn next_order(&self) -> u64 {
        self.entries.last_key_value().map_or(1, |(place, _)| place.0.saturating_add(1))
    }

    /// How many entries there are.
    #[must_use]
    pub fn len(&self) -> usize {
        self.entries.len()
    }

    /// No entry at all.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.entries.is_empty()
    }

    /// The entry with an id.
    #[must_use]
    pub fn entry(&self, id: &EntryId) -> Option<&Entry> {
        self.entries.get(self.places.get(id)?)
    }

    /// Every entry, in order.
    pub fn entries(&self) -> impl DoubleEndedIterator<Item = &Entry> {
        self.entries.values()
    }

    /// Whether an entry is withdrawn.
    #[must_use]
    pub fn is_withdrawn(&self, id: &EntryId) -> bool {
        self.withdrawals.get(id).is_some_and(|(_, withdrawn)| *withdrawn)
    }

    /// The builds that were opened and not withdrawn, the last opened first.
    #[must_use]
    pub fn builds(&self) -> Vec<BuildId> {
        let mut opened: Vec<&Place> = self
            .builds
            .keys()
            .filter_map(|id| self.places.get(id))
            .filter(|place| self.opening(&place.1).is_some())
            .collect();
        opened.sort();
        opened.into_iter().rev().map(|place| place.1.clone()).collect()
    }

    /// How a build was opened: name, kind, rotors, demo. None if it wasn't, or that was withdrawn.
    #[must_use]
    pub fn opening(&self, build: &BuildId) -> Option<(&str, BuildKind, u8, bool)> {
        if self.is_withdrawn(build) {
            return None;
        }
        match &self.entry(build)?.fact {
            Fact::Opened { name, kind, rotors, demo } => Some((name, *kind, *rotors, *demo)),
            _ => None,
        }
    }

    /// A build's entries, the latest last, withdrawn ones among them.
    pub fn lines(&self, build: &BuildId) -> impl DoubleEndedIterator<Item = Line<'_>> {
        self.builds
            .get(build)
            .into_iter()
            .flat_map(|build| &build.lines)
            .filter_map(|place| self.line(place))
    }

    /// Every value a subject ever had in a build, the latest last, withdrawn ones among them.
    pub fn history(
        &self,
        build: &BuildId,
        subject: &Subject,
    ) -> impl DoubleEndedIterator<Item = Line<'_>> {
        self.builds
            .get(build)
            .and_then(|build| build.histories.get(subject))
            .into_iter()
            .flatten()
            .filter_map(|place| self.line(place))
    }

    /// The value in force of a subject: the latest that is not withdrawn.
    #[must_use]
    pub fn current(&self, build: &BuildId, subject: &Subject) -> Option<&Entry> {
        self.history(build, subject).rev().find(|line| !line.withdrawn).map(|line| line.entry)
    }

    /// The figure in force of a row at a place.
    #[must_use]
    pub fn figure(&self, build: &BuildId, row: &str, place: &str) -> Option<&Figure> {
        match &self.current(build, &Subject::Figure(row.to_owned(), place.to_owned()))?.fact {
            Fact::Figure(figure) => Some(figure),
            _ => None,
        }
    }

    /// A slot's mark in force.
    #[must_use]
    pub fn mark(&self, build: &BuildId, slot: Slot) -> Option<&str> {
        match &self.current(build, &Subject::Mark(slot))?.fact {
            Fact::Mark { mark, .. } => Some(mark),
            _ => None,
        }
    }

    /// Whether a slot's seal is fitted.
    #[must_use]
    pub fn is_fitted(&self, build: &BuildId, slot: Slot) -> bool {
        matches!(
            self.current(build, &Subject::Fitted(slot)).map(|entry| &entry.fact),
            Some(Fact::Fitted { fitted: true, .. })
        )
    }

    /// The limit rows of the builder's own in force, over all builds: a sheet belongs to the shop.
    pub fn own_limits(&self) -> impl Iterator<Item = &Row> {
        self.entries.values().filter(|entry| !self.is_withdrawn(&entry.id)).filter_map(|entry| {
            match &entry.fact {
                Fact::Limit(row) => Some(&**row),
                _ => None,
            }
        })
    }

    /// The sheet in force: the starter sheet with the builder's own rows put in, the latest last.
    #[must_use]
    pub fn sheet(&self) -> Sheet {
        let mut sheet = Sheet::starter();
        for row in self.own_limits().filter(|row| row.faults().is_empty()) {
            sheet.put(row.clone());
        }
        sheet
    }

    fn line(&self, place: &Place) -> Option<Line<'_>> {
        self.entries.get(place).map(|entry| Line { entry, withdrawn: self.is_withdrawn(&entry.id) })
    }
}

fn put_in_order(places: &mut Vec<Place>, place: Place) {
    let at = places.partition_point(|old| *old < place);
    places.insert(at, place);
}
