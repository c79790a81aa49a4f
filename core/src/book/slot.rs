//! Places on a rotor: faces and their side-seal slots.

use crate::kept::{Json, Kept, Refused};
use pitleaf_translated::translated;
use std::fmt;

/// A face of a rotor, named by where it looks when the engine is stacked.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Face {
    /// Towards the front (stationary-gear end of the first rotor).
    Front,
    /// Towards the rear.
    Rear,
}

impl Face {
    /// Its letter in a slot's name.
    #[must_use]
    pub fn letter(self) -> char {
        match self {
            Self::Front => 'F',
            Self::Rear => 'R',
        }
    }

    /// Its name.
    #[must_use]
    #[translated]
    pub fn name(self) -> &'static str {
        match self {
            Self::Front => "front",
            Self::Rear => "rear",
        }
    }
}

/// A side-seal slot: rotor, face, and the two corners it runs between.
///
/// Corners are A, B, C as the builder marked them, the same letters on both faces. Written `1F-AB`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Slot {
    rotor: u8,
    face: Face,
    flank: u8,
}

const CORNERS: [&str; 3] = ["AB", "BC", "CA"];

impl Slot {
    /// The most rotors a build can have.
    pub const MOST_ROTORS: u8 = 4;

    /// The slot of a rotor (from 1), a face and a flank (0 for AB, 1 for BC, 2 for CA).
    #[must_use]
    pub fn new(rotor: u8, face: Face, flank: u8) -> Option<Self> {
        ((1..=Self::MOST_ROTORS).contains(&rotor) && flank < 3).then_some(Self {
            rotor,
            face,
            flank,
        })
    }

    /// The slot written as `1F-AB`.
    #[must_use]
    pub fn named(text: &str) -> Option<Self> {
        let (front, corners) = text.split_once('-')?;
        let mut letters = front.chars();
        let rotor = u8::try_from(letters.next()?.to_digit(10)?).ok()?;
        let face = match letters.next()? {
            'F' => Face::Front,
            'R' => Face::Rear,
            _ => return None,
        };
        let flank = CORNERS.iter().position(|name| *name == corners)?;
        if letters.next().is_some() {
            return None;
        }
        Self::new(rotor, face, u8::try_from(flank).ok()?)
    }

    /// The rotor, from 1 at the front.
    #[must_use]
    pub fn rotor(self) -> u8 {
        self.rotor
    }

    /// The face.
    #[must_use]
    pub fn face(self) -> Face {
        self.face
    }

    /// 0 for AB, 1 for BC, 2 for CA.
    #[must_use]
    pub fn flank(self) -> u8 {
        self.flank
    }

    /// The three slots of a face.
    #[must_use]
    pub fn of_face(rotor: u8, face: Face) -> Vec<Self> {
        (0..3).filter_map(|flank| Self::new(rotor, face, flank)).collect()
    }

    /// Every slot of an engine, front to rear.
    #[must_use]
    pub fn of_engine(rotors: u8) -> Vec<Self> {
        (1..=rotors)
            .flat_map(|rotor| [Face::Front, Face::Rear].map(|face| (rotor, face)))
            .flat_map(|(rotor, face)| Self::of_face(rotor, face))
            .collect()
    }
}

impl fmt::Display for Slot {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}{}-{}", self.rotor, self.face.letter(), CORNERS[usize::from(self.flank)])
    }
}

impl Kept for Slot {
    fn json(&self) -> Json<'_> {
        Json::words(self)
    }

    fn of_json(json: &Json<'_>) -> Result<Self, Refused> {
        Self::named(json.text()?).ok_or_else(|| Refused::because(&"a slot that no rotor has"))
    }
}
