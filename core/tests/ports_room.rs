//! The room left: an outline cut to its line keeps clear and keeps its times, and beyond the line
//! something gives.

use std::num::NonZeroU32;

use pitleaf_core::{
    ports::{Outline, Port, Room, SealedBy, bridge, intrusions},
    trochoid::{Chamber, Engine, Point},
};
use uom::si::{angle::degree, f64::Angle, f64::Length, length::millimeter};

const STEPS: NonZeroU32 = NonZeroU32::new(720).expect("more than none");

fn mm(length: f64) -> Length {
    Length::new::<millimeter>(length)
}

fn deg(angle: f64) -> Angle {
    Angle::new::<degree>(angle)
}

fn at(x: f64, y: f64) -> Point {
    Point::from_millimetres(x, y)
}

/// A stock port and the room to open 20° earlier and close 20° later.
struct Case {
    engine: Engine,
    opens: f64,
    closes: f64,
    others: Vec<Outline>,
}

const SEED: (f64, f64) = (56.0, -56.0);

fn square((x, y): (f64, f64), half: f64) -> Outline {
    Outline::new(
        [(-half, -half), (half, -half), (half, half), (-half, half)]
            .map(|(dx, dy)| at(x + dx, y + dy)),
    )
    .expect("a square")
}

fn case() -> Case {
    let engine = Engine::preset();
    let stock = Port::new(&engine, &square(SEED, 6.0), SealedBy::SideSeal).expect("a port");
    let opening = stock.sweep(STEPS).openings()[0];
    let opens = opening.opens(Chamber::First).get::<degree>() - 20.0;
    let closes = opens + 40.0 + opening.duration().get::<degree>();
    Case { engine, opens, closes, others: vec![square((30.0, -72.0), 4.0)] }
}

impl Case {
    fn room(&self) -> Room<'_> {
        Room {
            engine: &self.engine,
            sealed_by: SealedBy::SideSeal,
            margin: mm(1.5),
            opens: deg(self.opens),
            closes: deg(self.closes),
            others: &self.others,
        }
    }

    /// Whether an outline breaks a bound by more than a little.
    fn breaks(&self, outline: &Outline) -> bool {
        let near = intrusions(&self.engine, outline, mm(0.0));
        let wide = self.others.iter().all(|other| bridge(outline, other).width > mm(1.49));
        let kept = near.is_empty() && wide && self.clear_by(outline, 1.49);
        let Ok(port) = Port::new(&self.engine, outline, SealedBy::SideSeal) else { return true };
        let timely = port.sweep(STEPS).openings().iter().all(|opening| {
            let opens = opening.opens(Chamber::First).get::<degree>();
            let turns = ((opens - self.opens + 0.5) / 1080.0).floor();
            let opens = opens - 1080.0 * turns;
            let closes = opens + opening.duration().get::<degree>();
            opens > self.opens - 0.05 && closes < self.closes + 0.05
        });
        !(kept && timely)
    }

    /// Whether every corner keeps a margin from the corner seals' track and the oil seal, taken to
    /// a dense polygon of the track's middle.
    fn clear_by(&self, outline: &Outline, margin: f64) -> bool {
        let path = self.engine.corner_seal_path().polyline(6000);
        let reach = self.engine.seals().corner_radius.get::<millimeter>() + margin;
        let oil = self.engine.oil_seal_sweep().get::<millimeter>() + margin;
        outline.points().iter().all(|point| {
            let (x, y) = point.millimetres();
            x.hypot(y) > oil && path.iter().all(|p| p.distance(*point) > mm(reach))
        })
    }
}

#[test]
fn a_port_cut_to_the_line_keeps_clear_and_in_time() {
    let case = case();
    let line = case.room().around(at(SEED.0, SEED.1)).expect("room");
    assert!(line.contains(at(SEED.0, SEED.1)), "the line goes round the place asked for");
    assert!(line.area() > square(SEED, 6.0).area() * 1.5, "there is room to cut");
    assert!(!case.breaks(&line), "a port cut to the line breaks a bound");
}

/// A speck 0.4 mm beyond the line breaks a bound, save where the line cuts a sharp corner short.
#[test]
fn beyond_the_line_something_gives() {
    let case = case();
    let line = case.room().around(at(SEED.0, SEED.1)).expect("room");
    let points = line.points();
    let mut free = 0;
    for (i, point) in points.iter().enumerate() {
        let (before, after) =
            (points[(i + points.len() - 1) % points.len()], points[(i + 1) % points.len()]);
        let (dx, dy) = (
            after.millimetres().0 - before.millimetres().0,
            after.millimetres().1 - before.millimetres().1,
        );
        let (x, y) = point.millimetres();
        let out = 0.4 / dx.hypot(dy);
        let speck = square((x + out * dy, y - out * dx), 0.02);
        free += usize::from(!case.breaks(&speck));
    }
    assert!(free * 10 <= points.len(), "{free} of {} places could go further", points.len());
}

#[test]
fn no_room_gets_its_sentence() {
    let case = case();
    let sentence = |room: Room<'_>, seed| room.around(seed).expect_err("no room").to_string();
    assert_eq!(
        sentence(Room { closes: deg(case.opens - 1.0), ..case.room() }, at(56.0, -56.0)),
        "the port must close after it opens and within a cycle of 1080°: check both angles",
        "times"
    );
    assert_eq!(
        sentence(Room { opens: deg(f64::NAN), ..case.room() }, at(56.0, -56.0)),
        "the port must close after it opens and within a cycle of 1080°: check both angles",
        "not a number"
    );
    assert_eq!(
        sentence(case.room(), at(112.0, 0.0)),
        "there is no room here: the place is in or too near a seal's track or another port; choose \
         a place further off, or a smaller margin",
        "in the track"
    );
    assert_eq!(
        sentence(case.room(), at(-60.0, 56.0)),
        "a port here would be open too early or too late: choose another place, or other angles",
        "at the wrong end"
    );
}
