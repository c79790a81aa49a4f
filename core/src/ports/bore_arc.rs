//! Stretches of the bore inside a port, and the chambers they belong to.

use std::f64::consts::TAU;

use super::{
    OpenAreas,
    clip::Clipped,
    position::{Position, chamber_after},
};
use crate::trochoid::{Point, SectorArea};

/// A stretch of the bore, anticlockwise.
#[derive(Debug, Clone, Copy)]
pub(crate) struct BoreArc {
    start: f64,
    end: f64,
    /// Whether it passes the angle at which the count begins anew.
    wraps: bool,
    from: Mark,
    to: Mark,
}

/// A place on the bore, with the area the line from the shaft's axis has swept up to it.
#[derive(Debug, Clone, Copy)]
struct Mark {
    point: Point,
    swept: f64,
}

impl BoreArc {
    /// The arcs of a port's outline cut to the bore.
    pub(crate) fn over(clipped: &Clipped, sector: &SectorArea) -> Vec<Self> {
        let nodes = &clipped.nodes;
        let arc = |arc: &super::clip::Arc| {
            let (start, end) = (nodes[arc.from].alpha?, nodes[arc.to].alpha?);
            let whole = if arc.wraps { TAU } else { 0.0 };
            let from = Mark { point: nodes[arc.from].point, swept: sector.area(0.0, start) };
            let to = Mark { point: nodes[arc.to].point, swept: sector.area(0.0, end + whole) };
            Some(Self { start, end, wraps: arc.wraps, from, to })
        };
        clipped.arcs.iter().filter_map(arc).collect()
    }

    /// Adds the arc to the chambers it lies in, parted where the apexes touch the bore.
    pub(crate) fn follow(
        &self,
        position: &Position<'_>,
        sector: &SectorArea,
        open: &mut OpenAreas,
    ) {
        let last = position.passed(self.end) + if self.wraps { 3 } else { 0 };
        let area = |from: Mark, to: Mark| {
            to.swept - from.swept - 0.5 * position.centre.cross(to.point - from.point)
        };
        let mut from = self.from;
        for passed in position.passed(self.start)..last {
            let angle = position.contact_angle(passed + 1);
            let contact = Mark { point: position.bore.at(angle), swept: sector.area(0.0, angle) };
            let (before, after) = (chamber_after(passed), chamber_after(passed + 1));
            let place = position.contact(after);
            open.add(before, area(from, contact) - position.seal_sector(before, after, place));
            open.add(after, position.seal_sector(after, after, place));
            from = contact;
        }
        open.add(chamber_after(last), area(from, self.to));
    }
}
