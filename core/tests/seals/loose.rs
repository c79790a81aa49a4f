//! Loose pieces and slots as the book has them.

use crate::bench::{micrometres, written};
use pitleaf_core::book::{Book, Entry, EntryId, FORMAT, Fact, Slot};
use pitleaf_core::limits::Sheet;
use pitleaf_core::quantity::{Reading, Unit};
use pitleaf_core::seals::{
    LooseKind, free_number, length_doubt, slot_from_gap, slot_length_fact, slot_lengths,
};

fn build() -> EntryId {
    EntryId("e0".into())
}

fn write(book: &mut Book, fact: Fact) -> EntryId {
    let order = book.next_order();
    let id = EntryId(format!("e{order}").into());
    assert!(
        book.take(Entry { format: FORMAT, id: id.clone(), build: build(), order, at: 0, fact }),
        "a new entry is taken"
    );
    id
}

fn length(text: &str) -> Reading {
    Reading::read(text, Unit::Millimetre, LooseKind::SideSealLength.bounds()).expect("a length")
}

#[test]
fn a_withdrawn_piece_gives_its_number_back() {
    let kind = LooseKind::SideSealLength;
    let mut book = Book::default();
    let ids: Vec<EntryId> = ["55.10", "55.02", "54.90"]
        .iter()
        .zip(1..)
        .map(|(text, number)| write(&mut book, kind.fact(number, &length(text))))
        .collect();
    let numbers = |book: &Book| -> Vec<(usize, String)> {
        let all = kind.all(book, &build());
        all.iter().map(|piece| (piece.number, piece.reading.number().to_owned())).collect()
    };
    assert_eq!(numbers(&book).len(), 3, "all three");
    assert_eq!(free_number(&kind.all(&book, &build())), Some(4));
    write(&mut book, Fact::Withdrawn { entry: ids[1].clone() });
    assert_eq!(numbers(&book), [(1, "55.10".to_owned()), (3, "54.90".to_owned())]);
    assert_eq!(free_number(&kind.all(&book, &build())), Some(2), "the lowest free one");
    assert!(LooseKind::ApexSealHeight.all(&book, &build()).is_empty(), "another box");
}

#[test]
fn a_slot_is_as_long_as_a_seal_and_its_gap() {
    let seal = length("55.10").amount();
    let slot = slot_from_gap(seal, &written("2 thou")).expect("a length");
    assert_eq!(slot.amount(), micrometres(55_100).plus(written("2 thou").amount().above_zero()));
    assert_eq!(slot.number(), "55.1508", "exact");
    let place = Slot::named("2R-CA").expect("a slot");
    let mut book = Book::default();
    write(&mut book, slot_length_fact(place, &slot));
    let lengths = slot_lengths(&book, &build(), 2);
    assert_eq!(lengths.len(), 1, "one slot measured");
    assert_eq!((lengths[0].0, lengths[0].2.amount()), (place, slot.amount()));
    assert!(slot_lengths(&book, &build(), 1).is_empty(), "an engine of one rotor has no such slot");
}

/// By hand: a caliper of 0.02 mm, good to ±0.03, has √(0.02²/12 + 0.03²/3) = 18.257 µm; a micrometer of 0.001,
/// good to ±0.004, 2.327 µm; both 18.405, times 1.65 is 30.37 µm (ISO 14253-1, JCGM 100).
#[test]
fn the_room_between_two_lengths_has_the_doubt_of_both() {
    let doubt = length_doubt(&Sheet::starter(), &length("55.100"), &length("55.020"));
    assert!((doubt.value(Unit::Micrometre) - 30.37).abs() < 0.01, "{doubt:?}");
}
