//! ISO metric threads, M5 to M16.
//!
//! Sizes and pitches: ISO 261. Stress areas: ISO 898-1:2013, tables 4 and 6, where it prints the
//! thread (published for M6, M8, M10, M12, M14 coarse; the rest of its rows from memory); those it
//! does not print carry the formula's figure. Drills: ISO 2306 (published for M6–M12 coarse,
//! M10×1.25, M12×1.5; the rest from memory). The tests hold every row against its formula.

use super::drill::Drill::Metric;
use super::thread::{Pitch::Micrometres, Row, Series::MetricCoarse, Series::MetricFine, mm};

pub(super) const ROWS: &[Row] = &[
    Row(MetricCoarse, mm(5), Micrometres(800), Metric(420), "14.2"),
    Row(MetricFine, mm(5), Micrometres(500), Metric(450), "16.1"),
    Row(MetricCoarse, mm(6), Micrometres(1000), Metric(500), "20.1"),
    Row(MetricFine, mm(6), Micrometres(750), Metric(520), "22.0"),
    Row(MetricCoarse, mm(7), Micrometres(1000), Metric(600), "28.9"),
    Row(MetricCoarse, mm(8), Micrometres(1250), Metric(680), "36.6"),
    Row(MetricFine, mm(8), Micrometres(1000), Metric(700), "39.2"),
    Row(MetricCoarse, mm(10), Micrometres(1500), Metric(850), "58.0"),
    Row(MetricFine, mm(10), Micrometres(1250), Metric(880), "61.2"),
    Row(MetricFine, mm(10), Micrometres(1000), Metric(900), "64.5"),
    Row(MetricCoarse, mm(12), Micrometres(1750), Metric(1020), "84.3"),
    Row(MetricFine, mm(12), Micrometres(1500), Metric(1050), "88.1"),
    Row(MetricFine, mm(12), Micrometres(1250), Metric(1080), "92.1"),
    Row(MetricFine, mm(12), Micrometres(1000), Metric(1100), "96.1"),
    Row(MetricCoarse, mm(14), Micrometres(2000), Metric(1200), "115"),
    Row(MetricFine, mm(14), Micrometres(1500), Metric(1250), "125"),
    Row(MetricFine, mm(14), Micrometres(1250), Metric(1280), "129"),
    Row(MetricCoarse, mm(16), Micrometres(2000), Metric(1400), "157"),
    Row(MetricFine, mm(16), Micrometres(1500), Metric(1450), "167"),
    Row(MetricFine, mm(16), Micrometres(1000), Metric(1500), "178"),
];

/// Tolerance of a nut's minor diameter in class 6H by pitch in micrometres, in millimetres (ISO 965-1, table 3;
/// from memory). A pitch it does not hold gets none.
pub(super) fn minor_tolerance(pitch: u16) -> f64 {
    const ROWS: [(u16, f64); 8] = [
        (500, 0.140),
        (750, 0.190),
        (800, 0.200),
        (1000, 0.236),
        (1250, 0.265),
        (1500, 0.300),
        (1750, 0.335),
        (2000, 0.375),
    ];
    ROWS.iter().find(|row| row.0 == pitch).map_or(0.0, |row| row.1)
}
