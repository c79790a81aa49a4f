//! Leaves, stacks and sets.

use crate::bench::{micrometres, set_of_micrometres, stack, strokes, trial, written};
use pitleaf_core::kept;
use pitleaf_core::quantity::Unit;
use pitleaf_core::seals::{
    Leaf, LeafFault, LeafSet, Outcome, Stack, Trial, USUAL_SETS, thickest, usual_tolerance,
};

fn leaf(text: &str) -> Leaf {
    Leaf::read(text, Unit::Millimetre).unwrap()
}

#[track_caller]
fn refuses<T: std::fmt::Debug, E: std::fmt::Display>(result: Result<T, E>, sentence: &str) {
    assert_eq!(result.map_err(|fault| fault.to_string()).unwrap_err(), sentence);
}

#[test]
fn two_thou_and_its_millimetres_are_the_same_leaf() {
    assert_eq!(leaf("2 thou").thickness(), leaf("0.0508").thickness());
    assert_eq!(leaf("0.0020 in").to_string(), "0.0020 in");
}

#[test]
fn a_leaf_that_is_none_is_refused_with_a_sentence() {
    let none = "A leaf is thicker than 0. Type the thickness marked on it.";
    refuses(Leaf::read("0", Unit::Millimetre), none);
    refuses(Leaf::read("-0.05", Unit::Millimetre), none);
    refuses(
        Leaf::read("1.6", Unit::Millimetre),
        "That is 1.6 mm of leaves; at most 1.5 mm is used in a gap. Take a thinner leaf, or one leaf less.",
    );
    refuses(
        Leaf::read("60 thou", Unit::Millimetre),
        "That is 60 thou of leaves; at most 59.0551 thou is used in a gap. Take a thinner leaf, or one leaf less.",
    );
    refuses(
        Leaf::read("abc", Unit::Millimetre),
        "“abc” is no number. Use digits with one point or comma.",
    );
    refuses(
        Leaf::read("0.05 g", Unit::Millimetre),
        "g measures mass, but length is measured here. Change the unit.",
    );
    assert_eq!(leaf("1.5").thickness(), thickest(), "the edge itself is used");
}

#[test]
fn a_stack_adds_up_exactly_and_keeps_its_bounds() {
    assert_eq!(stack(&["2 thou", "0.05", "0.0015 in"]).thickness(), leaf("0.1389").thickness());
    assert_eq!(stack(&["0.0020 in", "0.05"]).to_string(), "0.0020 in + 0.05 mm");
    refuses(Stack::of(vec![]), "No leaf named. Say which leaf or leaves were tried.");
    refuses(
        Stack::of(["0.05", "0.1", "0.15", "0.2"].map(leaf).to_vec()),
        "More than three leaves. Take a thicker leaf and stack fewer.",
    );
    refuses(
        Stack::of(vec![leaf("2 thou"), leaf("0.0508")]),
        "0.0508 mm is named twice. Leave one of the two out.",
    );
    refuses(
        Stack::of(vec![leaf("0.7"), leaf("0.8"), leaf("0.05")]),
        "That is 1.55 mm of leaves; at most 1.5 mm is used in a gap. Take a thinner leaf, or one leaf less.",
    );
    assert_eq!(stack(&["0.7", "0.8"]).thickness(), thickest(), "the edge itself is used");
}

#[test]
fn a_set_is_sorted_and_mixes_units() {
    let set =
        LeafSet::of("mine", vec![leaf("0.1"), leaf("0.0015 in"), leaf("0.05")], written("0.003"))
            .unwrap();
    let names: Vec<String> = set.leaves().iter().map(ToString::to_string).collect();
    assert_eq!(names, ["0.0015 in", "0.05 mm", "0.1 mm"]);
}

