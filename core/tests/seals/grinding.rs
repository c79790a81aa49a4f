//! Removal and strokes, against an independent brute force over gaps and rates.

use crate::bench::{limit, micrometres, strokes, trial};
use pitleaf_core::quantity::{Amount, Span, Unit};
use pitleaf_core::seals::{
    Bracket, Ground, GroundBy, History, Outcome, Rate, Refusal, Removal, Stage, advise, removal,
    removal_for,
};
use proptest::prelude::*;

fn span(count: i64) -> Span {
    Span::whole(count, Unit::Micrometre)
}

fn bracket(low: Option<i64>, high: Option<i64>) -> Bracket {
    Bracket { low: low.map(micrometres), high: high.map(micrometres) }
}

fn stage(before: (i64, i64), after: (i64, i64), count: u32) -> Stage {
    Stage {
        before: bracket(Some(before.0), Some(before.1)),
        after: bracket(Some(after.0), Some(after.1)),
        ground: Ground { count, by: GroundBy::Strokes },
    }
}

#[test]
fn a_seal_is_taken_from_over_long_to_fitted() {
    let limit = limit(Some("0.05"), Some("0.10"));
    let mut trials = vec![trial(Outcome::WillNotEnter, &[], 0, None)];
    let advice = |trials: &[_]| {
        let history = History::of(trials).unwrap();
        advise(history.now(), removal(&history.stages(), GroundBy::Strokes), &limit)
    };
    assert_eq!(advice(&trials), Err(Refusal::RateUnknown));
    trials.push(trial(Outcome::FreeNoLeaf, &[10], 0, strokes(10)));
    // Where it began is not known, so how fast it went is not either.
    assert_eq!(advice(&trials), Err(Refusal::RateUnknown));
    trials.push(trial(Outcome::Goes, &[10], 0, strokes(4)));
    trials.push(trial(Outcome::DoesNotGo, &[20], 0, None));
    // From [0, 10) to [10, 20) in 4 strokes: under 5 µm a stroke, over 0. (100 − 20)/5 = 16.
    let ours = advice(&trials).unwrap();
    assert_eq!((ours.safe, ours.left_in_all.most), (16, None));
    // To the middle: (75 − 20)/5 = 11.
    assert_eq!(ours.now, 11);
    assert_eq!(ours.until_it_fits.fewest, 7, "20 + 6·5 = 50, but the gap is under 20");
    assert_eq!(ours.words(), "Take 11 strokes, then measure.");
    assert_eq!(
        ours.bounds(),
        "To fit it takes at least 7. At your fastest so far, more than 16 could make it too wide."
    );
    trials.push(trial(Outcome::Goes, &[40], 0, strokes(8)));
    trials.push(trial(Outcome::DoesNotGo, &[50], 0, None));
    let ours = advice(&trials).unwrap();
    // Second stage: from [10, 20) to [40, 50) in 8: 2.5 to 5 µm a stroke; the first has 0 to 5. Both: from
    // [0, 10) to [40, 50) in 12: under 50/12, and (100 − 50)·12/50 = 12; to the middle (75 − 50)·12/50 = 6.
    assert_eq!((ours.now, ours.safe, ours.left_in_all.most), (6, 12, None));
    trials.push(trial(Outcome::Goes, &[60], 0, strokes(5)));
    trials.push(trial(Outcome::DoesNotGo, &[90], 0, None));
    assert_eq!(advice(&trials), Err(Refusal::Fits));
}

#[test]
fn a_stage_bounds_its_rate_at_both_ends() {
    let known = removal(&[stage((0, 10), (30, 50), 4)], GroundBy::Strokes).unwrap();
    assert_eq!(known.slowest, Rate { removed: span(20), strokes: 4 });
    assert_eq!(known.fastest, Rate { removed: span(50), strokes: 4 });
    assert_eq!(known.words(Unit::Millimetre), "One stroke takes off 0.005 mm to 0.013 mm.");
}

#[test]
fn ways_of_counting_are_kept_apart() {
    let mut seconds = stage((0, 10), (30, 50), 4);
    seconds.ground.by = GroundBy::Seconds;
    let stages = [seconds, stage((0, 10), (10, 20), 4)];
    let fastest = |by| removal(&stages, by).map(|known| known.fastest);
    assert_eq!(fastest(GroundBy::Strokes), Some(Rate { removed: span(20), strokes: 4 }));
    assert_eq!(fastest(GroundBy::Seconds), Some(Rate { removed: span(50), strokes: 4 }));
    assert_eq!(fastest(GroundBy::Passes), None);
}

