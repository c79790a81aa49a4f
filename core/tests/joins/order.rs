//! Joined in any order, once or twice: the same sheets, the same open points, the same table.

use super::books::{BUILDS, build, config, entries, folded};
use pitleaf_core::book::{Book, Entry, csv};
use pitleaf_core::route::{
    BuildSheet, Copy, OpenPoints, Progress, compare, compared_rows, past_limits,
};
use proptest::prelude::*;

/// Everything a customer, the shop and a spreadsheet get.
fn told(book: &Book) -> String {
    let mut told = csv::write(book);
    for name in BUILDS {
        let of = build(name);
        let sheet = book.sheet_for(Some(&of));
        for copy in [Copy::Customer, Copy::Shop] {
            let printed = BuildSheet::of(book, &of, &sheet, copy, &|at| at.to_string());
            told.push_str(&format!("{printed:?}"));
        }
        told.push_str(&format!("{:?}", OpenPoints::of(book, &of, &sheet)));
        told.push_str(&format!("{:?}", past_limits(book, &of, &sheet)));
        told.push_str(&format!("{:?}", Progress::of(book, &of, &sheet)));
    }
    let sheet = book.sheet();
    for row in compared_rows(book, &sheet) {
        told.push_str(&format!("{:?}", compare(book, &sheet, &row.id, "", 5)));
    }
    told
}

fn shuffled() -> impl Strategy<Value = (Vec<Entry>, Vec<Entry>)> {
    entries().prop_flat_map(|entries| {
        let twice: Vec<Entry> = entries.iter().chain(entries.iter().take(4)).cloned().collect();
        (Just(entries), Just(twice).prop_shuffle())
    })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 24, ..config() })]

    #[test]
    fn whichever_way_books_are_joined_the_sheet_is_the_same((entries, mixed) in shuffled()) {
        prop_assert_eq!(told(&folded(&mixed)), told(&folded(&entries)));
    }
}
