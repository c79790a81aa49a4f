//! Where a build stands: what is done, what can be done now, and what is waiting for what.

use super::asked::asked;
use super::description::current;
use super::fact::{subject_left, subject_of_step};
use super::own_route::OwnRoute;
use super::{RouteFact, Routing, Stage, Station};
use crate::book::{Book, BuildId, Entry, EntryId, Fact, Subject, call};
use crate::faces::report::LAPPED_OFF;
use crate::faces::{Survey, is_lapped};
use crate::limits::{Call, Sheet};
use pitleaf_translated::{tr, translated};
use std::fmt;

/// How a station stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum State {
    /// Done, measured, or found true.
    Done,
    /// Can be done now.
    Ready,
    /// Other steps come first.
    Waiting,
    /// A hold comes first.
    Held,
}

impl State {
    /// Its word in the look of the page.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Done => "done",
            Self::Ready => "ready",
            Self::Waiting => "waiting",
            Self::Held => "held",
        }
    }

    /// Its name on the screen.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Done => tr!("done"),
            Self::Ready => tr!("ready"),
            Self::Waiting => tr!("waiting"),
            Self::Held => tr!("held"),
        }
    }
}

/// A station with what the book says of it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Standing {
    /// The station.
    pub station: Station,
    /// How it stands.
    pub state: State,
    /// The stations it waits for that are not done, holds first.
    pub open: Vec<usize>,
    /// The entry that says it was done by hand.
    pub done: Option<EntryId>,
    /// Who found it true, or did it; may be empty.
    pub who: String,
    /// When that was written down, in milliseconds since 1970; none where nobody marked it.
    pub at: Option<u64>,
    /// Why, where it was done over something open.
    pub why: String,
    /// What the book answers, for a hold that it answers.
    pub answer: String,
    /// The pieces it is read on.
    pub pieces: Vec<Piece>,
}

/// A piece that a station is read on.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Piece {
    /// Its name; empty where there is only one.
    pub name: String,
    /// Whether it was read.
    pub is_read: bool,
    /// The verdict; none where it was not read, or its row has no limit.
    pub call: Option<Call>,
}

/// A build's route with everything the book says of it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Progress {
    /// The route in force.
    pub routing: Routing,
    /// The stations, whatever one waits for before it.
    pub standings: Vec<Standing>,
    /// The last three steps done, the last first.
    pub last: Vec<usize>,
    /// The station the work was left at: where it was left, while that is still open; else the first that
    /// can be done behind the last one done. None when all is done.
    pub left_at: Option<usize>,
    /// Who was named last; empty where nobody was.
    pub who: String,
    /// Why the route of the build's own is not as it was written; none where it has none of its own.
    own_route: Option<String>,
}

/// Why a step was not marked.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Refusal {
    /// There is no such step in this build.
    Gone,
    /// Holds are open before it: their words.
    Held(Vec<String>),
    /// Other steps come before it: their words.
    Waiting(Vec<String>),
    /// The book itself says that it is not so: its words.
    Book(String),
    /// Not every piece was read: how many of how many.
    NotRead(usize, usize),
    /// A hold is found true by somebody.
    NoName,
}

impl Progress {
    /// Where a build stands; none for one that is not open in the book.
    ///
    /// A route of the builder's own that can't be read gives way to the usual one, and says so.
    #[must_use]
    pub fn of(book: &Book, build: &BuildId, sheet: &Sheet) -> Option<Self> {
        let (_, kind, rotors, _) = book.opening(build)?;
        let (routing, own_route) = match OwnRoute::of(book, build) {
            Some(OwnRoute { routing, fault }) => (routing, Some(fault)),
            None => (Routing::usual(), None),
        };
        let solid = solid_dowels(book, build);
        let mut standings: Vec<Standing> = Vec::new();
        for station in routing.stations(kind, rotors, solid) {
            let standing = standing(book, build, sheet, rotors, station, &standings);
            standings.push(standing);
        }
        let last = last_done(book, build, &standings);
        let left_at = left_at(book, build, &standings, last.first());
        let mut names = last.iter().map(|(place, _)| standings[*place].who.as_str());
        let who = names.find(|who| !who.is_empty()).unwrap_or_default().to_owned();
        let last = last.into_iter().map(|(place, _)| place).take(3).collect();
        Some(Self { routing, standings, last, left_at, who, own_route })
    }

    /// Whether the route is the builder's own.
    #[must_use]
    pub fn is_own_route(&self) -> bool {
        self.own_route.is_some()
    }

    /// Why the builder's own route could not be read; none where it could.
    #[must_use]
    pub fn route_fault(&self) -> Option<&str> {
        self.own_route.as_deref().filter(|fault| !fault.is_empty())
    }

