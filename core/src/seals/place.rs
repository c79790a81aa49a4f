//! Names of the places on an engine's rotors: `2`, `2R`, `2R-AB`, `2R-A`, `2-A`.
//!
//! Corners are A, B, C as the builder marked them, the same letters on both faces of a rotor.

use crate::book::{Face, Slot};
use crate::kept::{Json, Kept, Refused};
use crate::limits::Part;
use pitleaf_translated::translated;
use std::fmt;

/// A corner of a rotor.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Corner {
    /// The first.
    A,
    /// The second.
    B,
    /// The third.
    C,
}

impl Corner {
    /// All three.
    pub const ALL: [Self; 3] = [Self::A, Self::B, Self::C];

    /// Its letter.
    #[must_use]
    pub fn letter(self) -> char {
        match self {
            Self::A => 'A',
            Self::B => 'B',
            Self::C => 'C',
        }
    }

    /// The two corners a side-seal slot runs between.
    #[must_use]
    pub fn ends(slot: Slot) -> [Self; 2] {
        match slot.flank() {
            0 => [Self::A, Self::B],
            1 => [Self::B, Self::C],
            _ => [Self::C, Self::A],
        }
    }
}

/// A place a part belongs to. Springs have the name of the seal they lie under.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Place {
    /// A rotor: `2`.
    Rotor(u8),
    /// A rotor's face, with its oil seals: `2R`.
    Face(u8, Face),
    /// A side seal's slot: `2R-AB`.
    SideSeal(Slot),
    /// A corner seal's bore: `2R-A`.
    CornerSeal(u8, Face, Corner),
    /// An apex seal's groove: `2-A`.
    ApexSeal(u8, Corner),
}

/// Why a text names no place of an engine.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum PlaceFault {
    /// No such name; cut to what fits a line.
    Unreadable(String),
    /// The build has fewer rotors.
    NoSuchRotor {
        /// The rotor named.
        rotor: u8,
        /// The rotors there are.
        rotors: u8,
    },
}

impl fmt::Display for PlaceFault {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Unreadable(text) => write!(
                f,
                "“{text}” is no place on a rotor. Write it as 1F-AB (side seal), 1F-A (corner seal), 1-A (apex seal), 1F (face) or 1 (rotor)."
            ),
            Self::NoSuchRotor { rotor, rotors } => write!(
                f,
                "This build has no rotor {rotor}: its rotors are numbered {}, from the front. Check the place.",
                if *rotors == 1 { "1 alone".to_owned() } else { format!("1 to {rotors}") }
            ),
        }
    }
}

impl std::error::Error for PlaceFault {}

impl Place {
    /// Reads a name in either case, spaces around it ignored.
    ///
    /// # Errors
    /// [`PlaceFault::Unreadable`].
    pub fn read(text: &str) -> Result<Self, PlaceFault> {
        const MOST: usize = 12;
        Self::named(&text.trim().to_ascii_uppercase())
            .ok_or_else(|| PlaceFault::Unreadable(text.trim().chars().take(MOST).collect()))
    }

    fn named(text: &str) -> Option<Self> {
        if let Some(slot) = Slot::named(text) {
            return Some(Self::SideSeal(slot));
        }
        let (front, corner) = match text.split_once('-') {
            Some((front, letter)) => {
                let corner = Corner::ALL.into_iter().find(|c| letter.chars().eq([c.letter()]))?;
                (front, Some(corner))
            }
            None => (text, None),
        };
        let mut letters = front.chars();
        let rotor = u8::try_from(letters.next()?.to_digit(10)?).ok()?;
        let face = match (letters.next(), letters.next()) {
            (None, _) => None,
            (Some('F'), None) => Some(Face::Front),
            (Some('R'), None) => Some(Face::Rear),
            _ => return None,
        };
        if !(1..=Slot::MOST_ROTORS).contains(&rotor) {
            return None;
        }
        Some(match (face, corner) {
            (None, None) => Self::Rotor(rotor),
            (Some(face), None) => Self::Face(rotor, face),
            (Some(face), Some(corner)) => Self::CornerSeal(rotor, face, corner),
            (None, Some(corner)) => Self::ApexSeal(rotor, corner),
        })
    }

    /// Its rotor, from 1 at the front.
    #[must_use]
    pub fn rotor(self) -> u8 {
        match self {
            Self::Rotor(rotor)
            | Self::Face(rotor, _)
            | Self::CornerSeal(rotor, _, _)
            | Self::ApexSeal(rotor, _) => rotor,
            Self::SideSeal(slot) => slot.rotor(),
        }
    }

    /// The place, if an engine with so many rotors has it.
    ///
    /// # Errors
    /// [`PlaceFault::NoSuchRotor`].
    pub fn on_engine(self, rotors: u8) -> Result<Self, PlaceFault> {
        let rotor = self.rotor();
        if (1..=rotors).contains(&rotor) {
            Ok(self)
        } else {
            Err(PlaceFault::NoSuchRotor { rotor, rotors })
        }
    }

    /// Every place of an engine: rotor by rotor from the front, front face before rear.
    #[must_use]
    pub fn of_engine(rotors: u8) -> Vec<Self> {
        (1..=rotors.min(Slot::MOST_ROTORS)).flat_map(Self::of_rotor).collect()
    }

    /// The places a part is measured at on an engine's rotors; none for parts that lie elsewhere.
    ///
    /// Oil seals are measured by the face.
    #[must_use]
    pub fn of_part(part: Part, rotors: u8) -> Vec<Self> {
        let belongs = |place: &Self| match place {
            Self::Rotor(_) => part == Part::Rotor,
            Self::Face(..) => part == Part::OilSeal,
            Self::SideSeal(_) => part == Part::SideSeal,
            Self::CornerSeal(..) => part == Part::CornerSeal,
            Self::ApexSeal(..) => part == Part::ApexSeal,
        };
        Self::of_engine(rotors).into_iter().filter(belongs).collect()
    }

    fn of_rotor(rotor: u8) -> Vec<Self> {
        let mut places = vec![Self::Rotor(rotor)];
        places.extend(Corner::ALL.map(|corner| Self::ApexSeal(rotor, corner)));
        for face in [Face::Front, Face::Rear] {
            places.push(Self::Face(rotor, face));
            places.extend(Slot::of_face(rotor, face).into_iter().map(Self::SideSeal));
            places.extend(Corner::ALL.map(|corner| Self::CornerSeal(rotor, face, corner)));
        }
        places
    }
}

impl fmt::Display for Place {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Rotor(rotor) => write!(f, "{rotor}"),
            Self::Face(rotor, face) => write!(f, "{rotor}{}", face.letter()),
            Self::SideSeal(slot) => slot.fmt(f),
            Self::CornerSeal(rotor, face, corner) => {
                write!(f, "{rotor}{}-{}", face.letter(), corner.letter())
            }
            Self::ApexSeal(rotor, corner) => write!(f, "{rotor}-{}", corner.letter()),
        }
    }
}

impl Kept for Place {
    fn json(&self) -> Json<'_> {
        Json::words(self)
    }

    fn of_json(json: &Json<'_>) -> Result<Self, Refused> {
        Self::read(json.text()?).map_err(|fault| Refused::because(&fault))
    }
}
