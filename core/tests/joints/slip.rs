//! Firing pressure against the clamp, and what keeps a joint face from turning.

use super::close;
use pitleaf_core::joints::separation::{Chamber, separation};
use pitleaf_core::joints::slip::{Dowels, reaction, slip};
use pitleaf_core::joints::{Assumption, Range, Refusal};
use uom::si::angular_velocity::revolution_per_minute;
use uom::si::area::square_centimeter;
use uom::si::f64::{AngularVelocity, Area, Force, Length, Power, Pressure, Torque};
use uom::si::force::kilonewton;
use uom::si::length::millimeter;
use uom::si::power::kilowatt;
use uom::si::pressure::{bar, megapascal};
use uom::si::ratio::ratio;
use uom::si::torque::newton_meter;

fn kn(least: f64, greatest: f64) -> Range<Force> {
    let kn = Force::new::<kilonewton>;
    Range::new(kn(least), kn(greatest)).expect("in order")
}

fn plain(least: f64, greatest: f64) -> Range<f64> {
    Range::new(least, greatest).expect("in order")
}

fn nm(least: f64, greatest: f64) -> Range<Torque> {
    let nm = Torque::new::<newton_meter>;
    Range::new(nm(least), nm(greatest)).expect("in order")
}

fn mpa(least: f64, greatest: f64) -> Range<Pressure> {
    let mpa = Pressure::new::<megapascal>;
    Range::new(mpa(least), mpa(greatest)).expect("in order")
}

fn mm(length: f64) -> Length {
    Length::new::<millimeter>(length)
}

fn chamber(least: f64, greatest: f64, area: f64) -> Chamber {
    let pressure = Range::new(Pressure::new::<bar>(least), Pressure::new::<bar>(greatest));
    Chamber { pressure: pressure.expect("in order"), area: Area::new::<square_centimeter>(area) }
}

/// 60 to 100 bar on 50 cm²: 30 to 50 kN. Clamp 200 to 300 kN, C 0 to 0.2:
/// left 200 − 50 = 150 to 300 − 0.8·30 = 276 kN; share 0.8·30/300 = 0.08 to 50/200 = 0.25. R, by hand.
#[test]
fn firing_pressure_takes_a_share_of_the_clamp() {
    let found = separation(kn(200.0, 300.0), &[chamber(60.0, 100.0, 50.0)], plain(0.0, 0.2))
        .expect("within bounds");
    close(found.force.least().get::<kilonewton>(), 30.0, 1e-9, "least force");
    close(found.force.greatest().get::<kilonewton>(), 50.0, 1e-9, "greatest force");
    close(found.clamp_left.least().get::<kilonewton>(), 150.0, 1e-9, "least clamp left");
    close(found.clamp_left.greatest().get::<kilonewton>(), 276.0, 1e-9, "greatest clamp left");
    close(found.share.least().get::<ratio>(), 0.08, 1e-12, "least share");
    close(found.share.greatest().get::<ratio>(), 0.25, 1e-12, "greatest share");
    assert_eq!(found.weakest, Assumption::FiringPressure, "100/60 beats 300/200");
}

#[test]
fn chambers_firing_at_once_add_up_and_may_part_the_faces() {
    let both = [chamber(80.0, 80.0, 50.0), chamber(20.0, 20.0, 100.0)];
    let found = separation(kn(50.0, 90.0), &both, plain(0.0, 0.0)).expect("within bounds");
    close(found.force.least().get::<kilonewton>(), 60.0, 1e-9, "40 and 20 kN");
    close(found.clamp_left.least().get::<kilonewton>(), -10.0, 1e-9, "parted");
    assert!(found.share.greatest().get::<ratio>() > 1.0, "parted: {:?}", found.share);
    assert_eq!(found.weakest, Assumption::Clamp, "only the clamp is a range");
}

