//! Property classes, torque, preload and stretch.

use super::close;
use pitleaf_core::joints::clamp::{
    Fasteners, Section, load_share, loaded, nut_factors, preload, preload_of_stretch,
    scatter_of_stretch, scatters, stiffness, stretch, torque_for, total_clamp,
};
use pitleaf_core::joints::strength::{ProofVerdict, PropertyClass, Strength};
use pitleaf_core::joints::threads::Thread;
use pitleaf_core::joints::{Assumption, Material, Range, Refusal};
use pitleaf_core::quantity::{Amount, Unit};
use uom::si::area::square_millimeter;
use uom::si::f64::{Area, Force, Length, Pressure, Torque};
use uom::si::force::{kilonewton, newton};
use uom::si::length::millimeter;
use uom::si::pressure::{gigapascal, megapascal};
use uom::si::ratio::ratio;
use uom::si::torque::newton_meter;

fn range(least: f64, greatest: f64) -> Range<f64> {
    Range::new(least, greatest).expect("in order")
}

fn kn(force: f64) -> Force {
    Force::new::<kilonewton>(force)
}

fn nm(torque: f64) -> Torque {
    Torque::new::<newton_meter>(torque)
}

fn mm(length: f64) -> Length {
    Length::new::<millimeter>(length)
}

fn class(name: &str) -> PropertyClass {
    PropertyClass::named(name).unwrap_or_else(|| panic!("{name} is no class"))
}

fn thread(name: &str) -> Thread {
    Thread::named(name).unwrap_or_else(|| panic!("{name} is in no table"))
}

/// ISO 898-1:2013: proof and tensile stress of 8.8, 10.9 and 12.9. P.
#[test]
fn property_classes_are_the_published_ones() {
    for (name, proof, tensile) in [("8.8", 580, 800), ("10.9", 830, 1_040), ("12.9", 970, 1_220)] {
        let class = class(name);
        assert_eq!(class.proof_stress(), Amount::whole(proof, Unit::Megapascal), "{name}");
        assert_eq!(class.tensile_strength(), Amount::whole(tensile, Unit::Megapascal), "{name}");
    }
    for class in PropertyClass::all() {
        let share = class.strength().proof() / class.strength().tensile();
        assert!((0.65..0.85).contains(&share.get::<ratio>()), "{}", class.name());
    }
    assert_eq!(class(" 10,9 ").name(), "10.9", "a comma and spaces");
    assert!(PropertyClass::named("11.9").is_none(), "no such class");
}

/// ISO 898-1:2013, table 5: proof loads in N, printed to three figures. P.
#[test]
fn proof_loads_are_the_published_ones() {
    for (name, loads) in [
        ("M8 × 1.25", [21_200.0, 30_400.0, 35_500.0]),
        ("M10 × 1.5", [33_700.0, 48_100.0, 56_300.0]),
        ("M12 × 1.75", [48_900.0, 70_000.0, 81_800.0]),
    ] {
        for (grade, wanted) in ["8.8", "10.9", "12.9"].iter().zip(loads) {
            let load = class(grade).strength().proof_load(thread(name).stress_area());
            close(load.get::<newton>(), wanted, 100.0, &format!("{name} {grade}"));
        }
    }
}

#[test]
fn a_share_of_proof_stress_says_what_it_means() {
    let strength = class("8.8").strength();
    let share = |least: f64, greatest: f64| {
        let of = Pressure::new::<megapascal>;
        strength.share_of_proof(Range::new(of(least), of(greatest)).expect("in order"))
    };
    close(share(290.0, 580.0).least().get::<ratio>(), 0.5, 1e-9, "half of 580 MPa");
    assert_eq!(ProofVerdict::of(share(300.0, 580.0)), ProofVerdict::Holds, "up to it");
    assert_eq!(ProofVerdict::of(share(300.0, 581.0)), ProofVerdict::MayYield, "astride");
    assert_eq!(ProofVerdict::of(share(581.0, 700.0)), ProofVerdict::Yields, "above");
}

