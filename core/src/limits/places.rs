//! The pieces of an engine that a part's limits are checked on, by name.

use super::Part;
use crate::gather::Gather;
use crate::language::said;
use crate::seals::Place;
use pitleaf_translated::translated;

/// A piece's name as it is said: “rotor 1” for a housing, “1F-AB” for a slot.
#[must_use]
#[translated]
pub fn place_words(place: &str) -> String {
    match Place::read(place) {
        Ok(Place::Rotor(rotor)) => format!("rotor {rotor}"),
        Ok(_) => place.to_owned(),
        Err(_) => said(&place.replace('-', " ")),
    }
}

/// The pieces of a part in an engine of so many rotors; none where there is only one.
///
/// On a rotor they are its [`Place`]s; housings have names of their own.
#[must_use]
pub fn places(part: Part, rotors: u8) -> Vec<String> {
    match part {
        Part::RotorHousing => (1..=rotors).map(|rotor| format!("rotor-{rotor}")).gather(),
        Part::SideHousing => {
            let between = (1..rotors).map(|number| format!("intermediate-{number}"));
            std::iter::once("front".to_owned())
                .chain(between)
                .chain(std::iter::once("rear".to_owned()))
                .gather()
        }
        _ => Place::of_part(part, rotors).iter().map(ToString::to_string).gather(),
    }
}
