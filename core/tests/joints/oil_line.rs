//! The oil feed: pressure lost, flow gained, viscosity at temperature.

use super::close;
use pitleaf_core::joints::oil_line::{
    Feed, Fitting, Line, Oil, OilState, Regime, fittings, typical_oils,
};
use pitleaf_core::joints::{Assumption, Refusal};
use uom::si::f64::{
    KinematicViscosity, Length, MassDensity, Pressure, ThermodynamicTemperature, VolumeRate,
};
use uom::si::kinematic_viscosity::square_millimeter_per_second;
use uom::si::length::{meter, millimeter};
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::pressure::{bar, pascal};
use uom::si::thermodynamic_temperature::degree_celsius;
use uom::si::volume_rate::{cubic_meter_per_second, liter_per_minute};

fn oil(viscosity: f64, density: f64) -> OilState {
    OilState {
        viscosity: KinematicViscosity::new::<square_millimeter_per_second>(viscosity),
        density: MassDensity::new::<kilogram_per_cubic_meter>(density),
    }
}

fn tube(bore: f64, length: f64) -> Line {
    Line {
        bore: Length::new::<millimeter>(bore),
        length: Length::new::<meter>(length),
        roughness: Length::new::<meter>(0.0),
        fittings: Vec::new(),
    }
}

fn litres(flow: f64) -> VolumeRate {
    VolumeRate::new::<liter_per_minute>(flow)
}

fn celsius(temperature: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(temperature)
}

fn thick(viscosity: f64) -> KinematicViscosity {
    KinematicViscosity::new::<square_millimeter_per_second>(viscosity)
}

/// Çengel & Cimbala, *Fluid Mechanics*, ex. 8-2: ρ 1000, µ 1.519e-3, D 3 mm, L 9 m, V 0.9 m/s →
/// Re 1777.5, ΔP 43.747 kPa. P/R.
#[test]
fn a_published_laminar_pipe() {
    let flow = 0.9 * std::f64::consts::FRAC_PI_4 * 0.003 * 0.003;
    let drop = tube(3.0, 9.0)
        .drop(&oil(1.519, 1_000.0), VolumeRate::new::<cubic_meter_per_second>(flow))
        .expect("within bounds");
    close(drop.reynolds, 1_777.5, 0.05, "Reynolds number");
    close(drop.pressure.least().get::<pascal>(), 43_747.0, 1.0, "drop");
    assert_eq!(drop.regime, Regime::Laminar, "regime");
    assert_eq!(drop.weakest, Assumption::Inputs, "weakest");
}

/// Crane TP-410 (metric), ex. 7.13: fuel oil of 2.7 mm²/s and 814.3 kg/m³, 2 in schedule 40 (52.48 mm),
/// 30.48 m, 2 US gal/s, roughness 0.0018 in → 66.5 kPa with a friction factor read as 0.0230; `fluids`
/// 65 759 Pa with 0.022 702. P/R.
#[test]
fn a_published_oil_pipe() {
    let line = Line { roughness: Length::new::<millimeter>(0.0018 * 25.4), ..tube(52.48, 30.48) };
    let flow = VolumeRate::new::<cubic_meter_per_second>(2.0 * 3.785_411_784e-3);
    let drop = line.drop(&oil(2.7, 0.815 * 999.1), flow).expect("within bounds");
    let got = drop.pressure.least().get::<pascal>();
    close(got, 65_759.0, 15.0, "drop by Colebrook");
    close(got * 0.0230 / 0.022_702, 66_500.0, 150.0, "drop with the friction factor as read");
    assert_eq!(drop.regime, Regime::Turbulent, "regime");
}

/// What the form begins with: a wall of 1.5 µm (Moody, 1944: drawn tubing, 0.000 005 ft) and oil of 850 kg/m³. 8 mm,
/// 1 m, 10 mm²/s at 7.5 m/s is Re 6000; Colebrook's formula, iterated apart, gives f 0.035730 and 106772 Pa. R.
/// A smooth wall has 0.035503.
#[test]
fn a_drawn_tube_as_the_form_offers_it() {
    let line = Line { roughness: Length::new::<millimeter>(0.0015), ..tube(8.0, 1.0) };
    let flow = 7.5 * std::f64::consts::FRAC_PI_4 * 0.008 * 0.008;
    let drop = line
        .drop(&oil(10.0, 850.0), VolumeRate::new::<cubic_meter_per_second>(flow))
        .expect("within bounds");
    close(drop.reynolds, 6_000.0, 1e-6, "Reynolds number");
    close(drop.pressure.least().get::<pascal>(), 106771.8, 5.0, "drop");
}

