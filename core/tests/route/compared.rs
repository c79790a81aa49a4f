//! Compression under the conditions of its limit: the air, and the cranking speed.

use super::Shop;
use super::compression::test;
use super::sheet::{section, sheet as printed};
use pitleaf_core::air::standard_pressure;
use pitleaf_core::book::Fact;
use pitleaf_core::limits::{BuildKind, Call, Sheet, Side};
use pitleaf_core::quantity::Unit;
use pitleaf_core::route::{
    Copy, Finding, HOW_COMPARED, OpenPoints, RouteFact, Tested, TypedTest, compression_in,
    compression_record, past_limits,
};
use proptest::prelude::*;
use uom::si::f64::Length;
use uom::si::{length::meter, pressure::hectopascal};

fn cranked(faces: [&str; 3], speed: &str, altitude: &str) -> TypedTest {
    let (speed, altitude) = (speed.to_owned(), altitude.to_owned());
    TypedTest { speed, altitude, ..test("1", faces, "kPa") }
}

#[track_caller]
fn tested(last: &TypedTest, others: &[TypedTest]) -> Vec<Finding> {
    let read = |typed: &TypedTest| typed.read().expect("a test");
    let others = others.iter().map(read).collect();
    let tested = Tested { rotor: 1, last: read(last), others };
    compression_record(&[tested], BuildKind::NaturallyAspirated, &Sheet::starter())
}

/// ISO 2533:1975 (US Standard Atmosphere 1976), geopotential altitude: 0, 1000, 2000, 3000 and 5000 m as
/// printed in pascals, 500 and 1500 m in hectopascals from memory.
#[test]
fn the_air_is_that_of_the_standard_atmosphere() {
    for (metres, hectopascals, room) in [
        (0.0, 1013.25, 0.001),
        (500.0, 954.6, 0.06),
        (1000.0, 898.746, 0.001),
        (1500.0, 845.6, 0.06),
        (2000.0, 794.952, 0.001),
        (3000.0, 701.085, 0.001),
        (5000.0, 540.199, 0.001),
    ] {
        let air = standard_pressure(Length::new::<meter>(metres)).get::<hectopascal>();
        assert!((air - hectopascals).abs() <= room, "{metres} m: {air}, wanted {hectopascals}");
    }
}

/// An engine of 690 kPa at the sea reads 650, 612, 576 and 541 kPa up there, by the ratio of pressures:
/// it is as good as there, and never “does not meet”.
#[test]
fn a_sound_engine_is_no_worse_in_thin_air() {
    for (altitude, face) in
        [("500 m", "650"), ("1000 m", "612"), ("1500 m", "576"), ("2000 m", "541")]
    {
        let found = tested(&cranked([face; 3], "250", altitude), &[]);
        let first = &found[0];
        assert!(
            ["689", "690", "691"].iter().any(|near| first.compared.starts_with(near)),
            "{altitude}: {}",
            first.compared
        );
        assert_eq!(first.call, Some(Call::TooClose), "{altitude}: on the limit");
    }
    // By hand: 541 kPa in feet and psi, 78.5 psi at 6562 ft, is the same.
    let psi = TypedTest { altitude: "6562 ft".into(), ..test("1", ["78.5"; 3], "psi") };
    let found = tested(&psi, &[]);
    assert!(found[0].compared.starts_with("100."), "{}", found[0].compared);
}

/// By hand: at 120 m the standard air is 998.9 hPa, its doubt 30/√3 = 17.32 hPa or 1.734 %; 800 kPa are
/// 811.5 at the sea, the weather's doubt 14.07 kPa. The usual tester's, ±32 kPa in steps of 10, is 18.70 · 1.0144
/// = 18.97: 1.65 √(14.07² + 18.97²) = 39.0. A barometer's ±3 hPa leave 1.41, and 31.4 together.
#[test]
fn the_weather_is_the_doubt_unless_a_barometer_was_read() {
    let by_altitude = cranked(["800"; 3], "250", "120 m");
    assert_eq!(tested(&by_altitude, &[])[0].compared, "811 kPa ± 39 kPa at the sea", "altitude");
    let by_barometer = TypedTest { air: "998.9".into(), ..by_altitude.clone() };
    assert_eq!(tested(&by_barometer, &[])[0].compared, "811 kPa ± 31 kPa at the sea", "barometer");
    let alone = TypedTest { altitude: String::new(), ..by_barometer };
    assert_eq!(tested(&alone, &[])[0].compared, "811 kPa ± 31 kPa at the sea", "no altitude");
    assert_eq!(alone.conditions(), "cranked at 250 /min, air at 998.9", "as typed");
    let inches = TypedTest { air: "29.50 inHg".into(), ..alone };
    assert_eq!(tested(&inches, &[])[0].compared, "811 kPa ± 31 kPa at the sea", "999 hPa");
    assert!(HOW_COMPARED.contains("30 hPa of weather"), "{HOW_COMPARED}");
}

