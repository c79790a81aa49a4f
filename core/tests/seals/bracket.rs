//! Brackets and contradictions, against an independent brute force over gaps and true thicknesses.

use crate::bench::{limit, micrometres, strokes, trial};
use pitleaf_core::quantity::{Bounds, Reading, Unit};
use pitleaf_core::seals::{Answer, Bracket, History, Outcome, Trial, sentence};
use proptest::prelude::*;

fn history(trials: &[Trial]) -> History {
    History::of(trials).unwrap()
}

#[test]
fn one_leaf_goes_and_the_next_does_not() {
    let now =
        history(&[trial(Outcome::Goes, &[50], 3, None), trial(Outcome::DoesNotGo, &[80], 3, None)])
            .now();
    assert_eq!(now, Bracket { low: Some(micrometres(47)), high: Some(micrometres(83)) });
    assert_eq!(now.width().unwrap().value(Unit::Micrometre), 36.0);
    assert_eq!(now.words(Unit::Millimetre), "at least 0.047 mm and under 0.083 mm");
    // Inward it would claim 0.00185 to 0.00327 in; outward it claims no more than is known.
    assert_eq!(now.words(Unit::Inch), "at least 0.00185 in and under 0.00327 in");
}

#[test]
fn a_gap_equal_to_an_edge_keeps_it() {
    let exact = |goes: i64, refused: i64| {
        history(&[
            trial(Outcome::Goes, &[goes], 0, None),
            trial(Outcome::DoesNotGo, &[refused], 0, None),
        ])
        .now()
    };
    let limit = limit(Some("0.05"), Some("0.10"));
    assert_eq!(exact(50, 100).against(&limit).answer(), Answer::Meets);
    assert_eq!(exact(49, 100).against(&limit).answer(), Answer::CannotSay);
    assert_eq!(exact(50, 101).against(&limit).answer(), Answer::CannotSay);
    assert_eq!(exact(20, 50).against(&limit).answer(), Answer::TooTight);
    assert_eq!(
        exact(100, 120).against(&limit).answer(),
        Answer::CannotSay,
        "it may be 0.10 itself"
    );
    assert_eq!(exact(101, 120).against(&limit).answer(), Answer::TooWide);
    // 2 thou is 0.0508 mm: the leaf's own unit does not matter.
    let inch = crate::bench::limit(Some("0.0020 in"), None);
    let low =
        Bracket { low: Some(pitleaf_core::quantity::Amount::whole(2, Unit::Thou)), high: None };
    assert_eq!(low.against(&inch).answer(), Answer::Meets);
}

#[test]
fn the_answer_is_a_sentence_with_what_is_certain() {
    let limit = limit(Some("0.05"), Some("0.10"));
    let say = |low: Option<i64>, high: Option<i64>| {
        let bracket = Bracket { low: low.map(micrometres), high: high.map(micrometres) };
        sentence(bracket, &limit, Unit::Millimetre)
    };
    assert_eq!(
        say(Some(57), Some(93)),
        "Meets the limit: the gap is at least 0.057 mm and under 0.093 mm."
    );
    assert_eq!(
        say(Some(0), Some(33)),
        "Too tight: the gap is at least 0.000 mm and under 0.033 mm; at least 0.05 mm is wanted."
    );
    assert_eq!(say(None, Some(0)), "Too tight: the gap is below zero; at least 0.05 mm is wanted.");
    assert_eq!(
        say(Some(107), None),
        "Too wide: the gap is at least 0.107 mm; at most 0.10 mm is allowed."
    );
    assert_eq!(
        say(Some(57), Some(103)),
        "Can’t say yet: the gap is at least 0.057 mm and under 0.103 mm. It is wide enough, but may be over 0.10 mm."
    );
    assert_eq!(
        say(Some(47), Some(83)),
        "Can’t say yet: the gap is at least 0.047 mm and under 0.083 mm. It is not too wide, but may be under 0.05 mm."
    );
    assert_eq!(
        say(Some(47), Some(103)),
        "Can’t say yet: the gap is at least 0.047 mm and under 0.103 mm. It may be under 0.05 mm or over 0.10 mm."
    );
    assert_eq!(
        say(None, None),
        "Can’t say yet: the gap is not known at all. It may be under 0.05 mm or over 0.10 mm."
    );
    let inches = sentence(Bracket { low: None, high: Some(micrometres(33)) }, &limit, Unit::Inch);
    assert_eq!(inches, "Too tight: the gap is under 0.00130 in; at least 0.00197 in is wanted.");
}

