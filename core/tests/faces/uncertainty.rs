//! Uncertainties against the examples of JCGM 100:2008 (GUM); the figures are from memory of its text.

use crate::{close_to, lengths, limit, mm, scatter};
use pitleaf_core::faces::{Contribution, Doubt, Measured, Refusal, combined};
use pitleaf_core::limits::{Call, Gauge, GaugeKind};
use pitleaf_core::quantity::{Bounds, Reading, Unit};

fn part(sensitivity: f64, uncertainty: f64, shared: Option<u8>) -> Contribution {
    Contribution { sensitivity, uncertainty: mm(uncertainty), shared }
}

/// 4.4.3, table 1: twenty temperatures, mean 100.14, standard deviation of the mean 0.33.
#[test]
fn twenty_readings_and_their_mean() {
    let readings = [
        96.90, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42,
        100.68, 100.95, 101.11, 101.20, 101.57, 101.84, 102.36, 102.72,
    ];
    let mean =
        Measured::repeated(&lengths(&readings), &scatter(0.0), &Bounds::SIZE).expect("readings");
    close_to(mean.value, 100.145, 0.000_51);
    close_to(mean.uncertainty, 0.333, 0.000_5);
}

/// 5.2.2, example: ten resistors of 1000 Ω, each calibrated to 0.1 Ω against one standard, in series: 1 Ω.
#[test]
fn what_shares_an_error_adds_up() {
    let ten = |shared| combined(&vec![part(1.0, 0.1, shared); 10]);
    close_to(ten(Some(0)), 1.0, 1e-12);
    close_to(ten(None), 0.316_227_766, 1e-9);
}

/// H.1, an end gauge: 25, 9.7, 2.9 and 16.6 nm make 32 nm.
#[test]
fn an_end_gauge() {
    let nanometres = [25.0, 9.7, 2.9, 16.6].map(|part| part * 1e-6);
    let all = combined(&nanometres.map(|uncertainty| part(1.0, uncertainty, None)));
    close_to(all, 32e-6, 0.5e-6);
}

/// The same micrometer for both ends of a difference: its own error cancels.
#[test]
fn a_shared_error_cancels_in_a_difference() {
    let both = [part(1.0, 0.004, Some(3)), part(-1.0, 0.004, Some(3)), part(2.0, 0.001, None)];
    close_to(combined(&both), 0.002, 1e-15);
    close_to(combined(&[]), 0.0, 0.0);
}

#[test]
fn a_reading_takes_its_gauges_doubt() {
    let reading = Reading::read("0.05", Unit::Millimetre, &Bounds::GAP).expect("a gap");
    let gauge = Gauge::usual(GaugeKind::FeelerLeaf);
    let measured = Measured::of(&reading, &gauge).expect("a length");
    close_to(measured.value, 0.05, 1e-15);
    close_to(measured.uncertainty, gauge.uncertainty(&reading, Unit::Millimetre), 1e-15);
    close_to(measured.expanded(), 2.0 * gauge.uncertainty(&reading, Unit::Millimetre), 1e-15);
    let doubt = Doubt::of(std::slice::from_ref(&reading), &gauge);
    close_to(doubt.single(), gauge.uncertainty(&reading, Unit::Millimetre), 1e-15);
    let torque = Bounds::widest(Unit::NewtonMetre.dimension());
    let torque = Reading::read("30", Unit::NewtonMetre, torque).expect("a torque");
    assert_eq!(Measured::of(&torque, &gauge), None, "a torque is no length");
}

#[test]
fn the_coarsest_reading_decides_the_scatter() {
    let reading =
        |text: &str| Reading::read(text, Unit::Millimetre, &Bounds::SIZE).expect("a size");
    let mut gauge = Gauge::usual(GaugeKind::OutsideMicrometer);
    let of = |texts: &[&str], gauge: &Gauge| {
        let readings: Vec<Reading> = texts.iter().map(|text| reading(text)).collect();
        Doubt::of(&readings, gauge)
    };
    close_to(of(&["80.012", "80.01"], &gauge).scatter, 0.01 / 12_f64.sqrt(), 1e-15);
    close_to(of(&["80.0123"], &gauge).scatter, 0.001 / 12_f64.sqrt(), 1e-15);
    close_to(of(&["80.0123"], &gauge).gauge, 0.004 / 3_f64.sqrt(), 1e-15);
    gauge.permissible_error = None;
    close_to(of(&["80.0123"], &gauge).gauge, 0.0, 0.0);
}

#[test]
fn a_result_stands_against_a_limit_as_a_reading_does() {
    let against = |value: f64, uncertainty: f64| {
        let result = Measured { value: mm(value), uncertainty: mm(uncertainty) };
        result.against(&limit("", "0.05"))
    };
    // Guard band 1.65 u of 2 µm: 3.3 µm.
    assert_eq!(against(0.0467, 0.002).expect("a verdict").call, Call::Meets, "at the guard");
    assert_eq!(against(0.0468, 0.002).expect("a verdict").call, Call::TooClose, "inside it");
    assert_eq!(against(f64::NAN, 0.002), None, "no number, no verdict");
    let sure = against(0.05, 0.0).expect("a verdict");
    assert!(sure.within && sure.conformity.is_finite(), "no doubt at all: {sure:?}");
}

#[test]
fn a_mean_needs_a_reading() {
    let none = Measured::repeated(&[], &scatter(0.001), &Bounds::GAP);
    assert_eq!(none, Err(Refusal::TooFew { found: "a mean", given: 0, needed: 1 }), "none");
}
