//! Compression: each rotor's three faces as read, at a stated cranking speed and altitude.
//!
//! Nothing is corrected: shops correct for speed in different ways and no published rule is at hand, so
//! the figures stand as read beside their speed and altitude.

use super::decision::decided;
use super::description::current;
use super::fact::subject_of_test;
use super::{Choice, RouteFact};
use crate::book::{Book, BuildId, Fact, Subject};
use crate::gather::Gather;
use crate::limits::{
    BuildKind, Call, Gauge, GaugeKind, Row, Sheet, decide, decide_with_uncertainty, limit_line,
};
use crate::quantity::{Bounds, Fault, Number, Reading, Rounding, Span, Unit, places_for};
use pitleaf_translated::{tr, translated};
use std::cmp::Ordering;
use std::fmt;

/// A rotor's test as typed.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct TypedTest {
    /// The rotor, from 1 at the front.
    pub rotor: String,
    /// The readings of the three faces, in the order the tester gave them.
    pub faces: [String; 3],
    /// Their unit, by its symbol.
    pub unit: String,
    /// Cranking speed, in turns a minute.
    pub speed: String,
    /// Altitude above the sea, with its unit.
    pub altitude: String,
}

/// The least and the greatest cranking speed taken, in turns of the shaft a minute.
pub const SPEEDS: (i64, i64) = (50, 1000);

const PRESSURE: Bounds =
    Bounds { name: tr!("A compression reading"), lowest: 0, highest: 3000, unit: Unit::Kilopascal };
const ALTITUDE: Bounds =
    Bounds { name: tr!("An altitude"), lowest: -500, highest: 6000, unit: Unit::Metre };

/// What is wrong with a test as typed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum CompressionFault {
    /// A face's reading, counted from 1.
    Face(usize, Fault),
    /// The unit is none of pressure.
    Unit,
    /// The cranking speed.
    Speed,
    /// The altitude.
    Altitude(Fault),
}

/// A test that could be read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Compression {
    /// The three faces.
    pub faces: [Reading; 3],
}

/// One figure of the record, and how it stands.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Finding {
    /// The rotor it is of; none between rotors.
    pub rotor: Option<u8>,
    /// What it is of; a decision on it goes by that name, which is the same in every language.
    pub what: String,
    /// In the unit read.
    pub figure: String,
    /// In the other system.
    pub other: String,
    /// The row it stands against; none where the sheet has none.
    pub row: Option<String>,
    /// How it stands.
    pub call: Option<Call>,
}

impl TypedTest {
    pub(super) fn texts(&self) -> Vec<String> {
        let [one, two, three] = self.faces.clone();
        let Self { rotor, unit, speed, altitude, .. } = self.clone();
        vec![rotor, one, two, three, unit, speed, altitude]
    }

    pub(super) fn of_texts(mut next: impl FnMut() -> String) -> Result<Self, &'static str> {
        let rotor = next();
        let faces = [next(), next(), next()];
        Ok(Self { rotor, faces, unit: next(), speed: next(), altitude: next() })
    }

    /// In a line: faces, unit, speed, altitude.
    #[must_use]
    pub fn words(&self) -> String {
        format!("{} {}, {}", self.faces.join(" / "), self.unit, self.conditions())
    }

    /// Speed and altitude in words.
    #[must_use]
    #[translated]
    pub fn conditions(&self) -> String {
        format!("cranked at {} /min, {} above the sea", self.speed, self.altitude)
    }

    /// The test, read.
    ///
    /// # Errors
    /// The first [`CompressionFault`].
    pub fn read(&self) -> Result<Compression, CompressionFault> {
        let unit =
            Unit::named(&self.unit).filter(|unit| unit.dimension() == PRESSURE.unit.dimension());
        let unit = unit.ok_or(CompressionFault::Unit)?;
        let face = |index: usize| {
            Reading::read(&self.faces[index], unit, &PRESSURE)
                .map_err(|fault| CompressionFault::Face(index + 1, fault))
        };
        let faces = [face(0)?, face(1)?, face(2)?];
        let speed = Number::read(&self.speed).map_err(|_| CompressionFault::Speed)?;
        let (least, most) = SPEEDS;
        if speed.numerator() < least * speed.denominator()
            || speed.numerator() > most * speed.denominator()
        {
            return Err(CompressionFault::Speed);
        }
        Reading::read(&self.altitude, Unit::Metre, &ALTITUDE)
            .map_err(CompressionFault::Altitude)?;
        Ok(Compression { faces })
    }

    /// The last test of a rotor in the book.
    #[must_use]
    pub fn of<'book>(book: &'book Book, build: &BuildId, rotor: u8) -> Option<&'book Self> {
        match current(book, build, subject_of_test(&rotor.to_string()))? {
            RouteFact::Compression(test) => Some(test),
            _ => None,
        }
    }
}

