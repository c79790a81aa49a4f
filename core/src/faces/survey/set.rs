//! The readings of one survey on one piece, as typed and as they stand in the book.

use super::super::uncertainty::Doubt;
use super::super::unit_slip::{UnitSlip, unit_slips};
use super::{Place, Survey, piece_words};
use crate::kept_fields;
use crate::language::said;
use crate::letters::{capital, is_letter};
use crate::limits::{Gauge, GaugeKind};
use crate::quantity::{Fault, Reading, Unit};
use crate::trochoid::{Geometry, Trochoid};
use pitleaf_translated::translated;
use std::fmt;
use uom::si::f64::Length;

/// All readings of a survey on a piece: one entry of the book.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ReadingSet {
    /// What was read.
    pub of: Survey,
    /// On which piece; empty where there is only one.
    pub piece: String,
    /// The unit of every text that names none.
    pub unit: Unit,
    /// The gauge.
    pub gauge: GaugeKind,
    /// The readings, in the order of the survey's places; places not read are left out.
    pub readings: Vec<PlacedReading>,
    /// Where the builder gives the places: rows of place and reading, as typed.
    pub rows: String,
    /// The unit of every place in those rows that names none.
    pub places_in: Option<Unit>,
}

kept_fields!(ReadingSet {
    of,
    piece: left_out,
    unit,
    gauge,
    readings,
    rows: left_out,
    places_in: left_out,
});

/// A reading at a place, as typed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PlacedReading {
    /// The place's name.
    pub place: String,
    /// As typed.
    pub text: String,
}

kept_fields!(PlacedReading { place, text });

/// A text that can't be read, and where.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SetFault {
    /// The place's name.
    pub place: String,
    /// What is wrong.
    pub fault: PlaceFault,
}

/// What is wrong at a place.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum PlaceFault {
    /// A figure that can't be read.
    Figure(Fault),
    /// A row of so many figures, where it takes three.
    Figures(usize),
    /// A place that was given before, by its name.
    Again(String),
}

impl fmt::Display for PlaceFault {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Figure(fault) => fault.fmt(f),
            Self::Figures(found) => write!(
                f,
                "a row takes three figures, and here {} {found}. Give along, across and the reading, a blank between them.",
                if *found == 1 { "is" } else { "are" }
            ),
            Self::Again(first) => {
                write!(f, "the same place as {first}. Take one of the two out.")
            }
        }
    }
}

impl fmt::Display for SetFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {}", capital(&self.place), self.fault)
    }
}

/// The readings of a set, each at its place.
#[derive(Clone, Debug, PartialEq)]
pub struct Taken {
    /// What was read.
    pub survey: Survey,
    /// The survey's places.
    pub places: Vec<Place>,
    /// The reading at each; none where nothing was read.
    pub readings: Vec<Option<Reading>>,
    /// What can be said for the gauge.
    pub doubt: Doubt,
    /// The unit to show results in.
    pub unit: Unit,
}

impl Taken {
    /// How many places are not read that the worst might be at; none where reading fewer is as good.
    #[must_use]
    pub fn unread(&self) -> usize {
        if self.survey.is_whole_by_places() {
            self.readings.iter().filter(|reading| reading.is_none()).count()
        } else {
            0
        }
    }
}

/// A survey's places where only their names count.
fn places_of(survey: Survey) -> Vec<Place> {
    survey.places(Geometry::preset().bore())
}

impl ReadingSet {
    /// A set from the texts at a survey's places, in order; empty texts are left out. Where the builder
    /// gives the places: the rows, then the unit of their places.
    #[must_use]
    pub fn typed(of: Survey, piece: &str, unit: Unit, texts: &[String]) -> Self {
        let (rows, places_in) = match texts {
            [rows, places_in] if of == Survey::OwnPlaces => (rows.as_str(), Unit::named(places_in)),
            _ => ("", None),
        };
        let readings =
            places_of(of).into_iter().zip(texts).filter(|(_, text)| !text.trim().is_empty());
        let readings = readings
            .map(|(place, text)| PlacedReading { place: place.name, text: text.trim().to_owned() })
            .collect();
        let (piece, rows) = (piece.to_owned(), rows.trim_end().to_owned());
        Self { of, piece, unit, gauge: of.gauge(), readings, rows, places_in }
    }

    /// The texts as [`typed`](Self::typed) takes them; empty where nothing was read.
    #[must_use]
    pub fn texts(&self) -> Vec<String> {
        if self.of == Survey::OwnPlaces {
            return vec![self.rows.clone(), self.places_in().symbol().to_owned()];
        }
        let at = |place: &Place| self.readings.iter().find(|reading| reading.place == place.name);
        let text =
            |place: &Place| at(place).map(|reading| reading.text.clone()).unwrap_or_default();
        places_of(self.of).iter().map(text).collect()
    }

