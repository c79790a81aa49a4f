//! How the builder looks at a plate, and what that makes of right and left.

use crate::{kept_fields, kept_words};
use pitleaf_translated::translated;
use uom::si::{
    angle::{degree, radian},
    f64::Angle,
};

use super::Outline;
use crate::trochoid::{Chamber, Point};

/// Which side housing is looked at.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum SideHousing {
    /// The front one.
    Front,
    /// The one between two rotors.
    Intermediate,
    /// The rear one.
    Rear,
}

kept_words!(SideHousing {
    Front = "front",
    Intermediate = "intermediate",
    Rear = "rear",
});

/// From where it is looked at.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum SeenFrom {
    /// From the rotor: the working face.
    Rotor,
    /// From outside: the face away from the rotor.
    Outside,
}

kept_words!(SeenFrom {
    Rotor = "rotor",
    Outside = "outside",
});

/// Which way the shaft turns, as seen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Rotation {
    /// With the clock.
    Clockwise,
    /// Against the clock.
    Anticlockwise,
}

kept_words!(Rotation {
    Clockwise = "clockwise",
    Anticlockwise = "anticlockwise",
});

/// On which end of the short axis the plugs sit, as seen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum PlugSide {
    /// At the top, y above zero.
    Top,
    /// At the bottom, y below zero.
    Bottom,
}

kept_words!(PlugSide {
    Top = "top",
    Bottom = "bottom",
});

/// What the builder states about the picture before them.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct View {
    /// The side housing.
    pub housing: SideHousing,
    /// The side of it that faces the eye.
    pub seen_from: SeenFrom,
    /// The shaft's rotation as seen.
    pub rotation: Rotation,
    /// Where the plugs sit as seen.
    pub plugs: PlugSide,
}

kept_fields!(View { housing, seen_from = "seen-from", rotation, plugs });

impl SideHousing {
    /// All three, from the front.
    pub const ALL: [Self; 3] = [Self::Front, Self::Intermediate, Self::Rear];

    /// Its word in addresses.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Front => "front",
            Self::Intermediate => "intermediate",
            Self::Rear => "rear",
        }
    }

    /// Its name in lower case.
    #[must_use]
    #[translated]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Front => "front",
            Self::Intermediate => "intermediate",
            Self::Rear => "rear",
        }
    }
}

impl View {
    /// The working face of a housing as it is taken until the builder says otherwise: the shaft
    /// turns against the clock, the plugs are at the top.
    #[must_use]
    pub const fn usual(housing: SideHousing) -> Self {
        Self {
            housing,
            seen_from: SeenFrom::Rotor,
            rotation: Rotation::Anticlockwise,
            plugs: PlugSide::Top,
        }
    }

    /// The view of the same face from the other side: left and right change, and so does the
    /// rotation.
    #[must_use]
    pub fn from_behind(self) -> Self {
        let seen_from = match self.seen_from {
            SeenFrom::Rotor => SeenFrom::Outside,
            SeenFrom::Outside => SeenFrom::Rotor,
        };
        let rotation = match self.rotation {
            Rotation::Clockwise => Rotation::Anticlockwise,
            Rotation::Anticlockwise => Rotation::Clockwise,
        };
        Self { seen_from, rotation, ..self }
    }

    /// A point between the picture and the housing frame, either way: the housing frame is the
    /// picture in which the shaft turns anticlockwise.
    #[must_use]
    pub fn turn_over(self, point: Point) -> Point {
        match self.rotation {
            Rotation::Anticlockwise => point,
            Rotation::Clockwise => Point { x: -point.x, y: point.y },
        }
    }

    /// An outline between the picture and the housing frame, either way.
    #[must_use]
    pub fn turn_outline_over(self, outline: &Outline) -> Outline {
        match self.rotation {
            Rotation::Anticlockwise => outline.clone(),
            Rotation::Clockwise => outline.mirrored(),
        }
    }

    /// Where in its cycle a chamber is at the shaft angle θ: 0° at the top dead centre between
    /// exhaust and intake, 540° at the one of ignition, up to 1080°.
    #[must_use]
    pub fn cycle_angle(self, chamber: Chamber, theta: Angle) -> Angle {
        // The first chamber is smallest at the top at θ = 90° and at the bottom at θ = 630°.
        let ignition = match self.plugs {
            PlugSide::Top => 90.0,
            PlugSide::Bottom => 630.0,
        };
        let angle = (theta + chamber.lead()).get::<degree>() - ignition + 540.0;
        Angle::new::<degree>(angle.rem_euclid(1080.0))
    }

    /// The shaft angle θ, from 0° to 1080°, at which the first chamber is at a place of its cycle:
    /// [`View::cycle_angle`] the other way.
    #[must_use]
    pub fn theta(self, cycle_angle: Angle) -> Angle {
        let at_zero = self.cycle_angle(Chamber::First, Angle::default());
        Angle::new::<degree>((cycle_angle - at_zero).get::<degree>().rem_euclid(1080.0))
    }

    /// How far the shaft turns when a finger on the rotor moves from one place of the picture to
    /// another: three times the rotor's own turn.
    #[must_use]
    pub fn shaft_turn(self, from: Point, to: Point) -> Angle {
        let (from, to) = (self.turn_over(from), self.turn_over(to));
        Angle::new::<radian>(3.0 * from.cross(to).atan2(from.dot(to)))
    }
}

/// A chamber's dead centres in the order of its cycle.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DeadCentre {
    /// Least volume between exhaust and intake.
    GasExchangeTop,
    /// Greatest volume after intake.
    IntakeBottom,
    /// Least volume at ignition.
    IgnitionTop,
    /// Greatest volume after expansion.
    ExpansionBottom,
}

/// An event by the nearest dead centre.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Timing {
    /// The dead centre.
    pub dead_centre: DeadCentre,
    /// How long after it; below zero before it.
    pub after: Angle,
}

impl Timing {
    /// The timing of a place in the cycle, by the nearest dead centre.
    #[must_use]
    pub fn at(cycle_angle: Angle) -> Self {
        let angle = cycle_angle.get::<degree>().rem_euclid(1080.0);
        let quarter = (angle / 270.0).round();
        let dead_centre = match quarter {
            1.0 => DeadCentre::IntakeBottom,
            2.0 => DeadCentre::IgnitionTop,
            3.0 => DeadCentre::ExpansionBottom,
            _ => DeadCentre::GasExchangeTop,
        };
        Self { dead_centre, after: Angle::new::<degree>(angle - 270.0 * quarter) }
    }

    /// Whether the event comes before its dead centre.
    #[must_use]
    pub fn is_before(&self) -> bool {
        self.after.get::<radian>() < 0.0
    }
}
