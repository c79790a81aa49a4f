//! The room left: how far a port may go before it runs into something or opens at the wrong time.

use pitleaf_translated::translated;
use std::{collections::BTreeMap, f64::consts::TAU, fmt};

use uom::si::{
    angle::radian,
    f64::{Angle, Length},
    length::millimeter,
};

use super::{
    Outline, SealedBy, bridge::nearest_on, figure::SealFigure, keep_clear::oil_circle,
    position::Position,
};
use crate::trochoid::{Engine, Nearest, Point, Trochoid};

/// The grid's spacing, in mm. The line is found exactly where it crosses the grid.
const GRID: f64 = 1.5;
/// How near the flank, in mm, a place counts as open while the port must be shut. It covers what
/// happens between the shaft angles looked at.
const SLACK: f64 = 0.01;
/// Pieces of the line this short, in mm, are not bent further.
const SHORT: f64 = 0.3;

/// What bounds a port that is still to be cut.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Room<'a> {
    /// The engine.
    pub engine: &'a Engine,
    /// What closes the port.
    pub sealed_by: SealedBy,
    /// What to keep from the corner seals' track, the oil seal's sweep and the other ports.
    pub margin: Length,
    /// The first chamber's shaft angle θ before which it may not open.
    pub opens: Angle,
    /// The θ after which it may not stay open, later than `opens`.
    pub closes: Angle,
    /// The other ports of the plate.
    pub others: &'a [Outline],
}

/// Why there is no room.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RoomFault {
    /// The port is to close before it opens, or stay open a whole cycle.
    Times,
    /// The place lies in or too near to something to keep clear of.
    TooNear,
    /// The place would be open too early or too late.
    WrongTime,
    /// The place is free, but what is free around it is too small to draw.
    TooSmall,
}

impl fmt::Display for RoomFault {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Times => {
                "the port must close after it opens and within a cycle of 1080°: check both angles"
            }
            Self::TooNear => {
                "there is no room here: the place is in or too near a seal's track or another port; \
                 choose a place further off, or a smaller margin"
            }
            Self::WrongTime => {
                "a port here would be open too early or too late: choose another place, or other \
                 angles"
            }
            Self::TooSmall => "the room here is less than 2 mm wide: choose another place",
        })
    }
}

impl std::error::Error for RoomFault {}

impl Room<'_> {
    /// The line not to cross: the largest outline around `seed` that keeps clear and keeps its
    /// times. It is true to a hundredth of a millimetre and cuts sharp corners short.
    ///
    /// # Errors
    /// If the times make no sense, or there is no room at `seed`.
    pub fn around(&self, seed: Point) -> Result<Outline, RoomFault> {
        let search = Search::new(self)?;
        if !search.is_clear(seed) {
            return Err(RoomFault::TooNear);
        }
        if search.opens_wrongly(seed) {
            return Err(RoomFault::WrongTime);
        }
        let free = search.flood(seed);
        let contour = search.contour(seed, &free);
        Outline::new(contour).map_err(|_| RoomFault::TooSmall)
    }
}

/// A place on the grid, counted from the seed.
type Cell = (i32, i32);

struct Search<'a> {
    room: &'a Room<'a>,
    figure: SealFigure,
    bore: Trochoid,
    track: Nearest,
    oil: f64,
    margin: f64,
    /// The shaft angles at which the port must be shut to the first chamber.
    shut: Vec<f64>,
}

impl<'a> Search<'a> {
    fn new(room: &'a Room<'a>) -> Result<Self, RoomFault> {
        let (opens, closes) = (room.opens.get::<radian>(), room.closes.get::<radian>());
        let cycle = 3.0 * TAU;
        let span = cycle - (closes - opens);
        // Written so that what is not a number fails too.
        let sensible = closes > opens && span > 0.0;
        if !sensible {
            return Err(RoomFault::Times);
        }
        let engine = room.engine;
        let steps =
            1 + (1080..).take_while(|i| span * 1080.0 / cycle > f64::from(i - 1080)).count();
        let shut = (0..=steps).map(|i| closes + span * i as f64 / steps as f64).collect();
        let seal = engine.seals().corner_radius.get::<millimeter>();
        let inset = match room.sealed_by {
            SealedBy::FlankEdge => 0.0,
            SealedBy::SideSeal => engine.seals().side_inset.get::<millimeter>(),
        };
        Ok(Self {
            room,
            figure: SealFigure::new(engine.geometry(), inset),
            bore: engine.geometry().bore(),
            track: Nearest::new(engine.corner_seal_path().offset_by(-seal)),
            oil: oil_circle(engine).radius,
            margin: room.margin.get::<millimeter>().max(0.0),
            shut,
        })
    }