impl Finding {
    /// The limit it stands against and where that is from, to be said behind the verdict; empty where it has none.
    #[must_use]
    #[translated]
    pub fn limit(&self, sheet: &Sheet) -> String {
        let row = self.row.as_deref().and_then(|row| sheet.row(row));
        row.map_or_else(String::new, |row| {
            format!(". Limit {}, {}", limit_line(&row.limit, row.unit), row.source.kind())
        })
    }

    /// Whether it is past its limit, so that it has to be decided what becomes of the part.
    #[must_use]
    pub fn is_past(&self) -> bool {
        matches!(self.call, Some(Call::DoesNotMeet(_)))
    }
}

/// The other system's unit of pressure.
fn other(unit: Unit) -> Unit {
    if unit == Unit::Psi { Unit::Kilopascal } else { Unit::Psi }
}

impl Compression {
    /// The lowest face.
    #[must_use]
    pub fn lowest(&self) -> &Reading {
        let by = |one: &&Reading, two: &&Reading| one.amount().order(two.amount());
        self.faces
            .iter()
            .min_by(|one, two| by(one, two).unwrap_or(Ordering::Equal))
            .unwrap_or(&self.faces[0])
    }

    /// Highest less lowest, exactly.
    #[must_use]
    pub fn spread(&self) -> Span {
        let spreads = self.faces.iter().map(|face| face.amount().minus(self.lowest().amount()));
        spreads
            .max_by(
                |one, two| {
                    if one.minus(*two).is_negative() { Ordering::Less } else { Ordering::Greater }
                },
            )
            .unwrap_or_else(|| self.faces[0].amount().minus(self.faces[0].amount()))
    }

    /// Mean of the three faces, in a unit: for the evenness between rotors.
    fn mean(&self, unit: Unit) -> f64 {
        self.faces.iter().map(|face| face.amount().value(unit)).sum::<f64>() / 3.0
    }

    /// The coarsest last digit of the three.
    fn step(&self) -> Span {
        let steps = self.faces.iter().map(Reading::step);
        steps
            .reduce(|one, two| if one.minus(two).is_negative() { two } else { one })
            .unwrap_or_else(|| self.faces[0].step())
    }

    fn unit(&self) -> Unit {
        self.faces[0].unit()
    }

    /// Each face, the lowest, and the spread, against the sheet.
    #[must_use]
    pub fn findings(&self, rotor: u8, kind: BuildKind, sheet: &Sheet) -> Vec<Finding> {
        let id = match kind {
            BuildKind::ForcedInduction => "compression-fi",
            _ => "compression-na",
        };
        let row = sheet.row(id).filter(|row| row.unit.dimension() == PRESSURE.unit.dimension());
        let gauge = Gauge::usual(GaugeKind::Other);
        let mut findings: Vec<Finding> = (1..)
            .zip(&self.faces)
            .map(|(face, reading): (u8, _)| {
                let call = row.map(|row| decide(&row.limit, reading, &gauge).call);
                let amount = reading.amount();
                let other = other(reading.unit());
                Finding {
                    rotor: Some(rotor),
                    what: format!("Rotor {rotor}, face {face}"),
                    figure: format!("{} {}", reading.number(), reading.unit().symbol()),
                    other: format!(
                        "{} {}",
                        amount.show(
                            other,
                            places_for(reading.step(), other).saturating_sub(1),
                            Rounding::Nearest
                        ),
                        other.symbol()
                    ),
                    row: row.map(|row| row.id.clone()),
                    call,
                }
            })
            .gather();
        // Two readings stand in a spread: their doubts add up in squares.
        let doubt = std::f64::consts::SQRT_2 * self.doubt(self.unit());
        findings.push(difference(
            Some(rotor),
            format!("Rotor {rotor}, spread over its faces"),
            self.spread(),
            self,
            doubt,
            sheet.row("compression-face-spread"),
        ));
        findings
    }

    /// The standard uncertainty of one face: its own last digit (JCGM 100:2008, 4.3.7).
    fn doubt(&self, unit: Unit) -> f64 {
        self.step().value(unit) / 12_f64.sqrt()
    }
}

