//! Places that the builder gives: rows of where and how high.

use super::super::input::millimetres;
use super::{Place, PlaceFault, ReadingSet, SetFault};
use crate::letters::is_letter;
use crate::quantity::{Bounds, Fault, Reading, Unit, cells};
use pitleaf_translated::{tr, translated};

/// How far from the shaft's axis a place of a face can lie.
const ALONG: Bounds = millimetres(tr!("A place along the long axis"), -500, 500);
const ACROSS: Bounds = millimetres(tr!("A place across the long axis"), -500, 500);

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
        let mut faults = Vec::new();
        for (row, line) in (1..).zip(self.rows.lines()) {
            if line.trim().is_empty() {
                continue;
            }
            match self.row(row, line) {
                Err(fault) => faults.push(fault),
                Ok((place, reading)) => {
                    match given.iter().find(|(other, _)| other.at == place.at) {
                        Some((first, _)) => {
                            faults.push(fault_in(row, "", PlaceFault::Again(first.name.clone())));
                        }
                        None => given.push((place, reading)),
                    }
                }
            }
        }
        (given, faults)
    }

    /// A row's place and its reading.
    #[translated]
    fn row(&self, row: usize, line: &str) -> Result<(Place, Reading), SetFault> {
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
        let along = read(along, self.places_in(), &ALONG, ", along")?;
        let across = read(across, self.places_in(), &ACROSS, ", across")?;
        let height = read(height, self.unit, self.of.bounds(), "")?;
        let length = |reading: &Reading| reading.amount().length().unwrap_or_default();
        let place = Place {
            name: format!(
                "row {row} ({} {}, {} {})",
                along.number(),
                along.unit().symbol(),
                across.number(),
                across.unit().symbol()
            ),
            // The housing's y points away from 3 o'clock.
            at: Some([length(&along), -length(&across)]),
            bounds: self.of.bounds(),
        };
        Ok((place, height))
    }

    /// Puts another reading into a row; `place` counts the rows that hold something, from 0.
    pub fn put(&mut self, place: usize, reading: &str) {
        let mut held = 0;
        let mut rows = String::new();
        for line in self.rows.lines() {
            let mut figures = figures(line);
            let is_it = held == place;
            match figures.last_mut() {
                Some(last) => {
                    held += 1;
                    if is_it {
                        reading.clone_into(last);
                        rows.push_str(&figures.join("; "));
                    } else {
                        rows.push_str(line);
                    }
                }
                None => rows.push_str(line),
            }
            rows.push('\n');
        }
        rows.truncate(rows.trim_end().len());
        self.rows = rows;
    }
}

/// A row's figures, each with the unit that stands behind it.
fn figures(line: &str) -> Vec<String> {
    let parts = |c: char| c == ';' || c == '\t';
    let cells: Vec<&str> = if line.contains(parts) {
        line.split(parts).map(str::trim).filter(|cell| !cell.is_empty()).collect()
    } else {
        cells(line)
    };
    let mut figures: Vec<String> = Vec::new();
    for cell in cells {
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

#[translated]
fn fault_in(row: usize, what: &str, fault: PlaceFault) -> SetFault {
    SetFault { place: format!("row {row}{what}"), fault }
}
