//! The hardened skin of a face, and what lapping leaves of it.
//!
//! Its depths are those of ISO 18203 for nitrided parts: NHD, the nitriding hardness depth, down to where the
//! hardness is still 50 HV above the core's; CLT, the thickness of the compound layer on top.

use super::input::{mm, of_mm};
use super::lapping::Range;
use super::uncertainty::Measured;
use crate::limits::{Call, GUARD, Side};

/// The hardened skin of a face, as far as it is known.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Skin {
    /// How deep it was hardened (NHD), as whoever did it says; none where nobody knows.
    pub depth: Option<Range>,
    /// What is known to have come off since.
    pub taken_off: Measured,
    /// Whether nothing else can have come off.
    pub is_whole: bool,
}

/// What is left of a hardened skin, or of the compound layer on it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SkinLeft {
    /// Some is left everywhere, whatever the depth was within its range.
    Everywhere,
    /// It may be gone where most came off.
    InDoubt,
    /// It is gone where most came off, even if it was as deep as its range allows.
    GoneInPlaces,
}

impl SkinLeft {
    /// How it stands.
    #[must_use]
    pub fn call(self) -> Call {
        match self {
            Self::Everywhere => Call::Meets,
            Self::InDoubt => Call::TooClose,
            Self::GoneInPlaces => Call::DoesNotMeet(Side::Above),
        }
    }
}

impl Skin {
    /// What is left where most came off, and how sure it is; zero where it may be gone. None where the depth
    /// is not known: then nothing can be said.
    ///
    /// The guard band of ISO 14253-1 stands about what came off.
    #[must_use]
    pub fn left(&self) -> Option<(SkinLeft, Range)> {
        let depth = self.depth?;
        let (off, guard) = (mm(self.taken_off.value), GUARD * mm(self.taken_off.uncertainty));
        let most = mm(depth.most) - off;
        let least = if self.is_whole { mm(depth.least) - off } else { 0.0 };
        let left = if least > guard {
            SkinLeft::Everywhere
        } else if most > -guard {
            SkinLeft::InDoubt
        } else {
            SkinLeft::GoneInPlaces
        };
        Some((left, Range { least: of_mm(least.max(0.0)), most: of_mm(most.max(0.0)) }))
    }

    /// The same skin with more off it.
    #[must_use]
    pub fn after(&self, off: &Measured) -> Self {
        let before = self.taken_off;
        let uncertainty = of_mm(mm(before.uncertainty).hypot(mm(off.uncertainty)));
        Self { taken_off: Measured { value: before.value + off.value, uncertainty }, ..*self }
    }
}
