//! Pages of a template in SVG: one unit of the drawing is one millimetre of paper.

use pitleaf_translated::tr;
use std::fmt::{self, Write};

use crate::{decimal::Decimal, trochoid::Point};

/// The paper in the printer.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Paper {
    /// 210 × 297 mm (ISO 216).
    A4,
    /// 8½ × 11 in.
    Letter,
}

impl Paper {
    /// Width and height upright, in mm.
    const fn size(self) -> (f64, f64) {
        match self {
            Self::A4 => (210.0, 297.0),
            Self::Letter => (215.9, 279.4),
        }
    }
}

/// One page of a template.
#[derive(Debug, Clone, PartialEq)]
pub struct Sheet {
    /// The page as SVG, its width and height in mm.
    pub svg: String,
    /// The page's width in mm.
    pub width: f64,
    /// The page's height in mm.
    pub height: f64,
}

/// What printers can't reach, on every side.
const EDGE: f64 = 10.0;
/// The strip at the foot of each page for the check bars and words.
const FOOT: f64 = 24.0;
/// How much neighbouring pages share.
const SHARED: f64 = 15.0;
/// The check bars.
const BARS: [(f64, &str); 2] = [(50.0, "50 mm"), (50.8, "2 in")];

/// Everything that is drawn, in mm with y upward.
pub(super) struct Drawing<'a> {
    pub(super) bore: Vec<Point>,
    pub(super) outlines: Vec<Vec<Point>>,
    pub(super) holes: Vec<(Point, f64)>,
    pub(super) title: &'a str,
    pub(super) mirrored: bool,
}

/// A grid of equal pages over the drawing.
struct Tiling {
    /// Width and height of a page.
    page: (f64, f64),
    /// Width and height of the part drawn on.
    field: (f64, f64),
    columns: u32,
    rows: u32,
    /// The drawing's place at the top left of the first field.
    start: Point,
}

impl Drawing<'_> {
    pub(super) fn sheets(&self, paper: Paper) -> Vec<Sheet> {
        let (width, height) = paper.size();
        let upright = self.tiling((width, height));
        let across = self.tiling((height, width));
        let fewer = across.columns * across.rows < upright.columns * upright.rows;
        let tiling = if fewer { across } else { upright };
        (0..tiling.rows)
            .flat_map(|row| (0..tiling.columns).map(move |column| (column, row)))
            .map(|(column, row)| Sheet {
                svg: self.page(&tiling, column, row),
                width: tiling.page.0,
                height: tiling.page.1,
            })
            .collect()
    }

    fn tiling(&self, page: (f64, f64)) -> Tiling {
        let (low, high) = self.extent();
        let field = (page.0 - 2.0 * EDGE, page.1 - 2.0 * EDGE - FOOT);
        let count = |whole: f64, field: f64| {
            (1..).find(|n| f64::from(*n) * (field - SHARED) + SHARED >= whole).unwrap_or(1)
        };
        let (columns, rows) = (count(high.x - low.x, field.0), count(high.y - low.y, field.1));
        let spread = |n: u32, field: f64| f64::from(n) * (field - SHARED) + SHARED;
        let start = Point {
            x: 0.5 * (low.x + high.x - spread(columns, field.0)),
            y: 0.5 * (low.y + high.y + spread(rows, field.1)),
        };
        Tiling { page, field, columns, rows, start }
    }

    fn extent(&self) -> (Point, Point) {
        let holes = self.holes.iter().flat_map(|(centre, radius)| {
            [-radius, *radius].map(|side| Point { x: centre.x + side, y: centre.y + side })
        });
        let points = self.bore.iter().chain(self.outlines.iter().flatten()).copied().chain(holes);
        points.fold(
            (Point { x: f64::MAX, y: f64::MAX }, Point { x: f64::MIN, y: f64::MIN }),
            |(low, high), p| {
                let low = Point { x: low.x.min(p.x), y: low.y.min(p.y) };
                (low, Point { x: high.x.max(p.x), y: high.y.max(p.y) })
            },
        )
    }

    fn page(&self, tiling: &Tiling, column: u32, row: u32) -> String {
        let (width, height) = (Trimmed(tiling.page.0), Trimmed(tiling.page.1));
        let corner = Point {
            x: tiling.start.x + f64::from(column) * (tiling.field.0 - SHARED),
            y: tiling.start.y - f64::from(row) * (tiling.field.1 - SHARED),
        };
        let on_page = |p: Point| (EDGE + p.x - corner.x, EDGE + corner.y - p.y);
        let edge = mm(EDGE);
        let mut svg = String::new();
        // Writing to a string can't fail.
        let mut put = |piece: std::fmt::Arguments<'_>| svg.write_fmt(piece).unwrap_or_default();
        put(format_args!(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width}mm\" height=\"{height}mm\" \
             viewBox=\"0 0 {width} {height}\" fill=\"none\" stroke=\"#000\" stroke-width=\"0.2\">\n\
             <clipPath id=\"field-{column}-{row}\"><rect x=\"{edge}\" y=\"{edge}\" width=\"{}\" \
             height=\"{}\"/></clipPath>\n<g clip-path=\"url(#field-{column}-{row})\">\n",
            mm(tiling.field.0),
            mm(tiling.field.1)
        ));
        put(format_args!("{}", path("bore", &self.bore, on_page)));
        for outline in &self.outlines {
            put(format_args!("{}", path("port", outline, on_page)));
        }
        for (centre, radius) in &self.holes {
            let (x, y) = on_page(*centre);
            put(format_args!(
                "<circle class=\"datum\" cx=\"{}\" cy=\"{}\" r=\"{}\"/>\n",
                mm(x),
                mm(y),
                mm(*radius)
            ));
            put(format_args!("{}", cross("datum-centre", (x, y), radius + 3.0)));
        }
        put(format_args!("{}", centre_lines(self.extent(), on_page)));
        for joint in tiling.joints() {
            put(format_args!("{}", cross("joint", on_page(joint), 3.0)));
        }
        put(format_args!("</g>\n{}", self.foot(tiling, column, row)));
        svg.push_str("</svg>\n");
        svg
    }

    /// The check bars and the words below the drawing.
    fn foot(&self, tiling: &Tiling, column: u32, row: u32) -> String {
        let top = tiling.page.1 - EDGE - FOOT;
        let mut foot = String::new();
        for (i, (length, name)) in (0..).zip(BARS) {
            let y = top + 5.0 + 7.0 * f64::from(i);
            let end = EDGE + length;
            let (start, up, down) = (mm(EDGE), mm(y - 2.0), mm(y + 2.0));
            foot += &format!(
                "<path class=\"check-bar\" d=\"M{start} {up}V{down}M{start} {}H{}M{} {up}V{down}\"/>\n",
                mm(y),
                mm(end),
                mm(end)
            );
            foot += &words(end + 2.0, y + 1.2, name);
        }
        let page = row * tiling.columns + column + 1;
        let pages = tiling.columns * tiling.rows;
        let turned =
            if self.mirrored { tr!("mirrored: lay it face down") } else { tr!("lay it face up") };
        let title = escaped(self.title);
        foot += &words(EDGE, top + 18.5, &tr!("{title} · {turned} · page {page} of {pages}"));
        foot += &words(
            EDGE,
            top + 23.0,
            tr!("Print at 100 % and measure both bars before you scribe."),
        );
        foot
    }
}