/// Between Re 2000 and 4000 the answer reaches from laminar to turbulent, and says so.
#[test]
fn the_transition_is_a_range() {
    let line = tube(8.0, 1.0);
    // Re = 4Q/(π·D·ν): 3000 at 8 mm and 10 mm²/s needs 11.31 L/min.
    let drop = line.drop(&oil(10.0, 850.0), litres(11.31)).expect("within bounds");
    close(drop.reynolds, 3_000.0, 1.0, "Reynolds number");
    assert_eq!(drop.regime, Regime::Transition, "regime");
    assert_eq!(drop.weakest, Assumption::Transition, "weakest");
    let head = 850.0 * (0.001_131 / 6.0 / 5.026_548e-5_f64).powi(2) / 2.0;
    let laminar = 64.0 / drop.reynolds * 125.0 * head;
    close(drop.pressure.least().get::<pascal>(), laminar, 1.0, "laminar end");
    // Colebrook, smooth, Re 3000: f = 0.043519 by `fluids`.
    close(drop.pressure.greatest().get::<pascal>(), 0.043_519 * 125.0 * head, 3.0, "turbulent end");
    let between = Pressure::new::<pascal>(laminar * 1.5);
    assert_eq!(drop.against(between), Feed::Doubtful, "between the ends");
    assert_eq!(drop.against(drop.pressure.greatest()), Feed::Enough, "at the greatest");
    assert_eq!(drop.against(Pressure::new::<pascal>(1.0)), Feed::TooLittle, "hardly any");
}

/// Hooper 1981, two-K: a screwed elbow in 8 mm bore at Re 100: 800/100 + 0.4·(1 + 25.4/8) = 9.67. R.
#[test]
fn fittings_cost_more_in_smooth_flow() {
    let elbow = Fitting::named("Elbow 90°, screwed").expect("a fitting");
    let bare = tube(8.0, 0.0);
    let bent = Line { fittings: vec![(elbow, 3)], ..bare.clone() };
    let state = oil(100.0, 870.0);
    let flow = litres(100.0 * 60_000.0 * std::f64::consts::FRAC_PI_4 * 0.008 * 100e-6);
    let lost = |line: &Line| line.drop(&state, flow).expect("within").pressure.least();
    let speed: f64 = 100.0 * 100e-6 / 0.008;
    let head = 870.0 * speed * speed / 2.0;
    close(lost(&bare).get::<pascal>(), 0.0, 1e-9, "no length, no loss");
    close(lost(&bent).get::<pascal>(), 3.0 * 9.67 * head, 1e-6 * head, "three elbows");
    for fitting in fittings() {
        assert_eq!(Fitting::named(fitting.name), Some(fitting), "{}", fitting.name);
    }
}

/// The flow found costs just the pressure given, through all three regimes.
#[test]
fn flow_and_drop_are_each_other_s_inverse() {
    let elbow = Fitting::named("Elbow 90°, screwed").expect("a fitting");
    let line = Line { fittings: vec![(elbow, 2)], ..tube(6.0, 0.8) };
    for viscosity in [150.0, 14.0, 4.0, 2.0] {
        let state = oil(viscosity, 860.0);
        for pressure in [0.05, 0.5, 3.0] {
            let available = Pressure::new::<bar>(pressure);
            let flow = line.flow(&state, available).expect("within bounds");
            assert!(flow.least() <= flow.greatest(), "{flow:?}");
            let drop = line.drop(&state, flow.least()).expect("within bounds");
            assert_eq!(
                drop.against(available),
                Feed::Enough,
                "sure flow at {viscosity}, {pressure}"
            );
            let more = line.drop(&state, flow.greatest() * 1.000_001).expect("within bounds");
            assert_eq!(
                more.against(available),
                Feed::TooLittle,
                "{viscosity} mm²/s, {pressure} bar"
            );
        }
    }
    let none = line.flow(&oil(150.0, 860.0), Pressure::new::<bar>(0.0)).expect_err("refused");
    assert_eq!(
        none.to_string(),
        "This pressure gives a flow outside 0.001 to 500 L/min. Check the line and the pressure.",
        "no pressure"
    );
}

