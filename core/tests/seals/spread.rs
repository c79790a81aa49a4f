//! Springs measured one by one: their rows, and their spread against its limit.

use crate::bench::limit;
use pitleaf_core::book::{Book, Entry, EntryId, FORMAT, Fact, Figure};
use pitleaf_core::limits::{BuildKind, Call, Gauge, GaugeKind, Part, Sheet};
use pitleaf_core::quantity::{Bounds, Reading, Span, Unit};
use pitleaf_core::seals::{Place, SpreadCheck, set_readings};

fn readings(texts: &[(&str, &str)]) -> Vec<(Place, Reading)> {
    let read = |text| Reading::read(text, Unit::Millimetre, &Bounds::SIZE).unwrap();
    texts.iter().map(|(place, text)| (Place::read(place).unwrap(), read(text))).collect()
}

fn check(texts: &[(&str, &str)]) -> SpreadCheck {
    let gauge = Gauge::usual(GaugeKind::DepthMicrometer);
    SpreadCheck::of(&readings(texts), &limit(None, Some("0.3")), &gauge).unwrap()
}

#[test]
fn the_spread_is_judged_and_the_tired_one_named() {
    let tired = check(&[("1F-A", "3.52"), ("1F-B", "3.10"), ("1F-C", "3.50")]);
    assert_eq!(tired.spread, Span::whole(420, Unit::Micrometre));
    assert!(matches!(tired.call, Some(Call::DoesNotMeet(_))), "{tired:?}");
    assert_eq!(
        tired.words(Unit::Millimetre),
        "3 measured. Spread 0.42 mm, at most 0.3\u{a0}mm is allowed: does not meet. Shortest, and the first to suspect: 1F-B at 3.10 mm. Tallest: 1F-A at 3.52 mm."
    );
    let sound = check(&[("1F-A", "3.52"), ("1F-B", "3.50")]);
    assert_eq!(sound.call, Some(Call::Meets));
    assert_eq!(
        check(&[("1F-A", "3.5"), ("1F-B", "3.5")]).words(Unit::Millimetre),
        "2 measured. Spread 0 mm, at most 0.3\u{a0}mm is allowed: meets. All are alike."
    );
}

#[test]
fn two_readings_bring_two_doubts() {
    // Usual depth micrometer: steps of 2 µm, good to 5: but each reading's last digit is 10 µm. One
    // reading: √(10²/12 + 5²/3) = 4.08 µm; two: 5.77 µm; guard band 1.65 · 5.77 = 9.53 µm.
    assert_eq!(
        check(&[("1F-A", "3.50"), ("1F-B", "3.21")]).call,
        Some(Call::Meets),
        "10 µm inside"
    );
    let fine = |low| check(&[("1F-A", "3.500"), ("1F-B", low)]).call;
    // To the micrometre: √(2²/12 + 5²/3) = 2.94 µm; two: 4.16 µm; guard band 6.87 µm.
    assert_eq!(fine("3.207"), Some(Call::Meets), "7 µm inside");
    assert_eq!(fine("3.206"), Some(Call::TooClose), "6 µm inside: one reading’s doubt would do");
}

#[test]
fn one_spring_or_none_has_no_spread() {
    let one = check(&[("1F-A", "3.5")]);
    assert_eq!(one.call, None);
    assert_eq!(one.words(Unit::Millimetre), "1 measured. A spread takes two or more.");
    let gauge = Gauge::usual(GaugeKind::DepthMicrometer);
    assert_eq!(
        SpreadCheck::of(&[], &limit(None, Some("0.3")), &gauge).unwrap_err().to_string(),
        "Nothing measured yet. Type at least one reading."
    );
    let mass = Reading::read("7 g", Unit::Gram, Bounds::widest(Unit::Gram.dimension())).unwrap();
    let mixed = [readings(&[("1F-A", "3.5")]), vec![(Place::read("1F-B").unwrap(), mass)]].concat();
    assert!(SpreadCheck::of(&mixed, &limit(None, Some("0.3")), &gauge).is_err(), "grams");
}

#[test]
fn every_set_of_springs_is_measured_at_each_place_of_its_part() {
    let sheet = Sheet::starter();
    let mut found = 0;
    for part in [Part::ApexSeal, Part::CornerSeal, Part::SideSeal, Part::OilSeal] {
        for row in sheet.of_part(part, BuildKind::Any).filter(|row| row.id.contains("spring")) {
            found += 1;
            let by = row.piece().unwrap_or_else(|| row.clone());
            assert!(!by.is_of_a_set(), "{} can’t be typed one by one", row.id);
            assert_eq!(sheet.row(&by.id), Some(&by), "the sheet knows it");
            assert!(!Place::of_part(by.part, 2).is_empty(), "{}", row.id);
            let read = Reading::read("3.5", by.unit, by.bounds());
            assert!(read.is_ok(), "{}: a free height is refused", by.id);
        }
    }
    assert_eq!(found, 5, "apex long and short, corner, side, oil");
    // What a piece is measured by is no row of the list; what lapping takes off is one without a limit.
    let without = sheet.rows().iter().filter(|row| !row.limit.has_edge());
    let without: Vec<&str> = without.map(|row| row.id.as_str()).collect();
    assert_eq!(without, ["side-housing-lapped-off"], "no other row of the list lacks an edge");
}

#[test]
fn a_height_in_the_book_is_read_back_and_has_no_verdict_of_its_own() {
    let sheet = Sheet::starter();
    let row = sheet.row("corner-seal-spring-piece").unwrap();
    let build = EntryId("kestrel".into());
    let figure = Figure {
        row: row.id.clone(),
        place: "1F-A".to_owned(),
        text: "3.52".to_owned(),
        unit: Unit::Millimetre,
        gauge: row.gauge,
        instead_of: None,
    };
    let entry = Entry {
        format: FORMAT,
        id: EntryId("f".into()),
        build: build.clone(),
        order: 2,
        at: 0,
        fact: Fact::Figure(figure),
    };
    let words = entry.words(&sheet);
    assert_eq!(words.about, "1F-A · Corner seal springs, free height");
    assert_eq!(words.call, None, "3.52 mm is no spread");
    let mut book = Book::default();
    book.take(entry);
    let read = set_readings(&book, &build, row, 1);
    assert_eq!(read.iter().filter(|(_, reading)| reading.is_some()).count(), 1);
    assert_eq!(read.len(), 6);
}
