//! The table of surveys: rows only. How to read is common practice, no source.

use super::Pieces;
use crate::limits::GaugeKind::{
    self, BoreGauge, DialIndicator, FeelerLeaf, Other, OutsideMicrometer, StraightedgeAndLeaf,
};
use crate::quantity::Bounds;

pub(super) struct Row {
    pub(super) word: &'static str,
    pub(super) name: &'static str,
    pub(super) how: &'static str,
    pub(super) caution: &'static str,
    pub(super) gauge: GaugeKind,
    pub(super) bounds: &'static Bounds,
    pub(super) pieces: Pieces,
}

const HEAVY: &str =
    "a side housing is heavy and its edges are sharp. Lift with both hands, feet clear.";

/// In the order of [`super::Survey`].
pub(super) const ROWS: &[Row] = &[
    Row {
        word: "flatness",
        name: "Flatness, spot by spot",
        how: "Face clean and deburred on a surface plate or on three jacks. Zero the indicator anywhere, then read each spot; only differences count.",
        caution: HEAVY,
        gauge: DialIndicator,
        bounds: &Bounds::HEIGHT,
        pieces: Pieces::SideFaces,
    },
    Row {
        word: "straightedge",
        name: "Straightedge and leaf",
        how: "Straightedge over the face on each line. Give the thickest leaf that goes under it, and the thinnest that does not.",
        caution: "",
        gauge: StraightedgeAndLeaf,
        bounds: &Bounds::GAP,
        pieces: Pieces::AllFaces,
    },
    Row {
        word: "lapping",
        name: "Lapping plan",
        how: "What is not typed is taken from the flatness written down. The case depth is the hardener’s range; leave it empty if nobody knows.",
        caution: "lapping paste and its dust stay out of eyes, lungs and bearings. Wash the part until a white cloth stays white.",
        gauge: Other,
        bounds: &Bounds::DEVIATION,
        pieces: Pieces::SideFaces,
    },
    Row {
        word: "side-thickness",
        name: "Side housing, thickness",
        how: "Over both faces beside the bolt holes, clear of worn tracks.",
        caution: HEAVY,
        gauge: OutsideMicrometer,
        bounds: &Bounds::SIZE,
        pieces: Pieces::SideHousings,
    },
    Row {
        word: "housing-width",
        name: "Rotor housing, width",
        how: "Over both faces, as near the running surface as the anvils go. Housing and micrometer at one temperature.",
        caution: "",
        gauge: OutsideMicrometer,
        bounds: &Bounds::SIZE,
        pieces: Pieces::Rotors,
    },
    Row {
        word: "rotor-width",
        name: "Rotor, width over its lands",
        how: "Over the lands of both faces, near each corner and at the middle of each flank. Seals out, lands clean.",
        caution: "a rotor is heavy and its corners are sharp. Lift with both hands.",
        gauge: OutsideMicrometer,
        bounds: &Bounds::SIZE,
        pieces: Pieces::Rotors,
    },
    Row {
        word: "apex-seal-length",
        name: "Apex seals, length",
        how: "Each seal from end to end, its corner piece in place if it has one.",
        caution: "",
        gauge: OutsideMicrometer,
        bounds: &Bounds::SIZE,
        pieces: Pieces::Rotors,
    },
    Row {
        word: "bore",
        name: "Bearing, bore",
        how: "Two diameters across each other at three places along the bore, clear of the oil groove, bearing pressed in.",
        caution: "",
        gauge: BoreGauge,
        bounds: &Bounds::SIZE,
        pieces: Pieces::Bearings,
    },
    Row {
        word: "journal",
        name: "Journal",
        how: "Two diameters across each other at three places along the journal.",
        caution: "the shaft is heavy and rolls. Stop the blocks, keep fingers clear.",
        gauge: OutsideMicrometer,
        bounds: &Bounds::SIZE,
        pieces: Pieces::Bearings,
    },
    Row {
        word: "plastic-gauge",
        name: "Plastic gauge strips",
        how: "Hold each squeezed strip against its scale. At either end give the clearance of the mark that is wider than the strip, and of the mark that is narrower. Don’t turn the shaft.",
        caution: "",
        gauge: FeelerLeaf,
        bounds: &Bounds::GAP,
        pieces: Pieces::Bearings,
    },
    Row {
        word: "runout-eight",
        name: "Runout, eight places",
        how: "Chalk eight places evenly round the shaft. Turn it slowly, against the numbers, and read at each. A higher reading is farther out.",
        caution: "the shaft is heavy and rolls. Stop the blocks, keep fingers clear.",
        gauge: DialIndicator,
        bounds: &Bounds::HEIGHT,
        pieces: Pieces::ShaftPlaces,
    },
    Row {
        word: "runout-twelve",
        name: "Runout, twelve places",
        how: "Chalk twelve places evenly round the shaft. Turn it slowly, against the numbers, and read at each. A higher reading is farther out.",
        caution: "the shaft is heavy and rolls. Stop the blocks, keep fingers clear.",
        gauge: DialIndicator,
        bounds: &Bounds::HEIGHT,
        pieces: Pieces::ShaftPlaces,
    },
    Row {
        word: "spacers",
        name: "Spacers at hand",
        how: "Measure each spacer once and scribe its letter on it.",
        caution: "",
        gauge: OutsideMicrometer,
        bounds: &Bounds::SIZE,
        pieces: Pieces::One,
    },
    Row {
        word: "end-play",
        name: "End play",
        how: "Front bolt torqued; dial indicator on the flywheel end, shaft levered to and fro. Repeat it two or three times. Then the spacer that is in.",
        caution: "lever gently, away from gear teeth and seals; fingers out of the gap.",
        gauge: DialIndicator,
        bounds: &Bounds::GAP,
        pieces: Pieces::One,
    },
    Row {
        word: "end-play-after",
        name: "End play, new spacer in",
        how: "As before, with the chosen spacer in and the front bolt torqued again.",
        caution: "lever gently, away from gear teeth and seals; fingers out of the gap.",
        gauge: DialIndicator,
        bounds: &Bounds::GAP,
        pieces: Pieces::One,
    },
];
