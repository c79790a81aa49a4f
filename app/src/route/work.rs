//! The places of the build's work.

use super::plain;

/// A screen of the work.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum WorkPlace {
    /// The stages, and what can be done now.
    Stages,
    /// A step, by its key: its id, and behind a slash what it is made on.
    Step(String),
    /// A step's reading on a piece: the row, the piece (may be empty), the step's key.
    Check(String, String, String),
    /// The route, to be changed.
    Route,
    /// A step of the route, by its id.
    Edit(String),
    /// The customer and the engine.
    Describe,
    /// Parts past a limit, and what becomes of parts.
    Decisions,
    /// A rotor's compression.
    Compression(u8),
    /// Every build.
    Builds,
    /// A row over builds; empty until one is chosen.
    Compare(String),
    /// The build sheet.
    Sheet,
    /// Signing off.
    SignOff,
}

/// What stands in an address for no piece.
const NO_PIECE: &str = "-";

impl WorkPlace {
    /// Reads what stands behind `#/work`.
    pub fn read(pieces: &[&str]) -> Option<Self> {
        let key = |pieces: &[&str]| -> Option<String> {
            let known = matches!(pieces.len(), 1 | 2);
            let plain: Option<Vec<String>> = pieces.iter().map(|piece| plain(piece)).collect();
            known.then_some(plain?.join("/"))
        };
        Some(match *pieces {
            [] => Self::Stages,
            ["step", ref rest @ ..] => Self::Step(key(rest)?),
            ["check", row, piece, ref rest @ ..] => {
                let piece = if piece == NO_PIECE { String::new() } else { plain(piece)? };
                Self::Check(plain(row)?, piece, key(rest)?)
            }
            ["route"] => Self::Route,
            ["route", id] => Self::Edit(plain(id)?),
            ["describe"] => Self::Describe,
            ["decisions"] => Self::Decisions,
            ["compression", rotor] => Self::Compression(rotor.parse().ok()?),
            ["builds"] => Self::Builds,
            ["compare"] => Self::Compare(String::new()),
            ["compare", row] => Self::Compare(plain(row)?),
            ["sheet"] => Self::Sheet,
            ["sign-off"] => Self::SignOff,
            _ => return None,
        })
    }

    /// What stands behind `#/work`, with a slash before each piece.
    pub fn hash(&self) -> String {
        match self {
            Self::Stages => String::new(),
            Self::Step(key) => format!("/step/{key}"),
            Self::Check(row, piece, key) => {
                let piece = if piece.is_empty() { NO_PIECE } else { piece };
                format!("/check/{row}/{piece}/{key}")
            }
            Self::Route => "/route".to_owned(),
            Self::Edit(id) => format!("/route/{id}"),
            Self::Describe => "/describe".to_owned(),
            Self::Decisions => "/decisions".to_owned(),
            Self::Compression(rotor) => format!("/compression/{rotor}"),
            Self::Builds => "/builds".to_owned(),
            Self::Compare(row) if row.is_empty() => "/compare".to_owned(),
            Self::Compare(row) => format!("/compare/{row}"),
            Self::Sheet => "/sheet".to_owned(),
            Self::SignOff => "/sign-off".to_owned(),
        }
    }

    /// Where "back" leads; none for the bench.
    pub fn parent(&self) -> Option<Self> {
        match self {
            Self::Stages | Self::Builds => None,
            Self::Check(_, _, key) => Some(Self::Step(key.clone())),
            Self::Edit(_) => Some(Self::Route),
            Self::Compare(_) => Some(Self::Builds),
            _ => Some(Self::Stages),
        }
    }

    #[cfg(test)]
    pub(super) fn samples() -> Vec<Self> {
        let text = str::to_owned;
        vec![
            Self::Stages,
            Self::Step(text("turns/2")),
            Self::Step(text("describe")),
            Self::Check(text("end-play"), String::new(), text("end-play")),
            Self::Check(text("side-seal-gap-na"), text("1F-AB"), text("side-gap-na/1F")),
            Self::Route,
            Self::Edit(text("turns")),
            Self::Describe,
            Self::Decisions,
            Self::Compression(2),
            Self::Builds,
            Self::Compare(String::new()),
            Self::Compare(text("end-play")),
            Self::Sheet,
            Self::SignOff,
        ]
    }
}
