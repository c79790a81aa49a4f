//! An engine's measures as typed: exact text, read when they are needed.

use crate::kept_fields;
use pitleaf_translated::translated;
use uom::si::{f64::Length, length::millimeter};

use super::{Engine, Geometry, GeometryFault, Seals};
use crate::quantity::{Bounds, Reading, Unit};

/// A measure of the engine.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Measure {
    /// e, from the shaft's axis to the rotor's centre.
    Eccentricity,
    /// R, from the rotor's centre to the centre of an apex seal's nose.
    GeneratingRadius,
    /// a, the radius of the apex seal's nose.
    ApexSealOffset,
    /// b, across the rotor housing.
    HousingWidth,
    /// From the rotor's centre to a corner seal's centre.
    CornerDistance,
    /// The corner seal's radius.
    CornerRadius,
    /// From the flank's edge in to the side seal.
    SideInset,
    /// The outer oil seal's radius.
    OilRadius,
    /// From the bore out to the coolant seal's land.
    CoolantLand,
}

impl Measure {
    /// All of them, in the order of [`TypedEngine::texts`].
    pub const ALL: [Self; 9] = [
        Self::Eccentricity,
        Self::GeneratingRadius,
        Self::ApexSealOffset,
        Self::HousingWidth,
        Self::CornerDistance,
        Self::CornerRadius,
        Self::SideInset,
        Self::OilRadius,
        Self::CoolantLand,
    ];

    /// What it is called, in lower case, as in the sentences of its faults.
    #[must_use]
    #[translated]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Eccentricity => "eccentricity",
            Self::GeneratingRadius => "generating radius",
            Self::ApexSealOffset => "apex-seal offset",
            Self::HousingWidth => "housing width",
            Self::CornerDistance => "corner seal's distance from the rotor's centre",
            Self::CornerRadius => "corner seal's radius",
            Self::SideInset => "side seal's inset",
            Self::OilRadius => "oil seal's radius",
            Self::CoolantLand => "coolant land's distance",
        }
    }

    /// From where to where it is measured.
    #[must_use]
    #[translated]
    pub const fn how(self) -> &'static str {
        match self {
            Self::Eccentricity => "e: from the shaft's axis to the middle of its lobe",
            Self::GeneratingRadius => {
                "R: from the rotor's centre to the centre of an apex seal's nose"
            }
            Self::ApexSealOffset => "a: radius of the apex seal's nose",
            Self::HousingWidth => "b: across the rotor housing",
            Self::CornerDistance => "to the middle of the corner seal",
            Self::CornerRadius => "half its diameter",
            Self::SideInset => "from the flank's edge to the middle of the slot",
            Self::OilRadius => "the outer one, half its diameter",
            Self::CoolantLand => "from the bore to where the groove's land begins",
        }
    }

    fn of(fault: &GeometryFault) -> Self {
        match fault {
            GeometryFault::OutOfBounds { bound, .. } => Self::ALL
                .into_iter()
                .find(|measure| measure.name() == bound.name)
                .unwrap_or(Self::Eccentricity),
            GeometryFault::BoreCrosses { .. } | GeometryFault::FlankHollow { .. } => {
                Self::GeneratingRadius
            }
            GeometryFault::OffsetTooLarge { .. } => Self::ApexSealOffset,
            GeometryFault::CornerSealOutside { .. } => Self::CornerRadius,
            GeometryFault::OilSealOutside { .. } => Self::OilRadius,
        }
    }
}

/// What is wrong with a measure as typed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct MeasureFault {
    /// The measure to look at.
    pub measure: Measure,
    /// The sentence.
    pub words: String,
}

/// An engine's measures as typed, in one unit where none is typed behind a number.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct TypedEngine {
    /// The unit set.
    pub unit: Unit,
    /// The texts, in the order of [`Measure::ALL`].
    pub texts: [String; 9],
    /// Whether it was put in with a version that takes the noses of the rotor's apex seals out of the
    /// chambers; see [`super::Correction`].
    pub noses: bool,
}

kept_fields!(TypedEngine { unit, texts, noses: left_out });

impl TypedEngine {
    /// The measures as this version puts them in.
    #[must_use]
    pub const fn new(unit: Unit, texts: [String; 9]) -> Self {
        Self { unit, texts, noses: true }
    }

    /// The preset's measures.
    #[must_use]
    pub fn preset() -> Self {
        let texts = ["15", "102", "3", "80", "97.5", "5.5", "4", "56", "6"];
        Self::new(Unit::Millimetre, texts.map(str::to_owned))
    }

    /// The engine they make.
    ///
    /// # Errors
    /// Every measure that can't be read; if all can, everything that can't be.
    pub fn engine(&self) -> Result<Engine, Vec<MeasureFault>> {
        let mut faults = Vec::new();
        let mut lengths = [Length::default(); 9];
        for ((measure, text), length) in Measure::ALL.into_iter().zip(&self.texts).zip(&mut lengths)
        {
            match Reading::read(text, self.unit, &Bounds::SIZE) {
                Ok(reading) => {
                    *length = Length::new::<millimeter>(reading.amount().value(Unit::Millimetre));
                }
                Err(fault) => faults.push(MeasureFault { measure, words: fault.to_string() }),
            }
        }
        if !faults.is_empty() {
            return Err(faults);
        }
        let [e, r, a, b, corner_distance, corner_radius, side_inset, oil_radius, coolant_land] =
            lengths;
        let seals = Seals { corner_distance, corner_radius, side_inset, oil_radius, coolant_land };
        Geometry::new(e, r, a, b).and_then(|geometry| Engine::new(geometry, seals)).map_err(
            |faults| {
                let said = |fault: &GeometryFault| MeasureFault {
                    measure: Measure::of(fault),
                    words: fault.to_string(),
                };
                faults.iter().map(said).collect()
            },
        )
    }
}
