//! One thing done to a face of a side housing: lapped, hardened, polished; or how it came in.

use super::lapping::Range;
use crate::language;
use crate::letters::lower;
use crate::quantity::{Bounds, Fault, Unit};
use crate::seals::Written;
use crate::{kept_fields, kept_words};
use pitleaf_translated::{tr, translated};
use std::fmt;

/// What was done.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Operation {
    /// The housing came in: its figure is what had come off before, since it was last hardened.
    CameIn,
    /// Lapped: its figure came off.
    Lapped,
    /// Hardened: its figure is what that added.
    Hardened,
    /// Finished or polished after hardening: its figure came off.
    Finished,
}

kept_words!(Operation {
    CameIn = "came-in",
    Lapped = "lapped",
    Hardened = "hardened",
    Finished = "finished",
});

impl Operation {
    /// Every one, in the order of the work.
    pub const ALL: [Self; 4] = [Self::CameIn, Self::Lapped, Self::Hardened, Self::Finished];

    /// Its name.
    #[must_use]
    #[translated]
    pub fn name(self) -> &'static str {
        match self {
            Self::CameIn => "came in",
            Self::Lapped => "lapped",
            Self::Hardened => "hardened",
            Self::Finished => "finished",
        }
    }

    /// The name of its figure.
    #[must_use]
    #[translated]
    pub fn figure(self) -> &'static str {
        match self {
            Self::CameIn => "Taken off before",
            Self::Lapped | Self::Finished => "Taken off",
            Self::Hardened => "Growth",
        }
    }

    /// How its figure is found.
    #[must_use]
    #[translated]
    pub fn how(self) -> &'static str {
        match self {
            Self::CameIn => {
                "What had come off since the face was last hardened: 0 where it was never lapped. The depth it was hardened to (NHD, ISO 18203). Leave empty what nobody knows."
            }
            Self::Lapped | Self::Finished => {
                "Thickness before less thickness after, at the same places."
            }
            Self::Hardened => {
                "Thickness after less thickness before, and the depth as the hardener gives it (NHD, ISO 18203). Leave empty what was not measured or said."
            }
        }
    }

    /// Whether a depth of the skin is said with it.
    #[must_use]
    pub fn has_depth(self) -> bool {
        matches!(self, Self::CameIn | Self::Hardened)
    }

    /// Whether it says nothing without its figure.
    fn needs_figure(self) -> bool {
        matches!(self, Self::Lapped | Self::Finished)
    }
}

/// One thing done to a face.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FaceWork {
    /// Which face, as surveys name it: `front`, `intermediate-1-rear`.
    pub piece: String,
    /// The mark cast into the housing, or stamped on it: by it the face is known in the next build.
    pub mark: String,
    /// What was done.
    pub operation: Operation,
    /// Its figure; none where it is not known.
    pub figure: Option<Written>,
    /// The least depth (NHD) that the hardener gives.
    pub least: Option<Written>,
    /// The greatest.
    pub most: Option<Written>,
}

kept_fields!(FaceWork {
    piece,
    mark,
    operation,
    figure: left_out,
    least: left_out,
    most: left_out
});

/// Why it was not written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum FaceWorkFault {
    /// Without its mark the face is not known again.
    NoMark,
    /// A figure that can't be read, or is missing: its name, and what is wrong.
    Figure(&'static str, Fault),
    /// The least depth is more than the greatest.
    Backwards,
}

impl FaceWork {
    /// What was done, from the texts of its figure and of the least and the greatest depth; `unit` holds where
    /// none is typed. A depth counts where one is said ([`Operation::has_depth`]).
    ///
    /// # Errors
    /// [`FaceWorkFault`]; figures within [`Bounds::DEVIATION`].
    pub fn typed(
        piece: &str,
        mark: &str,
        operation: Operation,
        unit: Unit,
        [figure, least, most]: [&str; 3],
    ) -> Result<Self, FaceWorkFault> {
        let mark = mark.split_whitespace().collect::<Vec<_>>().join(" ");
        if mark.is_empty() {
            return Err(FaceWorkFault::NoMark);
        }
        let read = |name, text: &str, is_needed: bool| {
            if text.trim().is_empty() && !is_needed {
                return Ok(None);
            }
            let read = Written::read(text, unit, &Bounds::DEVIATION);
            read.map(Some).map_err(|fault| FaceWorkFault::Figure(name, fault))
        };
        let depth = |name, text| {
            if operation.has_depth() { read(name, text, false) } else { Ok(None) }
        };
        let work = Self {
            piece: piece.to_owned(),
            mark,
            operation,
            figure: read(operation.figure(), figure, operation.needs_figure())?,
            least: depth(tr!("Least depth"), least)?,
            most: depth(tr!("Greatest depth"), most)?,
        };
        match (&work.least, &work.most) {
            (Some(least), Some(most)) if least.amount() > most.amount() => {
                Err(FaceWorkFault::Backwards)
            }
            _ => Ok(work),
        }
    }

    /// The depth; none where it was not given. One end alone stands for both.
    #[must_use]
    pub fn depth(&self) -> Option<Range> {
        let length = |written: &Option<Written>| written.as_ref()?.amount().length();
        let (least, most) = (length(&self.least), length(&self.most));
        Some(Range { least: least.or(most)?, most: most.or(least)? })
    }

    /// Whether both are of the same face: of one mark, on the same face of a housing in the same place.
    ///
    /// Case does not count, nor does which of several intermediate housings it is.
    #[must_use]
    pub fn is_of(&self, piece: &str, mark: &str) -> bool {
        let squeezed = mark.split_whitespace().collect::<Vec<_>>().join(" ");
        sort_of(&self.piece) == sort_of(piece) && lower(&self.mark) == lower(&squeezed)
    }
}

/// A face without the number of its housing.
fn sort_of(piece: &str) -> String {
    piece.split('-').filter(|part| part.parse::<u8>().is_err()).collect::<Vec<_>>().join("-")
}

impl fmt::Display for FaceWork {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let name = self.operation.name();
        let said = |written: &Option<Written>| {
            written
                .as_ref()
                .map_or_else(String::new, |written| language::figure(&written.to_string()))
        };
        match (self.operation, &self.figure) {
            (Operation::CameIn, None) => write!(f, "{name}, taken off before: not known"),
            (Operation::CameIn, Some(_)) => {
                write!(f, "{name}, taken off before: {}", said(&self.figure))
            }
            (Operation::Hardened, None) => write!(f, "{name}, growth not measured"),
            (Operation::Hardened, Some(_)) => write!(f, "{name}, grown by {}", said(&self.figure)),
            _ => write!(f, "{name}, {} off", said(&self.figure)),
        }?;
        match (&self.least, &self.most) {
            (None, None) => Ok(()),
            (Some(_), Some(_)) => {
                write!(f, ", depth {} to {}", said(&self.least), said(&self.most))
            }
            (Some(_), None) => write!(f, ", depth {}", said(&self.least)),
            (None, Some(_)) => write!(f, ", depth {}", said(&self.most)),
        }
    }
}

impl fmt::Display for FaceWorkFault {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NoMark => f.write_str(
                "Give the mark cast into the housing; scribe one where there is none. By it the face is known in its next build.",
            ),
            Self::Figure(name, Fault::Empty) => write!(f, "{name}: type how much."),
            Self::Figure(name, fault) => write!(f, "{name}: {fault}"),
            Self::Backwards => f.write_str("The depth is given from the lesser figure to the greater. Swap them."),
        }
    }
}

impl std::error::Error for FaceWorkFault {}
