//! Which gauges can measure a row at all.

use super::{Edge, GaugeKind, Input, Row};
use crate::quantity::{Amount, Dimension, Unit};

/// The thinnest leaf of the usual sets; the builder's own set stands above it.
fn thinnest_usual() -> Amount {
    Amount::whole(30, Unit::Micrometre)
}

impl Row {
    /// The kind meant by a kind written in the book. "Other" stands in older books for every gauge that had no
    /// name of its own: then the row's own, if it is one of those, else the one usual for what is measured.
    #[must_use]
    pub fn gauge_meant(&self, kind: GaugeKind) -> GaugeKind {
        if kind != GaugeKind::Other {
            return kind;
        }
        let named_later = matches!(self.gauge, GaugeKind::SteelRule | GaugeKind::RoughnessTester)
            || self.gauge.unit().dimension() != Dimension::Length;
        let own = self.gauge != GaugeKind::Other && named_later;
        if own {
            self.gauge
        } else {
            GaugeKind::usual_for(self.unit.dimension()).unwrap_or(GaugeKind::Other)
        }
    }

    /// The gauges that can measure it, the one to start with first. A leaf can't where an edge is thinner than
    /// `thinnest`, the thinnest leaf of the builder's set; none is the usual sets'.
    #[must_use]
    pub fn gauges(&self, thinnest: Option<Amount>) -> Vec<GaugeKind> {
        let meant = self.gauge_meant(self.gauge);
        let dimension = self.unit.dimension();
        let thinnest = thinnest.unwrap_or_else(thinnest_usual);
        let thinner = |edge: &Edge| edge.amount().order(thinnest).is_some_and(|o| o.is_lt());
        let edges = [&self.limit.lower, &self.limit.upper];
        let too_thin = dimension == Dimension::Length && edges.into_iter().flatten().any(thinner);
        let can = |kind: &GaugeKind| {
            kind.unit().dimension() == dimension
                && !(kind.is_stamped() && too_thin)
                && (dimension != Dimension::Length || *kind == meant || self.takes(*kind))
                && self.gauge_meant(*kind) == *kind
        };
        let first = std::iter::once(meant);
        let others = GaugeKind::ALL.into_iter().filter(|kind| *kind != meant);
        let mut kinds: Vec<GaugeKind> = first.chain(others).filter(can).collect();
        // Of a gap no leaf goes into, the two sizes tell most.
        if kinds.first() != Some(&meant) && self.input == Input::Gap {
            kinds.retain(|kind| *kind != GaugeKind::SizeDifference);
            kinds.insert(0, GaugeKind::SizeDifference);
        }
        // What nothing else can measure, some other gauge does.
        if kinds.is_empty() {
            kinds.push(GaugeKind::Other);
        }
        kinds
    }

    /// Whether a gauge of lengths can take a reading of this sort.
    fn takes(&self, kind: GaugeKind) -> bool {
        use GaugeKind::*;
        let kinds: &[GaugeKind] = match self.input {
            Input::Gap => &[FeelerLeaf, DialIndicator, SizeDifference, Other],
            Input::Size => &[OutsideMicrometer, BoreGauge, DepthMicrometer, VernierCaliper, Other],
            Input::Height => &[DepthMicrometer, DialIndicator, VernierCaliper, FeelerLeaf, Other],
            Input::Deviation => &[
                OutsideMicrometer,
                DialIndicator,
                BoreGauge,
                DepthMicrometer,
                VernierCaliper,
                StraightedgeAndLeaf,
                FeelerLeaf,
                Other,
            ],
            Input::Other => &[Other],
        };
        kinds.contains(&kind)
    }
}
