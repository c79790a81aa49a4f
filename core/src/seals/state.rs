//! What a book's entries say of each slot: its trials, its gap, and how far its seal has come.

use super::{Answer, Bracket, Contradiction, Drawing, History, Leaf, LeafSet, Stage, Trial};
use crate::book::{Book, BuildId, Entry, EntryId, Fact, Figure, Slot, Subject};
use crate::limits::{BuildKind, Call, Part, Row, Sheet, Side};
use crate::quantity::Unit;
use pitleaf_translated::translated;

/// How far a slot's seal has come.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum SlotState {
    /// Nothing is known of the gap.
    NotMeasured,
    /// Too tight: to be ground.
    ToGrind,
    /// Something is known, but not whether it meets the limit.
    Undecided,
    /// Two trials can't both be right.
    Disagree,
    /// Proved inside the limit.
    Fits,
    /// Proved too wide.
    TooWide,
    /// In its slot for good, its gap proved.
    Fitted,
    /// In its slot, although proved too tight.
    FittedTooTight,
    /// In its slot, although proved too wide.
    FittedTooWide,
    /// In its slot, although nothing proves the gap, or trials disagree.
    FittedUnproved,
}

impl SlotState {
    /// Every state, in the order a seal goes through them.
    pub const ALL: [Self; 10] = [
        Self::NotMeasured,
        Self::ToGrind,
        Self::Undecided,
        Self::Disagree,
        Self::Fits,
        Self::TooWide,
        Self::Fitted,
        Self::FittedTooTight,
        Self::FittedTooWide,
        Self::FittedUnproved,
    ];

    /// In words.
    #[must_use]
    #[translated]
    pub fn name(self) -> &'static str {
        match self {
            Self::NotMeasured => "not measured",
            Self::ToGrind => "to be ground",
            Self::Undecided => "can’t say yet",
            Self::Disagree => "trials disagree",
            Self::Fits => "fits",
            Self::TooWide => "too wide",
            Self::Fitted => "fitted",
            Self::FittedTooTight => "fitted, too tight",
            Self::FittedTooWide => "fitted, too wide",
            Self::FittedUnproved => "fitted, gap not proved",
        }
    }

    /// Whether the seal is in its slot.
    #[must_use]
    pub fn is_fitted(self) -> bool {
        matches!(self, Self::Fitted | Self::FittedUnproved) || self.is_fitted_past()
    }

    /// Whether the seal is in its slot although its gap is proved too tight or too wide.
    #[must_use]
    pub fn is_fitted_past(self) -> bool {
        matches!(self, Self::FittedTooTight | Self::FittedTooWide)
    }

    /// How the gap stands against its limit; none where nothing is known or trials disagree.
    #[must_use]
    pub fn call(self) -> Option<Call> {
        Some(match self {
            Self::ToGrind => Call::DoesNotMeet(Side::Below),
            Self::TooWide => Call::DoesNotMeet(Side::Above),
            Self::Fits => Call::Meets,
            Self::Undecided => Call::TooClose,
            _ => return None,
        })
    }
}

/// A slot as the book has it.
#[derive(Clone, Debug, PartialEq)]
pub struct SlotReport<'book> {
    /// Which slot.
    pub slot: Slot,
    /// How far its seal has come.
    pub state: SlotState,
    /// How its gap stands, whether the seal is in the slot or not.
    pub gap_state: SlotState,
    /// The trials of the seal now in hand, the oldest first, with the entries they stand in.
    pub trials: Vec<(&'book EntryId, &'book Trial)>,
    /// What they add up to.
    pub history: Result<History, Contradiction>,
    /// The gap as typed straight from a gauge, where that is later than any trial.
    pub measured: Option<&'book Figure>,
    /// The builder's mark in words.
    pub mark: Option<&'book str>,
    /// The builder's mark as drawn.
    pub drawing: Option<&'book Drawing>,
}

impl SlotReport<'_> {
    /// What is known of the gap in as few signs as it takes; empty where nothing is.
    #[must_use]
    pub fn gap(&self, unit: Unit) -> String {
        match self.measured {
            Some(figure) => figure.shown(),
            None if self.trials.is_empty() => String::new(),
            None => self.bracket().short(unit),
        }
    }

    /// The gap as it is now; open where nothing is known or trials disagree.
    #[must_use]
    pub fn bracket(&self) -> Bracket {
        self.history.as_ref().map(History::now).unwrap_or_default()
    }
}

/// How the ids of the rows begin that a side seal's gap is held against.
pub const SIDE_SEAL_GAP: &str = "side-seal-gap";

/// The row that a side seal's gap is held against in a build of this kind.
#[must_use]
pub fn gap_row(sheet: &Sheet, kind: BuildKind) -> Option<&Row> {
    sheet.of_part(Part::SideSeal, kind).find(|row| row.id.starts_with(SIDE_SEAL_GAP))
}

