//! The build sheet against the book and the slots: the figures in force, each as the screens show it.

use super::books::{BUILDS, GAP, build, config, entries, folded, in_force, is_withdrawn};
use pitleaf_core::book::{Book, BuildId, Entry, Fact, Slot};
use pitleaf_core::limits::{BuildKind, place_words};
use pitleaf_core::quantity::{Bounds, Dimension, Reading, Unit};
use pitleaf_core::route::{BuildSheet, Copy, Row, Section, compare};
use pitleaf_core::seals::{gap_row, slot_report};
use proptest::prelude::*;

pub(crate) fn printed(book: &Book, of: &BuildId) -> BuildSheet {
    let sheet = book.sheet_for(Some(of));
    BuildSheet::of(book, of, &sheet, Copy::Shop, &|at| at.to_string()).expect("it is open")
}

pub(crate) fn section(sheet: &BuildSheet, heading: &str) -> Section {
    let found = sheet.sections.iter().find(|section| section.heading == heading);
    found.cloned().unwrap_or_default()
}

/// A figure of the sheet with its unit, read back.
fn read_back(cell: &str) -> Reading {
    let widest = Bounds::widest(Dimension::Length);
    Reading::read(&cell.replace('−', "-"), Unit::Millimetre, widest).expect("a figure of the sheet")
}

/// Whether a leaf was tried in the slot, or a fresh seal taken for it, after the entry.
fn is_overtaken(entries: &[Entry], than: &Entry, place: &str) -> bool {
    entries.iter().any(|entry| {
        let slot = match &entry.fact {
            Fact::Trial { slot, .. } | Fact::FreshSeal { slot } => slot.to_string(),
            _ => return false,
        };
        slot == place
            && entry.build == than.build
            && entry.order > than.order
            && !is_withdrawn(entries, &entry.id)
    })
}

/// The reading of a line; what was read there before stands under it.
pub(super) fn as_read(line: &Row) -> &str {
    line.cells[1].lines().next().unwrap_or_default()
}

proptest! {
    #![proptest_config(config())]

    /// The readings of the sheet are those in force, no more and no fewer: with the text and unit that the book's
    /// pages show, the same verdict, and a conversion that is the same length to half its last digit.
    #[test]
    fn readings_are_those_in_force_as_the_book_shows_them(entries in entries()) {
        let book = folded(&entries);
        for name in BUILDS {
            let of = build(name);
            let sheet = book.sheet_for(Some(&of));
            let lines = section(&printed(&book, &of), "Readings against their limits").rows;
            let mut wanted = in_force(&entries, &of);
            // A gap typed before the slot's last trial or fresh seal stands there no longer.
            wanted.retain(|(entry, figure)| figure.row != GAP || !is_overtaken(&entries, entry, &figure.place));
            prop_assert_eq!(lines.len(), wanted.len(), "{}", name);
            for (entry, figure) in wanted {
                let what = &sheet.row(&figure.row).expect("a row").what;
                let place = place_words(&figure.place);
                let name = if place.is_empty() { what.clone() } else { format!("{place} · {what}") };
                let line = lines.iter().find(|line| line.cells[0] == name);
                prop_assert!(line.is_some(), "{} is not among {:?}", name, lines);
                let line = line.expect("just asked");
                let page = book.words(entry, &sheet);
                prop_assert_eq!(as_read(line), &page.says, "as read");
                prop_assert_eq!(line.call, page.call, "{}", name);
                let word = line.call.map_or("", |call| call.word());
                prop_assert!(line.cells[4].starts_with(word) && !word.is_empty(), "{:?}", line.cells);
                let read = figure.reading().expect("a reading");
                let converted = read_back(&line.cells[2]);
                prop_assert_ne!(converted.unit(), read.unit(), "in the other system");
                let off = converted.amount().minus(read.amount()).size();
                prop_assert!(off.times(2) <= converted.step(), "{:?}", line.cells);
                // With fewer digits only where they tell it exactly.
                let is_as_fine = off.is_zero() || converted.step() <= read.step();
                prop_assert!(is_as_fine, "coarser than read: {:?}", line.cells);
            }
        }
    }

    /// What the sheet says of a slot is what the slot's page says of it.
    #[test]
    fn slots_are_as_their_pages_have_them(entries in entries()) {
        let book = folded(&entries);
        let of = build(BUILDS[0]);
        let sheet = book.sheet_for(Some(&of));
        let row = gap_row(&sheet, BuildKind::NaturallyAspirated).expect("a row");
        let lines = section(&printed(&book, &of), "Side-seal slots").rows;
        for slot in Slot::of_engine(2) {
            let report = slot_report(&book, &of, slot, &sheet, row);
            let line = lines.iter().find(|line| line.cells[0] == slot.to_string());
            let gap = report.gap(row.spoken_unit());
            let Some(line) = line else {
                prop_assert!(gap.is_empty() && !report.state.is_fitted(), "{} is left out", slot);
                continue;
            };
            prop_assert_eq!(line.call, report.gap_state.call(), "{}: {:?}", slot, line.cells);
            // A gap tried for an earlier seal, or typed before it, is none of the seal in hand.
            prop_assert_eq!(&line.cells[2], &gap, "{}", slot);
            prop_assert_eq!(!line.cells[5].is_empty(), report.state.is_fitted(), "{}", slot);
            prop_assert_eq!(&line.cells[1], report.mark.unwrap_or_default(), "{}", slot);
        }
    }

    /// The comparison shows of each build what its sheet shows: one of the figures in force, with its verdict.
    #[test]
    fn the_comparison_shows_figures_of_the_sheet(entries in entries()) {
        let book = folded(&entries);
        for row in ["end-play", "rotor-housing-width", "side-housing-warp"] {
            for point in compare(&book, &book.sheet(), row, "", 5).points {
                let lines = section(&printed(&book, &point.build), "Readings against their limits").rows;
                let (read, _) = point.figure.split_once(" · ").unwrap_or((&point.figure, ""));
                let is_there = lines.iter().any(|line| as_read(line) == read && line.call == point.call);
                prop_assert!(is_there, "{:?} of {} in {:?}", point, row, lines);
            }
        }
    }
}
