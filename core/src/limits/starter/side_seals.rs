//! Side seals.

use super::{BuildKind, DEPTH, Input, Kind, LEAF, Line, STRAIGHTEDGE};
use crate::quantity::Unit;
use pitleaf_translated::translated;

#[translated]
const END_GAP: &str = "Cold, seal and both corner seals in the rotor, the radiused end pushed home; leaf between the square end and the corner seal.";

#[translated(what, how, note, caution, words)]
pub(super) const LINES: &[Line] = &[
    Line {
        id: "side-seal-gap-na",
        what: "Side seal to corner seal, naturally aspirated",
        how: END_GAP,
        unit: Unit::Inch,
        lower: "0.0015",
        upper: "0.0030",
        build: BuildKind::NaturallyAspirated,
        source: Kind::CommonPractice,
        note: "The tight end holds compression. A leaf that slides through, a seal that rocks freely and a corner seal that stays still: a good fit.",
        words: "end gap clearance side-seal tip feeler NA",
        ..LEAF
    },
    Line {
        id: "side-seal-gap-fi",
        what: "Side seal to corner seal, forced induction",
        how: END_GAP,
        unit: Unit::Inch,
        lower: "0.0015",
        upper: "0.0040",
        build: BuildKind::ForcedInduction,
        source: Kind::CommonPractice,
        note: "More heat, more growth: the loose end. A seal that closes up when hot jams against its corner seal.",
        words: "end gap clearance side-seal tip feeler turbo supercharged boost",
        ..LEAF
    },
    Line {
        id: "side-seal-gap-used",
        what: "Side seal to corner seal, used parts",
        how: END_GAP,
        upper: "0.40",
        note: "The end of its life, not a fit to aim at: at a rebuild a seal is cut to the fresh gap.",
        words: "end gap clearance side-seal worn old",
        ..LEAF
    },
    Line {
        id: "side-seal-slot-clearance",
        what: "Side seal in its slot, clearance",
        how: "Seal standing in the slot; leaf between the seal’s inner flank and the slot wall, at three places.",
        lower: "0.028",
        upper: "0.078",
        wear: "0.10",
        note: "For seals of 1 mm; thinner seals have their own figure.",
        words: "side-seal groove thickness side play rattle",
        ..LEAF
    },
    Line {
        id: "side-seal-protrusion",
        what: "Side seal, height over the rotor’s face",
        how: "Seal on its spring, free; depth from the seal’s top to the rotor’s face, at the middle and both ends.",
        lower: "0.5",
        note: "Less, or uneven: a tired spring, or dirt or carbon under it. Pressed down, the seal must come back by itself.",
        words: "side-seal protrusion proud stand spring tension lift",
        ..DEPTH
    },
    Line {
        id: "side-seal-warp",
        what: "Side seal, warp out of its plane",
        how: "Seal laid on a surface plate, turned over once; the thickest leaf that goes under it.",
        upper: "0.05",
        source: Kind::CommonPractice,
        note: "A rule of thumb: the seal must lie flat under a finger’s weight. Shops differ.",
        words: "side-seal flatness bent bowed distortion",
        ..STRAIGHTEDGE
    },
    Line {
        id: "side-seal-spring-spread",
        what: "Side seal springs, free height, spread in a set",
        how: "Each spring free on a surface plate; tallest less shortest.",
        input: Input::Deviation,
        upper: "0.3",
        source: Kind::CommonPractice,
        note: "Finds the tired one in its set. A broad rule of thumb, no maker’s limit: many fit new springs every time.",
        caution: "Springs jump. Wear eye protection.",
        words: "side-seal spring sag tension tired",
        ..DEPTH
    },
];
