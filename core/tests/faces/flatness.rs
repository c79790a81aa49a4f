//! Minimum zones provable by the triangle or cross criterion, and what holds for every face.

use crate::{close_to, mm, number, points, scatter};
use pitleaf_core::faces::{Point, Reference, Refusal, far_corners, flatness};
use proptest::prelude::*;

const EXACT: f64 = 1e-12;

#[track_caller]
fn check(points: &[Point], zone: f64, squares: f64) {
    let of = |reference| flatness(points, reference).expect("a face").value();
    close_to(of(Reference::MinimumZone), zone, EXACT);
    close_to(of(Reference::LeastSquares), squares, EXACT);
}

/// Triangle criterion: a point over the middle of three level ones.
#[test]
fn a_spot_over_a_triangle() {
    let face = points(&[
        (0.0, 0.0, 0.0),
        (100.0, 0.0, 0.0),
        (50.0, 86.602_54, 0.0),
        (50.0, 86.602_54 / 3.0, 0.02),
    ]);
    check(&face, 0.02, 0.02);
}

/// A cylinder's sag, under any tilt: the low line's ends against the high one's middle.
#[test]
fn a_sag_under_a_tilt() {
    for tilt in [(0.0, 0.0), (1e-3, -4e-4), (-0.02, 0.05)] {
        let sag = |x: f64, y: f64| 0.003 * (x / 100.0).powi(2) + tilt.0 * x + tilt.1 * y;
        let face: Vec<_> = [-100.0, -50.0, 0.0, 50.0, 100.0]
            .into_iter()
            .flat_map(|x| [-50.0, 0.0, 50.0].map(|y| (x, y, sag(x, y))))
            .collect();
        check(&points(&face), 0.003, 0.003);
    }
}

/// Provable: the middle, 10 µm, against the chord of two low corners at −2 and −1 µm.
#[test]
fn a_grid_of_nine() {
    let heights = [0.0, 0.004, -0.002, 0.006, 0.010, 0.003, -0.001, 0.005, 0.001];
    let face: Vec<_> = (0..9_u8)
        .zip(heights)
        .map(|(n, z)| (50.0 * f64::from(n % 3), 50.0 * f64::from(n / 3), z))
        .collect();
    check(&points(&face), 0.0115, 0.0120);
    let zone = flatness(&points(&face), Reference::MinimumZone).expect("a face");
    assert_eq!(zone.highest(), 4, "the middle is highest");
    assert_eq!(zone.high_spots(mm(0.0))[0], 4, "and heads the high spots");
    let mut low = zone.low_spots(mm(1e-9));
    low.sort_unstable();
    assert!(low.contains(&2) && low.contains(&6), "both low corners touch: {low:?}");
    // The middle weighs 1, the ends of the chord under it a half each.
    close_to(zone.measured(&scatter(0.001)).uncertainty, 0.001 * 1.5_f64.sqrt(), EXACT);
}

#[test]
fn spots_come_in_order() {
    let face = points(&[
        (0.0, 0.0, 0.010),
        (100.0, 0.0, -0.010),
        (0.0, 100.0, -0.010),
        (100.0, 100.0, 0.010),
        (50.0, 50.0, 0.004),
    ]);
    let zone = flatness(&face, Reference::MinimumZone).expect("a face");
    assert_eq!(zone.high_spots(mm(0.007)), [0, 3, 4], "highest first, within 7 µm");
    assert_eq!(zone.low_spots(mm(0.007)), [1, 2], "lowest first, within 7 µm");
    assert_eq!(zone.worst(), 0, "the first of equals");
}

#[test]
fn one_deep_low_place_is_the_worst() {
    let face = points(&[
        (0.0, 0.0, 0.0),
        (100.0, 0.0, 0.0),
        (0.0, 100.0, 0.0),
        (100.0, 100.0, 0.0),
        (40.0, 60.0, -0.05),
    ]);
    let squares = flatness(&face, Reference::LeastSquares).expect("a face");
    assert_eq!(squares.worst(), 4, "the low place lies farthest off");
    assert_eq!(squares.lowest(), 4, "and lowest");
    let zone = flatness(&face, Reference::MinimumZone).expect("a face");
    close_to(zone.under_highest(4).expect("a place"), 0.05, EXACT);
    assert_eq!(zone.under_highest(5), None, "no such place");
    let levelled = zone.levelled(&face);
    close_to(levelled[0].z, 0.025, EXACT);
    assert_eq!(levelled[4].y, face[4].y, "where it was");
}