/// SAE J429 (from memory): grade 2 to 3/4 in, grade 5 to 1 in; larger bolts of them have lower figures.
#[test]
fn a_class_is_not_taken_past_the_diameter_its_figures_hold_for() {
    let said = |name: &str, of: &str| class(name).strength().too_large(thread(of).diameter());
    assert_eq!(said("grade 2", "3/4-16 UNF"), None, "at its end");
    assert_eq!(
        said("grade 2", "7/8-14 UNF").as_deref(),
        Some(
            "These are the stresses of grade 2 up to 0.75 in across; a larger bolt of it bears less. Type what its maker states."
        )
    );
    assert_eq!(said("grade 8", "1 1/16-12 UN"), None, "to 1 1/2 in");
    assert!(said("grade 5", "1 1/16-12 UN").is_some(), "past 1 in");
    assert_eq!(said("10.9", "M16 × 2"), None, "at its end");
    let own = Strength::of_material(
        Pressure::new::<megapascal>(700.0),
        Pressure::new::<megapascal>(900.0),
    );
    assert_eq!(own.expect("stated").too_large(thread("7/8-14 UNF").diameter()), None, "no class");
}

/// 8.8 breaks at 800 MPa.
#[test]
fn what_breaks_a_bolt_is_said_before_what_stretches_it() {
    let strength = class("8.8").strength();
    let of = |least: f64, greatest: f64| {
        let stress = Pressure::new::<megapascal>;
        strength.verdict(Range::new(stress(least), stress(greatest)).expect("in order"))
    };
    assert_eq!(of(300.0, 580.0), ProofVerdict::Holds);
    assert_eq!(of(300.0, 790.0), ProofVerdict::MayYield);
    assert_eq!(of(590.0, 790.0), ProofVerdict::Yields);
    assert_eq!(of(590.0, 810.0), ProofVerdict::MayBreak);
    assert_eq!(of(810.0, 900.0), ProofVerdict::Breaks);
}

#[test]
fn a_stated_material_must_make_sense() {
    let mpa = Pressure::new::<megapascal>;
    assert!(Strength::of_material(mpa(900.0), mpa(1_100.0)).is_ok(), "a good steel");
    let swapped = Strength::of_material(mpa(1_100.0), mpa(900.0)).expect_err("swapped");
    assert_eq!(
        swapped.to_string(),
        "The proof stress lies above the tensile strength. Check both, or swap them.",
        "swapped"
    );
    let thousandfold = Strength::of_material(mpa(0.9), mpa(1.1)).expect_err("too weak");
    assert_eq!(
        thousandfold.to_string(),
        "A strength lies between 20 and 3000 MPa. Check the decimal point and the unit.",
        "too weak"
    );
}

/// Shigley 9th ed., table 8-15, and NASA-STD-5020B, table 3. P. The table's anti-seize of one maker is 0.12;
/// the range of all of them is common practice, no source, and says so.
#[test]
fn nut_factors_and_scatter_are_the_published_ones() {
    let factors: Vec<String> = nut_factors().map(|row| row.typed()).collect();
    assert_eq!(factors, ["0.3", "0.2", "0.18", "0.1…0.2"], "K");
    let any = nut_factors().last().expect("rows");
    assert!(any.value.least() < 0.12 && 0.12 < any.value.greatest(), "the table's is one of them");
    for row in nut_factors() {
        let is_range = row.value.least() < row.value.greatest();
        let says_so = row.condition.ends_with("(common practice, no source)");
        assert_eq!(is_range, says_so, "{}", row.condition);
    }
    let scatter: Vec<String> = scatters().map(|row| row.typed()).collect();
    assert_eq!(scatter, ["0.35", "0.25"], "scatter of a torque");
    close(scatter_of_stretch(), 0.10, 0.0, "scatter of a stretch, which no torque has");
}

/// Shigley 9th ed., example 8-3: 3/4-16, preload 25 kip, K 0.20 → 3 750 lbf·in. P.
#[test]
fn a_published_torque() {
    let whole = |count: i64, unit: Unit| Amount::whole(count, unit);
    let wanted = whole(25_000, Unit::PoundForce).force().expect("a force");
    let size = thread("3/4-16 UNF").diameter().length().expect("a length");
    let torque = torque_for(wanted, size, Range::exactly(0.20)).expect("within bounds");
    let exact = whole(3_750, Unit::PoundForceInch).torque().expect("a torque");
    close(torque.get::<newton_meter>(), exact.get::<newton_meter>(), 1e-9, "torque");
}