#[test]
fn a_fast_stage_with_an_open_end_still_counts_as_fast() {
    let open = Stage {
        before: bracket(None, Some(0)),
        after: bracket(Some(60), Some(70)),
        ground: Ground { count: 2, by: GroundBy::Strokes },
    };
    let stages = [stage((0, 10), (10, 20), 4), open];
    let known = removal(&stages, GroundBy::Strokes).unwrap();
    assert_eq!(known.fastest, Rate { removed: span(60), strokes: 2 });
}

#[test]
fn it_refuses_beyond_what_is_known() {
    let limit = limit(Some("0.05"), Some("0.10"));
    let known = removal(&[stage((0, 10), (10, 20), 4)], GroundBy::Strokes);
    let refuses = |now, rate, sentence: &str| {
        assert_eq!(advise(now, rate, &limit).unwrap_err().to_string(), sentence);
    };
    refuses(bracket(Some(50), Some(90)), known, "It fits: grind no more.");
    refuses(
        bracket(Some(101), None),
        known,
        "Too wide already, and a seal can’t be made longer. Take a fresh seal for this slot.",
    );
    refuses(
        bracket(Some(10), None),
        known,
        "Measure first: nothing was refused, so the gap may be any width. Try a thicker leaf.",
    );
    refuses(
        bracket(Some(10), Some(20)),
        None,
        "Take one or two, then measure. What one takes off is not known yet: count them, try the leaves before and after, and it is worked out.",
    );
    refuses(
        bracket(Some(40), Some(60)),
        None,
        "Measure first: it may fit as it is. What one takes off is not known yet.",
    );
    refuses(
        bracket(Some(10), Some(101)),
        known,
        "Measure first: the gap may be over the upper limit as it is.",
    );
    refuses(
        bracket(Some(40), Some(96)),
        known,
        "Measure closer first: at your fastest so far, even one could make it too wide.",
    );
    let no_upper = crate::bench::limit(Some("0.05"), None);
    assert_eq!(
        advise(bracket(Some(10), Some(20)), known, &no_upper).unwrap_err().to_string(),
        "No advice: this limit has no upper edge to stay inside of. Give it one on the sheet."
    );
}

#[test]
fn a_limit_of_another_dimension_is_no_limit_for_a_gap() {
    let known = removal(&[stage((0, 10), (10, 20), 4)], GroundBy::Strokes);
    let grams = pitleaf_core::limits::Edge::read("5", Unit::Gram).unwrap();
    let heavy =
        pitleaf_core::limits::Limit { upper: Some(grams.clone()), lower: Some(grams), wear: None };
    assert_eq!(advise(bracket(Some(10), Some(20)), known, &heavy), Err(Refusal::NoUpperLimit));
}

#[test]
fn a_fast_rate_that_just_reaches_the_edge_is_safe() {
    // The gap is under 20 and a stroke takes under 5: 16 strokes stay under 100.
    let known = removal(&[stage((0, 10), (10, 20), 4)], GroundBy::Strokes);
    let now = |upper| {
        advise(bracket(Some(10), Some(20)), known, &limit(Some("0.05"), Some(upper))).unwrap().safe
    };
    assert_eq!(now("0.1000"), 16);
    assert_eq!(now("0.0999"), 15);
}

#[test]
fn advice_grows_again_after_single_strokes() {
    // Leaves every 20 µm, a limit of 50 to 100 µm, and a hand that takes off 3 µm a stroke.
    let limit = limit(Some("0.05"), Some("0.10"));
    let (mut gap, mut trials, mut ground, mut advised) = (21_i64, Vec::new(), None, Vec::new());
    loop {
        let mark = gap / 20 * 20;
        trials.push(trial(Outcome::Goes, &[mark], 0, ground));
        trials.push(trial(Outcome::DoesNotGo, &[mark + 20], 0, None));
        let history = History::of(&trials).unwrap();
        let known = removal(&history.stages(), GroundBy::Strokes);
        // Until the rate is known a single stroke, and once more, as a careful hand does.
        let count = match advise(history.now(), known, &limit) {
            Ok(advice) => {
                advised.push(advice.safe);
                if advised.len() < 3 { 1 } else { u32::try_from(advice.safe).unwrap() }
            }
            Err(Refusal::RateUnknown) => 1,
            Err(refusal) => {
                assert_eq!(refusal, Refusal::Fits, "at {gap} µm");
                break;
            }
        };
        gap += 3 * i64::from(count);
        ground = strokes(count);
    }
    // In the bracket [20, 40) one stroke took under 20: 60/20. Two together under 20: 6, three: 9. Those 9
    // make 12 from [20, 40) to [40, 60), under 40 together: 40·12/40. Those end in [80, 100).
    assert_eq!(advised, [3, 6, 9, 12], "ended at {gap} µm");
}

