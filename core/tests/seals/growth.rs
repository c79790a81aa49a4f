//! Growth with heat, against published figures and examples.

use pitleaf_core::quantity::Unit;
use pitleaf_core::seals::{
    Band, Chain, ESTIMATE, Expansion, MATERIALS, Piece, SOURCE_COLD, SOURCE_HOT, Temperatures,
    gap_at_reference, hot_gap, length_at,
};
use proptest::prelude::*;
use uom::si::f64::{Length, ThermodynamicTemperature};
use uom::si::length::{meter, micrometer, millimeter};
use uom::si::temperature_coefficient::ppm_per_kelvin;
use uom::si::thermodynamic_temperature::degree_celsius;

fn celsius(value: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(value)
}

fn at(value: f64) -> Temperatures {
    Temperatures::of(celsius(value))
}

fn from_to(coldest: f64, hottest: f64) -> Temperatures {
    Temperatures { coldest: celsius(coldest), hottest: celsius(hottest) }
}

fn metal(least: f64, greatest: f64) -> Expansion {
    Expansion::of_millionths(least, greatest).unwrap()
}

fn mm(value: f64) -> Length {
    Length::new::<millimeter>(value)
}

#[track_caller]
fn near(got: f64, wanted: f64, within: f64) {
    assert!((got - wanted).abs() <= within, "got {got}, wanted {wanted} ± {within}");
}

#[test]
fn the_materials_are_callister_s() {
    // W. D. Callister, Materials Science and Engineering, Table B.6, 10⁻⁶/K. Published figures.
    let printed = [11.4, 11.2, 10.6, 11.7, 12.3, 21.5, 23.6, 23.4];
    assert_eq!(MATERIALS.len(), printed.len());
    for (row, printed) in MATERIALS.iter().zip(printed) {
        let range = row.expansion().unwrap();
        assert_eq!(
            range.least.get::<ppm_per_kelvin>().to_bits(),
            metal(printed, printed).least.get::<ppm_per_kelvin>().to_bits(),
            "{}",
            row.name
        );
        assert!(range.greatest > range.least, "{}: hotter metal grows more", row.name);
        // One metre, 20 °C to 120 °C, grows by a hundredth of the printed figure in millimetres.
        let grown = length_at(mm(1_000.0), row.near_room().unwrap(), at(20.0), at(120.0)).unwrap();
        near(grown.least.get::<millimeter>() - 1_000.0, printed / 10.0, 1e-9);
        near(grown.greatest.get::<millimeter>(), grown.least.get::<millimeter>(), 1e-12);
    }
    assert_eq!(SOURCE_COLD, "Published: Callister, Materials Science and Engineering, Table B.6.");
    assert_eq!(SOURCE_HOT, "From memory: confirm it for the metal at hand.");
}

#[test]
fn a_steel_bridge_grows_as_in_the_handbook() {
    // OpenStax, College Physics, Example 13.3: a steel span of 1275 m, 12·10⁻⁶/K, from −15 °C to 40 °C: 0.84 m. Published.
    let span = Length::new::<meter>(1_275.0);
    let grown = length_at(span, metal(12.0, 12.0), at(-15.0), at(40.0)).unwrap();
    near((grown.least - span).get::<meter>(), 0.84, 0.005);
}

#[test]
fn two_bolts_meet_as_in_the_handbook() {
    // Serway and Jewett, Physics for Scientists and Engineers, "The Thermal Electrical Short", from memory:
    // brass 30 mm (19·10⁻⁶/K) and steel 10 mm (11·10⁻⁶/K) face each other over 5.0 µm at 27 °C between
    // walls that keep their distance; they touch after 7.4 K. Rounded to 0.05 K, that is 0.034 µm of gap.
    let chain = Chain {
        seal: mm(30.0),
        corner_radius: mm(5.0),
        least_gap: Length::new::<micrometer>(5.0),
        greatest_gap: Length::new::<micrometer>(5.0),
        bench: at(27.0),
    };
    let piece = |coefficient, temperature| Piece {
        expansion: metal(coefficient, coefficient),
        running: at(temperature),
    };
    let gap = hot_gap(&chain, piece(0.0, 34.4), piece(19.0, 34.4), piece(11.0, 34.4)).unwrap();
    near(gap.least.get::<micrometer>(), 0.0, 0.035);
    near(gap.greatest.get::<micrometer>(), gap.least.get::<micrometer>(), 1e-6);
}

