//! The pieces of an engine that a part's limits are checked on, by name.

use super::{Part, Row};
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
        Part::RotorHousing => rotor_names(rotors),
        Part::SideHousing => side_housings(rotors, &[""]),
        _ => Place::of_part(part, rotors).iter().map(ToString::to_string).collect(),
    }
}

/// Where in an engine a row is read.
#[derive(Clone, Copy)]
enum Where {
    /// Once in the engine.
    Once,
    /// On the pieces of a part, by their own names.
    On(Part),
    /// At every rotor, by the name of its housing.
    Rotors,
    /// On each face of the side housings that a rotor runs on.
    SideFaces,
    /// On both faces of every rotor housing.
    JointFaces,
    /// At both ends of the engine.
    Ends,
    /// In both main bearings.
    Mains,
    /// In the main bearings and at every rotor.
    Journals,
    /// At both ends of the shaft.
    ShaftEnds,
    /// In each chamber of every rotor.
    Chambers,
    /// At both plugs of every rotor.
    Plugs,
    /// At the upper and the lower dowel of every housing.
    Dowels,
}

/// Rows that are read elsewhere than on the pieces of their part; ids as in the starter sheet. The bearings, the
/// shaft's ends and the side housings' faces are called as the surveys call them.
const ELSEWHERE: &[(&str, Where)] = &[
    ("side-seal-spring-spread", Where::Once),
    ("corner-seal-spring-spread", Where::Once),
    ("oil-seal-spring-spread", Where::Once),
    ("rotor-land-protrusion", Where::On(Part::OilSeal)),
    ("rotor-oil-seal-groove-spread", Where::On(Part::OilSeal)),
    ("rotor-corner-seal-bore", Where::On(Part::CornerSeal)),
    ("rotor-apex-slot-width", Where::On(Part::ApexSeal)),
    ("rotor-side-slot-width", Where::On(Part::SideSeal)),
    ("rotor-recess-volume-spread", Where::Once),
    ("rotor-mass-spread", Where::Once),
    ("rotor-housing-pair-spread", Where::Once),
    ("rotor-housing-warp", Where::JointFaces),
    ("side-housing-warp", Where::SideFaces),
    ("side-housing-step-side-seal", Where::SideFaces),
    ("side-housing-step-oil-seal", Where::SideFaces),
    ("side-housing-wear-corner-seal", Where::SideFaces),
    ("side-housing-lapped-off", Where::SideFaces),
    ("side-housing-roughness", Where::SideFaces),
    ("side-housing-gear-seat", Where::Ends),
    ("side-housing-main-bearing-depth", Where::Ends),
    ("shaft-main-journal", Where::Mains),
    ("shaft-rotor-journal", Where::Rotors),
    ("shaft-journal-roundness", Where::Journals),
    ("shaft-runout", Where::ShaftEnds),
    ("main-bearing-clearance", Where::Mains),
    ("main-bearing-bore", Where::Mains),
    ("rotor-bearing-clearance", Where::Rotors),
    ("rotor-bearing-bore", Where::Rotors),
    ("thrust-plate-wear", Where::Ends),
    ("gear-backlash", Where::Rotors),
    ("compression-na", Where::Chambers),
    ("compression-fi", Where::Chambers),
    ("compression-face-spread", Where::Rotors),
    ("plug-gap", Where::Plugs),
    ("dowel-clearance-hollow", Where::Dowels),
    ("dowel-clearance-solid", Where::Dowels),
];

impl Row {
    /// The places it is read at in an engine of so many rotors; none where there is only one.
    #[must_use]
    pub fn places(&self, rotors: u8) -> Vec<String> {
        let known = ELSEWHERE.iter().find(|(id, _)| *id == self.id);
        known.map_or(Where::On(self.part), |(_, at)| *at).names(rotors)
    }

    /// The place a reading is written at: the one named, or the only one there is.
    ///
    /// # Errors
    /// The places to choose from, where there are several and none is named: readings of two bearings
    /// under one name would overwrite each other.
    pub fn place_to_write(&self, named: &str, rotors: u8) -> Result<String, Vec<String>> {
        if !named.is_empty() {
            return Ok(named.to_owned());
        }
        let mut places = self.places(rotors);
        if places.len() > 1 { Err(places) } else { Ok(places.pop().unwrap_or_default()) }
    }
}

impl Where {
    fn names(self, rotors: u8) -> Vec<String> {
        let fixed = |names: &[&str]| -> Vec<String> {
            names.iter().map(|name| (*name).to_owned()).collect()
        };
        let mains = || fixed(&["main-front", "main-rear"]);
        match self {
            Self::Once => Vec::new(),
            Self::On(part) => places(part, rotors),
            Self::Rotors => rotor_names(rotors),
            Self::SideFaces => side_housings(rotors, &["-front", "-rear"]),
            Self::Ends => fixed(&["front", "rear"]),
            Self::Mains => mains(),
            Self::Journals => [mains(), rotor_names(rotors)].concat(),
            Self::ShaftEnds => fixed(&["front-end", "rear-end"]),
            Self::JointFaces => each(&rotor_names(rotors), &["front", "rear"]),
            Self::Chambers => each(&rotor_names(rotors), &["face-1", "face-2", "face-3"]),
            Self::Plugs => each(&rotor_names(rotors), &["leading-plug", "trailing-plug"]),
            Self::Dowels => {
                let housings = [side_housings(rotors, &[""]), rotor_names(rotors)].concat();
                each(&housings, &["upper-dowel", "lower-dowel"])
            }
        }
    }
}

/// Every one of `ends` on every one of `names`.
fn each(names: &[String], ends: &[&str]) -> Vec<String> {
    names.iter().flat_map(|name| ends.iter().map(move |end| format!("{name}-{end}"))).collect()
}

fn rotor_names(rotors: u8) -> Vec<String> {
    (1..=rotors).map(|rotor| format!("rotor-{rotor}")).collect()
}

/// The side housings from the front; `sides` follow the name of each that lies between two rotors.
fn side_housings(rotors: u8, sides: &[&str]) -> Vec<String> {
    let between = (1..rotors)
        .flat_map(|number| sides.iter().map(move |side| format!("intermediate-{number}{side}")));
    std::iter::once("front".to_owned())
        .chain(between)
        .chain(std::iter::once("rear".to_owned()))
        .collect()
}