#[test]
fn one_hasty_seal_does_not_hold_back_the_next() {
    // Of the first seal a single stroke is known, in a bracket of 40 µm: under 40 µm a stroke.
    let hasty = vec![stage((0, 40), (0, 40), 1)];
    let own = vec![stage((0, 20), (0, 20), 4)];
    let fastest = |own: &[Stage], seals: &[Vec<Stage>]| {
        removal_for(own, seals, GroundBy::Strokes).map(|known| known.fastest)
    };
    let one = |removed, strokes| Some(Rate { removed: span(removed), strokes });
    assert_eq!(fastest(&[], std::slice::from_ref(&hasty)), one(40, 1), "nothing else is known");
    assert_eq!(fastest(&own, &[hasty.clone(), own.clone()]), one(20, 4), "its own rate");
    assert_eq!(fastest(&[], &[hasty, own.clone()]), one(40, 1), "of both the faster");
    // But what is proved is proved: from under 10 to at least 60 in 2 strokes.
    let fast = vec![stage((0, 10), (60, 70), 2)];
    assert_eq!(fastest(&own, &[fast, own.clone()]), one(50, 2));
    assert_eq!(fastest(&[], &[]), None);
}

#[test]
fn a_run_that_averages_a_proved_fast_stage_away_says_nothing() {
    // One stroke from [0, 10) to [40, 50): over 30 µm. Then nine that stayed in [40, 50).
    let stages = [stage((0, 10), (40, 50), 1), stage((40, 50), (40, 50), 9)];
    let known = removal(&stages, GroundBy::Strokes).unwrap();
    assert_eq!(known.fastest, Rate { removed: span(50), strokes: 1 }, "not 50 in 10 strokes");
    assert_eq!(known.slowest, Rate { removed: span(0), strokes: 9 });
}

#[test]
fn a_run_ends_where_the_counting_changes() {
    let mut seconds = stage((0, 20), (0, 20), 5);
    seconds.ground.by = GroundBy::Seconds;
    let stages = [stage((0, 20), (0, 20), 1), seconds, stage((0, 20), (0, 20), 1)];
    let known = removal(&stages, GroundBy::Strokes).unwrap();
    assert_eq!(known.fastest, Rate { removed: span(20), strokes: 1 }, "never 2 strokes in a row");
}

