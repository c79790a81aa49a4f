//! Where else in the tool a step's work is done.

use super::{Answer, Kind, Station};
use crate::book::Face;
use crate::seals::Place;

/// A part of the tool that a step leads to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LeadsTo {
    /// The oil feed of the front bearing.
    OilFeed,
    /// The order a joint is tightened in.
    TighteningOrder,
    /// The seal slots of a rotor's face.
    Slots(u8, Face),
    /// The end play.
    EndPlay,
    /// Faces: what came off each.
    Faces,
    /// The customer's words and the engine.
    Description,
    /// The compression of the first rotor.
    Compression,
    /// What becomes of parts.
    Decisions,
    /// The ports.
    Ports,
    /// The build sheet.
    BuildSheet,
}

/// The steps of the usual route that are done elsewhere, by their ids.
pub const STEPS: [(&str, LeadsTo); 14] = [
    ("dowels-known", LeadsTo::OilFeed),
    ("tightened", LeadsTo::TighteningOrder),
    ("slots-marked", LeadsTo::Slots(1, Face::Front)),
    ("own-slot", LeadsTo::Slots(1, Face::Front)),
    ("in-own-slot", LeadsTo::Slots(1, Face::Front)),
    ("describe", LeadsTo::Description),
    ("compression-before", LeadsTo::Compression),
    ("compression-after", LeadsTo::Compression),
    ("fates", LeadsTo::Decisions),
    ("agreed", LeadsTo::Decisions),
    ("lapped-off", LeadsTo::Faces),
    ("outline-drawn", LeadsTo::Ports),
    ("outline-clear", LeadsTo::Ports),
    ("handed-over", LeadsTo::BuildSheet),
];

impl Station {
    /// Where its work is done, on the rotor and face it is made on; none where that is only on the bench.
    #[must_use]
    pub fn leads_to(&self) -> Option<LeadsTo> {
        let leads = match &self.step.kind {
            Kind::Hold(Answer::OilFeed | Answer::DowelsWritten) => LeadsTo::OilFeed,
            Kind::Hold(Answer::Tightened) => LeadsTo::TighteningOrder,
            Kind::Hold(Answer::SlotsFitted) => LeadsTo::Slots(1, Face::Front),
            Kind::Hold(Answer::EndPlayAfter) => LeadsTo::EndPlay,
            _ => STEPS.into_iter().find(|(id, _)| *id == self.step.id)?.1,
        };
        Some(match (leads, Place::read(&self.place)) {
            (LeadsTo::Slots(..), Ok(Place::Rotor(rotor))) => LeadsTo::Slots(rotor, Face::Front),
            (LeadsTo::Slots(..), Ok(Place::Face(rotor, face))) => LeadsTo::Slots(rotor, face),
            (leads, _) => leads,
        })
    }
}
