//! A limit of the builder's own in the making: its figures when the unit is switched, and what is asked
//! before it is kept.

use super::{Edge, Limit, Row, Sheet};
use crate::gather::Gather;
use crate::quantity::{Amount, Reading, Rounding, Unit};

/// The lower, upper and wear limit as a form holds them, with what was typed before the unit was switched.
#[derive(Clone, Debug)]
pub struct TypedEdges {
    typed: [(String, Unit); 3],
    shown: [String; 3],
}

impl TypedEdges {
    /// As they stand in the form when it is opened.
    #[must_use]
    pub fn of(texts: [String; 3], unit: Unit) -> Self {
        Self { typed: texts.clone().map(|text| (text, unit)), shown: texts }
    }

    /// What is to stand there when the unit is switched, `now` standing there: exact where a decimal can
    /// be, otherwise rounded inward. What can't be read, or names its own unit, stays as typed.
    ///
    /// Switched back, it is again what was typed: rounding does not add up.
    pub fn switch(&mut self, now: [String; 3], from: Unit, to: Unit) -> [String; 3] {
        for ((now, shown), typed) in now.into_iter().zip(&self.shown).zip(&mut self.typed) {
            if now != *shown {
                *typed = (now, from);
            }
        }
        let edges = self.typed.each_ref().map(|(text, unit)| Edge::read(text, *unit).ok());
        let [lower, upper, wear] = edges.clone();
        let wears_upwards = Limit { lower, upper, wear }.wears_upwards();
        let inward = [false, true, wears_upwards];
        let mut shown = self.typed.iter().zip(edges).zip(inward);
        self.shown = std::array::from_fn(|_| match shown.next() {
            Some((((text, unit), Some(edge)), down))
                if *unit != to && Reading::unit_behind(text).is_none() =>
            {
                edge.figure(to, down)
            }
            Some((((text, _), _), _)) => text.clone(),
            None => String::new(),
        });
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
    pub fn doubts(&self) -> Vec<String> {
        let sheet = Sheet::starter();
        let Some(shipped) = sheet.row(&self.id) else { return Vec::new() };
        let (own, usual) = (&self.limit, &shipped.limit);
        let edges = [
            ("lower", &own.lower, &usual.lower, false),
            ("upper", &own.upper, &usual.upper, true),
            ("wear", &own.wear, &usual.wear, usual.wears_upwards()),
        ];
        let mut doubts: Vec<String> = edges
            .into_iter()
            .filter_map(|(name, own, usual, down)| {
                let (own, usual) = (own.as_ref()?, usual.as_ref()?);
                let far = own.is_far_from(usual)?;
                let (unit, symbol) = (usual.unit(), usual.unit().symbol());
                let typed = format!("{} {}", own.text(), own.unit().symbol());
                let typed = if own.unit() == unit {
                    typed
                } else {
                    format!("{typed}, that is {} {symbol},", own.figure(unit, down))
                };
                Some(format!(
                    "The {name} limit of {typed} is {far} the {} {symbol} that came with the app.",
                    usual.text()
                ))
            })
            .gather();
        if !doubts.is_empty() {
            doubts.push("Check the unit and the decimal point.".to_owned());
        }
        doubts
    }
}
