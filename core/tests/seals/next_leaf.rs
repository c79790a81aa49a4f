//! The next leaf: never more tries than the best of all decision trees needs.

use crate::bench::{limit, limit_of_micrometres, micrometres, set_of_micrometres};
use pitleaf_core::quantity::{Amount, Unit};
use pitleaf_core::seals::{
    Answer, Bracket, LeafSet, NextLeaf, USUAL_SETS, halving_leaf, next_leaf,
};
use proptest::prelude::*;
use std::collections::HashMap;

/// Everything in whole micrometres, told apart from the code under test on purpose.
struct Plain {
    /// Of each stack: the least and the most it may truly measure.
    stacks: Vec<(i64, i64)>,
    lower: Option<i64>,
    upper: Option<i64>,
}

type Known = (i64, i64);
const OPEN: Known = (-1_000, 2_000);

impl Plain {
    fn of(
        marks: &[i64],
        tolerance: i64,
        most_leaves: usize,
        edges: (Option<i64>, Option<i64>),
    ) -> Self {
        let mut stacks = Vec::new();
        for bits in 1_u32..1 << marks.len() {
            let count = i64::from(bits.count_ones());
            let sum: i64 =
                (0..marks.len()).filter(|leaf| bits >> leaf & 1 == 1).map(|leaf| marks[leaf]).sum();
            if usize::try_from(count).unwrap() <= most_leaves && sum <= 1_500 {
                stacks.push((sum - count * tolerance, sum + count * tolerance));
            }
        }
        Self { stacks, lower: edges.0, upper: edges.1 }
    }

    /// (lower edge settled, upper edge settled, all decided).
    fn settled(&self, (low, high): Known) -> (bool, bool, bool) {
        let lower = self.lower.is_none_or(|edge| low >= edge || high <= edge);
        let upper = self.upper.is_none_or(|edge| low > edge || high <= edge);
        let tight = self.lower.is_some_and(|edge| high <= edge);
        let wide = self.upper.is_some_and(|edge| low > edge);
        (lower, upper, tight || wide || lower && upper)
    }

    /// Whether some gap still in question is certain to settle an open edge with some stack.
    fn can_learn(&self, known: Known) -> bool {
        let (lower, upper, decided) = self.settled(known);
        if decided {
            return false;
        }
        (known.0..known.1).any(|gap| {
            self.stacks.iter().any(|&(least, most)| {
                let next = if gap >= most {
                    (known.0.max(least), known.1)
                } else if gap < least {
                    (known.0, known.1.min(most))
                } else {
                    return false;
                };
                let after = self.settled(next);
                !lower && after.0 || !upper && after.1
            })
        })
    }

    fn goes((low, high): Known, least: i64) -> Known {
        (low.max(least), high)
    }

    fn refuses((low, high): Known, most: i64) -> Known {
        (low, high.min(most))
    }

    /// The fewest tries at worst of all decision trees over all stacks.
    fn fewest(&self, known: Known, memory: &mut HashMap<Known, u8>) -> u8 {
        if !self.can_learn(known) {
            return 0;
        }
        if let Some(&value) = memory.get(&known) {
            return value;
        }
        let mut best = u8::MAX;
        for &(least, most) in &self.stacks {
            let ways = [Self::goes(known, least), Self::refuses(known, most)];
            // A try that may leave everything as it was can only lengthen the tree.
            if ways.contains(&known) {
                continue;
            }
            let worst = ways
                .into_iter()
                .filter(|(low, high)| low < high)
                .map(|way| self.fewest(way, memory))
                .max()
                .unwrap();
            best = best.min(worst.saturating_add(1));
        }
        memory.insert(known, best);
        best
    }

    /// The tries at worst when every advice is followed.
    fn advised(&self, known: Known, follow: &impl Fn(Known) -> Option<(i64, i64, u8)>) -> u8 {
        let Some((least, most, promised)) = follow(known) else {
            assert!(!self.can_learn(known), "gave up at {known:?}, though a stack can settle it");
            return 0;
        };
        assert!(self.stacks.contains(&(least, most)), "a stack the set does not have");
        let worst = [Self::goes(known, least), Self::refuses(known, most)]
            .into_iter()
            .filter(|(low, high)| low < high)
            .map(|way| self.advised(way, follow))
            .max()
            .unwrap();
        assert_eq!(promised, worst + 1, "the promised number of tries at {known:?}");
        worst + 1
    }
}

