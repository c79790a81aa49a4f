//! An entry in words: one line for the book's pages and its search.

use super::{Book, Entry, Fact, Figure};
use crate::faces::piece_words;
use crate::language::{inside, said};
use crate::letters::{self, capital};
use crate::limits::{Call, Edge, Judged, Row, Sheet, place_words};
use crate::quantity::Reading;
use pitleaf_translated::translated;

/// An entry's line.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Words {
    /// What it is about.
    pub about: String,
    /// What it says.
    pub says: String,
    /// The verdict, where it is a reading with a known row.
    pub call: Option<Call>,
}

impl Words {
    /// Whether a text stands in them; case does not count.
    #[must_use]
    pub fn answers(&self, query: &str) -> bool {
        let query = letters::lower(query);
        [&self.about, &self.says].iter().any(|words| letters::lower(words).contains(&query))
    }
}

/// A figure judged: the row it names, the reading, and how it stands; none where the row or the text can't be
/// read, or as for [`Sheet::judge`].
#[must_use]
pub fn judged<'sheet>(
    figure: &Figure,
    sheet: &'sheet Sheet,
) -> Option<(&'sheet Row, Reading, Judged)> {
    let row = sheet.row(&figure.row)?;
    let reading = figure.reading().ok()?;
    let judged = sheet.judge(row, &reading, figure.gauge)?;
    Some((row, reading, judged))
}

/// The verdict on a figure by the row it names; none as for [`judged`].
#[must_use]
pub fn call(figure: &Figure, sheet: &Sheet) -> Option<Call> {
    judged(figure, sheet).map(|(.., judged)| judged.verdict.call)
}

impl Figure {
    /// What was written in a line: “0.25 thou on 2R-AB: does not meet”.
    #[must_use]
    #[translated]
    pub fn told(&self, sheet: &Sheet) -> String {
        let figure = self.shown();
        let figure = match place_words(&self.place) {
            place if place.is_empty() => figure,
            place => format!("{figure} on {place}"),
        };
        match call(self, sheet) {
            Some(call) => format!("{figure}: {}", inside(call.word())),
            None => figure,
        }
    }
}

impl Book {
    /// An entry in words; one about another entry names that.
    #[must_use]
    pub fn words(&self, entry: &Entry, sheet: &Sheet) -> Words {
        let words = entry.words(sheet);
        match entry.fact.of_entry().map(|of| self.entry(of)) {
            Some(Some(of)) => {
                let of = of.words(sheet);
                Words { says: format!("{}: {}", of.about, of.says), ..words }
            }
            _ => words,
        }
    }
}

impl Entry {
    /// The entry in words.
    #[must_use]
    #[translated]
    pub fn words(&self, sheet: &Sheet) -> Words {
        let plain = |about: &str, says: String| Words { about: about.to_owned(), says, call: None };
        match &self.fact {
            Fact::Opened { name, kind, rotors, .. } => plain(
                "Build opened",
                format!(
                    "{name}: {}, {rotors} {}",
                    kind.name(),
                    if *rotors == 1 { "rotor" } else { "rotors" }
                ),
            ),
            Fact::Figure(figure) => {
                let what = sheet
                    .row(&figure.row)
                    .map_or(figure.row.as_str(), |row: &Row| row.what.as_str());
                let about = if figure.place.is_empty() {
                    what.to_owned()
                } else {
                    format!("{} · {what}", place_words(&figure.place))
                };
                Words { about, says: figure.shown(), call: call(figure, sheet) }
            }
            Fact::Mark { slot, mark } => plain(&format!("{slot} · mark"), mark.clone()),
            Fact::Fitted { slot, fitted } => plain(
                &slot.to_string(),
                if *fitted { "seal fitted" } else { "seal taken out" }.to_owned(),
            ),
            Fact::Trial { slot, seen } => plain(&format!("{slot} · trial"), seen.to_string()),
            Fact::FreshSeal { slot } => plain(&slot.to_string(), "a fresh seal taken".to_owned()),
            Fact::Drawing { slot, .. } => plain(&format!("{slot} · mark"), "drawn".to_owned()),
            Fact::Leaves(set) => {
                plain("Feeler leaves", format!("{}, {} leaves", set.name(), set.leaves().len()))
            }
            Fact::Readings(set) => plain(&set.about(), set.count_words()),
            Fact::Spacer(choice) => plain(
                "Spacer chosen",
                format!("{}, predicted {}", said(&choice.spacer), choice.predicted),
            ),
            Fact::FaceWork(work) => plain(
                &format!("{} · face of mark {}", piece_words(&work.piece), work.mark),
                work.to_string(),
            ),
            Fact::Note { about, words } => {
                plain(if about.is_empty() { "Note" } else { about }, words.clone())
            }
            Fact::TighteningOrder { joint, order, torque, unit, .. } => {
                plain(&format!("{joint} · order"), format!("{order} to {torque} {}", unit.symbol()))
            }
            Fact::Tightened { joint, pass, of, torque, unit } => plain(
                &format!("{joint} · tightened"),
                format!("pass {pass} of {of} at {torque} {}", unit.symbol()),
            ),
            Fact::DowelsSolid { solid } => {
                plain("Upper dowels", if *solid { "solid" } else { "hollow" }.to_owned())
            }
            Fact::OilFeed { words, bore, unit } => plain(
                "Outside oil feed",
                if bore.is_empty() {
                    words.clone()
                } else {
                    format!("{words}, bore {bore} {}", unit.symbol())
                },
            ),
            Fact::Engine(engine) => plain(
                "Engine’s measures",
                format!("{} {}", engine.texts.join(", "), engine.unit.symbol()),
            ),
            Fact::PortFace(face) => plain(
                &format!("{} side housing", capital(face.view.housing.name())),
                face.to_string(),
            ),
            Fact::Outline(outline) => plain(
                &format!(
                    "{} side housing · {}",
                    capital(outline.port.housing.name()),
                    outline.port
                ),
                if outline.figures.is_empty() {
                    "outline".to_owned()
                } else {
                    outline.figures.clone()
                },
            ),
            Fact::Datums(datums) => plain(
                &format!("{} side housing · datum holes", capital(datums.housing.name())),
                datums.rows.lines().collect::<Vec<_>>().join("; "),
            ),
            Fact::Limit(row) | Fact::BuildLimit(row) => {
                let here = matches!(self.fact, Fact::BuildLimit(_));
                let whose = if here { "this engine only" } else { "every engine" };
                plain(
                    &format!("Own limit, {whose} · {}", row.what),
                    crate::limits::limit_line(&row.limit, row.unit),
                )
            }
            Fact::Gauge { kind, resolution, error } => {
                let figure = |edge: &Edge| format!("{} {}", edge.text(), edge.unit().symbol());
                plain(
                    "Gauge",
                    format!("{}: steps of {}, good to ±{}", kind.name(), figure(resolution), error),
                )
            }
            Fact::Route(fact) => {
                let (about, says) = fact.words(sheet);
                plain(&about, says)
            }
            Fact::SignedOff { who } => plain(
                "Signed off",
                if who.is_empty() { "without a name".to_owned() } else { who.clone() },
            ),
            Fact::Reopened { why } => plain(
                "Reopened",
                if why.is_empty() { "no reason given".to_owned() } else { why.clone() },
            ),
            // Which one, only the book knows.
            Fact::Withdrawn { .. } => plain("Withdrawn", "an entry not in this book".to_owned()),
            Fact::Restored { .. } => plain("Holds again", "an entry not in this book".to_owned()),
        }
    }
}
