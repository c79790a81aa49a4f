//! What can be found, and where it leads.

use crate::book::{EntryId, Slot};
use crate::calculators::Calculator;
use crate::help::Topic;
use crate::joints::threads::{Drill, Thread};
use pitleaf_translated::translated;

/// What kind of thing was found.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// A limit row of the sheet.
    Limit,
    /// A calculator.
    Calculator,
    /// A row of a table.
    Table,
    /// A step of the route.
    Step,
    /// A slot of the build in hand.
    Slot,
    /// Words the builder wrote into the book.
    Note,
    /// What a figure is, and why it matters.
    Help,
}

impl Kind {
    /// Its name, for several of them.
    #[must_use]
    #[translated]
    pub fn name(self) -> &'static str {
        match self {
            Self::Limit => "Limits",
            Self::Calculator => "Calculators",
            Self::Table => "Threads and drills",
            Self::Step => "Steps",
            Self::Slot => "Slots",
            Self::Note => "Notes",
            Self::Help => "Help",
        }
    }
}

/// Where something found leads.
#[derive(Clone, Debug, PartialEq)]
pub enum Place {
    /// The check of a row, by its id.
    Limit(String),
    /// A calculator.
    Calculator(Calculator),
    /// A thread of the tables.
    Thread(Thread),
    /// A boss port, by its dash size.
    Port(u8),
    /// A drill of the tables.
    Drill(Drill),
    /// A step, by its station's key.
    Step(String),
    /// A slot.
    Slot(Slot),
    /// An entry of the book.
    Entry(EntryId),
    /// A topic of the help.
    Help(&'static str),
}

/// Something found.
#[derive(Clone, Debug, PartialEq)]
pub struct Found {
    /// Its kind.
    pub kind: Kind,
    /// What it is called.
    pub title: String,
    /// The line below.
    pub below: String,
    /// Where it leads.
    pub place: Place,
}

impl Found {
    pub(super) fn calculator(calculator: Calculator) -> Self {
        Self {
            kind: Kind::Calculator,
            title: calculator.name().to_owned(),
            below: calculator.about().to_owned(),
            place: Place::Calculator(calculator),
        }
    }

    pub(super) fn help(topic: &'static Topic) -> Self {
        Self {
            kind: Kind::Help,
            title: topic.title.to_owned(),
            below: topic.what.to_owned(),
            place: Place::Help(topic.id),
        }
    }
}
