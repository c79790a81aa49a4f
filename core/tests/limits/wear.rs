//! Wear limits, and rows that can't be used.

use super::{limit, read, worn};
use Unit::{Inch, Millimetre, NewtonMetre};
use pitleaf_core::limits::{Edge, Limit, Row, RowFault, Sheet, Source};
use pitleaf_core::quantity::Unit;

#[test]
fn a_part_is_worn_out_past_the_limit_and_not_on_it() {
    // Clearance in a slot grows.
    let growing = worn(limit("0.028", "0.078", Millimetre), "0.10", Millimetre);
    // Clearance of a rotor shrinks.
    let shrinking = worn(limit("0.12", "0.21", Millimetre), "0.10", Millimetre);
    // Compression falls; runout grows.
    let falling = worn(limit("690", "", Millimetre), "590", Millimetre);
    let rising = worn(limit("", "0.06", Millimetre), "0.12", Millimetre);
    // At most 12 when fresh, done below 8: a preload that settles.
    let settling = worn(limit("", "12", Millimetre), "8", Millimetre);
    for (limit, reading, wanted) in [
        (&growing, "0.05", false),
        (&growing, "0.10", false),
        (&growing, "0.1000001", true),
        (&growing, "0.01", false),
        (&shrinking, "0.10", false),
        (&shrinking, "0.0999999", true),
        (&shrinking, "0.30", false),
        (&falling, "600", false),
        (&falling, "589", true),
        (&rising, "0.11", false),
        (&rising, "0.13", true),
        (&settling, "11", false),
        (&settling, "8", false),
        (&settling, "7.9999", true),
        (&settling, "13", false),
    ] {
        let worn = limit.is_worn_out(read(reading, Millimetre).amount());
        assert_eq!(worn, Some(wanted), "{reading} against {limit:?}");
    }
    let unworn = limit("1", "2", Millimetre);
    assert_eq!(unworn.is_worn_out(read("9", Millimetre).amount()), None, "no wear limit");
}

#[test]
fn a_limit_is_written_in_the_unit_of_its_first_edge() {
    assert_eq!(limit("1 mm", "", Inch).unit(), Some(Millimetre), "the lower edge’s");
    assert_eq!(limit("", "2", Inch).unit(), Some(Inch), "the upper edge’s");
    assert_eq!(Limit::default().unit(), None, "none without an edge");
}

fn row() -> Row {
    Sheet::starter().row("end-play").expect("the sheet has it").clone()
}

#[test]
fn each_fault_of_a_row_has_its_sentence() {
    let edge = |text| Edge::read(text, Millimetre).ok();
    let of = |limit| Row { limit, ..row() }.faults();
    let wear_alone = of(Limit { wear: edge("0.09"), ..Limit::default() });
    let crossed = of(Limit { lower: edge("0.07"), upper: edge("0.04"), wear: None });
    let other = Row { unit: NewtonMetre, ..row() }.faults();
    let unnamed = Row { what: "  ".to_owned(), ..row() }.faults();
    for (faults, fault, sentence) in [
        (unnamed, RowFault::NoName, "Say what is measured."),
        (of(Limit::default()), RowFault::NoEdge, "Give a lower limit, an upper limit, or both."),
        (wear_alone, RowFault::NoEdge, "Give a lower limit, an upper limit, or both."),
        (
            crossed,
            RowFault::Crossed,
            "The lower limit lies above the upper. Swap them, or check the decimal point.",
        ),
        (
            other,
            RowFault::OtherDimension,
            "A limit’s unit measures something else than the row. Change the unit.",
        ),
    ] {
        assert_eq!(faults, [fault], "{sentence}");
        assert_eq!(fault.to_string(), sentence, "{fault:?}");
    }
}

#[test]
fn all_faults_are_told_at_once() {
    let row = Row { what: String::new(), limit: Limit::default(), ..row() };
    assert_eq!(row.faults(), [RowFault::NoName, RowFault::NoEdge], "both");
}

#[test]
fn equal_edges_are_not_crossed() {
    assert_eq!(
        Row { limit: limit("2 thou", "0.0508", Millimetre), ..row() }.faults(),
        [],
        "one size"
    );
}

#[test]
fn a_row_put_in_takes_the_place_of_its_namesake() {
    let mut sheet = Sheet::starter();
    let count = sheet.rows().len();
    let place = sheet.rows().iter().position(|old| old.id == "end-play");
    sheet.put(Row { what: "Mine".to_owned(), ..row() });
    assert_eq!(sheet.rows().len(), count, "none added");
    assert_eq!(sheet.rows().iter().position(|old| old.what == "Mine"), place, "where it stood");
    sheet.put(Row { id: "my-own".to_owned(), ..row() });
    assert_eq!(
        sheet.rows().last().map(|row| row.id.as_str()),
        Some("my-own"),
        "a new one, at the end"
    );
}

#[test]
fn every_source_says_what_it_is() {
    let text = |text: &str| text.to_owned();
    for (source, kind, sentence) in [
        (
            Source::Published {
                document: text("ISO 286-1"),
                edition: text("2010"),
                page: text("table 1"),
            },
            "published",
            "Published: ISO 286-1, 2010, table 1.",
        ),
        (
            Source::CommonPractice,
            "common practice",
            "Common practice, no published source. The engine’s own manual stands above this figure.",
        ),
        (
            Source::FromMemory,
            "from memory",
            "From memory, not checked: a remembered figure of one family of engines (e 15, R 105, b 80 mm; 654 cm³ a rotor). Confirm it in the engine’s own manual, which stands above this figure.",
        ),
        (
            Source::Yours {
                who: text("J."),
                when: text("3 May"),
                from: text("workshop manual, p. 14"),
            },
            "yours",
            "Yours, workshop manual, p. 14, J., 3 May.",
        ),
        (
            Source::Yours { who: String::new(), when: String::new(), from: String::new() },
            "yours",
            "Yours.",
        ),
    ] {
        assert_eq!(source.kind(), kind, "{source:?}");
        assert_eq!(source.to_string(), sentence, "{source:?}");
    }
}
