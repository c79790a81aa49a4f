//! How much of a side seal hangs over an opening.

use std::f64::consts::{FRAC_PI_3, TAU};

use uom::si::{
    angle::radian,
    f64::{Angle, Length},
    length::millimeter,
};

use super::Outline;
use crate::trochoid::{Direction, Engine, Flank, Point, integral};

/// The longest stretch of a side seal with nothing under it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Unsupported {
    /// Its length along the seal.
    pub length: Length,
    /// The first chamber's shaft angle θ at which it occurs.
    pub theta: Angle,
    /// Where the stretch begins, in the housing frame.
    pub from: Point,
    /// Where it ends.
    pub to: Point,
}

const STEPS: u32 = 720;
const POINTS: usize = 121;

/// The longest stretch of side seal left unsupported over the outlines of a plate, over a full
/// cycle of one flank; none if no seal ever passes over an opening.
#[must_use]
pub fn longest_unsupported(engine: &Engine, outlines: &[Outline]) -> Option<Unsupported> {
    let seal = SideSeal::new(engine);
    let cycle = 3.0 * TAU;
    let run = |theta: f64| outlines.iter().filter_map(|o| seal.run(theta, o)).max_by(longer);
    let longer_at = |theta: f64| run(theta).map_or(0.0, |run| run.1 - run.0);
    let step = cycle / f64::from(STEPS);
    let best = (0..STEPS)
        .map(|i| step * f64::from(i))
        .max_by(|a, b| longer_at(*a).total_cmp(&longer_at(*b)))?;
    // Golden-section search between the steps to either side.
    let (mut low, mut high) = (best - step, best + step);
    for _ in 0..24 {
        let (left, right) = (high - 0.618 * (high - low), low + 0.618 * (high - low));
        if longer_at(left) > longer_at(right) {
            high = right;
        } else {
            low = left;
        }
    }
    let theta = [0.5 * (low + high), best]
        .into_iter()
        .max_by(|a, b| longer_at(*a).total_cmp(&longer_at(*b)))?;
    let (start, end, from, to) = run(theta)?;
    Some(Unsupported {
        length: Length::new::<millimeter>(end - start),
        theta: Angle::new::<radian>(theta.rem_euclid(cycle)),
        from,
        to,
    })
}

/// A stretch of seal: its ends by length along the seal, and in the housing.
type Run = (f64, f64, Point, Point);

fn longer(a: &Run, b: &Run) -> std::cmp::Ordering {
    (a.1 - a.0).total_cmp(&(b.1 - b.0))
}

/// A side seal between its corner seals, as points with their length along it.
struct SideSeal {
    eccentricity: f64,
    points: Vec<(Point, f64)>,
}

impl SideSeal {
    fn new(engine: &Engine) -> Self {
        let line = engine.side_seal_line();
        let corner = Point { x: engine.seals().corner_distance.get::<millimeter>(), y: 0.0 };
        let radius = engine.seals().corner_radius.get::<millimeter>();
        let start = begins(line, corner, radius);
        let step = 2.0 * (FRAC_PI_3 - start) / (POINTS - 1) as f64;
        let at = |i: usize| start + step * i as f64;
        let mut length = 0.0;
        let points = (0..POINTS)
            .map(|i| {
                if i > 0 {
                    length += integral(at(i - 1), at(i), 1, |u| line.at(u).speed);
                }
                (line.at(at(i)).point, length)
            })
            .collect();
        Self { eccentricity: line.eccentricity, points }
    }

    /// The longest stretch over the outline at the shaft angle θ.
    fn run(&self, theta: f64, outline: &Outline) -> Option<Run> {
        let centre = Point::polar(self.eccentricity, theta);
        let turn = Direction::of(theta / 3.0);
        let placed = |(point, length): (Point, f64)| (point.turned(turn) + centre, length);
        let reach = self.reach(outline, theta)?;
        let mut best: Option<Run> = None;
        let mut open: Option<(Point, f64)> = None;
        let mut last = placed(self.points[reach.0]);
        if outline.contains(last.0) {
            open = Some(last);
        }
        for index in reach.0 + 1..=reach.1 {
            let next = placed(self.points[index]);
            for share in crossings(outline, last.0, next.0) {
                let place = (last.0.between(next.0, share), last.1 + (next.1 - last.1) * share);
                open = match open {
                    None => Some(place),
                    Some(from) => {
                        let run = (from.1, place.1, from.0, place.0);
                        best = best.into_iter().chain([run]).max_by(longer);
                        None
                    }
                };
            }
            last = next;
        }
        let tail = open.map(|from| (from.1, last.1, from.0, last.0));
        best.into_iter().chain(tail).max_by(longer)
    }

    /// The first and the last point of the seal near enough to matter.
    fn reach(&self, outline: &Outline, theta: f64) -> Option<(usize, usize)> {
        let points = outline.points();
        let middle = points[0].between(points[points.len() / 2], 0.5);
        let radius = points.iter().map(|p| (*p - middle).norm()).fold(0.0, f64::max);
        let centre = Point::polar(self.eccentricity, theta);
        let seen = (middle - centre).turned(Direction::of(-theta / 3.0));
        let near = |(point, _): &(Point, f64)| (*point - seen).norm() <= radius + 4.0;
        let first = self.points.iter().position(near)?;
        let last = self.points.iter().rposition(near)?;
        Some((first.saturating_sub(1), (last + 1).min(self.points.len() - 1)))
    }
}

/// The u at which the side seal leaves its corner seal.
fn begins(line: Flank, corner: Point, radius: f64) -> f64 {
    let (mut low, mut high) = (line.end(), FRAC_PI_3);
    for _ in 0..50 {
        let middle = 0.5 * (low + high);
        if (line.at(middle).point - corner).norm() < radius {
            low = middle;
        } else {
            high = middle;
        }
    }
    0.5 * (low + high)
}

/// The shares of the way at which a stretch crosses the outline, in order.
fn crossings(outline: &Outline, from: Point, to: Point) -> Vec<f64> {
    let way = to - from;
    let mut shares: Vec<f64> = outline
        .edges()
        .filter_map(|(a, b)| {
            // Each edge holds its first end and not its last, so that a corner counts once.
            let (side_a, side_b) = (way.cross(a - from), way.cross(b - from));
            if (side_a > 0.0) == (side_b > 0.0) {
                return None;
            }
            let edge = b - a;
            let share = (a - from).cross(edge) / way.cross(edge);
            (0.0..1.0).contains(&share).then_some(share)
        })
        .collect();
    shares.sort_by(f64::total_cmp);
    shares
}
