//! The figure that covers ports: the rotor's face up to the flanks' edges, or up to the side seals.

use std::f64::consts::{FRAC_PI_3, FRAC_PI_6};

use crate::trochoid::{Direction, Flank, Geometry, Point};

const CELLS: u32 = 256;
const SQRT_3_HALVES: f64 = 0.866_025_403_784_438_6;

/// The sealing figure in the rotor's frame, tabled for speed.
///
/// Each third is drawn in its own *flank frame*: the rotor's frame turned so that the flank's
/// middle points along y. There the flank is the graph of an even function, held as a cubic in each
/// of 256 cells (error about a millionth of a µm), and the first apex lies to the right. Beyond the flank's end the graph goes on as the nose of
/// the apex seal up to the line to the apex, then as a straight tangent: the figure is all that lies
/// below the three graphs at once, and it is convex.
#[derive(Debug, Clone)]
pub(crate) struct SealFigure {
    pub(crate) flank: Flank,
    /// The apex seal's offset: how far the bore is from the apex.
    pub(crate) nose: f64,
    cells: Vec<[f64; 4]>,
    /// The area under the graph from the middle to each cell.
    areas: Vec<f64>,
    cell: f64,
    cells_per_length: f64,
    /// Where the flank ends in its own frame.
    pub(crate) end: f64,
    /// The apex in the flank frame.
    apex: Point,
    /// Where the figure's corner lies on the line to the apex, if it has no nose.
    corner: f64,
    /// The area between the lines to the flank's middle and to the apex.
    pub(crate) half_sector: f64,
    /// The greatest bend of the graph, for how deep a straight edge can dip below it.
    pub(crate) bend: f64,
}

/// A place in the flank frame of the third it lies in.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Local {
    pub(crate) third: usize,
    pub(crate) x: f64,
    pub(crate) y: f64,
}

impl SealFigure {
    /// The figure whose edge runs `inset` inside the flank's.
    pub(crate) fn new(geometry: &Geometry, inset: f64) -> Self {
        let edge = geometry.flank();
        let flank = Flank { offset: edge.offset - inset, ..edge };
        let quarter = Direction::of(FRAC_PI_6);
        // Height and slope at u in the flank frame.
        let graph = |u: f64| {
            let place = flank.at(u);
            let (sin, cos) = (place.normal_angle + FRAC_PI_6).sin_cos();
            (place.point.turned(quarter), -cos / sin, place.speed * sin)
        };
        let start = flank.end();
        let end = graph(start).0.x;
        let cell = end / f64::from(CELLS);
        let mut u = FRAC_PI_3;
        let mut knots = Vec::new();
        for i in 0..=CELLS {
            let wanted = cell * f64::from(i);
            let (mut point, mut slope, mut rate) = graph(u);
            for _ in 0..4 {
                u = (u + (point.x - wanted) / rate).max(start);
                (point, slope, rate) = graph(u);
            }
            knots.push((point.y, slope));
        }
        let cells: Vec<_> = knots.windows(2).map(|pair| hermite(pair[0], pair[1], cell)).collect();
        let bend = cells
            .iter()
            .flat_map(|[_, _, b, c]| [2.0 * b.abs(), (2.0 * b + 6.0 * c * cell).abs()])
            .fold(0.0, f64::max);
        let mut sum = 0.0;
        let areas = cells
            .iter()
            .map(|cubic| {
                let before = sum;
                sum += under(cubic, cell);
                before
            })
            .collect();
        let mut figure = Self {
            flank,
            nose: edge.offset,
            cells,
            areas,
            cell,
            cells_per_length: 1.0 / cell,
            end,
            apex: Point::polar(flank.radius, FRAC_PI_6),
            corner: flank.at(start).point.x,
            half_sector: 0.0,
            bend,
        };
        let lean = flank.at(start).normal_angle;
        figure.half_sector = figure.flank_sector(end) + figure.nose_sector(lean);
        figure
    }

    /// The third a place of the rotor's frame lies in, and the place in its flank frame.
    pub(crate) fn local(point: Point) -> Local {
        let (half, side) = (0.5 * point.x, SQRT_3_HALVES * point.y);
        let heights = [half + side, -point.x, half - side];
        let third = if heights[0] >= heights[1] && heights[0] >= heights[2] {
            0
        } else if heights[1] >= heights[2] {
            1
        } else {
            2
        };
        Self::local_to(point, third)
    }

