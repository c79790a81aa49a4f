//! Where a limit comes from; always shown beside it.

use crate::kept_variants;
use pitleaf_translated::translated;
use std::fmt;

/// The four kinds of source.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Source {
    /// A published document.
    Published {
        /// Title and number.
        document: String,
        /// Edition or year.
        edition: String,
        /// Page, table or section.
        page: String,
    },
    /// What the trade does; nothing published says so.
    CommonPractice,
    /// Remembered; to be confirmed in the engine's own manual.
    FromMemory,
    /// The builder's own.
    Yours {
        /// Who entered it.
        who: String,
        /// When, as a date in words.
        when: String,
        /// From where: a manual and its page, a letter, a measurement.
        from: String,
    },
}

kept_variants!(Source {
    "published" = Published { document, edition, page },
    "common-practice" = CommonPractice,
    "from-memory" = FromMemory,
    "yours" = Yours { who, when, from },
});

impl Source {
    /// One or two words for a list.
    #[must_use]
    #[translated]
    pub fn kind(&self) -> &'static str {
        match self {
            Self::Published { .. } => "published",
            Self::CommonPractice => "common practice",
            Self::FromMemory => "from memory",
            Self::Yours { .. } => "yours",
        }
    }
}

impl fmt::Display for Source {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Published { document, edition, page } => write!(f, "Published: {document}, {edition}, {page}."),
            Self::CommonPractice => f.write_str("Common practice, no published source. The engine’s own manual stands above this figure."),
            Self::FromMemory => f.write_str("From memory, not checked: a remembered figure of one family of engines (e 15, R 105, b 80 mm; 654 cm³ a rotor). Confirm it in the engine’s own manual, which stands above this figure."),
            Self::Yours { who, when, from } => {
                f.write_str("Yours")?;
                for piece in [from, who, when] {
                    if !piece.is_empty() {
                        write!(f, ", {piece}")?;
                    }
                }
                f.write_str(".")
            }
        }
    }
}
