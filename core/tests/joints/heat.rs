//! The clamp hot, and solid dowels between parts that grow unlike.

use super::close;
use pitleaf_core::joints::Range;
use pitleaf_core::joints::clamp::{Section, stiffness};
use pitleaf_core::joints::heat::{DowelsVerdict, Piece, dowels, hot_clamp, stretched_by};
use pitleaf_core::seals::{Expansion, Temperatures};
use uom::si::f64::{Force, Length, Pressure, ThermodynamicTemperature};
use uom::si::force::kilonewton;
use uom::si::length::{micrometer, millimeter};
use uom::si::pressure::gigapascal;
use uom::si::thermodynamic_temperature::degree_celsius;

fn mm(length: f64) -> Length {
    Length::new::<millimeter>(length)
}

fn at(celsius: f64) -> Temperatures {
    Temperatures::of(ThermodynamicTemperature::new::<degree_celsius>(celsius))
}

fn piece(length: f64, millionths: f64, celsius: f64) -> Piece {
    let expansion = Expansion::of_millionths(millionths, millionths).expect("a metal");
    Piece { length: mm(length), expansion, running: at(celsius) }
}

fn kn(least: f64, greatest: f64) -> Range<Force> {
    Range::new(Force::new::<kilonewton>(least), Force::new::<kilonewton>(greatest))
        .expect("in order")
}

fn um(least: f64, greatest: f64) -> Range<Length> {
    let of = Length::new::<micrometer>;
    Range::new(of(least), of(greatest)).expect("in order")
}

/// Two aluminium housings of 80 mm (Callister B.6: 356, 21.5) among 230 mm of grey iron (11.4) under a bolt of
/// 4140 (12.3), all 70 K warmer: by hand 160·(21.5 − 12.3)·70e-6 − 230·(12.3 − 11.4)·70e-6 = 0.0886 mm.
#[test]
fn a_stack_with_aluminium_grows_past_its_bolts() {
    let stack = [piece(160.0, 21.5, 90.0), piece(230.0, 11.4, 90.0)];
    let bolt = piece(390.0, 12.3, 90.0);
    let past = stretched_by(&stack, &bolt, at(20.0)).expect("told");
    close(past.least().get::<millimeter>(), 0.088_55, 0.000_05, "past the bolt");
    close(past.greatest().get::<millimeter>(), 0.088_55, 0.000_05, "known to a point");
    // 10 mm all along, 207 GPa: 41.7 kN/mm, so at most 3.7 kN more.
    let bolt = [Section::shank(mm(390.0), mm(10.0))];
    let stiff = stiffness(&bolt, Pressure::new::<gigapascal>(207.0)).expect("a bolt");
    let hot = hot_clamp(kn(16.0, 20.0), stiff, past);
    close(hot.least().get::<kilonewton>(), 16.0, 1e-9, "at least as cold");
    close(hot.greatest().get::<kilonewton>(), 23.69, 0.02, "at most so much");
}

/// The other way round the clamp is lost, and never falls below nothing.
#[test]
fn a_bolt_that_gets_hotter_than_the_stack_loses_clamp() {
    let stack = [piece(100.0, 11.4, 60.0)];
    let bolt = piece(100.0, 12.3, 160.0);
    let past = stretched_by(&stack, &bolt, at(20.0)).expect("told");
    // 100·(11.4·40 − 12.3·140)e-6 = −0.1266 mm.
    close(past.least().get::<millimeter>(), -0.126_6, 0.000_05, "less than the bolt");
    let stiff =
        stiffness(&[Section::shank(mm(100.0), mm(10.0))], Pressure::new::<gigapascal>(207.0));
    let hot = hot_clamp(kn(10.0, 14.0), stiff.expect("a bolt"), past);
    close(hot.least().get::<kilonewton>(), 0.0, 1e-9, "nothing left, not less");
    close(hot.greatest().get::<kilonewton>(), 14.0, 1e-9, "if the housings give all of it");
}

/// Dowels 240 mm apart, aluminium (21.5) against grey iron (11.4), 80 K warmer: 240·10.1·80e-6 = 0.194 mm.
/// The fit H7/g6 at 10 to 18 mm gives 6 to 35 µm in each part.
#[test]
fn two_tight_dowels_fight_what_one_part_grows_past_the_other() {
    let (aluminium, iron) = (piece(240.0, 21.5, 100.0), piece(240.0, 11.4, 100.0));
    let of = |one: Range<Length>, other: Range<Length>| {
        dowels(&aluminium, &iron, at(20.0), [one, other]).expect("told")
    };
    let tight = of(um(-30.0, -10.0), um(-30.0, -10.0));
    close(tight.past.least().get::<millimeter>(), 0.193_9, 0.000_1, "past");
    close(tight.room.greatest().get::<micrometer>(), 0.0, 1e-9, "a press gives nothing");
    assert_eq!(tight.verdict(), DowelsVerdict::Fight, "tight in both");
    let slid = of(um(6.0, 35.0), um(6.0, 35.0));
    close(slid.room.greatest().get::<micrometer>(), 70.0, 1e-6, "both fits of both dowels");
    assert_eq!(slid.verdict(), DowelsVerdict::Fight, "still too little");
    assert_eq!(of(um(150.0, 200.0), um(0.0, 10.0)).verdict(), DowelsVerdict::MayFight, "perhaps");
    assert_eq!(
        of(um(200.0, 220.0), um(-15.0, -10.0)).verdict(),
        DowelsVerdict::Free,
        "one slotted"
    );
    let turned = dowels(&iron, &aluminium, at(20.0), [um(0.0, 0.0), um(0.0, 0.0)]).expect("told");
    close(turned.past.least().get::<millimeter>(), 0.193_9, 0.000_1, "whichever comes first");
}

/// A range of temperatures that may leave both parts alike holds nothing as its least.
#[test]
fn parts_that_may_grow_alike_may_grow_past_each_other_by_nothing() {
    let warm = |least: f64, most: f64| Temperatures {
        coldest: at(least).coldest,
        hottest: at(most).hottest,
    };
    let iron = Piece { running: warm(60.0, 120.0), ..piece(200.0, 11.4, 0.0) };
    let hot = dowels(&iron, &iron, at(20.0), [um(0.0, 0.0), um(0.0, 0.0)]).expect("told");
    close(hot.past.least().get::<millimeter>(), 0.0, 1e-9, "alike");
    close(hot.past.greatest().get::<millimeter>(), 0.1368, 0.0005, "or 60 K apart");
    assert_eq!(hot.verdict(), DowelsVerdict::MayFight, "not known");
}
