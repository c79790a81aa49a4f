//! What the engine is, and what the customer said.

use super::{Section, Source, row};
use crate::book::{Fact, Subject};
use crate::joints::oil_feed::Feed;
use crate::route::{Topic, own_rows, said};
use crate::trochoid::Measure;
use pitleaf_translated::translated;

impl Source<'_> {
    #[translated]
    pub(super) fn engine(&self) -> Vec<Section> {
        let (book, build) = (self.book, self.build);
        let said = |topic| said(book, build, topic);
        let mut rows = Vec::new();
        for topic in Topic::ASKED {
            if !said(topic).is_empty() {
                rows.push(row([topic.name(), said(topic)]));
            }
        }
        let rotors =
            if self.rotors == 1 { "1 rotor".to_owned() } else { format!("{} rotors", self.rotors) };
        rows.push(row(["Build", &format!("{}, {rotors}", self.kind.name())]));
        if let Some(engine) = book.engine(build) {
            let measures: Vec<String> = Measure::ALL
                .iter()
                .zip(&engine.texts)
                .map(|(measure, text)| format!("{} {text}", measure.name()))
                .collect();
            rows.push(row([
                "Measures",
                &format!("{}, in {}", measures.join("; "), engine.unit.symbol()),
            ]));
            if let Some(correction) = engine.correction() {
                rows.push(row(["Ratio and recess", &correction.to_string()]));
            }
        }
        rows.push(row(["Upper dowels and oil", &Feed::of(book, build).to_string()]));
        if let Some(Fact::OilFeed { words, bore, unit }) =
            book.current(build, &Subject::OilFeed).map(|entry| &entry.fact)
        {
            let bore = if bore.is_empty() {
                String::new()
            } else {
                format!(", bore {bore} {}", unit.symbol())
            };
            rows.push(row(["Outside oil feed", &format!("{words}{bore}")]));
        }
        let own = match own_rows(book, build) {
            0 => "the starter sheet, nothing in it published".to_owned(),
            own => format!("the starter sheet, {own} of its rows the builder’s own"),
        };
        rows.push(row(["Limits", &own]));
        vec![Section { heading: "Engine", heads: &["", ""], rows, ..Section::default() }]
    }
}
