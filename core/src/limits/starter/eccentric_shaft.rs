//! Eccentric shaft, flywheel and balance.

use super::{DIAL, GaugeKind, Input, Kind, Line, MICROMETER, WRENCH};
use crate::quantity::Unit;
use pitleaf_translated::translated;

#[translated(what, how, note, caution, words)]
pub(super) const LINES: &[Line] = &[
    Line {
        id: "shaft-main-journal",
        what: "Main journal, diameter",
        how: "Two diameters across each other at both ends of the journal; the least counts.",
        lower: "42.970",
        upper: "42.985",
        note: "For journals of 43 mm.",
        words: "e-shaft crank crankshaft size OD",
        ..MICROMETER
    },
    Line {
        id: "shaft-rotor-journal",
        what: "Rotor journal, diameter",
        how: "Two diameters across each other at both ends of the journal; the least counts.",
        lower: "73.970",
        upper: "73.985",
        note: "For journals of 74 mm.",
        words: "e-shaft crank crankshaft lobe eccentric size OD",
        ..MICROMETER
    },
    Line {
        id: "shaft-journal-roundness",
        what: "Journals, out of round and taper",
        how: "Greatest less least diameter of one journal.",
        input: Input::Deviation,
        upper: "0.01",
        source: Kind::CommonPractice,
        note: "A rule of thumb of engine shops for ground journals.",
        words: "e-shaft crank crankshaft oval ovality round",
        ..MICROMETER
    },
    Line {
        id: "shaft-runout",
        what: "Eccentric shaft, runout",
        how: "On vee blocks under the main journals; dial indicator at each end in turn, one slow turn, whole reading.",
        upper: "0.06",
        note: "Up to 0.12 is met for some engines. Not to be straightened.",
        caution: "The shaft is heavy and rolls: stop the blocks, keep fingers clear.",
        words: "e-shaft crank crankshaft bent TIR run-out straight",
        ..DIAL
    },
    Line {
        id: "shaft-seal-track",
        what: "Rear oil seal’s track, depth of the groove",
        how: "Dial indicator on a bridge over the track.",
        upper: "0.05",
        source: Kind::CommonPractice,
        note: "A rule of thumb: a groove that catches a nail leaks. The seal may be set to run beside it.",
        words: "e-shaft crank rear main lip leak",
        ..DIAL
    },
    Line {
        id: "flywheel-runout",
        what: "Flywheel, runout of the clutch face",
        how: "Torqued on, shaft pushed to one end of its play; dial indicator near the rim, one slow turn, whole reading.",
        upper: "0.20",
        note: "Broad. Keep the shaft pushed the same way, or end play is read too.",
        words: "TIR run-out clutch face wobble",
        ..DIAL
    },
    Line {
        id: "shaft-unbalance",
        what: "Rotating parts, unbalance left in each plane",
        how: "On the balancing machine, with counterweights, flywheel and the rotors’ dummy weights, at each plane.",
        gauge: GaugeKind::BalancingMachine,
        unit: Unit::GramMillimetre,
        upper: "30",
        source: Kind::CommonPractice,
        note: "What grade G 2.5 leaves 20 kg at 8000 turns a minute, half to each plane. Work it out for your own mass and speed.",
        caution: "The machine spins heavy parts: guard shut, loose clothing away.",
        words: "e-shaft crank balance balancing imbalance vibration counterweight bob weight",
        ..WRENCH
    },
];
