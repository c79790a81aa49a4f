//! Step wear told from warp: exact on faces made of both, refused where the two look alike.

use crate::{close_to, mm, points, scatter};
use pitleaf_core::faces::{
    Across, Point, Reference, Refusal, Ring, Spot, flatness, side_housing_spots, step_and_warp,
    steps_across,
};
use pitleaf_core::trochoid::Geometry;

fn spots() -> Vec<Spot> {
    side_housing_spots(Geometry::preset().bore(), mm(8.0)).expect("an outline")
}

/// A bowl and a step, on the places of a side housing.
fn face(bowl: f64, step: f64) -> (Vec<Point>, Vec<bool>) {
    spots()
        .into_iter()
        .map(|spot| {
            let swept = spot.ring == Ring::Swept;
            let (x, y) = (spot.x / mm(100.0), spot.y / mm(100.0));
            let (x, y) = (x.value, y.value);
            let z = bowl * (x * x - 0.5 * x * y) + 0.001 * y - if swept { step } else { 0.0 };
            (Point { x: spot.x, y: spot.y, z: mm(z) }, swept)
        })
        .unzip()
}

#[test]
fn a_step_on_a_bent_face_is_found_whole() {
    for (bowl, step) in [(0.0, 0.03), (0.04, 0.03), (-0.05, 0.0), (0.02, -0.004)] {
        let (points, swept) = face(bowl, step);
        let apart = step_and_warp(&points, &swept, &scatter(0.001)).expect("a map");
        close_to(apart.step.value, step, 1e-12);
        let (bent, _) = face(bowl, 0.0);
        let warp = flatness(&bent, Reference::MinimumZone).expect("a face").value();
        close_to(apart.warp, warp.value * 1e3, 1e-12);
        close_to(apart.rest, 0.0, 1e-12);
        let doubt = apart.step.uncertainty;
        assert!(doubt > mm(0.000_41) && doubt < mm(0.002), "24 readings: {doubt:?}");
    }
}

#[test]
fn what_hides_a_step_is_refused() {
    let (points, mut swept) = face(0.01, 0.02);
    swept.fill(true);
    let refused =
        |swept: &[bool]| step_and_warp(&points, swept, &scatter(0.001)).expect_err("refused");
    assert_eq!(refused(&swept), Refusal::StepHidden, "no land read");
    swept.fill(false);
    assert_eq!(refused(&swept), Refusal::StepHidden, "no swept band read");
    assert_eq!(refused(&[true; 3]), Refusal::Unequal { one: 24, other: 3 }, "marks missing");
    let few = step_and_warp(&points[..8], &[true; 8], &scatter(0.001));
    let too_few = Refusal::TooFew { found: "telling step from warp", given: 8, needed: 9 };
    assert_eq!(few, Err(too_few), "eight places");
}

#[test]
fn a_line_of_places_is_refused_as_one() {
    let line: Vec<_> = (0..10_u8).map(|n| (f64::from(n), 0.0, 0.0)).collect();
    let swept: Vec<bool> = (0..10_u8).map(|n| n % 2 == 0).collect();
    let refused = step_and_warp(&points(&line), &swept, &scatter(0.001));
    assert_eq!(refused, Err(Refusal::OneLine), "one line");
}

#[test]
fn pairs_across_the_edge() {
    let pairs = [(0.010, -0.010), (0.000, -0.050), (-0.020, -0.030)]
        .map(|(land, swept)| Across { land: mm(land), swept: mm(swept) });
    let steps = steps_across(&pairs, &scatter(0.001)).expect("pairs");
    assert_eq!(steps.worst, 1, "the second is deepest");
    close_to(steps.deepest().value, 0.050, 1e-15);
    close_to(steps.mean.value, 0.08 / 3.0, 1e-15);
    close_to(steps.uneven(), 0.05 - 0.08 / 3.0, 1e-15);
    close_to(steps.deepest().uncertainty, 0.001 * 2_f64.sqrt(), 1e-15);
    close_to(steps.mean.uncertainty, 0.001 * (2.0 / 3.0_f64).sqrt(), 1e-15);
    assert!(steps_across(&[], &scatter(0.001)).is_err(), "no pairs");
}

/// The bore is e 15, R 102, a 3: R + e + a along the long axis, R − e + a along the short one.
#[test]
fn spots_lie_beside_the_outline_and_bear_its_hours() {
    let spots = spots();
    let at = |hour: u8, ring: Ring| {
        *spots.iter().find(|spot| spot.hour == hour && spot.ring == ring).expect("a spot")
    };
    close_to(at(12, Ring::Land).x, 128.0, 1e-9);
    close_to(at(12, Ring::Swept).x, 112.0, 1e-9);
    close_to(at(3, Ring::Land).y, -98.0, 1e-9);
    close_to(at(3, Ring::Swept).y, -82.0, 1e-9);
    close_to(at(6, Ring::Land).x, -128.0, 1e-9);
    close_to(at(9, Ring::Swept).y, 82.0, 1e-9);
    assert_eq!(at(12, Ring::Land).to_string(), "12 o’clock, land", "its name");
    assert_eq!(at(4, Ring::Swept).to_string(), "4 o’clock, swept band", "its name");
    assert_eq!(spots.len(), 24, "two rings of twelve");
    for aside in [0.9, 30.1, f64::NAN] {
        let refused = side_housing_spots(Geometry::preset().bore(), mm(aside));
        assert!(refused.is_err(), "{aside} mm aside");
    }
}
