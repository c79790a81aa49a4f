//! Front stack, after assembly, first start and running-in.

use super::{Answer, DO, Each, HOLD, Line, Sort, When};
use pitleaf_translated::translated;

#[translated(words, care)]
pub(super) const FRONT_STACK: &[Line] = &[
    Line {
        id: "thrust-in",
        words: "Thrust plates, needle bearings, spacer and counterweight on, in the order laid out",
        needs: "turns-tight",
        ..DO
    },
    Line {
        id: "needles-in-place",
        kind: Sort::Hold(Answer::Builder),
        words: "The front needle bearing lies in its place and has not dropped while the hub went on",
        care: "A pinched needle bearing reads as no end play, and breaks.",
        needs: "thrust-in",
        ..HOLD
    },
    Line {
        id: "flywheel",
        kind: Sort::Measure("flywheel-nut-torque"),
        words: "Flywheel or counterweight on its key, nut tightened",
        care: "Long bar, much force: engine held to the stand, nobody beside it.",
        needs: "turns-tight",
        ..DO
    },
    Line {
        id: "front-bolt",
        kind: Sort::Measure("front-bolt-torque"),
        words: "Front bolt tightened, flywheel held by its stop",
        care: "Stand clear of the bar.",
        needs: "needles-in-place flywheel",
        ..DO
    },
    Line {
        id: "end-play",
        kind: Sort::Measure("end-play"),
        words: "End play with the spacer that stays in",
        needs: "front-bolt",
        ..DO
    },
    Line {
        id: "end-play-last",
        kind: Sort::Hold(Answer::EndPlayAfter),
        words: "End play was measured after the last tightening",
        needs: "end-play passes-complete",
        ..HOLD
    },
    Line {
        id: "front-cover",
        words: "Oil pump and its drive, front cover, pulley",
        care: "The seal behind the front cover that carries oil: new, and held in place with grease.",
        needs: "end-play-last",
        ..DO
    },
];

#[translated(words, care)]
pub(super) const AFTER: &[Line] = &[
    Line {
        id: "feed-fitted",
        kind: Sort::Hold(Answer::Builder),
        when: When::SolidDowels,
        words: "The outside oil feed is on the engine, tight, and clear of the exhaust",
        care: "Oil on a hot exhaust burns.",
        needs: "front-cover oil-feed",
        ..HOLD
    },
    Line {
        id: "pan-on",
        words: "Pick-up, baffle and oil pan on, bolts evenly tight",
        needs: "front-cover",
        ..DO
    },
    Line {
        id: "coolant-tight",
        kind: Sort::Measure("coolant-pressure-loss"),
        words: "Coolant side put under pressure: what is lost in ten minutes",
        needs: "front-cover",
        ..DO
    },
    Line {
        id: "turned-once-more",
        kind: Sort::Hold(Answer::Builder),
        words: "Turned three full turns by hand, plugs out: three even puffs from each rotor",
        needs: "pan-on flywheel",
        ..HOLD
    },
    Line {
        id: "plug-gap",
        kind: Sort::Measure("plug-gap"),
        when: When::ForcedInduction,
        words: "Spark plugs’ gap",
        needs: "turned-once-more",
        ..DO
    },
];

#[translated(words, care)]
pub(super) const RUNNING: &[Line] = &[
    Line {
        id: "oil-primed",
        kind: Sort::Hold(Answer::Builder),
        words: "Oil is in, and pressure shows while cranking without fuel and ignition",
        care: "Clear of belts and fan. No pressure: do not start.",
        needs: "turned-once-more coolant-tight feed-fitted",
        ..HOLD
    },
    Line {
        id: "fire-watch",
        kind: Sort::Hold(Answer::Builder),
        words: "Fuel joints are dry, an extinguisher stands ready, the exhaust leads outside",
        care: "Exhaust gas kills without a smell: never run it in a shut room.",
        needs: "oil-primed",
        ..HOLD
    },
    Line {
        id: "first-start",
        words: "First start; pressure, leaks and temperature watched from the first second",
        care: "Stop at once without oil pressure. Nobody in line with belts and fan.",
        needs: "fire-watch plug-gap",
        ..DO
    },
    Line {
        id: "oil-pressure",
        kind: Sort::Measure("oil-pressure-idle"),
        words: "Oil pressure, warm, idling",
        needs: "first-start",
        ..DO
    },
    Line {
        id: "run-in",
        words: "Run in as agreed, and the customer told how to go on",
        needs: "oil-pressure",
        ..DO
    },
    Line {
        id: "compression-after",
        words: "Compression of every face, after running-in",
        care: "Fuel and ignition off, hot parts: gloves.",
        needs: "run-in",
        each: Each::Once,
        ..DO
    },
    Line {
        id: "checked-again",
        words: "Oil and filter changed; bolts that can be reached checked; leaks looked for",
        needs: "run-in",
        ..DO
    },
    Line {
        id: "handed-over",
        words: "Build sheet printed, signed, and handed over with the engine",
        needs: "compression-after checked-again",
        ..DO
    },
];