    /// Whether every text can be read. Of what is read nothing is said: that takes the builder's gauge and
    /// the engine's own bore, as [`read_with`](Self::read_with) has them.
    #[must_use]
    pub fn is_readable(&self) -> bool {
        let bore = Geometry::preset().bore();
        self.read_with(&Gauge::usual(self.gauge), bore).is_ok()
    }

    /// Reads every text, with the doubt of a gauge, on the parts of an engine with this bore.
    ///
    /// # Errors
    /// The first [`SetFault`].
    pub fn read_with(&self, gauge: &Gauge, bore: Trochoid) -> Result<Taken, SetFault> {
        let mut places = self.of.places(bore);
        let mut readings = Vec::with_capacity(places.len());
        for (place, text) in places.iter().zip(self.texts()) {
            let read = |text: &str| Reading::read(text, self.unit, place.bounds);
            let reading = (!text.is_empty()).then(|| read(&text)).transpose();
            readings.push(reading.map_err(|fault| SetFault {
                place: place.name.clone(),
                fault: PlaceFault::Figure(fault),
            })?);
        }
        let (given, mut faults) = self.given();
        if !faults.is_empty() {
            return Err(faults.swap_remove(0));
        }
        for (place, reading) in given {
            places.push(place);
            readings.push(Some(reading));
        }
        // A bare 0 is where the gauge was set: it says nothing of the last digit.
        let set_there = |reading: &&Reading| !matches!(reading.number(), "0" | "-0" | "−0");
        let read: Vec<Reading> = readings.iter().flatten().filter(set_there).cloned().collect();
        let doubt = Doubt::of(&read, gauge);
        Ok(Taken { survey: self.of, places, readings, doubt, unit: self.unit })
    }

    /// The readings as a list: each place's number, its name, and its figure with the unit.
    #[must_use]
    pub fn lines(&self) -> Vec<(usize, String, String)> {
        let mut lines = Vec::new();
        let mut add = |at: usize, name: String, text: &str| {
            let has_unit = text.chars().any(is_letter);
            let figure =
                if has_unit { text.to_owned() } else { format!("{text} {}", self.unit.symbol()) };
            lines.push((at, said(&name), figure));
        };
        for (at, (place, text)) in places_of(self.of).into_iter().zip(self.texts()).enumerate() {
            if !text.is_empty() {
                add(at, place.name, &text);
            }
        }
        for (at, (place, reading)) in self.given().0.into_iter().enumerate() {
            add(at, place.name, reading.text());
        }
        lines
    }

    /// Whether nothing was read.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.count() == 0
    }

    fn count(&self) -> usize {
        self.readings.len() + self.rows.lines().filter(|row| !row.trim().is_empty()).count()
    }

    /// What was read and on which piece, for a heading.
    #[must_use]
    pub fn about(&self) -> String {
        if self.piece.is_empty() {
            self.of.name().to_owned()
        } else {
            format!("{} · {}", piece_words(&self.piece), self.of.name())
        }
    }

    /// How many were read, in words.
    #[must_use]
    #[translated]
    pub fn count_words(&self) -> String {
        match self.count() {
            1 => "1 reading".to_owned(),
            count => format!("{count} readings"),
        }
    }
}

impl Taken {
    /// The lengths read, with the number of the place of each.
    #[must_use]
    pub fn lengths(&self) -> Vec<(usize, Length)> {
        let read = self.readings.iter().enumerate();
        read.filter_map(|(place, reading)| Some((place, reading.as_ref()?.amount().length()?)))
            .collect()
    }

    /// The length at a place.
    #[must_use]
    pub fn length(&self, place: usize) -> Option<Length> {
        self.readings.get(place)?.as_ref()?.amount().length()
    }

    /// Readings off by the factor between inch and millimetre, to be asked about: the place of each, and
    /// the question. Only readings of one kind are compared.
    #[must_use]
    pub fn slips(&self) -> Vec<(usize, UnitSlip)> {
        if matches!(self.survey, Survey::Straightedge | Survey::Lapping | Survey::PlasticGauge) {
            return Vec::new();
        }
        let like = |place: usize| self.places[place].bounds == self.places[0].bounds;
        let read: Vec<usize> = (0..self.readings.len())
            .filter(|&place| self.readings[place].is_some() && like(place))
            .collect();
        let readings: Vec<Reading> =
            read.iter().filter_map(|&place| self.readings[place].clone()).collect();
        unit_slips(&readings).into_iter().map(|slip| (read[slip.reading], slip)).collect()
    }

    /// A reading's figure in the unit it may have been meant in; none where no unit fits.
    #[must_use]
    pub fn meant(&self, place: usize, slip: &UnitSlip) -> Option<String> {
        let figure = self.readings.get(place)?.as_ref()?.number();
        Some(format!("{figure} {}", slip.meant?.symbol()))
    }

    /// The name of a place, which is its key in the book.
    pub(in super::super) fn name(&self, place: usize) -> &str {
        &self.places[place].name
    }

    /// The name of a place as it is said.
    pub(in super::super) fn said(&self, place: usize) -> String {
        said(self.name(place))
    }
}
