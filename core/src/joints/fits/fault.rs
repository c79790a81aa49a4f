//! Why a fit can't be given, each with its sentence for the bench.

use super::{Class, Letter};
use pitleaf_translated::translated;
use std::fmt;

/// Why limits were not given.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum FitFault {
    /// No letter and grade.
    Unreadable(String),
    /// A letter there is no table of here.
    Letter(String),
    /// A grade there is no table of here.
    Grade(String),
    /// A size outside the tables.
    Size,
    /// A class the standard does not define.
    Undefined(Class),
    /// Limits the wrong way round.
    Swapped,
}

impl FitFault {
    pub(super) fn unreadable(text: &str) -> Self {
        const MOST: usize = 12;
        let cut: String = text.chars().take(MOST).collect();
        Self::Unreadable(if cut.len() < text.len() { cut + "…" } else { cut })
    }
}

impl fmt::Display for FitFault {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Unreadable(text) => write!(
                f,
                "“{text}” is no tolerance class. Write a letter and a grade, as H7 or s6."
            ),
            Self::Letter(letter) => write!(
                f,
                "There is no table for {letter} here. Holes: D, E, F, G, H, J, JS, K, M, N, P, R, S; shafts: the same in small letters."
            ),
            Self::Grade(grade) => {
                write!(f, "There is no table for grade {grade} here. Choose 5 to 11.")
            }
            Self::Size => f.write_str(
                "The tables here hold sizes above 1 and up to 250 mm. Check the size and its unit.",
            ),
            Self::Undefined(class) => {
                let (held, instead) = match (class.letter(), class.is_hole()) {
                    (Letter::K, _) => ("up to grade 8", "JS or N"),
                    (_, true) => ("in grades 6, 7 and 8", "JS"),
                    (_, false) => ("in grades 5, 6 and 7", "js"),
                };
                let letter: String =
                    class.to_string().chars().filter(|c| c.is_ascii_alphabetic()).collect();
                write!(
                    f,
                    "ISO 286 defines no {class} for this size: {letter} exists {held}. Choose another grade, or {instead}."
                )
            }
            Self::Swapped => {
                f.write_str("The least size must not be above the greatest. Swap them.")
            }
        }
    }
}

impl std::error::Error for FitFault {}
