//! Where what was found stands in the app.

use super::{PortsPlace, Route, WorkPlace};
use crate::screen::Job;
use pitleaf_core::calculators::Calculator;
use pitleaf_core::find::Place;
use pitleaf_core::ports::SideHousing;

impl Route {
    /// The screen of something found, in an engine of so many rotors.
    pub fn of_found(place: &Place, rotors: u8) -> Self {
        match place {
            Place::Limit(row) => Self::Check { row: row.clone(), place: String::new() },
            Place::Calculator(calculator) => Self::of_calculator(*calculator, rotors),
            Place::Thread(thread) => Self::Joints(Job::of_thread(*thread)),
            Place::Port(dash) => Self::Joints(Job::Port(*dash)),
            Place::Drill(drill) => Self::Joints(Job::of_drill(*drill)),
            Place::Step(key) => Self::Work(WorkPlace::Step(key.clone())),
            Place::Slot(slot) => Self::Slot(*slot),
            Place::Entry(id) => Self::Entry(id.clone()),
            Place::Help(topic) => Self::Help((*topic).to_owned()),
        }
    }

    /// The screen of a calculator; of a survey, that of its first piece.
    pub fn of_calculator(calculator: Calculator, rotors: u8) -> Self {
        match calculator {
            Calculator::Convert => Self::Convert,
            Calculator::Leaves => Self::Leaves,
            Calculator::Placing => Self::Placing,
            Calculator::HotGap => Self::HotGap(None),
            Calculator::Sets => Self::Sets,
            Calculator::Matching => Self::Matching,
            Calculator::Ports => Self::Ports(PortsPlace::Plate(SideHousing::Front)),
            Calculator::Volume => Self::Ports(PortsPlace::Volume),
            Calculator::Stack => Self::Stack,
            Calculator::Compression => Self::Work(WorkPlace::Compression(1)),
            Calculator::BuildSheet => Self::Work(WorkPlace::Sheet),
            Calculator::Survey(survey) => {
                let first = survey.pieces(rotors).into_iter().next();
                Self::Survey(survey, first.unwrap_or_default())
            }
            joint => Self::Joints(Job::of_calculator(joint).unwrap_or(Job::All)),
        }
    }

    /// The calculator that stands here.
    pub fn calculator(&self) -> Option<Calculator> {
        Some(match self {
            Self::Convert => Calculator::Convert,
            Self::Leaves => Calculator::Leaves,
            Self::Placing => Calculator::Placing,
            Self::HotGap(_) => Calculator::HotGap,
            Self::Sets => Calculator::Sets,
            Self::Matching => Calculator::Matching,
            Self::Ports(PortsPlace::Volume) => Calculator::Volume,
            Self::Ports(_) => Calculator::Ports,
            Self::Stack => Calculator::Stack,
            Self::Work(WorkPlace::Compression(_)) => Calculator::Compression,
            Self::Work(WorkPlace::Sheet) => Calculator::BuildSheet,
            Self::Survey(survey, _) => Calculator::Survey(*survey),
            Self::Joints(job) => job.calculator()?,
            _ => return None,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use pitleaf_core::book::{Book, demo};
    use pitleaf_core::find::Finder;
    use pitleaf_core::joints::threads::{Drill, Thread};

    #[test]
    fn every_calculator_has_a_place_of_its_own() {
        for calculator in Calculator::all() {
            let route = Route::of_calculator(calculator, demo::ROTORS);
            assert_eq!(route.calculator(), Some(calculator), "{route:?}");
            assert_eq!(Route::read(&route.hash()), route, "{}", route.hash());
        }
    }

    #[test]
    fn everything_found_leads_to_an_address_that_reads_back() {
        let finder = Finder::of(&Book::default(), None, &Book::default().sheet());
        // A letter or a figure begins some word of everything.
        let mut seen = Vec::new();
        for letter in ('a'..='z').chain('0'..='9') {
            for group in finder.find(&letter.to_string()) {
                for found in group.found {
                    let route = Route::of_found(&found.place, demo::ROTORS);
                    assert_eq!(Route::read(&route.hash()), route, "{}", found.title);
                    if !seen.contains(&found.place) {
                        seen.push(found.place.clone());
                    }
                }
            }
        }
        let places = seen.len();
        assert!(places > 700, "{places} places");
    }

    #[test]
    fn rows_of_tables_have_addresses_of_their_own() {
        let mut seen = std::collections::HashSet::new();
        for place in Thread::all().map(Job::of_thread).chain(Drill::all().map(Job::of_drill)) {
            let hash = Route::Joints(place).hash();
            assert!(seen.insert(hash.clone()), "{hash} twice");
        }
    }
}
