//! A limit of the builder's own in the making: its figures when the unit is switched, and what is asked
//! before it is kept.

use super::{Edge, Limit, Row, Sheet};
use crate::language::figure;
use crate::quantity::{Amount, Reading, Rounding, Unit};
use pitleaf_translated::translated;

/// The lower, upper and wear limit as a form holds them, with what was typed before the unit was switched.
#[derive(Clone, Debug)]
pub struct TypedEdges {
    typed: Vec<(String, Unit)>,
    shown: Vec<String>,
}

impl TypedEdges {
    /// As they stand in the form when it is opened.
    #[must_use]
    pub fn of(texts: Vec<String>, unit: Unit) -> Self {
        Self { typed: texts.iter().map(|text| (text.clone(), unit)).collect(), shown: texts }
    }

    /// What is to stand there when the unit is switched, `now` standing there: exact where a decimal can
    /// be, otherwise rounded inward. What can't be read, or names its own unit, stays as typed.
    ///
    /// Switched back, it is again what was typed: rounding does not add up.
    pub fn switch(&mut self, now: Vec<String>, from: Unit, to: Unit) -> Vec<String> {
        for (place, now) in now.into_iter().enumerate() {
            if now != self.shown[place] {
                self.typed[place] = (now, from);
            }
        }
        let edge = |place: usize| {
            let (text, unit) = self.typed.get(place)?;
            Edge::read(text, *unit).ok()
        };
        let limit = Limit { lower: edge(0), upper: edge(1), wear: edge(2) };
        let inward = [false, true, limit.wears_upwards()];
        for (place, edge) in [&limit.lower, &limit.upper, &limit.wear].into_iter().enumerate() {
            let (text, unit) = &self.typed[place];
            self.shown[place] = match edge {
                Some(edge) if *unit != to && Reading::unit_behind(text).is_none() => {
                    edge.figure(to, inward[place])
                }
                _ => text.clone(),
            };
        }
        self.shown.clone()
    }
}

impl Edge {
    /// In a unit: exact where nine decimals can tell it, otherwise rounded down or up.
    fn figure(&self, unit: Unit, down: bool) -> String {
        let inward = if down { Rounding::Down } else { Rounding::Up };
        self.amount().exact_figure(unit, 9).unwrap_or_else(|| self.show(unit, inward))
    }

    /// More than twice another, less than half of it, or on the other side of nothing. Beside an edge at
    /// nothing, or one of another dimension, no edge is far.
    #[translated]
    fn is_far_from(&self, other: &Self) -> Option<&'static str> {
        if self.unit().dimension() != other.unit().dimension() {
            return None;
        }
        let span = |edge: &Self| edge.amount().minus(Amount::whole(0, edge.unit()));
        let (own, usual) = (span(self), span(other));
        let (size, usual_size) = (own.size(), usual.size());
        if usual.is_zero() {
            None
        } else if !own.is_zero() && own.is_negative() != usual.is_negative() {
            Some("on the other side of nothing from")
        } else if size > usual_size.times(2) {
            Some("more than twice")
        } else if size.times(2) < usual_size {
            Some("less than half")
        } else {
            None
        }
    }
}

impl Row {
    /// What is to be asked before this row of the builder's own is kept: a sentence for each edge that is
    /// far from that of the row that ships. Empty where nothing is.
    #[must_use]
    #[translated]
    pub fn doubts(&self) -> Vec<String> {
        let sheet = Sheet::starter();
        let Some(shipped) = sheet.row(&self.id) else { return Vec::new() };
        let (own, usual) = (&self.limit, &shipped.limit);
        let edges = [
            ("lower", &own.lower, &usual.lower, false),
            ("upper", &own.upper, &usual.upper, true),
            ("wear", &own.wear, &usual.wear, usual.wears_upwards()),
        ];
        let mut doubts = Vec::new();
        for (name, own, usual, down) in edges {
            let (Some(own), Some(usual)) = (own, usual) else { continue };
            let Some(far) = own.is_far_from(usual) else { continue };
            let (unit, symbol) = (usual.unit(), usual.unit().symbol());
            let mut typed = format!("{} {}", figure(own.text()), own.unit().symbol());
            if own.unit() != unit {
                typed = format!("{typed}, that is {} {symbol},", own.figure(unit, down));
            }
            doubts.push(format!(
                "The {name} limit of {typed} is {far} the {} {symbol} that came with the app.",
                figure(usual.text())
            ));
        }
        if !doubts.is_empty() {
            doubts.push("Check the unit and the decimal point.".to_owned());
        }
        doubts
    }
}