/// A difference of pressures against a row for it.
fn difference(
    rotor: Option<u8>,
    what: String,
    span: Span,
    of: &Compression,
    doubt: f64,
    row: Option<&Row>,
) -> Finding {
    let unit = of.unit();
    let other = other(unit);
    let places = places_for(of.step(), unit).saturating_sub(1);
    let text = span.show(unit, places, Rounding::Nearest);
    // Judged before it is rounded for showing.
    let exact = span.show(unit, places + 4, Rounding::Nearest);
    let reading = Reading::read(&exact, unit, Bounds::widest(unit.dimension())).ok();
    let row = row.filter(|row| row.unit.dimension() == unit.dimension());
    let call = row
        .zip(reading)
        .zip(Span::nearest(doubt, unit))
        .map(|((row, reading), doubt)| decide_with_uncertainty(&row.limit, &reading, doubt).call);
    Finding {
        rotor,
        what,
        figure: format!("{text} {}", unit.symbol()),
        other: format!(
            "{} {}",
            span.show(other, places_for(of.step(), other).saturating_sub(1), Rounding::Nearest),
            other.symbol()
        ),
        row: row.map(|row| row.id.clone()),
        call,
    }
}

/// The whole record of a build: every rotor tested, and the evenness between them.
#[must_use]
pub fn record(tests: &[(u8, Compression)], kind: BuildKind, sheet: &Sheet) -> Vec<Finding> {
    let mut findings: Vec<Finding> =
        tests.iter().flat_map(|(rotor, test)| test.findings(*rotor, kind, sheet)).gather();
    if let [(_, first), _, ..] = tests {
        let unit = first.unit();
        let means = tests.iter().map(|(_, test)| test.mean(unit));
        let (least, most) = means
            .fold((f64::MAX, f64::MIN), |(least, most), mean| (least.min(mean), most.max(mean)));
        // A mean of three has a third of its variance, and two means stand in the difference.
        let doubt = (2.0_f64 / 3.0).sqrt()
            * tests.iter().map(|(_, test)| test.doubt(unit)).fold(0.0, f64::max);
        if let Some(span) = Span::nearest(most - least, unit) {
            let what = "Between rotors, highest mean less lowest".to_owned();
            findings.push(difference(
                None,
                what,
                span,
                first,
                doubt,
                sheet.row("compression-rotor-spread"),
            ));
        }
    }
    findings
}

/// The record of a build as the book has it, each figure with what was decided of it since it was read.
#[must_use]
pub fn record_in<'book>(
    book: &'book Book,
    build: &BuildId,
    sheet: &Sheet,
) -> Vec<(Finding, Option<(Choice, &'book str)>)> {
    let Some((_, kind, rotors, _)) = book.opening(build) else { return Vec::new() };
    let (mut orders, mut tests) = (Vec::new(), Vec::new());
    for rotor in 1..=rotors {
        let subject = Subject::Route(subject_of_test(&rotor.to_string()));
        if let Some(entry) = book.current(build, &subject)
            && let Fact::Route(RouteFact::Compression(typed)) = &entry.fact
            && let Ok(test) = typed.read()
        {
            orders.push((rotor, entry.order));
            tests.push((rotor, test));
        }
    }
    let mut found = Vec::new();
    for finding in record(&tests, kind, sheet) {
        // A word older than any test it is made of is no answer to it.
        let mut read = 0;
        for (rotor, order) in &orders {
            if finding.rotor.is_none_or(|of| of == *rotor) {
                read = read.max(*order);
            }
        }
        let row = finding.row.as_deref().unwrap_or_default();
        let decision = decided(book, build, (row, &finding.what), read);
        found.push((finding, decision));
    }
    found
}

impl fmt::Display for CompressionFault {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Face(face, fault) => write!(f, "Face {face}: {fault}"),
            Self::Unit => f.write_str("Give the readings in a unit of pressure: kPa, psi, bar."),
            Self::Speed => write!(
                f,
                "Give the cranking speed in turns a minute, {} to {}: a reading without it says little.",
                SPEEDS.0, SPEEDS.1
            ),
            Self::Altitude(Fault::Empty) => {
                f.write_str("Give the altitude, with m or ft behind it: thin air reads low.")
            }
            Self::Altitude(fault) => write!(f, "Altitude: {fault}"),
        }
    }
}

impl std::error::Error for CompressionFault {}
