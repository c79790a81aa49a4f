//! Bad input never panics and never becomes a number: whatever comes in, an answer is finite or refused.

use pitleaf_core::joints::bolts::{Bolts, tapped};
use pitleaf_core::joints::clamp::{Section, preload, preload_of_stretch, stretch, torque_for};
use pitleaf_core::joints::fits::{Class, limits};
use pitleaf_core::joints::oil_line::{Line, Oil, OilState, fittings};
use pitleaf_core::joints::press::{PressFit, Reach};
use pitleaf_core::joints::separation::{Chamber, separation};
use pitleaf_core::joints::slip::{Dowels, reaction, slip};
use pitleaf_core::joints::threads::{Drill, find_ports, find_threads};
use pitleaf_core::joints::{Material, Range, Refusal, bounds};
use pitleaf_core::quantity::{Amount, Bounds, Reading, Unit};
use proptest::prelude::*;
use uom::si::angular_velocity::revolution_per_minute;
use uom::si::area::square_millimeter;
use uom::si::f64::{
    AngularVelocity, Area, Force, KinematicViscosity, Length, MassDensity, Power, Pressure,
    ThermodynamicTemperature, Torque, VolumeRate,
};
use uom::si::force::kilonewton;
use uom::si::kinematic_viscosity::square_millimeter_per_second;
use uom::si::length::millimeter;
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::power::kilowatt;
use uom::si::pressure::{bar, megapascal};
use uom::si::thermodynamic_temperature::degree_celsius;
use uom::si::torque::newton_meter;
use uom::si::volume_rate::liter_per_minute;

/// Any float at all, and often one that could be meant.
fn wild() -> impl Strategy<Value = f64> {
    prop_oneof![
        any::<f64>(),
        Just(f64::NAN),
        Just(f64::INFINITY),
        Just(0.0),
        -1.0..1.0,
        0.0..1e3,
        -1e6..1e6
    ]
}

/// Good figures with none, one or two of them wild.
fn nearly<const N: usize>(good: [f64; N]) -> impl Strategy<Value = [f64; N]> {
    proptest::collection::vec((0..N, wild()), 0..3).prop_map(move |wrong| {
        let mut figures = good;
        for (place, figure) in wrong {
            figures[place] = figure;
        }
        figures
    })
}

fn range(a: f64, b: f64) -> Range<f64> {
    Range::new(a.min(b), a.max(b)).unwrap_or(Range::exactly(a))
}

fn finite(values: &[f64]) -> Result<(), TestCaseError> {
    for value in values {
        prop_assert!(value.is_finite(), "{values:?}");
    }
    Ok(())
}

fn mm(length: f64) -> Length {
    Length::new::<millimeter>(length)
}

fn both<Q: Copy + PartialOrd>(range: Range<Q>, value: impl Fn(Q) -> f64) -> [f64; 2] {
    [value(range.least()), value(range.greatest())]
}

