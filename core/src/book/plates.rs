//! What the book says of the engine's measures and of the ports in its side housings.

use super::{Book, BuildId, Fact, Subject};
use crate::ports::{PortFace, PortName, SideHousing, TypedDatums, TypedOutline};
use crate::trochoid::TypedEngine;

impl Book {
    /// The engine's measures in force.
    #[must_use]
    pub fn engine(&self, build: &BuildId) -> Option<&TypedEngine> {
        match &self.current(build, &Subject::Engine)?.fact {
            Fact::Engine(engine) => Some(engine),
            _ => None,
        }
    }

    /// How a side housing is looked at; the usual way until it is said.
    #[must_use]
    pub fn port_face(&self, build: &BuildId, housing: SideHousing) -> PortFace {
        match self.current(build, &Subject::PortFace(housing)).map(|entry| &entry.fact) {
            Some(Fact::PortFace(face)) => *face,
            _ => PortFace::usual(housing),
        }
    }

    /// An outline in force; one without rows was taken away.
    #[must_use]
    pub fn outline(&self, build: &BuildId, port: PortName) -> Option<&TypedOutline> {
        match &self.current(build, &Subject::Outline(port))?.fact {
            Fact::Outline(outline) if !outline.rows.trim().is_empty() => Some(outline),
            _ => None,
        }
    }

    /// The outlines in force of a side housing.
    pub fn outlines(
        &self,
        build: &BuildId,
        housing: SideHousing,
    ) -> impl Iterator<Item = &TypedOutline> {
        PortName::all(housing).filter_map(move |port| self.outline(build, port))
    }

    /// The holes a side housing's template is laid on by.
    #[must_use]
    pub fn datums(&self, build: &BuildId, housing: SideHousing) -> Option<&TypedDatums> {
        match &self.current(build, &Subject::Datums(housing))?.fact {
            Fact::Datums(datums) => Some(datums),
            _ => None,
        }
    }
}
