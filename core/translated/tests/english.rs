//! In the English app every text stays as it stands in the source.

use pitleaf_translated::{tr, translated};

const PLAIN: &str = tr!("Bench");

#[translated]
fn said(count: u8) -> String {
    format!("{count} left of {}", 3)
}

#[test]
fn texts_are_plain_and_placeholders_are_filled() {
    let count = 2;
    assert_eq!(PLAIN, "Bench", "a constant");
    assert_eq!(tr!("{count} left of {}", 3), "2 left of 3", "a text to fill");
    assert_eq!(said(count), "2 left of 3", "inside an item");
}