    /// The place in the flank frame of a given third.
    pub(crate) fn local_to(point: Point, third: usize) -> Local {
        let Point { x, y } = point;
        let (x, y) = match third {
            0 => (SQRT_3_HALVES * x - 0.5 * y, 0.5 * x + SQRT_3_HALVES * y),
            1 => (y, -x),
            _ => (-SQRT_3_HALVES * x - 0.5 * y, 0.5 * x - SQRT_3_HALVES * y),
        };
        Local { third, x, y }
    }

    /// The graph's height at the distance `x` from the middle.
    pub(crate) fn height(&self, x: f64) -> f64 {
        let x = x.abs();
        if x <= self.end {
            let (cubic, s, _) = self.cell(x);
            return cubic[0] + s * (cubic[1] + s * (cubic[2] + s * cubic[3]));
        }
        self.beyond(x).0
    }

    /// The graph's slope at the distance `x` to the right of the middle.
    pub(crate) fn slope(&self, x: f64) -> f64 {
        let along = x.abs();
        let slope = if along <= self.end {
            let (cubic, s, _) = self.cell(along);
            cubic[1] + s * (2.0 * cubic[2] + s * 3.0 * cubic[3])
        } else {
            self.beyond(along).1
        };
        if x < 0.0 { -slope } else { slope }
    }

    /// How the area grows along the figure's edge, anticlockwise from the middle of the third.
    pub(crate) fn edge_sector(&self, place: Local) -> f64 {
        let x = place.x.abs();
        let sector = if x <= self.end || self.flank.offset <= 0.0 {
            self.flank_sector(x.min(self.end))
        } else {
            let from_apex = (place.y - self.apex.y).atan2(x - self.apex.x) - FRAC_PI_6;
            self.half_sector - self.nose_sector(from_apex.max(0.0))
        };
        if place.x > 0.0 { -sector } else { sector }
    }

    /// The area along the nose, from the line to the apex to the angle `lean` off it.
    pub(crate) fn nose_sector(&self, lean: f64) -> f64 {
        let Flank { radius, offset, .. } = self.flank;
        0.5 * offset.max(0.0) * (offset * lean + radius * lean.sin())
    }

    /// Where the apex seal begins: on the line to the apex, or on the nose at the angle `lean`.
    /// In the frame of the apex, x towards it.
    pub(crate) fn root(&self, lean: Direction) -> Point {
        if self.flank.offset < 0.0 {
            return Point { x: self.corner, y: 0.0 };
        }
        Point { x: self.flank.radius, y: 0.0 }.along(lean, self.flank.offset)
    }

    fn flank_sector(&self, x: f64) -> f64 {
        let (cubic, s, i) = self.cell(x);
        self.areas[i] + under(cubic, s) - 0.5 * x * self.height(x)
    }

    #[expect(clippy::cast_possible_truncation, reason = "whole cells, and held to their number")]
    fn cell(&self, x: f64) -> (&[f64; 4], f64, usize) {
        let i = ((x * self.cells_per_length) as usize).min(self.cells.len() - 1);
        (&self.cells[i], x - self.cell * i as f64, i)
    }

    /// Height and slope beyond the flank's end.
    fn beyond(&self, x: f64) -> (f64, f64) {
        let nose = self.flank.offset;
        if nose <= 0.0 {
            let slope = self.slope(self.end);
            return (self.height(self.end) + slope * (x - self.end), slope);
        }
        let across = x - self.apex.x;
        let last = nose * SQRT_3_HALVES;
        if across < last {
            let up = (nose * nose - across * across).sqrt();
            return (self.apex.y + up, -across / up);
        }
        let slope = -2.0 * SQRT_3_HALVES;
        (self.apex.y + 0.5 * nose + slope * (across - last), slope)
    }
}

/// The cubic through two knots (height, slope) a cell apart.
fn hermite(left: (f64, f64), right: (f64, f64), cell: f64) -> [f64; 4] {
    let chord = (right.0 - left.0) / cell;
    let second = (3.0 * chord - 2.0 * left.1 - right.1) / cell;
    let third = (left.1 + right.1 - 2.0 * chord) / (cell * cell);
    [left.0, left.1, second, third]
}

/// The area under a cubic from its knot to `s`.
fn under(cubic: &[f64; 4], s: f64) -> f64 {
    s * (cubic[0] + s * (cubic[1] / 2.0 + s * (cubic[2] / 3.0 + s * cubic[3] / 4.0)))
}
