//! Short stretches of a port's outline, so that those clear of the figure's edge cost one look.

use super::{clip::Node, figure::SealFigure, position::Position};
use crate::trochoid::Point;

/// How many edges a stretch has at most.
const EDGES: usize = 12;
const SQRT_3_HALVES: f64 = 0.866_025_403_784_438_6;

/// Neighbouring edges within a circle.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Stretch {
    /// Its first node.
    pub(crate) first: usize,
    /// Its last node, from which the next stretch goes on.
    pub(crate) last: usize,
    middle: Point,
    /// The circle's radius; none where a node lies on the bore or an edge is missing.
    radius: Option<f64>,
    /// Twice the area between the edges and the lines to the shaft's axis.
    sector: f64,
    chord: Point,
}

/// How a whole stretch lies to the sealing figure.
pub(crate) enum Standing {
    /// Under the figure.
    Covered,
    /// Outside it, in the chamber, with the area between its edges and the rotor's centre.
    Open(usize, f64),
    /// Each edge needs a look.
    Mixed,
}

impl Stretch {
    /// Cuts an outline's nodes into stretches.
    pub(crate) fn over(nodes: &[Node]) -> Vec<Self> {
        let end = nodes.len().saturating_sub(1);
        (0..end)
            .step_by(EDGES)
            .map(|first| Self::new(nodes, first, (first + EDGES).min(end)))
            .collect()
    }

    fn new(nodes: &[Node], first: usize, last: usize) -> Self {
        let part = &nodes[first..=last];
        let whole = part.iter().all(|node| node.alpha.is_none())
            && part[..part.len() - 1].iter().all(|node| node.joined);
        let middle = part[0].point.between(part[part.len() - 1].point, 0.5);
        let radius = part.iter().map(|node| (node.point - middle).norm()).fold(0.0, f64::max);
        let sector = part.windows(2).map(|pair| pair[0].point.cross(pair[1].point)).sum();
        let chord = part[part.len() - 1].point - part[0].point;
        Self { first, last, middle, radius: whole.then_some(radius), sector, chord }
    }

    /// The graphs of the figure are nowhere steeper than 60°: a place that is more than twice a
    /// circle's radius above or below one has the whole circle there with it.
    pub(crate) fn standing(&self, position: &Position<'_>) -> Standing {
        let Some(radius) = self.radius else { return Standing::Mixed };
        let figure = position.figure;
        let local = SealFigure::local(position.seen(self.middle));
        let beside = local.x.abs();
        let within_third = SQRT_3_HALVES * local.y - 0.5 * beside > radius;
        let above = local.y - figure.height(local.x);
        if !within_third || above.abs() <= 2.0 * radius {
            Standing::Mixed
        } else if above < 0.0 {
            Standing::Covered
        } else if beside + radius < figure.end {
            let sector = self.sector - position.centre.cross(self.chord);
            Standing::Open(local.third, 0.5 * sector)
        } else {
            Standing::Mixed
        }
    }
}
