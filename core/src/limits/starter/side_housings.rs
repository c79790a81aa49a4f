//! Front, intermediate and rear side housings.

use super::{BORE, DEPTH, DIAL, GaugeKind, Input, Kind, Line, MICROMETER, STRAIGHTEDGE, WRENCH};
use crate::quantity::Unit;
use pitleaf_translated::translated;

#[translated(what, how, note, caution, words)]
pub(super) const LINES: &[Line] = &[
    Line {
        id: "side-housing-warp",
        what: "Side housing, warp",
        how: "Straightedge along, across and over both diagonals, clear of the worn tracks; the thickest leaf that goes under it.",
        upper: "0.04",
        note: "Past it: lapping, or another housing.",
        words: "flatness flat distortion iron plate end intermediate front rear lapping",
        ..STRAIGHTEDGE
    },
    Line {
        id: "side-housing-step-side-seal",
        what: "Side housing, step worn by the side seals",
        how: "Dial indicator on a bridge, from the unworn face into the track, where the touch is deepest.",
        upper: "0.10",
        note: "Lapping takes a shallow step out; a deep one goes through the hard skin.",
        words: "wear groove track iron plate ridge lapping",
        ..DIAL
    },
    Line {
        id: "side-housing-step-oil-seal",
        what: "Side housing, step worn by the oil seals",
        how: "Dial indicator on a bridge, from the unworn face into the oil seals’ track.",
        upper: "0.02",
        note: "From 0.01 to 0.03 are met. A step here is oil burnt.",
        words: "wear groove track iron plate ridge smoke lapping",
        ..DIAL
    },
    Line {
        id: "side-housing-wear-corner-seal",
        what: "Side housing, wear by the corner seals",
        how: "Dial indicator on a bridge, by the waist next to the plugs, where corner seals mark the face.",
        upper: "0.10",
        note: "Broad: often only given for the whole face. Watch the edge of a widened port too.",
        words: "wear groove track iron plate ridge",
        ..DIAL
    },
    Line {
        id: "side-housing-thickness-spread",
        what: "Side housing, thickness, spread round it",
        how: "Over both faces by each bolt hole; greatest less least.",
        input: Input::Deviation,
        upper: "0.03",
        source: Kind::CommonPractice,
        note: "What a lapping shop is asked for. Shops differ.",
        words: "parallel taper iron plate width lapping",
        ..MICROMETER
    },
    Line {
        id: "side-housing-lapped-off",
        what: "Side housing, taken off a face by lapping",
        how: "Thickness before less thickness after, at the same places.",
        input: Input::Deviation,
        source: Kind::CommonPractice,
        note: "No figure holds for every face: how deep it was hardened decides, and what came off in all the times it was lapped. The lapping plan of the face adds that up. Where the depth is not known, ask for hardening again at any removal.",
        words: "resurfacing grinding machining nitriding hardening skin stock removal case depth nitrocarburising",
        ..MICROMETER
    },
    Line {
        id: "side-housing-roughness",
        what: "Side housing, roughness Ra of a lapped face",
        how: "Roughness tester across the lay, clear of the tracks; or by comparison plates.",
        gauge: GaugeKind::RoughnessTester,
        unit: Unit::Micrometre,
        upper: "0.8",
        source: Kind::CommonPractice,
        note: "Seal makers ask for 0.2 to 0.8: their sheet stands above this.",
        words: "finish surface lapping texture",
        ..WRENCH
    },
    Line {
        id: "side-housing-gear-seat",
        what: "Stationary gear in its housing, clearance",
        how: "The housing’s bore less the gear’s spigot, two diameters across each other on each.",
        input: Input::Gap,
        lower: "0.01",
        upper: "0.07",
        source: Kind::CommonPractice,
        note: "The order of a sliding fit of this size: pushed in by hand, it does not rock. Front and rear alike. A gear that rocks has worn its seat.",
        words: "front stationary gear spigot fit bore",
        ..BORE
    },
    Line {
        id: "side-housing-main-bearing-depth",
        what: "Main bearing, depth under the stationary gear’s face",
        how: "From the gear’s end face to the bearing shell’s edge.",
        lower: "0.3",
        upper: "1.0",
        source: Kind::CommonPractice,
        note: "Broad. It must not stand proud, and its oil hole and lug must meet theirs.",
        words: "stationary gear press fit shell installed",
        ..DEPTH
    },
];