/// Shigley 9th ed., example 8-3: P = 6 kip, k_b 6.50 and k_m 13.8 Mlbf/in → C 0.320, σ_b 72.17 kpsi. P.
#[test]
fn a_published_load_share() {
    let pound = |count: i64| Amount::whole(count, Unit::PoundForce).force().expect("a force");
    let inch = Amount::whole(1, Unit::Inch).length().expect("a length");
    let share = load_share(pound(6_500_000) / inch, pound(13_800_000) / inch).get::<ratio>();
    close(share, 0.320, 0.0005, "C");
    let force =
        loaded(Range::exactly(pound(25_000)), Range::exactly(share), Range::exactly(pound(6_000)))
            .expect("within bounds");
    let area = Area::new::<square_millimeter>(0.373 * 645.16);
    let stress = Amount::of_pressure(force.least() / area).expect("a pressure");
    close(stress.value(Unit::Psi) / 1000.0, 72.17, 0.02, "σ_b, kpsi");
    let refused = loaded(Range::exactly(pound(1)), range(0.2, 1.2), Range::exactly(pound(1)));
    assert_eq!(
        refused.expect_err("more than all of it").to_string(),
        "A fastener’s share of the load lies between 0 and 1. Check the decimal point and the unit.",
        "share"
    );
}

/// Shigley 9th ed., table 8-14: ten lubricated bolts at 90 N·m, preloads in kN, mean 34.18, s 2.88. P.
/// Their size is not given there; by T = K·d·F the ±25 % about the mean holds all ten.
#[test]
fn published_scatter_lies_within_the_range() {
    let measured = [30.3, 32.5, 32.5, 32.9, 32.9, 33.8, 34.3, 34.7, 37.4, 40.5];
    let mean = measured.iter().sum::<f64>() / 10.0;
    close(mean, 34.18, 0.005, "mean");
    let squares: f64 = measured.iter().map(|force: &f64| (force - mean).powi(2)).sum();
    close((squares / 9.0).sqrt(), 2.88, 0.005, "standard deviation");
    let size = mm(14.0);
    let factor = 90.0 / (0.014 * mean * 1000.0);
    let found = preload(nm(90.0), size, Range::exactly(factor), 0.25).expect("within bounds");
    for force in measured {
        let (least, greatest) = (found.force.least(), found.force.greatest());
        assert!((least..=greatest).contains(&kn(force)), "{force} kN outside {found:?}");
    }
}

/// 40 N·m on M10, K 0.12 to 0.20, ±25 %: 40/(0.20·0.01)·0.75 = 15 kN, 40/(0.12·0.01)·1.25 = 41.667 kN. R.
#[test]
fn preload_is_a_range_with_its_weakest_assumption() {
    let found = preload(nm(40.0), mm(10.0), range(0.12, 0.20), 0.25).expect("within bounds");
    close(found.force.least().get::<kilonewton>(), 15.0, 1e-9, "least");
    close(found.force.greatest().get::<kilonewton>(), 41.666_666_667, 1e-8, "greatest");
    // Greatest over least: 0.20/0.12 = 1.667 and 1.25/0.75 = 1.667, the first of equals.
    assert_eq!(found.weakest, Assumption::NutFactor, "as wide");
    let dry = preload(nm(40.0), mm(10.0), range(0.12, 0.20), 0.35).expect("within bounds");
    assert_eq!(dry.weakest, Assumption::Scatter, "scatter wider");
    let sure = preload(nm(40.0), mm(10.0), Range::exactly(0.2), 0.0).expect("within bounds");
    assert_eq!(sure.weakest, Assumption::Inputs, "all known");
    assert_eq!(sure.force.least(), sure.force.greatest(), "all known");
}

#[test]
fn torque_and_preload_are_each_other_s_inverse() {
    for factor in [0.05, 0.12, 0.2, 0.5] {
        let torque = torque_for(kn(30.0), mm(12.0), Range::exactly(factor)).expect("within");
        let back = preload(torque, mm(12.0), Range::exactly(factor), 0.0).expect("within");
        close(back.force.least().get::<kilonewton>(), 30.0, 1e-9, "preload");
    }
}

#[test]
fn torque_out_of_bounds_is_refused() {
    let sentence = |torque: f64, size: f64, factor: f64, scatter: f64| {
        preload(nm(torque), mm(size), Range::exactly(factor), scatter)
            .expect_err("refused")
            .to_string()
    };
    assert_eq!(
        sentence(4_000.0, 10.0, 0.2, 0.25),
        "A tightening torque lies between 1 and 1000 N·m. Check the decimal point and the unit.",
        "torque"
    );
    assert_eq!(
        sentence(40.0, 0.4, 0.2, 0.25),
        "A thread’s diameter lies between 2 and 50 mm. Check the decimal point and the unit.",
        "diameter"
    );
    assert_eq!(
        sentence(40.0, 10.0, 2.0, 0.25),
        "The nut factor K lies between 0.05 and 0.5. Check the decimal point and the unit.",
        "K"
    );
    assert_eq!(
        sentence(40.0, 10.0, 0.2, 25.0),
        "A scatter lies between 0 and 0.6. Check the decimal point and the unit.",
        "scatter"
    );
    assert_eq!(
        sentence(f64::NAN, 10.0, 0.2, 0.25),
        sentence(4_000.0, 10.0, 0.2, 0.25),
        "not a number"
    );
    let force = torque_for(kn(501.0), mm(10.0), Range::exactly(0.2)).expect_err("refused");
    assert_eq!(
        force.to_string(),
        "A preload lies between 0 and 500 kN. Check the decimal point and the unit.",
        "preload"
    );
}

