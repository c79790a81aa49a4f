//! Gauges: what a reading can be trusted to.

use super::Edge;
use super::decide::guard;
use crate::kept_words;
use crate::quantity::{Amount, Reading, Span, Unit};
use pitleaf_translated::translated;

/// The kinds of gauge on the bench.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum GaugeKind {
    /// Feeler leaf.
    FeelerLeaf,
    /// Outside micrometer.
    OutsideMicrometer,
    /// Dial indicator.
    DialIndicator,
    /// Bore gauge.
    BoreGauge,
    /// Depth micrometer.
    DepthMicrometer,
    /// Vernier caliper.
    VernierCaliper,
    /// Straightedge and leaf.
    StraightedgeAndLeaf,
    /// Spring scale, torque wrench, pressure gauge, balance: doubt from the reading's own last digit.
    Other,
}

kept_words!(GaugeKind {
    FeelerLeaf = "feeler-leaf",
    OutsideMicrometer = "outside-micrometer",
    DialIndicator = "dial-indicator",
    BoreGauge = "bore-gauge",
    DepthMicrometer = "depth-micrometer",
    VernierCaliper = "vernier-caliper",
    StraightedgeAndLeaf = "straightedge-and-leaf",
    Other = "other",
});

/// A gauge with what can be said for it. The builder can change both figures.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Gauge {
    /// Which kind.
    pub kind: GaugeKind,
    /// The finest step it shows; none where the reading's own last digit decides.
    pub resolution: Option<Span>,
    /// The greatest error its maker allows, either way.
    pub permissible_error: Option<Span>,
}

impl GaugeKind {
    /// Every kind.
    pub const ALL: [Self; 8] = [
        Self::FeelerLeaf,
        Self::OutsideMicrometer,
        Self::DialIndicator,
        Self::BoreGauge,
        Self::DepthMicrometer,
        Self::VernierCaliper,
        Self::StraightedgeAndLeaf,
        Self::Other,
    ];

    /// Its name on the bench.
    #[must_use]
    #[translated]
    pub fn name(self) -> &'static str {
        match self {
            Self::FeelerLeaf => "feeler leaf",
            Self::OutsideMicrometer => "outside micrometer",
            Self::DialIndicator => "dial indicator",
            Self::BoreGauge => "bore gauge",
            Self::DepthMicrometer => "depth micrometer",
            Self::VernierCaliper => "vernier caliper",
            Self::StraightedgeAndLeaf => "straightedge and leaf",
            Self::Other => "other gauge",
        }
    }

    /// The usual gauge of its kind, in micrometres: (resolution, permissible error).
    ///
    /// From memory, of the order that ordinary workshop gauges state; the builder's own figures stand above them.
    const fn usual(self) -> Option<(i64, i64)> {
        match self {
            // A leaf answers "goes" or "does not": the step between leaves is its resolution.
            Self::FeelerLeaf => Some((10, 3)),
            Self::OutsideMicrometer => Some((1, 4)),
            Self::DialIndicator => Some((2, 8)),
            Self::BoreGauge => Some((2, 6)),
            Self::DepthMicrometer => Some((2, 5)),
            Self::VernierCaliper => Some((20, 30)),
            Self::StraightedgeAndLeaf => Some((10, 8)),
            Self::Other => None,
        }
    }
}

impl Gauge {
    /// The builder's own gauge of a kind.
    #[must_use]
    pub fn own(kind: GaugeKind, resolution: &Edge, permissible_error: &Edge) -> Self {
        let span = |edge: &Edge| Some(edge.amount().above_zero().size());
        Self { kind, resolution: span(resolution), permissible_error: span(permissible_error) }
    }

    /// The usual gauge of a kind.
    #[must_use]
    pub fn usual(kind: GaugeKind) -> Self {
        let micrometres = |count: i64| {
            Amount::whole(count, Unit::Micrometre).minus(Amount::whole(0, Unit::Micrometre))
        };
        let figures = kind.usual();
        Self {
            kind,
            resolution: figures.map(|(resolution, _)| micrometres(resolution)),
            permissible_error: figures.map(|(_, error)| micrometres(error)),
        }
    }

    /// The standard uncertainty of a reading taken with it, in `unit`.
    ///
    /// Type B (JCGM 100:2008, 4.3.7): r/√12 for a resolution r, m/√3 for a greatest error ±m, added in squares.
    /// The coarser of the gauge's resolution and the reading's own last digit counts.
    #[must_use]
    pub fn uncertainty(&self, reading: &Reading, unit: Unit) -> f64 {
        let own = reading.step().value(unit);
        let of = |span: Option<Span>| {
            span.filter(|span| span.dimension() == unit.dimension())
                .map_or(0.0, |span| span.value(unit))
        };
        let resolution = own.max(of(self.resolution));
        let error = of(self.permissible_error);
        (resolution * resolution / 12.0 + error * error / 3.0).sqrt()
    }

    /// The guard band of a reading taken with it: how far inside an edge it must lie to prove it.
    #[must_use]
    pub fn guard(&self, reading: &Reading) -> Span {
        guard(self.uncertainty(reading, reading.unit()), reading.unit(), reading.step())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::Bounds;

    #[test]
    fn a_finer_gauge_leaves_less_doubt() {
        let edge = |text: &str| Edge::read(text, Unit::Millimetre).unwrap();
        let own = Gauge::own(GaugeKind::OutsideMicrometer, &edge("0.001"), &edge("0.001"));
        let reading = Reading::read("79.940", Unit::Millimetre, &Bounds::SIZE).unwrap();
        let doubt = |gauge: Gauge| gauge.uncertainty(&reading, Unit::Micrometre);
        // r = 1 µm, m = 1 µm: √(1/12 + 1/3) µm by JCGM 100, 4.3.7.
        assert!((doubt(own) - 0.645_497).abs() < 1e-6, "got {}", doubt(own));
        assert!(
            doubt(own) < doubt(Gauge::usual(GaugeKind::OutsideMicrometer)),
            "the usual one is coarser"
        );
    }
}
