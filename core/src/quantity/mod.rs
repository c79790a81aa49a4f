//! Quantities: from the text a person typed to an exact amount, and back.
//!
//! Readings and limits must compare exactly (2 thou *is* 0.0508 mm), and binary
//! floating point cannot do that at the edge. So an [`Amount`] is a whole number
//! of ticks, the tick of each [`Dimension`] chosen so that every unit in use is
//! a whole number of them. Physics runs on [`uom`], and [`Amount`] is the one
//! place that converts between the two; uom's own inch-pound factors are never
//! used, since several are rounded (its foot pound-force is off by 8.7e-8).

mod amount;
mod arithmetic;
mod bounds;
mod cells;
mod convert;
mod fault;
mod number;
mod reading;
mod show;
mod tolerance;
mod unit;

pub use amount::{Amount, Span};
pub use bounds::Bounds;
pub(crate) use cells::{cells, parted};
pub use convert::{
    Conversion, Converted, conversions, nearest_leaf, nearest_sixty_fourth, usual_leaves,
};
pub use fault::Fault;
pub use number::Number;
pub use reading::Reading;
pub(crate) use show::without_zeros;
pub use show::{Rounding, places_for, thou_words};
pub use tolerance::Tolerance;
pub use unit::{Dimension, Unit};