fn bracket((low, high): Known) -> Bracket {
    Bracket {
        low: (low != OPEN.0).then(|| micrometres(low)),
        high: (high != OPEN.1).then(|| micrometres(high)),
    }
}

fn as_micrometres(amount: Amount) -> i64 {
    (-2_000..3_000).find(|&n| amount == micrometres(n)).expect("whole micrometres")
}

fn follow<'a>(
    set: &'a LeafSet,
    limit: &'a pitleaf_core::limits::Limit,
    tolerance: i64,
    most_leaves: usize,
) -> impl Fn(Known) -> Option<(i64, i64, u8)> + 'a {
    move |known| match next_leaf(bracket(known), limit, set, most_leaves) {
        NextLeaf::Try(next) => {
            let doubt = tolerance * i64::try_from(next.stack.leaves().len()).unwrap();
            let marked = as_micrometres(next.stack.thickness());
            Some((marked - doubt, marked + doubt, next.most_tries))
        }
        NextLeaf::Decided(_) | NextLeaf::SetCannotSay => None,
    }
}

fn small_sets() -> impl Strategy<Value = (Vec<i64>, i64, usize, Option<i64>, Option<i64>, Known)> {
    let marks = proptest::collection::btree_set(6_i64..70, 1..6)
        .prop_map(|marks| marks.into_iter().collect::<Vec<_>>());
    let edges = (10_i64..90, 0_i64..50, 0..4).prop_map(|(lower, width, kind)| match kind {
        0 => (Some(lower), None),
        1 => (None, Some(lower)),
        _ => (Some(lower), Some(lower + width)),
    });
    let known = prop_oneof![
        3 => Just(OPEN),
        1 => (0_i64..80, 1_i64..80).prop_map(|(low, width)| (low, low + width)),
    ];
    (marks, 0_i64..5, 1_usize..4, edges, known).prop_map(
        |(marks, tolerance, most, edges, known)| (marks, tolerance, most, edges.0, edges.1, known),
    )
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    #[test]
    fn no_decision_tree_over_the_set_needs_fewer_tries(
        (marks, tolerance, most_leaves, lower, upper, known) in small_sets()
    ) {
        let plain = Plain::of(&marks, tolerance, most_leaves, (lower, upper));
        let set = set_of_micrometres(&marks, tolerance);
        let limit = limit_of_micrometres(lower, upper);
        let best = plain.fewest(known, &mut HashMap::new());
        let ours = plain.advised(known, &follow(&set, &limit, tolerance, most_leaves));
        prop_assert_eq!(ours, best, "{:?} ± {} in {:?}..{:?} from {:?}", marks, tolerance, lower, upper, known);
    }

    #[test]
    fn a_real_gap_is_bracketed_and_decided_wherever_the_set_is_certain_to(
        (marks, tolerance, most_leaves, lower, upper, _) in small_sets(),
        gap in 0_i64..200,
        offs in proptest::collection::vec(-4_i64..=4, 6),
    ) {
        let plain = Plain::of(&marks, tolerance, most_leaves, (lower, upper));
        let set = set_of_micrometres(&marks, tolerance);
        let limit = limit_of_micrometres(lower, upper);
        let mut known = OPEN;
        let mut tries = 0_u8;
        let mut promised = None;
        while let NextLeaf::Try(next) = next_leaf(bracket(known), &limit, &set, most_leaves) {
            prop_assert!(promised.is_none_or(|most: u8| next.most_tries < most), "no end in sight");
            promised = promised.or(Some(next.most_tries));
            let leaves = next.stack.leaves();
            let truly: i64 = leaves.iter().map(|leaf| {
                let mark = as_micrometres(leaf.thickness());
                let place = marks.iter().position(|other| *other == mark).unwrap();
                mark + offs[place].clamp(-tolerance, tolerance)
            }).sum();
            let doubt = tolerance * i64::try_from(leaves.len()).unwrap();
            let marked = as_micrometres(next.stack.thickness());
            let goes = gap >= truly;
            known = if goes { Plain::goes(known, marked - doubt) } else { Plain::refuses(known, marked + doubt) };
            prop_assert_eq!(bracket(known), if goes { next.if_it_goes } else { next.if_not });
            prop_assert!(bracket(known).holds(micrometres(gap)), "the true gap was lost");
            tries += 1;
        }
        prop_assert!(tries <= 3, "two edges never take more than three tries, took {}", tries);
        prop_assert!(!plain.can_learn(known), "stopped too early at {:?}", known);
    }

    #[test]
    fn the_halving_leaf_leaves_least_in_the_worse_case(
        (marks, tolerance, most_leaves, _, _, _) in small_sets(),
        low in 0_i64..60, width in 2_i64..80,
    ) {
        let plain = Plain::of(&marks, tolerance, most_leaves, (None, None));
        let worse = |(least, most): (i64, i64)| (most - low).max(low + width - least);
        let best = plain.stacks.iter().copied()
            .filter(|&(least, most)| least > low && most < low + width).map(worse).min();
        let set = set_of_micrometres(&marks, tolerance);
        let ours = halving_leaf(bracket((low, low + width)), &set, most_leaves).map(|stack| {
            let doubt = tolerance * i64::try_from(stack.leaves().len()).unwrap();
            let marked = as_micrometres(stack.thickness());
            worse((marked - doubt, marked + doubt))
        });
        prop_assert_eq!(ours, best);
    }
}

