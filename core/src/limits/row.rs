//! A limit row: what is measured, on which part, how, with which gauge, and what it may be.

use super::{GaugeKind, Limit, Source};
use crate::quantity::{Bounds, Dimension, Unit};
use crate::{kept_fields, kept_words};
use pitleaf_translated::translated;

/// The parts a strip-down measures, in the order they come off.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Part {
    /// Side seals.
    SideSeal,
    /// Corner seals.
    CornerSeal,
    /// Apex seals.
    ApexSeal,
    /// Oil seals (the rings in a rotor's face) and their springs.
    OilSeal,
    /// Rotors.
    Rotor,
    /// Rotor housings.
    RotorHousing,
    /// Front, intermediate and rear side housings.
    SideHousing,
    /// Eccentric shaft.
    EccentricShaft,
    /// Main, rotor and thrust bearings.
    Bearing,
    /// The whole engine as stacked: end play, backlash, compression.
    Assembly,
    /// Tension bolts, studs and dowels.
    Fastener,
}

kept_words!(Part {
    SideSeal = "side-seal",
    CornerSeal = "corner-seal",
    ApexSeal = "apex-seal",
    OilSeal = "oil-seal",
    Rotor = "rotor",
    RotorHousing = "rotor-housing",
    SideHousing = "side-housing",
    EccentricShaft = "eccentric-shaft",
    Bearing = "bearing",
    Assembly = "assembly",
    Fastener = "fastener",
});

impl Part {
    /// Every part.
    pub const ALL: [Self; 11] = [
        Self::SideSeal,
        Self::CornerSeal,
        Self::ApexSeal,
        Self::OilSeal,
        Self::Rotor,
        Self::RotorHousing,
        Self::SideHousing,
        Self::EccentricShaft,
        Self::Bearing,
        Self::Assembly,
        Self::Fastener,
    ];

    /// Its word in addresses.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::SideSeal => "side-seals",
            Self::CornerSeal => "corner-seals",
            Self::ApexSeal => "apex-seals",
            Self::OilSeal => "oil-seals",
            Self::Rotor => "rotors",
            Self::RotorHousing => "rotor-housings",
            Self::SideHousing => "side-housings",
            Self::EccentricShaft => "eccentric-shaft",
            Self::Bearing => "bearings",
            Self::Assembly => "assembled-engine",
            Self::Fastener => "bolts-and-dowels",
        }
    }

    /// Its name, plural where there are several.
    #[must_use]
    #[translated]
    pub fn name(self) -> &'static str {
        match self {
            Self::SideSeal => "Side seals",
            Self::CornerSeal => "Corner seals",
            Self::ApexSeal => "Apex seals",
            Self::OilSeal => "Oil seals",
            Self::Rotor => "Rotors",
            Self::RotorHousing => "Rotor housings",
            Self::SideHousing => "Side housings",
            Self::EccentricShaft => "Eccentric shaft",
            Self::Bearing => "Bearings",
            Self::Assembly => "Assembled engine",
            Self::Fastener => "Bolts and dowels",
        }
    }
}

/// Which build a row holds for.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum BuildKind {
    /// Every build.
    #[default]
    Any,
    /// Naturally aspirated.
    NaturallyAspirated,
    /// Forced induction.
    ForcedInduction,
}

kept_words!(BuildKind {
    Any = "any",
    NaturallyAspirated = "naturally-aspirated",
    ForcedInduction = "forced-induction",
});

impl BuildKind {
    /// Its name.
    #[must_use]
    #[translated]
    pub fn name(self) -> &'static str {
        match self {
            Self::Any => "any build",
            Self::NaturallyAspirated => "naturally aspirated",
            Self::ForcedInduction => "forced induction",
        }
    }

    /// Whether a row of this kind holds for a build of that kind.
    #[must_use]
    pub fn holds_for(self, build: Self) -> bool {
        self == Self::Any || build == Self::Any || self == build
    }
}

/// What kind of reading a row takes: which values can be sensible at all.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Input {
    /// A clearance.
    Gap,
    /// A size over faces.
    Size,
    /// A height over or under a face.
    Height,
    /// A departure from true form.
    Deviation,
    /// Anything else, of the row's own unit.
    Other,
}

kept_words!(Input {
    Gap = "gap",
    Size = "size",
    Height = "height",
    Deviation = "deviation",
    Other = "other",
});

/// What lengths are typed and shown in, as the builder set it.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum LengthsIn {
    /// Each limit in the unit its source uses.
    #[default]
    AsWritten,
    /// Millimetres.
    Millimetre,
    /// Thou, and inches for sizes.
    Thou,
}

