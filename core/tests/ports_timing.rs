//! Views, dead centres, peripheral ports, overlap and the figures drawn from a sweep.

use std::num::NonZeroU32;

use pitleaf_core::{
    ports::{
        DeadCentre, Outline, Overlap, PeripheralPort, PlugSide, Port, PortFigures, Rotation,
        SealedBy, SeenFrom, SideHousing, Timing, View,
    },
    trochoid::{Chamber, Chambers, Engine, Geometry, Point},
};
use uom::si::{
    angle::degree,
    angular_velocity::revolution_per_minute,
    area::square_millimeter,
    f64::{Angle, AngularVelocity, Area, Length},
    length::millimeter,
};

const STEPS: NonZeroU32 = NonZeroU32::new(720).expect("more than none");
const VIEW: View = View {
    housing: SideHousing::Front,
    seen_from: SeenFrom::Rotor,
    rotation: Rotation::Anticlockwise,
    plugs: PlugSide::Top,
};

fn deg(angle: f64) -> Angle {
    Angle::new::<degree>(angle)
}

fn mm(length: f64) -> Length {
    Length::new::<millimeter>(length)
}

#[track_caller]
fn close(got: f64, wanted: f64, within: f64, what: &str) {
    assert!((got - wanted).abs() <= within, "{what}: got {got}, wanted {wanted} ± {within}");
}

fn square(x: f64, y: f64, half: f64) -> Outline {
    let corners = [(-half, -half), (half, -half), (half, half), (-half, half)];
    Outline::new(corners.map(|(dx, dy)| Point::from_millimetres(x + dx, y + dy))).expect("a square")
}

/// At ignition the chamber is smallest and lies where the plugs are; at the other top dead centre
/// it is smallest on the far side; it grows after gas exchange and after ignition.
#[test]
fn dead_centres_are_where_the_volume_says() {
    let geometry = Geometry::preset();
    let chambers = Chambers::new(&geometry);
    for plugs in [PlugSide::Top, PlugSide::Bottom] {
        let view = View { plugs, ..VIEW };
        for chamber in Chamber::ALL {
            for half_degree in 0..2160 {
                let theta = deg(0.5 * f64::from(half_degree));
                let cycle = view.cycle_angle(chamber, theta).get::<degree>();
                let volume = chambers.volume(chamber, theta);
                let later = chambers.volume(chamber, theta + deg(0.5));
                let growing = cycle.rem_euclid(540.0) < 269.9;
                let falling = (270.0..539.4).contains(&cycle.rem_euclid(540.0));
                assert!(!growing || later > volume, "{chamber:?} at {cycle}° does not grow");
                assert!(!falling || later < volume, "{chamber:?} at {cycle}° does not fall");
                if (cycle - 540.0).abs() < 1e-9 {
                    let line = geometry.chamber_outline(chamber, theta, geometry.flank(), 100);
                    let height: f64 = line.iter().map(|point| point.millimetres().1).sum();
                    let top = height > 0.0;
                    assert_eq!(top, plugs == PlugSide::Top, "{chamber:?} fires at the plugs");
                }
            }
        }
    }
}

#[test]
fn timing_names_the_nearest_dead_centre() {
    let at = |angle| {
        let timing = Timing::at(deg(angle));
        (timing.dead_centre, timing.after.get::<degree>().round())
    };
    assert_eq!(at(32.0), (DeadCentre::GasExchangeTop, 32.0), "after gas exchange");
    assert_eq!(at(1048.0), (DeadCentre::GasExchangeTop, -32.0), "before gas exchange");
    assert_eq!(at(310.0), (DeadCentre::IntakeBottom, 40.0), "after bottom");
    assert_eq!(at(515.0), (DeadCentre::IgnitionTop, -25.0), "before ignition");
    assert_eq!(at(735.0), (DeadCentre::ExpansionBottom, -75.0), "before bottom");
    assert!(Timing::at(deg(735.0)).is_before(), "before bottom");
}

