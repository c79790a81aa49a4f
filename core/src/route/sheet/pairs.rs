//! Parts that run in each other, on the sheet.

use super::readings::{limit, other, verdict};
use super::{Row, Section, Source};
use crate::limits::{doubt, place_words};
use crate::route::decision::decided;
use crate::route::pairs::pairs;
use pitleaf_translated::translated;

impl Source<'_> {
    /// Parts that run in each other, of which both were read.
    #[translated]
    pub(super) fn pairs(&self) -> Section {
        let rows = pairs(self.book, self.build, self.sheet).into_iter().map(|pair| {
            let (row, unit) = (pair.row, pair.row.unit);
            let call = pair.together.verdict.call;
            let of = (row.id.as_str(), pair.place.as_str());
            let name = format!("{} · {}", place_words(&pair.place), row.what);
            let name = name.trim_start_matches(" · ").to_owned();
            let doubt = doubt(pair.together.verdict.guard, unit);
            Row {
                cells: vec![
                    name,
                    pair.figure(unit),
                    other(unit).map_or_else(String::new, |unit| pair.figure(unit)),
                    limit(&row.limit, unit),
                    verdict(Some(call), decided(self.book, self.build, of, pair.order)),
                    format!("±{doubt} {}", unit.symbol()),
                    row.source.kind().to_owned(),
                ],
                call: Some(call),
                drawing: None,
            }
        });
        Section {
            heading: "Parts that run in each other",
            heads: &[
                "Outside less inside",
                "Together",
                "Converted",
                "Limit",
                "Verdict",
                "Both gauges’ doubt",
                "Source",
            ],
            whole: &[1, 2, 3],
            rows: rows.collect(),
            ..Section::default()
        }
    }
}
