//! How much of a corner seal hangs over the ports of a plate, and whether it can drop in.
//!
//! The seal is a flat disc, sprung at its middle, on a flat face with the ports cut out of it. It stands as
//! long as its middle lies among what is left under it (within the convex hull of that); else it tips in.

use std::f64::consts::{PI, TAU};

use uom::si::{
    angle::radian,
    f64::{Angle, Ratio},
    length::millimeter,
    ratio::ratio,
};

use super::{Outline, bridge::nearest_on};
use crate::trochoid::{Engine, Nearest, Point, Trochoid};

/// What a port does to the corner seals that pass it, over the whole turn.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Overhang {
    /// The greatest share of the seal's face over openings.
    pub share: Ratio,
    /// The first chamber's shaft angle θ at which it is; a corner seal passes every turn of the shaft.
    pub theta: Angle,
    /// The θ at which the seal first reaches the opening.
    pub from: Angle,
    /// The θ at which it has left it.
    pub to: Angle,
    /// Where on the port's edge the seal runs off the face.
    pub runs_off: Point,
    /// Where it climbs back.
    pub climbs_back: Point,
    /// The θ at which it can drop in; none if it can't.
    pub drops: Option<Angle>,
}

/// How bad an overhang is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Grade {
    /// No more than [`TOUCHES`] of the face: the edge wants a chamfer.
    TouchesEdge,
    /// More, but what is left under the seal holds it.
    Overhangs,
    /// What is left under the seal does not hold its middle.
    DropsIn,
}

/// Up to this share of the face an overhang counts as touching an edge: about 1 mm of a seal of 11 mm over
/// a straight edge (4.5 % by the segment of a circle). Our own choice, no source.
pub const TOUCHES: f64 = 0.05;

impl Overhang {
    /// How bad it is.
    #[must_use]
    pub fn grade(&self) -> Grade {
        if self.drops.is_some() {
            Grade::DropsIn
        } else if self.share.get::<ratio>() > TOUCHES {
            Grade::Overhangs
        } else {
            Grade::TouchesEdge
        }
    }
}

/// Steps once round the track: about 0.4 mm of the preset's.
const STEPS: u32 = 1440;

/// What the outline does to the corner seals, with the plate's `others` cut too; none if no corner seal
/// reaches it.
#[must_use]
pub fn overhang(engine: &Engine, outline: &Outline, others: &[Outline]) -> Option<Overhang> {
    let track = Track::new(engine, outline, others);
    let step = TAU / f64::from(STEPS);
    let near: Vec<f64> =
        (0..STEPS).map(|i| step * f64::from(i)).filter(|alpha| track.is_near(*alpha)).collect();
    // A touch narrower than a step is found from where the outline comes nearest to the path.
    let start = track.nearest_to_path();
    let (mut most, mut widest) = ((0.0, start), (0.0, start));
    for alpha in near.into_iter().chain([start]) {
        let own = track.share(alpha, outline);
        if own <= 0.0 {
            continue;
        }
        let share = (own + track.share_of_others(alpha)).min(1.0);
        if share > most.0 {
            most = (share, alpha);
        }
        // Less than half a face in the air leaves no half of it empty.
        if share >= 0.45 {
            let gap = track.gap(alpha);
            if gap > widest.0 {
                widest = (gap, alpha);
            }
        }
    }
    if most.0 <= 0.0 {
        return None;
    }
    let most = greatest(most.1, step, |alpha| track.share_of_all(alpha));
    let widest = greatest(widest.1, step, |alpha| track.gap(alpha));
    let (from, to) = (track.end(most.1, -step, outline), track.end(most.1, step, outline));
    let theta = |alpha: f64| Angle::new::<radian>((3.0 * alpha).rem_euclid(3.0 * TAU));
    Some(Overhang {
        share: Ratio::new::<ratio>(most.0),
        theta: theta(most.1),
        from: theta(from),
        to: theta(to),
        runs_off: nearest(outline, track.middle(from)),
        climbs_back: nearest(outline, track.middle(to)),
        drops: (widest.0 >= PI).then(|| theta(widest.1)),
    })
}

/// The greatest value within a step of `alpha`, and where, by the golden section.
fn greatest(alpha: f64, step: f64, value: impl Fn(f64) -> f64) -> (f64, f64) {
    let (mut low, mut high) = (alpha - step, alpha + step);
    for _ in 0..24 {
        let (left, right) = (high - 0.618 * (high - low), low + 0.618 * (high - low));
        if value(left) > value(right) {
            high = right;
        } else {
            low = left;
        }
    }
    let found = 0.5 * (low + high);
    let (at_found, at_alpha) = (value(found), value(alpha));
    if at_found > at_alpha { (at_found, found) } else { (at_alpha, alpha) }
}

/// The place on an outline nearest to a point.
fn nearest(outline: &Outline, point: Point) -> Point {
    let mut best = (f64::INFINITY, point);
    for edge in outline.edges() {
        let foot = nearest_on(edge, point);
        let off = (foot - point).norm();
        if off < best.0 {
            best = (off, foot);
        }
    }
    best.1
}

/// The corner seals' way round, and the openings on it.
struct Track<'a> {
    path: Trochoid,
    radius: f64,
    outline: &'a Outline,
    /// The outline and the others, each with a circle round it: most are never near a seal that is near one.
    openings: Vec<(&'a Outline, Point, f64)>,
}

