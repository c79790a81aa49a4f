//! The starter sheet: a two-rotor petrol engine with 80 mm rotor housings.
//!
//! Nothing in it is published: each row says *from memory* or *common practice*, so that the tool is
//! useful at once and trusted only as far as it deserves. The tables beside this file hold rows alone.

mod side_seals;

use super::{BuildKind, Edge, GaugeKind, Input, Limit, Part, Row, Source};
use crate::quantity::Unit;

/// How sure a starter row is.
#[derive(Clone, Copy)]
enum Kind {
    CommonPractice,
    FromMemory,
}

/// A row of the tables: every figure as text, in the row's unit; empty where there is none.
struct Line {
    id: &'static str,
    part: Part,
    what: &'static str,
    how: &'static str,
    gauge: GaugeKind,
    input: Input,
    unit: Unit,
    lower: &'static str,
    upper: &'static str,
    wear: &'static str,
    build: BuildKind,
    source: Kind,
    note: &'static str,
    caution: &'static str,
    words: &'static str,
}

const TABLES: &[&[Line]] = &[side_seals::LINES];

pub(super) fn rows() -> Vec<Row> {
    TABLES.iter().flat_map(|table| table.iter()).map(row).collect()
}

fn row(line: &Line) -> Row {
    // A text that can't be read would be a row without its edge; the tests forbid it.
    let edge = |text: &str| Edge::read(text, line.unit).ok();
    Row {
        id: line.id.to_owned(),
        part: line.part,
        what: line.what.to_owned(),
        how: line.how.to_owned(),
        gauge: line.gauge,
        input: line.input,
        unit: line.unit,
        limit: Limit { lower: edge(line.lower), upper: edge(line.upper), wear: edge(line.wear) },
        build: line.build,
        source: match line.source {
            Kind::CommonPractice => Source::CommonPractice,
            Kind::FromMemory => Source::FromMemory,
        },
        note: line.note.to_owned(),
        caution: line.caution.to_owned(),
        words: line.words.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_text_of_every_line_is_read() {
        for line in TABLES.iter().flat_map(|table| table.iter()) {
            for text in [line.lower, line.upper, line.wear] {
                if !text.is_empty() {
                    assert!(Edge::read(text, line.unit).is_ok(), "{}: {text:?}", line.id);
                }
            }
            assert_eq!(row(line).faults(), [], "{}", line.id);
        }
    }

    #[test]
    fn ids_are_taken_once() {
        let mut seen = std::collections::HashSet::new();
        for line in TABLES.iter().flat_map(|table| table.iter()) {
            assert!(seen.insert(line.id), "{} twice", line.id);
        }
    }
}
