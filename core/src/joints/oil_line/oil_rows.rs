//! Engine oils of the usual classes: typical, not limits. ISO 3448 middle grades at 95 of viscosity
//! index for the single grades, what makers' sheets usually give for the multigrades. All from memory.

/// An oil: name, mm²/s at 40 °C, mm²/s at 100 °C.
pub(super) const OILS: &[(&str, f64, f64)] = &[
    ("SAE 30", 100.0, 11.1),
    ("SAE 40", 150.0, 14.7),
    ("10W-40", 95.0, 14.3),
    ("15W-50", 130.0, 18.0),
    ("20W-50", 165.0, 18.5),
];
