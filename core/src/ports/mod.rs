//! Ports: when they really open, what they run into, and how much room is left.
//!
//! Outlines are given in the housing frame of [`crate::trochoid`]; a [`View`] turns what the builder
//! sees into it.
//!
//! - [`Outline`], [`Port`], [`PeripheralPort`]: a port's shape, put into an engine.
//! - [`Sweep`], [`Opening`], [`PortFigures`], [`Overlap`], [`Timing`]: how it opens.
//! - [`intrusions`], [`bridge()`], [`longest_unsupported`]: what it runs into.
//! - [`Room`], [`Template`]: how far it may go, and a sheet to scribe it from.

mod bore_arc;
mod bridge;
mod clip;
mod crossing;
mod deepest;
mod figure;
mod figures;
mod keep_clear;
mod open;
mod opening;
mod outline;
mod overlap;
mod peripheral;
mod position;
mod room;
mod rounding;
mod rows;
mod sheet;
mod stretch;
mod sweep;
mod template;
mod unsupported;
mod view;

pub use bridge::{Bridge, bridge};
pub use figures::{AngleArea, Change, Greatest, PortFigures, TimeArea};
pub use keep_clear::{Intrusion, Obstacle, intrusions, left_to_land};
pub use open::{OpenAreas, Port, PortFault, SealedBy};
pub use opening::Opening;
pub use outline::{Outline, OutlineFault};
pub use overlap::Overlap;
pub use peripheral::{PeripheralFault, PeripheralPort};
pub use room::{Room, RoomFault};
pub use rounding::Corner;
pub use rows::{Form, RowFault, read_rows};
pub use sheet::{Paper, Sheet};
pub use sweep::Sweep;
pub use template::{Datum, Template, TemplateFault};
pub use unsupported::{Unsupported, longest_unsupported};
pub use view::{DeadCentre, PlugSide, Rotation, SeenFrom, SideHousing, Timing, View};
