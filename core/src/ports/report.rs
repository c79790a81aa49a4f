//! What a plate's ports run into, in sentences; the worst first.

use crate::language;
use pitleaf_translated::translated;
use uom::si::f64::Length;

use super::{
    Grade, Intrusion, Obstacle, Outline, Overhang, PlatePort, PortName, Stage, View, bridge,
    intrusions, left_to_land, longest_unsupported, overhang, shown,
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
        ports.iter().filter_map(|port| Some((*port, port.outline()?))).collect();
    let mut found = Vec::new();
    for (port, outline) in &side {
        for intrusion in intrusions(engine, outline, margin) {
            found.push(if intrusion.obstacle == Obstacle::CornerSealTrack {
                let beside = side.iter().filter(|(other, _)| other.name != port.name);
                let beside: Vec<Outline> = beside.map(|(_, other)| (*other).clone()).collect();
                let overhang = overhang(engine, outline, &beside);
                of_track(view, port.name, &intrusion, overhang.as_ref())
            } else {
                of_intrusion(engine, view, (port, outline), &intrusion, margin)
            });
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
    let outlines: Vec<Outline> = side.iter().map(|(_, outline)| (*outline).clone()).collect();
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
    found.sort_by_key(|finding| finding.weight);
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
        // The track has a finding of its own.
        Obstacle::RotorHousing | Obstacle::CornerSealTrack => (
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

/// What a port does to the corner seals whose track it cuts.
#[translated]
fn of_track(
    view: View,
    name: PortName,
    intrusion: &Intrusion,
    overhang: Option<&Overhang>,
) -> Finding {
    let (depth, area) = (shown::length(intrusion.depth), shown::area(intrusion.area));
    let place = view.turn_over(intrusion.place);
    let cut = format!(
        "{}: {} ({}) into the corner-seal track, deepest at {}; {} ({}) of it.",
        name.port(),
        depth.metric,
        depth.inch,
        shown::place(place),
        area.metric,
        area.inch
    );
    let (weight, title, words) = match overhang {
        None => (Weight::Attend, "Touches the corner-seal track".to_owned(), cut),
        Some(overhang) => {
            let share = shown::share(overhang.share);
            let hangs = hangs_over(view, overhang);
            let chamfer = format!(
                "Chamfer the edge from {} to {}, most at the second: there the seal climbs back onto the \
                 face.",
                shown::place(view.turn_over(overhang.runs_off)),
                shown::place(view.turn_over(overhang.climbs_back))
            );
            match overhang.grade() {
                Grade::TouchesEdge => (
                    Weight::Attend,
                    "Touches the corner-seal track".to_owned(),
                    format!("{cut} {hangs} {chamfer}"),
                ),
                Grade::Overhangs => (
                    Weight::Attend,
                    format!("A corner seal hangs over by {share}"),
                    format!(
                        "{cut} {hangs} What is left under it holds its middle, so it does not tip: \
                         decide, with a reason, whether it may run so. {chamfer}"
                    ),
                ),
                Grade::DropsIn => (
                    Weight::Destroys,
                    "A corner seal can drop in".to_owned(),
                    format!(
                        "{cut} {hangs} What is left under it does not hold its middle: it tips into the \
                         port and destroys the engine."
                    ),
                ),
            }
        }
    };
    Finding { weight, title, words, place: Some(place) }
}

/// How much of a corner seal hangs over, and when.
#[translated]
fn hangs_over(view: View, overhang: &Overhang) -> String {
    let when = |theta| {
        let (angle, centre) = shown::timing(view, theta);
        format!("{angle} {centre}")
    };
    format!(
        "Of a flat seal sprung at its middle, up to {} of the face is over the opening, with chamber 1 at \
         {}; the first of it at {}, the last at {}.",
        shown::share(overhang.share),
        when(overhang.theta),
        when(overhang.from),
        when(overhang.to)
    )
}

/// Why a port should not be cut as it is drawn.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Objection {
    /// What it runs into, and what follows.
    pub words: String,
    /// Whether a decision with a reason may stand against it: the engine can run so.
    pub can_be_decided: bool,
}

/// What is to be said against cutting an outline, with the plate's `others` cut too. An edge that a corner
/// seal only touches is none of it.
#[must_use]
#[translated]
pub fn objections(engine: &Engine, outline: &Outline, others: &[Outline]) -> Vec<Objection> {
    let of = |intrusion: &Intrusion| {
        let depth = shown::length(intrusion.depth);
        let into = |what| format!("{} ({}) into {what}", depth.metric, depth.inch);
        let (words, can_be_decided) = match intrusion.obstacle {
            Obstacle::CornerSealTrack => {
                let overhang = overhang(engine, outline, others)?;
                let into = into("the corner seals’ track");
                match overhang.grade() {
                    Grade::TouchesEdge => return None,
                    Grade::Overhangs => {
                        let share = shown::share(overhang.share);
                        (format!("{into}; a corner seal hangs over by {share}"), true)
                    }
                    Grade::DropsIn => (format!("{into}; a corner seal can drop in"), false),
                }
            }
            Obstacle::OilSealSweep => (into("the oil seal’s sweep"), false),
            Obstacle::CoolantLand => (into("the coolant land"), false),
            Obstacle::RotorHousing => return None,
        };
        Some(Objection { words, can_be_decided })
    };
    intrusions(engine, outline, Length::default()).iter().filter_map(of).collect()
}

/// The ports of a plate as it will be: each cut one, and the stock ones that stay as they are.
#[must_use]
pub fn as_it_will_be(ports: &[PlatePort]) -> Vec<&PlatePort> {
    let is_cut =
        |port: &PlatePort| ports.iter().any(|other| other.name == port.name.at(Stage::Cut));
    ports.iter().filter(|port| port.name.stage == Stage::Cut || !is_cut(port)).collect()
}
