//! What must hold for any engine and any port: symmetry, the chambers' shift, and sums.

use std::num::NonZeroU32;

use pitleaf_core::{
    ports::{Opening, Outline, Port, SealedBy},
    trochoid::{Chamber, Engine, Geometry, Point, Seals},
};
use proptest::prelude::*;
use uom::si::{
    angle::degree,
    area::square_millimeter,
    f64::{Angle, Length},
    length::millimeter,
};

fn deg(angle: f64) -> Angle {
    Angle::new::<degree>(angle)
}

/// An engine with R/e from 5 to 10 and an offset up to 4 mm.
fn engines() -> impl Strategy<Value = Engine> {
    (8.0..20.0_f64, 5.0..10.0_f64, 0.0..4.0_f64, 1.0..6.0_f64).prop_filter_map(
        "an engine that can be built",
        |(e, k, a, inset)| {
            let mm = Length::new::<millimeter>;
            let geometry = Geometry::new(mm(e), mm(e * k), mm(a), mm(80.0)).ok()?;
            let seals = Seals {
                corner_distance: mm(0.8 * e * k),
                corner_radius: mm(0.5),
                side_inset: mm(inset),
                oil_radius: mm(1.0),
                coolant_land: mm(6.0),
            };
            Engine::new(geometry, seals).ok()
        },
    )
}

/// A star round a place near the bore, as shares of the engine's size.
fn stars() -> impl Strategy<Value = (f64, f64, Vec<f64>)> {
    (0.5..1.3_f64, 0.0..std::f64::consts::TAU, prop::collection::vec(0.06..0.2_f64, 5..30))
}

fn outline(engine: &Engine, (reach, angle, spokes): &(f64, f64, Vec<f64>)) -> Outline {
    let size = engine.geometry().generating_radius().get::<millimeter>();
    let points = (0_u32..).zip(spokes).map(|(i, spoke)| {
        let turn = std::f64::consts::TAU * f64::from(i) / spokes.len() as f64;
        Point::from_millimetres(
            size * (reach * angle.cos() + spoke * turn.cos()),
            size * (reach * angle.sin() + spoke * turn.sin()),
        )
    });
    Outline::new(points).expect("a star crosses nothing")
}

fn sealings() -> impl Strategy<Value = SealedBy> {
    prop_oneof![Just(SealedBy::FlankEdge), Just(SealedBy::SideSeal)]
}

fn moved(outline: &Outline, by: impl Fn(f64, f64) -> (f64, f64)) -> Outline {
    let points = outline.points().iter().map(|point| {
        let (x, y) = point.millimetres();
        let (x, y) = by(x, y);
        Point::from_millimetres(x, y)
    });
    Outline::new(points).expect("the same shape")
}

fn areas(port: &Port, theta: f64) -> [f64; 3] {
    port.open_areas(deg(theta)).areas().map(|area| area.get::<square_millimeter>())
}

#[track_caller]
fn same(got: f64, wanted: f64, port: &Port) {
    let within = 1e-8 * port.area().get::<square_millimeter>() + 1e-8;
    assert!((got - wanted).abs() <= within, "open area: got {got}, wanted {wanted} mm²");
}