#[test]
fn a_hot_seal_in_a_cooler_rotor_closes_its_gap() {
    // By hand: rotor 50.05 mm at 11.4·10⁻⁶ by 180 K, seal 42 mm by 230 K and corners 8 mm by 230 K, same iron, bench at 20 °C:
    // 0.05 + 11.4e-6·(50.05·180 − 50·230) = 0.05 + 11.4e-6·(−2491) = 0.021 603 mm.
    let iron = metal(11.4, 11.4);
    let chain = Chain {
        seal: mm(42.0),
        corner_radius: mm(4.0),
        least_gap: mm(0.05),
        greatest_gap: mm(0.05),
        bench: at(20.0),
    };
    let running = |t| Piece { expansion: iron, running: at(t) };
    let band = hot_gap(&chain, running(200.0), running(250.0), running(250.0)).unwrap();
    near(band.least.get::<millimeter>(), 0.021_602_6, 1e-9);
    assert_eq!(band.words(Unit::Millimetre), "Hot, the gap comes to 0.021 mm to 0.022 mm.");
    // The same everywhere: the gap grows as if it were iron itself.
    let even = hot_gap(&chain, running(200.0), running(200.0), running(200.0)).unwrap();
    near(even.least.get::<millimeter>(), 0.05 * (1.0 + 11.4e-6 * 180.0), 1e-12);
    assert_eq!(
        ESTIMATE,
        "An estimate: nobody knows the temperatures inside a running engine well. The engine’s own manual stands above this figure."
    );
}

#[test]
fn a_band_that_closes_says_that_the_seal_jams() {
    let words = |least: f64, greatest: f64| {
        Band { least: mm(least), greatest: mm(greatest) }.words(Unit::Millimetre)
    };
    assert_eq!(
        words(-0.01, 0.02),
        "Hot, the seal may jam: the gap comes to −0.010 mm to 0.020 mm."
    );
    assert_eq!(words(-0.02, -0.01), "Hot, the seal jams: the gap comes to −0.020 mm to −0.010 mm.");
    assert_eq!(words(f64::NAN, 0.0), "The hot gap can’t be told.");
}

#[test]
fn a_gap_measured_on_a_cold_bench_is_corrected_to_20() {
    // An aluminium span around iron, measured at 5 °C: at 20 °C the span has grown more.
    // 50.05·(1 + 21.5e-6·15)/(1) − 50·(1 + 11.4e-6·15), each from 5 °C: computed with the factor 1/(1 − α·15).
    let chain = Chain {
        seal: mm(42.0),
        corner_radius: mm(4.0),
        least_gap: mm(0.05),
        greatest_gap: mm(0.06),
        bench: at(5.0),
    };
    let band =
        gap_at_reference(&chain, metal(21.5, 21.5), metal(11.4, 11.4), metal(11.4, 11.4)).unwrap();
    near(
        band.least.get::<millimeter>(),
        50.05 / (1.0 - 21.5e-6 * 15.0) - 50.0 / (1.0 - 11.4e-6 * 15.0),
        1e-12,
    );
    near(
        band.greatest.get::<millimeter>(),
        50.06 / (1.0 - 21.5e-6 * 15.0) - 50.0 / (1.0 - 11.4e-6 * 15.0),
        1e-12,
    );
    // At 20 °C nothing is corrected.
    let at_20 = Chain { bench: at(20.0), ..chain };
    let same =
        gap_at_reference(&at_20, metal(21.5, 23.5), metal(11.4, 13.0), metal(11.4, 13.0)).unwrap();
    near(same.least.get::<millimeter>(), 0.05, 1e-12);
    near(same.greatest.get::<millimeter>(), 0.06, 1e-12);
}

#[test]
fn a_range_on_the_bench_widens_the_band() {
    // 1000 mm at 10·10⁻⁶/K, measured between 10 °C and 30 °C: at 20 °C 0.1 mm either way, to first order.
    let band = length_at(mm(1_000.0), metal(10.0, 10.0), from_to(10.0, 30.0), at(20.0)).unwrap();
    near(band.least.get::<millimeter>(), 1_000.0 / (1.0 + 1e-4), 1e-9);
    near(band.greatest.get::<millimeter>(), 1_000.0 / (1.0 - 1e-4), 1e-9);
    // An aluminium span of 50.05 mm around 50 mm of iron: the parts share the bench's temperature.
    let chain = Chain {
        seal: mm(42.0),
        corner_radius: mm(4.0),
        least_gap: mm(0.05),
        greatest_gap: mm(0.05),
        bench: from_to(10.0, 30.0),
    };
    let band =
        gap_at_reference(&chain, metal(21.5, 21.5), metal(11.4, 11.4), metal(11.4, 11.4)).unwrap();
    let gap = |span: f64, solid: f64, b: f64| {
        50.05 / (1.0 + span * 1e-6 * b) - 50.0 / (1.0 + solid * 1e-6 * b)
    };
    near(band.least.get::<millimeter>(), gap(21.5, 11.4, 10.0), 1e-9);
    near(band.greatest.get::<millimeter>(), gap(21.5, 11.4, -10.0), 1e-9);
    // And the other way about.
    let band =
        gap_at_reference(&chain, metal(11.4, 11.4), metal(21.5, 21.5), metal(21.5, 21.5)).unwrap();
    near(band.least.get::<millimeter>(), gap(11.4, 21.5, -10.0), 1e-9);
    near(band.greatest.get::<millimeter>(), gap(11.4, 21.5, 10.0), 1e-9);
}

