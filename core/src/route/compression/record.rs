//! The record of a build: every figure of its tests, and how it stands.

use super::{Compression, NOT_COMPARED, PRESSURE, TypedTest, compare};
use crate::book::{Book, BuildId, Entry, Fact, Subject};
use crate::limits::{
    BuildKind, Call, GUARD, GaugeKind, Row, Sheet, decide_with_uncertainty, limit_line,
};
use crate::quantity::{Amount, Bounds, Reading, Rounding, Span, Unit, places_for};
use crate::route::decision::decided;
use crate::route::fact::subject_of_test;
use crate::route::{Choice, RouteFact};
use pitleaf_translated::{tr, translated};

/// How readings are compared, to be said under a record.
pub const HOW_COMPARED: &str = tr!(
    "Compared at the sea: the reading goes with the air’s pressure, by the barometer or by the altitude’s standard atmosphere (ISO 2533) give or take 30 hPa of weather. Speed is not corrected: a reading is compared at the limit’s own speed, or between two speeds of one day. How even faces and rotors are is judged as read."
);

const UNLIKE: &str =
    tr!("The rotors were cranked at different speeds. Test them one after the other at one speed.");

/// Two tests of a rotor within so many milliseconds are of one engine in one state: it can't be opened,
/// closed and run in between.
const ONE_DAY: u64 = 24 * 60 * 60 * 1000;

/// A rotor's last test, with those of the same day before it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Tested {
    /// The rotor, from 1 at the front.
    pub rotor: u8,
    /// Its last test.
    pub last: Compression,
    /// Others of the same day.
    pub others: Vec<Compression>,
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
    /// What is compared with the limit where that is not the figure as read, with its doubt; else empty.
    pub compared: String,
    /// Why it can't be compared; empty where it can.
    pub not_compared: String,
    /// The row it stands against; none where the sheet has none.
    pub row: Option<String>,
    /// How it stands; none where there is no row, or it can't be compared.
    pub call: Option<Call>,
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

    /// The verdict in a few words.
    #[must_use]
    #[translated]
    pub fn word(&self) -> &'static str {
        match self.call {
            Some(call) => call.word(),
            None if self.not_compared.is_empty() => "no limit",
            None => NOT_COMPARED,
        }
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
    /// A pressure in a unit, as finely as the tester shows it there.
    fn show(&self, span: Span, unit: Unit) -> String {
        let places = places_for(self.step(), unit).saturating_sub(1);
        format!("{} {}", span.show(unit, places, Rounding::Nearest), unit.symbol())
    }

    /// The standard uncertainty of one face, in a unit.
    fn doubt(&self, sheet: &Sheet, unit: Unit) -> f64 {
        let gauge = sheet.gauge(GaugeKind::CompressionTester);
        self.faces.iter().map(|face| gauge.uncertainty(face, unit)).fold(0.0, f64::max)
    }

    /// The standard uncertainty of one face beside another of the same tester, in a unit: its steps alone, for
    /// its own error is the same in both.
    fn doubt_beside(&self, sheet: &Sheet, unit: Unit) -> f64 {
        let gauge = sheet.gauge(GaugeKind::CompressionTester);
        let steps = self.faces.iter().map(|face| gauge.steps(face, unit));
        steps.fold(0.0, f64::max) / 12_f64.sqrt()
    }
}

impl Tested {
    /// Each face, and the spread, against the sheet.
    fn findings(&self, kind: BuildKind, sheet: &Sheet) -> Vec<Finding> {
        let id = match kind {
            BuildKind::ForcedInduction => "compression-fi",
            _ => "compression-na",
        };
        let row = sheet.row(id).filter(|row| row.unit.dimension() == PRESSURE.unit.dimension());
        let Self { rotor, last, .. } = self;
        let mut findings: Vec<Finding> = (0..3).map(|face| self.face(face, row, sheet)).collect();
        // Two readings stand in a spread: their doubts add up in squares.
        let doubt = std::f64::consts::SQRT_2 * last.doubt_beside(sheet, last.unit());
        findings.push(difference(
            Some(*rotor),
            format!("Rotor {rotor}, spread over its faces"),
            last.spread(),
            last,
            doubt,
            sheet.row("compression-face-spread"),
        ));
        findings
    }

    /// A face, by its number from 0, under the conditions of its limit.
    #[translated]
    fn face(&self, face: usize, row: Option<&Row>, sheet: &Sheet) -> Finding {
        let Self { rotor, last, others } = self;
        let reading = &last.faces[face];
        let unit = reading.unit();
        let mut finding = Finding {
            rotor: Some(*rotor),
            // Its name in the book.
            what: face_name(*rotor, face),
            figure: format!("{} {}", reading.number(), unit.symbol()),
            other: last.show(reading.amount().above_zero(), other(unit)),
            compared: String::new(),
            not_compared: String::new(),
            row: row.map(|row| row.id.clone()),
            call: None,
        };
        let Some((row, speed)) = row.and_then(|row| Some((row, row.cranking_speed?))) else {
            return finding;
        };
        let doubt = |test: &Compression| test.doubt(sheet, Unit::Kilopascal);
        match compare(last, others, face, speed, doubt) {
            Ok(compared) => {
                let amount = Amount::nearest(compared.pressure, Unit::Kilopascal);
                let doubt = Span::nearest(compared.uncertainty, Unit::Kilopascal);
                let band = Span::nearest(GUARD * compared.uncertainty, Unit::Kilopascal);
                if let (Some(amount), Some(doubt), Some(band)) = (amount, doubt, band) {
                    let figure = last.show(amount.above_zero(), unit);
                    let band = last.show(band, unit);
                    finding.compared = if compared.by_two_speeds {
                        format!(
                            "{figure} ± {band} at the sea, brought to {speed} /min by two tests"
                        )
                    } else {
                        format!("{figure} ± {band} at the sea")
                    };
                    finding.call = judge(row, amount, doubt);
                }
            }
            Err(why) => finding.not_compared = why.to_string(),
        }
        finding
    }
}

