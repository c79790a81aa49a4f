//! The place in the app, as the part of the address behind `#`.

mod found;
mod ports;
mod work;

pub use ports::PortsPlace;
pub use work::WorkPlace;

use crate::screen::Job;
use pitleaf_core::book::{EntryId, Face, Slot};
use pitleaf_core::faces::Survey;
use pitleaf_core::limits::Part;

/// A screen, with what it is about.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Route {
    /// What is open and what was last touched.
    Bench,
    /// Opening a build.
    Open,
    /// Limits: the parts.
    Limits,
    /// The limits of one part.
    Part(Part),
    /// Checking a reading against a row, perhaps on one piece.
    Check {
        /// The row's id.
        row: String,
        /// The piece; empty for none in particular.
        place: String,
    },
    /// The builder's own limit in place of a row.
    OwnLimit(String),
    /// One figure in all units.
    Convert,
    /// A rotor face's slots.
    Seals(u8, Face),
    /// Every slot of the engine in a table.
    SealTable,
    /// One slot.
    Slot(Slot),
    /// What is measured before stacking.
    Faces,
    /// A survey of a piece; empty where there is only one.
    Survey(Survey, String),
    /// The stack as measured.
    Stack,
    /// What was done to a face, in every build.
    FaceLedger(String),
    /// Joints: threads, clamp, fits, oil.
    Joints(Job),
    /// A slot's mark, in words and drawn.
    Mark(Slot),
    /// The feeler leaves on the bench.
    Leaves,
    /// The gap in the running engine, perhaps of one slot.
    HotGap(Option<Slot>),
    /// Which seal goes where.
    Placing,
    /// Rows of seals and springs, for measuring sets.
    Sets,
    /// A row measured over all its places in one go.
    Set(String),
    /// Apex seals shared out over the rotors.
    Matching,
    /// A port screen.
    Ports(PortsPlace),
    /// A screen of the build's work.
    Work(WorkPlace),
    /// The build's entries.
    Book,
    /// The builder's gauges.
    Gauges,
    /// What a chosen file would bring.
    TakeIn,
    /// One entry and all its subject ever was.
    Entry(EntryId),
    /// Putting a figure of the book right.
    PutRight(EntryId),
    /// Settings.
    Settings,
    /// Finding anything.
    Find,
    /// A topic of the help.
    Help(String),
}

impl Route {
    /// Reads what stands behind `#`; anything unknown leads to the bench.
    pub fn read(hash: &str) -> Self {
        let path = hash.trim_start_matches('#').trim_start_matches('/');
        let pieces: Vec<&str> = path.split('/').collect();
        Self::of_pieces(&pieces).unwrap_or(Self::Bench)
    }

    fn of_pieces(pieces: &[&str]) -> Option<Self> {
        Some(match *pieces {
            ["open"] => Self::Open,
            ["limits"] => Self::Limits,
            ["limits", part] => Self::Part(part_named(part)?),
            ["check", row] => Self::Check { row: plain(row)?, place: String::new() },
            ["check", row, place] => Self::Check { row: plain(row)?, place: plain(place)? },
            ["own-limit", row] => Self::OwnLimit(plain(row)?),
            ["convert"] => Self::Convert,
            ["seals"] => Self::Seals(1, Face::Front),
            ["seals", "table"] => Self::SealTable,
            ["mark", slot] => Self::Mark(Slot::named(slot)?),
            ["leaves"] => Self::Leaves,
            ["hot-gap"] => Self::HotGap(None),
            ["hot-gap", slot] => Self::HotGap(Some(Slot::named(slot)?)),
            ["placing"] => Self::Placing,
            ["sets"] => Self::Sets,
            ["set", row] => Self::Set(plain(row)?),
            ["matching"] => Self::Matching,
            ["seals", face] => {
                let slot = Slot::named(&format!("{face}-AB"))?;
                Self::Seals(slot.rotor(), slot.face())
            }
            ["slot", slot] => Self::Slot(Slot::named(slot)?),
            ["faces"] => Self::Faces,
            ["faces", "stack"] => Self::Stack,
            ["faces", "ledger", piece] => Self::FaceLedger(plain(piece)?),
            ["faces", survey] => Self::Survey(Survey::named(survey)?, String::new()),
            ["faces", survey, piece] => Self::Survey(Survey::named(survey)?, plain(piece)?),
            ["joints", ref job @ ..] => Self::Joints(Job::read(job)?),
            ["ports", ref place @ ..] => Self::Ports(PortsPlace::read(place)?),
            ["work", ref place @ ..] => Self::Work(WorkPlace::read(place)?),
            ["book"] => Self::Book,
            ["entry", id] => Self::Entry(EntryId(plain(id)?.into())),
            ["entry", id, "put-right"] => Self::PutRight(EntryId(plain(id)?.into())),
            ["gauges"] => Self::Gauges,
            ["take-in"] => Self::TakeIn,
            ["settings"] => Self::Settings,
            ["find"] => Self::Find,
            ["help", topic] => Self::Help(plain(topic)?),
            _ => return None,
        })
    }

