//! The geometry with the seals on the rotor's face and the land in the side housing.

use pitleaf_translated::translated;
use std::f64::consts::{FRAC_PI_3, TAU};

use uom::si::{f64::Length, length::millimeter};

use super::{Bound, Flank, Geometry, GeometryFault, Point, Trochoid};

/// The bounds of the seals' measures in mm, in the order of [`Seals`]' fields (our own choice, to
/// catch slips of the unit).
#[translated]
static BOUNDS: [Bound; 5] = [
    Bound::new("corner seal's distance from the rotor's centre", 5.0, 600.0),
    Bound::new("corner seal's radius", 0.5, 30.0),
    Bound::new("side seal's inset", 0.0, 30.0),
    Bound::new("oil seal's radius", 1.0, 500.0),
    Bound::new("coolant land's distance", 0.5, 60.0),
];

/// Where the seals run, on the rotor's face and in the side housing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Seals {
    /// From the rotor's centre to the centre of a corner seal.
    pub corner_distance: Length,
    /// The corner seal's radius.
    pub corner_radius: Length,
    /// How far the side seal runs inside the flank's edge.
    pub side_inset: Length,
    /// The outer oil seal's radius about the rotor's centre.
    pub oil_radius: Length,
    /// From the bore out to the land of the coolant seal.
    pub coolant_land: Length,
}

/// An engine as the porter needs it: geometry and seals that fit each other.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Engine {
    geometry: Geometry,
    seals: Seals,
}

impl Engine {
    /// Puts a geometry and its seals together.
    ///
    /// # Errors
    /// All that is wrong: a length out of bounds, a corner seal that sticks out of the rotor, an
    /// oil seal that reaches the side seal.
    pub fn new(geometry: Geometry, seals: Seals) -> Result<Self, Vec<GeometryFault>> {
        let mut faults = Vec::new();
        let given = [
            seals.corner_distance,
            seals.corner_radius,
            seals.side_inset,
            seals.oil_radius,
            seals.coolant_land,
        ];
        for (bound, length) in BOUNDS.iter().zip(given) {
            bound.check(length, &mut faults);
        }
        let engine = Self { geometry, seals };
        if faults.is_empty() {
            faults.extend(engine.corner_seal_fault());
            faults.extend(engine.oil_seal_fault());
        }
        if faults.is_empty() { Ok(engine) } else { Err(faults) }
    }

    /// Sizes as commonly quoted for two-rotor engines of 654 cm³ a rotor, from memory, to start from: yours are
    /// to be measured.
    #[must_use]
    pub fn preset() -> Self {
        let mm = Length::new::<millimeter>;
        Self {
            geometry: Geometry::preset(),
            seals: Seals {
                corner_distance: mm(97.5),
                corner_radius: mm(5.5),
                side_inset: mm(4.0),
                oil_radius: mm(56.0),
                coolant_land: mm(6.0),
            },
        }
    }

    /// The engine's shape.
    #[must_use]
    pub const fn geometry(&self) -> &Geometry {
        &self.geometry
    }

    /// The seals' measures.
    #[must_use]
    pub const fn seals(&self) -> &Seals {
        &self.seals
    }

    /// The path of the corner seals' centres; its track reaches their radius to either side.
    #[must_use]
    pub fn corner_seal_path(&self) -> Trochoid {
        let radius = self.seals.corner_distance.get::<millimeter>();
        Trochoid { radius, offset: 0.0, ..self.geometry.bore() }
    }

    /// The line of the side seal, in the rotor's frame.
    #[must_use]
    pub fn side_seal_line(&self) -> Flank {
        self.geometry.side_seal_line(self.seals.side_inset)
    }

    /// The corner seals' centres in the rotor's frame.
    #[must_use]
    pub fn corner_seats(&self) -> [Point; 3] {
        let distance = self.seals.corner_distance.get::<millimeter>();
        [0.0, 1.0, 2.0].map(|k| Point::polar(distance, TAU * k / 3.0))
    }

    /// A place on the rotor's face under the first flank, half way between the oil seal and the
    /// side seal, in the rotor's frame: where a picture marks the first chamber.
    #[must_use]
    pub fn first_flank_mark(&self) -> Point {
        let line = self.side_seal_line();
        let middle = line.at(FRAC_PI_3).point.norm();
        Point::polar(0.5 * (middle + self.seals.oil_radius.get::<millimeter>()), FRAC_PI_3)
    }

    /// The radius about the shaft's axis that the oil seal sweeps.
    #[must_use]
    pub fn oil_seal_sweep(&self) -> Length {
        self.geometry.eccentricity() + self.seals.oil_radius
    }

    /// The curve on which the land of the coolant seal begins.
    #[must_use]
    pub fn coolant_land(&self) -> Trochoid {
        self.geometry.bore().beside(self.seals.coolant_land)
    }

    fn corner_seal_fault(&self) -> Option<GeometryFault> {
        let Seals { corner_distance, corner_radius, .. } = self.seals;
        let centre = corner_distance.get::<millimeter>();
        let flank = self.geometry.flank();
        let nearest = self
            .geometry
            .rotor_outline(3000)
            .iter()
            .map(|point| (point.x - centre).hypot(point.y))
            .fold(f64::INFINITY, f64::min);
        let inside = centre < flank.radius + flank.offset;
        let room = Length::new::<millimeter>(if inside { nearest } else { -nearest });
        (room < corner_radius)
            .then_some(GeometryFault::CornerSealOutside { radius: corner_radius, room })
    }

    fn oil_seal_fault(&self) -> Option<GeometryFault> {
        let line = self.side_seal_line();
        let room = Length::new::<millimeter>(line.radius - 2.0 * line.eccentricity + line.offset);
        let radius = self.seals.oil_radius;
        (radius >= room).then_some(GeometryFault::OilSealOutside { radius, room })
    }
}
