//! The starter sheet: a two-rotor petrol engine with 80 mm rotor housings. Its rows from memory are remembered
//! figures of one family of sizes: e 15, R 105, b 80 mm, 654 cm³ a rotor.
//!
//! Nothing in it is published: each row says *from memory* or *common practice*, so that the tool is
//! useful at once and trusted only as far as it deserves. The tables beside this file hold rows alone.

mod apex_seals;
mod assembly;
mod bearings;
mod corner_seals;
mod eccentric_shaft;
mod fasteners;
mod oil_and_coolant;
mod oil_seals;
mod rotor_housings;
mod rotors;
mod side_housings;
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
    cranking_speed: Option<u32>,
}

// Ways of measuring, for the tables to start a row from: `..LEAF` says gauge, kind of reading and unit.
// A row is from memory and holds for every build unless it says otherwise.

/// A gap taken with feeler leaves.
const LEAF: Line = Line {
    id: "",
    what: "",
    how: "",
    gauge: GaugeKind::FeelerLeaf,
    input: Input::Gap,
    unit: Unit::Millimetre,
    lower: "",
    upper: "",
    wear: "",
    build: BuildKind::Any,
    source: Kind::FromMemory,
    note: "",
    caution: "",
    words: "",
    cranking_speed: None,
};
/// A warp taken with a straightedge and leaves.
const STRAIGHTEDGE: Line =
    Line { gauge: GaugeKind::StraightedgeAndLeaf, input: Input::Deviation, ..LEAF };
/// A size over faces taken with a micrometer.
const MICROMETER: Line = Line { gauge: GaugeKind::OutsideMicrometer, input: Input::Size, ..LEAF };
/// A size between faces taken with a bore gauge.
const BORE: Line = Line { gauge: GaugeKind::BoreGauge, input: Input::Size, ..LEAF };
/// A height over or under a face taken with a depth micrometer.
const DEPTH: Line = Line { gauge: GaugeKind::DepthMicrometer, input: Input::Height, ..LEAF };
/// A departure from true form taken with a dial indicator.
const DIAL: Line = Line { gauge: GaugeKind::DialIndicator, input: Input::Deviation, ..LEAF };
/// A size over faces taken with a caliper.
const CALIPER: Line = Line { gauge: GaugeKind::VernierCaliper, input: Input::Size, ..LEAF };
/// A torque read off the wrench.
const WRENCH: Line =
    Line { gauge: GaugeKind::TorqueWrench, input: Input::Other, unit: Unit::NewtonMetre, ..LEAF };
/// A pressure read off a gauge.
const PRESSURE: Line = Line { gauge: GaugeKind::PressureGauge, unit: Unit::Kilopascal, ..WRENCH };
/// A pressure a tester holds while the engine is cranked.
const COMPRESSION: Line = Line { gauge: GaugeKind::CompressionTester, ..PRESSURE };

const TABLES: &[(Part, &[Line])] = &[
    (Part::SideSeal, side_seals::LINES),
    (Part::CornerSeal, corner_seals::LINES),
    (Part::ApexSeal, apex_seals::LINES),
    (Part::OilSeal, oil_seals::LINES),
    (Part::Rotor, rotors::LINES),
    (Part::RotorHousing, rotor_housings::LINES),
    (Part::SideHousing, side_housings::LINES),
    (Part::EccentricShaft, eccentric_shaft::LINES),
    (Part::Bearing, bearings::LINES),
    (Part::Assembly, assembly::LINES),
    (Part::Assembly, oil_and_coolant::LINES),
    (Part::Fastener, fasteners::LINES),
];

fn lines() -> impl Iterator<Item = (Part, &'static Line)> {
    TABLES.iter().flat_map(|(part, lines)| lines.iter().map(|line| (*part, line)))
}

pub(super) fn rows() -> Vec<Row> {
    lines().map(|(part, line)| row(part, line)).collect()
}

fn row(part: Part, line: &Line) -> Row {
    // A text that can't be read would be a row without its edge; the tests forbid it.
    let edge = |text: &str| Edge::read(text, line.unit).ok();
    Row {
        id: line.id.to_owned(),
        part,
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
        cranking_speed: line.cranking_speed,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_text_of_every_line_is_read() {
        for (part, line) in lines() {
            for text in [line.lower, line.upper, line.wear] {
                if !text.is_empty() {
                    assert!(Edge::read(text, line.unit).is_ok(), "{}: {text:?}", line.id);
                }
            }
            // What lapping takes off goes by the depth of each face's case.
            let faults = if line.id == "side-housing-lapped-off" {
                vec![super::super::RowFault::NoEdge]
            } else {
                Vec::new()
            };
            assert_eq!(row(part, line).faults(), faults, "{}", line.id);
        }
    }

    #[test]
    fn ids_are_taken_once() {
        let mut seen = std::collections::HashSet::new();
        for (_, line) in lines() {
            assert!(seen.insert(line.id), "{} twice", line.id);
        }
    }
}