kept_words!(LengthsIn { AsWritten = "AsWritten", Millimetre = "Millimetre", Thou = "Thou" });

impl LengthsIn {
    /// The unit of readings that belong to no row.
    #[must_use]
    pub fn unit(self) -> Unit {
        match self {
            Self::AsWritten | Self::Millimetre => Unit::Millimetre,
            Self::Thou => Unit::Thou,
        }
    }
}

/// How the id of a row ends whose one reading stands for a whole set.
const SPREAD: &str = "-spread";

/// A limit row.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Row {
    /// Its id, stable over editions of a sheet: the book refers to it.
    pub id: String,
    /// On which part.
    pub part: Part,
    /// What is measured.
    pub what: String,
    /// How it is measured, in a sentence or two.
    pub how: String,
    /// The gauge it is meant for.
    pub gauge: GaugeKind,
    /// The kind of reading.
    pub input: Input,
    /// The unit its limits are written in.
    pub unit: Unit,
    /// The limit.
    pub limit: Limit,
    /// Which build it holds for.
    pub build: BuildKind,
    /// Who says so.
    pub source: Source,
    /// What to know beside it.
    pub note: String,
    /// A caution, where the measuring can hurt someone; else empty.
    pub caution: String,
    /// Other words a shop finds it by.
    pub words: String,
    /// At how many turns a minute the starter has to crank for the limit to hold, at the sea. A reading of
    /// such a row says nothing without its speed and its air: see [`crate::route::compression_in`].
    pub cranking_speed: Option<u32>,
}

kept_fields!(Row {
    id,
    part,
    what,
    how: or_usual,
    gauge,
    input,
    unit,
    limit,
    build,
    source,
    note: or_usual,
    caution: or_usual,
    words: or_usual,
    cranking_speed: left_out
});

impl Row {
    /// The unit a shop speaks of it in: a gap of an inch sheet in thou.
    #[must_use]
    pub fn spoken_unit(&self) -> Unit {
        match (self.unit, self.input) {
            (Unit::Inch, Input::Gap | Input::Deviation | Input::Height) => Unit::Thou,
            (unit, _) => unit,
        }
    }

    /// The unit this row is shown and typed in, where the builder wants lengths in these.
    #[must_use]
    pub fn unit_in(&self, lengths: LengthsIn) -> Unit {
        match (lengths, self.input) {
            _ if self.unit.dimension() != Dimension::Length => self.spoken_unit(),
            (LengthsIn::AsWritten, _) => self.spoken_unit(),
            (LengthsIn::Millimetre, _) => Unit::Millimetre,
            (LengthsIn::Thou, Input::Size) => Unit::Inch,
            (LengthsIn::Thou, _) => Unit::Thou,
        }
    }

    /// The bounds a reading of this row is read with.
    #[must_use]
    pub fn bounds(&self) -> &'static Bounds {
        match self.input {
            Input::Gap => &Bounds::GAP,
            Input::Size => &Bounds::SIZE,
            Input::Height => &Bounds::HEIGHT,
            Input::Deviation => &Bounds::DEVIATION,
            Input::Other => Bounds::widest(self.unit.dimension()),
        }
    }

    /// Whether a reading can be judged by its figure alone: there is an edge, and no conditions to be told
    /// along with it.
    #[must_use]
    pub fn is_judged_bare(&self) -> bool {
        self.limit.has_edge() && self.cranking_speed.is_none()
    }

    /// Why a bare figure of it can't be judged, and where it can; none where it can.
    #[must_use]
    #[translated]
    pub fn needs_conditions(&self) -> Option<String> {
        self.cranking_speed.map(|speed| {
            format!("The limit holds at {speed} turns a minute and at the sea. Type it with its speed and altitude under “Compression test”: only there is it compared.")
        })
    }

    /// Whether one reading stands for a whole set: the spread of its pieces.
    ///
    /// The sheet says so by the row's id.
    #[must_use]
    pub fn is_of_a_set(&self) -> bool {
        self.id.ends_with(SPREAD)
    }

    /// By what the pieces of such a set are measured one by one: a length without a limit of its own, for
    /// only their spread has one. None for other rows.
    #[must_use]
    #[translated]
    pub fn piece(&self) -> Option<Self> {
        let set = self.id.strip_suffix(SPREAD)?;
        (self.unit.dimension() == Dimension::Length).then(|| Self {
            id: format!("{set}-piece"),
            what: self.what.split(", spread").next().unwrap_or_default().to_owned(),
            input: Input::Size,
            limit: Limit::default(),
            ..self.clone()
        })
    }
}
