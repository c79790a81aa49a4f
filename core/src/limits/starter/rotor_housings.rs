//! Rotor housings.

use super::{DIAL, Input, Kind, Line, MICROMETER, STRAIGHTEDGE};
use pitleaf_translated::translated;

#[translated(what, how, note, caution, words)]
pub(super) const LINES: &[Line] = &[
    Line {
        id: "rotor-housing-width",
        what: "Rotor housing, width at the trochoid",
        how: "Over both faces, as near the running surface as the anvils go: by the plugs, the ports and both waists; the least counts.",
        lower: "79.94",
        note: "For 80 mm housings: at most 0.06 mm gone. Clean faces; both at one temperature with the micrometer.",
        words: "thickness size narrow depth",
        ..MICROMETER
    },
    Line {
        id: "rotor-housing-width-spread",
        what: "Rotor housing, width, spread round it",
        how: "The same places: greatest less least.",
        input: Input::Deviation,
        upper: "0.06",
        note: "The least is usually beside the plugs.",
        words: "thickness uneven parallel taper",
        ..MICROMETER
    },
    Line {
        id: "rotor-housing-pair-spread",
        what: "Rotor housings, width, front less rear",
        how: "The mean width of each; the greater less the smaller.",
        input: Input::Deviation,
        upper: "0.03",
        source: Kind::CommonPractice,
        note: "Shops pair housings of like width so that both rotors keep like clearance. Broad.",
        words: "matched pair thickness difference",
        ..MICROMETER
    },
    Line {
        id: "rotor-housing-warp",
        what: "Rotor housing, warp of a joint face",
        how: "Straightedge along, across and over both diagonals; the thickest leaf that goes under it.",
        upper: "0.04",
        note: "Not to be ground: the width goes with it.",
        words: "flatness flat distortion overheated",
        ..STRAIGHTEDGE
    },
    Line {
        id: "rotor-housing-track-wear",
        what: "Rotor housing, hollow worn into the running surface",
        how: "Dial indicator on a bridge across the surface, from the unworn rim to the track, where the touch is deepest.",
        upper: "0.05",
        source: Kind::CommonPractice,
        note: "A rule of thumb. Flaked or scored plating ends the housing whatever it measures: write that down in words.",
        words: "chrome plating trochoid step groove chatter marks flaking flaked",
        ..DIAL
    },
];
