//! The stages of a build.

use pitleaf_translated::translated;

/// A stage, in the order of the work.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Stage {
    /// The engine comes in, and is tested before it is opened.
    Intake,
    /// Taken apart, looked at and measured.
    StripDown,
    /// Reuse, machine or replace; parts ordered.
    Decisions,
    /// Ports cut.
    Porting,
    /// Studs, dowels, housings.
    Machining,
    /// Faces lapped and hardened.
    Lapping,
    /// Rotating parts balanced.
    Balancing,
    /// Every seal cut and fitted to its slot.
    Seals,
    /// Stacked once, dry.
    MockUp,
    /// Stacked for good.
    Assembly,
    /// Front stack and end play.
    FrontStack,
    /// Closed up and tested standing.
    After,
    /// First start and running-in.
    Running,
}

impl Stage {
    /// Every stage.
    pub const ALL: [Self; 13] = [
        Self::Intake,
        Self::StripDown,
        Self::Decisions,
        Self::Porting,
        Self::Machining,
        Self::Lapping,
        Self::Balancing,
        Self::Seals,
        Self::MockUp,
        Self::Assembly,
        Self::FrontStack,
        Self::After,
        Self::Running,
    ];

    /// Its name.
    #[must_use]
    #[translated]
    pub fn name(self) -> &'static str {
        match self {
            Self::Intake => "Intake and compression",
            Self::StripDown => "Strip-down inspection",
            Self::Decisions => "Decisions and parts",
            Self::Porting => "Porting",
            Self::Machining => "Machining",
            Self::Lapping => "Lapping and hardening",
            Self::Balancing => "Balancing",
            Self::Seals => "Seal fitting",
            Self::MockUp => "Mock-up",
            Self::Assembly => "Final assembly",
            Self::FrontStack => "Front stack and end play",
            Self::After => "After assembly",
            Self::Running => "First start and running-in",
        }
    }

    /// Its word in addresses and files.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Intake => "intake",
            Self::StripDown => "strip-down",
            Self::Decisions => "decisions",
            Self::Porting => "porting",
            Self::Machining => "machining",
            Self::Lapping => "lapping",
            Self::Balancing => "balancing",
            Self::Seals => "seals",
            Self::MockUp => "mock-up",
            Self::Assembly => "assembly",
            Self::FrontStack => "front-stack",
            Self::After => "after",
            Self::Running => "running",
        }
    }

    /// The stage with a word.
    #[must_use]
    pub fn named(word: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|stage| stage.word() == word)
    }
}
