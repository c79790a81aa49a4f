//! A tolerance class as it is written: `H7`, `js6`.

use super::FitFault;
use std::fmt;

/// The letter of a tolerance class: where the tolerance lies. The same letters serve hole and shaft.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Letter {
    /// D, d.
    D,
    /// E, e.
    E,
    /// F, f.
    F,
    /// G, g.
    G,
    /// H, h.
    H,
    /// J, j.
    J,
    /// JS, js.
    Js,
    /// K, k.
    K,
    /// M, m.
    M,
    /// N, n.
    N,
    /// P, p.
    P,
    /// R, r.
    R,
    /// S, s.
    S,
}

impl Letter {
    /// Every letter.
    pub const ALL: [Self; 13] = [
        Self::D,
        Self::E,
        Self::F,
        Self::G,
        Self::H,
        Self::J,
        Self::Js,
        Self::K,
        Self::M,
        Self::N,
        Self::P,
        Self::R,
        Self::S,
    ];

    fn written(self) -> &'static str {
        match self {
            Self::D => "d",
            Self::E => "e",
            Self::F => "f",
            Self::G => "g",
            Self::H => "h",
            Self::J => "j",
            Self::Js => "js",
            Self::K => "k",
            Self::M => "m",
            Self::N => "n",
            Self::P => "p",
            Self::R => "r",
            Self::S => "s",
        }
    }
}

/// A tolerance class of a hole (capital) or a shaft (small).
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Class {
    hole: bool,
    letter: Letter,
    grade: u8,
}

impl Class {
    /// The grades kept.
    pub const GRADES: std::ops::RangeInclusive<u8> = 5..=11;

    /// A hole's class.
    ///
    /// # Errors
    /// [`FitFault::Grade`] outside [`Class::GRADES`].
    pub fn hole(letter: Letter, grade: u8) -> Result<Self, FitFault> {
        Self::graded(true, letter, grade)
    }

    /// A shaft's class.
    ///
    /// # Errors
    /// [`FitFault::Grade`] outside [`Class::GRADES`].
    pub fn shaft(letter: Letter, grade: u8) -> Result<Self, FitFault> {
        Self::graded(false, letter, grade)
    }

    fn graded(hole: bool, letter: Letter, grade: u8) -> Result<Self, FitFault> {
        if Self::GRADES.contains(&grade) {
            Ok(Self { hole, letter, grade })
        } else {
            Err(FitFault::Grade(grade.to_string()))
        }
    }

    /// Reads `H7`, `js6`, `s 6`. Capitals mean a hole.
    ///
    /// # Errors
    /// [`FitFault::Unreadable`], [`FitFault::Letter`] and [`FitFault::Grade`].
    pub fn read(text: &str) -> Result<Self, FitFault> {
        let text = text.trim();
        let digits = text.find(|c: char| c.is_ascii_digit()).unwrap_or(text.len());
        let (letters, grade) = (text[..digits].trim(), &text[digits..]);
        let count = letters.chars().count();
        if !(1..=2).contains(&count)
            || !letters.chars().all(|c| c.is_ascii_alphabetic())
            || grade.is_empty()
            || !grade.bytes().all(|b| b.is_ascii_digit())
        {
            return Err(FitFault::unreadable(text));
        }
        let hole = letters.starts_with(|c: char| c.is_ascii_uppercase());
        let lower = letters.to_ascii_lowercase();
        let letter = Letter::ALL
            .into_iter()
            .find(|letter| letter.written() == lower)
            .ok_or_else(|| FitFault::Letter(letters.to_owned()))?;
        let grade = grade.parse().map_err(|_| FitFault::Grade(grade.chars().take(4).collect()))?;
        if hole { Self::hole(letter, grade) } else { Self::shaft(letter, grade) }
    }

    /// A hole, not a shaft.
    #[must_use]
    pub fn is_hole(self) -> bool {
        self.hole
    }

    /// Where the tolerance lies.
    #[must_use]
    pub fn letter(self) -> Letter {
        self.letter
    }

    /// How wide it is: the IT grade.
    #[must_use]
    pub fn grade(self) -> u8 {
        self.grade
    }

    /// Whether ISO 286-2:2010 prints a table for the class. Those it does not print follow from the
    /// rules of ISO 286-1 all the same. From memory.
    #[must_use]
    pub fn is_tabulated(self) -> bool {
        let highest = match (self.letter, self.hole) {
            (Letter::D, true) if self.grade == 5 => return false,
            (Letter::D | Letter::H | Letter::J | Letter::Js | Letter::K, _) | (Letter::N, true) => {
                11
            }
            (Letter::M | Letter::N, false) => 9,
            (
                Letter::E | Letter::F | Letter::G | Letter::M | Letter::P | Letter::R | Letter::S,
                _,
            ) => 10,
        };
        self.grade <= highest
    }
}

impl fmt::Display for Class {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let letter = self.letter.written();
        if self.hole {
            write!(f, "{}{}", letter.to_ascii_uppercase(), self.grade)
        } else {
            write!(f, "{letter}{}", self.grade)
        }
    }
}