/// A face's name in the book.
fn face_name(rotor: u8, face: usize) -> String {
    let face = face + 1;
    format!("Rotor {rotor}, face {face}")
}

/// A computed pressure against a row.
fn judge(row: &Row, pressure: Amount, doubt: Span) -> Option<Call> {
    // Six decimals of a kilopascal: far finer than any tester.
    let exact = pressure.show(Unit::Kilopascal, 6, Rounding::Nearest);
    let reading =
        Reading::read(&exact, Unit::Kilopascal, Bounds::widest(Unit::Kilopascal.dimension()));
    Some(decide_with_uncertainty(&row.limit, &reading.ok()?, doubt).call)
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
    let row = row.filter(|row| row.unit.dimension() == unit.dimension());
    // Judged before it is rounded for showing.
    let pressure = Amount::whole(0, unit).plus(span);
    let call =
        row.zip(Span::nearest(doubt, unit)).and_then(|(row, doubt)| judge(row, pressure, doubt));
    Finding {
        rotor,
        what,
        figure: of.show(span, unit),
        other: of.show(span, other(unit)),
        compared: String::new(),
        not_compared: String::new(),
        row: row.map(|row| row.id.clone()),
        call,
    }
}

/// The whole record of a build: every rotor tested, and the evenness between them.
#[must_use]
pub fn record(tests: &[Tested], kind: BuildKind, sheet: &Sheet) -> Vec<Finding> {
    let mut findings: Vec<Finding> =
        tests.iter().flat_map(|tested| tested.findings(kind, sheet)).collect();
    if let [Tested { last: first, .. }, _, ..] = tests {
        let unit = first.unit();
        let means = tests.iter().map(|tested| tested.last.mean(unit));
        let (least, most) = means
            .fold((f64::MAX, f64::MIN), |(least, most), mean| (least.min(mean), most.max(mean)));
        // A mean of three has a third of its variance, and two means stand in the difference.
        let doubt = (2.0_f64 / 3.0).sqrt()
            * tests.iter().map(|tested| tested.last.doubt_beside(sheet, unit)).fold(0.0, f64::max);
        if let Some(span) = Span::nearest(most - least, unit) {
            let what = "Between rotors, highest mean less lowest".to_owned();
            let row = sheet.row("compression-rotor-spread");
            let mut finding = difference(None, what, span, first, doubt, row);
            if tests.iter().any(|tested| !tested.last.is_cranked_like(first)) {
                (finding.call, finding.not_compared) = (None, UNLIKE.to_owned());
            }
            findings.push(finding);
        }
    }
    findings
}

/// A test in the book, with its entry.
fn tests<'book>(
    book: &'book Book,
    build: &BuildId,
    rotor: u8,
) -> impl DoubleEndedIterator<Item = (&'book Entry, Compression)> {
    let subject = Subject::Route(subject_of_test(&rotor.to_string()));
    let lines: Vec<_> = book.history(build, &subject).filter(|line| !line.withdrawn).collect();
    lines.into_iter().filter_map(|line| match &line.entry.fact {
        Fact::Route(RouteFact::Compression(typed)) => Some((line.entry, typed.read().ok()?)),
        _ => None,
    })
}

/// A rotor's tests as the book has them, with the order of the last; none where it has none.
fn tested(book: &Book, build: &BuildId, rotor: u8) -> Option<(Tested, u64)> {
    let mut tests = tests(book, build, rotor).rev();
    let (entry, last) = tests.next()?;
    // The last word counts even where it can't be read here.
    let is_last = TypedTest::of(book, build, rotor).is_some_and(|typed| typed.read().is_ok());
    let others = tests
        .filter(|(other, test)| other.at.abs_diff(entry.at) <= ONE_DAY && test.faces != last.faces)
        .map(|(_, test)| test)
        .collect();
    is_last.then_some((Tested { rotor, last, others }, entry.order))
}

/// The record of a build as the book has it, each figure with what was decided of it since it was read.
#[must_use]
pub fn record_in<'book>(
    book: &'book Book,
    build: &BuildId,
    sheet: &Sheet,
) -> Vec<(Finding, Option<(Choice, &'book str)>)> {
    let Some((_, kind, rotors, _)) = book.opening(build) else { return Vec::new() };
    let (mut orders, mut all) = (Vec::new(), Vec::new());
    for rotor in 1..=rotors {
        if let Some((tested, order)) = tested(book, build, rotor) {
            orders.push((rotor, order));
            all.push(tested);
        }
    }
    let mut found = Vec::new();
    for finding in record(&all, kind, sheet) {
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
