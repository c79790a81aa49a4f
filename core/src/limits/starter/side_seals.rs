//! Side seals.

use super::{BuildKind, GaugeKind, Input, Kind, Line, Part};
use crate::quantity::Unit;

pub(super) const LINES: &[Line] = &[
    Line {
        id: "side-seal-gap-na",
        part: Part::SideSeal,
        what: "Side seal to corner seal, naturally aspirated",
        how: "Cold, seal and both corner seals in the rotor, the radiused end pushed home; leaf between the square end and the corner seal.",
        gauge: GaugeKind::FeelerLeaf,
        input: Input::Gap,
        unit: Unit::Inch,
        lower: "0.0015",
        upper: "0.0030",
        wear: "",
        build: BuildKind::NaturallyAspirated,
        source: Kind::CommonPractice,
        note: "The tight end holds compression. A leaf that slides through, a seal that rocks freely and a corner seal that stays still: a good fit.",
        caution: "",
        words: "end gap clearance clearances side-seal gap tip feeler",
    },
    Line {
        id: "side-seal-gap-fi",
        part: Part::SideSeal,
        what: "Side seal to corner seal, forced induction",
        how: "Cold, seal and both corner seals in the rotor, the radiused end pushed home; leaf between the square end and the corner seal.",
        gauge: GaugeKind::FeelerLeaf,
        input: Input::Gap,
        unit: Unit::Inch,
        lower: "0.0015",
        upper: "0.0040",
        wear: "",
        build: BuildKind::ForcedInduction,
        source: Kind::CommonPractice,
        note: "More heat, more growth: the loose end. A seal that closes up when hot jams against its corner seal.",
        caution: "",
        words: "end gap clearance clearances side-seal gap tip feeler turbo boost",
    },
];
