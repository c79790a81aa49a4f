//! What was done to the faces, on the sheet.

use super::readings::verdict;
use super::{Row, Section, Source};
use crate::faces::report::{LAPPED_OFF, skin_left};
use crate::faces::{Ledger, Survey, piece_words};
use crate::quantity::Unit;
use crate::route::decision::decided;
use pitleaf_translated::translated;

impl Source<'_> {
    /// The ledger of each face whose mark is known: what was done to it in every build, and the skin it has now.
    #[translated]
    pub(super) fn faces(&self) -> Section {
        let mut rows = Vec::new();
        for piece in Survey::Lapping.pieces(self.rotors) {
            let Some(ledger) = Ledger::of(self.book, self.build, self.sheet, &piece) else {
                continue;
            };
            let done = ledger.lines.iter().map(|line| {
                let build = self.book.opening(&line.entry.build).map_or("", |(name, ..)| name);
                format!("{build}: {}", line.work)
            });
            let (left, call) = (skin_left(&ledger.skin, Unit::Millimetre), ledger.call());
            let order = ledger.lines.last().map_or(0, |line| line.entry.order);
            let decision = decided(self.book, self.build, (LAPPED_OFF, &piece), order);
            rows.push(Row {
                cells: vec![
                    piece_words(&piece),
                    ledger.mark.clone(),
                    done.collect::<Vec<_>>().join("\n"),
                    ledger.off_words(),
                    left.figure,
                    left.says,
                    verdict(call, decision),
                ],
                call,
                drawing: None,
            });
        }
        Section {
            heading: "Faces lapped and hardened",
            heads: &[
                "Face",
                "Mark",
                "What was done",
                "Off since hardened",
                "Case left",
                "Beside it",
                "Verdict",
            ],
            whole: &[3],
            rows,
            ..Section::default()
        }
    }
}
