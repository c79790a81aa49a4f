//! What is typed at a slot and read off it: leaves, counts, brackets and sets in words.

use crate::bench::{limit, micrometres};
use pitleaf_core::limits::{Gauge, GaugeKind, Part, Sheet, place_on_rule, places};
use pitleaf_core::quantity::{Bounds, Reading, Unit};
use pitleaf_core::seals::{
    Bracket, Ground, GroundBy, Leaf, LeafFault, Place, SetCheck, Stack, match_by_height,
    match_by_weight,
};

fn marks(text: &str) -> Result<String, LeafFault> {
    let leaves = Leaf::read_many(text, Unit::Millimetre)?;
    Ok(leaves.iter().map(ToString::to_string).collect::<Vec<_>>().join(" | "))
}

#[test]
fn leaves_are_typed_in_a_row_in_any_mix_of_units() {
    let read = marks("0.05 0,10; 0.002 in +2 thou, 0.15mm").expect("leaves");
    assert_eq!(read, "0.05 mm | 0,10 mm | 0.002 in | 2 thou | 0.15 mm", "units and commas");
    assert_eq!(marks("  ").expect("nothing typed is no leaf"), "", "nothing");
    let say = |text: &str| marks(text).expect_err(text).to_string();
    assert_eq!(say("0.05 0"), "A leaf is thicker than 0. Type the thickness marked on it.");
    assert_eq!(say("0.05 furlong"), "“furlong” is no number. Use digits with one point or comma.");
}

#[test]
fn a_stack_reads_back_as_it_is_shown() {
    let stack = Stack::read("0.05 mm + 0.002 in", Unit::Thou).expect("a stack");
    assert_eq!(stack.to_string(), "0.05 mm + 0.002 in", "as shown");
    let again = Stack::read(&stack.to_string(), Unit::Millimetre).expect("a stack");
    assert_eq!(again, stack, "read back");
    let say = |text: &str| Stack::read(text, Unit::Millimetre).expect_err(text).to_string();
    assert_eq!(say(""), "No leaf named. Say which leaf or leaves were tried.");
    assert_eq!(
        say("1 + 0.6"),
        "That is 1.6 mm of leaves; at most 1.5 mm is used in a gap. Take a thinner leaf, or one leaf less."
    );
}

#[test]
fn a_count_of_grinding_is_a_whole_number() {
    let read = |text| Ground::read(text, GroundBy::Seconds);
    assert_eq!(read(" 12 "), Ok(Some(Ground { count: 12, by: GroundBy::Seconds })));
    assert_eq!((read(""), read("0")), (Ok(None), Ok(None)), "nothing ground");
    for text in ["-3", "1.5", "abc", "10001", "99999999999"] {
        assert_eq!(
            read(text).expect_err(text).to_string(),
            "Grinding between two trials is counted from 1 to 10000. Leave it empty if nothing was ground.",
            "{text}"
        );
    }
}

#[test]
fn a_bracket_in_few_signs_never_claims_more_than_is_known() {
    let short = |low: Option<i64>, high: Option<i64>, unit| {
        Bracket { low: low.map(micrometres), high: high.map(micrometres) }.short(unit)
    };
    assert_eq!(short(None, None, Unit::Millimetre), "–");
    assert_eq!(short(Some(47), Some(83), Unit::Millimetre), "0.047…0.083 mm");
    assert_eq!(short(Some(47), Some(83), Unit::Thou), "1.85…3.27 thou", "outward");
    assert_eq!(short(Some(47), None, Unit::Millimetre), "≥0.047 mm");
    assert_eq!(short(None, Some(33), Unit::Millimetre), "<0.033 mm");
    assert_eq!(short(None, Some(0), Unit::Millimetre), "<0");
}

#[test]
fn amounts_stand_on_the_rule_where_a_reading_would() {
    let limit = limit(Some("0.04"), Some("0.08"));
    let place = |count| place_on_rule(&limit, Unit::Millimetre, micrometres(count));
    for (count, want) in [(40, 0.25), (60, 0.5), (80, 0.75), (0, 0.0), (500, 1.0)] {
        assert!((place(count) - want).abs() < 1e-9, "{count} µm stands at {}", place(count));
    }
}

#[test]
fn pieces_on_a_rotor_are_its_places() {
    assert_eq!(places(Part::ApexSeal, 2), ["1-A", "1-B", "1-C", "2-A", "2-B", "2-C"]);
    assert_eq!(places(Part::CornerSeal, 1).len(), 6, "corner seals of a rotor");
    assert_eq!(places(Part::Rotor, 2), ["1", "2"]);
    assert_eq!(places(Part::RotorHousing, 2), ["rotor-1", "rotor-2"]);
    assert_eq!(places(Part::SideHousing, 2), ["front", "intermediate-1", "rear"]);
    assert!(places(Part::Assembly, 2).is_empty(), "there is one engine");
}

#[test]
fn a_spread_is_one_reading_for_a_set() {
    let sheet = Sheet::starter();
    let of_a_set: Vec<&str> =
        sheet.rows().iter().filter(|row| row.is_of_a_set()).map(|row| row.id.as_str()).collect();
    assert!(of_a_set.contains(&"corner-seal-spring-spread"), "{of_a_set:?}");
    assert!(!of_a_set.contains(&"apex-seal-warp"), "{of_a_set:?}");
}

#[test]
fn a_set_is_told_with_its_spread_and_its_worst() {
    let gauge = Gauge::usual(GaugeKind::OutsideMicrometer);
    let say = |set: &[(&str, &str)]| {
        let read: Vec<(Place, Reading)> = set
            .iter()
            .map(|(place, text)| {
                let reading = Reading::read(text, Unit::Millimetre, &Bounds::SIZE);
                (Place::read(place).expect("a place"), reading.expect("a size"))
            })
            .collect();
        SetCheck::of(&read, &limit(Some("7.00"), None), &gauge)
            .expect("a set")
            .words(Unit::Millimetre)
    };
    assert_eq!(say(&[("1-A", "7.90")]), "1 measured: 1 meet.");
    assert_eq!(
        say(&[("1-A", "7.90"), ("1-B", "6.90"), ("1-C", "7.000")]),
        "3 measured: 1 meet, 1 does not, 1 too close to call. Spread 1 mm. Nearest to a limit or farthest past it: 1-B, does not meet."
    );
    assert_eq!(
        say(&[("1-A", "7.90"), ("1-B", "7.80")]),
        "2 measured: 2 meet. Spread 0.1 mm. Nearest to a limit or farthest past it: 1-B."
    );
}

#[test]
fn shared_out_pieces_keep_the_numbers_written_on_them() {
    let heights = [8_000, 7_900, 7_990, 7_910].map(micrometres);
    let found = match_by_height(&heights, 2).expect("sets");
    assert_eq!(
        found.words(&[1, 2, 5, 6]),
        ["Rotor 1: pieces 2 and 6.", "Rotor 2: pieces 5 and 1."]
    );
    assert_eq!(found.spread_words(false, Unit::Millimetre), "Within a set at most 0.01 mm apart.");
    let alone = match_by_weight(&[micrometres(5), micrometres(7)], 2).expect("sets");
    assert_eq!(alone.words(&[1, 2]), ["Rotor 1: piece 1.", "Rotor 2: piece 2."]);
    assert_eq!(
        alone.spread_words(true, Unit::Micrometre),
        "The heaviest set less the lightest: 2 µm."
    );
}
