//! The only module that touches storage.
//!
//! Entries live in IndexedDB with strict durability and count as written when their transaction has
//! completed: a killed browser loses the newest `localStorage` writes, but none of these. What may be
//! lost (settings, drafts, forms as they were left) lives in `localStorage`, through [`keep`].

mod channel;
mod database;
pub mod keep;
pub mod persist;

pub use channel::Channel;
pub use database::{Database, Fault};
