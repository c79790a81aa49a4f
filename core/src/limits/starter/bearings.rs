//! Main, rotor and thrust bearings.

use super::{BORE, DIAL, Input, Kind, Line};
use pitleaf_translated::translated;

#[translated(what, how, note, caution, words)]
pub(super) const LINES: &[Line] = &[
    Line {
        id: "main-bearing-clearance",
        what: "Main bearing, clearance",
        how: "Bearing’s bore in its gear less the journal, at the same places and temperature.",
        input: Input::Gap,
        lower: "0.04",
        upper: "0.08",
        wear: "0.10",
        note: "Builders of fast engines run the loose end, with oil pressure to match.",
        words: "e-shaft crank oil clearance front rear stationary",
        ..BORE
    },
    Line {
        id: "rotor-bearing-clearance",
        what: "Rotor bearing, clearance",
        how: "Bearing’s bore in the rotor less the rotor journal, at the same places and temperature.",
        input: Input::Gap,
        lower: "0.04",
        upper: "0.08",
        wear: "0.10",
        note: "Builders of fast engines run the loose end, with oil pressure to match.",
        words: "e-shaft crank oil clearance eccentric lobe",
        ..BORE
    },
    Line {
        id: "main-bearing-bore",
        what: "Main bearing, bore",
        how: "Two diameters across each other, clear of the oil groove, bearing pressed into its gear.",
        lower: "43.025",
        upper: "43.050",
        note: "Worked back from journal and clearance: the clearance counts, this only finds a swapped shell.",
        words: "diameter ID inside shell stationary",
        ..BORE
    },
    Line {
        id: "rotor-bearing-bore",
        what: "Rotor bearing, bore",
        how: "Two diameters across each other, clear of the oil groove, bearing pressed into the rotor.",
        lower: "74.025",
        upper: "74.050",
        note: "Worked back from journal and clearance: the clearance counts, this only finds a swapped shell.",
        words: "diameter ID inside shell",
        ..BORE
    },
    Line {
        id: "thrust-plate-wear",
        what: "Thrust plate, step worn by the needles",
        how: "Dial indicator on a bridge from the unworn rim into the track.",
        upper: "0.02",
        source: Kind::CommonPractice,
        note: "A rule of thumb: a step that can be felt ends the plate.",
        words: "thrust washer needle roller",
        ..DIAL
    },
];