/// The same face seen from behind: the picture is mirrored and the rotation reversed, the timing is
/// the same.
#[test]
fn the_view_from_behind_has_the_same_timing() {
    let engine = Engine::preset();
    let seen = square(52.0, -55.0, 8.0);
    let behind = VIEW.from_behind();
    assert_eq!(behind.rotation, Rotation::Clockwise, "turns the other way");
    assert_eq!(behind.from_behind(), VIEW, "twice round is the front again");
    let timing = |view: View, outline: &Outline| {
        let outline = view.turn_outline_over(outline);
        let port = Port::new(&engine, &outline, SealedBy::SideSeal).expect("in the bore");
        let opening = port.sweep(STEPS).openings()[0];
        view.cycle_angle(Chamber::First, opening.opens(Chamber::First)).get::<degree>()
    };
    close(timing(behind, &seen.mirrored()), timing(VIEW, &seen), 1e-9, "opens at, °");
    let (x, y) = behind.turn_over(Point::from_millimetres(3.0, 4.0)).millimetres();
    assert_eq!((x, y), (-3.0, 4.0), "a point turned over");
}

/// Apex k stands at α = θ/3 + 120°k on the bore: edges at 10° and 30° open to the first chamber when
/// its leading apex is at 10° (θ = 30° − 360°) and close when its trailing one is at 30° (θ = 90°).
#[test]
fn peripheral_port_by_hand() {
    let geometry = Geometry::preset();
    let bore = geometry.bore();
    let port =
        PeripheralPort::new(&geometry, bore.point(deg(10.0)), bore.point(deg(30.0)), mm(50.0))
            .expect("a port");
    let sweep = port.sweep(STEPS);
    let opening = sweep.openings()[0];
    close(opening.opens(Chamber::First).get::<degree>(), 750.0, 1e-9, "opens, °");
    close(opening.duration().get::<degree>(), 420.0, 1e-9, "stays open, °");
    close(opening.closes(Chamber::Second).get::<degree>(), 810.0, 1e-9, "second closes, °");
    // Length along the bore by many short sides.
    let points =
        (0..=2000).map(|i| bore.point(deg(10.0 + 0.01 * f64::from(i)))).collect::<Vec<_>>();
    let length: f64 =
        points.windows(2).map(|pair| pair[0].distance(pair[1]).get::<millimeter>()).sum();
    close(port.area().get::<square_millimeter>(), 50.0 * length, 0.001, "area, mm²");
    let greatest = sweep.greatest();
    close(greatest.area.get::<square_millimeter>(), 50.0 * length, 0.001, "all of it open, mm²");
    // Half of it is past the leading apex when that is at 20°: θ = 60° − 360°.
    let half = sweep.areas(Chamber::First).nth(1560).expect("780°").get::<square_millimeter>();
    let points = &points[..=1000];
    let length: f64 =
        points.windows(2).map(|pair| pair[0].distance(pair[1]).get::<millimeter>()).sum();
    close(half, 50.0 * length, 0.001, "half open, mm²");
}

#[test]
fn peripheral_faults_are_said() {
    let geometry = Geometry::preset();
    let bore = geometry.bore();
    let (first, second) = (bore.point(deg(10.0)), bore.point(deg(30.0)));
    let sentence = |first, second, width| {
        PeripheralPort::new(&geometry, first, second, mm(width)).expect_err("no port").to_string()
    };
    assert_eq!(
        sentence(first, Point::from_millimetres(124.0, 0.0), 40.0),
        "edge 2 of the port is 4 mm off the bore: give a point on the bore",
        "off the bore"
    );
    assert_eq!(
        sentence(first, first, 40.0),
        "both edges of the port are the same place: give the other edge too",
        "one edge"
    );
    assert_eq!(
        sentence(first, second, 81.0),
        "a port 81 mm wide does not fit a housing 80 mm wide: measure across the housing",
        "wide"
    );
}