#[test]
fn three_corners_level_the_face() {
    let face =
        points(&[(0.0, 0.0, 0.5), (100.0, 0.0, 0.6), (0.0, 100.0, 0.7), (100.0, 100.0, 0.83)]);
    let levelled = flatness(&face, Reference::Corners([0, 1, 2])).expect("a face");
    close_to(levelled.value(), 0.03, EXACT);
    close_to(levelled.deviations()[3], 0.03, EXACT);
    close_to(levelled.deviations()[1], 0.0, EXACT);
    // The lone corner is the sum of three and itself: 1 + 1 + 1 + 1 squares.
    close_to(levelled.measured(&scatter(0.001)).uncertainty, 0.002, EXACT);
    for corners in [[0, 1, 1], [0, 1, 4]] {
        let refused = flatness(&face, Reference::Corners(corners));
        assert_eq!(refused, Err(Refusal::NoCorners), "corners {corners:?}");
    }
}

#[test]
fn what_is_no_face_is_refused() {
    let line: Vec<_> = (0..5_u8).map(|n| (f64::from(n) * 10.0, f64::from(n) * 7.0, 0.0)).collect();
    let same = [(3.0, 3.0, 0.1); 4];
    for (rows, refusal) in [
        (&[][..], Refusal::TooFew { found: "flatness", given: 0, needed: 4 }),
        (&line[..2], Refusal::TooFew { found: "flatness", given: 2, needed: 4 }),
        (&line[..3], Refusal::TooFew { found: "flatness", given: 3, needed: 4 }),
        (&line[..], Refusal::OneLine),
        (&same[..], Refusal::OneLine),
    ] {
        for reference in [Reference::MinimumZone, Reference::LeastSquares] {
            assert_eq!(flatness(&points(rows), reference), Err(refusal), "{rows:?}");
        }
    }
    for bad in [f64::NAN, f64::INFINITY, 25.1, -26.0, 1e300] {
        let face = points(&[(0.0, 0.0, 0.0), (1.0, 0.0, 0.0), (0.0, 1.0, bad), (1.0, 1.0, 0.0)]);
        let refused = flatness(&face, Reference::MinimumZone).expect_err("a height of {bad}");
        let is_third = matches!(refused, Refusal::OutOfBounds { reading: Some(2), .. });
        assert!(is_third, "{bad}: {refused:?}");
    }
    let far = points(&[(0.0, 0.0, 0.0), (1.0, 0.0, 0.0), (0.0, 1_001.0, 0.0), (1.0, 1.0, 0.0)]);
    assert!(flatness(&far, Reference::MinimumZone).is_err(), "a place a metre off");
}

/// A tenth of a millimetre beside a line of 100 mm would turn every micrometre read there into a tilt.
#[test]
fn places_nearly_on_a_line_are_refused() {
    let beside = |off: f64| {
        let face = points(&[
            (0.0, 0.0, 0.0),
            (100.0, 0.0, 0.0),
            (30.0, off, 0.01),
            (60.0, -off / 2.0, 0.0),
        ]);
        flatness(&face, Reference::MinimumZone)
    };
    assert_eq!(beside(0.05), Err(Refusal::OneLine), "50 µm off");
    assert!(beside(0.2).is_ok(), "0.2 mm off");
}

#[test]
fn the_edge_of_the_bounds_is_taken() {
    let face =
        points(&[(0.0, 0.0, 25.0), (1.0, 0.0, -25.0), (0.0, 1_000.0, 0.0), (-1_000.0, 1.0, 0.0)]);
    assert!(flatness(&face, Reference::MinimumZone).is_ok(), "25 mm and a metre are within");
}

/// Scattered faces, and coarse readings on a grid, where many places tie.
fn faces() -> impl Strategy<Value = Vec<Point>> {
    let scattered = prop::collection::vec((-150.0..150.0, -150.0..150.0, -0.05..0.05), 4..40);
    let grid = (3..7_u8, 3..7_u8).prop_flat_map(|(columns, rows)| {
        let places = usize::from(columns) * usize::from(rows);
        prop::collection::vec(0..4_u8, places..=places).prop_map(move |heights| {
            heights
                .iter()
                .zip(0_u8..)
                .map(|(&z, n)| {
                    let (x, y) = (f64::from(n % columns), f64::from(n / columns));
                    (x * 30.0, y * 30.0, f64::from(z) * 0.01)
                })
                .collect()
        })
    });
    prop_oneof![scattered, grid]
        .prop_map(|rows: Vec<_>| points(&rows))
        .prop_filter("three places off a line", |face| far_corners(face).is_ok())
}