#[test]
fn what_is_wrong_with_a_set_is_said() {
    let of = |texts: &[&str], tolerance: &str| {
        LeafSet::of("mine", texts.iter().map(|text| leaf(text)).collect(), written(tolerance))
    };
    refuses(of(&[], "0"), "No leaf named. Say which leaf or leaves were tried.");
    refuses(of(&["0.05", "0.050"], "0"), "0.050 mm is named twice. Leave one of the two out.");
    let tolerance = "A leaf’s tolerance lies between 0 and 0.02 mm. Check the unit.";
    refuses(of(&["0.05"], "0.021"), tolerance);
    refuses(of(&["0.05"], "-0.001"), tolerance);
    refuses(
        of(&["0.02"], "0.02"),
        "0.02 mm is no thicker than the tolerance, so it proves nothing. Leave it out, or type a smaller tolerance.",
    );
    let many: Vec<Leaf> = (1..=61).map(|n| leaf(&format!("{n} µm"))).collect();
    refuses(
        LeafSet::of("mine", many, written("0")),
        "A set holds at most 60 leaves. Leave out those never used.",
    );
}

#[test]
fn the_usual_sets_are_those_of_their_series() {
    // DIN 2275 series, from memory, to be confirmed: 0.05 0.10 0.15 0.20 0.25 0.30 0.40 0.50 (8 leaves);
    // 0.05 to 1.00 by 0.05 (20 leaves).
    let marks = |name: &str| -> Vec<i64> {
        let row = USUAL_SETS.iter().find(|row| row.name == name).unwrap();
        let set = row.set().unwrap();
        let whole = |leaf: &Leaf| (1..2_000).find(|&n| leaf.thickness() == micrometres(n)).unwrap();
        set.leaves().iter().map(whole).collect()
    };
    assert_eq!(marks("Metric, 8 leaves"), [50, 100, 150, 200, 250, 300, 400, 500]);
    assert_eq!(marks("Metric, 20 leaves"), (1..=20).map(|n| n * 50).collect::<Vec<_>>());
    for row in USUAL_SETS {
        let set = row.set().unwrap();
        assert_eq!(set.leaves().len(), row.marks.len(), "{}", row.name);
        assert!(row.source.contains("from memory"), "{} claims more than is known", row.name);
    }
    assert_eq!(usual_tolerance().unwrap().amount(), micrometres(3));
}

