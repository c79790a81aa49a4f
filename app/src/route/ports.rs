//! The places of the port screens.

use pitleaf_core::ports::{PortName, SideHousing};

/// A port screen, with the housing or the port it is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PortsPlace {
    /// A side housing's plate with its rotor.
    Plate(SideHousing),
    /// Which face of it is looked at.
    Face(SideHousing),
    /// Its figures, and what its ports run into.
    Figures(SideHousing),
    /// Its template.
    Template(SideHousing),
    /// A port's outline.
    Outline(PortName),
    /// The line not to cross around a port.
    Room(PortName),
    /// The engine's measures.
    Engine,
    /// Chamber volume, ratio and recess.
    Volume,
}

impl PortsPlace {
    /// Reads what stands behind `#/ports`.
    pub fn read(pieces: &[&str]) -> Option<Self> {
        let housing =
            |word: &str| SideHousing::ALL.into_iter().find(|housing| housing.word() == word);
        let port =
            |word: &str, name: &str| PortName::all(housing(word)?).find(|port| port.word() == name);
        Some(match *pieces {
            [] => Self::Plate(SideHousing::Front),
            ["engine"] => Self::Engine,
            ["volume"] => Self::Volume,
            [word] => Self::Plate(housing(word)?),
            [word, "face"] => Self::Face(housing(word)?),
            [word, "figures"] => Self::Figures(housing(word)?),
            [word, "template"] => Self::Template(housing(word)?),
            [word, "outline", name] => Self::Outline(port(word, name)?),
            [word, "room", name] => Self::Room(port(word, name)?),
            _ => return None,
        })
    }

    /// What stands behind `#/ports`, with a slash before each piece.
    pub fn hash(self) -> String {
        match self {
            Self::Plate(housing) => format!("/{}", housing.word()),
            Self::Face(housing) => format!("/{}/face", housing.word()),
            Self::Figures(housing) => format!("/{}/figures", housing.word()),
            Self::Template(housing) => format!("/{}/template", housing.word()),
            Self::Outline(port) => format!("/{}/outline/{}", port.housing.word(), port.word()),
            Self::Room(port) => format!("/{}/room/{}", port.housing.word(), port.word()),
            Self::Engine => "/engine".to_owned(),
            Self::Volume => "/volume".to_owned(),
        }
    }

    /// The plate it belongs to; none for the plates themselves.
    pub fn plate(self) -> Option<Self> {
        match self {
            Self::Plate(_) => None,
            Self::Face(housing) | Self::Figures(housing) | Self::Template(housing) => {
                Some(Self::Plate(housing))
            }
            Self::Outline(port) | Self::Room(port) => Some(Self::Plate(port.housing)),
            Self::Engine | Self::Volume => Some(Self::Plate(SideHousing::Front)),
        }
    }
}
