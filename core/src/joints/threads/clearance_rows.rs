//! Holes a bolt passes through: fine or close, medium or normal, coarse or loose.

use super::drill::Drill::{self, Fraction, Metric};

/// ISO 273:1979: nominal diameter in mm, then the three holes. From memory.
pub(super) const METRIC: &[(i64, [Drill; 3])] = &[
    (5, [Metric(530), Metric(550), Metric(580)]),
    (6, [Metric(640), Metric(660), Metric(700)]),
    (7, [Metric(740), Metric(760), Metric(800)]),
    (8, [Metric(840), Metric(900), Metric(1000)]),
    (10, [Metric(1050), Metric(1100), Metric(1200)]),
    (12, [Metric(1300), Metric(1350), Metric(1450)]),
    (14, [Metric(1500), Metric(1550), Metric(1650)]),
    (16, [Metric(1700), Metric(1750), Metric(1850)]),
];

/// ASME B18.2.8-1999: nominal diameter in 16ths of an inch, then the three drills. Normal holes for
/// 1/4 to 7/16 published, the rest from memory. It has no row for 9/16.
pub(super) const INCH: &[(i64, [Drill; 3])] = &[
    (4, [Fraction(17), Fraction(18), Fraction(19)]),
    (5, [Fraction(21), Fraction(22), Fraction(23)]),
    (6, [Fraction(25), Fraction(26), Fraction(27)]),
    (7, [Fraction(29), Fraction(30), Fraction(31)]),
    (8, [Fraction(34), Fraction(36), Fraction(39)]),
    (10, [Fraction(42), Fraction(44), Fraction(47)]),
    (12, [Fraction(50), Fraction(52), Fraction(58)]),
];
