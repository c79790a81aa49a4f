//! The compression record.

use super::Shop;
use pitleaf_core::limits::{BuildKind, Call, Sheet, Side};
use pitleaf_core::route::{Compression, Tested, TypedTest, compression_record};

pub(super) fn test(rotor: &str, faces: [&str; 3], unit: &str) -> TypedTest {
    TypedTest {
        rotor: rotor.to_owned(),
        faces: faces.map(str::to_owned),
        unit: unit.to_owned(),
        speed: "250".to_owned(),
        altitude: "120 m".to_owned(),
        air: String::new(),
    }
}

fn read(rotor: &str, faces: [&str; 3], unit: &str) -> Tested {
    let last: Compression = test(rotor, faces, unit).read().expect("a test");
    Tested { rotor: rotor.parse().expect("a rotor"), last, others: Vec::new() }
}

#[test]
fn faces_spread_and_evenness_stand_against_the_sheet() {
    let tests = [read("1", ["800", "790", "810"], "kPa"), read("2", ["780", "600", "770"], "kPa")];
    let findings = compression_record(&tests, BuildKind::ForcedInduction, &Sheet::starter());
    let said: Vec<(&str, &str, &str, Option<Call>)> = findings
        .iter()
        .map(|finding| {
            (finding.what.as_str(), finding.figure.as_str(), finding.other.as_str(), finding.call)
        })
        .collect();
    // By hand: 800 kPa is 116.0 psi; 780 − 600 = 180 over 150; means 800 and 716.67, 83.3 apart under 100.
    assert_eq!(
        said,
        [
            ("Rotor 1, face 1", "800 kPa", "116.0 psi", Some(Call::Meets)),
            ("Rotor 1, face 2", "790 kPa", "114.6 psi", Some(Call::Meets)),
            ("Rotor 1, face 3", "810 kPa", "117.5 psi", Some(Call::Meets)),
            ("Rotor 1, spread over its faces", "20 kPa", "2.9 psi", Some(Call::Meets)),
            ("Rotor 2, face 1", "780 kPa", "113.1 psi", Some(Call::Meets)),
            ("Rotor 2, face 2", "600 kPa", "87.0 psi", Some(Call::DoesNotMeet(Side::Below))),
            ("Rotor 2, face 3", "770 kPa", "111.7 psi", Some(Call::Meets)),
            (
                "Rotor 2, spread over its faces",
                "180 kPa",
                "26.1 psi",
                Some(Call::DoesNotMeet(Side::Above))
            ),
            ("Between rotors, highest mean less lowest", "83 kPa", "12.1 psi", Some(Call::Meets)),
        ],
        "the record"
    );
    let rows: Vec<&str> = findings.iter().filter_map(|finding| finding.row.as_deref()).collect();
    assert_eq!(rows[0], "compression-fi", "the row of its build");
    assert_eq!(rows[3], "compression-face-spread", "the spread’s own");
    assert_eq!(rows[8], "compression-rotor-spread", "the evenness’ own");
}

#[test]
fn a_mixed_pair_is_compared_in_one_unit() {
    let tests = [read("1", ["110", "112", "111"], "psi"), read("2", ["7.0", "7.1", "7.0"], "bar")];
    let findings = compression_record(&tests, BuildKind::NaturallyAspirated, &Sheet::starter());
    // 111 psi is 765.3 kPa, 7.0333 bar is 703.3 kPa: 62.0 kPa or 9.0 psi apart.
    let last = findings.last().expect("a finding");
    assert_eq!((last.figure.as_str(), last.other.as_str()), ("9 psi", "62 kPa"), "between rotors");
    assert_eq!(tests[0].last.lowest().number(), "110", "the lowest face");
}

/// By hand: means of 7 and 8.49 bar are 1.49 apart, 0.49 over the limit of 1 bar; shown to the bar it is 1.
#[test]
fn evenness_is_judged_before_it_is_rounded() {
    let tests = [read("1", ["7", "7", "7"], "bar"), read("2", ["8.49", "8.49", "8.49"], "bar")];
    let findings = compression_record(&tests, BuildKind::NaturallyAspirated, &Sheet::starter());
    let last = findings.last().expect("a finding");
    assert_eq!(last.call, Some(Call::DoesNotMeet(Side::Above)), "{}", last.figure);
}

#[test]
fn what_is_missing_or_absurd_gets_its_sentence() {
    let sane = || test("1", ["700", "710", "705"], "kPa");
    let refused = |typed: TypedTest| typed.read().expect_err("refused").to_string();
    assert!(sane().read().is_ok(), "a sane one");
    assert_eq!(
        refused(TypedTest { unit: "mm".into(), ..sane() }),
        "Give the readings in a unit of pressure: kPa, psi, bar.",
        "unit"
    );
    assert_eq!(
        refused(TypedTest { speed: String::new(), ..sane() }),
        "Give the cranking speed in turns a minute, 50 to 1000: a reading without it says little.",
        "no speed"
    );
    for speed in ["49", "1001", "-250", "abc"] {
        let said = refused(TypedTest { speed: speed.into(), ..sane() });
        assert!(said.starts_with("Give the cranking speed"), "{speed}: {said}");
    }
    assert_eq!(
        refused(TypedTest { altitude: String::new(), ..sane() }),
        "Give the altitude, with m or ft behind it, or the air’s pressure: thin air reads low.",
        "no altitude"
    );
    let high = refused(TypedTest { altitude: "9000 m".into(), ..sane() });
    assert_eq!(
        high,
        "Altitude: An altitude lies between −500 and 6000 m. Check the decimal point and the unit.",
        "too high"
    );
    let face = refused(TypedTest { faces: ["700", "", "705"].map(str::to_owned), ..sane() });
    assert!(face.starts_with("Face 2: "), "{face}");
    let face = refused(TypedTest { faces: ["700", "7000", "705"].map(str::to_owned), ..sane() });
    assert!(face.starts_with("Face 2: A compression reading lies between"), "{face}");
}

#[test]
fn the_last_test_of_a_rotor_is_the_one_in_the_book() {
    let mut shop = Shop::demo();
    let found =
        |shop: &Shop| TypedTest::of(&shop.book, &shop.build, 1).map(|test| test.faces[0].clone());
    assert_eq!(found(&shop).as_deref(), Some("720"), "the demo’s");
    let again = test("1", ["800", "800", "800"], "kPa");
    shop.route(pitleaf_core::route::RouteFact::Compression(again));
    assert_eq!(found(&shop).as_deref(), Some("800"), "the later");
    assert_eq!(TypedTest::of(&shop.book, &shop.build, 3), None, "no such rotor was tested");
}
