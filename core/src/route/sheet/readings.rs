//! What was measured: limits, slots, compression, end play, surveys.

use super::{Copy, Row, Section, Source, row};
use crate::book::{Entry, Fact, Figure, Slot};
use crate::faces::report::{Finding, on_bench, report};
use crate::language::said;
use crate::limits::{Call, Limit, doubt, limit_line, place_words};
use crate::quantity::{Reading, Unit};
use crate::route::compression::record_in;
use crate::route::decision::{decided, figures, is_of_earlier_seal, surveys};
use crate::route::{Choice, HOW_COMPARED, NOT_COMPARED, TypedTest, decision_words};
use crate::seals::{SIDE_SEAL_GAP, gap_row, slot_report};
use pitleaf_translated::{tr, translated};

/// The other system's unit for what is read in one.
pub(super) fn other(unit: Unit) -> Option<Unit> {
    Some(match unit {
        Unit::Millimetre | Unit::Centimetre | Unit::Metre => Unit::Inch,
        Unit::Micrometre => Unit::Thou,
        Unit::Inch | Unit::Thou | Unit::Foot => Unit::Millimetre,
        Unit::NewtonMetre | Unit::KilogramForceMetre | Unit::KilogramForceCentimetre => {
            Unit::PoundForceFoot
        }
        Unit::PoundForceFoot | Unit::PoundForceInch => Unit::NewtonMetre,
        Unit::Psi => Unit::Kilopascal,
        unit if unit.dimension() == Unit::Psi.dimension() => Unit::Psi,
        Unit::Gram | Unit::Kilogram => Unit::Ounce,
        Unit::Ounce | Unit::Pound => Unit::Gram,
        Unit::Celsius | Unit::Kelvin => Unit::Fahrenheit,
        Unit::Fahrenheit => Unit::Celsius,
        Unit::Millilitre | Unit::Litre => Unit::CubicInch,
        Unit::CubicInch | Unit::FluidOunce | Unit::Quart => Unit::Millilitre,
        Unit::GramMillimetre | Unit::GramInch => Unit::OunceInch,
        Unit::OunceInch => Unit::GramMillimetre,
        _ => return None,
    })
}

/// A reading in the other system; empty where there is none.
fn converted(reading: &Reading) -> String {
    other(reading.unit()).map_or_else(String::new, |unit| {
        format!("{} {}", reading.amount().readable(unit, reading.step()), unit.symbol())
    })
}

/// A limit in the unit read, and in the other system.
pub(super) fn limit(limit: &Limit, unit: Unit) -> String {
    let both = std::iter::once(unit).chain(other(unit).filter(|_| limit.has_edge()));
    both.map(|unit| limit_line(limit, unit)).collect::<Vec<_>>().join("\n")
}

/// A verdict's word, and under it what was decided.
pub(super) fn verdict(call: Option<Call>, decision: Option<(Choice, &str)>) -> String {
    let word = call.map_or("", Call::word);
    decision.map_or_else(|| word.to_owned(), |_| format!("{word}\n{}", decision_words(decision)))
}

