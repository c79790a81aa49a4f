//! Browser tests and reference checks.
