//! The starter sheet as a whole: enough of it, all over the engine, and measurable.

use pitleaf_core::limits::{BuildKind, Call, Gauge, Input, Part, Row, Sheet, Source, decide};
use pitleaf_core::quantity::{Dimension, Reading, Unit};

#[test]
fn it_has_rows_for_every_part() {
    let sheet = Sheet::starter();
    assert!(sheet.rows().len() >= 50, "{} rows", sheet.rows().len());
    for part in Part::ALL {
        for build in [BuildKind::NaturallyAspirated, BuildKind::ForcedInduction] {
            let count = sheet.of_part(part, build).count();
            assert!(count >= 3, "{}, {}: {count} rows", part.name(), build.name());
        }
    }
}

#[test]
fn every_row_says_how_and_how_sure() {
    for row in Sheet::starter().rows() {
        assert!(row.how.ends_with('.'), "{}: how it is measured is no sentence", row.id);
        assert!(!row.words.is_empty(), "{} has no other words", row.id);
        assert!(
            matches!(row.source, Source::CommonPractice | Source::FromMemory),
            "{} claims {}",
            row.id,
            row.source
        );
        if row.source == Source::CommonPractice {
            assert!(!row.note.is_empty(), "{} is practice alone, and says nothing of it", row.id);
        }
    }
}

#[test]
fn every_edge_could_be_typed_as_a_reading() {
    for row in Sheet::starter().rows() {
        for edge in [&row.limit.lower, &row.limit.upper, &row.limit.wear].into_iter().flatten() {
            let read = Reading::read(edge.text(), row.unit, row.bounds());
            assert!(read.is_ok(), "{}: {} is refused: {}", row.id, edge.text(), read.unwrap_err());
        }
    }
}

#[test]
fn a_spread_is_a_deviation_and_not_a_size() {
    for row in Sheet::starter().rows() {
        if row.id.ends_with("-spread") && row.unit.dimension() == Dimension::Length {
            assert_eq!(row.input, Input::Deviation, "{}", row.id);
        }
    }
}

#[test]
fn a_wear_limit_lies_outside_the_fresh_limits() {
    for row in Sheet::starter().rows() {
        let Some(wear) = &row.limit.wear else { continue };
        assert!(!row.limit.holds(wear.amount()), "{}: a worn part would pass as fresh", row.id);
    }
}

/// A finely read figure, as near as it gets to the middle of what the row allows.
fn best_reading(row: &Row) -> Reading {
    let limit = &row.limit;
    let value = |unit: Unit| match (&limit.lower, &limit.upper) {
        (Some(lower), Some(upper)) => {
            f64::midpoint(lower.amount().value(unit), upper.amount().value(unit))
        }
        (Some(lower), None) => lower.amount().value(unit) * 1.25,
        (None, Some(upper)) => upper.amount().value(unit) * 0.1,
        (None, None) => panic!("{} has no edge", row.id),
    };
    let text = format!("{:.4}", value(row.unit));
    Reading::read(&text, row.unit, row.bounds()).expect("the middle of a limit is in bounds")
}

#[test]
fn the_gauge_each_row_names_is_fine_enough_for_it() {
    for row in Sheet::starter().rows().iter().filter(|row| row.limit.has_edge()) {
        let gauge = row.gauges(None)[0];
        let verdict = decide(&row.limit, &best_reading(row), &Gauge::usual(gauge));
        assert!(
            !verdict.gauge_too_coarse && verdict.call == Call::Meets,
            "{}: no reading with a {} could prove it: {verdict:?}",
            row.id,
            gauge.name()
        );
    }
}

/// No figure holds for every face, so that none stands there to be met.
#[test]
fn what_lapping_takes_off_is_the_one_row_without_a_limit() {
    let sheet = Sheet::starter();
    let without: Vec<&str> = sheet
        .rows()
        .iter()
        .filter(|row| !row.limit.has_edge())
        .map(|row| row.id.as_str())
        .collect();
    assert_eq!(without, ["side-housing-lapped-off"], "the ledger of the face judges it");
    let row = sheet.row(without[0]).expect("a row");
    let read = Reading::read("0.06", row.unit, row.bounds()).expect("a reading");
    assert_eq!(sheet.judge(row, &read, row.gauge), None, "no verdict");
}

#[test]
fn side_and_apex_gaps_are_tighter_without_boost() {
    let sheet = Sheet::starter();
    for gap in ["side-seal-gap", "apex-seal-gap"] {
        let upper = |kind: &str| {
            sheet.row(&format!("{gap}-{kind}")).unwrap().limit.upper.as_ref().unwrap().amount()
        };
        assert!(upper("na").minus(upper("fi")).is_negative(), "{gap}");
    }
}

/// A remembered figure without the sizes it is for would be taken for any engine's.
#[test]
fn every_row_from_memory_says_the_sizes_it_is_for() {
    let sheet = Sheet::starter();
    let sizes = ["e 15, R 105, b 80 mm", "654 cm³ a rotor"];
    let without: Vec<&str> = sheet
        .rows()
        .iter()
        .filter(|row| row.source == Source::FromMemory)
        .filter(|row| sizes.iter().any(|size| !row.source.to_string().contains(size)))
        .map(|row| row.id.as_str())
        .collect();
    assert_eq!(without, [""; 0], "from memory, and for no sizes");
}
