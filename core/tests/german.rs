//! The German app: figures, sentences, names, and what is found. Run with the feature `german`.
#![cfg(feature = "german")]

use pitleaf_core::book::Book;
use pitleaf_core::find::{Finder, Kind, Place};
use pitleaf_core::language::said;
use pitleaf_core::limits::{
    Edge, Gauge, GaugeKind, Limit, Part, Sheet, decide, limit_line, place_words,
};
use pitleaf_core::quantity::{Amount, Bounds, Reading, Rounding, Unit};
use pitleaf_core::route::Routing;
use pitleaf_core::spoken;

fn gap() -> Limit {
    let edge = |text| Some(Edge::read(text, Unit::Inch).expect("an edge"));
    Limit { lower: edge("0.0015"), upper: edge("0.0040"), wear: None }
}

fn thou(text: &str) -> Reading {
    Reading::read(text, Unit::Thou, &Bounds::GAP).expect("a reading")
}

#[test]
fn figures_have_a_comma_and_are_read_with_comma_or_point() {
    assert_eq!(Amount::whole(1, Unit::Inch).show(Unit::Millimetre, 2, Rounding::Nearest), "25,40");
    assert_eq!(thou("2,5"), thou("2,5"), "read");
    assert_eq!(thou("2,5").amount(), thou("2.5").amount(), "either sign");
    assert_eq!(limit_line(&gap(), Unit::Thou), "1,5…4,0\u{a0}thou");
}

#[test]
fn a_verdict_is_said_in_german() {
    let (reading, gauge) = (thou("4,5"), Gauge::usual(GaugeKind::FeelerLeaf));
    let verdict = decide(&gap(), &reading, &gauge);
    assert_eq!(verdict.call.word(), "Nicht eingehalten");
    let words = verdict.explain(&gap(), &reading, &gauge);
    assert!(words.starts_with("0,5 thou über der oberen Grenze."), "{words}");
    let aloud = spoken::verdict(&verdict, &reading);
    assert_eq!(
        aloud,
        "nicht eingehalten; viereinhalb Thou; null Komma fünf Thou über der oberen Grenze"
    );
}

#[test]
fn keys_of_the_book_stay_and_are_said_in_german() {
    assert_eq!(said("2 o’clock, land"), "2 Uhr, Dichtsteg");
    assert_eq!(said("diagonal from 1 to 7, goes under"), "diagonal von 1 bis 7, geht darunter");
    assert_eq!(said("Rotor 2, face 1"), "Läufer 2, Flanke 1");
    assert_eq!(place_words("rotor-1"), "Läufer 1");
    assert_eq!(Part::SideSeal.word(), "side-seals", "an address");
    assert_eq!(Part::SideSeal.name(), "Dichtstreifen");
}

/// Every place of every survey is said wholly in German: no English word of a key is left.
#[test]
fn every_place_of_a_survey_has_its_german() {
    use pitleaf_core::faces::Survey;
    use pitleaf_core::trochoid::Engine;
    let bore = Engine::preset().geometry().bore();
    for place in Survey::ALL.into_iter().flat_map(|survey| survey.places(bore)) {
        let words = place.said();
        for word in
            place.name.split([' ', ',']).filter(|word| word.len() > 2 && *word != "diagonal")
        {
            let is_left = words.split([' ', ',']).any(|said| said == word);
            assert!(!is_left, "{} is said as {words}", place.name);
        }
    }
}

#[test]
fn every_row_is_found_by_its_german_words() {
    let sheet = Sheet::starter();
    let finder = Finder::of(&Book::default(), None, &sheet);
    for row in sheet.rows() {
        for word in row.words.split(' ').chain([row.what.as_str()]) {
            let groups = finder.find(word);
            let mut found = groups
                .iter()
                .filter(|group| group.kind == Kind::Limit)
                .flat_map(|group| &group.found);
            let is_there = found.any(|found| found.place == Place::Limit(row.id.clone()));
            assert!(is_there, "{}: {word:?}", row.id);
        }
    }
}

#[test]
fn the_route_is_whole_and_its_ids_are_the_same() {
    let routing = Routing::usual();
    assert!(routing.step("describe").is_some(), "an id of the book");
    let words = &routing.step("own-slot").expect("a step").words;
    assert_eq!(words, "Jeder Dichtstreifen liegt beim Namen der Nut, für die er abgelängt ist");
}
