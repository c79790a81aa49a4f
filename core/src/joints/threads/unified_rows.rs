//! Unified threads, 1/4 to 5/8, and those of the larger boss ports.
//!
//! Sizes: ASME B1.1. Stress areas: J. E. Shigley, *Mechanical Engineering Design*, 9th edition,
//! table 8-2 (published up to 9/16; 5/8, 3/4 and 7/8 from memory; the two UN threads are the
//! formula's figure). Drills: published for 1/4-20, 7/16-20, 1/2-20 and 9/16-18, the rest from
//! memory. The tests hold every row against its formula.

use super::drill::Drill::{Fraction, Letter, Number};
use super::thread::{Pitch::PerInch, Row, Series::Un, Series::Unc, Series::Unf, inch};

pub(super) const ROWS: &[Row] = &[
    Row(Unc, inch(1, 4), PerInch(20), Number(7), "0.0318"),
    Row(Unf, inch(1, 4), PerInch(28), Number(3), "0.0364"),
    Row(Unc, inch(5, 16), PerInch(18), Letter('F'), "0.0524"),
    Row(Unf, inch(5, 16), PerInch(24), Letter('I'), "0.0580"),
    Row(Unc, inch(3, 8), PerInch(16), Fraction(20), "0.0775"),
    Row(Unf, inch(3, 8), PerInch(24), Letter('Q'), "0.0878"),
    Row(Unc, inch(7, 16), PerInch(14), Letter('U'), "0.1063"),
    Row(Unf, inch(7, 16), PerInch(20), Fraction(25), "0.1187"),
    Row(Unc, inch(1, 2), PerInch(13), Fraction(27), "0.1419"),
    Row(Unf, inch(1, 2), PerInch(20), Fraction(29), "0.1599"),
    Row(Unc, inch(9, 16), PerInch(12), Fraction(31), "0.182"),
    Row(Unf, inch(9, 16), PerInch(18), Fraction(33), "0.203"),
    Row(Unc, inch(5, 8), PerInch(11), Fraction(34), "0.226"),
    Row(Unf, inch(5, 8), PerInch(18), Fraction(37), "0.256"),
    Row(Unf, inch(3, 4), PerInch(16), Fraction(44), "0.373"),
    Row(Unf, inch(7, 8), PerInch(14), Fraction(52), "0.509"),
    Row(Un, inch(17, 16), PerInch(12), Fraction(63), "0.756"),
    Row(Un, inch(21, 16), PerInch(12), Fraction(79), "1.191"),
];
