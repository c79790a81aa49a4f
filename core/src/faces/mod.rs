//! Faces, bores and end play: what a builder measures before stacking, and what follows from it.
//!
//! Readings come in as [`uom`] lengths, each checked against its bounds; nothing is computed from a set
//! that is refused ([`Refusal`]).

mod flatness;
mod input;
mod least_squares;
mod minimum_zone;
mod refusal;

pub use flatness::{Flatness, Point, Reference, far_corners, flatness};
pub use refusal::Refusal;