    fn is_clear(&self, place: Point) -> bool {
        place.norm() >= self.oil + self.margin
            && self.track.foot(place).outside <= -self.margin
            && self.room.others.iter().all(|other| {
                !other.contains(place)
                    && other
                        .edges()
                        .all(|edge| (nearest_on(edge, place) - place).norm() >= self.margin)
            })
    }

    fn opens_wrongly(&self, place: Point) -> bool {
        self.shut.iter().any(|theta| {
            let position = Position::new(&self.figure, self.bore, *theta);
            let seen = position.seen(place);
            let local = SealFigure::local(seen);
            local.third == 0
                && local.y - self.figure.height(local.x) > -SLACK
                && position.chamber_of(seen, local) == 0
        })
    }

    fn is_free(&self, place: Point) -> bool {
        self.is_clear(place) && !self.opens_wrongly(place)
    }

    fn place(seed: Point, (i, j): Cell) -> Point {
        seed + Point { x: GRID * f64::from(i), y: GRID * f64::from(j) }
    }

    /// Every place of the grid that can be reached from the seed, and those around them.
    fn flood(&self, seed: Point) -> BTreeMap<Cell, bool> {
        let mut free = BTreeMap::from([((0, 0), true)]);
        let mut next = vec![(0, 0)];
        while let Some((i, j)) = next.pop() {
            for cell in [(i + 1, j), (i - 1, j), (i, j + 1), (i, j - 1)] {
                if free.contains_key(&cell) {
                    continue;
                }
                let is_free = self.is_free(Self::place(seed, cell));
                free.insert(cell, is_free);
                if is_free {
                    next.push(cell);
                }
            }
        }
        free
    }

    /// The longest loop round the free places. Each square of the grid with free and taken corners
    /// adds a piece, with the free side to its left.
    fn contour(&self, seed: Point, free: &BTreeMap<Cell, bool>) -> Vec<Point> {
        let is_free = |cell: Cell| free.get(&cell).copied().unwrap_or(false);
        let mut pieces: BTreeMap<(Cell, Cell), (Cell, Cell)> = BTreeMap::new();
        let squares =
            free.keys().flat_map(|&(i, j)| [(i, j), (i - 1, j), (i, j - 1), (i - 1, j - 1)]);
        for (i, j) in squares {
            let corners = [(i, j), (i + 1, j), (i + 1, j + 1), (i, j + 1)];
            for k in 0..4 {
                let (here, next) = (corners[k], corners[(k + 1) % 4]);
                if !is_free(here) || is_free(next) {
                    continue;
                }
                // Anticlockwise round the square from here, free ends at `next`. The piece begins
                // where free begins again and ends here: free lies to its left.
                let back = (1..4).find(|n| !is_free(corners[(k + 4 - n) % 4])).unwrap_or(1);
                let (taken, first) = (corners[(k + 4 - back) % 4], corners[(k + 5 - back) % 4]);
                pieces.insert((here, next), (first, taken));
            }
        }
        let mut longest = Vec::new();
        while let Some((&start, _)) = pieces.first_key_value() {
            let mut line = Vec::new();
            let mut at = start;
            while let Some(next) = pieces.remove(&at) {
                line.push(self.edge(Self::place(seed, at.0), Self::place(seed, at.1)));
                at = next;
            }
            if line.len() > longest.len() {
                longest = line;
            }
        }
        let next = longest.iter().cycle().skip(1);
        longest.iter().zip(next).flat_map(|(from, to)| self.bent(*from, *to)).collect()
    }

    /// A piece of the line without its last point, bent inward where it would cut across what it
    /// must go round.
    fn bent(&self, from: Point, to: Point) -> Vec<Point> {
        let way = to - from;
        let length = way.norm();
        let Some(inward) = (Point { x: -way.y, y: way.x }).direction() else { return Vec::new() };
        let middle = from.between(to, 0.5);
        if length < SHORT || self.is_free(middle.along(inward, SLACK)) {
            return vec![from];
        }
        let bend = self.edge(middle.along(inward, 0.5 * length), middle);
        let mut points = self.bent(from, bend);
        points.extend(self.bent(bend, to));
        points
    }

    /// The last free place on the way from a free one to a taken one.
    fn edge(&self, free: Point, taken: Point) -> Point {
        let (mut free, mut taken) = (free, taken);
        for _ in 0..14 {
            let middle = free.between(taken, 0.5);
            if self.is_free(middle) {
                free = middle;
            } else {
                taken = middle;
            }
        }
        free
    }
}
