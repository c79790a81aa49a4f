//! The pieces of an engine that a part's limits are checked on, by name.

use super::Part;
use crate::seals::Place;

/// The pieces of a part in an engine of so many rotors; none where there is only one.
///
/// On a rotor they are its [`Place`]s; housings have names of their own.
#[must_use]
pub fn places(part: Part, rotors: u8) -> Vec<String> {
    match part {
        Part::RotorHousing => (1..=rotors).map(|rotor| format!("rotor-{rotor}")).collect(),
        Part::SideHousing => {
            let between = (1..rotors).map(|number| format!("intermediate-{number}"));
            std::iter::once("front".to_owned())
                .chain(between)
                .chain(std::iter::once("rear".to_owned()))
                .collect()
        }
        _ => Place::of_part(part, rotors).iter().map(ToString::to_string).collect(),
    }
}