#[test]
fn a_typed_gap_below_zero_is_refused_and_the_text_stays() {
    let read = |text| Reading::read(text, Unit::Millimetre, &Bounds::GAP).unwrap_err().to_string();
    assert_eq!(
        read("-0.05"),
        "A gap lies between 0 and 25 mm. Check the decimal point and the unit."
    );
}

#[track_caller]
fn contradicts(trials: &[Trial], sentence: &str) {
    assert_eq!(History::of(trials).unwrap_err().to_string(), sentence);
}

#[test]
fn a_contradiction_is_named() {
    let inch = |outcome, text: &str, ground| {
        let tolerance = crate::bench::written("0.003");
        Trial::with_leaves(outcome, crate::bench::stack(&[text]), tolerance, ground).unwrap()
    };
    contradicts(
        &[inch(Outcome::Goes, "0.0020 in", None), inch(Outcome::DoesNotGo, "0.0015 in", None)],
        "0.0020 in went, but 0.0015 in did not: one of the two is wrong.",
    );
    contradicts(
        &[inch(Outcome::DoesNotGo, "0.0015 in", None), inch(Outcome::Goes, "0.0020 in", None)],
        "0.0020 in went, but 0.0015 in did not: one of the two is wrong.",
    );
    contradicts(
        &[
            inch(Outcome::Goes, "0.0020 in", None),
            inch(Outcome::DoesNotGo, "0.0015 in", strokes(2)),
        ],
        "0.0020 in went, but after grinding 0.0015 in did not: one of the two is wrong, for grinding only widens a gap.",
    );
    contradicts(
        &[inch(Outcome::Goes, "0.0020 in", None), trial(Outcome::WillNotEnter, &[], 3, None)],
        "0.0020 in went, but the seal would not enter its slot: one of the two is wrong.",
    );
    contradicts(
        &[
            trial(Outcome::FreeNoLeaf, &[30], 3, None),
            trial(Outcome::MovesCornerSeal, &[], 3, None),
        ],
        "The seal was free in its slot, but the seal moved the corner seal: one of the two is wrong.",
    );
    contradicts(
        &[inch(Outcome::Goes, "0.0020 in", None), trial(Outcome::FreeNoLeaf, &[30], 3, None)],
        "0.0020 in went, but 30 µm did not, as the thinnest leaf: one of the two is wrong.",
    );
    let places = History::of(&[
        trial(Outcome::Goes, &[20], 3, None),
        trial(Outcome::DoesNotGo, &[90], 3, None),
        trial(Outcome::DoesNotGo, &[10], 3, None),
    ])
    .unwrap_err();
    assert_eq!((places.wide, places.narrow), (0, 2), "the two trials are pointed at");
}

#[test]
fn refused_before_grinding_and_in_after_it_is_no_contradiction() {
    let grown = history(&[
        trial(Outcome::DoesNotGo, &[30], 3, None),
        trial(Outcome::Goes, &[60], 3, strokes(4)),
    ]);
    assert_eq!(grown.now(), Bracket { low: Some(micrometres(57)), high: None });
}

#[test]
fn a_leaf_in_both_stacks_lends_no_doubt_to_the_difference() {
    // The same leaf can't both go and not go, however far off its mark it is.
    assert!(
        History::of(&[
            trial(Outcome::Goes, &[50], 3, None),
            trial(Outcome::DoesNotGo, &[50], 3, None)
        ])
        .is_err()
    );
    // 50 + 30 goes, 50 + 23 does not: 30 ± 3 against 23 ± 3 can't be; 30 against 25 can.
    let pair = |other: i64| {
        History::of(&[
            trial(Outcome::Goes, &[50, 30], 3, None),
            trial(Outcome::DoesNotGo, &[50, other], 3, None),
        ])
    };
    assert!(pair(23).is_err(), "7 µm apart, 6 µm of doubt");
    assert!(pair(25).is_ok(), "5 µm apart, 6 µm of doubt");
}

const MARKS: [i64; 4] = [10, 14, 20, 31];
const TOLERANCE: i64 = 2;

