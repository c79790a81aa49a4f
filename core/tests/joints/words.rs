//! Every sentence of the joints in full, ranges as typed and as shown, and what is drawn of them.

use super::close;
use pitleaf_core::joints::fits::{Class, Fit, Sizes, zones};
use pitleaf_core::joints::oil_line::{Feed, Regime};
use pitleaf_core::joints::separation::Chamber;
use pitleaf_core::joints::strength::ProofVerdict;
use pitleaf_core::joints::{Assumption, Caution, Range, Refusal, bounds, shown, typed};
use pitleaf_core::quantity::{Amount, Unit};
use pitleaf_core::trochoid::Geometry;
use uom::si::angle::degree;
use uom::si::area::square_centimeter;
use uom::si::f64::{Angle, Force, Length, Pressure};
use uom::si::force::newton;
use uom::si::length::millimeter;
use uom::si::pressure::bar;

#[test]
fn every_caution_in_full() {
    for (caution, words) in [
        (
            Caution::YieldingBolt,
            "A bolt that yields can break under the wrench: pull, don’t push, and keep your face out of line.",
        ),
        (
            Caution::OilPressure,
            "Oil under pressure goes through skin: never feel for a leak with the hand.",
        ),
        (
            Caution::HotOil,
            "Oil on a hot exhaust burns: route and shield the line, and check every joint before the first start.",
        ),
        (
            Caution::LiquidNitrogen,
            "Liquid nitrogen freezes skin and drives out the air: face shield, loose dry gloves, open doors, tongs.",
        ),
        (
            Caution::HotHousing,
            "A warm housing looks like a cold one: dry gloves, mark it hot, and keep solvents away.",
        ),
        (Caution::Drilling, "Clamp the part, eye protection on, no gloves at a turning spindle."),
    ] {
        assert_eq!(caution.to_string(), words, "{caution:?}");
    }
}

#[test]
fn every_assumption_in_full() {
    for (assumption, words) in [
        (
            Assumption::NutFactor,
            "The nut factor decides most: oil the threads and seats alike, or measure the stretch.",
        ),
        (
            Assumption::Scatter,
            "The way of tightening decides most: measure the stretch to know the clamp better.",
        ),
        (Assumption::Clamp, "The clamp decides most: measure the stretch to know it better."),
        (
            Assumption::FiringPressure,
            "The firing pressure decides most: it is rarely measured, and detonation goes far above it.",
        ),
        (
            Assumption::LoadShare,
            "The fasteners’ share of the load decides most: it needs the stiffness of the joint.",
        ),
        (Assumption::Friction, "The friction of the faces decides most: oil and sealant lower it."),
        (
            Assumption::PeakFactor,
            "The peak factor decides most: mean torque says little about the highest.",
        ),
        (
            Assumption::ShearStrength,
            "The dowels’ strength decides most: ask for their material and hardness.",
        ),
        (
            Assumption::BearingStrength,
            "The strength of the dowels’ holes decides most: soft metal gives before a dowel shears.",
        ),
        (Assumption::Interference, "The interference decides most: measure pin and hole."),
        (
            Assumption::Modulus,
            "The stiffness of the cast iron decides most: it differs from casting to casting.",
        ),
        (
            Assumption::Transition,
            "Between smooth and turbulent flow either may happen: count on the higher drop.",
        ),
        (Assumption::Inputs, "The answer is as good as the figures given."),
    ] {
        assert_eq!(assumption.to_string(), words, "{assumption:?}");
    }
}

#[test]
fn verdicts_in_full() {
    for (said, words) in [
        (
            ProofVerdict::Holds.to_string(),
            "Below proof stress throughout, twist and all: the bolt springs back.",
        ),
        (
            ProofVerdict::MayYield.to_string(),
            "Pull and twist may pass proof stress: the bolt may stay longer for good. Less torque, or a higher class.",
        ),
        (
            ProofVerdict::Yields.to_string(),
            "Pull and twist pass proof stress even at the least: the bolt yields. Less torque, a larger thread or a higher class.",
        ),
        (Feed::Enough.to_string(), "The pressure is enough for the flow."),
        (
            Feed::Doubtful.to_string(),
            "The pressure may be enough, or not: count on the higher drop.",
        ),
        (
            Feed::TooLittle.to_string(),
            "The pressure is too little for the flow: a wider or shorter line, fewer elbows.",
        ),
        (Regime::Laminar.name().to_owned(), "in layers"),
        (Regime::Transition.name().to_owned(), "between layers and eddies"),
        (Regime::Turbulent.name().to_owned(), "in eddies"),
    ] {
        assert_eq!(said, words, "in full");
    }
}

