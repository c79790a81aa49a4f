//! The three chambers: their areas and volumes at any shaft angle.

use std::f64::consts::{FRAC_PI_2, PI, TAU};

use uom::si::{
    angle::radian,
    area::square_millimeter,
    f64::{Angle, Area, Length, Volume},
};

use super::{Geometry, Point, SectorArea, Trochoid};

/// One of the three chambers: the k-th lies over the flank from apex k to apex k + 1.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Chamber {
    /// Over the flank that starts at θ/3.
    First,
    /// A third of a turn further on: 360° of θ ahead of the first.
    Second,
    /// Two thirds of a turn further on: 720° of θ ahead of the first.
    Third,
}

impl Chamber {
    /// All three in order.
    pub const ALL: [Self; 3] = [Self::First, Self::Second, Self::Third];

    /// How far this chamber is ahead of the first, as an angle of the eccentric shaft.
    #[must_use]
    pub fn lead(self) -> Angle {
        Angle::new::<radian>(TAU * f64::from(self as u8))
    }

    pub(crate) const fn index(self) -> usize {
        self as usize
    }
}

/// Areas and volumes of an engine's chambers, prepared for many shaft angles.
#[derive(Debug, Clone)]
pub struct Chambers {
    geometry: Geometry,
    bore: SectorArea,
    /// The rotor's sector from the line to one apex to the line to the next.
    third: f64,
}

impl Chambers {
    /// Prepares the chambers of `geometry`.
    #[must_use]
    pub fn new(geometry: &Geometry) -> Self {
        let flank = geometry.flank();
        let noses = 2.0 * nose(geometry.bore(), geometry.bore().steepest_lean());
        Self {
            geometry: *geometry,
            bore: SectorArea::new(geometry.bore()),
            third: 2.0 * flank.half_sector() + noses,
        }
    }

    /// The chamber's area between bore and flank at the shaft angle θ.
    #[must_use]
    pub fn area(&self, chamber: Chamber, theta: Angle) -> Area {
        Area::new::<square_millimeter>(self.area_at((theta + chamber.lead()).get::<radian>()))
    }

    /// The chamber's volume at the shaft angle θ, without a recess in the rotor.
    #[must_use]
    pub fn volume(&self, chamber: Chamber, theta: Angle) -> Volume {
        self.area(chamber, theta) * self.width()
    }

    /// The least volume, when the flank faces the short axis, without a recess.
    #[must_use]
    pub fn least_volume(&self) -> Volume {
        self.volume(Chamber::First, Angle::new::<radian>(FRAC_PI_2))
    }

    /// The greatest volume, when the flank faces the long axis, without a recess.
    #[must_use]
    pub fn greatest_volume(&self) -> Volume {
        self.volume(Chamber::First, Angle::new::<radian>(2.0 * PI))
    }

    /// The displacement of one chamber: greatest less least volume. Without an apex-seal offset it
    /// is 3√3·e·R·b (K. Yamamoto, *Rotary Engine*).
    #[must_use]
    pub fn displacement(&self) -> Volume {
        self.greatest_volume() - self.least_volume()
    }

    fn width(&self) -> Length {
        self.geometry.housing_width()
    }

    /// The first chamber's area: the bore's sector from contact to contact, seen from the rotor's
    /// centre, less the rotor's.
    fn area_at(&self, theta: f64) -> f64 {
        let bore = self.geometry.bore();
        let centre = Point::polar(bore.eccentricity, theta);
        let (from, to) = (theta / 3.0, (theta + TAU) / 3.0);
        let nose = |alpha: f64| nose(bore, bore.lean_at(alpha));
        self.bore.area_about(centre, from, to) - (self.third - nose(from) + nose(to))
    }
}

/// The rotor's sector along the nose of an apex seal, from the line to the apex to the angle `lean` off
/// it. The flank begins where the lean is greatest.
pub(super) fn nose(bore: Trochoid, lean: f64) -> f64 {
    0.5 * bore.offset * (bore.offset * lean + bore.radius * lean.sin())
}
