//! Bores, journals and circles.

use crate::{close_to, lengths, limit, mm, number, scatter};
use pitleaf_core::faces::{
    Cylinder, Doubt, Refusal, bearing_clearance, cylinder, least_squares_circle,
};
use pitleaf_core::limits::{Call, Side};
use uom::si::f64::Length;

fn of(places: &[&[f64]], doubt: f64) -> Result<Cylinder, Refusal> {
    let places: Vec<Vec<Length>> = places.iter().map(|place| lengths(place)).collect();
    cylinder(&places, &scatter(doubt))
}

#[test]
fn a_bore_read_at_two_places_and_three_directions() {
    let bore = of(&[&[43.060, 43.064, 43.062], &[43.070, 43.071, 43.072]], 0.003).expect("a bore");
    close_to(bore.sizes.least.value, 43.060, 1e-12);
    close_to(bore.sizes.greatest.value, 43.072, 1e-12);
    close_to(bore.sizes.mean.value, 43.0665, 1e-12);
    close_to(bore.out_of_round[0], 0.004, 1e-12);
    close_to(bore.out_of_round[1], 0.002, 1e-12);
    assert_eq!(bore.worst_place, 0, "the first place is less round");
    assert_eq!((bore.least_at, bore.greatest_at), ((0, 0), (1, 2)), "where the extremes are");
    let taper = bore.taper.expect("two places");
    close_to(taper.value, 0.009, 1e-12);
    close_to(taper.uncertainty, 0.003 * (2.0 / 3.0_f64).sqrt(), 1e-12);
    close_to(bore.sizes.mean.uncertainty, 0.003 / 6_f64.sqrt(), 1e-12);
    assert_eq!(of(&[&[43.0, 43.0]], 0.003).expect("one place").taper, None, "no taper from one");
}

#[test]
fn clearance_worst_mean_and_loosest() {
    let bore = of(&[&[43.060, 43.064]], 0.003).expect("a bore");
    let journal = of(&[&[42.998, 43.000]], 0.004).expect("a journal");
    let room = bearing_clearance(&bore, &journal);
    close_to(room.least.value, 0.060, 1e-12);
    close_to(room.mean.value, 0.063, 1e-12);
    close_to(room.most.value, 0.066, 1e-12);
    close_to(room.least.uncertainty, 0.005, 1e-12);
    close_to(room.mean.uncertainty, 0.005 / 2_f64.sqrt(), 1e-12);
    let call = |lower, upper| room.against(&limit(lower, upper)).expect("a verdict").call;
    assert_eq!(call("0.040", "0.090"), Call::Meets, "well inside");
    assert_eq!(call("0.040", "0.056"), Call::DoesNotMeet(Side::Above), "the loose end decides");
    assert_eq!(call("0.070", "0.090"), Call::DoesNotMeet(Side::Below), "the tight end decides");
    assert_eq!(call("0.058", "0.090"), Call::TooClose, "within the doubt of the tight end");
    assert_eq!(call("0.040", "0.068"), Call::TooClose, "within the doubt of the loose end");
}

/// Six readings with one gauge: the last digit averages out, the gauge's error does not.
#[test]
fn a_gauges_error_stays_in_the_mean() {
    let places = [lengths(&[43.0, 43.0, 43.0]), lengths(&[43.0, 43.0, 43.0])];
    let doubt = Doubt { scatter: mm(0.006), gauge: mm(0.004) };
    let bore = cylinder(&places, &doubt).expect("a bore");
    close_to(bore.sizes.mean.uncertainty, 0.001 * (6.0 + 16.0_f64).sqrt(), 1e-12);
    close_to(bore.sizes.least.uncertainty, 0.001 * 52_f64.sqrt(), 1e-12);
}

#[test]
fn a_pressed_bearing_has_interference() {
    let hole = of(&[&[50.000, 50.004]], 0.001).expect("a hole");
    let shell = of(&[&[50.050, 50.052]], 0.001).expect("a shell");
    let pressed = bearing_clearance(&hole, &shell).interference();
    close_to(pressed.least.value, 0.046, 1e-12);
    close_to(pressed.mean.value, 0.049, 1e-12);
    close_to(pressed.most.value, 0.052, 1e-12);
    assert!(pressed.least.uncertainty > mm(0.0), "a doubt has no sign");
}

#[test]
fn a_bore_needs_two_directions() {
    let too_few = |given| Refusal::TooFew { found: "out-of-round at one place", given, needed: 2 };
    assert_eq!(of(&[&[43.0, 43.0], &[43.0]], 0.001), Err(too_few(1)), "one direction");
    assert!(of(&[], 0.001).is_err(), "no places");
    let third = of(&[&[43.0, 43.0], &[0.043, 43.0]], 0.001).expect_err("metres typed");
    assert_eq!(
        third.to_string(),
        "Reading 3: A diameter lies between 1 and 500 mm. Check the decimal point and the unit.",
        "counted through the places"
    );
    let doubt = of(&[&[43.0, 43.0]], f64::NAN).expect_err("no doubt given");
    assert_eq!(
        doubt.to_string(),
        "An uncertainty lies between 0 and 5 mm. Check the decimal point and the unit.",
        "a doubt that is no number"
    );
}

/// Four points on each of three lobes, 10 µm high, about a known centre.
#[test]
fn a_three_lobed_bore_shows_on_a_circle_alone() {
    let trace: Vec<[Length; 2]> = (0..12_u8)
        .map(|n| {
            let angle = f64::from(n) * std::f64::consts::TAU / 12.0;
            let radius = 21.5 + 0.005 * (3.0 * angle).cos();
            [mm(2.0 + radius * angle.cos()), mm(-1.0 + radius * angle.sin())]
        })
        .collect();
    let circle = least_squares_circle(&trace).expect("a circle");
    close_to(circle.roundness, 0.010, 1e-9);
    close_to(circle.x, 2.0, 1e-9);
    close_to(circle.y, -1.0, 1e-9);
    close_to(circle.radius, 21.5, 1e-9);
    // Across the middle, a lobe always faces a hollow: a two-point gauge reads round.
    let across = |n: usize| {
        let [from, to] = [trace[n], trace[n + 6]];
        (number(from[0]) - number(to[0])).hypot(number(from[1]) - number(to[1]))
    };
    assert!((across(0) - across(2)).abs() < 1e-9, "and so it does");
}

#[test]
fn what_is_no_circle_is_refused() {
    let line: Vec<[Length; 2]> = (0..6_u8).map(|n| [mm(f64::from(n)), mm(2.0)]).collect();
    assert_eq!(least_squares_circle(&line), Err(Refusal::NoCircle), "a line");
    let few = Refusal::TooFew { found: "roundness", given: 3, needed: 4 };
    assert_eq!(least_squares_circle(&line[..3]), Err(few), "three points");
    assert_eq!(least_squares_circle(&[line[0]; 5]), Err(Refusal::NoCircle), "one spot");
}
