//! Calculators and tolerance tables for building rotary (Wankel-type) engines.
//!
//! Pure: time and ids come in as arguments, and nothing here knows a browser.

pub mod trochoid;
