//! The fold: entries in any order, any number of times → the same book.

use super::written::record;
use super::{BuildId, Entry, EntryId, Fact, Figure, Slot};
use crate::faces::report::SpacerChoice;
use crate::faces::{ReadingSet, Survey};
use crate::limits::{BuildKind, Gauge, GaugeKind, Row, Sheet};
use crate::ports::{PortName, SideHousing};
use crate::seals::Drawing;
use rustc_hash::FxHashMap;

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
    /// A survey of a piece.
    Readings(Survey, String),
    /// The spacer chosen for the end play.
    Spacer,
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
    /// The engine's measures.
    Engine,
    /// How a side housing is looked at.
    PortFace(SideHousing),
    /// A port's outline.
    Outline(PortName),
    /// The holes a side housing's template is laid on by.
    Datums(SideHousing),
    /// A limit of the builder's own.
    Limit(String),
    /// Something of the order of work, as it names it.
    Route(String),
    /// Whether the build is signed off.
    SignOff,
    /// The gauge of a kind.
    Gauge(GaugeKind),
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
            Self::Readings(set) => Some(Subject::Readings(set.of, set.piece.clone())),
            Self::Spacer(_) => Some(Subject::Spacer),
            Self::Fitted { slot, .. } => Some(Subject::Fitted(*slot)),
            Self::TighteningOrder { joint, .. } => Some(Subject::TighteningOrder(joint.clone())),
            Self::Tightened { joint, .. } => Some(Subject::Tightened(joint.clone())),
            Self::DowelsSolid { .. } => Some(Subject::Dowels),
            Self::OilFeed { .. } => Some(Subject::OilFeed),
            Self::Engine(_) => Some(Subject::Engine),
            Self::PortFace(face) => Some(Subject::PortFace(face.view.housing)),
            Self::Outline(outline) => Some(Subject::Outline(outline.port)),
            Self::Datums(datums) => Some(Subject::Datums(datums.housing)),
            Self::Limit(row) | Self::BuildLimit(row) => Some(Subject::Limit(row.id.clone())),
            Self::Gauge { kind, .. } => Some(Subject::Gauge(*kind)),
            Self::Route(fact) => Some(Subject::Route(fact.subject())),
            Self::SignedOff { .. } | Self::Reopened { .. } => Some(Subject::SignOff),
            Self::Opened { .. }
            | Self::FaceWork(_)
            | Self::Note { .. }
            | Self::Withdrawn { .. }
            | Self::Restored { .. } => None,
        }
    }
}

impl Fact {
    /// Whether it belongs to the shop and holds for every build.
    #[must_use]
    pub fn is_of_the_shop(&self) -> bool {
        matches!(self, Self::Limit(_) | Self::Leaves(_) | Self::Gauge { .. } | Self::FaceWork(_))
            || matches!(self, Self::Readings(set) if set.of == Survey::Spacers)
    }
}

/// All entries known, and what they add up to.
///
/// Entries lie in the order they came in; every list holds their numbers, sorted by the order they
/// carry, then by id where two phones wrote at once.
#[derive(Clone, Debug, Default)]
pub struct Book {
    entries: Vec<Entry>,
    numbers: FxHashMap<EntryId, u32>,
    /// What was said of an entry's withdrawal, the latest word last.
    withdrawals: FxHashMap<EntryId, Vec<u32>>,
    builds: FxHashMap<BuildId, Build>,
    /// What belongs to the shop and holds for every build.
    of_the_shop: Vec<u32>,
    last_order: u64,
}

/// What a build’s entries add up to.
#[derive(Clone, Debug, Default)]
struct Build {
    histories: FxHashMap<Subject, Vec<u32>>,
    lines: Vec<u32>,
    /// Limits for this build alone.
    limits: Vec<u32>,
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
    /// An empty book that so many entries fit into before it must move house.
    #[must_use]
    pub fn with_room_for(entries: usize) -> Self {
        let mut book = Self::default();
        book.entries.reserve(entries);
        book.numbers.reserve(entries);
        book
    }

    /// Takes an entry in. One that is known already changes nothing.
    ///
    /// Ids are made once, so two different entries of one id mean that one was tampered with. The book
    /// then keeps the one whose written form sorts last, whichever came first, so that two phones that
    /// know both agree.
    ///
    /// Returns whether the book changed.
    pub fn take(&mut self, entry: Entry) -> bool {
        match self.entry(&entry.id) {
            None => {
                self.put(entry);
                true
            }
            Some(known) if *known == entry || record(known) >= record(&entry) => false,
            Some(_) => {
                let mut entries = std::mem::take(self).entries;
                entries.retain(|known| known.id != entry.id);
                entries.push(entry);
                entries.into_iter().for_each(|entry| self.put(entry));
                true
            }
        }
    }

