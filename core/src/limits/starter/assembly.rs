//! The engine as stacked: end play, backlash, compression, ignition.

use super::{BuildKind, COMPRESSION, DEPTH, DIAL, Input, Kind, LEAF, Line};
use crate::route::TESTER;
use pitleaf_translated::{tr, translated};

const CRANKING: &str =
    tr!("Fuel and ignition off, nobody at the belts, hot parts: gloves. Fuel mist catches fire.");

#[translated(what, how, note, caution, words)]
pub(super) const LINES: &[Line] = &[
    Line {
        id: "end-play",
        what: "End play of the eccentric shaft",
        how: "Front bolt torqued; dial indicator on the flywheel end, shaft levered to and fro.",
        input: Input::Gap,
        lower: "0.04",
        upper: "0.07",
        wear: "0.09",
        note: "Put right by a longer or shorter spacer behind the front bolt. Thrust needles dropped out of place read as none.",
        words: "endplay end float thrust e-shaft crank axial spacer crush",
        ..DIAL
    },
    Line {
        id: "gear-backlash",
        what: "Backlash, rotor gear to stationary gear",
        how: "Shaft still, rotor pushed to one side so that its bearing’s clearance is taken up. Dial indicator on the rotor’s corner or a tooth; rotor rocked by hand from tooth to tooth, the reading brought back to the pitch circle.",
        input: Input::Gap,
        lower: "0.05",
        upper: "0.30",
        source: Kind::CommonPractice,
        note: "Very broad: what gears of this size run with, not a maker’s figure. Chipped or hammered teeth end a gear first.",
        words: "gear lash play stationary internal teeth",
        ..DIAL
    },
    Line {
        id: "front-cover-stack",
        what: "Front cover over the front stack, room",
        how: "Front bolt torqued, gasket on. Depth from the side housing’s face to the farthest part of the stack that turns, and the cover’s own depth there from its joint face; the one less the other.",
        input: Input::Gap,
        lower: "0.5",
        source: Kind::CommonPractice,
        note: "A rule of thumb, no maker’s limit: nothing that turns may touch the cover at full end play. Dropped thrust needles show here, too.",
        words: "timing cover spacer thrust plate counterweight sprocket protrusion touch",
        ..DEPTH
    },
    Line {
        id: "compression-na",
        what: "Compression, each face, naturally aspirated",
        how: TESTER,
        lower: "690",
        wear: "590",
        build: BuildKind::NaturallyAspirated,
        note: "Holds at 250 turns a minute and sea level. Broad: it goes with the rotors’ ratio. A fresh engine gains over the first hours.",
        caution: CRANKING,
        words: "comp psi peak cranking leak-down health",
        cranking_speed: Some(250),
        ..COMPRESSION
    },
    Line {
        id: "compression-fi",
        what: "Compression, each face, forced induction",
        how: TESTER,
        lower: "690",
        wear: "590",
        build: BuildKind::ForcedInduction,
        note: "Holds at 250 turns a minute and sea level. Broad: 830 is met for fresh engines of 9 to 1. Looser gaps read lower when cold.",
        caution: CRANKING,
        words: "comp psi peak cranking turbo boost health",
        cranking_speed: Some(250),
        ..COMPRESSION
    },
    Line {
        id: "compression-face-spread",
        what: "Compression, spread over the three faces of a rotor",
        how: "Highest less lowest of the three peaks of one rotor.",
        upper: "150",
        note: "Older sheets say 100. One low face: its side seals, a dent or crack in its flank, a leaking plug hole. Two low faces: the apex seal or a corner seal at the apex between them.",
        caution: CRANKING,
        words: "comp psi evenness difference chambers cranking",
        ..COMPRESSION
    },
    Line {
        id: "compression-rotor-spread",
        what: "Compression, spread between rotors",
        how: "Mean of each rotor’s three peaks; higher less lower.",
        upper: "100",
        note: "Broad. Test both at the same battery charge.",
        caution: CRANKING,
        words: "comp psi evenness difference front rear cranking",
        ..COMPRESSION
    },
    Line {
        id: "plug-gap",
        what: "Spark plug, electrode gap, forced induction",
        how: "Wire gauge or leaf, at each electrode.",
        lower: "0.5",
        upper: "0.8",
        build: BuildKind::ForcedInduction,
        source: Kind::CommonPractice,
        note: "Broad: closed up as boost rises. Many plugs for these engines must not be bent: then change the plug.",
        words: "ignition sparkplug turbo boost",
        ..LEAF
    },
];