/// What a build's entries say of a slot, against the gap's limit row, with the gauges of the sheet.
#[must_use]
pub fn slot_report<'book>(
    book: &'book Book,
    build: &BuildId,
    slot: Slot,
    sheet: &Sheet,
    row: &Row,
) -> SlotReport<'book> {
    let trials = trials(book, build, slot);
    let history =
        History::of(&trials.iter().map(|(_, trial)| (*trial).clone()).collect::<Vec<_>>());
    let drawing = book.drawing(build, slot);
    // The latest word counts: a fresh seal is not measured yet.
    let last = |subject: &Subject| book.current(build, subject).map(Entry::place);
    let seal = last(&Subject::Seal(slot));
    let figure = last(&Subject::Figure(row.id.clone(), slot.to_string()));
    let measured =
        if figure > seal { book.figure(build, &row.id, &slot.to_string()) } else { None };
    let is_fitted = book.is_fitted(build, slot);
    let gap_state = if let Some(figure) = measured {
        state_by(figure, sheet, row)
    } else if trials.is_empty() {
        SlotState::NotMeasured
    } else {
        match &history {
            Err(_) => SlotState::Disagree,
            Ok(history) => match history.now().against(&row.limit).answer() {
                Answer::Meets => SlotState::Fits,
                Answer::TooTight => SlotState::ToGrind,
                Answer::TooWide => SlotState::TooWide,
                Answer::CannotSay => SlotState::Undecided,
            },
        }
    };
    let state = match (is_fitted, gap_state) {
        (false, gap) => gap,
        (true, SlotState::Fits) => SlotState::Fitted,
        (true, SlotState::ToGrind) => SlotState::FittedTooTight,
        (true, SlotState::TooWide) => SlotState::FittedTooWide,
        (true, _) => SlotState::FittedUnproved,
    };
    let mark = book.mark(build, slot);
    SlotReport { slot, state, gap_state, trials, history, measured, mark, drawing }
}

/// The state by a gap typed straight from a gauge, later than any trial.
fn state_by(figure: &Figure, sheet: &Sheet, row: &Row) -> SlotState {
    let judged = figure.reading().ok().and_then(|gap| sheet.judge(row, &gap, figure.gauge));
    match judged.map(|judged| judged.verdict.call) {
        Some(Call::Meets) => SlotState::Fits,
        Some(Call::DoesNotMeet(Side::Below)) => SlotState::ToGrind,
        Some(Call::DoesNotMeet(Side::Above)) => SlotState::TooWide,
        Some(Call::TooClose) | None => SlotState::Undecided,
    }
}

/// The trials of the seal now in hand: those since the last fresh seal, withdrawn ones left out.
#[must_use]
pub fn trials<'book>(
    book: &'book Book,
    build: &BuildId,
    slot: Slot,
) -> Vec<(&'book EntryId, &'book Trial)> {
    seals_of(book, build, slot).pop().unwrap_or_default()
}

/// The trials of each seal a slot has had, the one in hand last.
fn seals_of<'book>(
    book: &'book Book,
    build: &BuildId,
    slot: Slot,
) -> Vec<Vec<(&'book EntryId, &'book Trial)>> {
    let mut seals = vec![Vec::new()];
    for line in book.history(build, &Subject::Seal(slot)).filter(|line| !line.withdrawn) {
        match &line.entry.fact {
            Fact::FreshSeal { .. } => seals.push(Vec::new()),
            Fact::Trial { seen, .. } => {
                if let Some(seal) = seals.last_mut() {
                    seal.push((&line.entry.id, seen));
                }
            }
            _ => {}
        }
    }
    seals
}

/// The unit of the leaf last tried in any slot of a build: the leaves in the builder's hand.
#[must_use]
pub fn last_leaf_unit(book: &Book, build: &BuildId) -> Option<Unit> {
    let mut lines = book.lines(build).rev().filter(|line| !line.withdrawn);
    lines.find_map(|line| match &line.entry.fact {
        Fact::Trial { seen, .. } => seen.leaves()?.leaves().first().map(Leaf::unit),
        _ => None,
    })
}

/// Every grinding of a build with the gaps before and after, seal by seal over all slots: what tells how fast the hand is.
///
/// A seal whose trials disagree tells nothing.
#[must_use]
pub fn stages(book: &Book, build: &BuildId, rotors: u8) -> Vec<Vec<Stage>> {
    Slot::of_engine(rotors)
        .into_iter()
        .flat_map(|slot| seals_of(book, build, slot))
        .filter_map(|seal| {
            History::of(&seal.into_iter().map(|(_, trial)| trial.clone()).collect::<Vec<_>>()).ok()
        })
        .map(|history| history.stages())
        .collect()
}

/// Every slot of a build, front to rear.
#[must_use]
pub fn engine_report<'book>(
    book: &'book Book,
    build: &BuildId,
    rotors: u8,
    sheet: &Sheet,
    row: &Row,
) -> Vec<SlotReport<'book>> {
    Slot::of_engine(rotors)
        .into_iter()
        .map(|slot| slot_report(book, build, slot, sheet, row))
        .collect()
}

/// The leaf set in force: the last entered in any build, since leaves belong to the shop.
#[must_use]
pub fn leaf_set(book: &Book) -> Option<&LeafSet> {
    book.of_the_shop().rev().find_map(|entry| match &entry.fact {
        Fact::Leaves(set) => Some(set),
        _ => None,
    })
}