    fn put(&mut self, entry: Entry) {
        // Far beyond what a phone can hold; an entry past it would take the last one's number.
        let number = u32::try_from(self.entries.len()).unwrap_or(u32::MAX);
        self.last_order = self.last_order.max(entry.order);
        self.numbers.insert(entry.id.clone(), number);
        self.entries.push(entry);
        let (entries, entry) = (&self.entries, &self.entries[number as usize]);
        if let Fact::Withdrawn { entry } | Fact::Restored { entry } = &entry.fact {
            put_in_order(entries, self.withdrawals.entry(entry.clone()).or_default(), number);
        }
        if entry.fact.is_of_the_shop() {
            put_in_order(entries, &mut self.of_the_shop, number);
        }
        // Nearly every entry is of a build that is known: one look, and no copy of its id.
        let build = match self.builds.get_mut(&entry.build) {
            Some(build) => build,
            None => self.builds.entry(entry.build.clone()).or_default(),
        };
        put_in_order(entries, &mut build.lines, number);
        if matches!(entry.fact, Fact::BuildLimit(_)) {
            put_in_order(entries, &mut build.limits, number);
        }
        if let Some(subject) = entry.fact.subject() {
            put_in_order(entries, build.histories.entry(subject).or_default(), number);
        }
    }

    /// The order the next entry is to carry.
    #[must_use]
    pub fn next_order(&self) -> u64 {
        self.last_order.saturating_add(1)
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
        self.numbers.get(id).map(|&number| &self.entries[number as usize])
    }

    /// Every entry, in order.
    pub fn entries(&self) -> impl DoubleEndedIterator<Item = &Entry> {
        let mut entries: Vec<&Entry> = self.entries.iter().collect();
        entries.sort_by_key(|entry| entry.place());
        entries.into_iter()
    }

    /// Whether an entry is withdrawn.
    #[must_use]
    pub fn is_withdrawn(&self, id: &EntryId) -> bool {
        let last = self.withdrawals.get(id).and_then(|words| words.last());
        last.is_some_and(|&number| {
            matches!(self.entries[number as usize].fact, Fact::Withdrawn { .. })
        })
    }

    /// The builds that were opened and not withdrawn, the last opened first.
    #[must_use]
    pub fn builds(&self) -> Vec<BuildId> {
        let mut opened: Vec<&Entry> = self
            .builds
            .keys()
            .filter(|id| self.opening(id).is_some())
            .filter_map(|id| self.entry(id))
            .collect();
        opened.sort_by_key(|entry| std::cmp::Reverse(entry.place()));
        opened.into_iter().map(|entry| entry.id.clone()).collect()
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

    /// Whether a build is signed off, and so read-only until it is reopened.
    #[must_use]
    pub fn is_signed_off(&self, build: &BuildId) -> bool {
        let last = self.current(build, &Subject::SignOff);
        last.is_some_and(|entry| matches!(entry.fact, Fact::SignedOff { .. }))
    }

    /// A build's entries, the latest last, withdrawn ones among them.
    pub fn lines(&self, build: &BuildId) -> impl DoubleEndedIterator<Item = Line<'_>> {
        self.builds
            .get(build)
            .into_iter()
            .flat_map(|build| &build.lines)
            .map(|&number| self.line(number))
    }