proptest! {
    #[test]
    fn clamp([torque, size, least, most, scatter] in nearly([40.0, 10.0, 0.12, 0.2, 0.25])) {
        let kn = Force::new::<kilonewton>;
        let factor = range(least, most);
        if let Ok(found) = preload(Torque::new::<newton_meter>(torque), mm(size), factor, scatter) {
            finite(&both(found.force, |force| force.value))?;
        }
        if let Ok(torque) = torque_for(kn(torque), mm(size), factor) {
            finite(&[torque.value])?;
        }
    }

    #[test]
    fn stretched(
        [length, shank, thread, modulus, longer, scatter, force] in
            nearly([200.0, 63.0, 58.0, 207_000.0, 0.5, 0.1, 30.0])
    ) {
        let section =
            |area: f64| Section { length: mm(length), area: Area::new::<square_millimeter>(area) };
        let (sections, modulus) =
            ([section(shank), section(thread)], Pressure::new::<megapascal>(modulus));
        if let Ok(found) = preload_of_stretch(mm(longer), &sections, modulus, scatter) {
            finite(&both(found.force, |force| force.value))?;
        }
        let force = Range::exactly(Force::new::<kilonewton>(force));
        if let Ok(found) = stretch(force, &sections, modulus) {
            finite(&both(found, |length| length.value))?;
        }
    }

    #[test]
    fn separated(
        [a, b, low, high, area, c, d] in nearly([200.0, 300.0, 60.0, 100.0, 5_000.0, 0.0, 0.2])
    ) {
        let clamp = range(a, b).map(Force::new::<kilonewton>);
        let chamber = Chamber {
            pressure: range(low, high).map(Pressure::new::<bar>),
            area: Area::new::<square_millimeter>(area),
        };
        if let Ok(found) = separation(clamp, &[chamber, chamber], range(c, d)) {
            finite(&both(found.force, |force| force.value))?;
            finite(&both(found.clamp_left, |force| force.value))?;
            finite(&both(found.share, |share| share.value))?;
        }
    }

    #[test]
    fn slipped(
        [clamp, circle, friction, radius, diameter, bore, seat, shear, bearing, torque] in
            nearly([200.0, 120.0, 0.15, 130.0, 16.0, 12.0, 12.0, 300.0, 600.0, 500.0]),
        count in any::<u32>(),
    ) {
        let dowels = Dowels {
            count,
            radius: mm(radius),
            diameter: mm(diameter),
            bore: mm(bore),
            seat: mm(seat),
            shear_strength: Range::exactly(Pressure::new::<megapascal>(shear)),
            bearing_strength: Range::exactly(Pressure::new::<megapascal>(bearing)),
        };
        let clamp = Range::exactly(Force::new::<kilonewton>(clamp));
        let torque = Range::exactly(Torque::new::<newton_meter>(torque));
        let friction = Range::exactly(friction);
        if let Ok(found) = slip(clamp, mm(circle), friction, &dowels, torque) {
            for held in [found.friction, found.hollow, found.solid] {
                finite(&both(held.torque, |torque| torque.value))?;
                finite(&both(held.margin, |margin| margin.value))?;
            }
        }
    }

    #[test]
    fn reacting([output, speed, a, b] in nearly([150.0, 7_000.0, 3.0, 5.0]), rotors in any::<u8>()) {
        let speed = AngularVelocity::new::<revolution_per_minute>(speed);
        if let Ok(torque) = reaction(Power::new::<kilowatt>(output), speed, rotors, range(a, b)) {
            finite(&both(torque, |torque| torque.value))?;
        }
    }

    #[test]
    fn press_fit(
        [diameter, bore, housing, seat, a, b, friction, measured, warm, cold, gap] in
            nearly([16.0, 8.0, 40.0, 20.0, 0.01, 0.03, 0.12, 20.0, 90.0, -78.0, 0.03]),
        metals in (0_usize..8, 0_usize..8),
    ) {
        let celsius = ThermodynamicTemperature::new::<degree_celsius>;
        let (measured, warm, cold) = (celsius(measured), celsius(warm), celsius(cold));
        let metal = |place: usize| Material::usual().swap_remove(place);
        let fit = PressFit {
            diameter: mm(diameter),
            bore: mm(bore),
            housing: mm(housing),
            seat: mm(seat),
            interference: range(a, b).map(mm),
            friction: Range::exactly(friction),
            pin_material: metal(metals.0),
            housing_material: metal(metals.1),
        };
        for fit in [Some(fit.clone()), fit.at(measured, warm, cold).ok()] {
            if let Some(Ok(found)) = fit.map(|fit| fit.pressed()) {
                finite(&both(found.pressure, |pressure| pressure.value))?;
                finite(&both(found.housing_hoop, |pressure| pressure.value))?;
                finite(&both(found.pin_hoop, |pressure| pressure.value))?;
                finite(&both(found.push, |force| force.value))?;
            }
        }
        for reach in [fit.warm_housing(mm(gap), measured, cold), fit.cold_pin(mm(gap), measured, warm)] {
            if let Ok(Reach::Can(at) | Reach::TooWarm(at)) = reach {
                finite(&[at.value])?;
            }
        }
    }

    #[test]
    fn oil_in_a_line(
        [bore, length, roughness, viscosity, density, flow, pressure] in
            nearly([8.0, 1.0, 0.0, 14.0, 860.0, 5.0, 3.0]),
        count in any::<u32>(),
    ) {
        let line = Line {
            bore: mm(bore),
            length: mm(length * 1_000.0),
            roughness: mm(roughness),
            fittings: fittings().map(|fitting| (fitting, count)).collect(),
        };
        let state = OilState {
            viscosity: KinematicViscosity::new::<square_millimeter_per_second>(viscosity),
            density: MassDensity::new::<kilogram_per_cubic_meter>(density),
        };
        if let Ok(drop) = line.drop(&state, VolumeRate::new::<liter_per_minute>(flow)) {
            finite(&both(drop.pressure, |pressure| pressure.value))?;
        }
        if let Ok(flow) = line.flow(&state, Pressure::new::<bar>(pressure)) {
            finite(&both(flow, |flow| flow.value))?;
        }
    }

    #[test]
    fn oil_at_temperature([a, b, c, d, at] in nearly([40.0, 100.0, 100.0, 11.0, 90.0])) {
        let thick = KinematicViscosity::new::<square_millimeter_per_second>;
        let celsius = ThermodynamicTemperature::new::<degree_celsius>;
        if let Ok(oil) = Oil::through((celsius(a), thick(b)), (celsius(c), thick(d)))
            && let Ok(found) = oil.at(celsius(at))
        {
            finite(&[found.value])?;
        }
    }

    #[test]
    fn typed_text(text in ".{0,24}", count in any::<u16>(), ticks in any::<i64>()) {
        let _ = (Class::read(&text), Drill::named(&text), Bolts::named(&text));
        let _ = Bolts::placed(&text, Unit::Millimetre).map(|bolts| bolts.rows());
        let _ = Bolts::circle(count % 70).and_then(|bolts| bolts.read_order(&text));
        let _ = tapped(&text, Unit::Inch, pitleaf_core::trochoid::Point::default());
        let _ = (find_threads(&text), find_ports(&text), bounds::NUT_FACTOR.read(&text));
        if let Ok(class) = Class::read("H7") {
            let _ = limits(Amount::whole(ticks, Unit::Micrometre), class);
        }
    }
}

