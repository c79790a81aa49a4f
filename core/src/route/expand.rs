//! A route's steps as they are made in one build: for each rotor, face and housing by name.

use super::routing::bare;
use super::{Each, Kind, Step};
use crate::book::{Face, Slot};
use crate::language::said;
use crate::limits::{BuildKind, Part, Row, places};
use crate::seals::Place;
use pitleaf_translated::translated;

/// A step as made in a build, on one thing where it is made for each.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Station {
    /// The step.
    pub step: Step,
    /// The rotor (`2`), face (`2R`) or housing (`rear`, `rotor-2`); empty where it is made once.
    pub place: String,
    /// The stations that come before it, by their places in the list; all stand before it.
    pub needs: Vec<usize>,
}

impl Station {
    /// Its name in the book and in addresses: `turns/2`.
    #[must_use]
    pub fn key(&self) -> String {
        if self.place.is_empty() {
            self.step.id.clone()
        } else {
            format!("{}/{}", self.step.id, self.place)
        }
    }

    /// On what it is made, as it is said; empty where it is made once.
    #[must_use]
    #[translated]
    pub fn place_words(&self) -> String {
        match (Place::read(&self.place), self.step.each) {
            (_, Each::Once) => String::new(),
            (Ok(Place::Rotor(rotor)), _) => format!("rotor {rotor}"),
            (Ok(Place::Face(rotor, face)), _) => format!("rotor {rotor}, {} face", face.name()),
            (_, Each::RotorHousing) => format!("{} housing", said(&self.place.replace('-', " "))),
            _ => format!("{} side housing", said(&self.place.replace('-', " "))),
        }
    }

    /// The pieces its row is read on, as the check screen names them: one empty name where there is only one.
    #[must_use]
    pub fn pieces(&self, row: &Row, rotors: u8) -> Vec<String> {
        let mut pieces = row.places(rotors);
        if pieces.is_empty() {
            return vec![self.place.clone()];
        }
        if !self.place.is_empty() {
            pieces.retain(|piece| belongs(piece, &self.place));
        }
        pieces
    }

    /// Whether it is a hold.
    #[must_use]
    pub fn is_hold(&self) -> bool {
        self.step.kind.is_hold()
    }

    /// The row it measures.
    #[must_use]
    pub fn row(&self) -> Option<&str> {
        match &self.step.kind {
            Kind::Measure(row) => Some(row),
            _ => None,
        }
    }
}

impl Each {
    /// The things a step is made for in an engine of so many rotors, in the order of the work.
    #[must_use]
    pub fn places(self, rotors: u8) -> Vec<String> {
        let rotor = |rotor: u8| rotor.to_string();
        match self {
            Self::Once => vec![String::new()],
            Self::Rotor => (1..=rotors).map(rotor).collect(),
            Self::RotorFromRear => (1..=rotors).rev().map(rotor).collect(),
            Self::Face => (1..=rotors)
                .flat_map(|rotor| {
                    [Face::Front, Face::Rear].map(|face| format!("{rotor}{}", face.letter()))
                })
                .collect(),
            Self::SideHousing => places(Part::SideHousing, rotors),
            Self::RotorHousing => places(Part::RotorHousing, rotors),
        }
    }
}

/// In which go each step is made: steps next to each other in one stage, for the same things, are made
/// thing by thing. Each step that is made once is a go of its own.
pub(super) fn goes(steps: &[Step]) -> Vec<usize> {
    let mut goes: Vec<usize> = Vec::with_capacity(steps.len());
    for (index, step) in steps.iter().enumerate() {
        let same = index.checked_sub(1).map(|above| &steps[above]).is_some_and(|above| {
            step.each != Each::Once && above.each == step.each && above.stage == step.stage
        });
        goes.push(if same { goes[index - 1] } else { index });
    }
    goes
}

pub(super) fn stations(
    steps: &[Step],
    kind: BuildKind,
    rotors: u8,
    solid_dowels: bool,
) -> Vec<Station> {
    let rotors = rotors.clamp(1, Slot::MOST_ROTORS);
    let goes = goes(steps);
    let mut stations: Vec<Station> = Vec::new();
    let mut start = 0;
    while start < steps.len() {
        let end = (start..steps.len()).find(|&end| goes[end] != goes[start]).unwrap_or(steps.len());
        let made = || {
            steps[start..end].iter().filter(|step| step.when.holds_for(kind, rotors, solid_dowels))
        };
        let things = steps[start].each.places(rotors);
        for (index, place) in things.iter().enumerate() {
            let before = index.checked_sub(1).map(|before| things[before].as_str());
            for step in made() {
                let needs = needs(&stations, step, place, before);
                stations.push(Station { step: step.clone(), place: place.clone(), needs });
            }
        }
        start = end;
    }
    stations
}

/// The stations before this one that it waits for. One that is not made in this build holds nothing up.
fn needs(stations: &[Station], step: &Step, place: &str, before: Option<&str>) -> Vec<usize> {
    let waits = |other: &Station| {
        step.needs.iter().any(|need| {
            bare(need) == other.step.id
                && if need.starts_with('<') {
                    before == Some(other.place.as_str())
                } else {
                    belongs(&other.place, place)
                }
        })
    };
    (0..stations.len()).filter(|&index| waits(&stations[index])).collect()
}

/// Whether two things belong together: the same one, or things of one rotor; a thing and the whole
/// engine always do, and so do those that share no kind of name.
fn belongs(one: &str, other: &str) -> bool {
    if one.is_empty() || other.is_empty() || one == other {
        return true;
    }
    match (rotor(one), rotor(other)) {
        (Some(one_rotor), Some(other_rotor)) if one_rotor == other_rotor => {
            // A face belongs to its rotor, but not to the other face.
            match (face(one), face(other)) {
                (Some(one), Some(other)) => one == other,
                _ => true,
            }
        }
        (Some(_), Some(_)) => false,
        (None, None) => is_on(one, other) || is_on(other, one),
        _ => true,
    }
}

/// Whether a place is on a housing: `intermediate-1-rear` on `intermediate-1`.
fn is_on(place: &str, housing: &str) -> bool {
    place.strip_prefix(housing).is_some_and(|rest| rest.starts_with('-'))
}

fn rotor(place: &str) -> Option<u8> {
    match place.strip_prefix("rotor-") {
        Some(name) => name.split('-').next()?.parse().ok(),
        None => Place::read(place).ok().map(Place::rotor),
    }
}

fn face(place: &str) -> Option<Face> {
    match Place::read(place).ok()? {
        Place::Face(_, face) | Place::CornerSeal(_, face, _) => Some(face),
        Place::SideSeal(slot) => Some(slot.face()),
        Place::Rotor(_) | Place::ApexSeal(..) => None,
    }
}