/// Gaps of three states and the strokes between them.
fn three_states() -> impl Strategy<Value = ([(i64, i64); 3], [u32; 2])> {
    let state = (0_i64..14, 1_i64..8).prop_map(|(low, width)| (low, low + width));
    (proptest::array::uniform3(state), proptest::array::uniform2(1_u32..6))
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(500))]

    #[test]
    fn rates_are_those_of_every_way_the_gap_can_have_grown((states, counts) in three_states()) {
        let mut trials = Vec::new();
        for (place, (low, high)) in states.iter().enumerate() {
            let ground = (place > 0).then(|| strokes(counts[place - 1])).flatten();
            // A mark of 0 is no leaf: every gap here is lifted by 10 µm.
            trials.push(trial(Outcome::Goes, &[low + 10], 0, ground));
            trials.push(trial(Outcome::DoesNotGo, &[high + 10], 0, None));
        }
        let mut seen: Vec<[i64; 3]> = Vec::new();
        for a in states[0].0..states[0].1 {
            for b in states[1].0..states[1].1 {
                for c in states[2].0..states[2].1 {
                    if a <= b && b <= c { seen.push([a, b, c]); }
                }
            }
        }
        let Ok(history) = History::of(&trials) else {
            prop_assert!(seen.is_empty(), "called a contradiction, yet {:?}", seen);
            return Ok(());
        };
        prop_assert!(!seen.is_empty(), "no growth is possible, yet no contradiction");
        for (place, found) in history.stages().iter().enumerate() {
            let gone = |path: &[i64; 3]| path[place + 1] - path[place];
            let (least, most) = (seen.iter().map(gone).min().unwrap(), seen.iter().map(gone).max().unwrap());
            let known = removal(&[*found], GroundBy::Strokes).unwrap();
            // In whole micrometres an end that is not reached is missed by one.
            prop_assert_eq!(known.slowest.removed, span((least - 1).max(0)), "stage {}", place);
            prop_assert_eq!(known.fastest.removed, span(most + 1), "stage {}", place);
        }
        let both = removal(&history.stages(), GroundBy::Strokes).unwrap();
        let alone: Vec<Removal> =
            history.stages().iter().filter_map(|found| removal(&[*found], GroundBy::Strokes)).collect();
        for found in &alone {
            prop_assert!(!found.slowest.is_faster_than(both.fastest), "{:?} was faster", found);
            prop_assert!(!both.slowest.is_faster_than(found.slowest), "{:?} was slower", found);
        }
        prop_assert!(
            alone.iter().any(|found| !both.fastest.is_faster_than(found.fastest)),
            "taken together they say less than each alone"
        );
    }

    #[test]
    fn no_steady_hand_that_can_have_ground_it_passes_the_edge(
        start in 0_i64..80, rate in 1_i64..12, counts in proptest::collection::vec(1_u32..6, 1..5),
        leaf in 1_i64..5,
    ) {
        // In halves of a micrometre: one true hand brackets its seal with leaves every 10 to 40 µm. Then
        // every other hand that would have shown the same, found by trying all, grinds what is advised.
        let leaf = leaf * 20;
        let (mut gaps, mut done) = (vec![start], vec![0_i64]);
        for &count in &counts {
            done.push(done.last().unwrap() + i64::from(count));
            gaps.push(start + rate * done.last().unwrap());
        }
        let seen = |gap: i64| (gap.div_euclid(leaf) * leaf, gap.div_euclid(leaf) * leaf + leaf);
        let halves = |halves: i64| Amount::exact(halves, 2, Unit::Micrometre).unwrap();
        let between = |(low, high)| Bracket { low: Some(halves(low)), high: Some(halves(high)) };
        let stages: Vec<Stage> = gaps
            .windows(2)
            .zip(&counts)
            .map(|(pair, &count)| Stage {
                before: between(seen(pair[0])),
                after: between(seen(pair[1])),
                ground: Ground { count, by: GroundBy::Strokes },
            })
            .collect();
        let known = removal(&stages, GroundBy::Strokes).unwrap();
        let upper = gaps.last().unwrap() / 2 + 120;
        let limit = crate::bench::limit_of_micrometres(Some(upper - 1), Some(upper));
        let Ok(advice) = advise(stages.last().unwrap().after, Some(known), &limit) else {
            return Ok(());
        };
        let now = i64::try_from(advice.safe).unwrap();
        let mut fastest = 0;
        for other in 0..=leaf * 2 {
            let first = (0..160).find(|first| {
                done.iter().zip(&gaps).all(|(n, gap)| seen(first + other * n) == seen(*gap))
            });
            let Some(first) = first else { continue };
            fastest = other;
            // The widest that hand can be now is under one more leaf.
            let last = (first..first + leaf).rev().find(|first| {
                done.iter().zip(&gaps).all(|(n, gap)| seen(first + other * n) == seen(*gap))
            });
            let gap = last.unwrap() + other * done.last().unwrap() + other * now;
            prop_assert!(gap <= upper * 2, "{} strokes of {} take it to {}", now, other, gap);
        }
        prop_assert!(fastest >= rate, "the true hand is among them");
        // Not held back for nothing: a stage goes by no more than the whole of its run.
        let whole = Rate {
            removed: stages.last().unwrap().after.high.unwrap().minus(stages[0].before.low.unwrap()),
            strokes: u32::try_from(*done.last().unwrap()).unwrap(),
        };
        prop_assert!(!known.fastest.is_faster_than(whole), "{:?} over {:?}", known.fastest, whole);
    }

    #[test]
    fn strokes_are_those_of_every_gap_and_rate(
        low in -30_i64..60, width in 1_i64..30, lower in 30_i64..60, span_of_limit in 5_i64..60,
        slow in 0_i64..12, faster in 1_i64..20, count in 1_u32..6,
    ) {
        let (high, upper) = (low + width, lower + span_of_limit);
        let rate = |removed| Rate { removed: span(removed), strokes: count };
        let known = Removal { by: GroundBy::Strokes, slowest: rate(slow), fastest: rate(slow + faster) };
        let limit = crate::bench::limit_of_micrometres(Some(lower), Some(upper));
        let Ok(advice) = advise(bracket(Some(low), Some(high)), Some(known), &limit) else {
            return Ok(());
        };
        // Everything in parts of 1/(1000·count) µm, so that all is whole: gaps from low up to just under
        // high, rates from just over the slowest to just under the fastest.
        let fine = 1_000 * i64::from(count);
        let gaps = (0..=8).map(|step| low * fine + (width * fine - 1) * step / 8);
        let (mut safe, mut fits, mut left) = (i64::MAX, (i64::MAX, 0), 0);
        for gap in gaps {
            for step in 0..=8 {
                let rate = slow * 1_000 + 1 + (faster * 1_000 - 2) * step / 8;
                let within = (upper * fine - gap).div_euclid(rate);
                let needed = (0..).find(|n| gap + n * rate >= lower * fine).unwrap();
                safe = safe.min(within);
                left = left.max(within);
                fits = (fits.0.min(needed), fits.1.max(needed));
            }
        }
        let whole = |n: i64| u64::try_from(n).unwrap();
        prop_assert_eq!(advice.safe, whole(safe));
        prop_assert_eq!(advice.left_in_all.fewest, whole(safe));
        prop_assert_eq!(advice.until_it_fits.fewest, whole(fits.0));
        if slow == 0 {
            prop_assert_eq!((advice.left_in_all.most, advice.until_it_fits.most),
                (None, (low >= lower).then_some(0)));
        } else {
            prop_assert_eq!(advice.left_in_all.most, Some(whole(left)));
            prop_assert_eq!(advice.until_it_fits.most, Some(whole(fits.1)));
        }
    }

    #[test]
    fn what_to_take_now_never_passes_the_edge_and_aims_at_the_middle(
        low in -30_i64..60, width in 1_i64..30, lower in 30_i64..60, span_of_limit in 5_i64..60,
        slow in 0_i64..12, faster in 1_i64..20, count in 1_u32..6,
    ) {
        let (high, upper) = (low + width, lower + span_of_limit);
        let rate = |removed| Rate { removed: span(removed), strokes: count };
        let known = Removal { by: GroundBy::Strokes, slowest: rate(slow), fastest: rate(slow + faster) };
        let limit = crate::bench::limit_of_micrometres(Some(lower), Some(upper));
        let Ok(advice) = advise(bracket(Some(low), Some(high)), Some(known), &limit) else {
            return Ok(());
        };
        prop_assert!(advice.now <= advice.safe, "{:?}", advice);
        // All that follows is in parts of 1/(2·count) µm, so that it is whole.
        let fine = 2 * i64::from(count);
        let now = i64::try_from(advice.now).unwrap();
        for gap in low..high {
            for removed in slow..=slow + faster {
                let after = gap * fine + now * removed * 2;
                prop_assert!(after <= upper * fine, "{} strokes from {} µm", now, gap);
            }
        }
        if high > lower {
            prop_assert_eq!(now, 0, "it may fit as it is");
            return Ok(());
        }
        prop_assert!(now >= 1, "too tight, and one is safe");
        // At the fastest rate from the widest it can be: at or below the middle, and one more is past it.
        let (middle, step) = ((lower + upper) * fine / 2, (slow + faster) * 2);
        let lands = |strokes: i64| high * fine + strokes * step;
        prop_assert!(now == 1 || lands(now) <= middle, "{} strokes land at {}", now, lands(now));
        let stops_short = lands(now + 1) > middle || advice.now == advice.safe;
        prop_assert!(stops_short, "{} strokes stop at {} of {}", now, lands(now), middle);
    }

    #[test]
    fn the_strokes_advised_never_take_a_steady_hand_over_the_edge(
        start in -60_i64..-10, rates in proptest::collection::vec(1_i64..6, 1..30),
    ) {
        // A hand that removes 1 to 5 µm a stroke, leaves every 10 µm, limit 50 … 100 µm. Advice is followed to the end.
        let limit = limit(Some("0.05"), Some("0.10"));
        let (fastest, mut gap) = (5, start);
        let mut trials = Vec::new();
        let mut ground = None;
        for &rate in &rates {
            if gap < 0 {
                trials.push(trial(Outcome::WillNotEnter, &[], 0, ground));
            } else if gap < 10 {
                trials.push(trial(Outcome::FreeNoLeaf, &[10], 0, ground));
            } else {
                let mark = gap / 10 * 10;
                trials.push(trial(Outcome::Goes, &[mark], 0, ground));
                trials.push(trial(Outcome::DoesNotGo, &[mark + 10], 0, None));
            }
            let history = History::of(&trials).unwrap();
            let known = removal(&history.stages(), GroundBy::Strokes);
            // One stroke at a time until the rate is known.
            let count = match advise(history.now(), known, &limit) {
                Ok(advice) => {
                    // Sound wherever the fastest rate seen is no slower than the hand at its fastest.
                    let seen = known.unwrap().fastest;
                    let covers = !Rate { removed: span(fastest), strokes: 1 }.is_faster_than(seen);
                    prop_assume!(covers);
                    u32::try_from(advice.safe).unwrap()
                }
                Err(Refusal::RateUnknown) => 1,
                Err(_) => break,
            };
            gap += rate * i64::from(count);
            ground = strokes(count);
            prop_assert!(gap <= 100, "{} µm after {} strokes", gap, count);
        }
    }
}