#[test]
fn what_can_t_be_is_refused_with_a_sentence() {
    let iron = metal(11.4, 13.0);
    let good = Chain {
        seal: mm(42.0),
        corner_radius: mm(4.0),
        least_gap: mm(0.05),
        greatest_gap: mm(0.06),
        bench: at(20.0),
    };
    let piece = |running| Piece { expansion: iron, running };
    let say = |chain: Chain, running| {
        hot_gap(&chain, piece(running), piece(running), piece(running)).unwrap_err().to_string()
    };
    let hot = at(200.0);
    assert_eq!(
        say(Chain { least_gap: mm(0.07), ..good }, hot),
        "The least gap lies above the greatest. Swap them."
    );
    assert_eq!(
        say(Chain { seal: mm(0.0), ..good }, hot),
        "A seal and a corner seal are longer than 0. Type their sizes."
    );
    let crossed = Chain { bench: from_to(25.0, 15.0), ..good };
    assert_eq!(say(crossed, hot), "The coldest temperature lies above the hottest. Swap them.");
    assert_eq!(
        say(good, from_to(300.0, 200.0)),
        "The coldest temperature lies above the hottest. Swap them."
    );
    let range =
        "A part of an engine lies between −60 °C and 1200 °C. Check the temperature and its unit.";
    assert_eq!(say(good, at(1_201.0)), range);
    assert_eq!(say(good, at(f64::NAN)), range);
    let metal =
        "A metal grows by 0 to 50 millionths a kelvin, the lower figure first. Check the material.";
    for (least, greatest) in [(13.0, 11.4), (-1.0, 5.0), (11.4, 51.0), (f64::NAN, 5.0)] {
        assert_eq!(
            Expansion::of_millionths(least, greatest).unwrap_err().to_string(),
            metal,
            "{least} to {greatest}"
        );
    }
}

/// Straight from the definition, in plain numbers: millimetres, millionths a kelvin, °C.
fn plain_length(cold: f64, coefficient: f64, bench: f64, running: f64) -> f64 {
    let growth = |t: f64| 1.0 + coefficient * 1e-6 * (t - 20.0);
    cold * growth(running) / growth(bench)
}

proptest! {
    #[test]
    fn every_case_within_the_ranges_lies_in_the_band(
        shares in proptest::array::uniform8(prop_oneof![Just(0.0), Just(1.0), 0.0_f64..=1.0]),
        bench in -10.0_f64..40.0,
        (gap, wider) in (0.0_f64..0.2, 0.0_f64..0.05),
    ) {
        let ranges = [(10.6, 13.0), (11.4, 13.0), (11.7, 13.6)];
        let hots = [(90.0, 220.0), (150.0, 300.0), (120.0, 280.0)];
        let chain = Chain {
            seal: mm(42.0),
            corner_radius: mm(4.0),
            least_gap: mm(gap),
            greatest_gap: mm(gap + wider),
            bench: from_to(bench, bench + 5.0),
        };
        let piece = |n: usize| Piece {
            expansion: metal(ranges[n].0, ranges[n].1),
            running: from_to(hots[n].0, hots[n].1),
        };
        let band = hot_gap(&chain, piece(0), piece(1), piece(2)).unwrap();
        let between = |(a, b): (f64, f64), share: f64| a + (b - a) * share;
        let real_gap = gap + wider * shares[6];
        let real_bench = bench + 5.0 * shares[7];
        let length = |n: usize, cold: f64| {
            let coefficient = between(ranges[n], shares[n]);
            plain_length(cold, coefficient, real_bench, between(hots[n], shares[n + 3]))
        };
        let hot = length(0, 50.0 + real_gap) - length(1, 42.0) - length(2, 8.0);
        prop_assert!(hot >= band.least.get::<millimeter>() - 1e-6, "{} is under the band", hot);
        prop_assert!(hot <= band.greatest.get::<millimeter>() + 1e-6, "{} is over the band", hot);
    }

    #[test]
    fn there_and_back_again_is_the_same_length(
        length in 0.1_f64..1_000.0,
        coefficient in 0.0_f64..50.0,
        bench in -50.0_f64..60.0,
        hot in -50.0_f64..1_000.0,
    ) {
        let expansion = metal(coefficient, coefficient);
        let there = length_at(mm(length), expansion, at(bench), at(hot)).unwrap();
        let back = length_at(there.least, expansion, at(hot), at(bench)).unwrap();
        prop_assert!((back.least.get::<millimeter>() - length).abs() <= length * 1e-12, "{:?}", back);
    }
}