#[test]
fn separation_refuses_what_makes_no_sense() {
    let sentence = |clamp, chamber, share| {
        separation(clamp, &[chamber], share).expect_err("refused").to_string()
    };
    assert_eq!(
        sentence(kn(0.0, 10.0), chamber(1.0, 2.0, 50.0), plain(0.0, 0.0)),
        "The clamp may be nothing. Give the preload of the bolts first.",
        "no clamp"
    );
    let hardly = separation(kn(1e-300, 10.0), &[chamber(1.0, 2.0, 50.0)], plain(0.0, 0.0));
    assert_eq!(hardly, Err(Refusal::NoClamp), "a share of hardly any clamp is no number");
    assert_eq!(
        sentence(kn(1.0, 20_000.0), chamber(1.0, 2.0, 50.0), plain(0.0, 0.0)),
        "A clamp lies between 0 and 10000 kN. Check the decimal point and the unit.",
        "too much clamp"
    );
    assert_eq!(
        sentence(kn(1.0, 10.0), chamber(1.0, 400.0, 50.0), plain(0.0, 0.0)),
        "A firing pressure lies between 0 and 300 bar. Check the decimal point and the unit.",
        "pressure"
    );
    assert_eq!(
        sentence(kn(1.0, 10.0), chamber(1.0, 2.0, 5_000.0), plain(0.0, 0.0)),
        "A chamber’s area lies between 0.1 and 2000 cm². Check the decimal point and the unit.",
        "area"
    );
    assert_eq!(
        sentence(kn(1.0, 10.0), chamber(1.0, 2.0, 50.0), plain(0.0, 1.5)),
        "A fastener’s share of the load lies between 0 and 1. Check the decimal point and the unit.",
        "share"
    );
}

/// 150 kW at 7000 /min: 204.628 N·m; two rotors: 102.314 N·m each, times 3 to 5. R, P/(2π·n/60).
#[test]
fn reaction_of_a_rotor() {
    let speed = AngularVelocity::new::<revolution_per_minute>(7_000.0);
    let output = Power::new::<kilowatt>(150.0);
    let found = reaction(output, speed, 2, plain(3.0, 5.0)).expect("within bounds");
    close(found.least().get::<newton_meter>(), 306.942, 0.001, "least");
    close(found.greatest().get::<newton_meter>(), 511.570, 0.001, "greatest");
    assert_eq!(reaction(output, speed, 0, plain(3.0, 5.0)), Err(Refusal::NoRotors), "no rotor");
    assert_eq!(Refusal::NoRotors.to_string(), "No rotor counted. Give at least one.", "sentence");
    let low = reaction(output, speed, 2, plain(0.5, 5.0)).expect_err("refused");
    assert_eq!(
        low.to_string(),
        "A peak factor lies between 1 and 20. Check the decimal point and the unit.",
        "peak factor"
    );
    let slow = AngularVelocity::new::<revolution_per_minute>(7.0);
    assert_eq!(
        reaction(output, slow, 2, plain(3.0, 5.0)).expect_err("refused").to_string(),
        "A speed lies between 100 and 30000 /min. Check the decimal point and the unit.",
        "speed"
    );
    assert_eq!(
        reaction(Power::new::<kilowatt>(0.0), speed, 2, plain(3.0, 5.0))
            .expect_err("refused")
            .to_string(),
        "An output lies between 1 and 2000 kW. Check the decimal point and the unit.",
        "output"
    );
}

fn dowels() -> Dowels {
    Dowels {
        count: 2,
        radius: mm(130.0),
        diameter: mm(16.0),
        bore: mm(12.0),
        seat: mm(12.0),
        shear_strength: mpa(300.0, 400.0),
        bearing_strength: mpa(2_000.0, 2_000.0),
    }
}