fn zone(face: &[Point]) -> f64 {
    number(flatness(face, Reference::MinimumZone).expect("a face").value())
}

fn tilted(face: &[Point], (along_x, along_y, up): (f64, f64, f64)) -> Vec<Point> {
    let over = |point: &Point| point.z + along_x * point.x + along_y * point.y + mm(up);
    face.iter().map(|point| Point { z: over(point), ..*point }).collect()
}

proptest! {
    #[test]
    fn no_other_plane_is_closer(face in faces(), x in -1e-3..1e-3, y in -1e-3..1e-3) {
        let zone = zone(&face);
        let corners = far_corners(&face).expect("corners");
        for reference in [Reference::LeastSquares, Reference::Corners(corners)] {
            let other = number(flatness(&face, reference).expect("a face").value());
            prop_assert!(zone <= other + EXACT, "{reference:?} gives {other}, the zone {zone}");
        }
        let heights: Vec<f64> = tilted(&face, (x, y, 0.0)).iter().map(|point| number(point.z)).collect();
        let spread = heights.iter().copied().fold(f64::NEG_INFINITY, f64::max)
            - heights.iter().copied().fold(f64::INFINITY, f64::min);
        prop_assert!(zone <= spread + EXACT, "a plane of slope {x}, {y} gives {spread}, the zone {zone}");
    }

    #[test]
    fn tilt_and_shift_change_nothing(face in faces(), x in -0.01..0.01, y in -0.01..0.01, up in -5.0..5.0) {
        let moved = tilted(&face, (x, y, up));
        prop_assert!((zone(&face) - zone(&moved)).abs() < 1e-11, "tilted and shifted by {x}, {y}, {up}");
        let aside: Vec<Point> = face.iter().map(|p| Point { x: p.x + mm(300.0), y: p.y - mm(200.0), ..*p }).collect();
        prop_assert!((zone(&face) - zone(&aside)).abs() < 1e-11, "moved aside");
    }

    /// Why a grid of any even steps may be entered on one of other steps.
    #[test]
    fn stretching_a_face_in_its_plane_changes_nothing(face in faces(), along in 0.2..3.0, across in 0.2..3.0) {
        let stretched: Vec<Point> = face.iter().map(|p| Point { x: p.x * along, y: p.y * across, ..*p }).collect();
        prop_assert!((zone(&face) - zone(&stretched)).abs() < 1e-11, "stretched by {along} and {across}");
    }

    #[test]
    fn the_order_of_readings_changes_nothing(face in faces()) {
        let turned: Vec<Point> = face.iter().rev().copied().collect();
        prop_assert!((zone(&face) - zone(&turned)).abs() < EXACT, "read backwards");
    }

    /// The uncertainty is that of the value's own slopes, found by moving each reading a little.
    #[test]
    fn uncertainty_follows_from_each_readings_sway(
        face in prop::collection::vec((-150.0..150.0, -150.0..150.0, -0.05..0.05), 4..20)
            .prop_map(|rows: Vec<_>| points(&rows))
            .prop_filter("three places off a line", |face| far_corners(face).is_ok())
    ) {
        const LITTLE: f64 = 1e-9;
        for reference in [Reference::MinimumZone, Reference::LeastSquares, Reference::Corners(far_corners(&face).expect("corners"))] {
            let value = |face: &[Point]| number(flatness(face, reference).expect("a face").value());
            let squares: f64 = (0..face.len())
                .map(|place| {
                    let moved = |by: f64| {
                        let mut face = face.clone();
                        face[place].z += mm(by);
                        value(&face)
                    };
                    ((moved(LITTLE) - moved(-LITTLE)) / (2.0 * LITTLE)).powi(2)
                })
                .sum();
            let given = number(flatness(&face, reference).expect("a face").measured(&scatter(0.001)).uncertainty);
            prop_assert!((given - 0.001 * squares.sqrt()).abs() < 2e-7, "{reference:?}: {given} against {}", 0.001 * squares.sqrt());
        }
    }
}