impl<'a> Track<'a> {
    fn new(engine: &Engine, outline: &'a Outline, others: &'a [Outline]) -> Self {
        let openings = std::iter::once(outline).chain(others).map(|outline| {
            let points = outline.points();
            let middle = points[0].between(points[points.len() / 2], 0.5);
            let reach = points.iter().map(|point| (*point - middle).norm()).fold(0.0, f64::max);
            (outline, middle, reach)
        });
        Self {
            path: engine.corner_seal_path(),
            radius: engine.seals().corner_radius.get::<millimeter>(),
            outline,
            openings: openings.collect(),
        }
    }

    /// Where the seal's middle is.
    fn middle(&self, alpha: f64) -> Point {
        self.path.generator(alpha)
    }

    /// Whether a seal there may reach the outline itself.
    fn is_near(&self, alpha: f64) -> bool {
        self.near(alpha).any(|near| std::ptr::eq(near, self.outline))
    }

    fn nearest_to_path(&self) -> f64 {
        let path = Nearest::new(self.path);
        let (_, place) =
            super::deepest::deepest(self.outline, |point| -path.foot(point).outside.abs());
        path.foot(place).alpha
    }

    /// The openings that a seal there may reach.
    fn near(&self, alpha: f64) -> impl Iterator<Item = &'a Outline> {
        let seal = self.middle(alpha);
        let is_near = move |(_, middle, reach): &&(&Outline, Point, f64)| {
            (seal - *middle).norm() < reach + self.radius
        };
        self.openings.iter().filter(is_near).map(|(outline, ..)| *outline)
    }

    /// The share of the seal's face over one outline.
    fn share(&self, alpha: f64, outline: &Outline) -> f64 {
        let middle = self.middle(alpha);
        let area: f64 =
            outline.edges().map(|(from, to)| under(from - middle, to - middle, self.radius)).sum();
        let share = area / (PI * self.radius * self.radius);
        // What rounding leaves of a disc that the outline does not reach.
        if share > 1e-12 { share } else { 0.0 }
    }

    fn share_of_others(&self, alpha: f64) -> f64 {
        let others = self.near(alpha).filter(|near| !std::ptr::eq(*near, self.outline));
        others.map(|other| self.share(alpha, other)).sum()
    }

    fn share_of_all(&self, alpha: f64) -> f64 {
        (self.share(alpha, self.outline) + self.share_of_others(alpha)).min(1.0)
    }

    /// The widest angle about the seal's middle in which nothing of its face is held up; half a turn and
    /// more lets it tip.
    fn gap(&self, alpha: f64) -> f64 {
        let middle = self.middle(alpha);
        let openings: Vec<&Outline> = self.near(alpha).collect();
        if !openings.iter().any(|outline| outline.contains(middle)) {
            return 0.0;
        }
        // What each edge within the disc holds up, as an angle and how far it goes on from there.
        let mut held: Vec<(f64, f64)> = Vec::new();
        for (number, outline) in openings.iter().enumerate() {
            for (from, to) in outline.edges() {
                let Some((from, to)) = within(from - middle, to - middle, self.radius) else {
                    continue;
                };
                let between = middle + from.between(to, 0.5);
                let is_cut_away = openings
                    .iter()
                    .enumerate()
                    .any(|(other, beside)| other != number && beside.contains(between));
                if !is_cut_away {
                    let wide = from.cross(to).atan2(from.dot(to));
                    let first = if wide < 0.0 { to } else { from };
                    held.push((first.y.atan2(first.x), wide.abs()));
                }
            }
        }
        held.sort_by(|one, other| one.0.total_cmp(&other.0));
        let Some(&(first, _)) = held.first() else { return TAU };
        // The last ones may go on past where the count begins anew.
        let past = held.iter().map(|(start, wide)| start + wide - TAU);
        let (mut widest, mut reached) = (0.0_f64, past.fold(first, f64::max));
        for (start, wide) in &held {
            widest = widest.max(start - reached);
            reached = reached.max(start + wide);
        }
        widest.max(first + TAU - reached)
    }

    /// How far on from `alpha`, by steps of `step`, the seal still reaches the outline.
    fn end(&self, alpha: f64, step: f64, outline: &Outline) -> f64 {
        let mut inside = alpha;
        for _ in 0..STEPS {
            if self.share(inside + step, outline) <= 0.0 {
                break;
            }
            inside += step;
        }
        let mut outside = inside + step;
        for _ in 0..30 {
            let between = 0.5 * (inside + outside);
            if self.share(between, outline) > 0.0 {
                inside = between;
            } else {
                outside = between;
            }
        }
        inside
    }
}

/// The part of a straight edge within a circle about the origin.
fn within(from: Point, to: Point, radius: f64) -> Option<(Point, Point)> {
    let way = to - from;
    let (a, b, c) = (way.dot(way), from.dot(way), from.dot(from) - radius * radius);
    let root = b * b - a * c;
    if root <= 0.0 {
        return None;
    }
    let root = root.sqrt();
    let (enters, leaves) = (((-b - root) / a).max(0.0), ((-b + root) / a).min(1.0));
    (enters < leaves).then(|| (from.between(to, enters), from.between(to, leaves)))
}

/// The area of a circle about the origin that lies between the origin and an edge, below zero where the
/// edge runs clockwise: a triangle where the edge is within, sectors before and behind.
fn under(from: Point, to: Point, radius: f64) -> f64 {
    let sector =
        |one: Point, other: Point| 0.5 * radius * radius * one.cross(other).atan2(one.dot(other));
    match within(from, to, radius) {
        Some((enters, leaves)) => {
            sector(from, enters) + 0.5 * enters.cross(leaves) + sector(leaves, to)
        }
        None => sector(from, to),
    }
}