/// The overlap of two peripheral ports follows from their edges alone.
#[test]
fn overlap_by_hand() {
    let geometry = Geometry::preset();
    let bore = geometry.bore();
    let port = |first, second, width| {
        PeripheralPort::new(&geometry, bore.point(deg(first)), bore.point(deg(second)), mm(width))
            .expect("a port")
            .sweep(STEPS)
    };
    // Open from 3·250 − 360 = 390° to 3·270 = 810°, and from 3·300 − 360 = 540° to 3·310 = 930°.
    let overlap = Overlap::of(&port(250.0, 270.0, 40.0), &port(300.0, 310.0, 40.0));
    assert_eq!(overlap.stretches.len(), 1, "one stretch");
    close(overlap.stretches[0].opens(Chamber::First).get::<degree>(), 540.0, 1e-9, "from, °");
    close(overlap.duration().get::<degree>(), 270.0, 1e-9, "for, °");
    // From 3·10 − 360 = 750° to 60° in the next cycle, and from 3·121 − 360 = 3° to 366°.
    let across = Overlap::of(&port(10.0, 20.0, 40.0), &port(121.0, 122.0, 40.0));
    assert_eq!(across.stretches.len(), 1, "one stretch");
    close(across.stretches[0].opens(Chamber::First).get::<degree>(), 3.0, 1e-9, "from, °");
    close(across.duration().get::<degree>(), 57.0, 1e-9, "for, °");
    let swapped = Overlap::of(&port(300.0, 310.0, 40.0), &port(250.0, 270.0, 40.0));
    assert_eq!(overlap, swapped, "either way round");
    let small = port(300.0, 310.0, 1e-3).greatest().area.get::<square_millimeter>();
    let slit = Overlap::of(&port(250.0, 270.0, 40.0), &port(300.0, 310.0, 1e-3)).angle_area;
    assert!(
        slit.square_millimetre_degrees() < small * 270.0,
        "a slit passes no more than itself for the whole stretch"
    );
    let apart = Overlap::of(&port(10.0, 20.0, 40.0), &port(190.0, 200.0, 40.0));
    // 3·10 − 360 = −330° to 60°, and 210° to 600°: apart.
    assert_eq!(apart.stretches, [], "nothing in common");
    close(apart.angle_area.square_millimetre_degrees(), 0.0, 0.0, "no area");
}

/// 6000 turns a minute are 36 000° a second: an angle-area of 36 000 mm²·° is 1 mm²·s.
#[test]
fn time_area_by_hand() {
    let engine = Engine::preset();
    let port = Port::new(&engine, &square(52.0, -55.0, 8.0), SealedBy::FlankEdge).expect("a port");
    let angle_area = port.sweep(STEPS).angle_area();
    let speed = AngularVelocity::new::<revolution_per_minute>(6000.0);
    let time_area = angle_area.at(speed).expect("turning").square_millimetre_seconds();
    close(time_area * 36_000.0, angle_area.square_millimetre_degrees(), 1e-6, "mm²·°");
    assert_eq!(angle_area.at(AngularVelocity::default()), None, "the shaft stands still");
    // A finer sweep changes the sum by little.
    let fine = port.sweep(NonZeroU32::new(7200).expect("more than none")).angle_area();
    let off = fine.square_millimetre_degrees() / angle_area.square_millimetre_degrees() - 1.0;
    close(off, 0.0, 1e-5, "share by which ten times the steps differ");
}

/// Raising a port's far edge and lowering its near one changes its figures in the direction it must.
#[test]
fn a_larger_cut_opens_earlier_closes_later_and_passes_more() {
    let engine = Engine::preset();
    let figures = |half| {
        let port =
            Port::new(&engine, &square(52.0, -55.0, half), SealedBy::SideSeal).expect("a port");
        PortFigures::new(port.area(), &port.sweep(STEPS))
    };
    let (stock, cut) = (figures(8.0), figures(9.0));
    let change = cut.since(&stock);
    close(change.area.get::<square_millimeter>(), 18.0 * 18.0 - 16.0 * 16.0, 1e-9, "area, mm²");
    let opens = change.opens_later.expect("one opening").get::<degree>();
    let closes = change.closes_later.expect("one opening").get::<degree>();
    assert!(opens < 0.0 && closes > 0.0, "opens {opens}° later, closes {closes}° later");
    let duration = change.duration.expect("one opening").get::<degree>();
    close(duration, closes - opens, 1e-9, "duration gained, °");
    assert!(change.greatest > Area::default(), "more open at once");
    assert!(change.angle_area.square_millimetre_degrees() > 0.0, "more angle-area");
    let figures = |first: f64| {
        let geometry = engine.geometry();
        let edges = [first, 130.0].map(|alpha| geometry.bore().point(deg(alpha)));
        let port = PeripheralPort::new(geometry, edges[0], edges[1], mm(40.0)).expect("a port");
        PortFigures::new(port.area(), &port.sweep(STEPS))
    };
    // Opening at 0.6°, then at 1079.4° of the cycle before.
    let earlier = figures(119.8).since(&figures(120.2)).opens_later.expect("one opening");
    close(earlier.get::<degree>(), -1.2, 1e-9, "opens later, °");
    let none = stock.since(&stock);
    close(none.opens_later.expect("one opening").get::<degree>(), 0.0, 0.0, "no change");
}