    /// The station with a key.
    #[must_use]
    pub fn place(&self, key: &str) -> Option<usize> {
        self.standings.iter().position(|standing| standing.station.key() == key)
    }

    /// What can be done now, in the order of the work.
    pub fn ready(&self) -> impl Iterator<Item = usize> {
        (0..self.standings.len()).filter(|&place| self.standings[place].state == State::Ready)
    }

    /// How many stations of a stage are done, of how many.
    #[must_use]
    pub fn of_stage(&self, stage: Stage) -> (usize, usize) {
        let of = self.standings.iter().filter(|standing| standing.station.step.stage == stage);
        of.fold((0, 0), |(done, all), standing| {
            (done + usize::from(standing.state == State::Done), all + 1)
        })
    }

    /// The words of a station, with what it is made on.
    #[must_use]
    pub fn words(&self, place: usize) -> String {
        self.standings.get(place).map_or_else(String::new, |standing| {
            let station = &standing.station;
            match station.place_words() {
                thing if thing.is_empty() => station.step.words.clone(),
                thing => format!("{} ({thing})", station.step.words),
            }
        })
    }

    /// What the book writes when a station is marked done, or a hold found true.
    ///
    /// A reason written down goes over whatever is open, and stays beside it.
    ///
    /// # Errors
    /// The [`Refusal`] while something stands open before it and no reason is given, or a hold has no name.
    pub fn mark(&self, key: &str, who: &str, why: &str) -> Result<RouteFact, Refusal> {
        let (who, why) = (who.trim(), why.trim());
        let standing = self.place(key).map(|place| &self.standings[place]).ok_or(Refusal::Gone)?;
        let station = &standing.station;
        if station.is_hold() && who.is_empty() {
            return Err(Refusal::NoName);
        }
        if why.is_empty() {
            self.refuse(standing)?;
        }
        Ok(RouteFact::Done { step: key.to_owned(), who: who.to_owned(), why: why.to_owned() })
    }

    fn refuse(&self, standing: &Standing) -> Result<(), Refusal> {
        let words = |holds: bool| -> Vec<String> {
            let open = standing.open.iter().copied();
            open.filter(|&open| self.standings[open].station.is_hold() == holds)
                .map(|open| self.words(open))
                .collect()
        };
        match (words(true), words(false)) {
            (holds, _) if !holds.is_empty() => return Err(Refusal::Held(holds)),
            (_, steps) if !steps.is_empty() => return Err(Refusal::Waiting(steps)),
            _ => {}
        }
        if !standing.answer.is_empty() {
            return Err(Refusal::Book(standing.answer.clone()));
        }
        let read = standing.pieces.iter().filter(|piece| piece.is_read).count();
        if read < standing.pieces.len() {
            return Err(Refusal::NotRead(read, standing.pieces.len()));
        }
        Ok(())
    }
}

fn solid_dowels(book: &Book, build: &BuildId) -> bool {
    let dowels = book.current(build, &Subject::Dowels).map(|entry| &entry.fact);
    matches!(dowels, Some(Fact::DowelsSolid { solid: true }))
}

fn standing(
    book: &Book,
    build: &BuildId,
    sheet: &Sheet,
    rotors: u8,
    station: Station,
    before: &[Standing],
) -> Standing {
    let entry = book.current(build, &Subject::Route(subject_of_step(&station.key())));
    let marked = entry.and_then(|entry| match &entry.fact {
        Fact::Route(RouteFact::Done { who, why, .. }) => Some((entry, who.clone(), why.clone())),
        _ => None,
    });
    let row = station.row().and_then(|row| sheet.row(row));
    let pieces: Vec<Piece> = row.map_or_else(Vec::new, |row| {
        let is_again = before.iter().any(|other| {
            other.station.row() == station.row() && other.station.place == station.place
        });
        let read = |piece: &str| {
            let subject = Subject::Figure(row.id.clone(), piece.to_owned());
            let entry = book.current(build, &subject)?;
            let Fact::Figure(figure) = &entry.fact else { return None };
            let counts = !is_again || is_behind(book, build, &station, before, entry);
            let is_readable = !row.is_judged_bare() && figure.reading().is_ok();
            let call = call(figure, sheet);
            (counts && (call.is_some() || is_readable)).then_some(call)
        };
        let faces = Survey::Lapping.pieces(rotors);
        let piece = |name: String| {
            let call = read(&name);
            let is_read =
                call.is_some() || (row.id == LAPPED_OFF && is_lapped(book, build, &name, &faces));
            Piece { name, is_read, call: call.flatten() }
        };
        station.pieces(row, rotors).into_iter().map(piece).collect()
    });
    let is_read = !pieces.is_empty() && pieces.iter().all(|piece| piece.is_read);
    let (answers, answer) = match station.step.kind {
        super::Kind::Hold(answer) => asked(book, build, rotors, answer, before),
        _ => (None, String::new()),
    };
    let passed_over = marked.as_ref().is_some_and(|(_, _, why)| !why.is_empty());
    let is_done = match answers {
        // Only the book, or a reason written down, opens such a hold.
        Some(answers) => answers || passed_over,
        None => is_read || marked.is_some(),
    };
    let mut open: Vec<usize> =
        station.needs.iter().copied().filter(|&need| before[need].state != State::Done).collect();
    open.sort_by_key(|&need| !before[need].station.is_hold());
    let state = match open.first() {
        _ if is_done => State::Done,
        None => State::Ready,
        Some(&first) if before[first].station.is_hold() => State::Held,
        Some(_) => State::Waiting,
    };
    let at = marked.as_ref().map(|(entry, ..)| entry.at);
    let (done, who, why) = marked
        .map_or_else(Default::default, |(entry, who, why)| (Some(entry.id.clone()), who, why));
    Standing { station, state, open, done, who, at, why, answer, pieces }
}

