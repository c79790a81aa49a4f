//! What the outlines in the book would cut into that no port may.

use crate::book::{Book, BuildId};
use crate::ports::{PortName, SideHousing, Stage, forbidden};
use crate::trochoid::Engine;

/// A cut that must not be made.
pub(super) struct Cut {
    /// On which side housing.
    pub(super) housing: SideHousing,
    /// By which port's outline.
    pub(super) port: PortName,
    /// How deep into what.
    pub(super) words: String,
}

/// Every such cut of the outlines to be cut.
pub(super) fn cuts_into(book: &Book, build: &BuildId) -> Vec<Cut> {
    let engine = book.engine(build).and_then(|typed| typed.engine().ok());
    let engine = engine.unwrap_or_else(Engine::preset);
    let mut cuts = Vec::new();
    for housing in SideHousing::ALL {
        let face = book.port_face(build, housing);
        let outlines = book.outlines(build, housing);
        for outline in outlines.filter(|outline| outline.port.stage == Stage::Cut) {
            let port = outline.port;
            let all = forbidden(&engine, face, outline).into_iter();
            cuts.extend(all.map(|words| Cut { housing, port, words }));
        }
    }
    cuts
}
