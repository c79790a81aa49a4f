//! Threads: ISO metric M5–M16, Unified 1/4–5/8, O-ring boss ports −3…−16; their drills and holes.
//!
//! The tables hold what the standards print; everything that follows from a formula is worked out
//! here, and the tests hold each printed figure against its formula.

mod boss_port_rows;
mod boss_ports;
mod clearance;
mod clearance_rows;
mod drill;
mod drill_rows;
mod find;
mod identify;
mod metric_rows;
mod thread;
mod unified_rows;

pub use boss_ports::BossPort;
pub use clearance::{Clearance, ClearanceFit, clearance_hole};
pub use drill::{Drill, DrillKind, nearest_drills};
pub use find::{find_ports, find_threads};
pub(crate) use find::{port_words, thread_words};
pub use identify::{Candidate, Measured, Side, identify, what_tells_apart};
pub(super) use thread::length;
pub use thread::{Series, Thread};
