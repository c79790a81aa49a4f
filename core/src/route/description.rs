//! What is said of a build: the customer, their words, the engine; and the sheet in force.

use super::{RouteFact, fact};
use crate::book::{Book, BuildId, Fact, Subject};
use crate::letters;
use pitleaf_translated::translated;

/// Of what something is said.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Topic {
    /// Whose engine it is.
    Customer,
    /// What the customer said and wants.
    Wish,
    /// What the engine is: its number, where it came from, what is known of it.
    Engine,
    /// Why the build was signed off over open points.
    SignedOver,
}

impl Topic {
    /// What is asked when a build is described.
    pub const ASKED: [Self; 3] = [Self::Customer, Self::Wish, Self::Engine];

    /// Its word in the book.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Customer => "customer",
            Self::Wish => "wish",
            Self::Engine => "engine",
            Self::SignedOver => "signed-over",
        }
    }

    /// Its name.
    #[must_use]
    #[translated]
    pub fn name(self) -> &'static str {
        match self {
            Self::Customer => "Customer",
            Self::Wish => "The customer’s words",
            Self::Engine => "Engine",
            Self::SignedOver => "Signed off over open points",
        }
    }

    pub(super) fn named(word: &str) -> Option<Self> {
        Self::ASKED.into_iter().chain([Self::SignedOver]).find(|topic| topic.word() == word)
    }
}

/// What was said last of a topic; empty for nothing.
#[must_use]
pub fn said<'book>(book: &'book Book, build: &BuildId, topic: Topic) -> &'book str {
    match current(book, build, topic.word().to_owned()) {
        Some(RouteFact::Said { words, .. }) => words,
        _ => "",
    }
}

/// How many rows of the sheet in force for a build are the builder's own.
#[must_use]
pub fn own_rows(book: &Book, build: &BuildId) -> usize {
    let mut ids: Vec<&str> = book.own_limits(Some(build)).map(|row| row.id.as_str()).collect();
    ids.sort_unstable();
    ids.dedup();
    ids.len()
}

/// The builds in work, or those put away, whose name or customer has a text in it; the last opened first.
#[must_use]
pub fn builds(book: &Book, query: &str, archived: bool) -> Vec<BuildId> {
    let query = letters::lower(query.trim());
    let answers = |build: &BuildId| {
        let name = book.opening(build).map_or("", |(name, ..)| name);
        [name, said(book, build, Topic::Customer)]
            .iter()
            .any(|text| letters::lower(text).contains(&query))
    };
    let mut builds = book.builds();
    builds.retain(|build| book.is_archived(build) == archived && answers(build));
    builds
}

/// The fact in force of a subject of the route.
pub(super) fn current<'book>(
    book: &'book Book,
    build: &BuildId,
    subject: String,
) -> Option<&'book RouteFact> {
    match &book.current(build, &Subject::Route(subject))?.fact {
        Fact::Route(fact) => Some(fact),
        _ => None,
    }
}

impl Book {
    /// Whether a build was put away among the old ones.
    #[must_use]
    pub fn is_archived(&self, build: &BuildId) -> bool {
        let last = current(self, build, fact::subject_archived());
        matches!(last, Some(RouteFact::Archived { is: true }))
    }
}
