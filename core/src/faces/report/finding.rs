//! One thing a survey shows: its figure in both unit systems, its doubt, and how it stands.

use super::super::Refusal;
use super::super::clearance::Clearance;
use super::super::input::mm;
use super::super::uncertainty::Measured;
use super::SpacerChoice;
use crate::limits::{Call, Row, Side, Verdict, limit_line, wear_line};
use crate::quantity::{Amount, Rounding, Span, Unit, places_for};
use pitleaf_translated::translated;
use uom::si::f64::Length;

/// One line of a report.
#[derive(Clone, Debug, PartialEq)]
pub struct Finding {
    /// What was found.
    pub what: String,
    /// Its figure; empty where there is none.
    pub figure: String,
    /// What is to be known beside it.
    pub says: String,
    /// How it stands against its limit; none where it has none.
    pub call: Option<Call>,
    /// The row of that limit.
    pub row: Option<String>,
    /// A spacer to choose, where this line offers one.
    pub offer: Option<Box<SpacerChoice>>,
    /// Worked out for something not done yet: no reading, so it has no verdict and no place on a build sheet.
    pub is_predicted: bool,
}

/// A length with its unit, to about a micrometre: 0.001 mm, 0.01 thou, 0.00001 in, 1 µm.
#[must_use]
pub fn figure(length: Length, unit: Unit) -> String {
    let step = Span::whole(10, Unit::Micrometre);
    Amount::of_length(length).map_or_else(
        || "–".to_owned(),
        |amount| {
            format!(
                "{} {}",
                amount.show(unit, places_for(step, unit), Rounding::Nearest),
                unit.symbol()
            )
        },
    )
}

/// A length in the unit read and in the other system: thou for what is small, inches for a size.
pub(crate) fn both(length: Length, unit: Unit) -> String {
    let other = match unit {
        Unit::Inch | Unit::Thou | Unit::Foot => Unit::Millimetre,
        _ if mm(length).abs() < 1.0 => Unit::Thou,
        _ => Unit::Inch,
    };
    format!("{} · {}", figure(length, unit), figure(length, other))
}

impl Finding {
    pub(crate) fn new(what: &str, figure: String, says: String) -> Self {
        let what = what.to_owned();
        Self { what, figure, says, call: None, row: None, offer: None, is_predicted: false }
    }

    /// Why something could not be found.
    pub(super) fn refused(what: &str, refusal: Refusal) -> Self {
        Self::new(what, String::new(), refusal.to_string())
    }

    /// A measured length with its doubt.
    #[translated]
    pub(super) fn measured(what: &str, measured: &Measured, unit: Unit) -> Self {
        let doubt = format!("±{} in 95 of 100 cases.", figure(measured.expanded(), unit));
        Self::new(what, both(measured.value, unit), doubt)
    }

    /// The same against a row of the sheet; as it is where the sheet has none.
    pub(super) fn against(self, measured: &Measured, row: Option<&Row>, unit: Unit) -> Self {
        let verdict = row.and_then(|row| measured.against(&row.limit));
        self.judged(verdict, row, unit)
    }

    /// A clearance: the mean, with the tight and the loose end; the worse of both counts, and stands for it
    /// where it is past the limit.
    #[translated]
    pub(super) fn clearance(
        what: &str,
        clearance: &Clearance,
        row: Option<&Row>,
        unit: Unit,
    ) -> Self {
        let ends = format!(
            "Tightest {}, loosest {}. ±{} in 95 of 100 cases.",
            figure(clearance.least.value, unit),
            figure(clearance.most.value, unit),
            figure(clearance.least.expanded().max(clearance.most.expanded()), unit)
        );
        let verdict = row.and_then(|row| clearance.against(&row.limit));
        let (shown, ends) = match verdict.as_ref().map(|verdict| verdict.call) {
            Some(Call::DoesNotMeet(side)) => {
                let end = if side == Side::Below { clearance.least } else { clearance.most };
                (end, format!("Mean {}. {ends}", figure(clearance.mean.value, unit)))
            }
            _ => (clearance.mean, ends),
        };
        Self::new(what, both(shown.value, unit), ends).judged(verdict, row, unit)
    }

    #[translated]
    fn judged(mut self, verdict: Option<Verdict>, row: Option<&Row>, unit: Unit) -> Self {
        if let (Some(verdict), Some(row)) = (verdict, row) {
            self.call = Some(verdict.call);
            self.row = Some(row.id.clone());
            if verdict.worn_out == Some(true) {
                self.says.push_str(&format!(" Past {}.", wear_line(&row.limit, unit)));
            }
            self = self.with_limit(row, unit);
        }
        self
    }

    /// With the limit and where it is from.
    #[translated]
    pub(super) fn with_limit(mut self, row: &Row, unit: Unit) -> Self {
        let line = limit_line(&row.limit, unit);
        self.says.push_str(&format!(" Limit {line}, {}.", row.source.kind()));
        self
    }

    pub(super) fn saying(mut self, more: &str) -> Self {
        if !self.says.is_empty() {
            self.says.push(' ');
        }
        self.says.push_str(more);
        self
    }
}
