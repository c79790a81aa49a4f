//! Places that the builder gives: rows of where and how high.

use super::super::input::{millimetres, of_mm};
use super::{Place, PlaceFault, ReadingSet, SetFault, Survey};
use crate::gather::Gather;
use crate::letters::is_letter;
use crate::quantity::{Bounds, Fault, Reading, Unit, cells};
use uom::si::f64::Length;

/// How far from the shaft's axis a place of a face can lie.
const ALONG: Bounds = millimetres("A place along the long axis", -500, 500);
const ACROSS: Bounds = millimetres("A place across the long axis", -500, 500);

impl ReadingSet {
    /// The unit of places that name none: the one that was set, else millimetres.
    #[must_use]
    pub fn places_in(&self) -> Unit {
        self.places_in.unwrap_or(Unit::Millimetre)
    }

    /// The places of the rows with their readings, and every row that can't be read. A row is: along the
    /// long axis, plus towards 12 o'clock; across it, plus towards 3 o'clock; the reading. Rows count
    /// from 1, empty ones too, and are parted by tabs or semicolons, else by blanks, else by commas.
    ///
    /// # Examples
    /// *A place in inches among millimetres, and a row that lacks its reading:*
    /// ```
    /// use pitleaf_core::faces::{ReadingSet, Survey};
    /// use pitleaf_core::quantity::Unit;
    /// let rows = ["2in -30,5 0,02\n10 20".to_owned(), "mm".to_owned()];
    /// let set = ReadingSet::typed(Survey::OwnPlaces, "front", Unit::Millimetre, &rows);
    /// let (given, faults) = set.given();
    /// assert_eq!(given[0].0.name, "row 1 (2 in, -30,5 mm)");
    /// assert!(faults[0].to_string().starts_with("Row 2: a row takes three figures"));
    /// ```
    #[must_use]
    pub fn given(&self) -> (Vec<(Place, Reading)>, Vec<SetFault>) {
        let mut given: Vec<(Place, Reading)> = Vec::new();
        let mut rows: Vec<(usize, [Reading; 2])> = Vec::new();
        let mut faults = Vec::new();
        for (row, line) in (1..).zip(self.rows.lines()).filter(|(_, line)| !line.trim().is_empty())
        {
            match self.row(row, line) {
                Err(fault) => faults.push(fault),
                Ok((at, reading)) => {
                    let is_here = |(_, other): &&(usize, [Reading; 2])| {
                        (0..2).all(|axis| other[axis].amount() == at[axis].amount())
                    };
                    if let Some((first, _)) = rows.iter().find(is_here) {
                        faults.push(fault_in(row, "", PlaceFault::Again(*first)));
                    } else {
                        given.push((place(row, &at), reading));
                        rows.push((row, at));
                    }
                }
            }
        }
        (given, faults)
    }

    /// A row's place and its reading.
    fn row(&self, row: usize, line: &str) -> Result<([Reading; 2], Reading), SetFault> {
        let figures = figures(line);
        let [along, across, height] = figures.as_slice() else {
            return Err(fault_in(row, "", PlaceFault::Figures(figures.len())));
        };
        let read = |text: &str, unit: Unit, bounds: &'static Bounds, what: &str| {
            match Reading::read(text, unit, bounds) {
                // As spreadsheets write a place on the axis.
                Err(Fault::MinusZero) if !what.is_empty() => Reading::read("0", unit, bounds),
                read => read,
            }
            .map_err(|fault| fault_in(row, what, PlaceFault::Figure(fault)))
        };
        let at = [
            read(along, self.places_in(), &ALONG, ", along")?,
            read(across, self.places_in(), &ACROSS, ", across")?,
        ];
        Ok((at, read(height, self.unit, Survey::OwnPlaces.bounds(), "")?))
    }

    /// Puts another reading into a row; `place` counts the rows that hold something, from 0.
    pub fn put(&mut self, place: usize, reading: &str) {
        let mut held = 0;
        let rows = self.rows.lines().map(|line| {
            let is_it = !line.trim().is_empty() && held == place;
            held += usize::from(!line.trim().is_empty());
            let mut figures = figures(line);
            match figures.last_mut() {
                Some(last) if is_it => {
                    reading.clone_into(last);
                    figures.join("; ")
                }
                _ => line.to_owned(),
            }
        });
        self.rows = rows.gather::<Vec<_>>().join("\n");
    }
}

/// A row's figures, each with the unit that stands behind it.
fn figures(line: &str) -> Vec<String> {
    let marks = [';', '\t'];
    if line.contains(marks) {
        let cells = line.split(marks).map(|cell| cell.trim().to_owned());
        return cells.filter(|cell| !cell.is_empty()).gather();
    }
    let mut figures: Vec<String> = Vec::new();
    for cell in cells(line) {
        let is_unit = cell.starts_with(|c| is_letter(c) || matches!(c, '"' | '″'));
        match figures.last_mut() {
            Some(figure) if is_unit => {
                figure.push(' ');
                figure.push_str(cell);
            }
            _ => figures.push(cell.to_owned()),
        }
    }
    figures
}

/// A row's place in the housing frame, whose y points away from 3 o'clock.
fn place(row: usize, [along, across]: &[Reading; 2]) -> Place {
    let told = |reading: &Reading| format!("{} {}", reading.number(), reading.unit().symbol());
    let length = |reading: &Reading| reading.amount().length().unwrap_or_else(|| of_mm(0.0));
    let at: [Length; 2] = [length(along), -length(across)];
    Place {
        name: format!("row {row} ({}, {})", told(along), told(across)),
        at: Some(at),
        bounds: Survey::OwnPlaces.bounds(),
    }
}

fn fault_in(row: usize, what: &str, fault: PlaceFault) -> SetFault {
    SetFault { place: format!("row {row}{what}"), fault }
}