    /// The address behind `#`, which [`Route::read`] reads back.
    pub fn hash(&self) -> String {
        match self {
            Self::Bench => "#/".to_owned(),
            Self::Open => "#/open".to_owned(),
            Self::Limits => "#/limits".to_owned(),
            Self::Part(part) => format!("#/limits/{}", part.word()),
            Self::Check { row, place } if place.is_empty() => format!("#/check/{row}"),
            Self::Check { row, place } => format!("#/check/{row}/{place}"),
            Self::OwnLimit(row) => format!("#/own-limit/{row}"),
            Self::Convert => "#/convert".to_owned(),
            Self::Seals(rotor, face) => format!("#/seals/{rotor}{}", face.letter()),
            Self::SealTable => "#/seals/table".to_owned(),
            Self::Slot(slot) => format!("#/slot/{slot}"),
            Self::Faces => "#/faces".to_owned(),
            Self::Stack => "#/faces/stack".to_owned(),
            Self::FaceLedger(piece) => format!("#/faces/ledger/{piece}"),
            Self::Survey(survey, piece) if piece.is_empty() => format!("#/faces/{}", survey.word()),
            Self::Survey(survey, piece) => format!("#/faces/{}/{piece}", survey.word()),
            Self::Joints(job) => format!("#/joints{}", job.path()),
            Self::Mark(slot) => format!("#/mark/{slot}"),
            Self::Leaves => "#/leaves".to_owned(),
            Self::HotGap(None) => "#/hot-gap".to_owned(),
            Self::HotGap(Some(slot)) => format!("#/hot-gap/{slot}"),
            Self::Placing => "#/placing".to_owned(),
            Self::Sets => "#/sets".to_owned(),
            Self::Set(row) => format!("#/set/{row}"),
            Self::Matching => "#/matching".to_owned(),
            Self::Ports(place) => format!("#/ports{}", place.hash()),
            Self::Work(place) => format!("#/work{}", place.hash()),
            Self::Book => "#/book".to_owned(),
            Self::Entry(id) => format!("#/entry/{}", id.0),
            Self::PutRight(id) => format!("#/entry/{}/put-right", id.0),
            Self::Gauges => "#/gauges".to_owned(),
            Self::TakeIn => "#/take-in".to_owned(),
            Self::Settings => "#/settings".to_owned(),
            Self::Find => "#/find".to_owned(),
            Self::Help(topic) => format!("#/help/{topic}"),
        }
    }

    /// Where "back" leads.
    pub fn parent(&self) -> Self {
        match self {
            Self::Check { place, .. } => match Slot::named(place) {
                Some(slot) => Self::Slot(slot),
                None => Self::Limits,
            },
            Self::Part(_) | Self::Help(_) => Self::Limits,
            Self::Gauges => Self::Settings,
            Self::OwnLimit(row) => Self::Check { row: row.clone(), place: String::new() },
            Self::Slot(slot) => Self::Seals(slot.rotor(), slot.face()),
            Self::Survey(..) | Self::Stack => Self::Faces,
            Self::FaceLedger(piece) => Self::Survey(Survey::Lapping, piece.clone()),
            Self::Mark(slot) | Self::HotGap(Some(slot)) => Self::Slot(*slot),
            Self::Set(_) => Self::Sets,
            Self::SealTable
            | Self::Leaves
            | Self::HotGap(None)
            | Self::Placing
            | Self::Sets
            | Self::Matching => Self::Seals(1, Face::Front),
            Self::Entry(_) | Self::TakeIn => Self::Book,
            Self::PutRight(id) => Self::Entry(id.clone()),
            Self::Joints(job) => job.parent().map_or(Self::Bench, Self::Joints),
            Self::Work(place) => place.parent().map_or(Self::Bench, Self::Work),
            Self::Ports(place) => place.plate().map_or(Self::Bench, Self::Ports),
            _ => Self::Bench,
        }
    }
}

