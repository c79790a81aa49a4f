//! What a port must keep clear of: the corner seals' track, the oil seal and the coolant land.

use crate::gather::Gather;
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
    /// The track the corner seals sweep: a port that cuts it destroys the engine.
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
    /// How far, from the obstacle's near edge.
    pub depth: Length,
    /// The port's area within the obstacle.
    pub area: Area,
}

/// Everything a port's outline runs into, in the order of [`Obstacle`]. `margin` is what must be
/// left to the coolant land.
#[must_use]
pub fn intrusions(engine: &Engine, outline: &Outline, margin: Length) -> Vec<Intrusion> {
    let seal = engine.seals().corner_radius.get::<millimeter>();
    let track = engine.corner_seal_path();
    let [inner, outer] = [-seal, seal].map(|side| Nearest::new(track.offset_by(side)));
    let oil = oil_circle(engine);
    let land = Nearest::new(engine.coolant_land().offset_by(-margin.get::<millimeter>()));
    let bore = Nearest::new(engine.geometry().bore());
    let whole = outline.area().get::<square_millimeter>();
    let outside = |curve: &Nearest| whole - area_inside(outline, curve);
    [
        intrusion(
            outline,
            Obstacle::CornerSealTrack,
            |point| inner.foot(point).outside.min(2.0 * seal),
            || area_inside(outline, &outer) - area_inside(outline, &inner),
        ),
        intrusion(
            outline,
            Obstacle::OilSealSweep,
            |point| oil.radius - point.norm(),
            || area_inside(outline, &Nearest::new(oil)),
        ),
        intrusion(
            outline,
            Obstacle::CoolantLand,
            |point| land.foot(point).outside,
            || outside(&land),
        ),
        intrusion(
            outline,
            Obstacle::RotorHousing,
            |point| bore.foot(point).outside,
            || outside(&bore),
        ),
    ]
    .into_iter()
    .flatten()
    .gather()
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

/// Below this depth, in mm, contact counts as none.
const TOUCH: f64 = 1e-6;

fn intrusion(
    outline: &Outline,
    obstacle: Obstacle,
    depth: impl Fn(Point) -> f64,
    area: impl Fn() -> f64,
) -> Option<Intrusion> {
    let (depth, place) = deepest(outline, depth);
    (depth > TOUCH).then(|| Intrusion {
        obstacle,
        place,
        depth: Length::new::<millimeter>(depth),
        area: Area::new::<square_millimeter>(area()),
    })
}
