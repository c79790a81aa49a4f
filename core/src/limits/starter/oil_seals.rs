//! Oil seals.

use super::{CALIPER, DEPTH, Input, Kind, Line};
use pitleaf_translated::translated;

#[translated(what, how, note, caution, words)]
pub(super) const LINES: &[Line] = &[
    Line {
        id: "oil-seal-lip-width",
        what: "Oil seal, width of the contact land",
        how: "Under a glass with a scale, or with a caliper, at six places round the ring; the widest counts.",
        upper: "0.5",
        note: "A new scraper edge is about 0.2 mm. A wide land rides over the oil instead of scraping it.",
        caution: "The edge cuts.",
        words: "oil ring lip scraper edge smoke consumption inner outer",
        ..CALIPER
    },
    Line {
        id: "oil-seal-protrusion",
        what: "Oil seal, height over the rotor’s face",
        how: "Ring on its spring with its O-ring in, free; depth from the ring’s edge to the rotor’s face, at four places.",
        lower: "0.5",
        note: "It must sink and come back freely all round: a swollen O-ring holds it down.",
        words: "oil ring protrusion proud stand spring tension lift inner outer",
        ..DEPTH
    },
    Line {
        id: "oil-seal-spring-spread",
        what: "Oil seal springs, free height, spread in a set",
        how: "Each spring free on a surface plate, highest wave; tallest less shortest of the same size.",
        input: Input::Deviation,
        upper: "0.3",
        source: Kind::CommonPractice,
        note: "Finds the tired one in its set. A broad rule of thumb, no maker’s limit. Springs of the two faces are not the same: keep them apart.",
        words: "oil ring spring sag tension tired wave",
        ..DEPTH
    },
];
