//! What is to be said against the outlines in the book, and what was decided of it.

use super::Choice;
use super::decision::decided;
use crate::book::{Book, BuildId, Subject};
use crate::ports::{Objection, Outline, PortName, Shape, SideHousing, Stage, objections};
use crate::trochoid::Engine;
use pitleaf_translated::translated;

/// What a decision on an overhanging corner seal is written of, in place of a row.
pub const OVERHANG: &str = "corner-seal-overhang";

/// Something against a cut that is drawn.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Cut<'book> {
    /// The port's outline.
    pub port: PortName,
    /// What it runs into, and what follows.
    pub words: String,
    /// Whether a decision with a reason may stand against it.
    pub can_be_decided: bool,
    /// That it was accepted since it was drawn, and why.
    pub decision: Option<(Choice, &'book str)>,
}

impl Cut<'_> {
    /// Which port of which housing.
    #[must_use]
    #[translated]
    pub fn name(&self) -> String {
        format!("{} ({} side housing)", self.port, self.port.housing.name())
    }

    /// Where a decision on it is written down.
    #[must_use]
    pub fn place(&self) -> String {
        format!("{}-{}", self.port.housing.word(), self.port.word())
    }

    /// Whether it waits for a decision.
    #[must_use]
    pub fn is_undecided(&self) -> bool {
        self.can_be_decided && self.decision.is_none()
    }
}

/// All that is to be said against the outlines to be cut, with what was decided since.
#[must_use]
pub fn cuts<'book>(book: &'book Book, build: &BuildId) -> Vec<Cut<'book>> {
    let engine = book.engine(build).and_then(|typed| typed.engine().ok());
    let engine = engine.unwrap_or_else(Engine::preset);
    let mut cuts = Vec::new();
    for housing in SideHousing::ALL {
        let plate = plate(book, build, &engine, housing);
        for (port, outline) in plate.iter().filter(|(port, _)| port.stage == Stage::Cut) {
            let others = plate.iter().filter(|(other, _)| other != port);
            let others: Vec<Outline> = others.map(|(_, other)| other.clone()).collect();
            for Objection { words, can_be_decided } in objections(&engine, outline, &others) {
                let mut cut = Cut { port: *port, words, can_be_decided, decision: None };
                let decision =
                    decided(book, build, (OVERHANG, &cut.place()), drawn(book, build, housing));
                let accepted = |(choice, _): &(Choice, &str)| *choice == Choice::Accept;
                cut.decision = decision.filter(accepted).filter(|_| can_be_decided);
                cuts.push(cut);
            }
        }
    }
    cuts
}

/// The side ports of a housing as it will be. Nothing of an outline that can't be read.
fn plate(
    book: &Book,
    build: &BuildId,
    engine: &Engine,
    housing: SideHousing,
) -> Vec<(PortName, Outline)> {
    let view = book.port_face(build, housing).view;
    book.outlines(build, housing)
        .filter(|typed| {
            let cut = typed.port.at(Stage::Cut);
            typed.port.stage == Stage::Cut || book.outline(build, cut).is_none()
        })
        .filter_map(|typed| match typed.shape(engine, view) {
            Ok(Shape::Side(outline)) => Some((typed.port, outline)),
            _ => None,
        })
        .collect()
}

/// When the plate, or what runs over it, was last changed: no decision before that is about it.
fn drawn(book: &Book, build: &BuildId, housing: SideHousing) -> u64 {
    PortName::all(housing)
        .map(Subject::Outline)
        .chain([Subject::Engine, Subject::PortFace(housing)])
        .filter_map(|subject| book.current(build, &subject))
        .map(|entry| entry.order)
        .max()
        .unwrap_or_default()
}
