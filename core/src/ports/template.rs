//! What a template to scribe from shows, laid out at its true size.

use pitleaf_translated::translated;
use std::fmt;

use uom::si::{f64::Length, length::millimeter};

use super::{Outline, Sheet, sheet::Drawing, sheet::Paper};
use crate::trochoid::{Engine, Millimetres, Point};

/// A hole the template is laid on by: a dowel, a stud or any other.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Datum {
    /// Its centre.
    pub centre: Point,
    /// Its diameter.
    pub diameter: Length,
}

/// A 1:1 template of outlines on the bore.
#[derive(Debug, Clone, PartialEq)]
pub struct Template<'a> {
    /// The engine whose bore is drawn.
    pub engine: &'a Engine,
    /// The outlines, as seen on the face.
    pub outlines: &'a [Outline],
    /// The holes to lay it on by.
    pub datums: &'a [Datum],
    /// Whether the sheet is turned over to be laid on the face, and so drawn mirrored in the short
    /// axis.
    pub mirrored: bool,
    /// What the sheet is for, in a few words.
    pub title: &'a str,
}

/// Why no template can be drawn.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum TemplateFault {
    /// There is no outline to scribe.
    NoOutline,
    /// A hole's diameter is none or not a number, or the hole is off the plate.
    Datum {
        /// Which one, from 1.
        number: usize,
        /// Its diameter.
        diameter: Length,
    },
}

impl fmt::Display for TemplateFault {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NoOutline => write!(f, "there is no outline to scribe: draw a port first"),
            Self::Datum { number, diameter } => write!(
                f,
                "hole {number} with a diameter of {} is not on this plate: check its place and its \
                 diameter",
                Millimetres(*diameter)
            ),
        }
    }
}

impl std::error::Error for TemplateFault {}

impl Template<'_> {
    /// The template's pages on the given paper, each a drawing in SVG of exactly the paper's size,
    /// to be printed at 100 %. Where one page is too small, the pages overlap and bear crosses at
    /// the same places to join them by.
    ///
    /// # Errors
    /// If there is no outline, or a hole can't be.
    pub fn sheets(&self, paper: Paper) -> Result<Vec<Sheet>, TemplateFault> {
        if self.outlines.is_empty() {
            return Err(TemplateFault::NoOutline);
        }
        for (number, datum) in (1..).zip(self.datums) {
            let size = datum.diameter.get::<millimeter>();
            let fits = (0.1..=100.0).contains(&size) && datum.centre.norm() < 500.0;
            if !fits {
                return Err(TemplateFault::Datum { number, diameter: datum.diameter });
            }
        }
        let side =
            |point: &Point| if self.mirrored { Point { x: -point.x, y: point.y } } else { *point };
        let bore = self.engine.geometry().bore().polyline(1440);
        let lines = |points: &[Point]| points.iter().map(side).collect::<Vec<_>>();
        let drawing = Drawing {
            bore: lines(&bore),
            outlines: self.outlines.iter().map(|outline| lines(outline.points())).collect(),
            holes: self
                .datums
                .iter()
                .map(|datum| (side(&datum.centre), 0.5 * datum.diameter.get::<millimeter>()))
                .collect(),
            title: self.title,
            mirrored: self.mirrored,
        };
        Ok(drawing.sheets(paper))
    }
}
