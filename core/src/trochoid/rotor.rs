//! The rotor in the housing: where it stands, its outline and what sits at its corners.

use std::f64::consts::TAU;

use uom::si::{
    angle::radian,
    f64::{Angle, Length},
    length::millimeter,
};

use super::{Chamber, Direction, Flank, Geometry, Point};

/// Where the rotor stands at one shaft angle: moved to `centre`, turned by `turn`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RotorPose {
    /// The rotor's centre in the housing frame.
    pub centre: Point,
    /// How far the rotor is turned, θ/3.
    pub turn: Angle,
}

impl RotorPose {
    /// A point given in the rotor's frame, as the housing sees it.
    #[must_use]
    pub fn place(self, point: Point) -> Point {
        point.turned(Direction::of(self.turn.get::<radian>())) + self.centre
    }
}

impl Geometry {
    /// Where the rotor stands at the shaft angle θ.
    #[must_use]
    pub fn pose(&self, theta: Angle) -> RotorPose {
        let centre = Point::polar(self.bore().eccentricity, theta.get::<radian>());
        RotorPose { centre, turn: theta / 3.0 }
    }

    /// The generating angle α at which each of the three apexes touches the bore.
    #[must_use]
    pub fn contacts(&self, theta: Angle) -> [Angle; 3] {
        [0.0, 1.0, 2.0].map(|k| (theta + Angle::new::<radian>(TAU * k)) / 3.0)
    }

    /// The centres of the three apex seals' noses, in the housing frame.
    #[must_use]
    pub fn apexes(&self, theta: Angle) -> [Point; 3] {
        self.towards_apexes(theta, self.generating_radius())
    }

    /// The three points at `distance` from the rotor's centre towards its apexes, in the housing
    /// frame: the corner seals' centres for the distance they stand at.
    #[must_use]
    pub fn towards_apexes(&self, theta: Angle, distance: Length) -> [Point; 3] {
        let path = super::Trochoid { radius: distance.get::<millimeter>(), ..self.bore() };
        self.contacts(theta).map(|alpha| path.generator(alpha.get::<radian>()))
    }

    /// The flank's edge.
    #[must_use]
    pub fn flank(&self) -> Flank {
        let bore = self.bore();
        Flank { eccentricity: bore.eccentricity, radius: bore.radius, offset: bore.offset }
    }

    /// The line of the side seal: the flank's edge inset by `distance`.
    #[must_use]
    pub fn side_seal_line(&self, distance: Length) -> Flank {
        let flank = self.flank();
        Flank { offset: flank.offset - distance.get::<millimeter>(), ..flank }
    }

    /// The outline of a chamber in the housing frame: along the bore from apex to apex, and back
    /// along `flank`, which is the flank's edge or the line of the side seal; `count` points each
    /// way.
    #[must_use]
    pub fn chamber_outline(
        &self,
        chamber: Chamber,
        theta: Angle,
        flank: Flank,
        count: u32,
    ) -> Vec<Point> {
        let count = count.max(2);
        let first = ((theta + chamber.lead()) / 3.0).get::<radian>();
        let step = TAU / 3.0 / f64::from(count - 1);
        let outer = (0..count).map(|i| self.bore().at(first + step * f64::from(i)));
        let pose = RotorPose { turn: Angle::new::<radian>(first), ..self.pose(theta) };
        let lean = flank.end_normal().get::<radian>();
        let last = first + TAU / 3.0;
        let second = Direction::of(TAU / 3.0);
        let inner = flank
            .nose(self.bore().lean_at(first), lean, count)
            .into_iter()
            .chain(flank.polyline(count))
            .chain(
                flank
                    .nose(-lean, self.bore().lean_at(last), count)
                    .into_iter()
                    .map(|p| p.turned(second)),
            );
        let inner: Vec<Point> = inner.map(|point| pose.place(point)).collect();
        outer.chain(inner.into_iter().rev()).collect()
    }

    /// The rotor's outline in its own frame, noses of the apex seals included: `per_flank` points
    /// on each flank, joined by arcs round the noses.
    #[must_use]
    pub fn rotor_outline(&self, per_flank: u32) -> Vec<Point> {
        let flank = self.flank();
        let lean = flank.end_normal().get::<radian>();
        let nose = flank.nose(-lean, lean, per_flank).into_iter();
        let third: Vec<Point> = nose.chain(flank.polyline(per_flank)).collect();
        [0.0, 1.0, 2.0]
            .map(|k| Direction::of(TAU * k / 3.0))
            .iter()
            .flat_map(|turn| third.iter().map(|point| point.turned(*turn)))
            .collect()
    }
}
