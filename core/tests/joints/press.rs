//! Press fits by Lamé.

use super::close;
use pitleaf_core::joints::press::{PressFit, Reach};
use pitleaf_core::joints::{Assumption, Material, Range};
use uom::si::f64::{Length, Pressure, TemperatureCoefficient, ThermodynamicTemperature};
use uom::si::force::kilonewton;
use uom::si::length::{micrometer, millimeter};
use uom::si::pressure::{gigapascal, megapascal};
use uom::si::temperature_coefficient::per_kelvin;
use uom::si::thermodynamic_temperature::degree_celsius;

fn mm(length: f64) -> Length {
    Length::new::<millimeter>(length)
}

fn um(least: f64, greatest: f64) -> Range<Length> {
    let um = Length::new::<micrometer>;
    Range::new(um(least), um(greatest)).expect("in order")
}

fn celsius(temperature: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(temperature)
}

fn metal(name: &str) -> Material {
    Material::named(name).unwrap_or_else(|| panic!("{name} is in no table"))
}

fn fit(bore: f64, housing: f64, interference: Range<Length>) -> PressFit {
    PressFit {
        diameter: mm(40.0),
        bore: mm(bore),
        housing: mm(housing),
        seat: mm(20.0),
        interference,
        friction: Range::exactly(0.12),
        pin_material: metal("Steel 1020"),
        housing_material: metal("Steel 1020"),
    }
}

/// V. B. Bhandari, *Design of Machine Elements*, ex. 22.6: D 20/40/60 mm, E 207 GPa, jacket stress
/// 100 MPa → p 38.4615 MPa, δ 0.031 711 mm, bore 39.968 289 mm. P.
#[test]
fn a_published_shrink_fit() {
    let found = fit(20.0, 60.0, um(31.711, 31.711)).pressed().expect("within bounds");
    close(found.pressure.least().get::<megapascal>(), 38.4615, 0.0005, "pressure");
    close(found.housing_hoop.least().get::<megapascal>(), 100.0, 0.002, "jacket stress");
    close(40.0 - 0.031_711, 39.968_289, 1e-9, "bore");
    // 38.4615 MPa · π · 40 · 20 mm² · 0.12 = 11.600 kN; 2p/(1 − ¼) = 102.564 MPa. R.
    close(found.push.least().get::<kilonewton>(), 11.600, 0.001, "push");
    close(found.pin_hoop.least().get::<megapascal>(), 102.564, 0.002, "stress in the tube");
    assert_eq!(found.weakest, Assumption::Inputs, "everything known");
}

/// A solid pin of the housing's own metal: p = E·δ/(2d)·(1 − (d/D)²), Poisson's ratio drops out.
/// E 207 GPa, δ 20 µm, d 40, D 80: 38.8125 MPa; hoop p·(D² + d²)/(D² − d²) = 64.6875 MPa; in the pin
/// −p throughout. R.
#[test]
fn a_solid_pin_of_the_same_metal() {
    let found = fit(0.0, 80.0, um(20.0, 20.0)).pressed().expect("within bounds");
    close(found.pressure.least().get::<megapascal>(), 38.8125, 1e-9, "pressure");
    close(found.housing_hoop.least().get::<megapascal>(), 64.6875, 1e-9, "hoop");
    close(found.pin_hoop.least().get::<megapascal>(), 38.8125, 1e-9, "pin");
}

/// Both ways of the same answer: equilibrium of hoop stress across the wall, ∫σ dr = p·r, by summing
/// Lamé's σ(r) = p·r₁²/(r₂² − r₁²)·(1 + r₂²/r²) over a thousand rings. R.
#[test]
fn hoop_stress_balances_the_pressure() {
    let found = fit(0.0, 70.0, um(30.0, 30.0)).pressed().expect("within bounds");
    let pressure = found.pressure.least().get::<megapascal>();
    let (inner, outer) = (20.0_f64, 35.0_f64);
    let factor = pressure * inner.powi(2) / (outer.powi(2) - inner.powi(2));
    let at = |radius: f64| factor * (1.0 + outer.powi(2) / radius.powi(2));
    close(found.housing_hoop.least().get::<megapascal>(), at(inner), 1e-9, "at the hole");
    let step = (outer - inner) / 1_000.0;
    let sum: f64 = (0..1_000).map(|ring| at(inner + (f64::from(ring) + 0.5) * step) * step).sum();
    close(sum, pressure * inner, 1e-4, "sum over the wall");
}

#[test]
fn ranges_and_the_weakest_assumption() {
    let grey = PressFit {
        housing_material: metal("Grey cast iron"),
        friction: Range::new(0.10, 0.15).expect("in order"),
        ..fit(0.0, 80.0, um(10.0, 30.0))
    };
    let found = grey.pressed().expect("within bounds");
    assert!(found.pressure.least() < found.pressure.greatest(), "{found:?}");
    let ends = |least: f64, greatest: f64| {
        PressFit { interference: um(least, greatest), ..grey.clone() }.pressed().expect("within")
    };
    assert_eq!(found.pressure.least(), ends(10.0, 10.0).pressure.least(), "least");
    assert_eq!(found.pressure.greatest(), ends(30.0, 30.0).pressure.greatest(), "greatest");
    assert_eq!(found.weakest, Assumption::Interference, "30/10");
    assert_eq!(ends(30.0, 30.0).weakest, Assumption::Friction, "0.15/0.10 beats 113/90");
    let known = PressFit { friction: Range::exactly(0.12), ..grey.clone() };
    let known = PressFit { interference: um(30.0, 30.0), ..known }.pressed().expect("within");
    assert_eq!(known.weakest, Assumption::Modulus, "only the iron is a range");
}

