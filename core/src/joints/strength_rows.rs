//! Property classes of bolts and studs.
//!
//! ISO 898-1:2013, table 3 (8.8, 10.9 and 12.9 published, the others from memory), for thread
//! diameters up to 16 mm. SAE J429 (Shigley, *Mechanical Engineering Design*, 9th edition, table 8-9;
//! grade 5's proof stress published, the rest and the greatest diameters from memory).

use crate::quantity::Unit;

/// A class: name, standard, unit of both stresses, proof stress, tensile strength, and the greatest thread
/// diameter they hold for: in millimetres (ISO), in 16ths of an inch (SAE).
pub(super) struct Row(
    pub(super) &'static str,
    pub(super) &'static str,
    pub(super) Unit,
    pub(super) i64,
    pub(super) i64,
    pub(super) i64,
);

const ISO: &str = "ISO 898-1:2013";
const SAE: &str = "SAE J429";

pub(super) const ROWS: &[Row] = &[
    Row("5.8", ISO, Unit::Megapascal, 380, 520, 16),
    Row("6.8", ISO, Unit::Megapascal, 440, 600, 16),
    Row("8.8", ISO, Unit::Megapascal, 580, 800, 16),
    Row("9.8", ISO, Unit::Megapascal, 650, 900, 16),
    Row("10.9", ISO, Unit::Megapascal, 830, 1_040, 16),
    Row("12.9", ISO, Unit::Megapascal, 970, 1_220, 16),
    Row("grade 2", SAE, Unit::Psi, 55_000, 74_000, 12),
    Row("grade 5", SAE, Unit::Psi, 85_000, 120_000, 16),
    Row("grade 8", SAE, Unit::Psi, 120_000, 150_000, 24),
];
