//! What a port must keep clear of: the corner seals' track, the oil seal and the coolant land.

use uom::si::{
    area::square_millimeter,
    f64::{Area, Length},
    length::millimeter,
};

use super::{Outline, clip::area_inside, deepest::deepest};
use crate::trochoid::{Engine, Nearest, Point, Trochoid};

/// What a port runs into.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Obstacle {
    /// The track the corner seals sweep; what a cut there does is [`super::overhang()`]'s to say.
    CornerSealTrack,
    /// The circle the oil seal sweeps.
    OilSealSweep,
    /// The land of the coolant seal, or the margin kept to it.
    CoolantLand,
    /// Outside the bore, behind the rotor housing: a scallop in the housing is needed.
    RotorHousing,
}

/// How far a port reaches into an obstacle.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Intrusion {
    /// The obstacle.
    pub obstacle: Obstacle,
    /// Where it reaches furthest.
    pub place: Point,
    /// How far, from the obstacle's near edge; of the corner seals' track, how much of its width is cut.
    pub depth: Length,
    /// The port's area within the obstacle.
    pub area: Area,
}

/// Everything a port's outline runs into, in the order of [`Obstacle`]. `margin` is what must be
/// left to the coolant land.
#[must_use]
pub fn intrusions(engine: &Engine, outline: &Outline, margin: Length) -> Vec<Intrusion> {
    let seal = engine.seals().corner_radius.get::<millimeter>();
    let path = Nearest::new(engine.corner_seal_path());
    let [inner, outer] = [-seal, seal].map(|side| Nearest::new(path.curve().offset_by(side)));
    let oil = oil_circle(engine);
    let land = Nearest::new(engine.coolant_land().offset_by(-margin.get::<millimeter>()));
    let bore = Nearest::new(engine.geometry().bore());
    let whole = outline.area().get::<square_millimeter>();
    let beyond = |curve: &Nearest| deepest(outline, |point| curve.foot(point).outside);
    let outside = |curve: &Nearest| whole - area_inside(outline, curve);
    [
        intrusion(Obstacle::CornerSealTrack, across(outline, &path, seal), || {
            area_inside(outline, &outer) - area_inside(outline, &inner)
        }),
        intrusion(Obstacle::OilSealSweep, into_circle(outline, oil.radius), || {
            area_inside(outline, &Nearest::new(oil))
        }),
        intrusion(Obstacle::CoolantLand, beyond(&land), || outside(&land)),
        intrusion(Obstacle::RotorHousing, beyond(&bore), || outside(&bore)),
    ]
    .into_iter()
    .flatten()
    .collect()
}

/// What a scallop leaves of the wall between the port and the coolant land; below zero if nothing.
#[must_use]
pub fn left_to_land(engine: &Engine, outline: &Outline) -> Length {
    let land = Nearest::new(engine.coolant_land());
    Length::new::<millimeter>(-deepest(outline, |point| land.foot(point).outside).0)
}

/// The circle the oil seal sweeps: a trochoid without an eccentricity.
pub(crate) fn oil_circle(engine: &Engine) -> Trochoid {
    let radius = engine.oil_seal_sweep().get::<millimeter>();
    Trochoid { eccentricity: 0.0, radius, offset: 0.0 }
}

/// How much of a track's width the outline takes in, `half` to either side of its path, and where: at the
/// end that lies in the track, or on the path where the outline goes right across. Below zero if it
/// keeps clear.
fn across(outline: &Outline, path: &Nearest, half: f64) -> (f64, Point) {
    let off = |point: Point| path.foot(point).outside;
    let (outermost, out) = deepest(outline, off);
    let (inward, into) = deepest(outline, |point| -off(point));
    // What goes round the shaft reaches further in than its own edge does.
    let innermost = if outline.contains(Point::default()) { -half } else { -inward };
    let place = if outermost < half {
        out
    } else if innermost > -half {
        into
    } else {
        deepest(outline, |point| -off(point).abs()).1
    };
    (outermost.min(half) - innermost.max(-half), place)
}

/// How far the outline reaches into a circle about the shaft, and where.
fn into_circle(outline: &Outline, radius: f64) -> (f64, Point) {
    let shaft = Point::default();
    if outline.contains(shaft) {
        return (radius, shaft);
    }
    deepest(outline, |point| radius - point.norm())
}

/// Below this depth, in mm, contact counts as none.
const TOUCH: f64 = 1e-6;

fn intrusion(
    obstacle: Obstacle,
    (depth, place): (f64, Point),
    area: impl Fn() -> f64,
) -> Option<Intrusion> {
    (depth > TOUCH).then(|| Intrusion {
        obstacle,
        place,
        depth: Length::new::<millimeter>(depth),
        area: Area::new::<square_millimeter>(area()),
    })
}
