//! Seal fitting.

use super::{Answer, DO, Each, HOLD, Line, Sort, When};
use pitleaf_translated::translated;

#[translated(words, care)]
pub(super) const SEALS: &[Line] = &[
    Line {
        id: "slots-marked",
        each: Each::Face,
        words: "Every side-seal slot has its own mark, in the book and on the rotor",
        needs: "cleaned",
        ..DO
    },
    Line {
        id: "corner-clearance",
        kind: Sort::Measure("corner-seal-clearance"),
        each: Each::Face,
        words: "Corner seals in their bores, clearance",
        needs: "parts-checked slots-marked",
        ..DO
    },
    Line {
        id: "slot-clearance",
        kind: Sort::Measure("side-seal-slot-clearance"),
        each: Each::Face,
        words: "Side seals in their slots, clearance",
        needs: "parts-checked slots-marked",
        ..DO
    },
    Line {
        id: "side-gap-na",
        kind: Sort::Measure("side-seal-gap-na"),
        each: Each::Face,
        when: When::NaturallyAspirated,
        words: "Side seals cut to their gap, each for its own slot",
        care: "Grind the square end only, in short strokes, eye protection on: nothing makes a seal longer again. Hone the burr off before measuring.",
        needs: "corner-clearance slot-clearance",
    },
    Line {
        id: "side-gap-fi",
        kind: Sort::Measure("side-seal-gap-fi"),
        each: Each::Face,
        when: When::ForcedInduction,
        words: "Side seals cut to their gap, each for its own slot",
        care: "Grind the square end only, in short strokes, eye protection on: nothing makes a seal longer again. Hone the burr off before measuring.",
        needs: "corner-clearance slot-clearance",
    },
    Line {
        id: "own-slot",
        kind: Sort::Hold(Answer::Builder),
        each: Each::Face,
        words: "Every side seal lies with the name of the slot it was cut for",
        care: "A seal cut for one slot fits that slot only.",
        needs: "side-gap-na side-gap-fi",
        ..HOLD
    },
    Line {
        id: "apex-slot",
        kind: Sort::Measure("apex-seal-slot-clearance"),
        each: Each::Rotor,
        words: "Apex seals in their grooves, clearance",
        needs: "parts-checked",
        ..DO
    },
    Line {
        id: "apex-gap-na",
        kind: Sort::Measure("apex-seal-gap-na"),
        each: Each::Rotor,
        when: When::NaturallyAspirated,
        words: "Apex seals cut to length, both ends together",
        care: "Grinding: eye protection, cool often, keep the end square.",
        needs: "apex-slot hardened",
    },
    Line {
        id: "apex-gap-fi",
        kind: Sort::Measure("apex-seal-gap-fi"),
        each: Each::Rotor,
        when: When::ForcedInduction,
        words: "Apex seals cut to length, both ends together",
        care: "Grinding: eye protection, cool often, keep the end square.",
        needs: "apex-slot hardened",
    },
    Line {
        id: "oil-seals",
        kind: Sort::Measure("oil-seal-protrusion"),
        each: Each::Rotor,
        words: "Oil seals on their springs, height over the face",
        care: "Each spring the right way round for its face, and all at the same place on both rings.",
        needs: "parts-checked chips-out",
        ..DO
    },
    Line {
        id: "washed-again",
        kind: Sort::Hold(Answer::Builder),
        words: "All parts are washed once more, dried and oiled, and covered",
        care: "Dust of grinding laps bearings and seals away.",
        needs: "own-slot apex-gap-na apex-gap-fi oil-seals ports-washed chips-out",
        ..HOLD
    },
];
