//! The build sheet: what the customer gets and the shop keeps, as plain tables ready to be laid out.
//!
//! Every figure in it comes from the book; nothing is computed here that a screen does not show.

mod engine;
mod faces;
mod pairs;
mod readings;
mod work;

use super::ABOVE_ALL;
use crate::book::{Book, BuildId};
use crate::limits::{BuildKind, Call, Sheet};
use crate::seals::Drawing;
use pitleaf_translated::translated;

/// Whose copy it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Copy {
    /// The customer's.
    Customer,
    /// The shop's: with every step, who found each hold true, and the spacers and surveys behind the figures.
    Shop,
}

/// A row of a table.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Row {
    /// Its cells, as many as the table has heads.
    pub cells: Vec<String>,
    /// How its reading stands; its word is among the cells.
    pub call: Option<Call>,
    /// A mark drawn with the finger, and the number of the cell that it stands in, under the words.
    pub drawing: Option<(usize, Drawing)>,
}

/// A section of the sheet: a table, and what is said under it.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Section {
    /// Its heading.
    pub heading: &'static str,
    /// The table's heads; empty ones for words beside what they are about.
    pub heads: &'static [&'static str],
    /// The columns, by number, whose cells stand in lines as they are made: figures with their units.
    pub whole: &'static [usize],
    /// Whether the rotors' faces are drawn with it.
    pub is_of_slots: bool,
    /// The table's rows.
    pub rows: Vec<Row>,
    /// What is said under it; may be empty.
    pub says: String,
}

/// The sheet, ready to be laid out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct BuildSheet {
    /// The build's name.
    pub title: String,
    /// Whose copy, and whether the build is a demo or not signed off.
    pub under: Vec<String>,
    /// Its sections; those with nothing to say are left out.
    pub sections: Vec<Section>,
    /// Lines to be signed, by whom.
    pub signatures: [&'static str; 2],
    /// What stands at the foot.
    pub foot: &'static [&'static str],
}

/// A build with everything the sheet is made from.
struct Source<'book> {
    book: &'book Book,
    build: &'book BuildId,
    sheet: &'book Sheet,
    kind: BuildKind,
    rotors: u8,
    copy: Copy,
    moment: &'book dyn Fn(u64) -> String,
}

#[translated]
const FOOT: &[&str] = &[
    ABOVE_ALL,
    "The figures are the builder’s own readings, taken cold on the bench unless a note says otherwise. A verdict compares a reading with the limit beside it and with the gauge’s doubt (guard band 1.65 u, ISO 14253-1); it does not judge the part.",
    "Before running: oil pressure first, no flame near fuel, nobody in line with belts and fan, never in a shut room.",
];

impl BuildSheet {
    /// The sheet of a build; none for one that is not open in the book. `moment` says a time of the book,
    /// in milliseconds since 1970, as the shop's own clock does.
    #[must_use]
    #[translated]
    pub fn of(
        book: &Book,
        build: &BuildId,
        sheet: &Sheet,
        copy: Copy,
        moment: &dyn Fn(u64) -> String,
    ) -> Option<Self> {
        let (name, kind, rotors, demo) = book.opening(build)?;
        let source = Source { book, build, sheet, kind, rotors, copy, moment };
        let mut under = vec![
            match copy {
                Copy::Customer => "Build sheet · the customer’s copy",
                Copy::Shop => "Build sheet · the shop’s copy",
            }
            .to_owned(),
        ];
        if demo {
            under.push("Demo: invented figures, no engine was measured.".to_owned());
        }
        if !book.is_signed_off(build) {
            under.push("Not signed off: figures may still change.".to_owned());
        }
        let mut sections = source.engine();
        sections.extend(source.readings());
        sections.extend(source.work());
        sections.retain(|section| !section.rows.is_empty() || !section.says.is_empty());
        Some(Self {
            title: name.to_owned(),
            under,
            sections,
            signatures: ["For the shop: name, date, signature", "Received: name, date, signature"],
            foot: FOOT,
        })
    }
}

/// A row without a verdict.
fn row<const N: usize>(cells: [&str; N]) -> Row {
    Row { cells: cells.map(str::to_owned).to_vec(), ..Row::default() }
}
