//! Where each row is read: once in the engine, or at places to choose from.

use pitleaf_core::limits::{Row, Sheet, place_words};
use std::collections::HashSet;

/// Rows read once in an engine. All others ask which piece it is.
const ONCE: &[&str] = &[
    "side-seal-spring-spread",
    "corner-seal-spring-spread",
    "oil-seal-spring-spread",
    "rotor-recess-volume-spread",
    "rotor-mass-spread",
    "rotor-housing-pair-spread",
    "shaft-seal-track",
    "flywheel-runout",
    "shaft-unbalance",
    "end-play",
    "front-cover-stack",
    "compression-rotor-spread",
    "tension-bolt-torque",
    "tension-bolt-length-spread",
    "through-stud-torque",
    "stationary-gear-bolts",
    "front-bolt-torque",
    "flywheel-nut-torque",
    "oil-pump-nut-torque",
    "oil-pan-bolts",
    "spark-plug-torque",
    "oil-pump-tip-clearance",
    "oil-pump-body-clearance",
    "oil-pump-end-float",
    "oil-pump-chain-slack",
    "oil-pressure-running",
    "oil-pressure-idle",
    "coolant-pressure-loss",
    "thermostat-opens",
];

fn row(id: &str) -> Row {
    Sheet::starter().row(id).unwrap_or_else(|| panic!("no row {id}")).clone()
}

#[test]
fn every_row_is_read_once_or_asks_which_piece_it_is() {
    for row in Sheet::starter().rows() {
        let places = row.places(2);
        assert_eq!(places.is_empty(), ONCE.contains(&row.id.as_str()), "{}: {places:?}", row.id);
        assert_ne!(places.len(), 1, "{}: one place of two rotors", row.id);
        assert_eq!(row.places(2).iter().collect::<HashSet<_>>().len(), places.len(), "{}", row.id);
        for place in &places {
            let is_address = place.bytes().all(|byte| byte.is_ascii_alphanumeric() || byte == b'-');
            assert!(is_address && !place_words(place).is_empty(), "{}: {place}", row.id);
        }
    }
    for id in ONCE {
        row(id);
    }
}

#[test]
fn places_are_those_of_the_row() {
    let places = |id: &str| row(id).places(2);
    assert_eq!(places("shaft-main-journal"), ["main-front", "main-rear"]);
    assert_eq!(places("rotor-bearing-clearance"), ["rotor-1", "rotor-2"]);
    assert_eq!(
        places("shaft-journal-roundness"),
        ["main-front", "main-rear", "rotor-1", "rotor-2"]
    );
    assert_eq!(places("shaft-runout"), ["front-end", "rear-end"]);
    assert_eq!(
        places("side-housing-warp"),
        ["front", "intermediate-1-front", "intermediate-1-rear", "rear"]
    );
    assert_eq!(places("rotor-housing-width"), ["rotor-1", "rotor-2"]);
    assert_eq!(places("rotor-land-protrusion"), ["1F", "1R", "2F", "2R"]);
    assert_eq!(places("rotor-apex-slot-width"), ["1-A", "1-B", "1-C", "2-A", "2-B", "2-C"]);
    let chambers = places("compression-fi");
    assert_eq!((chambers.len(), chambers[5].as_str()), (6, "rotor-2-face-3"));
    assert_eq!(places("dowel-clearance-solid").len(), 10, "two in each of five housings");
}

#[test]
fn a_reading_of_several_pieces_is_written_on_one_of_them() {
    let journal = row("shaft-main-journal");
    assert_eq!(journal.place_to_write("main-rear", 2), Ok("main-rear".to_owned()));
    assert_eq!(
        journal.place_to_write("", 2),
        Err(vec!["main-front".to_owned(), "main-rear".to_owned()])
    );
    assert_eq!(row("end-play").place_to_write("", 2), Ok(String::new()), "there is one");
    let bearing = row("rotor-bearing-clearance");
    assert_eq!(bearing.place_to_write("", 1), Ok("rotor-1".to_owned()), "the only one");
}

/// Places as an older book has them are still said.
#[test]
fn places_of_older_books_are_still_said() {
    assert_eq!(place_words("intermediate-1"), "intermediate 1");
    assert_eq!(place_words("2"), "rotor 2");
    assert_eq!(place_words("rotor-1-leading-plug"), "rotor 1 leading plug");
}

/// A row that is read at both ends says so, and not at one of them alone.
#[test]
fn the_shafts_runout_is_told_of_both_ends() {
    let row = row("shaft-runout");
    let asked: Vec<String> = row.places(2).iter().map(|place| place_words(place)).collect();
    assert_eq!(asked, ["front end", "rear end"]);
    assert!(row.how.contains("at each end"), "{}", row.how);
    for end in asked {
        assert!(!row.how.contains(&end), "{end} alone: {}", row.how);
    }
}
