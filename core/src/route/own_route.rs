//! The route of a build's own: a file taken in, or the usual one, and every change since.

use super::fact::subject_own_route;
use super::{RouteFact, Routing, file};
use crate::book::{Book, BuildId, Fact, Subject};
use pitleaf_translated::translated;

/// A route that is not the usual one.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct OwnRoute {
    /// As far as it can be read, and be gone through.
    pub(super) routing: Routing,
    /// What is not in it, and why; empty where all of it is.
    pub(super) fault: String,
}

impl OwnRoute {
    /// The route of a build's own; none where it goes by the usual one.
    #[translated]
    pub(super) fn of(book: &Book, build: &BuildId) -> Option<Self> {
        // Most builds have none: that is found without going through their entries.
        book.current(build, &Subject::Route(subject_own_route()))?;
        let mut own: Option<Self> = None;
        for line in book.lines(build).filter(|line| !line.withdrawn) {
            match &line.entry.fact {
                Fact::Route(RouteFact::OwnRoute { text }) if text.is_empty() => own = None,
                Fact::Route(RouteFact::OwnRoute { text }) => {
                    own = Some(match file::read(text) {
                        Ok(routing) => Self { routing, fault: String::new() },
                        Err(fault) => Self { routing: Routing::usual(), fault: fault.to_string() },
                    });
                }
                Fact::Route(RouteFact::Edited(edit)) => {
                    let before = own.take().unwrap_or_else(|| Self {
                        routing: Routing::usual(),
                        fault: String::new(),
                    });
                    own = Some(match before.routing.edit(edit.clone()) {
                        Ok(routing) => Self { routing, ..before },
                        // Two phones may have changed the same step.
                        Err(fault) => Self {
                            fault: format!("A change of the route is left out: {fault}"),
                            ..before
                        },
                    });
                }
                _ => {}
            }
        }
        own
    }
}
