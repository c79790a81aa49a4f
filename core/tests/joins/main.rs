//! The joins: whatever stands in a book, every place that tells of it tells the same.

mod books;
mod limits;
mod order;
mod sheet;
mod sign_off;
mod speech;
mod table;
