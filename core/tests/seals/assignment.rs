//! Which seal goes where, against every way there is.

use crate::bench::{limit, micrometres};
use pitleaf_core::quantity::{Span, Unit};
use pitleaf_core::seals::{AssignFault, Assignment, assign};
use proptest::prelude::*;

const LOWER: i64 = 50;
const UPPER: i64 = 100;

fn ours(seals: &[i64], slots: &[i64], aim: i64) -> Assignment {
    let lengths = |list: &[i64]| list.iter().map(|&n| micrometres(n)).collect::<Vec<_>>();
    let limit = limit(Some("0.05"), Some("0.10"));
    assign(&lengths(seals), &lengths(slots), &limit, micrometres(aim)).unwrap()
}

/// (slots without a fitting seal beyond what must be, metal removed, sum of squares from the aim).
type Score = (i64, i64, i64);

fn pair(seal: i64, slot: i64, aim: i64) -> Score {
    let gap = slot - seal;
    if gap > UPPER {
        (1, 0, 0)
    } else if gap < LOWER {
        (0, aim - gap, 0)
    } else {
        (0, 0, (gap - aim) * (gap - aim))
    }
}

/// The best score of all ways to pair as many as there are of the fewer.
fn brute(seals: &[i64], slots: &[i64], aim: i64) -> Score {
    fn go(rows: &[i64], columns: &mut Vec<i64>, cost: &dyn Fn(i64, i64) -> Score) -> Score {
        let Some((&row, rest)) = rows.split_first() else { return (0, 0, 0) };
        (0..columns.len())
            .map(|at| {
                let column = columns.remove(at);
                let (a, b, c) = go(rest, columns, cost);
                columns.insert(at, column);
                let own = cost(row, column);
                (a + own.0, b + own.1, c + own.2)
            })
            .min()
            .unwrap()
    }
    if seals.len() <= slots.len() {
        go(seals, &mut slots.to_vec(), &|seal, slot| pair(seal, slot, aim))
    } else {
        go(slots, &mut seals.to_vec(), &|slot, seal| pair(seal, slot, aim))
    }
}

fn score(seals: &[i64], slots: &[i64], aim: i64, found: &Assignment) -> Score {
    let mut sum = (i64::try_from(seals.len().min(slots.len()) - found.placed.len()).unwrap(), 0, 0);
    for placed in &found.placed {
        let own = pair(seals[placed.seal], slots[placed.slot], aim);
        assert_eq!(own.0, 0, "a seal that can't fit was placed");
        assert_eq!(placed.as_it_is, micrometres(slots[placed.slot] - seals[placed.seal]));
        assert_eq!(placed.remove, Span::whole(own.1, Unit::Micrometre));
        assert_eq!(placed.gap, placed.as_it_is.plus(placed.remove), "the gap after grinding");
        sum = (sum.0, sum.1 + own.1, sum.2 + own.2);
    }
    assert_eq!(found.removed, Span::whole(sum.1, Unit::Micrometre));
    sum
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    #[test]
    fn no_way_of_placing_them_is_better(
        seals in proptest::collection::vec(41_900_i64..42_120, 1..=7),
        slots in proptest::collection::vec(42_000_i64..42_150, 1..=7),
        aim in LOWER..=UPPER,
    ) {
        let found = ours(&seals, &slots, aim);
        prop_assert_eq!(score(&seals, &slots, aim, &found), brute(&seals, &slots, aim));
        let mut seen: Vec<usize> =
            found.placed.iter().map(|placed| placed.seal).chain(found.unused.clone()).collect();
        seen.sort_unstable();
        prop_assert_eq!(seen, (0..seals.len()).collect::<Vec<_>>(), "each seal once");
        let mut seen: Vec<usize> =
            found.placed.iter().map(|placed| placed.slot).collect();
        seen.extend(found.empty.iter().map(|empty| empty.slot));
        seen.sort_unstable();
        prop_assert_eq!(seen, (0..slots.len()).collect::<Vec<_>>(), "each slot once");
    }
}

