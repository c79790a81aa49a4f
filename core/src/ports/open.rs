//! How much of a port is open to each chamber at one shaft angle.

use crate::kept_words;
use pitleaf_translated::translated;
use std::{fmt, sync::Arc};

use uom::si::{area::square_millimeter, f64::Area, length::millimeter};

use super::{
    Outline,
    bore_arc::BoreArc,
    clip::{Lie, Node, clip},
    crossing::covered,
    figure::SealFigure,
    position::{Position, chamber_after},
    stretch::{Standing, Stretch},
};
use crate::trochoid::{Engine, Nearest, Point, SectorArea, Trochoid};

/// What closes a side port.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SealedBy {
    /// The edge of the rotor's flank.
    FlankEdge,
    /// The line of the side seal, from corner to corner, and the apex seals beyond.
    SideSeal,
}

kept_words!(SealedBy {
    FlankEdge = "flank-edge",
    SideSeal = "side-seal",
});

/// Why an outline makes no port.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PortFault {
    /// No part of it is inside the bore.
    OutsideBore,
    /// The whole bore is inside it.
    AroundBore,
}

impl fmt::Display for PortFault {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::OutsideBore => {
                "the outline lies wholly outside the bore, so this port would never open: check the \
                 signs and the unit of its points"
            }
            Self::AroundBore => {
                "the outline goes round the whole bore: check the unit of its points"
            }
        })
    }
}

impl std::error::Error for PortFault {}

/// A side port in an engine: its outline cut to the bore, ready to be swept.
#[derive(Debug, Clone)]
pub struct Port {
    pub(crate) figure: Arc<SealFigure>,
    pub(crate) bore: Trochoid,
    sector: SectorArea,
    nodes: Vec<Node>,
    arcs: Vec<BoreArc>,
    /// Per node: how deep the edge that follows can dip below its ends.
    dips: Vec<f64>,
    stretches: Vec<Stretch>,
    area: f64,
}

/// The open area of a port at one shaft angle, for the three chambers in order.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct OpenAreas {
    pub(crate) areas: [f64; 3],
    /// Whether any part of the port lies in the chamber, however small.
    pub(crate) open: [bool; 3],
}

impl OpenAreas {
    /// The area open to each chamber.
    #[must_use]
    pub fn areas(&self) -> [Area; 3] {
        self.areas.map(Area::new::<square_millimeter>)
    }

    pub(super) fn add(&mut self, chamber: usize, area: f64) {
        self.areas[chamber] += area;
        self.open[chamber] = true;
    }
}

/// A node at one shaft angle.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Seen {
    point: Point,
    /// The chamber it is open to.
    chamber: Option<usize>,
    /// How far it is above its flank; 0 where edges need a closer look.
    above: f64,
}

/// Where ports are put in: the engine's own curves, tabled once. An outline that is dragged is cut to
/// them for every move of the finger.
#[derive(Debug, Clone)]
pub struct Seat {
    figure: Arc<SealFigure>,
    nearest: Nearest,
    sector: SectorArea,
}

impl Seat {
    /// The seat of an engine's side ports.
    #[must_use]
    pub fn new(engine: &Engine, sealed_by: SealedBy) -> Self {
        let bore = engine.geometry().bore();
        let inset = match sealed_by {
            SealedBy::FlankEdge => 0.0,
            SealedBy::SideSeal => engine.seals().side_inset.get::<millimeter>(),
        };
        Self {
            figure: Arc::new(SealFigure::new(engine.geometry(), inset)),
            nearest: Nearest::new(bore),
            sector: SectorArea::new(bore),
        }
    }

    /// Cuts an outline to the engine's bore.
    ///
    /// # Errors
    /// If no part of the outline is inside the bore, or the whole bore inside the outline.
    pub fn port(&self, outline: &Outline) -> Result<Port, PortFault> {
        let clipped = match clip(outline, &self.nearest) {
            Lie::Inside(clipped) => clipped,
            Lie::Outside => return Err(PortFault::OutsideBore),
            Lie::Around => return Err(PortFault::AroundBore),
        };
        let (figure, sector) = (self.figure.clone(), self.sector.clone());
        let dips = clipped
            .nodes
            .windows(2)
            .map(|pair| {
                let edge = pair[1].point - pair[0].point;
                figure.bend * edge.dot(edge) / 8.0
            })
            .collect();
        let stretches = Stretch::over(&clipped.nodes);
        let area = clipped.area(&sector);
        let arcs = BoreArc::over(&clipped, &sector);
        let bore = self.nearest.curve();
        Ok(Port { figure, bore, sector, nodes: clipped.nodes, arcs, dips, stretches, area })
    }
}

