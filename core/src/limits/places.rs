//! The pieces of an engine that a part's limits are checked on, by name.

use super::Part;

/// The pieces of a part in an engine of so many rotors; none where there is only one.
#[must_use]
pub fn places(part: Part, rotors: u8) -> Vec<String> {
    let each = |letters: &[&str]| {
        (1..=rotors)
            .flat_map(|rotor| letters.iter().map(move |letter| format!("{rotor}{letter}")))
            .collect::<Vec<_>>()
    };
    match part {
        Part::SideSeal => each(&["F-AB", "F-BC", "F-CA", "R-AB", "R-BC", "R-CA"]),
        Part::CornerSeal => each(&["F-A", "F-B", "F-C", "R-A", "R-B", "R-C"]),
        Part::ApexSeal => each(&["-A", "-B", "-C"]),
        Part::OilSeal => each(&["F", "R"]),
        Part::Rotor | Part::RotorHousing => {
            (1..=rotors).map(|rotor| format!("rotor-{rotor}")).collect()
        }
        Part::SideHousing => {
            let between = (1..rotors).map(|number| format!("intermediate-{number}"));
            std::iter::once("front".to_owned())
                .chain(between)
                .chain(std::iter::once("rear".to_owned()))
                .collect()
        }
        Part::EccentricShaft | Part::Bearing | Part::Assembly | Part::Fastener => Vec::new(),
    }
}