#[track_caller]
fn reads(text: &str, least: i64, greatest: i64) {
    let ends = typed::range(text, Unit::Kilonewton, &bounds::PRELOAD).expect("a range");
    let wanted =
        (Amount::whole(least, Unit::Kilonewton), Amount::whole(greatest, Unit::Kilonewton));
    assert_eq!(ends, wanted, "{text}");
}

#[test]
fn a_range_is_typed_in_any_of_its_ways() {
    for text in [
        "12…18",
        "12...18",
        "12..18 kN",
        "12 to 18",
        "12-18",
        "12 kN – 18 kN",
        "12000…18000 N",
        "12000 N…18000",
        "12 kN…18000 N",
    ] {
        reads(text, 12, 18);
    }
    reads("15", 15, 15);
    let tight = typed::range("-5…10", Unit::Micrometre, &bounds::INTERFERENCE).expect("a range");
    assert_eq!(tight.0, Amount::whole(-5, Unit::Micrometre), "a minus in front is no hyphen");
    let tight = typed::range("-5-10", Unit::Micrometre, &bounds::INTERFERENCE).expect("a range");
    assert_eq!(tight.0, Amount::whole(-5, Unit::Micrometre), "nor is it before a hyphen");
    let factor = typed::plain("0.12…0.18", &bounds::NUT_FACTOR).expect("a range");
    assert_eq!((factor.least(), factor.greatest()), (0.12, 0.18), "a plain number");
}

#[test]
fn what_is_no_range_or_count_says_why() {
    let swapped = "The least comes first, then the greatest: 12…18. Swap them.";
    let sentence =
        |result: Result<(Amount, Amount), Refusal>| result.expect_err("refused").to_string();
    let read = |text| typed::range(text, Unit::Kilonewton, &bounds::PRELOAD);
    assert_eq!(sentence(read("18…12")), swapped, "swapped");
    assert_eq!(
        typed::plain("0.2…0.1", &bounds::NUT_FACTOR).expect_err("refused").to_string(),
        swapped,
        "plain numbers swapped"
    );
    assert_eq!(
        sentence(read("12…1800")),
        "A preload lies between 0 and 500 kN. Check the decimal point and the unit.",
        "an end out of bounds"
    );
    assert_eq!(
        typed::plain("2", &bounds::NUT_FACTOR).expect_err("refused").to_string(),
        "The nut factor K lies between 0.05 and 0.5. Check the decimal point and the unit.",
        "a plain number out of bounds"
    );
    assert_eq!(
        typed::plain("900000", &bounds::SPEED).expect_err("refused").to_string(),
        "A speed lies between 100 and 30000 /min. Check the decimal point and the unit.",
        "with what stands behind it"
    );
    assert!(read("").is_err() && read("…").is_err() && read("12…").is_err(), "ends are missing");
    assert_eq!(typed::count(" 14 ", 60), Ok(14), "a count");
    for text in ["61", "-1", "1.5", "", "ten"] {
        let refusal = typed::count(text, 60).expect_err("refused");
        assert_eq!(refusal.to_string(), "A whole number is counted here, 0 to 60.", "{text}");
    }
}

#[track_caller]
fn shows(least: f64, greatest: f64, unit: Unit, wanted: &str) {
    let range = Range::new(least, greatest).expect("in order").map(Force::new::<newton>);
    assert_eq!(shown::range(range, Amount::of_force, unit), wanted, "{least} to {greatest} N");
}

#[test]
fn a_range_shows_three_figures_of_its_greater_end() {
    shows(12_345.0, 18_765.0, Unit::Kilonewton, "12.3…18.8 kN");
    shows(12_345.0, 12_345.0, Unit::Kilonewton, "12.3 kN");
    shows(950.0, 1_234.0, Unit::Kilonewton, "0.95…1.23 kN");
    shows(123_456.0, 234_567.0, Unit::Kilonewton, "123…235 kN");
    // More figures before the point than are known stand as zeros.
    shows(123_456.0, 234_567.0, Unit::Newton, "123000…235000 N");
    shows(0.0, 0.0, Unit::Newton, "0.00 N");
    let plain =
        |least, greatest| shown::plain_range(Range::new(least, greatest).expect("in order"));
    assert_eq!(plain(0.0123, 0.0456), "0.0123…0.0456", "small");
    assert_eq!(plain(1.0, 12.345), "1.0…12.3", "to the greater’s figures");
    assert_eq!(shown::percent(Range::new(0.155, 1.2).expect("in order")), "16…120 %", "percent");
    assert_eq!(shown::shortest(0.180, 2), "0.18", "no zeros behind");
    assert_eq!(shown::shortest(100.0, 0), "100", "nor any lost before the point");
    assert_eq!(shown::plain(f64::NAN, 2), "–", "no number");
    assert_eq!(shown::plain_range(Range::exactly(f64::INFINITY)), "–", "no end");
    assert_eq!(
        shown::bounds(&bounds::TORQUE, Unit::PoundForceFoot),
        "0.74 to 737.56 lbf·ft",
        "inward"
    );
    assert_eq!(shown::plain_bounds(&bounds::DENSITY), "600 to 1100 kg/m³", "plain bounds");
}

