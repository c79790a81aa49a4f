//! The places of the joints, as the address has them behind `#/joints`.

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

    /// What it is called.
    pub fn name(&self) -> &'static str {
        match self {
            Self::All => "Joints",
            Self::Threads | Self::Thread(_) | Self::Port(_) => "Threads and ports",
            Self::WhatThread => "What thread is this?",
            Self::Drills => "Drills",
            Self::Clamp => "Torque and clamp",
            Self::Stack => "Firing pressure",
            Self::Slip => "Can a face turn?",
            Self::Order => "Tightening order",
            Self::Fits => "Limits and fits",
            Self::Press => "Press fit",
            Self::OilFeed => "Oil to the front bearing",
            Self::OilLine => "Oil line",
        }
    }

    /// What it answers.
    pub fn about(&self) -> &'static str {
        match self {
            Self::All => "Bolts, dowels, fits, oil",
            Self::Threads => "Drills, clearance, ports",
            Self::Thread(_) => "A thread and its drills",
            Self::Port(_) => "An O-ring boss port",
            Self::WhatThread => "From diameter and pitch",
            Self::Drills => "Any name, nearest others",
            Self::Clamp => "One fastener, its stretch",
            Self::Stack => "What is left of the clamp",
            Self::Slip => "Friction, dowels, torque",
            Self::Order => "Passes, ticked off",
            Self::Fits => "ISO, inch, measured pair",
            Self::Press => "Grip, warming, cooling",
            Self::OilFeed => "Shut by solid dowels",
            Self::OilLine => "Pressure drop, flow, port",
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
            ["thread", slug] => {
                let fits = slug.bytes().all(|byte| byte.is_ascii_alphanumeric() || byte == b'-');
                fits.then(|| Self::Thread(slug.to_owned()))
            }
            ["port", dash] => dash.parse().ok().map(Self::Port),
            [word] => Self::ALL.into_iter().find(|job| job.word() == word),
            _ => None,
        }
    }

    /// Its address behind `#/joints`.
    pub fn path(&self) -> String {
        match self {
            Self::All => String::new(),
            Self::Thread(slug) => format!("/thread/{slug}"),
            Self::Port(dash) => format!("/port/{dash}"),
            _ => format!("/{}", self.word()),
        }
    }

    /// Where "back" leads; none for the bench.
    pub fn parent(&self) -> Option<Self> {
        match self {
            Self::All => None,
            Self::Thread(_) | Self::Port(_) => Some(Self::Threads),
            Self::OilLine => Some(Self::OilFeed),
            _ => Some(Self::All),
        }
    }
}