proptest! {
    #[test]
    fn chambers_follow_each_other_a_turn_apart(
        engine in engines(), star in stars(), sealed_by in sealings(), theta in 0.0..1080.0_f64,
    ) {
        let Ok(port) = Port::new(&engine, &outline(&engine, &star), sealed_by) else { return Ok(()) };
        let (now, next) = (areas(&port, theta), areas(&port, theta + 360.0));
        for k in 0..3 {
            same(next[k], now[(k + 1) % 3], &port);
        }
    }

    #[test]
    fn mirrored_port_under_mirrored_rotation(
        engine in engines(), star in stars(), sealed_by in sealings(), theta in 0.0..1080.0_f64,
    ) {
        let outline = outline(&engine, &star);
        let Ok(port) = Port::new(&engine, &outline, sealed_by) else { return Ok(()) };
        let mirrored = moved(&outline, |x, y| (x, -y));
        let mirrored = Port::new(&engine, &mirrored, sealed_by).expect("inside as much");
        let (here, there) = (areas(&port, theta), areas(&mirrored, -theta));
        for k in 0..3 {
            same(there[2 - k], here[k], &port);
        }
    }

    #[test]
    fn port_turned_half_round_opens_half_a_cycle_later(
        engine in engines(), star in stars(), sealed_by in sealings(), theta in 0.0..1080.0_f64,
    ) {
        let outline = outline(&engine, &star);
        let Ok(port) = Port::new(&engine, &outline, sealed_by) else { return Ok(()) };
        let turned = moved(&outline, |x, y| (-x, -y));
        let turned = Port::new(&engine, &turned, sealed_by).expect("inside as much");
        let (here, there) = (areas(&port, theta), areas(&turned, theta + 540.0));
        for k in 0..3 {
            same(there[k], here[k], &port);
        }
    }

    #[test]
    fn no_area_is_below_nothing_and_all_are_within_the_port(
        engine in engines(), star in stars(), sealed_by in sealings(), theta in 0.0..1080.0_f64,
    ) {
        let Ok(port) = Port::new(&engine, &outline(&engine, &star), sealed_by) else { return Ok(()) };
        let whole = port.area().get::<square_millimeter>();
        let open = areas(&port, theta);
        for area in open {
            prop_assert!(area > -1e-8 * whole - 1e-8, "{area} mm² open of {whole}");
        }
        let sum: f64 = open.iter().sum();
        prop_assert!(sum <= whole * (1.0 + 1e-8) + 1e-8, "{sum} mm² open of {whole}");
    }

    #[test]
    fn points_along_straight_edges_change_nothing(
        engine in engines(), star in stars(), sealed_by in sealings(), theta in 0.0..1080.0_f64,
    ) {
        let coarse = outline(&engine, &star);
        let Ok(port) = Port::new(&engine, &coarse, sealed_by) else { return Ok(()) };
        let corners: Vec<_> = coarse.points().iter().map(|point| point.millimetres()).collect();
        let next = corners.iter().cycle().skip(1);
        let fine = corners.iter().zip(next).flat_map(|((x, y), (u, v))| {
            [0.0, 0.2, 0.4, 0.6, 0.8]
                .map(|share| Point::from_millimetres(x + share * (u - x), y + share * (v - y)))
        });
        let fine = Outline::new(fine).expect("the same shape");
        let fine = Port::new(&engine, &fine, sealed_by).expect("inside as much");
        let (coarse, fine) = (areas(&port, theta), areas(&fine, theta));
        for k in 0..3 {
            same(fine[k], coarse[k], &port);
        }
    }

    /// A port cut exactly to a chamber is open to that chamber and to no other.
    #[test]
    fn a_port_of_a_chambers_shape_is_open_to_it_alone(
        engine in engines(), theta in 0.0..1080.0_f64, sealed_by in sealings(),
    ) {
        let geometry = engine.geometry();
        let edge = match sealed_by {
            SealedBy::FlankEdge => geometry.flank(),
            SealedBy::SideSeal => engine.side_seal_line(),
        };
        let shape = geometry.chamber_outline(Chamber::Second, deg(theta), edge, 600);
        // Where a cusp's sides cross there is no outline to try.
        let Ok(outline) = Outline::new(shape) else { return Ok(()) };
        let port = Port::new(&engine, &outline, sealed_by).expect("in the bore");
        let whole = port.area().get::<square_millimeter>();
        let [first, second, third] = areas(&port, theta);
        prop_assert!(first < 1e-3 && third < 1e-3, "open beside: {first} and {third} mm²");
        prop_assert!((second - whole).abs() < 0.05, "{second} mm² open of {whole}");
    }

    #[test]
    fn flank_edge_covers_no_less_than_the_side_seal(
        engine in engines(), star in stars(), theta in 0.0..1080.0_f64,
    ) {
        let outline = outline(&engine, &star);
        let Ok(edge) = Port::new(&engine, &outline, SealedBy::FlankEdge) else { return Ok(()) };
        let seal = Port::new(&engine, &outline, SealedBy::SideSeal).expect("the same bore");
        let by_edge: f64 = areas(&edge, theta).iter().sum();
        let by_seal: f64 = areas(&seal, theta).iter().sum();
        prop_assert!(by_seal >= by_edge - 1e-7, "{by_seal} mm² past the seal, {by_edge} past the edge");
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn mirrored_port_has_mirrored_events(
        engine in engines(), star in stars(), sealed_by in sealings(),
    ) {
        let steps = NonZeroU32::new(720).expect("more than none");
        let outline = outline(&engine, &star);
        let Ok(port) = Port::new(&engine, &outline, sealed_by) else { return Ok(()) };
        let mirrored = moved(&outline, |x, y| (x, -y));
        let mirrored = Port::new(&engine, &mirrored, sealed_by).expect("inside as much");
        let (here, there) = (port.sweep(steps), mirrored.sweep(steps));
        prop_assert_eq!(here.openings().len(), there.openings().len(), "as many openings");
        for opening in here.openings() {
            // The first chamber is the third in the mirror, and what closes there opens here.
            let wanted = (-opening.closes(Chamber::First).get::<degree>()).rem_euclid(1080.0);
            let off = |other: &Opening| {
                let gap = (other.opens(Chamber::Third).get::<degree>() - wanted).rem_euclid(1080.0);
                gap.min(1080.0 - gap)
            };
            let nearest = there.openings().iter().map(off).fold(f64::INFINITY, f64::min);
            prop_assert!(nearest < 1e-6, "no opening within {nearest}° of {wanted}°");
        }
    }
}

fn shape(points: &[(f64, f64)]) -> Outline {
    Outline::new(points.iter().map(|(x, y)| Point::from_millimetres(*x, *y))).expect("an outline")
}

fn by_flank(outline: &Outline) -> Port {
    Port::new(&Engine::preset(), outline, SealedBy::FlankEdge).expect("in the bore")
}

/// A port across the long axis, where the angle on the bore begins anew, against the same port at
/// the other end.
#[test]
fn either_end_of_the_long_axis_is_the_same() {
    let end = shape(&[(105.0, -9.0), (130.0, -12.0), (128.0, 8.0), (107.0, 10.0)]);
    let other_end = by_flank(&moved(&end, |x, y| (-x, -y)));
    let end = by_flank(&end);
    for step in 0..1080 {
        let theta = f64::from(step);
        let (here, there) = (areas(&end, theta), areas(&other_end, theta + 540.0));
        for k in 0..3 {
            same(there[k], here[k], &end);
        }
    }
}

/// The flank covers the middle of a long edge while both its ends are open: a few points more along
/// the edge must change nothing.
#[test]
fn long_edges_that_the_flank_dips_across() {
    // Edges of 50 mm, so far from the shaft that the flank just reaches past their middle.
    for out in [83.5, 84.0, 84.5, 85.0, 85.5] {
        let at = |along: f64| (0.371 * out + 0.928 * along, 0.928 * out - 0.371 * along);
        let tip = (0.371 * (out + 12.0) + 9.0, 0.928 * (out + 12.0) - 4.0);
        let coarse = by_flank(&shape(&[at(-15.0), at(35.0), tip]));
        let many: Vec<_> =
            (0..=200).map(|i| at(-15.0 + 0.25 * f64::from(i))).chain([tip]).collect();
        let fine = by_flank(&shape(&many));
        for step in 0..1080 {
            let theta = f64::from(step);
            let (few, many) = (areas(&coarse, theta), areas(&fine, theta));
            for k in 0..3 {
                same(many[k], few[k], &coarse);
            }
        }
    }
}