/// Ids and places are letters, digits and hyphens; anything else is no address of ours.
pub fn plain(text: &str) -> Option<String> {
    let fits =
        !text.is_empty() && text.bytes().all(|byte| byte.is_ascii_alphanumeric() || byte == b'-');
    fits.then(|| text.to_owned())
}

fn part_named(word: &str) -> Option<Part> {
    Part::ALL.into_iter().find(|part| part.word() == word)
}

#[cfg(test)]
mod tests {
    use super::*;
    use pitleaf_core::ports::{PortName, SideHousing};

    #[test]
    fn every_route_reads_back() {
        let slot = Slot::named("2R-CA").unwrap();
        let mut routes = vec![
            Route::Bench,
            Route::Open,
            Route::Limits,
            Route::Check { row: "end-play".into(), place: String::new() },
            Route::Check { row: "side-seal-gap-na".into(), place: "1F-AB".into() },
            Route::OwnLimit("end-play".into()),
            Route::Convert,
            Route::Seals(2, Face::Rear),
            Route::SealTable,
            Route::Slot(slot),
            Route::Faces,
            Route::Survey(Survey::Flatness, "intermediate-1-rear".into()),
            Route::Survey(Survey::EndPlay, String::new()),
            Route::Stack,
            Route::FaceLedger("intermediate-1-rear".into()),
            Route::Mark(slot),
            Route::Leaves,
            Route::HotGap(None),
            Route::HotGap(Some(slot)),
            Route::Placing,
            Route::Sets,
            Route::Set("apex-seal-warp".into()),
            Route::Matching,
            Route::Book,
            Route::Entry(EntryId("0a1b".into())),
            Route::PutRight(EntryId("0a1b".into())),
            Route::Gauges,
            Route::TakeIn,
            Route::Settings,
            Route::Find,
            Route::Help("end-play".into()),
        ];
        routes.extend(Part::ALL.map(Route::Part));
        routes.extend(Job::ALL.into_iter().map(Route::Joints));
        routes.push(Route::Joints(Job::Thread("m10-1-25".to_owned())));
        routes.push(Route::Joints(Job::Port(4)));
        routes.push(Route::Joints(Job::Drill("25-64-in".to_owned())));
        routes.extend([PortsPlace::Engine, PortsPlace::Volume].map(Route::Ports));
        for housing in SideHousing::ALL {
            routes.extend(
                [
                    PortsPlace::Plate(housing),
                    PortsPlace::Face(housing),
                    PortsPlace::Figures(housing),
                    PortsPlace::Template(housing),
                ]
                .map(Route::Ports),
            );
            for port in PortName::all(housing) {
                routes.push(Route::Ports(PortsPlace::Outline(port)));
                routes.push(Route::Ports(PortsPlace::Room(port)));
            }
        }
        routes.extend(WorkPlace::samples().into_iter().map(Route::Work));
        for route in routes {
            assert_eq!(Route::read(&route.hash()), route, "{}", route.hash());
        }
    }

    #[test]
    fn nonsense_leads_to_the_bench() {
        for hash in [
            "",
            "#",
            "#/",
            "#/nowhere",
            "#/slot/9X-ZZ",
            "#/check/<b>",
            "#/limits/sandwich",
            "#/check/a/b/c",
            "#/joints/glue",
            "#/joints/port/-4",
            "#/joints/thread/<b>",
            "#/work/step",
            "#/work/step/a/b/c",
            "#/work/compression/first",
            "#/ports/side",
            "#/ports/front/outline/intake-3-cut",
            "#/ports/front/sandwich",
        ] {
            assert_eq!(Route::read(hash), Route::Bench, "{hash:?}");
        }
    }
}
