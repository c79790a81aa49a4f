//! The places of each survey, by name, and where they lie on the part.

use super::super::input::of_mm;
use super::super::layout::{Ring, side_housing_spots};
use super::Survey;
use crate::language::said;
use crate::quantity::Bounds;
use crate::trochoid::Trochoid;
use std::f64::consts::TAU;
use uom::si::f64::{Angle, Length};

/// One place to read.
#[derive(Clone, Debug, PartialEq)]
pub struct Place {
    /// Its name, which is its key in the book.
    pub name: String,
    /// Where it lies on the part: in the housing frame on a housing, on a circle of radius 100 mm on a
    /// shaft. None where the survey has no map.
    pub at: Option<[Length; 2]>,
    /// What a reading here may be.
    pub bounds: &'static Bounds,
}

impl Place {
    /// Its name as it is said.
    #[must_use]
    pub fn said(&self) -> String {
        said(&self.name)
    }
}

/// How many of a face's spots lie on the land; those on the swept band follow, in the same order.
pub const LANDS: usize = 12;

/// How far to either side of the bore's outline a face is read, and a rotor housing's width outside it.
const ASIDE: f64 = 8.0;

/// The clock hours a housing's width is read at, the long axis upright: both ends, both waists, between.
const HOURS: [u8; 8] = [12, 2, 3, 4, 6, 8, 9, 10];

/// The most rows and columns of a grid.
const ROWS: u8 = 9;
const COLUMNS: u8 = 7;

impl Survey {
    /// Its places, in the order they are read. On a housing they lie along the engine's own bore; their
    /// names are the same on every engine. None where the builder gives them.
    #[must_use]
    pub fn places(self, bore: Trochoid) -> Vec<Place> {
        match self {
            Self::Flatness => self.spots(bore, |_, _| true),
            Self::Grid => self.grid(bore),
            Self::OwnPlaces => Vec::new(),
            Self::SideThickness | Self::HousingWidth => {
                self.spots(bore, |hour, ring| ring == Ring::Land && HOURS.contains(&hour))
            }
            Self::Straightedge => self.ends(
                &["along", "across", "diagonal from 1 to 7", "diagonal from 11 to 5"],
                &["goes under", "does not"],
            ),
            Self::Lapping => self.list(&[
                "flatness now",
                "worst place, under the highest",
                "flatness wanted",
                "case depth, least",
                "case depth, most",
                "growth in hardening, least",
                "growth in hardening, most",
                "finish after hardening",
                "compound layer, least",
                "compound layer, most",
            ]),
            Self::RotorWidth => {
                self.list(&["corner A", "flank AB", "corner B", "flank BC", "corner C", "flank CA"])
            }
            Self::ApexSealLength => self.list(&["seal A", "seal B", "seal C"]),
            Self::Bore | Self::Journal | Self::BearingSeat | Self::BearingShell => {
                self.ends(&["front end", "middle", "rear end"], &["up and down", "across"])
            }
            Self::PlasticGauge => self.ends(
                &[
                    "strip 1, narrow end",
                    "strip 1, wide end",
                    "strip 2, narrow end",
                    "strip 2, wide end",
                ],
                &["at least", "under"],
            ),
            Self::RunoutEight => self.round(8),
            Self::RunoutTwelve => self.round(12),
            Self::Spacers => {
                // A to Z, then AA to AZ, BA to BZ: a well kept drawer.
                let mut all = Vec::new();
                for first in ["", "A", "B"] {
                    for letter in 'A'..='Z' {
                        all.push(self.place(format!("spacer {first}{letter}")));
                    }
                }
                all
            }
            Self::EndPlay => {
                let mut places = self.list(&["reading 1", "reading 2", "reading 3"]);
                places.push(Place {
                    bounds: &Bounds::SIZE,
                    ..self.place("spacer that is in".to_owned())
                });
                places
            }
            Self::EndPlayAfter => self.list(&["reading 1", "reading 2", "reading 3"]),
        }
    }

    fn place(self, name: String) -> Place {
        Place { name, at: None, bounds: self.bounds() }
    }

    fn list(self, names: &[&str]) -> Vec<Place> {
        names.iter().map(|name| self.place((*name).to_owned())).collect()
    }

    fn ends(self, places: &[&str], ends: &[&str]) -> Vec<Place> {
        let mut all = Vec::new();
        for place in places {
            for end in ends {
                all.push(self.place(format!("{place}, {end}")));
            }
        }
        all
    }

    /// Spots by the clock; on a width they are named by the hour alone.
    fn spots(self, bore: Trochoid, kept: fn(u8, Ring) -> bool) -> Vec<Place> {
        let spots = side_housing_spots(bore, of_mm(ASIDE)).unwrap_or_default();
        let kept = spots.into_iter().filter(|spot| kept(spot.hour, spot.ring));
        kept.map(|spot| Place {
            name: if self == Self::Flatness {
                spot.to_string()
            } else {
                format!("{} o’clock", spot.hour)
            },
            at: Some([spot.x, spot.y]),
            bounds: self.bounds(),
        })
        .collect()
    }

    /// Rows from 12 o'clock down, columns from the left, over the bore's own length and width. A grid of
    /// other steps stands here just as well: flatness stays the same when a face is stretched in its plane.
    fn grid(self, bore: Trochoid) -> Vec<Place> {
        let (along, across) =
            (bore.point(Angle::default()).x(), bore.point(Angle::HALF_TURN * 0.5).y());
        let from_middle = |at: u8, count: u8| 1.0 - 2.0 * f64::from(at) / f64::from(count - 1);
        let mut all = Vec::new();
        for row in 0..ROWS {
            for column in 0..COLUMNS {
                let place = self.place(format!("row {}, column {}", row + 1, column + 1));
                let at = [along * from_middle(row, ROWS), across * from_middle(column, COLUMNS)];
                all.push(Place { at: Some(at), ..place });
            }
        }
        all
    }

    /// Places round a shaft as it is seen from the front, place 1 on top, counted clockwise.
    fn round(self, count: u8) -> Vec<Place> {
        const RADIUS: f64 = 100.0;
        let place = |number: u8| {
            let angle = TAU * f64::from(number) / f64::from(count);
            let at = [of_mm(RADIUS * angle.cos()), of_mm(-RADIUS * angle.sin())];
            Place { at: Some(at), ..self.place(format!("place {}", number + 1)) }
        };
        (0..count).map(place).collect()
    }
}