impl Port {
    /// Cuts an outline to the engine's bore; for one outline after another, make a [`Seat`] once.
    ///
    /// # Errors
    /// As [`Seat::port`].
    pub fn new(engine: &Engine, outline: &Outline, sealed_by: SealedBy) -> Result<Self, PortFault> {
        Seat::new(engine, sealed_by).port(outline)
    }

    /// The area of the part inside the bore.
    #[must_use]
    pub fn area(&self) -> Area {
        Area::new::<square_millimeter>(self.area)
    }

    pub(crate) fn open_at(&self, theta: f64, seen: &mut Vec<Seen>) -> OpenAreas {
        let position = Position::new(&self.figure, self.bore, theta);
        let mut open = OpenAreas::default();
        for stretch in &self.stretches {
            match stretch.standing(&position) {
                Standing::Covered => {}
                Standing::Open(chamber, area) => open.add(chamber, area),
                Standing::Mixed => self.look(&position, stretch, seen, &mut open),
            }
        }
        for arc in &self.arcs {
            arc.follow(&position, &self.sector, &mut open);
        }
        open
    }

    /// Adds a stretch edge by edge.
    fn look(
        &self,
        position: &Position<'_>,
        stretch: &Stretch,
        seen: &mut Vec<Seen>,
        open: &mut OpenAreas,
    ) {
        let nodes = &self.nodes[stretch.first..=stretch.last];
        let dips = &self.dips[stretch.first..];
        seen.clear();
        seen.extend(nodes.iter().map(|node| self.see(position, node.point, node.alpha)));
        for ((pair, node), dip) in seen.windows(2).zip(nodes).zip(dips) {
            let (from, to) = (&pair[0], &pair[1]);
            if (from.chamber.is_none() && to.chamber.is_none()) || !node.joined {
                continue;
            }
            match (from.chamber, to.chamber) {
                (Some(a), Some(b)) if a == b && from.above.min(to.above) > *dip => {
                    open.add(a, 0.5 * from.point.cross(to.point));
                }
                _ => self.cut(position, from, to, open),
            }
        }
    }

    fn see(&self, position: &Position<'_>, place: Point, alpha: Option<f64>) -> Seen {
        let point = position.seen(place);
        if let Some(alpha) = alpha {
            let chamber = chamber_after(position.passed(alpha));
            return Seen { point, chamber: Some(chamber), above: 0.0 };
        }
        let local = SealFigure::local(point);
        let above = local.y - self.figure.height(local.x);
        if above <= 0.0 {
            return Seen { point, chamber: None, above };
        }
        let near_apex = local.x.abs() > self.figure.end;
        let chamber = position.chamber_of(point, local);
        Seen { point, chamber: Some(chamber), above: if near_apex { 0.0 } else { above } }
    }

    /// Adds an edge that may meet the figure or pass an apex seal.
    fn cut(&self, position: &Position<'_>, from: &Seen, to: &Seen, open: &mut OpenAreas) {
        let covered = covered(&self.figure, from.point, to.point);
        let at = |share: f64| from.point.between(to.point, share);
        let end = |share: f64| {
            let place = at(share);
            let local = SealFigure::local(place);
            let chamber = position.chamber_of(place, local);
            (place, chamber, position.edge_sector(chamber, local))
        };
        match (from.chamber, to.chamber, covered) {
            (Some(a), Some(b), None) => straight(position, (from.point, a), (to.point, b), open),
            (a, b, covered) => {
                // An end that only just is inside may show no covered stretch.
                let (enter, leave) = covered.unwrap_or((1.0, 0.0));
                if let Some(a) = a {
                    let (place, chamber, sector) = end(enter);
                    straight(position, (from.point, a), (place, chamber), open);
                    open.add(chamber, -sector);
                }
                if let Some(b) = b {
                    let (place, chamber, sector) = end(leave);
                    open.add(chamber, sector);
                    straight(position, (place, chamber), (to.point, b), open);
                }
            }
        }
    }
}

/// Adds a straight stretch outside the figure, parted by an apex seal if its ends lie in two
/// chambers.
fn straight(
    position: &Position<'_>,
    (from, a): (Point, usize),
    (to, b): (Point, usize),
    open: &mut OpenAreas,
) {
    if a == b {
        open.add(a, 0.5 * from.cross(to));
        return;
    }
    let index = if (a + 1) % 3 == b { b } else { a };
    let place = from.between(to, position.crosses_seal(index, from, to));
    open.add(a, 0.5 * from.cross(place) - position.seal_sector(a, index, place));
    open.add(b, 0.5 * place.cross(to) + position.seal_sector(b, index, place));
}
