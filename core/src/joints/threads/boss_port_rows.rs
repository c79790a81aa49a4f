//! O-ring boss ports, SAE J1926-1 (ISO 11926-1): dash, thread, then in thousandths of an inch the
//! least spot-face diameter, the least full thread and the least depth of the tap drill.
//!
//! Threads published (−12 and −16 in one transcription only); full thread published for −4, −6 and
//! −8; the other figures from memory, to be confirmed before metal is cut.

use pitleaf_translated::translated;

/// A row.
pub(super) struct Row {
    pub(super) dash: u8,
    pub(super) thread: &'static str,
    pub(super) spot_face: u16,
    pub(super) full_thread: u16,
    pub(super) full_thread_is_published: bool,
    pub(super) drill_depth: u16,
}

const fn row(dash: u8, thread: &'static str, sizes: (u16, u16, u16), published: bool) -> Row {
    let (spot_face, full_thread, drill_depth) = sizes;
    Row { dash, thread, spot_face, full_thread, full_thread_is_published: published, drill_depth }
}

#[translated]
pub(super) const ROWS: &[Row] = &[
    row(3, "3/8-24 UNF", (750, 390, 468), false),
    row(4, "7/16-20 UNF", (828, 454, 547), true),
    row(5, "1/2-20 UNF", (906, 454, 547), false),
    row(6, "9/16-18 UNF", (969, 500, 609), true),
    row(8, "3/4-16 UNF", (1188, 562, 688), true),
    row(10, "7/8-14 UNF", (1344, 656, 781), false),
    row(12, "1 1/16-12 UN", (1625, 750, 906), false),
    row(16, "1 5/16-12 UN", (1910, 750, 906), false),
];
