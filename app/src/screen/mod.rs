//! The screens, each one question and its answer.

mod bench;
mod book;
mod check;
mod convert;
mod entry;
mod entry_line;
mod limits;
mod open;
mod own_limit;
mod seals;
mod settings;
mod slot;

pub use bench::Bench;
pub use book::BookScreen;
pub use check::Check;
pub use convert::Convert;
pub use entry::EntryScreen;
pub use limits::{Limits, PartLimits};
pub use open::Open;
pub use own_limit::OwnLimit;
pub use seals::Seals;
pub use settings::SettingsScreen;
pub use slot::SlotScreen;
