//! The book: entries that only grow, and what they add up to.
//!
//! An entry is one small fact. What a screen shows is a fold over all of them, so undo is another
//! entry, nothing is overwritten, and two phones' books join by set union.

pub mod carry;
pub mod csv;
pub mod demo;
mod entry;
pub mod file;
mod fold;
mod join;
mod plates;
mod put_right;
mod slot;
mod words;
pub mod written;

pub use entry::{BuildId, Entry, EntryId, FORMAT, Fact, Figure};
pub use fold::{Book, Line, Subject};
pub use join::{Coming, Conflict, coming};
pub use put_right::put_right;
pub use slot::{Face, Slot};
pub use words::{Words, call, judged};
