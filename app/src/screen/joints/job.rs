//! The places of the joints, as the address has them behind `#/joints`.

use crate::route::plain;
use pitleaf_core::calculators::Calculator;
use pitleaf_core::joints::threads::{Drill, Thread};
use pitleaf_translated::tr;

/// How a row of a table is addressed: the letters and digits of its name.
pub fn slug(name: &str) -> String {
    let name = name.to_ascii_lowercase();
    let pieces = name.split(|letter: char| !letter.is_ascii_alphanumeric());
    pieces.filter(|piece| !piece.is_empty()).collect::<Vec<_>>().join("-")
}

/// A job at the joints.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Job {
    /// All of them.
    All,
    /// Finding a thread.
    Threads,
    /// One thread, by the letters and digits of its name.
    Thread(String),
    /// One boss port, by its dash size.
    Port(u8),
    /// What thread is this?
    WhatThread,
    /// Drills.
    Drills,
    /// One drill, by the letters and digits of its name.
    Drill(String),
    /// One fastener: torque and clamp.
    Clamp,
    /// The stack against firing pressure.
    Stack,
    /// A joint face against turning.
    Slip,
    /// The order of tightening.
    Order,
    /// Limits and fits.
    Fits,
    /// A pin pressed into a housing.
    Press,
    /// The oil to the front bearing.
    OilFeed,
    /// A line for it.
    OilLine,
}

impl Job {
    /// Every job that is a place of its own.
    pub const ALL: [Self; 12] = [
        Self::All,
        Self::Clamp,
        Self::Order,
        Self::Stack,
        Self::Slip,
        Self::OilFeed,
        Self::OilLine,
        Self::Threads,
        Self::WhatThread,
        Self::Drills,
        Self::Fits,
        Self::Press,
    ];

    /// Its calculator; none for a table’s row, and for the place that leads to all of them.
    pub fn calculator(&self) -> Option<Calculator> {
        Some(match self {
            Self::All | Self::Thread(_) | Self::Port(_) => return None,
            Self::Threads => Calculator::Threads,
            Self::WhatThread => Calculator::WhatThread,
            Self::Drills | Self::Drill(_) => Calculator::Drills,
            Self::Clamp => Calculator::Clamp,
            Self::Stack => Calculator::Firing,
            Self::Slip => Calculator::Slip,
            Self::Order => Calculator::Order,
            Self::Fits => Calculator::Fits,
            Self::Press => Calculator::Press,
            Self::OilFeed => Calculator::OilFeed,
            Self::OilLine => Calculator::OilLine,
        })
    }

    /// The place of a calculator, if it is one of the joints’.
    pub fn of_calculator(calculator: Calculator) -> Option<Self> {
        Self::ALL.into_iter().find(|job| job.calculator() == Some(calculator))
    }

    /// The place of a thread.
    pub fn of_thread(thread: Thread) -> Self {
        Self::Thread(slug(&thread.name()))
    }

    /// The place of a drill.
    pub fn of_drill(drill: Drill) -> Self {
        Self::Drill(slug(&drill.to_string()))
    }

    /// What it is called.
    pub fn name(&self) -> &'static str {
        match self {
            Self::All => tr!("Joints"),
            _ => self.calculator().unwrap_or(Calculator::Threads).name(),
        }
    }

    /// What it answers.
    pub fn about(&self) -> &'static str {
        match self {
            Self::Thread(_) => tr!("A thread and its drills"),
            Self::Port(_) => tr!("An O-ring boss port"),
            _ => self.calculator().map_or(tr!("Bolts, dowels, fits, oil"), Calculator::about),
        }
    }

    fn word(&self) -> &'static str {
        match self {
            Self::All => "",
            Self::Threads => "threads",
            Self::Thread(_) => "thread",
            Self::Port(_) => "port",
            Self::WhatThread => "what-thread",
            Self::Drills => "drills",
            Self::Drill(_) => "drill",
            Self::Clamp => "clamp",
            Self::Stack => "stack",
            Self::Slip => "slip",
            Self::Order => "order",
            Self::Fits => "fits",
            Self::Press => "press",
            Self::OilFeed => "oil-feed",
            Self::OilLine => "oil-line",
        }
    }

    /// The job of an address; none for one that is not known.
    pub fn read(pieces: &[&str]) -> Option<Self> {
        match *pieces {
            [] => Some(Self::All),
            ["thread", slug] => plain(slug).map(Self::Thread),
            ["drill", slug] => plain(slug).map(Self::Drill),
            ["port", dash] => dash.parse().ok().map(Self::Port),
            [word] => Self::ALL.into_iter().find(|job| job.word() == word),
            _ => None,
        }
    }

    /// Its address behind `#/joints`.
    pub fn path(&self) -> String {
        match self {
            Self::All => String::new(),
            Self::Thread(slug) | Self::Drill(slug) => format!("/{}/{slug}", self.word()),
            Self::Port(dash) => format!("/port/{dash}"),
            _ => format!("/{}", self.word()),
        }
    }

    /// Where "back" leads; none for the bench.
    pub fn parent(&self) -> Option<Self> {
        match self {
            Self::All => None,
            Self::Thread(_) | Self::Port(_) => Some(Self::Threads),
            Self::Drill(_) => Some(Self::Drills),
            Self::OilLine => Some(Self::OilFeed),
            _ => Some(Self::All),
        }
    }
}
