//! The calculators by name: what each answers, and its help.

mod rows;

use crate::faces::Survey;
use crate::help::{Help, Topic};
use pitleaf_translated::translated;
use rows::{LINES, Line};

/// A calculator.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Calculator {
    /// One figure in every unit.
    Convert,
    /// One fastener: torque and clamp.
    Clamp,
    /// The order of tightening.
    Order,
    /// The stack against firing pressure.
    Firing,
    /// A joint face against turning.
    Slip,
    /// The oil to the front bearing.
    OilFeed,
    /// A line for it.
    OilLine,
    /// Threads and boss ports.
    Threads,
    /// What thread is this?
    WhatThread,
    /// Drills.
    Drills,
    /// Limits and fits.
    Fits,
    /// A pin pressed into a housing.
    Press,
    /// The feeler leaves on the bench.
    Leaves,
    /// Which seal goes where.
    Placing,
    /// The gap in the running engine.
    HotGap,
    /// A row measured over all its places.
    Sets,
    /// Apex seals shared out over the rotors.
    Matching,
    /// The ports.
    Ports,
    /// Chamber volume and ratio.
    Volume,
    /// The stack as measured.
    Stack,
    /// A compression test.
    Compression,
    /// The build sheet.
    BuildSheet,
    /// What is measured of a part before stacking.
    Survey(Survey),
}

impl Calculator {
    /// Every one that is no survey, in the order of the table.
    pub const PLAIN: [Self; 22] = [
        Self::Convert,
        Self::Clamp,
        Self::Order,
        Self::Firing,
        Self::Slip,
        Self::OilFeed,
        Self::OilLine,
        Self::Threads,
        Self::WhatThread,
        Self::Drills,
        Self::Fits,
        Self::Press,
        Self::Leaves,
        Self::Placing,
        Self::HotGap,
        Self::Sets,
        Self::Matching,
        Self::Ports,
        Self::Volume,
        Self::Stack,
        Self::Compression,
        Self::BuildSheet,
    ];

    /// Every calculator.
    pub fn all() -> impl Iterator<Item = Self> {
        Self::PLAIN.into_iter().chain(Survey::ALL.map(Self::Survey))
    }

    /// Its row; none for a survey, which has a table of its own.
    fn line(self) -> Result<&'static Line, Survey> {
        match self {
            Self::Survey(survey) => Err(survey),
            plain => {
                let place = Self::PLAIN.iter().position(|other| *other == plain);
                Ok(&LINES[place.unwrap_or_default()])
            }
        }
    }

    /// What it is called.
    #[must_use]
    pub fn name(self) -> &'static str {
        self.line().map_or_else(Survey::name, |line| line.name)
    }

    /// What it answers, in a few words.
    #[must_use]
    #[translated]
    pub fn about(self) -> &'static str {
        self.line().map_or("Measured before stacking", |line| line.about)
    }

    /// Other words a shop finds it by.
    #[must_use]
    pub fn words(self) -> &'static str {
        self.line().map_or("survey place by place", |line| line.words)
    }

    /// The topic of the figure a survey is read for.
    #[must_use]
    pub fn topic(self) -> Option<&'static Topic> {
        self.line().err().map(topic)
    }

    /// Its three texts.
    #[must_use]
    pub fn help(self) -> Help {
        match self.line() {
            Ok(line) => Help { what: line.what, how: line.how.to_owned(), why: line.why },
            Err(survey) => {
                let topic = topic(survey);
                Help { what: topic.what, how: survey.how().to_owned(), why: topic.why }
            }
        }
    }
}

/// What a survey's readings are for.
fn topic(survey: Survey) -> &'static Topic {
    let id = match survey {
        Survey::Flatness | Survey::Grid | Survey::OwnPlaces | Survey::Straightedge => {
            "side-housing-warp"
        }
        Survey::Lapping => "side-housing-lapped-off",
        Survey::SideThickness => "side-housing-thickness",
        Survey::HousingWidth => "rotor-housing-width",
        Survey::RotorWidth => "rotor-side-clearance",
        Survey::ApexSealLength => "apex-seal-gap",
        Survey::Bore => "bearing-bore",
        Survey::Journal => "journals",
        Survey::PlasticGauge => "bearing-clearance",
        Survey::RunoutEight | Survey::RunoutTwelve => "shaft-runout",
        Survey::Spacers | Survey::EndPlay | Survey::EndPlayAfter => "end-play",
        Survey::BearingSeat | Survey::BearingShell => "bearing-seat",
    };
    // The tests see that each is there.
    Topic::named(id).unwrap_or(Topic::FIRST)
}
