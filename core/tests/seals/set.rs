//! Sets measured in one go, and sets matched over rotors.

use crate::bench::{limit, micrometres};
use pitleaf_core::limits::{Gauge, GaugeKind};
use pitleaf_core::quantity::{Amount, Bounds, Reading, Span, Unit};
use pitleaf_core::seals::{Place, SetCheck, match_by_height, match_by_weight};
use proptest::prelude::*;

fn readings(texts: &[(&str, &str)]) -> Vec<(Place, Reading)> {
    texts
        .iter()
        .map(|(place, text)| {
            (
                Place::read(place).unwrap(),
                Reading::read(text, Unit::Millimetre, &Bounds::SIZE).unwrap(),
            )
        })
        .collect()
}

#[test]
fn a_set_shows_its_spread_and_its_worst_piece() {
    let gauge = Gauge::usual(GaugeKind::OutsideMicrometer);
    let limit = limit(Some("7.00"), Some("8.00"));
    let set = readings(&[("1-A", "7.900"), ("1-B", "7.620"), ("1-C", "7.030"), ("2-A", "7.001")]);
    let check = SetCheck::of(&set, &limit, &gauge).unwrap();
    assert_eq!(check.spread, Span::whole(899, Unit::Micrometre));
    assert_eq!(check.verdicts[check.worst].0.to_string(), "2-A");
    assert_eq!(
        check.counts(),
        (3, 0, 1),
        "one micrometre from the edge is too close for a micrometer good to 4"
    );
    let worn = readings(&[("1-A", "7.900"), ("1-B", "6.900"), ("1-C", "7.000")]);
    let check = SetCheck::of(&worn, &limit, &gauge).unwrap();
    assert_eq!(check.verdicts[check.worst].0.to_string(), "1-B");
    assert_eq!(check.counts(), (1, 1, 1));
}

#[test]
fn what_is_wrong_with_a_set_is_said() {
    let gauge = Gauge::usual(GaugeKind::OutsideMicrometer);
    let limit = limit(Some("7.00"), None);
    let say = |set: &[(Place, Reading)]| SetCheck::of(set, &limit, &gauge).unwrap_err().to_string();
    assert_eq!(say(&[]), "Nothing measured yet. Type at least one reading.");
    let mut mixed = readings(&[("1-A", "7.9")]);
    let mass = Reading::read("7 g", Unit::Gram, Bounds::widest(Unit::Gram.dimension())).unwrap();
    mixed.push((Place::read("1-B").unwrap(), mass));
    assert_eq!(say(&mixed), "One reading measures something else than the limit. Check its unit.");
    let five = [micrometres(1); 5];
    assert_eq!(
        match_by_weight(&five, 2).unwrap_err().to_string(),
        "5 pieces do not share out evenly over 2 rotors. Add the missing ones, or leave some out."
    );
    assert_eq!(
        match_by_weight(&[micrometres(1); 24], 4).unwrap_err().to_string(),
        "At most 12 pieces are matched by weight at once. Match each kind by itself."
    );
    assert!(match_by_weight(&five, 0).is_err(), "no rotor at all");
    assert!(match_by_height(&[], 2).is_err(), "no piece at all");
}

/// Every way to give each piece to a rotor so that each gets as many; the least value of a measure.
fn brute(pieces: &[i64], rotors: usize, measure: &dyn Fn(&[Vec<i64>]) -> i64) -> i64 {
    fn go(
        pieces: &[i64],
        sets: &mut Vec<Vec<i64>>,
        each: usize,
        measure: &dyn Fn(&[Vec<i64>]) -> i64,
    ) -> i64 {
        let Some((&piece, rest)) = pieces.split_first() else { return measure(sets) };
        let mut best = i64::MAX;
        for at in 0..sets.len() {
            if sets[at].len() < each {
                sets[at].push(piece);
                best = best.min(go(rest, sets, each, measure));
                sets[at].pop();
            }
        }
        best
    }
    go(pieces, &mut vec![Vec::new(); rotors], pieces.len() / rotors, measure)
}

fn sharing() -> impl Strategy<Value = (usize, Vec<i64>)> {
    prop_oneof![Just((1, 3)), Just((2, 3)), Just((3, 3)), Just((4, 2)), Just((2, 4))].prop_flat_map(
        |(rotors, each): (usize, usize)| {
            (Just(rotors), proptest::collection::vec(1_000_i64..1_060, rotors * each))
        },
    )
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(60))]

    #[test]
    fn no_sharing_weighs_more_evenly((rotors, pieces) in sharing()) {
        let weights: Vec<Amount> = pieces.iter().map(|&n| Amount::exact(n, 1_000, Unit::Gram).unwrap()).collect();
        let found = match_by_weight(&weights, u8::try_from(rotors).unwrap()).unwrap();
        let best = brute(&pieces, rotors, &|sets| {
            let sums: Vec<i64> = sets.iter().map(|set| set.iter().sum()).collect();
            sums.iter().max().unwrap() - sums.iter().min().unwrap()
        });
        let sums: Vec<i64> = found.rotors.iter().map(|set| set.iter().map(|&at| pieces[at]).sum()).collect();
        prop_assert_eq!(sums.iter().max().unwrap() - sums.iter().min().unwrap(), best);
        let milligram = Amount::exact(1, 1_000, Unit::Gram).unwrap().above_zero();
        prop_assert_eq!(found.spread, milligram.times(u32::try_from(best).unwrap()));
        let mut all: Vec<usize> = found.rotors.concat();
        all.sort_unstable();
        prop_assert_eq!(all, (0..pieces.len()).collect::<Vec<_>>(), "each piece once");
    }

    #[test]
    fn no_sharing_keeps_heights_closer((rotors, pieces) in sharing()) {
        let heights: Vec<Amount> = pieces.iter().map(|&n| micrometres(n)).collect();
        let found = match_by_height(&heights, u8::try_from(rotors).unwrap()).unwrap();
        let best = brute(&pieces, rotors, &|sets| {
            sets.iter().map(|set| set.iter().max().unwrap() - set.iter().min().unwrap()).max().unwrap()
        });
        prop_assert_eq!(found.spread, Span::whole(best, Unit::Micrometre));
        let mut all: Vec<usize> = found.rotors.concat();
        all.sort_unstable();
        prop_assert_eq!(all, (0..pieces.len()).collect::<Vec<_>>(), "each piece once");
    }
}