/// A stud M10 × 1.5, 200 mm of 9 mm shank and 30 mm of thread, E 207 GPa, 30 kN:
/// 30000·(200/63.6173 + 30/57.9896)/207000 = 0.53060 mm. R, by hand.
#[test]
fn stretch_of_the_free_length() {
    let shank = Area::new::<square_millimeter>(63.617_251);
    let stud = [
        Section::shank(mm(200.0), mm(9.0)),
        Section { length: mm(30.0), area: thread("M10 × 1.5").stress_area() },
    ];
    let steel = Pressure::new::<gigapascal>(207.0);
    let longer = stretch(Range::exactly(kn(30.0)), &stud, steel).expect("within bounds");
    close(stud[0].area.get::<square_millimeter>(), shank.get::<square_millimeter>(), 1e-6, "shank");
    close(longer.least().get::<millimeter>(), 0.530_60, 0.000_01, "stretch");
    let back = preload_of_stretch(longer.least(), &stud, steel, 0.10).expect("within bounds");
    close(back.force.least().get::<kilonewton>(), 27.0, 1e-9, "least preload");
    close(back.force.greatest().get::<kilonewton>(), 33.0, 1e-9, "greatest preload");
    assert_eq!(back.weakest, Assumption::Scatter, "weakest");
    assert_eq!(stiffness(&[], steel), Err(Refusal::NoSections), "no length at all");
    assert_eq!(
        Refusal::NoSections.to_string(),
        "No length that can stretch. Give the free length and its diameter.",
        "no length"
    );
    let soft = stiffness(&stud, Pressure::new::<megapascal>(207.0)).expect_err("refused");
    assert_eq!(
        soft.to_string(),
        "Young’s modulus lies between 10000 and 500000 MPa. Check the decimal point and the unit.",
        "modulus"
    );
    let long = preload_of_stretch(mm(5.1), &stud, steel, 0.10).expect_err("refused");
    assert_eq!(
        long.to_string(),
        "A stretch lies between 0 and 5 mm. Check the decimal point and the unit.",
        "stretch"
    );
    let no_length = [Section { length: mm(0.0), area: shank }];
    assert_eq!(
        stiffness(&no_length, steel).expect_err("refused").to_string(),
        "A free length lies between 1 and 1000 mm. Check the decimal point and the unit.",
        "free length"
    );
    let thick = [Section { length: mm(10.0), area: Area::new::<square_millimeter>(3_000.0) }];
    assert_eq!(
        stiffness(&thick, steel).expect_err("refused").to_string(),
        "A shank’s diameter lies between 2 and 50 mm. Check the decimal point and the unit.",
        "shank"
    );
}

#[test]
fn bolts_and_studs_clamp_together() {
    let set = |count: u32, least: f64, greatest: f64| Fasteners {
        count,
        preload: Range::new(kn(least), kn(greatest)).expect("in order"),
    };
    let total = total_clamp(&[set(17, 20.0, 30.0), set(4, 35.0, 40.0)]).expect("counted");
    close(total.least().get::<kilonewton>(), 480.0, 1e-9, "least");
    close(total.greatest().get::<kilonewton>(), 670.0, 1e-9, "greatest");
    for none in [&[][..], &[set(0, 20.0, 30.0)]] {
        assert_eq!(total_clamp(none), Err(Refusal::NoFasteners), "nothing clamps");
    }
    assert_eq!(
        Refusal::NoFasteners.to_string(),
        "No bolt and no stud counted. Give at least one.",
        "sentence"
    );
}

#[test]
fn bolts_stretch_as_steel() {
    let steel = Material::of_bolts().expect("in the tables");
    close(steel.modulus().least().get::<gigapascal>(), 207.0, 0.0, "Callister, table B.2");
}
