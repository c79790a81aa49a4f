//! An outline cut to the inside of a trochoid: to the bore, or to the edge of a seal's track.

use std::f64::consts::TAU;

use super::Outline;
use crate::trochoid::{Foot, Nearest, Point, SectorArea};

/// Edges shorter than this, in mm, are not searched for a dip across the curve and back: what could
/// hide there is shallower than 10⁻⁵ mm.
const SHORT: f64 = 0.02;
/// Below this length a straight edge crosses the curve once or not at all.
const SIMPLE: f64 = 0.25;
/// Two crossings nearer than this angle are none.
const SAME: f64 = 1e-9;

/// The part of an outline inside a trochoid: straight edges and arcs of the curve.
#[derive(Debug, Clone, Default)]
pub(crate) struct Clipped {
    pub(crate) nodes: Vec<Node>,
    pub(crate) arcs: Vec<Arc>,
}

/// A corner of the part inside.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Node {
    pub(crate) point: Point,
    /// The curve's angle, if the node lies on the curve.
    pub(crate) alpha: Option<f64>,
    /// Whether a straight edge leads to the next node.
    pub(crate) joined: bool,
}

/// A stretch of the curve inside the outline, anticlockwise between two nodes.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Arc {
    pub(crate) from: usize,
    pub(crate) to: usize,
    /// Whether the arc passes the angle at which the count begins anew.
    pub(crate) wraps: bool,
}

/// How an outline lies to a trochoid.
#[derive(Debug, Clone)]
pub(crate) enum Lie {
    /// At least part of it is inside.
    Inside(Clipped),
    /// The two have nothing in common.
    Outside,
    /// The trochoid is wholly inside the outline.
    Around,
}

#[derive(Clone, Copy)]
struct Crossing {
    edge: usize,
    point: Point,
    alpha: f64,
}

/// Cuts `outline` to the inside of the curve.
pub(crate) fn clip(outline: &Outline, nearest: &Nearest) -> Lie {
    let points = outline.points();
    let count = points.len();
    let feet: Vec<f64> = points.iter().map(|point| nearest.foot(*point).outside).collect();
    // The walk begins at the point furthest from the curve, whose side is beyond doubt.
    let start = (0..count).max_by(|a, b| feet[*a].abs().total_cmp(&feet[*b].abs())).unwrap_or(0);
    let mut crossings: Vec<Crossing> = Vec::new();
    for edge in (0..count).map(|i| (start + i) % count) {
        let next = (edge + 1) % count;
        let span = (points[edge], feet[edge], points[next], feet[next]);
        search(nearest, span, &mut |foot, point| {
            let alpha = foot.alpha.rem_euclid(TAU);
            let twin = crossings.last().is_some_and(|last| {
                let apart = (last.alpha - alpha).abs();
                apart.min(TAU - apart) < SAME
            });
            if twin {
                crossings.pop();
            } else {
                crossings.push(Crossing { edge, point, alpha });
            }
        });
    }
    let inside = feet[start] < 0.0;
    if crossings.is_empty() && !inside {
        let around = outline.contains(nearest.curve().at(0.0));
        return if around { Lie::Around } else { Lie::Outside };
    }
    Lie::Inside(walk(points, start, inside, &crossings))
}

fn walk(points: &[Point], start: usize, mut inside: bool, crossings: &[Crossing]) -> Clipped {
    let count = points.len();
    let mut nodes = Vec::with_capacity(count + 1 + 2 * crossings.len());
    let mut marks = Vec::with_capacity(crossings.len());
    let mut left = crossings.iter().peekable();
    let begins_inside = inside;
    for edge in (0..count).map(|i| (start + i) % count) {
        if inside {
            nodes.push(Node { point: points[edge], alpha: None, joined: true });
        }
        while let Some(crossing) = left.next_if(|crossing| crossing.edge == edge) {
            marks.push((crossing.alpha, nodes.len(), inside));
            inside = !inside;
            let alpha = Some(crossing.alpha);
            nodes.push(Node { point: crossing.point, alpha, joined: inside });
        }
    }
    if begins_inside {
        nodes.push(Node { point: points[start], alpha: None, joined: false });
    }
    marks.sort_by(|a, b| a.0.total_cmp(&b.0));
    let arcs = (0..marks.len())
        .filter(|i| marks[*i].2)
        .map(|i| {
            let next = (i + 1) % marks.len();
            Arc { from: marks[i].1, to: marks[next].1, wraps: next == 0 }
        })
        .collect();
    Clipped { nodes, arcs }
}

/// Finds every crossing of an edge with the curve, in order. A point's distance changes no faster
/// than the point moves, which rules out most edges at once.
fn search(
    nearest: &Nearest,
    (from, at_from, to, at_to): (Point, f64, Point, f64),
    found: &mut impl FnMut(Foot, Point),
) {
    let length = (to - from).norm();
    let same_side = (at_from < 0.0) == (at_to < 0.0);
    if same_side && (at_from.abs() + at_to.abs() > length || length < SHORT) {
        return;
    }
    if !same_side && length < SIMPLE {
        let (foot, point) = root(nearest, (from, at_from, to, at_to));
        found(foot, point);
        return;
    }
    let middle = from.between(to, 0.5);
    let at_middle = nearest.foot(middle).outside;
    search(nearest, (from, at_from, middle, at_middle), found);
    search(nearest, (middle, at_middle, to, at_to), found);
}

/// The one crossing of a short edge, by false position with Illinois' halving.
fn root(nearest: &Nearest, (from, at_from, to, at_to): (Point, f64, Point, f64)) -> (Foot, Point) {
    let (mut low, mut at_low, mut high, mut at_high) = (0.0, at_from, 1.0, at_to);
    let mut best = from;
    let mut foot = nearest.foot(from);
    let mut kept = None;
    for _ in 0..60 {
        let share = low + (high - low) * at_low / (at_low - at_high);
        best = from.between(to, share);
        foot = nearest.foot(best);
        if foot.outside.abs() < 1e-13 {
            break;
        }
        let lower = (foot.outside < 0.0) == (at_low < 0.0);
        if lower {
            (low, at_low) = (share, foot.outside);
            at_high *= if kept == Some(lower) { 0.5 } else { 1.0 };
        } else {
            (high, at_high) = (share, foot.outside);
            at_low *= if kept == Some(lower) { 0.5 } else { 1.0 };
        }
        kept = Some(lower);
    }
    (foot, best)
}

impl Clipped {
    /// The straight edges.
    pub(crate) fn edges(&self) -> impl Iterator<Item = (Point, Point)> {
        self.nodes
            .windows(2)
            .filter(|pair| pair[0].joined)
            .map(|pair| (pair[0].point, pair[1].point))
    }

    /// The area enclosed by edges and arcs.
    pub(crate) fn area(&self, sector: &SectorArea) -> f64 {
        let straight: f64 = self.edges().map(|(from, to)| 0.5 * from.cross(to)).sum();
        let curved: f64 = self
            .arcs
            .iter()
            .filter_map(|arc| {
                let (from, to) = (self.nodes[arc.from].alpha?, self.nodes[arc.to].alpha?);
                Some(sector.area(from, if arc.wraps { to + TAU } else { to }))
            })
            .sum();
        straight + curved
    }
}

/// The area the outline shares with the inside of the curve.
pub(crate) fn area_inside(outline: &Outline, nearest: &Nearest) -> f64 {
    let sector = SectorArea::new(nearest.curve());
    match clip(outline, nearest) {
        Lie::Inside(clipped) => clipped.area(&sector),
        Lie::Outside => 0.0,
        Lie::Around => sector.area(0.0, TAU),
    }
}