#[test]
fn a_loose_pin_grips_nothing() {
    let found = fit(0.0, 80.0, um(-20.0, -5.0)).pressed().expect("within bounds");
    close(found.pressure.greatest().get::<megapascal>(), 0.0, 0.0, "pressure");
    close(found.push.greatest().get::<kilonewton>(), 0.0, 0.0, "push");
    let maybe = fit(0.0, 80.0, um(-5.0, 10.0)).pressed().expect("within bounds");
    close(maybe.pressure.least().get::<megapascal>(), 0.0, 0.0, "may be loose");
    assert!(maybe.pressure.greatest().get::<megapascal>() > 15.0, "may be tight: {maybe:?}");
    assert_eq!(maybe.weakest, Assumption::Interference, "loose or tight");
}

/// Callister, table B.6, 10⁻⁶/K. P.
#[test]
fn expansions_are_the_published_ones() {
    for (name, wanted) in [
        ("Grey cast iron", 11.4),
        ("Ductile cast iron 60-40-18", 11.2),
        ("Ductile cast iron 80-55-06", 10.6),
        ("Steel 1020", 11.7),
        ("Steel 4140 or 4340, hardened", 12.3),
        ("Aluminium 356, cast", 21.5),
        ("Aluminium 6061", 23.6),
        ("Aluminium 7075", 23.4),
    ] {
        let got = metal(name).expansion().get::<per_kelvin>() * 1e6;
        close(got, wanted, 1e-9, name);
    }
    assert_eq!(Material::usual().len(), 8, "metals");
}

/// Steel 4340 pin ∅40 in aluminium 356, 30 µm tight at 20 °C. At 120 °C both: 40·100·(12.3 − 21.5)e-6
/// = −36.8 µm, so 6.8 µm loose: the grip is gone. With the housing at 70 °C: −18.4, 11.6 µm left. R.
#[test]
fn the_grip_left_at_running_temperature() {
    let aluminium = PressFit {
        pin_material: metal("Steel 4140 or 4340, hardened"),
        housing_material: metal("Aluminium 356, cast"),
        ..fit(0.0, 80.0, um(30.0, 30.0))
    };
    let cold = celsius(20.0);
    let hot = aluminium.at(cold, celsius(120.0), celsius(120.0)).expect("within bounds");
    close(hot.interference.least().get::<micrometer>(), -6.8, 1e-6, "at 120 °C");
    close(hot.pressed().expect("within").push.greatest().get::<kilonewton>(), 0.0, 0.0, "no grip");
    let warm = aluminium.at(cold, celsius(70.0), celsius(70.0)).expect("within bounds");
    close(warm.interference.least().get::<micrometer>(), 11.6, 1e-6, "at 70 °C");
    let share = warm.pressed().expect("within").pressure.least()
        / aluminium.pressed().expect("within").pressure.least();
    close(share.get::<uom::si::ratio::ratio>(), 11.6 / 30.0, 1e-9, "grip left");
    let same = aluminium.at(cold, cold, cold).expect("within bounds");
    assert_eq!(same, aluminium, "nothing changes at the temperature it was measured at");
    let molten = aluminium.at(cold, celsius(700.0), cold).expect_err("refused");
    assert_eq!(
        molten.to_string(),
        "A temperature lies between −196 and 400 °C. Check the decimal point and the unit.",
        "temperature"
    );
}

/// ∅40, 20 µm tight, 30 µm of gap: aluminium 356 at 20 + 0.050/(40·21.5e-6) = 78.14 °C; a steel 1020 pin
/// at 20 − 0.050/(40·11.7e-6) = −86.84 °C. With the pin at −78 °C (dry ice), the housing needs
/// 20 + (0.050 − 40·98·11.7e-6)/(40·21.5e-6) = 24.81 °C. R.
#[test]
fn temperatures_to_drop_a_pin_in() {
    let aluminium = PressFit {
        housing_material: metal("Aluminium 356, cast"),
        ..fit(0.0, 80.0, um(5.0, 20.0))
    };
    let (gap, room) = (Length::new::<micrometer>(30.0), celsius(20.0));
    let degrees = |reach: Reach| match reach {
        Reach::Can(at) => at.get::<degree_celsius>(),
        other => panic!("out of reach: {other:?}"),
    };
    let warm = aluminium.warm_housing(gap, room, room).expect("within bounds");
    close(degrees(warm), 78.14, 0.005, "housing");
    let cold = aluminium.cold_pin(gap, room, room).expect("within bounds");
    close(degrees(cold), -86.84, 0.005, "pin");
    let both = aluminium.warm_housing(gap, room, celsius(-78.0)).expect("within bounds");
    close(degrees(both), 24.81, 0.005, "housing with a cold pin");
    // What was asked for is what comes out: at that temperature the tightest pair has the gap.
    let at = aluminium.at(room, celsius(degrees(warm)), room).expect("within bounds");
    close(at.interference.greatest().get::<micrometer>(), -30.0, 1e-6, "gap");
}

