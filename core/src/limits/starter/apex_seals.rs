//! Apex seals.

use super::{BuildKind, CALIPER, Kind, LEAF, Line, MICROMETER, STRAIGHTEDGE};
use crate::quantity::Unit;
use pitleaf_translated::translated;

#[translated]
const END_GAP: &str = "Cold, assembled length of the seal against the rotor housing’s width beside it, straightedge over both faces; leaf at the end.";

#[translated(what, how, note, caution, words)]
pub(super) const LINES: &[Line] = &[
    Line {
        id: "apex-seal-height-2mm",
        what: "Apex seal, height, 2 mm seals",
        how: "Over crown and base, at the middle and near both ends; the least counts.",
        lower: "6.5",
        note: "The end of its life; new ones are about 8 mm. A seal made by somebody else has its own figures.",
        words: "apex-seal worn wear tip crown",
        ..MICROMETER
    },
    Line {
        id: "apex-seal-height-3mm",
        what: "Apex seal, height, 3 mm seals",
        how: "Over crown and base, at the middle and near both ends; the least counts.",
        lower: "7.0",
        note: "The end of its life; new ones are about 8.5 mm. A seal made by somebody else has its own figures.",
        words: "apex-seal worn wear tip crown",
        ..MICROMETER
    },
    Line {
        id: "apex-seal-warp",
        what: "Apex seal, warp along its length",
        how: "Two seals held flank to flank, or one on a surface plate; the thickest leaf that goes between, in the middle.",
        upper: "0.06",
        note: "A warped seal sticks in its slot when hot: usually a sign of knock or overheating.",
        words: "apex-seal bent bowed flatness straight distortion",
        ..STRAIGHTEDGE
    },
    Line {
        id: "apex-seal-slot-clearance",
        what: "Apex seal in its slot, clearance",
        how: "Seal in the slot at its working height; leaf down between seal and slot wall, at three places along it.",
        lower: "0.062",
        upper: "0.102",
        wear: "0.150",
        note: "For 2 mm seals; 3 mm seals take about 0.05 to 0.10.",
        words: "apex-seal groove side play rattle",
        ..LEAF
    },
    Line {
        id: "apex-seal-gap-na",
        what: "Apex seal to side housing, both ends together, naturally aspirated",
        how: END_GAP,
        unit: Unit::Inch,
        lower: "0.005",
        upper: "0.007",
        build: BuildKind::NaturallyAspirated,
        source: Kind::CommonPractice,
        note: "Shops differ by a thou either way, and the seal’s material decides: its maker’s sheet stands above this.",
        words: "apex-seal length end gap clearance NA",
        ..LEAF
    },
    Line {
        id: "apex-seal-gap-fi",
        what: "Apex seal to side housing, both ends together, forced induction",
        how: END_GAP,
        unit: Unit::Inch,
        lower: "0.006",
        upper: "0.009",
        build: BuildKind::ForcedInduction,
        source: Kind::CommonPractice,
        note: "Looser for heat. Shops differ by a thou either way; the seal maker’s sheet stands above this.",
        words: "apex-seal length end gap clearance turbo supercharged boost",
        ..LEAF
    },
    Line {
        id: "apex-seal-gap-used",
        what: "Apex seal to side housing, both ends together, used parts",
        how: END_GAP,
        lower: "0.13",
        upper: "0.17",
        wear: "0.30",
        note: "For three-piece seals as first fitted; the wear limit is the end of their life.",
        words: "apex-seal length end gap clearance worn old",
        ..LEAF
    },
    Line {
        id: "apex-seal-spring-long",
        what: "Apex seal spring, long, free height",
        how: "Spring free on a surface plate; from the plate to the top of its bow.",
        lower: "4.6",
        note: "Of the pair under a 2 mm seal. Broad: springs of other makes differ.",
        caution: "Springs jump. Wear eye protection.",
        words: "apex-seal spring sag tension tired main",
        ..CALIPER
    },
    Line {
        id: "apex-seal-spring-short",
        what: "Apex seal spring, short, free height",
        how: "Spring free on a surface plate; from the plate to the top of its bow.",
        lower: "1.7",
        note: "Of the pair under a 2 mm seal. Broad: springs of other makes differ.",
        caution: "Springs jump. Wear eye protection.",
        words: "apex-seal spring sag tension tired sub",
        ..CALIPER
    },
];