#[test]
fn the_three_aims_come_in_their_order() {
    // Fitting both slots costs metal, but beats leaving one empty and the other unground.
    let found = ours(&[42_000, 42_060], &[42_075, 42_130], 75);
    assert_eq!(
        found.placed.iter().map(|placed| (placed.seal, placed.slot)).collect::<Vec<_>>(),
        [(0, 0), (1, 1)]
    );
    assert!(found.empty.is_empty());
    // Gaps 60 and 90, or 75 and 75: as many fit and no metal goes, so the even one.
    let found = ours(&[42_000, 42_015], &[42_075, 42_090], 75);
    assert_eq!(
        found.placed.iter().map(|placed| placed.gap).collect::<Vec<_>>(),
        [micrometres(75); 2]
    );
}

#[test]
fn what_can_t_be_made_to_fit_is_said() {
    let found = ours(&[42_000, 41_800, 42_100], &[42_075, 42_060], 75);
    let words = |placed: usize, number, doubt| {
        let doubt = Span::whole(doubt, Unit::Micrometre);
        found.placed[placed].words(number, Unit::Millimetre, doubt)
    };
    assert_eq!(
        words(0, 3, 30),
        "Seal 3: grind off 0.070 mm at most, then by leaf to a gap of 0.075 mm."
    );
    assert_eq!(
        words(0, 3, 100),
        "Seal 3: grind by leaf alone, to a gap of 0.075 mm: what is to come off is less than the doubt of the lengths."
    );
    assert_eq!(
        words(1, 1, 30),
        "Seal 1: fits as it is, with a gap of about 0.060 mm. Prove it by leaf."
    );
    assert_eq!(found.unused, [1]);
    let found = ours(&[41_800, 42_000], &[42_075, 42_200, 42_080], 75);
    let words: Vec<(usize, String)> =
        found.empty.iter().map(|empty| (empty.slot, empty.words(Unit::Millimetre))).collect();
    assert_eq!(words, [
        (1, "No seal fits this slot: the longest leaves a gap of 0.200 mm, and it can’t be made longer. Take a fresh one.".to_owned()),
        (2, "No seal is left for this slot: those that would fit are needed elsewhere. Take a fresh one.".to_owned()),
    ]);
}

#[test]
fn what_is_wrong_with_the_lists_is_said() {
    let both = limit(Some("0.05"), Some("0.10"));
    let (seal, slot) = ([micrometres(42_000)], [micrometres(42_075)]);
    let aim = micrometres(75);
    let say = |fault: Result<Assignment, AssignFault>| fault.unwrap_err().to_string();
    assert_eq!(
        say(assign(&[], &slot, &both, aim)),
        "Nothing to place. Measure at least one seal and one slot."
    );
    assert_eq!(
        say(assign(&[micrometres(0)], &slot, &both, aim)),
        "A seal or a slot is longer than 0. Check the lengths."
    );
    let mass = pitleaf_core::quantity::Amount::whole(42, Unit::Gram);
    assert_eq!(
        say(assign(&[mass], &slot, &both, aim)),
        "A seal or a slot is longer than 0. Check the lengths."
    );
    assert_eq!(
        say(assign(&seal, &slot, &limit(None, Some("0.10")), aim)),
        "Placing seals takes a limit of length with a lower and an upper edge. Complete it on the sheet."
    );
    assert_eq!(
        say(assign(&seal, &slot, &both, micrometres(101))),
        "The gap aimed at lies outside the limit. Aim inside it."
    );
    let heavy = limit(None, None);
    let grams = |text| Some(pitleaf_core::limits::Edge::read(text, Unit::Gram).unwrap());
    let heavy = pitleaf_core::limits::Limit { lower: grams("1"), upper: grams("2"), ..heavy };
    assert_eq!(
        say(assign(&seal, &slot, &heavy, aim)),
        "Placing seals takes a limit of length with a lower and an upper edge. Complete it on the sheet."
    );
    let far = pitleaf_core::quantity::Amount::whole(i64::MAX, Unit::Metre);
    let wide = limit(Some("0"), Some("100000"));
    assert_eq!(
        say(assign(&[far, micrometres(1)], &[micrometres(1), micrometres(90_000_000)], &wide, aim)),
        "Too many or too large lengths to weigh exactly. Place them in smaller groups."
    );
}
