//! Which picture shows where and how a row is measured: the part, the gauge, the places.

use super::{GaugeKind, Input, Part, Row};
use crate::quantity::Dimension;

/// A way of measuring, as it is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Picture {
    /// A leaf between the end of a seal and what it runs up to.
    LeafAtEnd,
    /// A leaf between two flanks: a seal in its slot, lobes of a pump.
    LeafInSlot,
    /// A straightedge over a face, with a leaf under it, and the lines to try.
    StraightedgeOnFace,
    /// A part laid on a surface plate, with a leaf under it.
    LeafOnPlate,
    /// A micrometer over the two faces of a housing, and its places by the clock.
    MicrometerOverHousing,
    /// A micrometer over a round part, two diameters across each other.
    MicrometerOverRound,
    /// A micrometer or a caliper over a flat part, at the middle and both ends.
    MicrometerOverSeal,
    /// A micrometer over the lands of a rotor, at its corners and the middle of each flank.
    MicrometerOverRotor,
    /// A strip of plastic squeezed in a bearing, and the scale it is held against.
    StripInBearing,
    /// A gauge in a bore, two diameters across each other.
    BoreGauge,
    /// A depth micrometer, or a gauge on a bridge, from one face down to another.
    DepthFromFace,
    /// A cover over a stack on a shaft's end, and the room between them.
    CoverOverStack,
    /// A dial indicator on a bridge over a worn track.
    DialOverTrack,
    /// A dial indicator on a shaft that turns on vee blocks.
    DialOnShaft,
    /// A dial indicator on the end of a shaft that is pushed to and fro.
    DialOnEnd,
    /// A dial indicator on a gear's tooth that is rocked.
    DialOnTooth,
    /// A spring or a stack standing on a surface plate.
    HeightOnPlate,
    /// A chain pressed in by a thumb between its sprockets.
    ChainSlack,
    /// A torque wrench on a bolt.
    TorqueWrench,
    /// A pressure gauge screwed in where the pressure is.
    PressureGauge,
    /// A balance.
    Balance,
    /// A vessel with a scale and a thermometer in it.
    Vessel,
}

impl Row {
    /// The picture of how it is measured.
    #[must_use]
    pub fn picture(&self) -> Picture {
        use GaugeKind as Gauge;
        match self.unit.dimension() {
            Dimension::Torque => return Picture::TorqueWrench,
            Dimension::Pressure => return Picture::PressureGauge,
            Dimension::Mass | Dimension::Force | Dimension::Unbalance => return Picture::Balance,
            Dimension::Volume | Dimension::Temperature | Dimension::Flow => return Picture::Vessel,
            _ => {}
        }
        let is_seal = matches!(self.part, Part::ApexSeal | Part::SideSeal);
        match (self.gauge, self.part, self.input) {
            (Gauge::StraightedgeAndLeaf, ..) if is_seal => Picture::LeafOnPlate,
            (Gauge::StraightedgeAndLeaf, ..) => Picture::StraightedgeOnFace,
            (Gauge::FeelerLeaf, ..) if is_seal && !self.id.contains("slot") => Picture::LeafAtEnd,
            (Gauge::FeelerLeaf, ..) => Picture::LeafInSlot,
            (Gauge::BoreGauge, ..) => Picture::BoreGauge,
            (Gauge::DepthMicrometer, Part::Assembly, _) => Picture::CoverOverStack,
            (Gauge::DepthMicrometer, _, Input::Deviation) if self.part != Part::Rotor => {
                Picture::HeightOnPlate
            }
            (Gauge::DepthMicrometer, ..) => Picture::DepthFromFace,
            (Gauge::DialIndicator, Part::Assembly, _) if self.id == "end-play" => {
                Picture::DialOnEnd
            }
            (Gauge::DialIndicator, Part::Assembly | Part::Rotor, _) => Picture::DialOnTooth,
            (Gauge::DialIndicator, ..) if self.id.ends_with("runout") => Picture::DialOnShaft,
            (Gauge::DialIndicator, ..) => Picture::DialOverTrack,
            (Gauge::VernierCaliper, ..)
                if self.id.contains("spring") || self.part == Part::Fastener =>
            {
                Picture::HeightOnPlate
            }
            (
                Gauge::OutsideMicrometer,
                Part::EccentricShaft | Part::CornerSeal | Part::Bearing,
                _,
            ) => Picture::MicrometerOverRound,
            (Gauge::OutsideMicrometer, Part::RotorHousing | Part::SideHousing | Part::Rotor, _) => {
                Picture::MicrometerOverHousing
            }
            (Gauge::OutsideMicrometer | Gauge::VernierCaliper, ..) => Picture::MicrometerOverSeal,
            (Gauge::SizeDifference, ..) => Picture::BoreGauge,
            (_, Part::Assembly, _) if self.id.contains("chain") => Picture::ChainSlack,
            _ => Picture::DialOverTrack,
        }
    }
}
