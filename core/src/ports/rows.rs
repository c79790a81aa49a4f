//! An outline pasted as rows of text.

use crate::kept_words;
use pitleaf_translated::translated;
use std::fmt;

use uom::si::{f64::Length, length::millimeter};

use super::Corner;
use crate::{
    quantity::{Fault, Number, Unit, cells},
    trochoid::Point,
};

/// What the first two numbers of a row are.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Form {
    /// x and y.
    Coordinates,
    /// The distance from the shaft's axis, and the angle from the long axis in degrees,
    /// anticlockwise.
    RadiusAndAngle,
}

kept_words!(Form {
    Coordinates = "coordinates",
    RadiusAndAngle = "radius-and-angle",
});

/// What is wrong with a row. Rows count from 1; empty ones count too.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct RowFault {
    /// The row.
    pub row: usize,
    kind: Kind,
}

#[derive(Debug, Clone, PartialEq, Eq)]
enum Kind {
    Count(usize),
    Number(Fault),
}

impl fmt::Display for RowFault {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match &self.kind {
            Kind::Count(1) => write!(
                f,
                "row {}: one number found, give two, or three with the corner's radius",
                self.row
            ),
            Kind::Count(found) => write!(
                f,
                "row {}: {found} numbers found, give two, or three with the corner's radius",
                self.row
            ),
            Kind::Number(fault) => write!(f, "row {}: {fault}", self.row),
        }
    }
}

impl std::error::Error for RowFault {}

/// Reads corners from rows of two or three numbers: the place, and the corner's radius where there
/// is one. Numbers are parted by blanks, tabs or semicolons, so that a comma can be the decimal one;
/// a row without any of those is parted by its commas. Empty rows are skipped.
///
/// # Errors
/// Every row that can't be read.
///
/// # Examples
/// A decimal comma and a decimal point, with a corner radius in the second row:
/// ```
/// use pitleaf_core::{ports::{Form, read_rows}, quantity::Unit};
///
/// let corners = read_rows("10,5; 20\n-3.25 4 1.5", Unit::Millimetre, Form::Coordinates).unwrap();
/// assert_eq!(corners[0].point.millimetres(), (10.5, 20.0));
/// assert_eq!(corners[1].point.millimetres(), (-3.25, 4.0));
/// ```
pub fn read_rows(text: &str, unit: Unit, form: Form) -> Result<Vec<Corner>, Vec<RowFault>> {
    read_with(text, |cells| corner(cells, unit, form))
}

/// Reads edges of a port in the bore: as [`read_rows`], or by the angle alone where rows are given by
/// radius and angle; `on_bore` gives the place at an angle in degrees.
pub(super) fn read_edges(
    text: &str,
    unit: Unit,
    form: Form,
    on_bore: impl Fn(f64) -> Point,
) -> Result<Vec<Corner>, Vec<RowFault>> {
    read_with(text, |cells| match (form, cells) {
        (Form::RadiusAndAngle, [angle]) => {
            Ok(Corner { point: on_bore(number(angle)?), radius: Length::default() })
        }
        _ => corner(cells, unit, form),
    })
}

fn read_with(
    text: &str,
    corner: impl Fn(&[&str]) -> Result<Corner, Kind>,
) -> Result<Vec<Corner>, Vec<RowFault>> {
    let mut corners = Vec::new();
    let mut faults = Vec::new();
    for (row, line) in (1..).zip(text.lines()) {
        if line.trim().is_empty() {
            continue;
        }
        match corner(&cells(line)) {
            Ok(corner) => corners.push(corner),
            Err(kind) => faults.push(RowFault { row, kind }),
        }
    }
    if faults.is_empty() { Ok(corners) } else { Err(faults) }
}

fn corner(cells: &[&str], unit: Unit, form: Form) -> Result<Corner, Kind> {
    let (first, second, radius) = match *cells {
        [first, second] => (first, second, "0"),
        [first, second, radius] => (first, second, radius),
        _ => return Err(Kind::Count(cells.len())),
    };
    let (first, second) = (number(first)?, number(second)?);
    let scale = if unit == Unit::Inch { 25.4 } else { 1.0 };
    let point = match form {
        Form::Coordinates => Point { x: first * scale, y: second * scale },
        Form::RadiusAndAngle => Point::polar(first * scale, second.to_radians()),
    };
    Ok(Corner { point, radius: Length::new::<millimeter>(number(radius)? * scale) })
}

fn number(cell: &str) -> Result<f64, Kind> {
    match Number::read(cell) {
        Ok(number) => Ok(number.value()),
        // Drawing programs write -0.000; here it is a place like any other.
        Err(Fault::MinusZero) => Ok(0.0),
        Err(fault) => Err(Kind::Number(fault)),
    }
}
