//! Tension bolts, studs, dowels and the bolts around them.

use super::{BORE, CALIPER, Input, Kind, Line, WRENCH};
use crate::quantity::Unit;
use pitleaf_translated::{tr, translated};

const DOWEL: &str = tr!("Hole’s diameter less the dowel’s, in every housing it goes through.");

#[translated(what, how, note, caution, words)]
pub(super) const LINES: &[Line] = &[
    Line {
        id: "tension-bolt-torque",
        what: "Tension bolts, torque",
        how: "In the order of the engine’s own manual, or from the middle outwards without one, in two or three steps, threads oiled, washers’ seals new.",
        lower: "32",
        upper: "38",
        note: "For the bolts as first fitted. Larger studs have a figure of their own.",
        words: "through-bolt long bolts stack clamp tightening Nm lbf",
        ..WRENCH
    },
    Line {
        id: "tension-bolt-length-spread",
        what: "Tension bolts, length, spread in a set",
        how: "All of one length class stood on a plate; longest less shortest.",
        input: Input::Deviation,
        upper: "0.3",
        source: Kind::CommonPractice,
        note: "Finds the stretched one: a rule of thumb, no maker’s limit. Bolts come in more than one length: sort first.",
        words: "stretch stretched yield necked through-bolt long",
        ..CALIPER
    },
    Line {
        id: "through-stud-torque",
        what: "Through studs of 1/2 in, nuts, torque",
        how: "In the order of the tension bolts, in three steps, with the lubricant the stud’s maker names.",
        unit: Unit::PoundForceFoot,
        lower: "30",
        upper: "40",
        source: Kind::CommonPractice,
        note: "Broad: housings of iron and aluminium between them grow, and the lubricant decides the clamp. The stud maker’s sheet stands above this.",
        words: "stud kit tension clamp tightening Nm",
        ..WRENCH
    },
    Line {
        id: "dowel-clearance-hollow",
        what: "Hollow dowel in its hole, clearance",
        how: DOWEL,
        input: Input::Gap,
        upper: "0.05",
        source: Kind::CommonPractice,
        note: "A rule of thumb: it pushes in by hand and does not rock. Fretted holes let the housings walk.",
        words: "tubular pin fit hole locating",
        ..BORE
    },
    Line {
        id: "dowel-clearance-solid",
        what: "Solid dowel in its reamed hole, clearance",
        how: DOWEL,
        input: Input::Gap,
        lower: "0.006",
        upper: "0.035",
        source: Kind::CommonPractice,
        note: "The fit H7/g6 at 10 to 18 mm. A solid dowel shuts the oil passage through the upper dowels: feed the front bearing from outside.",
        words: "pin fit hole reamer locating doweling",
        ..BORE
    },
    Line {
        id: "stationary-gear-bolts",
        what: "Stationary gear bolts, torque",
        how: "Crosswise, in two steps.",
        lower: "16",
        upper: "23",
        words: "front rear gear bearing housing tightening Nm",
        ..WRENCH
    },
    Line {
        id: "front-bolt-torque",
        what: "Front bolt of the eccentric shaft, torque",
        how: "Flywheel held; thrust needles kept in place until it is tight.",
        lower: "108",
        upper: "127",
        note: "Later engines take about twice as much: look it up. End play is measured after this.",
        words: "e-shaft crank pulley hub centre tightening Nm",
        ..WRENCH
    },
    Line {
        id: "flywheel-nut-torque",
        what: "Flywheel nut, torque",
        how: "Thread locked and face sealed as the manual says; flywheel held by a stop.",
        lower: "392",
        upper: "490",
        caution: "A long bar and great force: engine bolted down, stop secured, feet and hands clear.",
        words: "e-shaft crank rear counterweight nut tightening Nm",
        ..WRENCH
    },
    Line {
        id: "oil-pump-nut-torque",
        what: "Oil pump sprocket nut, torque",
        how: "Chain on, new lock washer bent up after.",
        lower: "31",
        upper: "46",
        words: "chain drive lock tightening Nm",
        ..WRENCH
    },
    Line {
        id: "oil-pan-bolts",
        what: "Oil pan bolts, torque",
        how: "All round in two steps.",
        lower: "8",
        upper: "11",
        words: "sump tightening Nm leak",
        ..WRENCH
    },
    Line {
        id: "spark-plug-torque",
        what: "Spark plugs, torque",
        how: "Cold, dry thread, by hand first.",
        lower: "13",
        upper: "18",
        words: "ignition sparkplug tightening Nm leading trailing",
        ..WRENCH
    },
];
