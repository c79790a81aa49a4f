//! Compression: each rotor's three faces as read, at a stated cranking speed and in stated air.
//!
//! A reading goes with the pressure of the air drawn in, so it is referred to the sea's. How it goes with
//! speed differs from engine to engine: it is compared only at the limit's own speed, or between two speeds
//! at which the same engine was tested.

mod compared;
mod record;
mod test;
mod typed;

pub use compared::{Compared, NOT_COMPARED, NotCompared, compare};
pub use record::{Finding, HOW_COMPARED, Tested, record, record_in};
pub use test::{Air, Compression};
pub use typed::{CompressionFault, SPEEDS, TypedTest};

use crate::quantity::{Bounds, Unit};
use pitleaf_translated::tr;

/// Which plug takes the tester and which stay in, in the words of every place that says how. From memory.
pub const TESTER: &str = tr!(
    "Engine warm, throttle open. Take the trailing plug out of every rotor; every leading plug stays in. Screw the tester into the trailing plug’s hole of the rotor being tested: one that holds each of its three peaks. Read the cranking speed with them."
);

const PRESSURE: Bounds =
    Bounds { name: tr!("A compression reading"), lowest: 0, highest: 3000, unit: Unit::Kilopascal };
