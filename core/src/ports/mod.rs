//! Ports: when they really open, what they run into, and how much room is left.

mod clip;
mod crossing;
mod figure;
mod open;
mod opening;
mod outline;
mod position;
mod sweep;

pub use open::{OpenAreas, Port, PortFault, SealedBy};
pub use opening::Opening;
pub use outline::{Outline, OutlineFault};
pub use sweep::Sweep;
