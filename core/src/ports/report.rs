//! What a plate's ports run into, in sentences; the worst first.

use crate::gather::Gather;
use crate::language;
use crate::order::InOrder;
use pitleaf_translated::translated;
use uom::si::f64::Length;

use super::{
    Intrusion, Obstacle, Outline, PlatePort, PortFace, Shape, Stage, TypedOutline, View, bridge,
    intrusions, left_to_land, longest_unsupported, shown,
};
use crate::trochoid::{Engine, Point};

/// How bad a finding is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Weight {
    /// Cut like this, the engine is destroyed.
    Destroys,
    /// Something has to be done about it.
    Attend,
    /// Good to know.
    Know,
}

/// Something a port runs into, or comes near.
#[derive(Debug, Clone, PartialEq)]
pub struct Finding {
    /// How bad.
    pub weight: Weight,
    /// In a line.
    pub title: String,
    /// Where, how much, what follows.
    pub words: String,
    /// Where, as seen.
    pub place: Option<Point>,
}

/// Everything to be said of the side ports of one plate at one stage of the work. `margin` is what
/// must be left to the coolant land.
#[must_use]
#[translated]
pub fn findings(engine: &Engine, view: View, ports: &[&PlatePort], margin: Length) -> Vec<Finding> {
    let side: Vec<(&PlatePort, &Outline)> =
        ports.iter().filter_map(|port| Some((*port, port.outline()?))).gather();
    let mut found = Vec::new();
    for (port, outline) in &side {
        for intrusion in intrusions(engine, outline, margin) {
            found.push(of_intrusion(engine, view, (port, outline), &intrusion, margin));
        }
    }
    for (i, (port, outline)) in side.iter().enumerate() {
        for (other, beside) in &side[i + 1..] {
            let bridge = bridge(outline, beside);
            let width = shown::length(bridge.width);
            let none = bridge.width <= Length::default();
            found.push(Finding {
                weight: if none { Weight::Attend } else { Weight::Know },
                title: if none {
                    "No bridge is left".to_owned()
                } else {
                    format!("Bridge {} ({})", width.metric, width.inch)
                },
                words: format!(
                    "{} to {}, at {}.",
                    port.name.port(),
                    language::inside(other.name.port()),
                    shown::place(view.turn_over(bridge.from))
                ),
                place: Some(view.turn_over(bridge.from)),
            });
        }
    }
    let outlines: Vec<Outline> = side.iter().map(|(_, outline)| (*outline).clone()).gather();
    if let Some(run) = longest_unsupported(engine, &outlines) {
        let length = shown::length(run.length);
        let (angle, centre) = shown::timing(view, run.theta);
        found.push(Finding {
            weight: Weight::Know,
            title: format!("Side seal unsupported over {} ({})", length.metric, length.inch),
            words: format!(
                "The longest run, {angle} {centre}, from {} to {}.",
                shown::place(view.turn_over(run.from)),
                shown::place(view.turn_over(run.to))
            ),
            place: Some(view.turn_over(run.from)),
        });
    }
    found.order_by_key(|finding| finding.weight);
    found
}

#[translated]
fn of_intrusion(
    engine: &Engine,
    view: View,
    (port, outline): (&PlatePort, &Outline),
    intrusion: &Intrusion,
    margin: Length,
) -> Finding {
    let (depth, area) = (shown::length(intrusion.depth), shown::area(intrusion.area));
    let place = view.turn_over(intrusion.place);
    let name = port.name.port();
    let at = format!(
        "{name}: deepest at {}; {} ({}) of it.",
        shown::place(place),
        area.metric,
        area.inch
    );
    let deep = format!("{} ({})", depth.metric, depth.inch);
    let left = || {
        let left = shown::length(left_to_land(engine, outline));
        format!("{} ({})", left.metric, left.inch)
    };
    let (weight, title, words) = match intrusion.obstacle {
        Obstacle::CornerSealTrack => (
            Weight::Destroys,
            format!("Cuts {deep} into the corner-seal track"),
            format!("{at} A corner seal drops into a cut here and destroys the engine."),
        ),
        Obstacle::OilSealSweep => (
            Weight::Destroys,
            format!("Reaches {deep} into the oil seal's sweep"),
            format!("{at} The oil seal runs over the edge, and oil into the port."),
        ),
        Obstacle::CoolantLand => (
            Weight::Attend,
            format!("Leaves {} to the coolant land", left()),
            format!("{at} A margin of {} is to be kept.", shown::length(margin).metric),
        ),
        Obstacle::RotorHousing => (
            Weight::Attend,
            format!("{} lies behind the rotor housing", area.metric),
            format!(
                "{at} The housing needs a scallop {deep} deep there; {} is then left to the coolant \
                 land.",
                left()
            ),
        ),
    };
    Finding { weight, title, words, place: Some(place) }
}

/// What an outline as typed cuts into that no port may, and how deep. Nothing of one that can't be read.
#[must_use]
#[translated]
pub fn forbidden(engine: &Engine, face: PortFace, typed: &TypedOutline) -> Vec<String> {
    let Ok(Shape::Side(outline)) = typed.shape(engine, face.view) else { return Vec::new() };
    let words = |intrusion: &Intrusion| {
        let what = match intrusion.obstacle {
            Obstacle::CornerSealTrack => "the corner seals’ track",
            Obstacle::OilSealSweep => "the oil seal’s sweep",
            Obstacle::CoolantLand => "the coolant land",
            Obstacle::RotorHousing => return None,
        };
        let depth = shown::length(intrusion.depth);
        Some(format!("{} ({}) into {what}", depth.metric, depth.inch))
    };
    intrusions(engine, &outline, Length::default()).iter().filter_map(words).gather()
}

/// The ports of a plate as it will be: each cut one, and the stock ones that stay as they are.
#[must_use]
pub fn as_it_will_be(ports: &[PlatePort]) -> Vec<&PlatePort> {
    let is_cut =
        |port: &PlatePort| ports.iter().any(|other| other.name == port.name.at(Stage::Cut));
    ports.iter().filter(|port| port.name.stage == Stage::Cut || !is_cut(port)).gather()
}
