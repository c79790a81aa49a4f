//! Names of places.

use pitleaf_core::book::{Face, Slot};
use pitleaf_core::kept;
use pitleaf_core::limits::Part;
use pitleaf_core::seals::{Corner, Place, PlaceFault};
use std::collections::HashSet;

#[test]
fn each_rotor_has_its_six_side_six_corner_and_three_apex_seals() {
    for rotors in 1..=4_u8 {
        let places = Place::of_engine(rotors);
        let count = |of: fn(&Place) -> bool| places.iter().filter(|place| of(place)).count();
        let each = usize::from(rotors);
        assert_eq!(count(|p| matches!(p, Place::Rotor(_))), each, "rotors of {rotors}");
        assert_eq!(count(|p| matches!(p, Place::Face(..))), 2 * each, "faces of {rotors}");
        assert_eq!(count(|p| matches!(p, Place::SideSeal(_))), 6 * each, "side seals of {rotors}");
        assert_eq!(count(|p| matches!(p, Place::CornerSeal(..))), 6 * each, "corners of {rotors}");
        assert_eq!(count(|p| matches!(p, Place::ApexSeal(..))), 3 * each, "apexes of {rotors}");
        assert_eq!(places.iter().collect::<HashSet<_>>().len(), places.len(), "a place twice");
    }
}

#[test]
fn every_name_reads_back_in_either_case_and_in_the_book() {
    for place in Place::of_engine(4) {
        let name = place.to_string();
        assert_eq!(Place::read(&name), Ok(place), "{name}");
        assert_eq!(Place::read(&format!(" {} ", name.to_lowercase())), Ok(place), "{name}");
        let json = kept::write(&place);
        assert_eq!(json, format!("\"{name}\""), "in the book");
        assert_eq!(kept::read::<Place>(&json).unwrap(), place, "{name}");
    }
}

#[test]
fn the_names_are_as_written() {
    let slot = Slot::new(2, Face::Rear, 2).unwrap();
    assert_eq!(Place::SideSeal(slot).to_string(), "2R-CA");
    assert_eq!(Corner::ends(slot), [Corner::C, Corner::A]);
    assert_eq!(Place::CornerSeal(1, Face::Front, Corner::A).to_string(), "1F-A");
    assert_eq!(Place::ApexSeal(1, Corner::A).to_string(), "1-A");
    assert_eq!(Place::Face(1, Face::Front).to_string(), "1F");
    assert_eq!(Place::Rotor(3).to_string(), "3");
}

#[test]
fn what_is_no_place_is_said_so() {
    for text in ["", "5F-AB", "0-A", "1X-A", "1F-D", "1F-AC", "1FF", "1-", "F-AB", "1F-A-B", "１F"]
    {
        let fault = Place::read(text).unwrap_err();
        assert_eq!(
            fault.to_string(),
            format!(
                "“{text}” is no place on a rotor. Write it as 1F-AB (side seal), 1F-A (corner seal), 1-A (apex seal), 1F (face) or 1 (rotor)."
            ),
            "{text}"
        );
    }
}

#[test]
fn a_rotor_the_build_does_not_have_is_named() {
    let place = Place::read("3F-AB").unwrap();
    assert_eq!(place.on_engine(3), Ok(place));
    assert_eq!(place.on_engine(2), Err(PlaceFault::NoSuchRotor { rotor: 3, rotors: 2 }));
    assert_eq!(
        place.on_engine(2).unwrap_err().to_string(),
        "This build has no rotor 3: its rotors are numbered 1 to 2, from the front. Check the place."
    );
    assert_eq!(
        place.on_engine(1).unwrap_err().to_string(),
        "This build has no rotor 3: its rotors are numbered 1 alone, from the front. Check the place."
    );
}

#[test]
fn each_part_has_its_places() {
    let names = |part| {
        Place::of_part(part, 1).iter().map(ToString::to_string).collect::<Vec<_>>().join(" ")
    };
    assert_eq!(names(Part::SideSeal), "1F-AB 1F-BC 1F-CA 1R-AB 1R-BC 1R-CA");
    assert_eq!(names(Part::CornerSeal), "1F-A 1F-B 1F-C 1R-A 1R-B 1R-C");
    assert_eq!(names(Part::ApexSeal), "1-A 1-B 1-C");
    assert_eq!(names(Part::OilSeal), "1F 1R");
    assert_eq!(names(Part::Rotor), "1");
    assert_eq!(names(Part::EccentricShaft), "");
}
