//! Mock-up and final assembly.

use super::{Answer, DO, Each, HOLD, Line, Sort};
use pitleaf_translated::translated;

#[translated(words, care)]
pub(super) const MOCK_UP: &[Line] = &[
    Line {
        id: "dry-stack",
        words: "Stacked once without seals and sealant, tightened at a low torque",
        care: "Two people or a hoist for shaft and housings: fingers go between faces.",
        needs: "washed-again warp-as-built step-as-built thickness-as-built roughness-as-built rotor-bearing-as-built main-bearing-as-built",
        ..DO
    },
    Line {
        id: "rotor-side",
        kind: Sort::Measure("rotor-side-clearance"),
        each: Each::Rotor,
        words: "Rotor to side housings, both sides together",
        needs: "dry-stack",
        ..DO
    },
    Line {
        id: "dry-turns",
        kind: Sort::Hold(Answer::Builder),
        words: "The shaft turns a full turn by hand in the dry stack, without a tight spot",
        needs: "dry-stack",
        ..HOLD
    },
    Line {
        id: "dowels-tried",
        words: "Every dowel tried in all its housings, and the moment written down at which it goes in",
        needs: "dry-stack",
        ..DO
    },
    Line {
        id: "dry-apart",
        words: "Dry stack taken apart and wiped clean",
        needs: "rotor-side dry-turns dowels-tried",
        ..DO
    },
];

#[translated(words, care)]
pub(super) const ASSEMBLY: &[Line] = &[
    Line {
        id: "gears-in",
        words: "Stationary gears in, bearing tangs and oil holes lined up, their bolts tightened",
        needs: "dry-apart",
        ..DO
    },
    Line {
        id: "sealant-time",
        kind: Sort::Hold(Answer::Builder),
        words: "There are hours without a break to close the stack, and everything lies at hand",
        care: "Sealant that skins over before the bolts are tight leaks.",
        needs: "gears-in washed-again",
        ..HOLD
    },
    Line {
        id: "shaft-in",
        words: "Rear side housing on the stand, and the shaft at the moment the engine’s own order gives",
        care: "Oil every bearing and journal. A dropped shaft ruins face and fingers: two people or a hoist.",
        needs: "sealant-time",
        ..DO
    },
    Line {
        id: "coolant-seals",
        kind: Sort::Hold(Answer::Builder),
        each: Each::RotorFromRear,
        words: "Coolant seals are seated all round, not twisted, and the housing’s legs have their sealant",
        care: "A seal that stands out of its groove is cut by the next housing.",
        needs: "shaft-in <turns",
        ..HOLD
    },
    Line {
        id: "springs-in",
        kind: Sort::Hold(Answer::Builder),
        each: Each::RotorFromRear,
        words: "Springs are in under every seal of this rotor before it is closed up",
        care: "Springs fly: eye protection on. Press each seal: it must come back by itself.",
        needs: "shaft-in <turns",
        ..HOLD
    },
    Line {
        id: "in-own-slot",
        kind: Sort::Hold(Answer::Builder),
        each: Each::RotorFromRear,
        words: "Every seal of this rotor is in the slot it was cut for: marks read once more",
        needs: "springs-in own-slot",
        ..HOLD
    },
    Line {
        id: "corners-straight",
        kind: Sort::Hold(Answer::Builder),
        each: Each::RotorFromRear,
        words: "No corner seal has turned: each one’s slot lines up with the apex groove",
        care: "A turned corner seal no longer lets the apex seal down.",
        needs: "springs-in",
        ..HOLD
    },
    Line {
        id: "rotor-on",
        each: Each::RotorFromRear,
        words: "Rotor on its journal and in mesh at its mark, rotor housing over it",
        care: "Fingers out from under the rotor.",
        needs: "in-own-slot corners-straight coolant-seals",
        ..DO
    },
    Line {
        id: "apex-in",
        each: Each::RotorFromRear,
        words: "Apex seals, their corner pieces and springs in, glue for fitting used sparingly",
        needs: "rotor-on",
        ..DO
    },
    Line {
        id: "dowel-moment",
        kind: Sort::Hold(Answer::Builder),
        each: Each::RotorFromRear,
        words: "The dowels that go in at this moment are in, each with its seal",
        care: "One forgotten now can’t be put in later.",
        needs: "rotor-on dowels-tried",
        ..HOLD
    },
    Line {
        id: "next-housing",
        each: Each::RotorFromRear,
        words: "Side housing in front of this rotor on, pressed down evenly by hand",
        care: "Never pulled down by the bolts. Fingers clear of the faces.",
        needs: "apex-in dowel-moment",
        ..DO
    },
    Line {
        id: "turns",
        kind: Sort::Hold(Answer::Builder),
        each: Each::RotorFromRear,
        words: "The shaft turns freely with this housing on",
        needs: "next-housing",
        ..HOLD
    },
    Line {
        id: "slots-fitted",
        kind: Sort::Hold(Answer::SlotsFitted),
        words: "The book has a seal fitted in every side-seal slot",
        needs: "turns",
        ..HOLD
    },
    Line {
        id: "tightened",
        words: "Tension bolts tightened in passes, in the manual’s order or from the middle outwards, each ticked off",
        care: "A bolt that yields can break: pull, don’t push, face out of line.",
        needs: "turns slots-fitted",
        ..DO
    },
    Line {
        id: "passes-complete",
        kind: Sort::Hold(Answer::Tightened),
        words: "All tightening passes are complete, the last once more at full torque",
        needs: "tightened",
        ..HOLD
    },
    Line {
        id: "turns-tight",
        kind: Sort::Hold(Answer::Builder),
        words: "The shaft still turns freely with the bolts at full torque",
        needs: "passes-complete",
        ..HOLD
    },
];