/// Friction 0.1 to 0.2 of 100 to 150 kN at 120 mm: 1200 to 3600 N·m. Dowels at 130 mm: the hollow one
/// (π/4)(16² − 12²) = 87.965 mm² times 300 to 400 MPa, two of them: 6861.2 to 9148.3 N·m; the solid one
/// 201.062 mm²: 15682.8 to 20910.4 N·m. R, by hand.
#[test]
fn friction_and_dowels_stand_side_by_side() {
    let found = slip(kn(100.0, 150.0), mm(120.0), plain(0.1, 0.2), &dowels(), nm(600.0, 600.0))
        .expect("within bounds");
    let torque = |range: Range<Torque>| {
        (range.least().get::<newton_meter>(), range.greatest().get::<newton_meter>())
    };
    for (held, least, greatest) in [
        (found.friction, 1_200.0, 3_600.0),
        (found.hollow, 6_861.2, 9_148.3),
        (found.solid, 15_682.8, 20_910.4),
    ] {
        let got = torque(held.torque);
        close(got.0, least, 0.1, "least torque");
        close(got.1, greatest, 0.1, "greatest torque");
        close(held.margin.least().get::<ratio>(), got.0 / 600.0, 1e-9, "margin");
    }
    assert_eq!(found.friction.weakest, Assumption::Friction, "friction");
    assert_eq!(found.solid.weakest, Assumption::ShearStrength, "dowels");
    let peaky = slip(kn(100.0, 150.0), mm(120.0), plain(0.1, 0.2), &dowels(), nm(200.0, 600.0));
    assert_eq!(peaky.expect("within").solid.weakest, Assumption::PeakFactor, "peak");
}

/// In a soft hole of 250 to 300 MPa the wall gives first: 2·250·16·12·0.13 = 12 480 N·m for the solid
/// dowel, while the hollow one still shears at 6861.2. R, by hand.
#[test]
fn a_soft_hole_gives_before_a_solid_dowel_shears() {
    let soft = Dowels { bearing_strength: mpa(250.0, 300.0), ..dowels() };
    let found = slip(kn(100.0, 150.0), mm(120.0), plain(0.1, 0.2), &soft, nm(600.0, 600.0))
        .expect("within bounds");
    close(found.solid.torque.least().get::<newton_meter>(), 12_480.0, 0.1, "solid");
    close(found.hollow.torque.least().get::<newton_meter>(), 6_861.2, 0.1, "hollow");
    assert_eq!(found.solid.weakest, Assumption::BearingStrength, "the hole");
    assert_eq!(found.hollow.weakest, Assumption::ShearStrength, "the dowel");
}

#[test]
fn slip_refuses_what_makes_no_sense() {
    let sentence = |friction, dowels: Dowels, radius: f64| {
        slip(kn(1.0, 2.0), mm(radius), friction, &dowels, nm(1.0, 1.0))
            .expect_err("refused")
            .to_string()
    };
    assert_eq!(
        sentence(plain(0.1, 0.2), Dowels { bore: mm(16.0), ..dowels() }, 120.0),
        "The hole through the pin must be smaller than the pin. Check both.",
        "bore"
    );
    assert_eq!(
        sentence(plain(0.1, 1.2), dowels(), 120.0),
        "A coefficient of friction lies between 0.02 and 0.8. Check the decimal point and the unit.",
        "friction"
    );
    assert_eq!(
        sentence(plain(0.1, 0.2), dowels(), 1_200.0),
        "A radius of the joint lies between 5 and 1000 mm. Check the decimal point and the unit.",
        "radius"
    );
    assert_eq!(
        sentence(plain(0.1, 0.2), Dowels { diameter: mm(0.6), bore: mm(0.0), ..dowels() }, 120.0),
        "A pin’s diameter lies between 1 and 200 mm. Check the decimal point and the unit.",
        "diameter"
    );
    let idle = slip(kn(1.0, 2.0), mm(120.0), plain(0.1, 0.2), &dowels(), nm(0.0, 1.0));
    assert_eq!(
        idle.expect_err("refused").to_string(),
        "A reaction torque lies between 1 and 100000 N·m. Check the decimal point and the unit.",
        "reaction"
    );
    let loose = slip(kn(0.0, 2.0), mm(120.0), plain(0.1, 0.2), &dowels(), nm(1.0, 1.0));
    assert_eq!(loose, Err(Refusal::NoClamp), "no clamp");
    assert_eq!(
        sentence(plain(0.1, 0.2), Dowels { seat: mm(0.0), ..dowels() }, 120.0),
        "A seat’s length lies between 1 and 500 mm. Check the decimal point and the unit.",
        "seat"
    );
}
