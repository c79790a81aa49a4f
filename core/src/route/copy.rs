//! A finished build's set-up, taken over into a new one: how the shop works, and nothing of what it found.

use crate::book::{Book, BuildId, Fact, Subject};
use crate::joints::plan::joints;
use crate::ports::SideHousing;

use super::own_route::OwnRoute;
use super::{RouteFact, write};

/// The facts a new build starts with: the engine's measures, how its side housings are looked at, the
/// tightening orders and the route. No reading, no mark, nothing done.
#[must_use]
pub fn set_up(book: &Book, build: &BuildId) -> Vec<Fact> {
    let mut subjects = vec![Subject::Engine];
    subjects.extend(SideHousing::ALL.map(Subject::PortFace));
    subjects.extend(SideHousing::ALL.map(Subject::Datums));
    subjects.extend(joints(book, build).into_iter().map(Subject::TighteningOrder));
    let route = OwnRoute::of(book, build)
        .map(|own| Fact::Route(RouteFact::OwnRoute { text: write(&own.routing) }));
    subjects
        .iter()
        .filter_map(|subject| book.current(build, subject))
        .map(|entry| entry.fact.clone())
        .chain(route)
        .collect()
}
