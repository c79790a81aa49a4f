//! What the figures of the seals are, and why they matter. Our own words; facts of the trade are common
//! practice, no source.

use super::Topic;
use pitleaf_translated::translated;

#[translated(title, what, why)]
pub(super) const TOPICS: &[Topic] = &[
    Topic {
        id: "apex-seal-height",
        title: "Height of an apex seal",
        rows: &["apex-seal-height-2mm", "apex-seal-height-3mm"],
        what: "How tall the seal still is from its crown, which runs on the housing, down to its base.",
        why: "The crown wears away. A seal that has become too low rocks in its slot and lets the chambers leak into each other.",
    },
    Topic {
        id: "apex-seal-warp",
        title: "Warp of an apex seal",
        rows: &["apex-seal-warp"],
        what: "How far the seal is bent from end to end.",
        why: "A bent seal touches the housing only in places: it leaks, scores the running surface, and jams when hot.",
    },
    Topic {
        id: "apex-seal-slot",
        title: "Apex seal in its slot",
        rows: &["apex-seal-slot-clearance", "rotor-apex-slot-width"],
        what: "The room between an apex seal’s flank and the wall of its slot, which the slot’s width decides.",
        why: "Gas has to get behind the seal to press it out. Too tight and it sticks; too loose and it tilts, chatters and breaks.",
    },
    Topic {
        id: "apex-seal-gap",
        title: "End gap of an apex seal",
        rows: &["apex-seal-gap-na", "apex-seal-gap-fi", "apex-seal-gap-used"],
        what: "What is left between the seal’s two ends and the side housings, added together.",
        why: "The seal heats before the housing: the gap is least in the first minute after a cold start. Without one it wedges between the side housings; with too much, pressure escapes past its ends.",
    },
    Topic {
        id: "apex-seal-spring",
        title: "Apex seal springs",
        rows: &["apex-seal-spring-long", "apex-seal-spring-short"],
        what: "How high the bowed spring under an apex seal stands when nothing presses on it.",
        why: "While starting there is little gas pressure: the springs alone hold the seals out. Tired ones mean hard starting.",
    },
    Topic {
        id: "side-seal-gap",
        title: "End gap of a side seal",
        rows: &["side-seal-gap-na", "side-seal-gap-fi", "side-seal-gap-used"],
        what: "The gap between the cut end of a side seal and the corner seal beside it.",
        why: "Each thou is a leak to the inside of the rotor; but a seal without a gap grows, pushes its corner seal askew and scores the side housing.",
    },
    Topic {
        id: "side-seal-slot",
        title: "Side seal in its slot",
        rows: &["side-seal-slot-clearance", "rotor-side-slot-width"],
        what: "The room between a side seal’s flank and its slot’s wall, which the slot’s width decides.",
        why: "The seal must rise and tilt freely, or it no longer follows the side housing. A worn slot lets gas and oil past it.",
    },
    Topic {
        id: "seal-height",
        title: "How far a seal stands out",
        rows: &["side-seal-protrusion", "corner-seal-protrusion"],
        what: "How far a seal on its spring stands out of the rotor’s face while nothing presses on it.",
        why: "A seal that stands low has a tired spring or dirt under it, and does not reach the side housing.",
    },
    Topic {
        id: "side-seal-warp",
        title: "Warp of a side seal",
        rows: &["side-seal-warp"],
        what: "How far a side seal is bent out of the plane it lies in.",
        why: "A kinked seal binds in its slot and wears the side housing in a few places only.",
    },
    Topic {
        id: "seal-spring-spread",
        title: "Seal springs of one set",
        rows: &["side-seal-spring-spread", "corner-seal-spring-spread", "oil-seal-spring-spread"],
        what: "The tallest spring of a set less the shortest, all of them free.",
        why: "Springs of one set tire together. One that is lower than its fellows has been overheated, and its seal lags behind.",
    },
    Topic {
        id: "corner-seal-fit",
        title: "Corner seal in its bore",
        rows: &["corner-seal-clearance", "corner-seal-diameter", "rotor-corner-seal-bore"],
        what: "The room between a corner seal and its bore in the rotor: the bore’s diameter less the seal’s.",
        why: "Here three seals meet. A loose corner seal leaks at all of them and beats its bore oval; a tight one no longer follows the side housing.",
    },
    Topic {
        id: "oil-seal-lip",
        title: "Land of an oil seal",
        rows: &["oil-seal-lip-width"],
        what: "The width of the bright ring on which an oil seal touches the side housing.",
        why: "The edge scrapes oil off the face. As it wears it grows wide, presses less hard, and lets oil into the chambers: blue smoke.",
    },
    Topic {
        id: "oil-seal-height",
        title: "How far an oil seal stands out",
        rows: &["oil-seal-protrusion"],
        what: "How far an oil ring on its wave spring stands out of the rotor’s face.",
        why: "A ring that stands low, or lower on one side, scrapes only part of the way round: the engine uses oil.",
    },
];
