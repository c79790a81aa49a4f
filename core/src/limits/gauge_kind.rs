//! The kinds of gauge, and what each can measure.

use crate::kept_words;
use crate::quantity::{Dimension, Unit};
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
    /// A clearance as the difference of two sizes: bore gauge in the one part, micrometer over the other.
    SizeDifference,
    /// Steel rule.
    SteelRule,
    /// Roughness tester.
    RoughnessTester,
    /// Pressure gauge, of oil for one.
    PressureGauge,
    /// Compression tester that holds its peaks.
    CompressionTester,
    /// Hand pump with a gauge, for the cooling system.
    CoolingTester,
    /// Torque wrench.
    TorqueWrench,
    /// Spring scale.
    SpringScale,
    /// Balance.
    Balance,
    /// Thermometer.
    Thermometer,
    /// Degree wheel.
    DegreeWheel,
    /// Burette.
    Burette,
    /// Flow meter.
    FlowMeter,
    /// Balancing machine.
    BalancingMachine,
    /// Any other. In older books also every gauge from the steel rule on, before those had names of their own.
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
    SizeDifference = "size-difference",
    SteelRule = "steel-rule",
    RoughnessTester = "roughness-tester",
    PressureGauge = "pressure-gauge",
    CompressionTester = "compression-tester",
    CoolingTester = "cooling-tester",
    TorqueWrench = "torque-wrench",
    SpringScale = "spring-scale",
    Balance = "balance",
    Thermometer = "thermometer",
    DegreeWheel = "degree-wheel",
    Burette = "burette",
    FlowMeter = "flow-meter",
    BalancingMachine = "balancing-machine",
    Other = "other",
});

impl GaugeKind {
    /// Every kind.
    pub const ALL: [Self; 22] = [
        Self::FeelerLeaf,
        Self::OutsideMicrometer,
        Self::DialIndicator,
        Self::BoreGauge,
        Self::DepthMicrometer,
        Self::VernierCaliper,
        Self::StraightedgeAndLeaf,
        Self::SizeDifference,
        Self::SteelRule,
        Self::RoughnessTester,
        Self::PressureGauge,
        Self::CompressionTester,
        Self::CoolingTester,
        Self::TorqueWrench,
        Self::SpringScale,
        Self::Balance,
        Self::Thermometer,
        Self::DegreeWheel,
        Self::Burette,
        Self::FlowMeter,
        Self::BalancingMachine,
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
            Self::SizeDifference => "two sizes, one less the other",
            Self::SteelRule => "steel rule",
            Self::RoughnessTester => "roughness tester",
            Self::PressureGauge => "pressure gauge",
            Self::CompressionTester => "compression tester",
            Self::CoolingTester => "cooling system tester",
            Self::TorqueWrench => "torque wrench",
            Self::SpringScale => "spring scale",
            Self::Balance => "balance",
            Self::Thermometer => "thermometer",
            Self::DegreeWheel => "degree wheel",
            Self::Burette => "burette",
            Self::FlowMeter => "flow meter",
            Self::BalancingMachine => "balancing machine",
            Self::Other => "other gauge",
        }
    }

    /// The unit its figures are usually given in; what it measures is that unit's dimension.
    #[must_use]
    pub fn unit(self) -> Unit {
        match self {
            Self::RoughnessTester => Unit::Micrometre,
            Self::PressureGauge | Self::CompressionTester | Self::CoolingTester => Unit::Kilopascal,
            Self::TorqueWrench => Unit::NewtonMetre,
            Self::SpringScale => Unit::Newton,
            Self::Balance => Unit::Gram,
            Self::Thermometer => Unit::Celsius,
            Self::DegreeWheel => Unit::Degree,
            Self::Burette => Unit::Millilitre,
            Self::FlowMeter => Unit::LitrePerMinute,
            Self::BalancingMachine => Unit::GramMillimetre,
            _ => Unit::Millimetre,
        }
    }

    /// Whether its figure is stamped on it and not read off a scale: a leaf marked 3 is the same leaf
    /// whether 3, 3.0 or 2½ and another was typed.
    #[must_use]
    pub fn is_stamped(self) -> bool {
        matches!(self, Self::FeelerLeaf | Self::StraightedgeAndLeaf)
    }

    /// The kind for a dimension that only one is usual for; none for lengths and power.
    pub(super) fn usual_for(dimension: Dimension) -> Option<Self> {
        Some(match dimension {
            Dimension::Pressure => Self::PressureGauge,
            Dimension::Torque => Self::TorqueWrench,
            Dimension::Force => Self::SpringScale,
            Dimension::Mass => Self::Balance,
            Dimension::Temperature => Self::Thermometer,
            Dimension::Angle => Self::DegreeWheel,
            Dimension::Volume => Self::Burette,
            Dimension::Flow => Self::FlowMeter,
            Dimension::Unbalance => Self::BalancingMachine,
            _ => return None,
        })
    }
}