/// At 1500 m a barometer shows some 846 hPa; the weather report's 1013 would judge a tired engine sound.
#[test]
fn a_weather_reports_figure_is_told_from_a_barometers() {
    let at =
        |air: &str| TypedTest { air: air.into(), ..cranked(["576"; 3], "250", "1500 m") }.read();
    let said = at("1013").expect_err("refused").to_string();
    assert!(
        said.starts_with("At this altitude a barometer stands near 846 hPa. A weather"),
        "{said}"
    );
    let said = at("29.9 inHg").expect_err("refused").to_string();
    assert!(said.starts_with("At this altitude a barometer stands near 24.97 inHg"), "{said}");
    assert!(at("815").is_ok() && at("876").is_ok(), "bad and good weather");
    for absurd in ["3", "10130", "abc"] {
        let said = at(absurd).expect_err("refused").to_string();
        assert!(said.starts_with("Air’s pressure: "), "{absurd}: {said}");
    }
}

const SLOW: &str = "Cranked at 180 a minute; the limit holds at 250. Crank it within 10 of that, or test it at two speeds on one day, so that 250 lies between them.";

#[test]
fn a_reading_at_another_speed_is_not_compared() {
    let found = tested(&cranked(["580", "578", "400"], "180", "0 m"), &[]);
    for face in &found[..3] {
        assert_eq!((face.call, face.not_compared.as_str()), (None, SLOW), "{}", face.what);
        assert_eq!(face.word(), "Can’t be compared", "{}", face.what);
        assert_eq!(face.compared, "", "{}", face.what);
    }
    // 580 − 400 = 180 over 150: how even the faces are is judged at any speed.
    assert_eq!(found[3].call, Some(Call::DoesNotMeet(Side::Above)), "evenness");
    for (speed, is_compared) in [("239", false), ("240", true), ("260", true), ("261", false)] {
        let found = tested(&cranked(["800"; 3], speed, "0 m"), &[]);
        assert_eq!(found[0].call.is_some(), is_compared, "{speed}");
    }
}

/// By hand: 600 kPa at 200 and 760 at 300 a minute are 680 at 250.
#[test]
fn two_speeds_of_one_engine_lead_to_the_limits_own() {
    let slow = cranked(["600", "610", "600"], "200", "0 m");
    let fast = cranked(["760", "770", "590"], "300", "0 m");
    for (last, other) in [(&slow, &fast), (&fast, &slow)] {
        let found = tested(last, std::slice::from_ref(other));
        assert!(found[0].compared.starts_with("680 kPa ± "), "{}", found[0].compared);
        assert!(found[0].compared.ends_with("brought to 250 /min by two tests"), "named");
        assert_eq!(found[2].call, None, "a face that reads less the faster it turns is no line");
    }
    // The weather's 2.96 % · 680/√3 = 11.6 kPa; the speeds' 1.6 kPa a turn · 5/√3 · √½ = 3.3; the one tester's 18.7:
    // 1.65 √(11.6² + 3.3² + 18.7²) = 36.7.
    assert!(
        tested(&slow, std::slice::from_ref(&fast))[0].compared.starts_with("680 kPa ± 37 kPa"),
        "its doubt"
    );
    let at = |speed: &str| cranked(["600"; 3], speed, "0 m");
    for (one, two, is_compared, why) in [
        ("180", "200", false, "250 lies far past both"),
        ("180", "229", false, "past both by more than a quarter of what lies between them"),
        ("180", "236", true, "by a quarter"),
        ("230", "239", false, "too near each other for a line"),
    ] {
        let fast = cranked(["700"; 3], two, "0 m");
        let call = tested(&at(one), &[fast])[0].call;
        assert_eq!(call.is_some(), is_compared, "{one} and {two}: {why}");
    }
}

proptest! {
    /// A tester's reading goes with the air: the same engine anywhere is compared as the same figure.
    #[test]
    fn the_figure_compared_is_the_same_at_any_altitude(at_sea in 300.0..1200_f64, metres in -500..6000_i32) {
        let air = standard_pressure(Length::new::<meter>(f64::from(metres))).get::<hectopascal>();
        let face = format!("{:.2}", at_sea * air / 1013.25);
        let found = tested(&cranked([face.as_str(); 3], "250", &format!("{metres} m")), &[]);
        let compared: f64 = found[0].compared.split(' ').next().unwrap_or_default().parse().unwrap();
        prop_assert!((compared - at_sea).abs() <= 0.06, "{} for {at_sea}", found[0].compared);
    }

    /// No figure of another speed gets a verdict, whatever it is.
    #[test]
    fn no_other_speed_is_ever_judged(face in 0..3000_u32, speed in 50..240_u32) {
        let face = face.to_string();
        let found = tested(&cranked([face.as_str(); 3], &speed.to_string(), "0 m"), &[]);
        prop_assert!(found[..3].iter().all(|face| face.call.is_none()));
    }
}

