//! Surveys: what is read of a part before stacking, at which places, with which gauge.

mod own_places;
mod places;
mod rows;
mod set;

use crate::language::said;
use pitleaf_translated::{tr, translated};
pub use places::{LANDS, Place};
pub use set::{PlaceFault, PlacedReading, ReadingSet, SetFault, Taken};

use crate::kept::{Json, Kept, Refused};
use crate::limits::{GaugeKind, Picture};
use crate::quantity::{Bounds, Unit};
use rows::{ROWS, Row};

/// What is read, all places of it in one entry of the book.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Survey {
    /// A face by dial indicator, spot by spot.
    Flatness,
    /// A face by straightedge and leaf, line by line.
    Straightedge,
    /// What is to be lapped off a face, and the case that is there.
    Lapping,
    /// A side housing's thickness.
    SideThickness,
    /// A rotor housing's width.
    HousingWidth,
    /// A rotor's width over its lands.
    RotorWidth,
    /// The lengths of a rotor's apex seals.
    ApexSealLength,
    /// A bearing's bore.
    Bore,
    /// The journal that runs in it.
    Journal,
    /// Plastic gauge strips squeezed in a bearing.
    PlasticGauge,
    /// Runout of a shaft at eight places.
    RunoutEight,
    /// The same at twelve.
    RunoutTwelve,
    /// The spacers at hand.
    Spacers,
    /// End play with the spacer that is in.
    EndPlay,
    /// End play with the chosen spacer in.
    EndPlayAfter,
    /// The hole a bearing is pressed into.
    BearingSeat,
    /// The outside of a bearing, before it is pressed in.
    BearingShell,
    /// A face by dial indicator, on the builder's own grid.
    Grid,
    /// A face by dial indicator, at places the builder gives.
    OwnPlaces,
}

/// On which pieces a survey is made.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Pieces {
    /// There is only one.
    One,
    /// Every face of a side housing that a rotor runs on.
    SideFaces,
    /// Those, and both faces of every rotor housing.
    AllFaces,
    /// The side housings.
    SideHousings,
    /// The rotors, and the rotor housings round them.
    Rotors,
    /// The main bearings and the rotor bearings.
    Bearings,
    /// Where a shaft's runout is read.
    ShaftPlaces,
}

impl Survey {
    /// Every survey, in the order of the work.
    pub const ALL: [Self; 19] = [
        Self::Flatness,
        Self::Straightedge,
        Self::Lapping,
        Self::SideThickness,
        Self::HousingWidth,
        Self::RotorWidth,
        Self::ApexSealLength,
        Self::Bore,
        Self::Journal,
        Self::PlasticGauge,
        Self::RunoutEight,
        Self::RunoutTwelve,
        Self::Spacers,
        Self::EndPlay,
        Self::EndPlayAfter,
        Self::BearingSeat,
        Self::BearingShell,
        Self::Grid,
        Self::OwnPlaces,
    ];

    /// The surveys that belong together, under their headings.
    #[translated]
    pub const GROUPS: [(&'static str, &'static [Self]); 5] = [
        (
            "Faces",
            &[Self::Flatness, Self::Grid, Self::OwnPlaces, Self::Straightedge, Self::Lapping],
        ),
        (
            "Widths and stack",
            &[Self::SideThickness, Self::HousingWidth, Self::RotorWidth, Self::ApexSealLength],
        ),
        (
            "Bores and journals",
            &[Self::Bore, Self::Journal, Self::PlasticGauge, Self::BearingSeat, Self::BearingShell],
        ),
        ("Runout", &[Self::RunoutEight, Self::RunoutTwelve]),
        ("End play", &[Self::EndPlay, Self::Spacers, Self::EndPlayAfter]),
    ];

    /// The other surveys of its group that are made on the same piece.
    pub fn beside(self, piece: &str, rotors: u8) -> impl Iterator<Item = Self> {
        let group = Self::GROUPS.iter().find(|(_, group)| group.contains(&self));
        let others = group.into_iter().flat_map(|(_, group)| group.iter().copied());
        others.filter(move |&other| {
            other != self && other.pieces(rotors).iter().any(|name| name == piece)
        })
    }