impl Source<'_> {
    #[translated]
    pub(super) fn readings(&self) -> Vec<Section> {
        vec![
            Section {
                heading: "Readings against their limits",
                heads: &[
                    "Measured",
                    "As read",
                    "Converted",
                    "Limit",
                    "Verdict",
                    "Gauge, doubt",
                    "Source",
                ],
                whole: &[1, 2, 3],
                rows: self
                    .figures()
                    .filter_map(|(entry, figure)| self.figure(entry, figure))
                    .collect(),
                ..Section::default()
            },
            self.pairs(),
            self.slots(),
            self.compression(),
            self.end_play(),
            self.surveys(),
            self.faces(),
        ]
    }

    /// The figures in force, without gaps of a seal that was ground or replaced since.
    fn figures(&self) -> impl Iterator<Item = (&'_ Entry, &'_ Figure)> {
        figures(self.book, self.build)
            .filter(|(entry, figure)| !is_of_earlier_seal(self.book, self.build, entry, figure))
    }

    /// A reading with its verdict; none where its row or its text can't be read here.
    fn figure(&self, entry: &Entry, figure: &Figure) -> Option<Row> {
        let (what, reading) = (self.sheet.row(&figure.row)?, figure.reading().ok()?);
        let unit = reading.unit();
        if unit.dimension() != what.unit.dimension() {
            return None;
        }
        let call = crate::book::call(figure, self.sheet);
        let gauge = self.sheet.gauge(what.gauge_meant(figure.gauge));
        let place = if figure.place.is_empty() {
            String::new()
        } else {
            format!("{} · ", place_words(&figure.place))
        };
        let of = (figure.row.as_str(), figure.place.as_str());
        let says = if what.cranking_speed.is_some() {
            NOT_COMPARED.to_owned()
        } else {
            verdict(call, decided(self.book, self.build, of, entry.order))
        };
        let doubt = doubt(gauge.guard(&reading), unit);
        Some(Row {
            cells: vec![
                format!("{place}{}", what.what),
                format!("{} {}{}", figure.text, unit.symbol(), self.before(entry)),
                converted(&reading),
                limit(&what.limit, unit),
                says,
                if gauge.is_stated(unit.dimension()) {
                    format!("{}\n±{doubt} {}", gauge.kind.name(), unit.symbol())
                } else {
                    format!("{}\n{}", gauge.kind.name(), tr!("doubt not stated"))
                },
                what.source.kind().to_owned(),
            ],
            call,
            drawing: None,
        })
    }

    /// What was read there before, first to last: the engine as it came, beside the engine as built.
    #[translated]
    fn before(&self, latest: &Entry) -> String {
        let Some(subject) = latest.fact.subject() else { return String::new() };
        let mut words = String::new();
        for line in self.book.history(self.build, &subject) {
            if let Fact::Figure(figure) = &line.entry.fact
                && !line.withdrawn
                && line.entry.id != latest.id
            {
                words.push('\n');
                words.push_str(&format!("was {} {}", figure.text, figure.unit.symbol()));
            }
        }
        words
    }

    /// Every slot that has a mark, a gap or a seal.
    #[translated]
    fn slots(&self) -> Section {
        let gaps: Vec<&Figure> = self
            .figures()
            .map(|(_, figure)| figure)
            .filter(|figure| figure.row.starts_with(SIDE_SEAL_GAP))
            .collect();
        let slot = |slot: Slot| {
            let place = slot.to_string();
            let mark = self.book.mark(self.build, slot);
            let drawing = self.book.drawing(self.build, slot).cloned();
            let is_fitted = self.book.is_fitted(self.build, slot);
            let typed = gaps.iter().rev().find(|figure| figure.place == place);
            let gap = self.tried(slot).or_else(|| Some(self.typed(typed?)));
            if gap.is_none() && mark.is_none() && drawing.is_none() && !is_fitted {
                return None;
            }
            let not_measured = || ([String::new(), String::new(), "not measured".to_owned()], None);
            let ([read, converted, says], call) = gap.unwrap_or_else(not_measured);
            let seal = if is_fitted { "fitted" } else { "" };
            let mark = mark.unwrap_or_default().to_owned();
            Some(Row {
                cells: vec![place, mark, read, converted, says, seal.to_owned()],
                call,
                drawing: drawing.map(|drawing| (1, drawing)),
            })
        };
        Section {
            heading: "Side-seal slots",
            heads: &["Slot", "Mark", "Gap", "Converted", "Verdict", "Seal"],
            whole: &[0, 2, 3],
            is_of_slots: true,
            rows: Slot::of_engine(self.rotors).into_iter().filter_map(slot).collect(),
            says: "Slot: rotor from the front, F front or R rear face, the corners it runs between. A side seal fits the slot it was cut for, and no other.".to_owned(),
        }
    }

    /// A gap as typed: as read, converted, and how it stands.
    #[translated]
    fn typed(&self, figure: &Figure) -> ([String; 3], Option<Call>) {
        let call = crate::book::call(figure, self.sheet);
        let read = format!("{} {}", figure.text, figure.unit.symbol());
        let converted = figure.reading().as_ref().map(converted).unwrap_or_default();
        ([read, converted, call.map_or("not measured", Call::word).to_owned()], call)
    }

    /// What leaves and trials tell of a gap, where that is the latest word on it.
    fn tried(&self, slot: Slot) -> Option<([String; 3], Option<Call>)> {
        let row = gap_row(self.sheet, self.kind)?;
        let report = slot_report(self.book, self.build, slot, self.sheet, row);
        let last = self.book.entry(report.trials.last()?.0)?;
        if report.measured.is_some() {
            return None;
        }
        let unit = row.spoken_unit();
        let call = report.gap_state.call();
        let place = slot.to_string();
        let says = match call {
            Some(Call::DoesNotMeet(_)) => {
                verdict(call, decided(self.book, self.build, (&row.id, &place), last.order))
            }
            _ => report.gap_state.name().to_owned(),
        };
        let converted = other(unit).map_or_else(String::new, |unit| report.gap(unit));
        Some(([report.gap(unit), converted, says], call))
    }

    #[translated]
    fn compression(&self) -> Section {
        let found = record_in(self.book, self.build, self.sheet);
        let rows = found.into_iter().map(|(finding, decision)| {
            let what = finding.row.as_deref().and_then(|id| self.sheet.row(id));
            let says = match finding.call {
                None if what.is_some() => finding.word().to_owned(),
                call => verdict(call, decision),
            };
            Row {
                cells: vec![
                    said(&finding.what),
                    finding.figure,
                    finding.other,
                    finding.compared + &finding.not_compared,
                    what.map_or_else(String::new, |what| limit(&what.limit, what.unit)),
                    says,
                    what.map_or("", |what| what.source.kind()).to_owned(),
                ],
                call: finding.call,
                drawing: None,
            }
        });
        let rows: Vec<Row> = rows.collect();
        let conditions = (1..=self.rotors).filter_map(|rotor| {
            let test = TypedTest::of(self.book, self.build, rotor)?;
            // One that can't be read has no figures above, either.
            test.read().ok().map(|_| format!("Rotor {rotor}: {}. ", test.conditions()))
        });
        let says = if rows.is_empty() {
            String::new()
        } else {
            conditions.collect::<String>() + HOW_COMPARED
        };
        Section {
            heading: "Compression",
            heads: &["Of", "As read", "Converted", "Compared", "Limit", "Verdict", "Source"],
            whole: &[1, 2, 4],
            rows,
            says,
            ..Section::default()
        }
    }

    /// The spacer chosen; the end play itself stands among the readings and surveys.
    #[translated]
    fn end_play(&self) -> Section {
        let spacer = self.book.spacer(self.build).map(|choice| {
            row([
                &said(&choice.spacer),
                &choice.predicted.to_string(),
                &choice.uncertainty.to_string(),
            ])
        });
        Section {
            heading: "End play: spacer fitted",
            heads: &["Spacer", "End play predicted", "Standard uncertainty"],
            rows: spacer.into_iter().collect(),
            ..Section::default()
        }
    }

    /// Surveys with what they found; place by place as they were typed in the shop's copy.
    #[translated]
    fn surveys(&self) -> Section {
        let mut rows = Vec::new();
        for (entry, set) in surveys(self.book, self.build) {
            let is_end_play = set.of.word().starts_with("end-play");
            if self.copy != Copy::Shop && !is_end_play {
                continue;
            }
            let found =
                on_bench(self.book, Some(self.build), self.sheet, None, |bench| report(set, bench));
            let read = set.lines().into_iter().map(|(_, name, figure)| format!("{name}: {figure}"));
            let read = read.collect::<Vec<_>>().join("\n");
            let found = match found {
                Ok(found) => found,
                Err(fault) => vec![Finding::new("", String::new(), fault.to_string())],
            };
            // What is predicted was not found. What was read stands beside the first.
            let found = found.iter().filter(|found| !found.is_predicted);
            rows.extend(found.enumerate().map(|(at, found)| {
                let once = |text: &str| if at == 0 { text.to_owned() } else { String::new() };
                let what = if found.what.is_empty() { "" } else { " · " };
                Row {
                    cells: vec![
                        format!("{}{what}{}", set.about(), found.what),
                        found.figure.clone(),
                        self.found_verdict(found, &set.piece, entry.order),
                        found.says.clone(),
                        once(&read),
                        once(set.gauge.name()),
                    ],
                    call: found.call,
                    drawing: None,
                }
            }));
        }
        Section {
            heading: "Surveys",
            heads: &["Of", "Found", "Verdict", "Beside it", "As read, place by place", "Gauge"],
            whole: &[1],
            rows,
            ..Section::default()
        }
    }

    /// A finding's verdict, with what was decided of it since.
    fn found_verdict(&self, found: &Finding, piece: &str, order: u64) -> String {
        let decision = found
            .row
            .as_deref()
            .and_then(|row| decided(self.book, self.build, (row, piece), order));
        verdict(found.call, decision)
    }
}
