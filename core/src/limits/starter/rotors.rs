//! Rotors.

use super::{BORE, DEPTH, GaugeKind, Input, Kind, LEAF, Line, WRENCH};
use crate::quantity::Unit;
use pitleaf_translated::translated;

#[translated(what, how, note, caution, words)]
pub(super) const LINES: &[Line] = &[
    Line {
        id: "rotor-side-clearance",
        what: "Rotor to side housings, both sides together",
        how: "Rotor housing’s width less the rotor’s greatest width over its lands.",
        gauge: GaugeKind::OutsideMicrometer,
        lower: "0.12",
        upper: "0.21",
        wear: "0.10",
        note: "Too little touches when hot; the lands of the rotor then show it. Less than the wear limit: not to be run.",
        caution: "A rotor is heavy and its corners are sharp: lift with both hands.",
        words: "side clearance axial float width rub",
        ..LEAF
    },
    Line {
        id: "rotor-land-protrusion",
        what: "Rotor, height of the land over the face",
        how: "Depth from the land to the face beside it, at three places on each side.",
        lower: "0.10",
        upper: "0.20",
        note: "Broad. Lands worn unevenly: the rotor has been rubbing a side housing.",
        words: "protrusion proud wear rubbing",
        ..DEPTH
    },
    Line {
        id: "rotor-corner-seal-bore",
        what: "Rotor, corner-seal bore",
        how: "Two diameters across each other, clear of the slots; or a go and no-go plug.",
        lower: "11.00",
        upper: "11.03",
        wear: "11.08",
        note: "Broad. Past it: oversize seals where they exist, or another rotor.",
        words: "corner-seal hole diameter ID oval",
        ..BORE
    },
    Line {
        id: "rotor-apex-slot-width",
        what: "Rotor, apex-seal slot, width",
        how: "At the bottom, half way and near the top; worn slots open at the top. Slip gauges or a small bore gauge.",
        lower: "2.04",
        upper: "2.08",
        wear: "2.13",
        note: "For 2 mm seals. Worked out from the seal’s clearance and a seal of 1.98 mm: measure your seals.",
        words: "apex-seal groove bell-mouth",
        ..BORE
    },
    Line {
        id: "rotor-side-slot-width",
        what: "Rotor, side-seal slot, width",
        how: "Slip gauges or stacked leaves, at the middle and both ends.",
        gauge: GaugeKind::FeelerLeaf,
        lower: "1.03",
        upper: "1.08",
        wear: "1.10",
        note: "For 1 mm seals. Worked out from the seal’s clearance: measure your seals.",
        words: "side-seal groove",
        ..BORE
    },
    Line {
        id: "rotor-oil-seal-groove-spread",
        what: "Rotor, oil-seal groove, depth, spread round it",
        how: "Depth from the face at six places; deepest less shallowest.",
        input: Input::Deviation,
        upper: "0.10",
        source: Kind::CommonPractice,
        note: "A rule of thumb: carbon in the groove reads as a shallow place. Clean, then measure again.",
        words: "oil ring groove carbon",
        ..DEPTH
    },
    Line {
        id: "rotor-recess-volume-spread",
        what: "Rotor recesses, volume, spread over all faces",
        how: "Clear plate over the recess, filled from a burette; most less least.",
        gauge: GaugeKind::Burette,
        unit: Unit::Millilitre,
        upper: "0.5",
        source: Kind::CommonPractice,
        note: "What careful builders keep so that all chambers compress alike. Shops differ.",
        words: "bathtub pocket cc compression ratio combustion",
        ..WRENCH
    },
    Line {
        id: "rotor-mass-spread",
        what: "Rotors, mass, heavier less lighter",
        how: "Both rotors clean and dry, bearings in, seals out, on one balance.",
        gauge: GaugeKind::Balance,
        unit: Unit::Gram,
        upper: "5",
        source: Kind::CommonPractice,
        note: "Shops ask for 1 to 10 g. Rotors of one weight class are no proof: weigh them.",
        words: "weight balance matched pair scale",
        ..WRENCH
    },
    Line {
        id: "rotor-gear-play",
        what: "Rotor gear, movement on its spring pins",
        how: "Dial indicator on a tooth, gear pushed to and fro by hand.",
        gauge: GaugeKind::DialIndicator,
        input: Input::Deviation,
        upper: "0.05",
        source: Kind::CommonPractice,
        note: "A rule of thumb: it should not be felt to move at all. A loose gear is a job for another rotor.",
        words: "internal gear ring loose pins",
        ..LEAF
    },
];
