//! Runout: eccentricity, direction and what remains.

use crate::{close_to, lengths, scatter};
use pitleaf_core::faces::{Refusal, runout};
use std::f64::consts::TAU;
use uom::si::angle::degree;

fn turn(places: u16, eccentricity: f64, towards: f64, lobes: f64, size: f64) -> Vec<f64> {
    (0..places)
        .map(|place| {
            let angle = f64::from(place) * TAU / f64::from(places);
            0.1 + eccentricity * (angle - towards.to_radians()).cos() + size * (lobes * angle).cos()
        })
        .collect()
}

#[test]
fn eccentricity_and_out_of_round_are_told_apart() {
    for places in [8, 12, 36] {
        let found = runout(&lengths(&turn(places, 0.03, 200.0, 2.0, 0.005)), &scatter(0.001));
        let found = found.expect("a turn");
        close_to(found.eccentricity.value, 0.03, 1e-12);
        let direction = found.direction.get::<degree>();
        assert!((direction - 200.0).abs() < 1e-9, "{places} places: {direction}°");
        close_to(found.out_of_round, 0.01, 1e-12);
        close_to(found.eccentricity.uncertainty, 0.001 * (2.0 / f64::from(places)).sqrt(), 1e-15);
    }
}

#[test]
fn the_total_is_that_of_the_readings() {
    let found = runout(&lengths(&turn(8, 0.03, 90.0, 2.0, 0.0)), &scatter(0.001)).expect("a turn");
    close_to(found.total.value, 0.06, 1e-12);
    close_to(found.total.uncertainty, 0.001 * 2_f64.sqrt(), 1e-15);
    assert_eq!(found.highest, 2, "the third place, at 90°");
}

#[test]
fn a_direction_lost_in_the_noise_is_not_given() {
    let slight = turn(8, 0.000_9, 30.0, 2.0, 0.0);
    let found = |doubt| runout(&lengths(&slight), &scatter(doubt)).expect("a turn");
    assert_eq!(found(0.001).direction_uncertainty, None, "0.9 µm by a gauge good to 1 µm");
    assert!(found(0.000_1).direction_uncertainty.is_some(), "and by a finer one");
}

#[test]
fn a_turn_needs_eight_places() {
    let few = runout(&lengths(&[0.0; 7]), &scatter(0.001));
    assert_eq!(few, Err(Refusal::TooFew { found: "runout", given: 7, needed: 8 }), "seven");
    let mut bad = [0.0; 8];
    bad[4] = f64::NAN;
    assert!(runout(&lengths(&bad), &scatter(0.001)).is_err(), "no number");
}
