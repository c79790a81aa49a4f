//! A sheet: the limit rows in force together, the builder's to copy, edit and extend.

use super::{BuildKind, Gauge, GaugeKind, Part, Row, starter};
use pitleaf_translated::translated;
use std::fmt;

/// Limit rows in force together.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Sheet {
    rows: Vec<Row>,
    /// By what the pieces of the sets among them are measured one by one.
    pieces: Vec<Row>,
    gauges: Vec<Gauge>,
}

impl Sheet {
    /// The sheet that ships: a two-rotor petrol engine with 80 mm rotor housings, nothing in it published.
    #[must_use]
    pub fn starter() -> Self {
        let mut sheet = Self::default();
        starter::rows().into_iter().for_each(|row| sheet.put(row));
        sheet
    }

    /// Puts a row in: in place of the one with the same id, or at the end. One written down before limits
    /// told their cranking speed keeps that of the row it replaces.
    pub fn put(&mut self, mut row: Row) {
        if row.cranking_speed.is_none() {
            row.cranking_speed = self.row(&row.id).and_then(|old| old.cranking_speed);
        }
        if let Some(piece) = row.piece() {
            put(&mut self.pieces, piece);
        }
        put(&mut self.rows, row);
    }

    /// This sheet with the builder's own gauge in place of the usual one of its kind.
    pub fn put_gauge(&mut self, gauge: Gauge) {
        self.gauges.retain(|old| old.kind != gauge.kind);
        self.gauges.push(gauge);
    }

    /// The gauge of a kind: the builder's own, else the usual one.
    #[must_use]
    pub fn gauge(&self, kind: GaugeKind) -> Gauge {
        self.gauges
            .iter()
            .find(|gauge| gauge.kind == kind)
            .copied()
            .unwrap_or_else(|| Gauge::usual(kind))
    }

    /// All rows.
    #[must_use]
    pub fn rows(&self) -> &[Row] {
        &self.rows
    }

    /// The row with an id; one [`Row::piece`] of a set among them.
    #[must_use]
    pub fn row(&self, id: &str) -> Option<&Row> {
        self.rows.iter().chain(&self.pieces).find(|row| row.id == id)
    }

    /// The rows of a part that hold for a build.
    pub fn of_part(&self, part: Part, build: BuildKind) -> impl Iterator<Item = &Row> {
        self.rows.iter().filter(move |row| row.part == part && row.build.holds_for(build))
    }
}

fn put(rows: &mut Vec<Row>, row: Row) {
    match rows.iter_mut().find(|old| old.id == row.id) {
        Some(old) => *old = row,
        None => rows.push(row),
    }
}

/// What is wrong with a row the builder entered.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RowFault {
    /// It does not say what is measured.
    NoName,
    /// It has neither a lower nor an upper edge; a wear limit alone would let everything meet.
    NoEdge,
    /// The lower edge lies above the upper.
    Crossed,
    /// An edge is of another dimension than the row's unit.
    OtherDimension,
}

impl fmt::Display for RowFault {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::NoName => "Say what is measured.",
            Self::NoEdge => "Give a lower limit, an upper limit, or both.",
            Self::Crossed => {
                "The lower limit lies above the upper. Swap them, or check the decimal point."
            }
            Self::OtherDimension => {
                "A limit’s unit measures something else than the row. Change the unit."
            }
        })
    }
}

impl std::error::Error for RowFault {}

impl Row {
    /// Everything wrong with the row at once; empty when it can be used.
    #[must_use]
    pub fn faults(&self) -> Vec<RowFault> {
        let mut faults = Vec::new();
        let limit = &self.limit;
        let edges = [&limit.lower, &limit.upper, &limit.wear];
        if self.what.trim().is_empty() {
            faults.push(RowFault::NoName);
        }
        if !limit.has_edge() {
            faults.push(RowFault::NoEdge);
        }
        if edges
            .iter()
            .copied()
            .flatten()
            .any(|edge| edge.unit().dimension() != self.unit.dimension())
        {
            faults.push(RowFault::OtherDimension);
        } else if let (Some(lower), Some(upper)) = (&limit.lower, &limit.upper)
            && upper.amount().minus(lower.amount()).is_negative()
        {
            faults.push(RowFault::Crossed);
        }
        faults
    }
}
