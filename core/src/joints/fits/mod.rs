//! ISO 286 limits and fits, above 1 and up to 250 mm, and the fit of any pair of limits.
//!
//! The tables hold the standard's fundamental deviations and tolerances; limits follow from them by
//! its rules. What the standard does not define is refused with a sentence, never filled in.

mod class;
mod deviation_rows;
mod fault;
mod fit;
mod limits;
mod zones;

pub use class::{Class, Letter};
pub use fault::FitFault;
pub use fit::{Fit, FitKind, Sizes};
pub use limits::{Limits, limits};
pub use zones::{Zones, zones};
