//! Faces, bores and end play: what a builder measures before stacking, and what follows from it.
//!
//! Readings come in as [`uom`] lengths, each checked against its bounds; nothing is computed from a set
//! that is refused ([`Refusal`]). Go and no-go gauges come in as exact amounts and give a [`Bracket`](crate::seals::Bracket).
//! Results carry their standard uncertainty ([`Measured`]) and stand against a limit row by the same rule
//! as a single reading.

mod bore;
mod bracket;
mod circle;
mod clearance;
mod end_play;
mod face_work;
mod flatness;
mod input;
mod lapping;
mod layout;
mod least_squares;
mod ledger;
mod minimum_zone;
mod plastic_gauge;
mod refusal;
mod relief;
pub mod report;
mod runout;
mod skin;
mod stack;
mod step_wear;
mod straightedge;
mod support;
mod survey;
mod uncertainty;
mod unit_slip;

pub use bore::{Cylinder, bearing_clearance, cylinder};
pub use circle::{Circle, least_squares_circle};
pub use clearance::{Clearance, Sizes};
pub use end_play::{Choice, Closing, Sense, Spacer, choose, close, end_play, ideal_thickness};
pub use face_work::{FaceWork, FaceWorkFault, Operation};
pub use flatness::{Flatness, Point, Reference, far_corners, flatness};
pub use lapping::{Hardening, Job, ORDER, Plan, Range, Reason, plan, stack_change};
pub use layout::{Ring, Spot, side_housing_spots};
pub(crate) use ledger::is_lapped;
pub use ledger::{Ledger, LedgerLine};
pub use plastic_gauge::{Strip, Strips, strips};
pub use refusal::Refusal;
pub use relief::{Band, Relief, relief};
pub use runout::{Runout, USUAL_PLACES, runout};
pub use skin::{Skin, SkinLeft};
pub use stack::{
    StackPart, Taper, Widths, apex_seal_end_gap, housings_apart, rotor_side_clearance,
    stack_length, taper, widths,
};
pub use step_wear::{Across, Apart, Steps, step_and_warp, steps_across};
pub use straightedge::{Hollow, hollow, next_leaf};
pub use survey::{
    LANDS, Pieces, Place, PlaceFault, PlacedReading, ReadingSet, SetFault, Survey, Taken,
    piece_words,
};
pub use uncertainty::{Contribution, Doubt, Measured, combined};
pub use unit_slip::{UnitSlip, unit_slips};
