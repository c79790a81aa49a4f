//! What the book writes of the order of work: a few words in a row, told apart by the first.
//!
//! Written as a list of texts, so that it costs the phone little to read: `["done","turns/2","J.",""]`.

use super::{Edit, Topic, TypedTest, file, usual};
use crate::book::Fact;
use crate::kept::{Json, Kept, Refused};
use crate::limits::{Sheet, place_words};
use crate::seals::Place;
use pitleaf_translated::{tr, translated};

/// One fact of the order of work.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum RouteFact {
    /// A step was done, or a hold found true.
    Done {
        /// The station's key.
        step: String,
        /// By whom; may be empty for what is merely done.
        who: String,
        /// Why although something was open; empty where nothing was.
        why: String,
    },
    /// A step is to do again.
    Undone {
        /// The station's key.
        step: String,
    },
    /// Where the work was left.
    LeftAt {
        /// The station's key.
        step: String,
    },
    /// What becomes of a part.
    Decided {
        /// The row whose limit it is past; empty for the part as a whole.
        row: String,
        /// The piece.
        place: String,
        /// What.
        choice: Choice,
        /// Why.
        why: String,
    },
    /// A compression test of a rotor.
    Compression(TypedTest),
    /// Something said of the build.
    Said {
        /// Of what.
        topic: Topic,
        /// The words; empty takes them back.
        words: String,
    },
    /// A route of the builder's own for this build, as its file has it; empty for the usual one.
    OwnRoute {
        /// The file's text.
        text: String,
    },
    /// A change to the route in force before it.
    Edited(Edit),
    /// The build is put away among the old ones, or taken out again.
    Archived {
        /// Put away.
        is: bool,
    },
}

/// What becomes of a part.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Choice {
    /// Used again as it is, within its limits.
    Reuse,
    /// Machined.
    Machine,
    /// Replaced.
    Replace,
    /// Used although past a limit, for a written reason.
    Accept,
}

impl Choice {
    /// Every choice.
    pub const ALL: [Self; 4] = [Self::Reuse, Self::Machine, Self::Replace, Self::Accept];

    /// Its word in the book.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Reuse => "reuse",
            Self::Machine => "machine",
            Self::Replace => "replace",
            Self::Accept => "accept",
        }
    }

    /// Its name on the screen.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Reuse => tr!("reuse"),
            Self::Machine => tr!("machine"),
            Self::Replace => tr!("replace"),
            Self::Accept => tr!("accept"),
        }
    }
}

impl RouteFact {
    /// What its history is kept of.
    #[must_use]
    pub fn subject(&self) -> String {
        match self {
            Self::Done { step, .. } | Self::Undone { step } => subject_of_step(step),
            Self::LeftAt { .. } => LEFT.to_owned(),
            Self::Decided { row, place, .. } => subject_of_decision(row, place),
            Self::Compression(test) => subject_of_test(&test.rotor),
            Self::Said { topic, .. } => topic.word().to_owned(),
            Self::OwnRoute { .. } | Self::Edited(_) => OWN_ROUTE.to_owned(),
            Self::Archived { .. } => ARCHIVED.to_owned(),
        }
    }

    /// What it is about, and what it says.
    #[must_use]
    #[translated]
    pub fn words(&self, sheet: &Sheet) -> (String, String) {
        let because =
            |why: &str| if why.is_empty() { String::new() } else { format!(", because: {why}") };
        match self {
            Self::Done { step, who, why } => {
                let by = if who.is_empty() { String::new() } else { format!(" by {who}") };
                (step_words(step), format!("done{by}{}", because(why)))
            }
            Self::Undone { step } => (step_words(step), "to do again".to_owned()),
            Self::LeftAt { step } => ("Left at".to_owned(), step_words(step)),
            Self::Decided { row, place, choice, why } => {
                let row = sheet.row(row).map_or(row.as_str(), |row| &row.what);
                let about = format!("{} {row}", place_words(place));
                (
                    format!("Decision · {}", about.trim()),
                    format!("{}{}", choice.name(), because(why)),
                )
            }
            Self::Compression(test) => {
                (format!("Compression · rotor {}", test.rotor), test.words())
            }
            Self::Said { topic, words } => (topic.name().to_owned(), words.clone()),
            Self::OwnRoute { text } => {
                let says =
                    if text.is_empty() { "the usual one" } else { "one of the shop’s own" };
                ("Route".to_owned(), says.to_owned())
            }
            Self::Edited(edit) => ("Route".to_owned(), edit_words(edit)),
            Self::Archived { is } => {
                ("Build".to_owned(), if *is { "put away" } else { "taken out again" }.to_owned())
            }
        }
    }
}

impl Fact {
    /// Whether it only marks where the work was left, and says nothing of the engine.
    #[must_use]
    pub fn is_bookmark(&self) -> bool {
        matches!(self, Self::Route(RouteFact::LeftAt { .. }))
    }
}

const LEFT: &str = "left";
const OWN_ROUTE: &str = "route";
const ARCHIVED: &str = "archived";

pub(super) fn subject_left() -> String {
    LEFT.to_owned()
}

pub(super) fn subject_own_route() -> String {
    OWN_ROUTE.to_owned()
}

