//! Decisions, porting, machining, lapping, balancing.

use super::{Answer, DO, Each, HOLD, Line, Sort, When};
use pitleaf_translated::translated;

#[translated(words, care)]
pub(super) const DECISIONS: &[Line] = &[
    Line {
        id: "fates",
        words: "For each part past its limit: machine, replace, or accept with a written reason",
        needs: "side-warp side-step rotor-housing-width rotor-housing-spread rotor-bearing main-bearing shaft-runout land",
        ..DO
    },
    Line {
        id: "agreed",
        kind: Sort::Hold(Answer::Builder),
        words: "The customer has agreed to the work and its price",
        needs: "fates describe",
        ..HOLD
    },
    Line {
        id: "ordered",
        words: "Parts ordered, with the housing each is for",
        needs: "agreed",
        ..DO
    },
    Line {
        id: "parts-checked",
        kind: Sort::Hold(Answer::Builder),
        words: "Parts that came are the ones ordered, counted and unhurt",
        care: "Seals of another thickness look alike: measure one of each.",
        needs: "ordered",
        ..HOLD
    },
];

#[translated(words, care)]
pub(super) const PORTING: &[Line] = &[
    Line {
        id: "outline-drawn",
        words: "Outlines put in, and what they would run into read off",
        needs: "agreed",
        ..DO
    },
    Line {
        id: "outline-clear",
        kind: Sort::Hold(Answer::OutlinesClear),
        words: "No outline lets a corner seal drop in, or runs into the oil seal’s sweep or the coolant land",
        care: "A corner seal that drops into a port destroys the engine.",
        needs: "outline-drawn",
        ..HOLD
    },
    Line {
        id: "ports-cut",
        words: "Ports cut to the scribed line, edges broken, both sides compared",
        care: "Grinding: eye protection, ear protection, a mask for the dust; no loose sleeves.",
        needs: "outline-clear",
        ..DO
    },
    Line {
        id: "ports-washed",
        words: "Chips and dust washed out of every passage",
        needs: "ports-cut",
        ..DO
    },
];

#[translated(words, care)]
pub(super) const MACHINING: &[Line] = &[
    Line {
        id: "studs-machined",
        words: "Holes for larger studs and dowels drilled and reamed with the stack clamped and indicated from one datum, if agreed",
        care: "Housings drilled one by one never line up again. Clamp the work, eye protection on, no gloves at a turning spindle.",
        needs: "agreed",
        ..DO
    },
    Line {
        id: "solid-dowel-fit",
        kind: Sort::Measure("dowel-clearance-solid"),
        when: When::SolidDowels,
        words: "Solid dowels in their reamed holes, clearance",
        needs: "studs-machined dowels-known",
        ..DO
    },
    Line {
        id: "oil-feed",
        kind: Sort::Hold(Answer::OilFeed),
        when: When::SolidDowels,
        words: "With solid dowels, oil is fed to the front bearing from outside",
        care: "Without it the front bearing runs dry from the first turn.",
        needs: "dowels-known",
        ..HOLD
    },
    Line {
        id: "passages-open",
        kind: Sort::Hold(Answer::Builder),
        words: "Every oil and coolant passage is open after machining: a wire or air goes through",
        care: "A drilled or welded passage can be shut and look whole.",
        needs: "studs-machined",
        ..HOLD
    },
    Line {
        id: "bearings-pressed",
        words: "New bearings pressed in where it was decided: lug and oil hole meet theirs, none stands proud",
        care: "A shell cocked in the press can shatter: start it square, stand aside, goggles on.",
        needs: "parts-checked",
        ..DO
    },
    Line {
        id: "rotor-bearing-as-built",
        kind: Sort::Measure("rotor-bearing-clearance"),
        words: "Rotor bearings, clearance on their journals, with the shells that stay in",
        care: "Pressing closes a bore: what was measured before it no longer holds.",
        needs: "bearings-pressed",
        ..DO
    },
    Line {
        id: "main-bearing-as-built",
        kind: Sort::Measure("main-bearing-clearance"),
        words: "Main bearings, clearance on their journals, with the shells that stay in",
        care: "Pressing closes a bore: what was measured before it no longer holds.",
        needs: "bearings-pressed",
        ..DO
    },
];

#[translated(words, care)]
pub(super) const LAPPING: &[Line] = &[
    Line {
        id: "lapped-off",
        kind: Sort::Measure("side-housing-lapped-off"),
        each: Each::SideHousing,
        words: "How much was taken off each face, by its casting mark",
        care: "Past the hardened case the face wears away within hours, and what came off in earlier builds counts too.",
        needs: "fates ports-washed passages-open",
        ..DO
    },
    Line {
        id: "roughness",
        kind: Sort::Measure("side-housing-roughness"),
        each: Each::SideHousing,
        words: "Roughness of the lapped face",
        needs: "lapped-off",
        ..DO
    },
    Line {
        id: "hardened",
        kind: Sort::Hold(Answer::Builder),
        words: "Faces lapped through their case, or perhaps, are hardened again, and finished where that was agreed",
        care: "Hardening adds height, roughens and can bend a face: all is measured again after it.",
        needs: "roughness",
        ..HOLD
    },
    Line {
        id: "warp-as-built",
        kind: Sort::Measure("side-housing-warp"),
        each: Each::SideHousing,
        words: "Warp of the running face, after the last thing done to it",
        needs: "hardened",
        ..DO
    },
    Line {
        id: "step-as-built",
        kind: Sort::Measure("side-housing-step-side-seal"),
        each: Each::SideHousing,
        words: "Step left by the side seals, after the last thing done to the face",
        needs: "hardened",
        ..DO
    },
    Line {
        id: "thickness-as-built",
        kind: Sort::Measure("side-housing-thickness-spread"),
        each: Each::SideHousing,
        words: "Thickness beside every bolt hole, spread, after the last thing done to the faces",
        needs: "hardened",
        ..DO
    },
    Line {
        id: "roughness-as-built",
        kind: Sort::Measure("side-housing-roughness"),
        each: Each::SideHousing,
        words: "Roughness of the face that the seals will run on",
        needs: "hardened",
        ..DO
    },
];

#[translated(words, care)]
pub(super) const BALANCING: &[Line] = &[
    Line {
        id: "rotor-mass",
        kind: Sort::Measure("rotor-mass-spread"),
        when: When::SeveralRotors,
        words: "Rotors weighed with their bearings, heavier less lighter",
        needs: "fates bearings-pressed",
        ..DO
    },
    Line {
        id: "balanced",
        words: "Rotating parts balanced together, front to rear, and marked so",
        care: "A balancing machine throws what is loose: guard shut, stand aside.",
        needs: "rotor-mass parts-checked",
        ..DO
    },
    Line {
        id: "unbalance",
        kind: Sort::Measure("shaft-unbalance"),
        words: "Unbalance left, as the balancer’s paper has it",
        needs: "balanced",
        ..DO
    },
    Line {
        id: "chips-out",
        kind: Sort::Hold(Answer::Builder),
        words: "Drillings from balancing are washed out of shaft and rotors, and the shaft’s oil plugs are back in",
        needs: "balanced",
        ..HOLD
    },
];
