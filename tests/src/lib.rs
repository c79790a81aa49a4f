//! Drives the built app in a real browser, as a person would: by what stands on the screen and how it
//! is read out, with touches and keys, waiting for what must come and for nothing else.
//!
//! The app is `dist` at the top of the workspace, or the folder in `PITLEAF_DIST`; `tests/run` builds it
//! first. Nothing is tried twice: a test that fails has found something.

pub mod answers;
mod browser;
mod devtools;
mod engine;
mod hand;
mod journal;
pub mod kills;
pub mod large_book;
mod locate;
pub mod pace;
mod pages;
mod percentile;
pub mod places;
mod port;
mod printed;
mod process;
mod server;
mod sight;

pub use browser::{Browser, Phone, Profile};
pub use engine::Engine;
pub use locate::{
    Named, alert, button, combobox, group, heading, image, link, list, searchbox, status, table,
    textbox,
};
pub use percentile::percentile;
pub use printed::{Page, Printed};
pub use process::Tree;
pub use server::{Server, dist};
