//! The usual gauge of each kind: steps, greatest error, and where they are from. Rows and sources only.
//!
//! From memory, of the order that standards ask of ordinary workshop gauges; the builder's own figures stand
//! above them.

use super::GaugeKind::{self, *};

/// The usual gauge of a kind.
pub(super) struct UsualGauge {
    pub(super) kind: GaugeKind,
    /// The finest step it shows.
    pub(super) steps: &'static str,
    /// The greatest error, either way.
    pub(super) error: &'static str,
    /// The standard it is remembered from; empty where there is none and it is common practice.
    pub(super) standard: &'static str,
}

const fn row(
    kind: GaugeKind,
    steps: &'static str,
    error: &'static str,
    standard: &'static str,
) -> UsualGauge {
    UsualGauge { kind, steps, error, standard }
}

pub(super) const USUAL: &[UsualGauge] = &[
    // A leaf answers "goes" or "does not": the step between leaves is its resolution.
    row(FeelerLeaf, "10 µm", "3 µm", "DIN 2275"),
    row(OutsideMicrometer, "1 µm", "4 µm", "ISO 3611, DIN 863-1"),
    row(DialIndicator, "2 µm", "8 µm", "ISO 463"),
    row(BoreGauge, "2 µm", "6 µm", "DIN 897"),
    row(DepthMicrometer, "2 µm", "5 µm", "DIN 863-2"),
    row(VernierCaliper, "20 µm", "30 µm", "ISO 13385-1"),
    row(StraightedgeAndLeaf, "10 µm", "8 µm", "DIN 874-1, DIN 2275"),
    // Bore gauge and micrometer: √(6² + 4²) = 7.2 µm, √(2² + 1²) = 2.2 µm.
    row(SizeDifference, "2.3 µm", "7.3 µm", "JCGM 100"),
    row(SteelRule, "0.5 mm", "0.3 mm", ""),
    row(RoughnessTester, "0.01 µm", "10 %", ""),
    row(PressureGauge, "10 kPa", "1.6 % of 1000 kPa", "EN 837-1"),
    row(CompressionTester, "10 kPa", "1.6 % of 2000 kPa", "EN 837-1"),
    // Of a loss, read twice on the one gauge: its own error goes out of the difference, but for a step.
    row(CoolingTester, "2 kPa", "2 kPa", ""),
    row(TorqueWrench, "1 N·m", "4 %", "ISO 6789-1"),
    row(SpringScale, "0.5 N", "0.5 N", ""),
    // Scale interval 1 g, load up to 6 kg.
    row(Balance, "1 g", "1.5 g", "OIML R 76, EN 45501"),
    // Class B at 100 °C, ±0.8 °C, rounded up.
    row(Thermometer, "0.1 °C", "1 °C", "EN 60751"),
    row(DegreeWheel, "1 °", "0.5 °", ""),
    row(Burette, "0.1 mL", "0.1 mL", "ISO 385"),
    row(FlowMeter, "0.1 L/min", "2 %", ""),
    row(BalancingMachine, "1 g·mm", "5 g·mm", ""),
];
