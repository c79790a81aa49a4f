//! Metals of pins and housings.
//!
//! W. D. Callister, *Materials Science and Engineering*, appendix B: Young's modulus (table B.2; 4140
//! and 1020 published, the rest from memory), Poisson's ratio (B.3, from memory), expansion (B.6,
//! published). Highest temperature before a metal loses its heat treatment: common practice, no source.

use pitleaf_translated::translated;

/// A metal: the word it is kept by, name, least and greatest modulus in GPa, Poisson's ratio, expansion in 10⁻⁶/K, warmest in °C.
pub(super) struct Row(
    pub(super) &'static str,
    pub(super) &'static str,
    pub(super) f64,
    pub(super) f64,
    pub(super) f64,
    pub(super) f64,
    pub(super) i32,
);

#[translated]
pub(super) const ROWS: &[Row] = &[
    Row("grey-iron", "Grey cast iron", 90.0, 113.0, 0.26, 11.4, 300),
    Row("ductile-iron-60", "Ductile cast iron 60-40-18", 169.0, 169.0, 0.29, 11.2, 300),
    Row("ductile-iron-80", "Ductile cast iron 80-55-06", 168.0, 168.0, 0.31, 10.6, 300),
    Row("steel-1020", "Steel 1020", 207.0, 207.0, 0.30, 11.7, 250),
    Row("steel-4140", "Steel 4140 or 4340, hardened", 207.0, 207.0, 0.30, 12.3, 180),
    Row("aluminium-356", "Aluminium 356, cast", 72.4, 72.4, 0.33, 21.5, 150),
    Row("aluminium-6061", "Aluminium 6061", 69.0, 69.0, 0.33, 23.6, 150),
    Row("aluminium-7075", "Aluminium 7075", 71.0, 71.0, 0.33, 23.4, 120),
];
