//! Ports: when they really open, what they run into, and how much room is left.
//!
//! Outlines are given in the housing frame of [`crate::trochoid`]; a [`View`] turns what the builder
//! sees into it.
//!
//! - [`Outline`], [`Port`], [`PeripheralPort`]: a port's shape, put into an engine.
//! - [`Sweep`], [`Opening`], [`PortFigures`], [`Overlap`], [`Timing`]: how it opens.
//! - [`intrusions`], [`overhang()`], [`bridge()`], [`longest_unsupported`]: what it runs into.
//! - [`TypedOutline`], [`PlatePort`], [`SweptSoFar`], [`findings`], [`table()`], [`chart`], [`picture`], [`shown`]: what
//!   the builder typed, and what a screen shows of it.
//! - [`Room`], [`Template`]: how far it may go, and a sheet to scribe it from.

mod bore_arc;
mod bridge;
pub mod chart;
mod clip;
mod crossing;
mod deepest;
mod edit;
mod figure;
mod figures;
mod keep_clear;
mod open;
mod opening;
mod outline;
mod overhang;
mod overlap;
mod peripheral;
pub mod picture;
mod plate;
mod position;
mod report;
mod room;
mod rounding;
mod rows;
mod sheet;
pub mod shown;
mod stretch;
mod sweep;
mod table;
mod template;
mod typed;
mod unsupported;
mod view;
mod window;

pub use bridge::{Bridge, bridge};
pub use edit::{
    add_corner, corner_radius, move_corner, nearest_corner, remove_corner, round_corner, write_rows,
};
pub use figures::{AngleArea, Change, Greatest, PortFigures, TimeArea};
pub use keep_clear::{Intrusion, Obstacle, intrusions, left_to_land};
pub use open::{OpenAreas, Port, PortFault, SealedBy, Seat};
pub use opening::Opening;
pub use outline::{Outline, OutlineFault};
pub use overhang::{Grade, Overhang, TOUCHES, overhang};
pub use overlap::Overlap;
pub use peripheral::{PeripheralFault, PeripheralPort, on_bore};
pub use plate::{PlatePort, SweptSoFar};
pub use report::{Finding, Objection, Weight, as_it_will_be, findings, objections};
pub use room::{Room, RoomFault};
pub use rounding::Corner;
pub use rows::{Form, RowFault, read_rows};
pub use sheet::{Paper, Sheet};
pub use sweep::Sweep;
pub use table::{Row, line, table};
pub use template::{Datum, Template, TemplateFault};
pub use typed::{Flow, PortFace, PortName, Shape, Stage, TypedDatums, TypedOutline, outline_of};
pub use unsupported::{Unsupported, longest_unsupported};
pub use view::{DeadCentre, PlugSide, Rotation, SeenFrom, SideHousing, Timing, View};
pub use window::Window;
