//! Joints: studs, dowels, threads, fits, and the oil they cut off.
//!
//! Typed text becomes a [`Reading`](crate::quantity::Reading) against a row of [`bounds`]; calculators
//! take and give `uom` quantities. Where friction, a material or a measurement is not known to a
//! figure, the answer is a [`Range`], and the weakest assumption behind it is named.
//!
//! - [`threads`]: what a thread is, the drill for it, and what thread this might be.
//! - [`strength`]: property classes and their proof loads.
//! - [`clamp`]: torque, preload, stretch, and the clamp of a set of bolts and studs.
//! - [`torsion`]: the twist of tightening; [`heat`]: the clamp hot, and dowels between parts that grow unlike.
//! - [`separation`]: firing pressure against the clamp.
//! - [`slip`]: friction and dowels against the reaction torque.
//! - [`bolts`]: where the bolts of a joint stand and what each is called; [`sequence`]: the order of
//!   tightening; [`bolt_picture`]: both drawn; [`plan`]: its passes, and how far the book has them.
//! - [`fits`]: ISO 286 limits and fits, and the fit of a measured pair.
//! - [`press`]: press fits by Lamé.
//! - [`oil_line`]: an outside oil feed; [`oil_feed`]: the hold until it is recorded.
//! - [`typed`] and [`shown`]: a range as typed, and as shown.

pub mod bolt_picture;
pub mod bolts;
pub mod bounds;
pub mod clamp;
pub mod fits;
pub mod heat;
pub mod oil_feed;
pub mod oil_line;
pub mod plan;
pub mod press;
pub mod separation;
pub mod sequence;
pub mod shown;
pub mod slip;
pub mod strength;
pub mod threads;
pub mod torsion;
pub mod typed;

mod assumption;
mod caution;
mod friction_rows;
mod material;
mod material_rows;
mod range;
mod refusal;
mod strength_rows;

pub use assumption::Assumption;
pub use caution::{ABOVE_ALL, Caution};
pub use material::Material;
pub use range::Range;
pub use refusal::Refusal;