#[test]
fn a_plain_set_is_halved() {
    let row = USUAL_SETS.iter().find(|row| row.name == "Metric, with the thin leaves").unwrap();
    let set = row.set().unwrap();
    let limit = limit(Some("0.05"), Some("0.10"));
    // Leaves may be 3 µm off: 0.06 going proves 0.05, 0.09 refused proves 0.10, 0.04 refused disproves 0.05.
    let NextLeaf::Try(first) = next_leaf(Bracket::default(), &limit, &set, 1) else {
        panic!("nothing is known yet");
    };
    assert_eq!(first.most_tries, 3);
    let settled = Bracket { low: Some(micrometres(57)), high: Some(micrometres(93)) };
    assert_eq!(next_leaf(settled, &limit, &set, 3), NextLeaf::Decided(Answer::Meets));
    let close = Bracket { low: Some(micrometres(57)), high: Some(micrometres(153)) };
    let NextLeaf::Try(next) = next_leaf(close, &limit, &set, 1) else { panic!("still open") };
    assert_eq!(next.stack.to_string(), "0.09 mm");
    assert_eq!(next.if_not, settled);
}

#[test]
fn a_stack_is_proposed_where_no_single_leaf_will_do() {
    let set = set_of_micrometres(&[30, 50, 200], 2);
    let limit = limit(Some("0.07"), None);
    let known = Bracket { low: Some(micrometres(0)), high: None };
    let single = next_leaf(known, &limit, &set, 1);
    let NextLeaf::Try(single) = single else { panic!("200 µm going would prove it") };
    assert_eq!(single.stack.leaves().len(), 1);
    let close = Bracket { low: Some(micrometres(48)), high: Some(micrometres(150)) };
    assert_eq!(next_leaf(close, &limit, &set, 1), NextLeaf::SetCannotSay);
    let NextLeaf::Try(pair) = next_leaf(close, &limit, &set, 3) else { panic!("30 + 50 would") };
    assert_eq!(pair.stack.to_string(), "30 µm + 50 µm");
}

#[test]
fn a_leaf_is_taken_before_a_stack_that_is_certain_of_no_more() {
    // 90 alone, or 40 + 50: as thick, but with twice the doubt.
    let set = set_of_micrometres(&[40, 50, 90], 3);
    let limit = limit(None, Some("0.096"));
    let known = Bracket { low: Some(micrometres(0)), high: Some(micrometres(120)) };
    let NextLeaf::Try(next) = next_leaf(known, &limit, &set, 3) else { panic!("still open") };
    assert!(next.stack.leaves().len() == 1, "{}", next.stack);
}

#[test]
fn a_gap_and_limit_in_inches_take_a_metric_set() {
    let set = USUAL_SETS[2].set().unwrap();
    let limit = limit(Some("0.0015 in"), Some("0.0040 in"));
    let known = Bracket { low: Some(Amount::whole(0, Unit::Inch)), high: None };
    assert!(matches!(next_leaf(known, &limit, &set, 3), NextLeaf::Try(_)));
}

#[test]
fn of_equally_good_tries_the_one_with_fewest_leaves_comes_first() {
    // All four kinds are open and any may come first: three tries at worst. One kind takes a pair.
    let set = set_of_micrometres(&[30, 40, 60, 90, 200], 3);
    let limit = limit(Some("0.05"), Some("0.10"));
    let NextLeaf::Try(next) = next_leaf(Bracket::default(), &limit, &set, 2) else {
        panic!("open")
    };
    assert_eq!((next.most_tries, next.stack.leaves().len()), (3, 1), "{}", next.stack);
}