/// Whether a reading was written when all was done that a station needs.
///
/// Where a row is measured more than once on the way, only such a reading is of the later station: the end play
/// of an engine as it came is not that of the engine put together.
fn is_behind(
    book: &Book,
    build: &BuildId,
    station: &Station,
    before: &[Standing],
    read: &Entry,
) -> bool {
    station.needs.iter().all(|&need| {
        let need = &before[need];
        let by = done_by(book, build, need);
        need.state == State::Done && by.is_none_or(|by| by.place() < read.place())
    })
}

/// The entry by which a station is done: the mark, or its last reading; none where the book answers it.
pub(super) fn done_by<'book>(
    book: &'book Book,
    build: &BuildId,
    standing: &Standing,
) -> Option<&'book Entry> {
    let marked = standing.done.as_ref().and_then(|id| book.entry(id));
    let read = standing.pieces.iter().filter_map(|piece| {
        let row = standing.station.row()?.to_owned();
        book.current(build, &Subject::Figure(row, piece.name.clone()))
    });
    marked.into_iter().chain(read).max_by_key(|entry| entry.place())
}

/// The stations that an entry marks as done, the last first.
fn last_done(book: &Book, build: &BuildId, standings: &[Standing]) -> Vec<(usize, EntryId)> {
    let mut done: Vec<(usize, &Entry)> = standings
        .iter()
        .enumerate()
        .filter(|(_, standing)| standing.state == State::Done)
        .filter_map(|(place, standing)| Some((place, done_by(book, build, standing)?)))
        .collect();
    done.sort_by_key(|(_, entry)| std::cmp::Reverse(entry.place()));
    done.into_iter().map(|(place, entry)| (place, entry.id.clone())).collect()
}

fn left_at(
    book: &Book,
    build: &BuildId,
    standings: &[Standing],
    last: Option<&(usize, EntryId)>,
) -> Option<usize> {
    let left = match current(book, build, subject_left()) {
        Some(RouteFact::LeftAt { step }) => {
            standings.iter().position(|standing| standing.station.key() == *step)
        }
        _ => None,
    };
    let open = |state: State| standings.iter().position(|standing| standing.state == state);
    let behind = last.and_then(|(last, _)| {
        (*last..standings.len()).find(|&place| standings[place].state == State::Ready)
    });
    left.filter(|&left| standings[left].state != State::Done)
        .or(behind)
        .or_else(|| open(State::Ready))
        .or_else(|| open(State::Held))
}

impl fmt::Display for Refusal {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let list = |words: &[String]| {
            words.iter().map(|words| format!("“{words}”")).collect::<Vec<_>>().join(", ")
        };
        match self {
            Self::Gone => f.write_str("This build’s route has no such step."),
            Self::Held(holds) => write!(
                f,
                "Not marked: {} must be true first. If it is to be done all the same, write down why.",
                list(holds)
            ),
            Self::Waiting(steps) => write!(
                f,
                "Not marked: {} comes first. If it is to be done all the same, write down why.",
                list(steps)
            ),
            Self::Book(words) => write!(
                f,
                "Not marked: the book does not have it so. {words} Put that right, or write down why it holds all the same."
            ),
            Self::NotRead(read, all) => write!(
                f,
                "Not marked: {read} of {all} pieces are read. Read the others, or write down why they are left out."
            ),
            Self::NoName => f.write_str("Say by whom it was found true: a name or initials."),
        }
    }
}

impl std::error::Error for Refusal {}
