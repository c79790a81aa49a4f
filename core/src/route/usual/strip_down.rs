//! Intake, and the strip-down.

use super::{Answer, DO, Each, HOLD, Line, Sort, When};
use pitleaf_translated::translated;

#[translated(words, care)]
pub(super) const INTAKE: &[Line] = &[
    Line {
        id: "describe", words: "Write down the customer’s words and what the engine is", ..DO
    },
    Line {
        id: "outside",
        words: "Photograph the engine from all sides; note leaks, broken bolts and what is missing",
        care: "Lift by a beam or hoist rated for the weight, never by a manifold stud. Nobody under it.",
        ..DO
    },
    Line {
        id: "compression-before",
        words: "Compression of every face, before it is opened",
        care: "Fuel and ignition off, clear of belts and fan. Fuel mist catches fire.",
        needs: "describe",
        ..DO
    },
    Line {
        id: "leaks-before",
        words: "Coolant put under pressure and watched for ten minutes, if it still holds any",
        care: "Never open a hot system.",
        needs: "describe",
        ..DO
    },
    Line {
        id: "drained",
        kind: Sort::Hold(Answer::Builder),
        words: "Oil, coolant and fuel are drained and put aside safely",
        care: "Fuel: no flame, no sparks, open doors. Used oil and coolant are poison: keep them off the skin and out of the drain.",
        needs: "outside compression-before leaks-before",
        ..HOLD
    },
];

#[translated(words, care)]
pub(super) const STRIP_DOWN: &[Line] = &[
    Line {
        id: "end-play-before",
        kind: Sort::Measure("end-play"),
        words: "End play as it came, before the front is touched",
        needs: "drained",
        ..DO
    },
    Line {
        id: "front-off",
        words: "Front bolt, pulley, front cover, drive chain and thrust parts off, laid out in order",
        care: "A tight front bolt lets go at once: lock the flywheel, stand clear of the bar.",
        needs: "end-play-before",
        ..DO
    },
    Line {
        id: "flywheel-off",
        words: "Flywheel nut loosened, flywheel freed from its taper, nut and flywheel off",
        care: "The taper lets go at once, and the flywheel is heavy: leave the nut on a few threads until it has. Engine held to the stand, nobody beside the bar.",
        needs: "front-off",
        ..DO
    },
    Line {
        id: "unbolted",
        words: "Tension bolts loosened in turns, a little each, crosswise",
        needs: "flywheel-off",
        ..DO
    },
    Line {
        id: "opened",
        words: "Housings and rotors taken apart, each marked with its place and its front",
        care: "Rotor and housing are heavy, and their edges cut. Apex seals drop: hold them in.",
        needs: "unbolted",
        ..DO
    },
    Line {
        id: "seals-out",
        each: Each::Rotor,
        words: "Seals and springs out, each kept under the name of its slot",
        care: "Springs fly. Eye protection on, a hand over each until it is held.",
        needs: "opened",
        ..DO
    },
    Line {
        id: "rotor-looked-at",
        each: Each::Rotor,
        words: "Rotor looked over: cracks, dents at the apex grooves, bearing, gear teeth, spring pins",
        needs: "seals-out",
        ..DO
    },
    Line {
        id: "cleaned",
        words: "All parts washed, passages blown through, faces free of sealant",
        care: "Solvent: gloves, eye protection, fresh air. Compressed air never at skin or eyes.",
        needs: "rotor-looked-at",
        ..DO
    },
    Line {
        id: "side-warp",
        kind: Sort::Measure("side-housing-warp"),
        each: Each::SideHousing,
        words: "Warp of the running face",
        needs: "cleaned",
        ..DO
    },
    Line {
        id: "side-step",
        kind: Sort::Measure("side-housing-step-side-seal"),
        each: Each::SideHousing,
        words: "Step worn by the side seals",
        needs: "cleaned",
        ..DO
    },
    Line {
        id: "rotor-housing-width",
        kind: Sort::Measure("rotor-housing-width"),
        each: Each::RotorHousing,
        words: "Width of the housing at the running surface",
        needs: "cleaned",
        ..DO
    },
    Line {
        id: "rotor-housing-spread",
        kind: Sort::Measure("rotor-housing-width-spread"),
        each: Each::RotorHousing,
        words: "Spread of the width round the housing",
        care: "The spark-plug side gives way first.",
        needs: "cleaned",
        ..DO
    },
    Line {
        id: "rotor-bearing",
        kind: Sort::Measure("rotor-bearing-clearance"),
        words: "Rotor bearings, clearance on their journals",
        needs: "cleaned",
        ..DO
    },
    Line {
        id: "main-bearing",
        kind: Sort::Measure("main-bearing-clearance"),
        words: "Main bearings, clearance on their journals",
        needs: "cleaned",
        ..DO
    },
    Line {
        id: "shaft-runout",
        kind: Sort::Measure("shaft-runout"),
        words: "Runout of the eccentric shaft, in blocks on its main journals",
        needs: "cleaned",
        ..DO
    },
    Line {
        id: "land",
        kind: Sort::Measure("rotor-land-protrusion"),
        each: Each::Rotor,
        words: "Height of the land over the rotor’s face",
        needs: "cleaned",
        ..DO
    },
    Line {
        id: "dowels-known",
        kind: Sort::Hold(Answer::DowelsWritten),
        words: "It is written down whether the upper dowels are hollow or solid",
        care: "Solid ones shut the oil passage to the front bearing.",
        needs: "cleaned",
        ..HOLD
    },
    Line {
        id: "housing-pair",
        kind: Sort::Measure("rotor-housing-pair-spread"),
        when: When::SeveralRotors,
        words: "Widths of the rotor housings against each other",
        needs: "rotor-housing-width",
        ..DO
    },
];
