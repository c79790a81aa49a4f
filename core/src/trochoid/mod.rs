//! The shape of the engine: bore, rotor, chambers and the tracks of the seals on a side housing.
//!
//! One frame throughout, the *housing frame*: the origin lies on the shaft's axis, x runs along the
//! long (major) axis of the bore and y along the short (minor) axis. θ is the eccentric shaft's
//! angle and grows anticlockwise. The rotor's centre stands at e (cos θ, sin θ) and the rotor is
//! turned by θ/3, so that one chamber's full cycle takes 1080° of θ.
//!
//! - [`Geometry`]: the four measures everything follows from, checked when they are put together.
//! - [`Trochoid`]: the bore, and every curve that runs beside one (coolant land, seal tracks).
//! - [`Flank`]: a side of the rotor, or the line of the side seal inside it.
//! - [`Chambers`]: areas, volumes, ratios and the recess in the rotor.
//! - [`Engine`]: the geometry with its seals, and a preset to start from; [`TypedEngine`]: the same
//!   as typed.

mod chamber;
mod correction;
mod curve;
mod engine;
mod face_map;
mod fault;
mod flank;
mod geometry;
mod nearest;
mod point;
mod quadrature;
mod ratio;
mod rotor;
mod sector;
mod typed;

pub use chamber::{Chamber, Chambers};
pub use correction::Correction;
pub use curve::Trochoid;
pub use engine::{Engine, Seals};
pub use face_map::FaceMap;
pub use fault::GeometryFault;
pub(crate) use fault::Millimetres;
pub use flank::Flank;
pub use geometry::{BOUNDS, Bound, Geometry};
pub(crate) use nearest::{Foot, Nearest};
pub use point::{Direction, Point};
pub(crate) use quadrature::integral;
pub use ratio::RatioFault;
pub use rotor::RotorPose;
pub(crate) use sector::SectorArea;
pub use typed::{Measure, MeasureFault, TypedEngine};