/// With the form's own 20 µm of gap at 20 °C (ISO 1), ∅40 and 20 µm tight: aluminium 356 at
/// 20 + 0.040/(40·21.5e-6) = 66.51 °C, a steel 1020 pin at 20 − 0.040/(40·11.7e-6) = −65.47 °C (Callister, table
/// B.6). R.
#[test]
fn a_pin_dropped_in_with_the_gap_the_form_offers() {
    let aluminium = PressFit {
        housing_material: metal("Aluminium 356, cast"),
        ..fit(0.0, 80.0, um(5.0, 20.0))
    };
    let (gap, room) = (Length::new::<micrometer>(20.0), celsius(20.0));
    let degrees = |reach: Reach| match reach {
        Reach::Can(at) => at.get::<degree_celsius>(),
        other => panic!("out of reach: {other:?}"),
    };
    let warm = aluminium.warm_housing(gap, room, room).expect("within bounds");
    close(degrees(warm), 66.51, 0.005, "housing");
    let cold = aluminium.cold_pin(gap, room, room).expect("within bounds");
    close(degrees(cold), -65.47, 0.005, "pin");
}

#[test]
fn what_cannot_be_had_is_said() {
    let room = celsius(20.0);
    let gap = Length::new::<micrometer>(50.0);
    let tight = fit(0.0, 80.0, um(60.0, 60.0));
    assert_eq!(tight.cold_pin(gap, room, room), Ok(Reach::TooCold), "−215 °C");
    assert!(Reach::Can(celsius(-191.0)).care().is_some(), "metals shrink less there");
    assert_eq!(Reach::Can(celsius(-30.0)).care(), None, "as near the bench");
    let aluminium =
        PressFit { housing_material: metal("Aluminium 6061"), ..fit(0.0, 80.0, um(100.0, 100.0)) };
    let warm = aluminium.warm_housing(gap, room, room).expect("within bounds");
    assert!(matches!(warm, Reach::TooWarm(at) if at > celsius(150.0)), "{warm:?}");
    let loose = fit(0.0, 80.0, um(-90.0, -80.0));
    assert_eq!(loose.warm_housing(gap, room, room), Ok(Reach::Can(room)), "drops in as it is");
    assert_eq!(loose.cold_pin(gap, room, room), Ok(Reach::Can(room)), "drops in as it is");
}

#[test]
fn a_fit_that_makes_no_sense_is_refused() {
    let sentence = |fit: PressFit| fit.pressed().expect_err("refused").to_string();
    assert_eq!(
        sentence(fit(40.0, 80.0, um(1.0, 1.0))),
        "The hole through the pin must be smaller than the pin. Check both.",
        "bore"
    );
    assert_eq!(
        sentence(fit(0.0, 40.0, um(1.0, 1.0))),
        "The housing around the pin must be wider than the pin. Check both diameters.",
        "housing"
    );
    assert_eq!(
        sentence(fit(0.0, 80.0, um(1.0, 2_000.0))),
        "An interference lies between −1000 and 1000 µm. Check the decimal point and the unit.",
        "interference"
    );
    let wide = fit(0.0, 80.0, um(1.0, 1.0))
        .cold_pin(mm(1.0), celsius(20.0), celsius(20.0))
        .expect_err("refused");
    assert_eq!(
        wide.to_string(),
        "A gap to drop in lies between 0 and 500 µm. Check the decimal point and the unit.",
        "gap"
    );
    let gpa = |value| Range::exactly(Pressure::new::<gigapascal>(value));
    let own = |modulus, poisson, expansion: f64| {
        Material::own(
            "own",
            gpa(modulus),
            poisson,
            TemperatureCoefficient::new::<per_kelvin>(expansion * 1e-6),
            celsius(150.0),
        )
    };
    assert!(own(70.0, 0.33, 23.0).is_ok(), "a light alloy");
    // 0.1e-6/K comes back as 0.099 999…: the bounds must leave room for the rounding of a conversion.
    assert!(own(70.0, 0.33, 0.1).is_ok(), "at the very edge");
    assert_eq!(
        own(70.0, 0.33, 230.0).expect_err("refused").to_string(),
        "An expansion lies between 0.1 and 40 10⁻⁶/K. Check the decimal point and the unit.",
        "expansion"
    );
    assert_eq!(
        own(70.0, 0.5, 23.0).expect_err("refused").to_string(),
        "Poisson’s ratio lies between 0 and 0.49. Check the decimal point and the unit.",
        "Poisson's ratio"
    );
    assert!(own(700_000.0, 0.3, 23.0).is_err(), "modulus");
}
