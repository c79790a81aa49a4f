//! Nut factors and the scatter of ways of tightening. The builder's own figures stand above these.

use pitleaf_translated::translated;

/// Nut factors K in T = K·d·F: condition, least and greatest K. Shigley, *Mechanical Engineering Design*,
/// 9th edition, table 8-15 (published); its black finish is not said to be dry. The table has one maker's
/// anti-seize alone, 0.12, which says little of another: that row is common practice, no source.
#[translated]
pub(super) const NUT_FACTORS: &[(&str, f64, f64)] = &[
    ("Not plated, black finish", 0.30, 0.30),
    ("Zinc plated", 0.20, 0.20),
    ("Lubricated", 0.18, 0.18),
    ("Anti-seize (common practice, no source)", 0.10, 0.20),
];

/// Scatter of the preload a torque gives, either way: way of tightening, share. NASA-STD-5020B, table 3
/// (published).
#[translated]
pub(super) const SCATTERS: &[(&str, f64)] =
    &[("Torque wrench, dry", 0.35), ("Torque wrench, lubricated", 0.25)];

/// The same of a preload told by a measured stretch.
pub(super) const STRETCH_SCATTER: f64 = 0.10;