#[test]
fn a_set_is_kept_in_the_book_exactly_and_readably() {
    let set = LeafSet::of("mine", vec![leaf("0.0020 in"), leaf("0.10")], written("3 µm")).unwrap();
    let json = kept::write(&set);
    assert_eq!(json, r#"{"name":"mine","leaves":["0.0020 in","0.10 mm"],"tolerance":"3 µm"}"#);
    assert_eq!(kept::read::<LeafSet>(&json).unwrap(), set);
    let broken = json.replace("0.10 mm", "0 mm");
    let fault = kept::read::<LeafSet>(&broken).unwrap_err().to_string();
    assert!(fault.starts_with("A leaf is thicker than 0."), "{fault}");
    let unitless = json.replace("0.10 mm", "0.10");
    let fault = kept::read::<LeafSet>(&unitless).unwrap_err().to_string();
    assert!(fault.starts_with("a length without its unit"), "{fault}");
}

#[test]
fn a_trial_says_what_it_takes() {
    let one = || stack(&["0.05"]);
    refuses(
        Trial::without_leaves(Outcome::Goes, None),
        "No leaf named. Say which leaf or leaves were tried.",
    );
    refuses(
        Trial::with_leaves(Outcome::WillNotEnter, one(), written("0"), None),
        "“will not enter the slot” is said of the seal alone. Take the leaf away, or say whether it goes.",
    );
    refuses(
        Trial::with_leaves(Outcome::FreeNoLeaf, stack(&["0.05", "0.1"]), written("0"), None),
        "“No leaf enters” is said of the thinnest leaf. Name that one alone.",
    );
    let count = "Grinding between two trials is counted from 1 to 10000. Leave it empty if nothing was ground.";
    refuses(Trial::without_leaves(Outcome::WillNotEnter, strokes(0)), count);
    refuses(Trial::without_leaves(Outcome::WillNotEnter, strokes(10_001)), count);
    refuses(
        Trial::with_leaves(Outcome::Goes, stack(&["0.01"]), written("0.01"), None),
        "A leaf may be off by 0.01 mm, so one of 0.01 mm proves nothing. Check the unit, or try a thicker leaf.",
    );
    assert_eq!(LeafFault::NoLeaf, Stack::of(vec![]).unwrap_err());
}

#[test]
fn a_trial_bounds_the_gap_by_every_leaf_s_doubt() {
    let two = trial(Outcome::Goes, &[50, 30], 3, None);
    assert_eq!((two.least_gap(), two.gap_is_under()), (Some(micrometres(74)), None));
    let refused = trial(Outcome::DoesNotGo, &[50, 30], 3, None);
    assert_eq!((refused.least_gap(), refused.gap_is_under()), (None, Some(micrometres(86))));
    let free = trial(Outcome::FreeNoLeaf, &[30], 3, None);
    assert_eq!(
        (free.least_gap(), free.gap_is_under()),
        (Some(micrometres(0)), Some(micrometres(33)))
    );
    for outcome in [Outcome::WillNotEnter, Outcome::MovesCornerSeal] {
        let alone = trial(outcome, &[], 3, None);
        assert_eq!((alone.least_gap(), alone.gap_is_under()), (None, Some(micrometres(0))));
    }
    assert_eq!(set_of_micrometres(&[50], 3).leaves().len(), 1);
}

/// “Does not go” of such a leaf would send a good seal to the grindstone.
#[test]
fn a_leaf_thinner_than_any_is_asked_about_and_read_in_a_likelier_unit() {
    use Unit::{Inch, Millimetre, Thou};
    let doubt = |text: &str, unit: Unit| Stack::read(text, unit).expect("a stack").doubt();
    assert_eq!(
        doubt("0.25", Thou).as_deref(),
        Some("0.25 thou is thinner than 0.01 mm: no leaf is made so thin. Is thou the right unit?"),
        "a quarter of a millimetre, typed as thou"
    );
    for (text, unit) in [("0.01", Millimetre), ("0.4", Thou), ("0.0004", Inch)] {
        assert_eq!(doubt(text, unit), None, "{text} {}", unit.symbol());
    }
    for (text, unit, likely) in [
        ("0.25", Thou, &[Millimetre][..]),
        ("0.0020", Thou, &[Inch]),
        ("2", Millimetre, &[Thou]),
        ("2", Inch, &[Thou]),
        ("0.05 + 0.1", Thou, &[Millimetre]),
        ("0.25 thou", Thou, &[]),
        ("0.002\"", Thou, &[]),
        ("abc", Thou, &[]),
    ] {
        assert_eq!(Stack::likely_units(text, unit), likely, "{text} under {}", unit.symbol());
    }
}

#[test]
fn a_leaf_thicker_than_any_gap_is_asked_about() {
    use Unit::{Inch, Millimetre, Thou};
    let doubt = |text: &str, unit: Unit| Stack::read(text, unit).expect("a stack").doubt();
    for (text, unit) in
        [("1.00", Millimetre), ("40", Thou), ("0.04", Inch), ("0.9 + 0.1", Millimetre)]
    {
        assert_eq!(doubt(text, unit), None, "{text} {}", unit.symbol());
    }
    assert_eq!(
        doubt("1.5", Millimetre).as_deref(),
        Some(
            "1.5 mm is thicker than 1.016 mm (0.04 in): more than any such gap. Is mm the right unit?"
        ),
        "1½ thou, typed as millimetres"
    );
    assert!(doubt("0.8 + 0.25", Millimetre).is_some(), "a stack counts as one");
    assert!(doubt("41", Thou).is_some(), "a little over");
}