impl Tiling {
    /// The places at which neighbouring pages are joined: two in each strip they share.
    fn joints(&self) -> Vec<Point> {
        let (step, drop) = (self.field.0 - SHARED, self.field.1 - SHARED);
        let mut joints = Vec::new();
        for row in 0..self.rows {
            for column in 1..self.columns {
                for share in [0.3, 0.7] {
                    joints.push(Point {
                        x: self.start.x + f64::from(column) * step + 0.5 * SHARED,
                        y: self.start.y - f64::from(row) * drop - share * self.field.1,
                    });
                }
            }
        }
        for row in 1..self.rows {
            for column in 0..self.columns {
                for share in [0.3, 0.7] {
                    joints.push(Point {
                        x: self.start.x + f64::from(column) * step + share * self.field.0,
                        y: self.start.y - f64::from(row) * drop - 0.5 * SHARED,
                    });
                }
            }
        }
        joints
    }
}

fn mm(value: f64) -> Decimal {
    Decimal(value, 3)
}

/// Millimetres without trailing zeros.
struct Trimmed(f64);

impl fmt::Display for Trimmed {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(mm(self.0).to_string().trim_end_matches('0').trim_end_matches('.'))
    }
}

fn path(class: &str, points: &[Point], on_page: impl Fn(Point) -> (f64, f64)) -> String {
    let mut data = String::new();
    for (i, point) in points.iter().enumerate() {
        let (x, y) = on_page(*point);
        data += &format!("{}{} {}", if i == 0 { "M" } else { "L" }, mm(x), mm(y));
    }
    format!("<path class=\"{class}\" d=\"{data}Z\"/>\n")
}

fn cross(class: &str, (x, y): (f64, f64), arm: f64) -> String {
    let (left, right, up, down) = (mm(x - arm), mm(x + arm), mm(y - arm), mm(y + arm));
    let (x, y) = (mm(x), mm(y));
    format!("<path class=\"{class}\" d=\"M{left} {y}H{right}M{x} {up}V{down}\"/>\n")
}

fn centre_lines((low, high): (Point, Point), on_page: impl Fn(Point) -> (f64, f64)) -> String {
    let (x, y) = on_page(Point::default());
    let (left, top) = on_page(Point { x: low.x, y: high.y });
    let (right, bottom) = on_page(Point { x: high.x, y: low.y });
    let [x, y, left, top, right, bottom] = [x, y, left, top, right, bottom].map(mm);
    format!(
        "<path class=\"centre-line\" stroke-dasharray=\"8 2 1 2\" d=\"M{left} {y}H{right}M{x} \
         {top}V{bottom}\"/>\n"
    )
}

fn words(x: f64, y: f64, text: &str) -> String {
    let (x, y) = (mm(x), mm(y));
    format!(
        "<text x=\"{x}\" y=\"{y}\" font-family=\"sans-serif\" font-size=\"3.6\" fill=\"#000\" \
         stroke=\"none\">{text}</text>\n"
    )
}

fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;")
}
