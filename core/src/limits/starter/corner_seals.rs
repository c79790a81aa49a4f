//! Corner seals.

use super::{DEPTH, Input, Kind, LEAF, Line, MICROMETER};
use pitleaf_translated::translated;

#[translated(what, how, note, caution, words)]
pub(super) const LINES: &[Line] = &[
    Line {
        id: "corner-seal-clearance",
        what: "Corner seal in its bore, clearance",
        how: "Seal in the bore, pushed to one side; leaf at the other side. Or the bore’s diameter less the seal’s.",
        lower: "0.020",
        upper: "0.048",
        wear: "0.080",
        note: "A loose corner seal takes the side seal’s end with it and wears its bore oval: try at several places round it.",
        words: "corner-seal fit play loose bore hole",
        ..LEAF
    },
    Line {
        id: "corner-seal-diameter",
        what: "Corner seal, diameter",
        how: "Over the plain part, away from the apex slot, at two places.",
        lower: "10.96",
        upper: "11.00",
        note: "For standard bores of 11 mm; oversize seals exist for worn bores. Broad, worked back from the clearance.",
        words: "corner-seal size outside OD oversize",
        ..MICROMETER
    },
    Line {
        id: "corner-seal-protrusion",
        what: "Corner seal, height over the rotor’s face",
        how: "Seal on its spring, free; depth from the seal’s top to the rotor’s face.",
        lower: "0.5",
        note: "Pressed down, it must come back by itself, also with the side seals in.",
        words: "corner-seal protrusion proud stand spring tension lift",
        ..DEPTH
    },
    Line {
        id: "corner-seal-spring-spread",
        what: "Corner seal springs, free height, spread in a set",
        how: "Each spring free on a surface plate; tallest less shortest.",
        input: Input::Deviation,
        upper: "0.3",
        source: Kind::CommonPractice,
        note: "Finds the tired one in its set. A broad rule of thumb, no maker’s limit.",
        caution: "Springs jump. Wear eye protection.",
        words: "corner-seal spring sag tension tired",
        ..DEPTH
    },
];