    /// Every value a subject ever had in a build, the latest last, withdrawn ones among them.
    pub fn history(
        &self,
        build: &BuildId,
        subject: &Subject,
    ) -> impl DoubleEndedIterator<Item = Line<'_>> {
        let build = self.builds.get(build);
        let history = build.and_then(|build| build.histories.get(subject));
        history.into_iter().flatten().map(|&number| self.line(number))
    }

    /// The value in force of a subject: the latest that is not withdrawn.
    #[must_use]
    pub fn current(&self, build: &BuildId, subject: &Subject) -> Option<&Entry> {
        self.history(build, subject).rev().find(|line| !line.withdrawn).map(|line| line.entry)
    }

    /// The figure in force of a row at a place.
    #[must_use]
    pub fn figure(&self, build: &BuildId, row: &str, place: &str) -> Option<&Figure> {
        let subject = Subject::Figure(row.to_owned(), place.to_owned());
        match &self.current(build, &subject)?.fact {
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

    /// A slot's mark as drawn, in force.
    #[must_use]
    pub fn drawing(&self, build: &BuildId, slot: Slot) -> Option<&Drawing> {
        match &self.current(build, &Subject::Drawing(slot))?.fact {
            Fact::Drawing { drawing, .. } => Some(drawing),
            _ => None,
        }
    }

    /// Whether a slot's seal is fitted: the seal in hand, not one that a fresh seal has replaced since.
    #[must_use]
    pub fn is_fitted(&self, build: &BuildId, slot: Slot) -> bool {
        let is_fresh =
            |line: &Line<'_>| !line.withdrawn && matches!(line.entry.fact, Fact::FreshSeal { .. });
        let fresh = self.history(build, &Subject::Seal(slot)).rev().find(is_fresh);
        let last = self.current(build, &Subject::Fitted(slot));
        last.is_some_and(|last| {
            matches!(last.fact, Fact::Fitted { fitted: true, .. })
                && fresh.is_none_or(|fresh| fresh.entry.place() < last.place())
        })
    }

    /// The readings in force of a survey on a piece. Spacers at hand belong to the shop: the latest of any
    /// build holds.
    #[must_use]
    pub fn readings(&self, build: &BuildId, of: Survey, piece: &str) -> Option<&ReadingSet> {
        if of == Survey::Spacers {
            return self.of_the_shop().rev().find_map(|entry| match &entry.fact {
                Fact::Readings(set) if set.of == of => Some(set),
                _ => None,
            });
        }
        match &self.current(build, &Subject::Readings(of, piece.to_owned()))?.fact {
            Fact::Readings(set) => Some(set),
            _ => None,
        }
    }

    /// The spacer chosen for the end play.
    #[must_use]
    pub fn spacer(&self, build: &BuildId) -> Option<&SpacerChoice> {
        match &self.current(build, &Subject::Spacer)?.fact {
            Fact::Spacer(choice) => Some(choice),
            _ => None,
        }
    }

    /// What belongs to the shop and holds for every build, the latest last, withdrawn ones left out.
    pub fn of_the_shop(&self) -> impl DoubleEndedIterator<Item = &Entry> {
        let lines = self.of_the_shop.iter().map(|&number| self.line(number));
        lines.filter(|line| !line.withdrawn).map(|line| line.entry)
    }

    /// What the sheet of a build is made of besides the rows that ship, what counts most last: what belongs
    /// to the shop, and then the limits of the build alone, unless one for every build was put in at it later.
    ///
    /// Without a build: what belongs to the shop.
    pub fn behind_sheet(&self, build: Option<&BuildId>) -> impl Iterator<Item = &Entry> {
        let limits = build
            .and_then(|build| self.builds.get(build))
            .into_iter()
            .flat_map(|build| &build.limits)
            .map(|&number| &self.entries[number as usize])
            .filter(|entry| {
                let subject = entry.fact.subject();
                subject.and_then(|subject| self.current(&entry.build, &subject)) == Some(entry)
            });
        self.of_the_shop().chain(limits)
    }

    /// The limit rows of the builder's own that hold for a build.
    pub fn own_limits(&self, build: Option<&BuildId>) -> impl Iterator<Item = &Row> {
        self.behind_sheet(build).filter_map(|entry| match &entry.fact {
            Fact::Limit(row) | Fact::BuildLimit(row) => Some(&**row),
            _ => None,
        })
    }

    /// The sheet that holds for every build: the starter sheet with the shop's own rows and gauges put in,
    /// the latest last.
    #[must_use]
    pub fn sheet(&self) -> Sheet {
        self.sheet_for(None)
    }

    /// The sheet in force for a build: the shop's, with the build's own limits put in.
    #[must_use]
    pub fn sheet_for(&self, build: Option<&BuildId>) -> Sheet {
        let mut sheet = Sheet::starter();
        for entry in self.behind_sheet(build) {
            match &entry.fact {
                Fact::Limit(row) | Fact::BuildLimit(row) if row.faults().is_empty() => {
                    sheet.put((**row).clone());
                }
                Fact::Gauge { kind, resolution, error } => {
                    sheet.put_gauge(Gauge::own(*kind, resolution, error));
                }
                _ => {}
            }
        }
        sheet
    }

    fn line(&self, number: u32) -> Line<'_> {
        let entry = &self.entries[number as usize];
        Line { entry, withdrawn: self.is_withdrawn(&entry.id) }
    }
}

/// Entries mostly come in order, so that most go to the end.
fn put_in_order(entries: &[Entry], numbers: &mut Vec<u32>, number: u32) {
    let new = entries[number as usize].place();
    let at = match numbers.last() {
        Some(&last) if entries[last as usize].place() > new => {
            numbers.partition_point(|&old| entries[old as usize].place() < new)
        }
        _ => numbers.len(),
    };
    numbers.insert(at, number);
}