    /// The picture of how it is measured, where its places have no map of their own.
    #[must_use]
    pub fn picture(self) -> Option<Picture> {
        Some(match self {
            Self::Straightedge => Picture::StraightedgeOnFace,
            Self::RotorWidth => Picture::MicrometerOverRotor,
            Self::ApexSealLength => Picture::MicrometerOverSeal,
            Self::Bore | Self::BearingSeat => Picture::BoreGauge,
            Self::Journal | Self::BearingShell => Picture::MicrometerOverRound,
            Self::PlasticGauge => Picture::StripInBearing,
            Self::Spacers => Picture::HeightOnPlate,
            Self::EndPlay | Self::EndPlayAfter => Picture::DialOnEnd,
            _ => return None,
        })
    }

    fn row(self) -> &'static Row {
        &ROWS[self as usize]
    }

    /// Its word in addresses, as in the book's file.
    #[must_use]
    pub fn word(self) -> &'static str {
        self.row().word
    }

    /// The survey with this word.
    #[must_use]
    pub fn named(word: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|survey| survey.word() == word)
    }

    /// What is read, for a heading.
    #[must_use]
    pub fn name(self) -> &'static str {
        self.row().name
    }

    /// How it is read, in a sentence or two.
    #[must_use]
    pub fn how(self) -> &'static str {
        self.row().how
    }

    /// A caution, where the work can hurt; else empty.
    #[must_use]
    pub fn caution(self) -> &'static str {
        self.row().caution
    }

    /// Whether it looks for the worst of fixed places, and so says nothing good before all are read. A bearing
    /// has more places than are always read.
    #[must_use]
    pub fn is_whole_by_places(self) -> bool {
        matches!(
            self,
            Self::Flatness
                | Self::Straightedge
                | Self::SideThickness
                | Self::HousingWidth
                | Self::RotorWidth
                | Self::ApexSealLength
                | Self::RunoutEight
                | Self::RunoutTwelve
        )
    }

    /// The gauge it is meant for.
    #[must_use]
    pub fn gauge(self) -> GaugeKind {
        self.row().gauge
    }

    /// The bounds of its readings; a place may have its own.
    #[must_use]
    pub fn bounds(self) -> &'static Bounds {
        self.row().bounds
    }

    /// The kind of its pieces.
    #[must_use]
    pub fn kind_of_pieces(self) -> Pieces {
        self.row().pieces
    }

    /// The pieces it is made on in an engine of so many rotors, as they stand in addresses; one empty
    /// name where there is only one.
    #[must_use]
    pub fn pieces(self, rotors: u8) -> Vec<String> {
        let sides = |faces: bool| {
            let between = (1..rotors).flat_map(move |number| {
                let name = format!("intermediate-{number}");
                if faces {
                    vec![format!("{name}-front"), format!("{name}-rear")]
                } else {
                    vec![name]
                }
            });
            let all = std::iter::once("front".to_owned()).chain(between);
            all.chain(std::iter::once("rear".to_owned())).collect::<Vec<_>>()
        };
        let each_rotor = || (1..=rotors).map(|rotor| format!("rotor-{rotor}"));
        match self.row().pieces {
            Pieces::One => vec![String::new()],
            Pieces::SideFaces => sides(true),
            Pieces::AllFaces => {
                let housings = each_rotor()
                    .flat_map(|rotor| [format!("{rotor}-front"), format!("{rotor}-rear")]);
                sides(true).into_iter().chain(housings).collect()
            }
            Pieces::SideHousings => sides(false),
            Pieces::Rotors => each_rotor().collect(),
            Pieces::Bearings => ["main-front", "main-rear"]
                .map(str::to_owned)
                .into_iter()
                .chain(each_rotor())
                .collect(),
            Pieces::ShaftPlaces => {
                ["front-end", "rear-end", "flywheel"].map(str::to_owned).to_vec()
            }
        }
    }

    /// The unit its readings start in.
    #[must_use]
    pub fn unit(self) -> Unit {
        Unit::Millimetre
    }
}

impl Kept for Survey {
    fn json(&self) -> Json<'_> {
        Json::Text(self.word().into())
    }

    fn of_json(json: &Json<'_>) -> Result<Self, Refused> {
        Self::named(json.text()?)
            .ok_or_else(|| Refused::because(&"a survey that is not known here"))
    }
}

/// A piece's name as it is said: "intermediate 1, rear face".
#[must_use]
pub fn piece_words(piece: &str) -> String {
    match piece.rsplit_once('-') {
        Some((name, end @ ("front" | "rear"))) if name != "main" => {
            tr!("{}, {} face", said(&name.replace('-', " ")), said(end))
        }
        _ => said(&piece.replace('-', " ")),
    }
}