/// Trials of up to two of four leaves, some after grinding.
fn any_trials() -> impl Strategy<Value = Vec<(bool, Vec<usize>, bool)>> {
    let leaves = proptest::sample::subsequence(vec![0_usize, 1, 2, 3], 1..=2);
    proptest::collection::vec((any::<bool>(), leaves, proptest::bool::weighted(0.25)), 1..6)
}

fn as_trials(plain: &[(bool, Vec<usize>, bool)]) -> Vec<Trial> {
    plain
        .iter()
        .map(|(goes, leaves, ground)| {
            let marks: Vec<i64> = leaves.iter().map(|&leaf| MARKS[leaf]).collect();
            let outcome = if *goes { Outcome::Goes } else { Outcome::DoesNotGo };
            trial(outcome, &marks, TOLERANCE, ground.then(|| strokes(3)).flatten())
        })
        .collect()
}

/// Every gap the seal can have at the end, over all true thicknesses and all growths; whole micrometres.
fn possible_gaps(plain: &[(bool, Vec<usize>, bool)]) -> Vec<i64> {
    const WIDEST: i64 = 80;
    let mut possible = [false; 81];
    let offs = || -TOLERANCE..=TOLERANCE;
    for a in offs() {
        for b in offs() {
            for c in offs() {
                for d in offs() {
                    let thick = [MARKS[0] + a, MARKS[1] + b, MARKS[2] + c, MARKS[3] + d];
                    // The range of the gap, state by state: grinding lifts its upper end away.
                    let (mut low, mut high) = (0, WIDEST);
                    let mut alive = true;
                    for (goes, leaves, ground) in plain {
                        if *ground {
                            high = WIDEST;
                        }
                        let stack: i64 = leaves.iter().map(|&leaf| thick[leaf]).sum();
                        if *goes {
                            low = low.max(stack)
                        } else {
                            high = high.min(stack - 1)
                        }
                        alive &= low <= high;
                    }
                    if alive {
                        (low..=high).for_each(|gap| possible[usize::try_from(gap).unwrap()] = true);
                    }
                }
            }
        }
    }
    (0..=WIDEST).filter(|&gap| possible[usize::try_from(gap).unwrap()]).collect()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    #[test]
    fn every_possible_gap_lies_in_the_bracket_and_a_contradiction_leaves_none(plain in any_trials()) {
        let possible = possible_gaps(&plain);
        match History::of(&as_trials(&plain)) {
            Err(fault) => prop_assert!(possible.is_empty(), "{fault} yet {possible:?}"),
            Ok(history) => {
                let now = history.now();
                prop_assert!(!now.is_empty(), "an empty bracket is a contradiction");
                for gap in possible {
                    prop_assert!(now.holds(micrometres(gap)), "{gap} µm is outside {now:?}");
                }
            }
        }
    }

    #[test]
    fn with_each_leaf_tried_once_the_bracket_is_as_narrow_as_can_be(
        goes in proptest::array::uniform4(any::<bool>()),
    ) {
        let plain: Vec<_> = (0..4).map(|leaf| (goes[leaf], vec![leaf], false)).collect();
        let possible = possible_gaps(&plain);
        let Ok(history) = History::of(&as_trials(&plain)) else {
            prop_assert!(possible.is_empty(), "called a contradiction, yet {possible:?}");
            return Ok(());
        };
        let ends = (possible.first().copied(), possible.last().copied());
        let low = history.now().low.unwrap_or(micrometres(0));
        prop_assert_eq!(ends.0.map(micrometres), Some(low));
        if let Some(high) = history.now().high {
            prop_assert_eq!(ends.1.map(|gap| micrometres(gap + 1)), Some(high));
        }
    }

    #[test]
    fn the_order_of_trials_between_grindings_does_not_matter(plain in any_trials(), seed in any::<u64>()) {
        let still: Vec<_> = plain.iter().map(|(a, b, _)| (*a, b.clone(), false)).collect();
        let mut turned = still.clone();
        let by = usize::try_from(seed % still.len() as u64).unwrap();
        turned.rotate_left(by);
        let one = History::of(&as_trials(&still)).map(|history| history.now()).ok();
        let other = History::of(&as_trials(&turned)).map(|history| history.now()).ok();
        prop_assert_eq!(one, other);
    }
}