/// Two published calculations by ASTM D341: a gear oil of 404 mm²/s at 40 °C and 28 at 100 has 132.126 at
/// 60 °C; an oil of 32 at 40 and 5.4 at 100 has 8.5 at 80. P. And a published oil measured at three
/// temperatures, a synthetic paraffinic oil of 414, 34.3 and 10.9 mm²/s at 38, 99 and 149 °C (NASA; B. J.
/// Hamrock, *Fundamentals of Fluid Film Lubrication*), the middle from the outer two. M.
#[test]
fn published_oils() {
    let at = |one: (f64, f64), other: (f64, f64), wanted: f64| {
        Oil::through((celsius(one.0), thick(one.1)), (celsius(other.0), thick(other.1)))
            .and_then(|oil| oil.at(celsius(wanted)))
            .expect("within bounds")
            .get::<square_millimeter_per_second>()
    };
    close(at((40.0, 404.0), (100.0, 28.0), 60.0), 132.126, 0.001, "gear oil");
    close(at((40.0, 32.0), (100.0, 5.4), 80.0), 8.5, 0.05, "light oil");
    close(at((37.8, 414.0), (148.9, 10.9), 98.9), 34.3, 0.1, "paraffinic oil");
    close(at((100.0, 28.0), (40.0, 404.0), 60.0), 132.126, 0.001, "points the other way round");
}

#[test]
fn typical_oils_get_thinner_with_heat() {
    for typical in typical_oils() {
        let oil = Oil::through((celsius(40.0), typical.at_40), (celsius(100.0), typical.at_100))
            .expect("within bounds");
        let at = |temperature: f64| oil.at(celsius(temperature)).expect("within bounds");
        close(at(40.0).value * 1e6, typical.at_40.value * 1e6, 1e-6, typical.name);
        close(at(100.0).value * 1e6, typical.at_100.value * 1e6, 1e-6, typical.name);
        assert!(at(90.0) > at(100.0) && at(100.0) > at(130.0), "{}", typical.name);
    }
}

#[test]
fn oils_that_make_no_sense_are_refused() {
    let point = |temperature: f64, viscosity: f64| (celsius(temperature), thick(viscosity));
    let sentence = |one, other| Oil::through(one, other).expect_err("refused").to_string();
    assert_eq!(
        sentence(point(40.0, 100.0), point(40.0, 11.0)),
        "Both viscosities are given at one temperature. Give the second at another, as 40 and 100 °C.",
        "one temperature"
    );
    assert_eq!(
        sentence(point(40.0, 11.0), point(100.0, 100.0)),
        "An oil gets thinner as it gets warmer, these two points say otherwise. Swap them.",
        "swapped"
    );
    assert_eq!(
        sentence(point(40.0, 11.0), point(100.0, 1.9)),
        "A viscosity lies between 2 and 20000 mm²/s. Check the decimal point and the unit.",
        "water"
    );
    let thin = Oil::through(point(40.0, 10.0), point(100.0, 2.5)).expect("within bounds");
    assert_eq!(
        thin.at(celsius(180.0)).expect_err("refused").to_string(),
        "Below 2 mm²/s the viscosity rule does not hold. Ask for a lower temperature.",
        "too thin"
    );
    assert_eq!(
        thin.at(celsius(-100.0)).expect_err("refused").to_string(),
        "A viscosity lies between 2 and 20000 mm²/s. Check the decimal point and the unit.",
        "frozen"
    );
}

#[test]
fn lines_that_make_no_sense_are_refused() {
    let good = tube(8.0, 1.0);
    let sentence = |line: &Line, state: OilState, flow: f64| {
        line.drop(&state, litres(flow)).expect_err("refused").to_string()
    };
    let state = oil(14.0, 860.0);
    for (line, state, flow, wanted) in [
        (tube(0.8, 1.0), state, 5.0, "A line’s bore lies between 1 and 60 mm."),
        (tube(8.0, 41.0), state, 5.0, "A line’s length lies between 0 and 40000 mm."),
        (good.clone(), state, 501.0, "An oil flow lies between 1 and 500000 mL/min."),
        (good.clone(), state, 0.0, "An oil flow lies between 1 and 500000 mL/min."),
        (good.clone(), oil(14.0, 0.86), 5.0, "A density lies between 600 and 1100 kg/m³."),
        (good.clone(), oil(0.014, 860.0), 5.0, "A viscosity lies between 0.2 and 20000 mm²/s."),
    ] {
        let wanted = format!("{wanted} Check the decimal point and the unit.");
        assert_eq!(sentence(&line, state, flow), wanted, "{line:?}");
    }
    let rough = Line { roughness: Length::new::<millimeter>(0.45), ..good.clone() };
    assert_eq!(
        sentence(&rough, state, 5.0),
        "The wall is rougher than a twentieth of the bore. Check both.",
        "rough"
    );
    assert_eq!(
        good.flow(&state, Pressure::new::<bar>(60.0)).expect_err("refused").to_string(),
        "An oil pressure lies between 0 and 50 bar. Check the decimal point and the unit.",
        "pressure"
    );
    assert!(good.drop(&state, litres(f64::NAN)).is_err(), "not a number");
    assert!(
        matches!(tube(8.0, f64::NAN).drop(&state, litres(5.0)), Err(Refusal::Quantity(_))),
        "NaN"
    );
}