#[test]
fn bars_stand_on_one_scale() {
    let range = |least, greatest| Range::new(least, greatest).expect("in order");
    let bars = shown::on_scale(&[range(1.0, 2.0), range(-3.0, 4.0), range(0.0, 0.0)]);
    assert_eq!(bars, [(250, 500), (0, 1000), (0, 0)], "of the greatest");
    assert_eq!(shown::on_scale(&[range(0.0, 0.0)]), [(0, 0)], "nothing at all");
}

/// ISO 286: 14 H7 is +18/0, 14 m6 is +18/+7, 14 s6 is +39/+28, 14 g6 is −6/−17 (checks above). P.
#[test]
fn a_fit_in_words_and_drawn() {
    let nominal = Amount::whole(14, Unit::Millimetre);
    let sizes = |class: &str| {
        Sizes::of_class(nominal, Class::read(class).expect("a class")).expect("sizes")
    };
    let words = |shaft: &str| {
        let fit = Fit::of(sizes("H7"), sizes(shaft));
        (fit.kind().name(), fit.words(Unit::Micrometre, 0), fit.words(Unit::Thou, 2))
    };
    let wanted = |kind, metric: &str, inch: &str| (kind, metric.to_owned(), inch.to_owned());
    assert_eq!(
        words("m6"),
        wanted("transition", "18 µm tight to 11 µm loose", "0.71 thou tight to 0.43 thou loose"),
        "m6"
    );
    assert_eq!(words("s6"), wanted("interference", "10…39 µm tight", "0.39…1.54 thou tight"), "s6");
    assert_eq!(words("g6"), wanted("clearance", "6…35 µm loose", "0.24…1.38 thou loose"), "g6");
    let pair = Fit::of(Sizes::measured(nominal), Sizes::measured(nominal));
    assert_eq!(pair.words(Unit::Micrometre, 0), "0 µm loose", "a measured pair of one size");
    let drawn = zones(sizes("H7"), sizes("m6"), Some(nominal));
    assert_eq!(
        (drawn.hole, drawn.shaft, drawn.nominal),
        ((0, 1000), (0, 611), Some(1000)),
        "H7/m6"
    );
    let drawn = zones(sizes("H7"), sizes("s6"), None);
    assert_eq!((drawn.hole, drawn.shaft, drawn.nominal), ((538, 1000), (0, 282), None), "H7/s6");
}

/// e 15, R 105, b 80 mm, no offset: least 37.876 cm³, above it 163.679 at 90° and 654.715 at 270° (the
/// volume law V_min + (V_s/2)(1 − cos(2ψ/3))). R. With the preset's offset of 3 mm: 486.2498 and
/// 8664.2710 mm², areas of bore less rotor by Shapely.
#[test]
fn a_chamber_after_top_grows_with_the_shaft() {
    let mm = Length::new::<millimeter>;
    let geometry = Geometry::new(mm(15.0), mm(105.0), mm(0.0), mm(80.0)).expect("an engine");
    let pressure = Range::exactly(Pressure::new::<bar>(60.0));
    let area = |geometry: &Geometry, angle| {
        let chamber = Chamber::after_top(geometry, Angle::new::<degree>(angle), pressure);
        chamber.area.get::<square_centimeter>()
    };
    let volume = |angle| area(&geometry, angle) * 8.0;
    close(volume(0.0), 37.876, 1e-3, "least at the top");
    close(volume(90.0), 37.876 + 163.679, 1e-3, "a quarter turn on");
    close(volume(270.0), 37.876 + 654.715, 1e-3, "greatest three quarters on");
    close(area(&Geometry::preset(), 0.0), 4.862_498, 1e-5, "least with an offset, cm²");
    close(area(&Geometry::preset(), 270.0), 86.642_710, 1e-5, "greatest with an offset, cm²");
}

#[test]
fn kilonewtons_are_what_the_clamp_hands_on() {
    let clamp = Range::new(14_800.0, 24_600.0).expect("in order").map(Force::new::<newton>);
    let text = shown::range(clamp, Amount::of_force, Unit::Kilonewton);
    let (least, greatest) =
        typed::range(&text, Unit::PoundForce, &bounds::PRELOAD).expect("reads back");
    close(least.value(Unit::Kilonewton), 14.8, 1e-9, "least");
    close(greatest.value(Unit::Kilonewton), 24.6, 1e-9, "greatest");
}
