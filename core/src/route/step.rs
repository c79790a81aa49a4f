//! A step: what is done, measured, or must be true; and what has to come before it.

use super::Stage;
use crate::limits::BuildKind;
use pitleaf_translated::{tr, translated};

/// What kind of step it is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Kind {
    /// Something to do.
    Do,
    /// A reading against the row of the sheet with this id.
    Measure(String),
    /// Something that must be true to go on.
    Hold(Answer),
}

/// What says that a hold is true.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Answer {
    /// The builder, by name.
    Builder,
    /// The book: hollow dowels, or an outside feed recorded.
    OilFeed,
    /// The book: every pass of every tightening order ticked off.
    Tightened,
    /// The book: a seal recorded as fitted in every side-seal slot.
    SlotsFitted,
    /// The book: end play read later than the last tightening.
    EndPlayAfter,
    /// The book: hollow or solid upper dowels are written down.
    DowelsWritten,
    /// The builder, by name; but not while the book has an outline that cuts into what it must not.
    OutlinesClear,
}

/// In which builds a step is made.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum When {
    /// In every build.
    Always,
    /// Naturally aspirated.
    NaturallyAspirated,
    /// Forced induction.
    ForcedInduction,
    /// Solid upper dowels, as the book has them.
    SolidDowels,
    /// More rotors than one.
    SeveralRotors,
}

/// For what it is made anew.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Each {
    /// Once in a build.
    Once,
    /// For every rotor, from the front.
    Rotor,
    /// For every rotor, from the rear: the way an engine is stacked.
    RotorFromRear,
    /// For both faces of every rotor.
    Face,
    /// For every side housing.
    SideHousing,
    /// For every rotor housing.
    RotorHousing,
}

/// A step of a route.
///
/// `needs` names the steps that come before it. Where both are made for the same things, it waits for the
/// one of the same rotor or housing; with `<` in front, for the one of the thing before: the next rotor is
/// not stacked before the shaft turns in the last.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Step {
    /// Its id: small letters, digits and hyphens.
    pub id: String,
    /// Its stage.
    pub stage: Stage,
    /// Its kind.
    pub kind: Kind,
    /// What to do, to read, or what must be true.
    pub words: String,
    /// Why it matters, or what can hurt; may be empty.
    pub care: String,
    /// Ids of the steps that come before.
    pub needs: Vec<String>,
    /// In which builds.
    pub when: When,
    /// For what anew.
    pub each: Each,
}

impl Kind {
    /// Its word in files.
    #[must_use]
    pub fn word(&self) -> &'static str {
        match self {
            Self::Do => "do",
            Self::Measure(_) => "measure",
            Self::Hold(_) => "hold",
        }
    }

    /// Its name on the screen.
    #[must_use]
    #[translated]
    pub fn name(&self) -> &'static str {
        match self {
            Self::Do => "Do",
            Self::Measure(_) => "Measure",
            Self::Hold(_) => "Hold",
        }
    }

    /// Whether it holds what comes after.
    #[must_use]
    pub fn is_hold(&self) -> bool {
        matches!(self, Self::Hold(_))
    }
}

/// Words of a choice in files, one for each variant.
macro_rules! words {
    ($type:ident { $($variant:ident = $word:literal, $says:literal;)* }) => {
        impl $type {
            /// Every choice.
            pub const ALL: &[Self] = &[$(Self::$variant),*];

            /// Its word in files.
            #[must_use]
            pub fn word(self) -> &'static str {
                match self { $(Self::$variant => $word),* }
            }

            /// As it is said on the screen.
            #[must_use]
            pub fn says(self) -> &'static str {
                match self { $(Self::$variant => tr!($says)),* }
            }

            /// The choice with a word; the first for none.
            #[must_use]
            pub fn named(word: &str) -> Option<Self> {
                if word.is_empty() {
                    return Self::ALL.first().copied();
                }
                Self::ALL.iter().copied().find(|choice| choice.word() == word)
            }
        }
    };
}

words! { Answer {
    Builder = "builder", "You say so, by name";
    OilFeed = "oil-feed", "The book: dowels and oil feed";
    Tightened = "tightened", "The book: tightening passes";
    SlotsFitted = "slots-fitted", "The book: seals fitted";
    EndPlayAfter = "end-play-after", "The book: end play read after tightening";
    DowelsWritten = "dowels-written", "The book: upper dowels, hollow or solid";
    OutlinesClear = "outlines-clear", "You, but not against the outlines in the book";
} }

words! { When {
    Always = "always", "Every build";
    NaturallyAspirated = "naturally-aspirated", "Naturally aspirated";
    ForcedInduction = "forced-induction", "Forced induction";
    SolidDowels = "solid-dowels", "Solid upper dowels";
    SeveralRotors = "several-rotors", "More rotors than one";
} }

words! { Each {
    Once = "once", "Once";
    Rotor = "rotor", "Each rotor";
    RotorFromRear = "rotor-from-rear", "Each rotor, from the rear";
    Face = "face", "Each rotor’s two faces";
    SideHousing = "side-housing", "Each side housing";
    RotorHousing = "rotor-housing", "Each rotor housing";
} }

impl When {
    /// Whether a build is of this sort.
    #[must_use]
    pub fn holds_for(self, kind: BuildKind, rotors: u8, solid: bool) -> bool {
        match self {
            Self::Always => true,
            Self::NaturallyAspirated => BuildKind::NaturallyAspirated.holds_for(kind),
            Self::ForcedInduction => BuildKind::ForcedInduction.holds_for(kind),
            Self::SolidDowels => solid,
            Self::SeveralRotors => rotors > 1,
        }
    }
}