/// Every bounds row, as the builder meets it: a reading at either edge is taken, and one step outside
/// refused.
#[test]
fn readings_at_the_edges_are_taken() {
    let all: [&'static Bounds; 30] = [
        &bounds::THREAD_DIAMETER,
        &bounds::PITCH,
        &bounds::DRILL,
        &bounds::TORQUE,
        &bounds::PRELOAD,
        &bounds::CLAMP,
        &bounds::REACTION,
        &bounds::FREE_LENGTH,
        &bounds::STRETCH,
        &bounds::SHANK,
        &bounds::STRENGTH,
        &bounds::MODULUS,
        &bounds::FIRING_PRESSURE,
        &bounds::CIRCLE,
        &bounds::PIN,
        &bounds::FIT_NOMINAL,
        &bounds::FIT_HOLE,
        &bounds::FIT_SHAFT,
        &bounds::PIN_BORE,
        &bounds::HOUSING,
        &bounds::SEAT,
        &bounds::INTERFERENCE,
        &bounds::DROP_IN_GAP,
        &bounds::TEMPERATURE,
        &bounds::POWER,
        &bounds::FLOW,
        &bounds::LINE_BORE,
        &bounds::LINE_LENGTH,
        &bounds::ROUGHNESS,
        &bounds::OIL_PRESSURE,
    ];
    for row in all {
        let read = |whole: i64| Reading::read(&whole.to_string(), row.unit, row);
        for edge in [row.lowest, row.highest] {
            assert!(read(edge).is_ok(), "{}: {edge}", row.name);
        }
        for outside in [row.lowest - 1, row.highest + 1] {
            assert!(read(outside).is_err(), "{}: {outside}", row.name);
        }
    }
}