pub(super) fn subject_archived() -> String {
    ARCHIVED.to_owned()
}

pub(super) fn subject_of_step(key: &str) -> String {
    format!("step {key}")
}

pub(super) fn subject_of_decision(row: &str, place: &str) -> String {
    format!("decision {row} {place}")
}

pub(super) fn subject_of_test(rotor: &str) -> String {
    format!("compression {rotor}")
}

/// What a change does, in words.
#[translated]
fn edit_words(edit: &Edit) -> String {
    match edit {
        Edit::AddAfter(id, step) => format!("behind “{}”: {}", step_words(id), step.words),
        Edit::Put(step) => format!("step changed: {}", step.words),
        Edit::Remove(id) => format!("step taken out: {}", step_words(id)),
        Edit::Up(id) => format!("step up: {}", step_words(id)),
        Edit::Down(id) => format!("step down: {}", step_words(id)),
    }
}

/// A step as it is said, by the words of the usual route; one of the builder's own by its name.
#[translated]
fn step_words(key: &str) -> String {
    let (id, place) = key.split_once('/').unwrap_or((key, ""));
    let words = usual::words_of(id).map_or_else(|| id.replace('-', " "), str::to_owned);
    match Place::read(place) {
        Ok(Place::Rotor(rotor)) => format!("{words} · rotor {rotor}"),
        _ if place.is_empty() => words,
        _ => format!("{words} · {}", place_words(place)),
    }
}

/// A change: its word, the step's id, and the step itself where it is new.
fn edit_texts(edit: Edit) -> Vec<String> {
    let (word, id, step) = match edit {
        Edit::AddAfter(id, step) => ("add", id, Some(step)),
        Edit::Put(step) => ("put", step.id.clone(), Some(step)),
        Edit::Remove(id) => ("remove", id, None),
        Edit::Up(id) => ("up", id, None),
        Edit::Down(id) => ("down", id, None),
    };
    [word.to_owned(), id].into_iter().chain(step.map(|step| file::write_step(&step))).collect()
}

fn edit_of_texts(mut next: impl FnMut() -> String) -> Result<Edit, &'static str> {
    let (word, id) = (next(), next());
    Ok(match word.as_str() {
        "add" => Edit::AddAfter(id, file::read_step(&next())?),
        "put" => Edit::Put(file::read_step(&next())?),
        "remove" => Edit::Remove(id),
        "up" => Edit::Up(id),
        "down" => Edit::Down(id),
        _ => return Err("a change of the route that is not known here"),
    })
}

impl From<RouteFact> for Vec<String> {
    fn from(fact: RouteFact) -> Self {
        let list = |name: &str, texts: &[String]| {
            std::iter::once(name.to_owned()).chain(texts.iter().cloned()).collect()
        };
        match fact {
            RouteFact::Done { step, who, why } => list("done", &[step, who, why]),
            RouteFact::Undone { step } => list("undone", &[step]),
            RouteFact::LeftAt { step } => list("left", &[step]),
            RouteFact::Decided { row, place, choice, why } => {
                list("decided", &[row, place, choice.word().to_owned(), why])
            }
            RouteFact::Compression(test) => list("compression", &test.texts()),
            RouteFact::Said { topic, words } => list("said", &[topic.word().to_owned(), words]),
            RouteFact::OwnRoute { text } => list("route", &[text]),
            RouteFact::Edited(edit) => list("edited", &edit_texts(edit)),
            RouteFact::Archived { is } => {
                list("archived", &[if is { "yes" } else { "no" }.to_owned()])
            }
        }
    }
}

impl TryFrom<Vec<String>> for RouteFact {
    type Error = &'static str;

    fn try_from(texts: Vec<String>) -> Result<Self, Self::Error> {
        let mut texts = texts.into_iter();
        let name = texts.next().unwrap_or_default();
        let mut next = || texts.next().unwrap_or_default();
        Ok(match name.as_str() {
            "done" => Self::Done { step: next(), who: next(), why: next() },
            "undone" => Self::Undone { step: next() },
            "left" => Self::LeftAt { step: next() },
            "decided" => {
                let (row, place, word) = (next(), next(), next());
                let choice = Choice::ALL.into_iter().find(|choice| choice.word() == word);
                let choice = choice.ok_or("a decision that is not known here")?;
                Self::Decided { row, place, choice, why: next() }
            }
            "compression" => Self::Compression(TypedTest::of_texts(next)?),
            "said" => {
                let topic = Topic::named(&next()).ok_or("a topic that is not known here")?;
                Self::Said { topic, words: next() }
            }
            "route" => Self::OwnRoute { text: next() },
            "edited" => Self::Edited(edit_of_texts(next)?),
            "archived" => Self::Archived { is: next() == "yes" },
            _ => return Err("a fact of the route that is not known here"),
        })
    }
}

impl Kept for RouteFact {
    fn json(&self) -> Json<'_> {
        let texts: Vec<String> = self.clone().into();
        Json::List(texts.into_iter().map(|text| Json::Text(text.into())).collect())
    }

    fn of_json(json: &Json<'_>) -> Result<Self, Refused> {
        Self::try_from(Vec::<String>::of_json(json)?).map_err(|why| Refused::because(&why))
    }
}
