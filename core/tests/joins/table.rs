//! The table for a spreadsheet against the book's pages: a line for each figure ever written.

use super::books::{config, entries, folded, is_withdrawn};
use pitleaf_core::book::{Fact, csv};
use proptest::prelude::*;

proptest! {
    #![proptest_config(config())]

    #[test]
    fn the_table_says_what_the_books_pages_say(entries in entries()) {
        let book = folded(&entries);
        let text = csv::write(&book);
        let mut lines = text.split("\r\n").skip(1);
        for entry in &entries {
            let Fact::Figure(figure) = &entry.fact else { continue };
            let line = lines.next().expect("a line of each figure");
            // Only what is known to hold no comma is split by it.
            let (rest, last) = line.rsplit_once(',').expect("its last cell");
            let (_, verdict) = rest.rsplit_once(',').expect("the one before");
            let sheet = book.sheet_for(Some(&entry.build));
            let page = book.words(entry, &sheet);
            prop_assert_eq!(verdict, page.call.map_or("", |call| call.word()), "{}", line);
            let is_withdrawn = is_withdrawn(&entries, &entry.id);
            prop_assert_eq!(last == "withdrawn", is_withdrawn, "{}", line);
            let on_page = book.lines(&entry.build).find(|line| line.entry.id == entry.id);
            prop_assert_eq!(on_page.map(|line| line.withdrawn), Some(is_withdrawn), "the page");
            prop_assert!(line.contains(&figure.text) && line.contains(figure.unit.symbol()), "{}", line);
            prop_assert!(line.starts_with(&format!("{},{},", entry.build.0, entry.order)), "{}", line);
        }
        prop_assert_eq!(lines.next(), Some(""), "and nothing else");
    }
}