#[test]
fn plain_numbers_are_read_within_their_bounds() {
    for row in [
        &bounds::THREADS_PER_INCH,
        &bounds::NUT_FACTOR,
        &bounds::SCATTER,
        &bounds::FRICTION,
        &bounds::LOAD_SHARE,
        &bounds::PEAK_FACTOR,
        &bounds::SPEED,
        &bounds::CHAMBER_AREA,
        &bounds::POISSON,
        &bounds::EXPANSION,
        &bounds::LINE_VISCOSITY,
        &bounds::VISCOSITY,
        &bounds::DENSITY,
    ] {
        for edge in [row.least, row.greatest] {
            assert_eq!(row.read(&edge.to_string()), Ok(edge), "{}", row.name);
        }
        let above = (row.greatest * 1.01 + 0.01).to_string();
        assert!(row.read(&above).is_err(), "{}: {above}", row.name);
        assert!(row.read("-0.001").is_err(), "{}: below", row.name);
    }
    let word = bounds::NUT_FACTOR.read("dry").expect_err("a word");
    assert_eq!(
        word.to_string(),
        "“dry” is no number. Use digits with one point or comma.",
        "a word"
    );
    assert_eq!(bounds::NUT_FACTOR.read("0,18"), Ok(0.18), "a comma");
}

/// A reading at the edge is taken by the calculator too, though its float may lie a rounding outside.
#[test]
fn readings_at_the_edges_are_reckoned_with() {
    let edge = |row: &'static Bounds| {
        [row.lowest, row.highest].map(|whole| {
            Reading::read(&whole.to_string(), row.unit, row).expect("an edge").amount()
        })
    };
    let line = |bore: Length, length: Length| Line {
        bore,
        length,
        roughness: mm(0.0),
        fittings: Vec::new(),
    };
    let state = OilState {
        viscosity: KinematicViscosity::new::<square_millimeter_per_second>(14.0),
        density: MassDensity::new::<kilogram_per_cubic_meter>(860.0),
    };
    for flow in edge(&bounds::FLOW).map(|flow| flow.flow().expect("a flow")) {
        for bore in edge(&bounds::LINE_BORE).map(|bore| bore.length().expect("a length")) {
            for length in
                edge(&bounds::LINE_LENGTH).map(|length| length.length().expect("a length"))
            {
                let drop = line(bore, length).drop(&state, flow);
                assert!(drop.is_ok(), "{flow:?} {bore:?} {length:?}: {drop:?}");
            }
        }
    }
    for torque in edge(&bounds::TORQUE).map(|torque| torque.torque().expect("a torque")) {
        for size in edge(&bounds::THREAD_DIAMETER).map(|size| size.length().expect("a length")) {
            let found = preload(torque, size, Range::exactly(0.2), 0.25);
            assert!(found.is_ok(), "{torque:?} {size:?}: {found:?}");
        }
    }
    for warmth in edge(&bounds::TEMPERATURE).map(|warmth| warmth.temperature().expect("one")) {
        let celsius = ThermodynamicTemperature::new::<degree_celsius>;
        let thick = KinematicViscosity::new::<square_millimeter_per_second>;
        let oil = Oil::through((warmth, thick(50.0)), (celsius(20.0), thick(60.0)));
        let named =
            |fault: &Refusal| matches!(fault, Refusal::Quantity(_) | Refusal::OutOfBounds(_));
        assert!(!oil.as_ref().is_err_and(named), "{warmth:?}: {oil:?}");
    }
}
