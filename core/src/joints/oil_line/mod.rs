//! An outside oil feed: what a line of hose and fittings lets through.
//!
//! Solid upper dowels shut the passage to the front bearing; it must then be fed from outside. Here the
//! pressure a wanted flow costs, the flow an available pressure gives, and the oil's viscosity at
//! temperature.

mod fitting_rows;
mod line;
mod oil_rows;
mod viscosity;

pub use line::{Drop, Feed, Fitting, Line, OilState, Regime, fittings};
pub use viscosity::{Oil, TypicalOil, typical_oils};