fn shop_with(tests: &[TypedTest]) -> Shop {
    let mut shop = Shop::new(BuildKind::NaturallyAspirated, 2);
    tests.iter().for_each(|test| shop.route(RouteFact::Compression(test.clone())));
    shop
}

fn first(shop: &Shop) -> Finding {
    compression_in(&shop.book, &shop.build, &shop.sheet())[0].0.clone()
}

#[test]
fn the_book_pairs_tests_of_one_day_only() {
    let slow = cranked(["600"; 3], "200", "0 m");
    let fast = cranked(["760"; 3], "300", "0 m");
    let mut shop = shop_with(&[slow.clone(), fast.clone()]);
    assert!(first(&shop).compared.starts_with("680 kPa"), "{:?}", first(&shop));
    shop.withdraw_last();
    assert_eq!(first(&shop).call, None, "the other one is withdrawn");

    let same = cranked(["600"; 3], "300", "0 m");
    assert_eq!(first(&shop_with(&[slow.clone(), same])).call, None, "a speed put right is no test");

    let mut shop = shop_with(&[slow]);
    shop.take_later("later", 24 * 60 * 60 * 1000 + 1, Fact::Route(RouteFact::Compression(fast)));
    assert_eq!(first(&shop).call, None, "another day: the engine may have been opened since");
}

#[test]
fn what_is_not_compared_is_seen_and_is_no_open_point() {
    let mut shop = shop_with(&[cranked(["580", "578", "575"], "180", "1500 m")]);
    shop.read("compression-na", "", "400", Unit::Kilopascal);
    let sheet = shop.sheet();
    let points = OpenPoints::of(&shop.book, &shop.build, &sheet);
    assert_eq!(points.undecided, [""; 0], "nothing to be decided");
    assert!(past_limits(&shop.book, &shop.build, &sheet).is_empty(), "nothing past its limit");
    assert_eq!(points.not_compared.len(), 4, "{:?}", points.not_compared);
    assert_eq!(points.not_compared[1], format!("Rotor 1, face 1: 580 kPa. {SLOW}"), "with why");
    assert!(points.not_compared[0].starts_with("Compression, each face, naturally aspirated: 400 kPa. The limit holds at 250 turns a minute"), "{}", points.not_compared[0]);
    let count = points.count();
    assert_eq!(
        count,
        points.holds.len() + points.steps.len() + points.unproved.len(),
        "not counted"
    );

    let printed = printed(&shop, Copy::Customer);
    let compression = section(&printed, "Compression");
    assert_eq!(compression.rows[0].cells[3], SLOW, "why, on the sheet");
    assert_eq!(compression.rows[0].cells[5], "Can’t be compared", "in place of a verdict");
    let bare = &section(&printed, "Readings against their limits").rows[0];
    assert_eq!((bare.call, bare.cells[4].as_str()), (None, "Can’t be compared"), "the bare figure");
}

#[test]
fn rotors_cranked_unlike_each_other_are_not_compared() {
    let slow = TypedTest { rotor: "2".into(), ..cranked(["500"; 3], "200", "0 m") };
    let shop = shop_with(&[cranked(["800"; 3], "250", "0 m"), slow.clone()]);
    let found = compression_in(&shop.book, &shop.build, &shop.sheet());
    let (last, _) = found.last().expect("between rotors");
    assert_eq!(last.figure, "300 kPa", "far apart");
    assert_eq!(last.call, None, "but cranked at different speeds");
    assert!(last.not_compared.starts_with("The rotors were cranked at different speeds."), "said");
    let alike = TypedTest { speed: "245".into(), ..slow };
    let shop = shop_with(&[cranked(["800"; 3], "250", "0 m"), alike]);
    let found = compression_in(&shop.book, &shop.build, &shop.sheet());
    assert_eq!(found.last().and_then(|(last, _)| last.call), Some(Call::DoesNotMeet(Side::Above)));
}

/// Books written before the limits told their speed, and before a barometer was asked for.
#[test]
fn an_older_book_reads_and_is_compared_by_the_limits_speed() {
    let old = ["compression", "1", "580", "578", "575", "kPa", "180", "1500 m"];
    let read = RouteFact::try_from(old.map(str::to_owned).to_vec()).expect("an old test");
    assert_eq!(read, RouteFact::Compression(cranked(["580", "578", "575"], "180", "1500 m")));

    let mut sheet = Sheet::starter();
    let row = sheet.row("compression-na").expect("a row").clone();
    assert_eq!(row.cranking_speed, Some(250), "as data");
    sheet.put(pitleaf_core::limits::Row { cranking_speed: None, ..row });
    let kept = sheet.row("compression-na").expect("a row");
    assert_eq!(kept.cranking_speed, Some(250), "an own limit of before");
    assert!(!kept.is_judged_bare(), "never by a bare figure");
    for id in ["compression-face-spread", "compression-rotor-spread", "end-play"] {
        assert!(Sheet::starter().row(id).expect("a row").is_judged_bare(), "{id}");
    }
}
