//! Straightedge and leaf, and plastic gauge: brackets, exact at their edges.

use crate::{limit, micrometres, mm};
use pitleaf_core::faces::{
    Bracket, Clearance, Line, Measured, Refusal, Strip, hollow, next_leaf, strips,
};
use pitleaf_core::limits::{Call, Side};
use pitleaf_core::quantity::{Amount, Span, Unit};

fn line(goes: i64, stops: i64) -> Line {
    let leaf = |count: i64| (count > 0).then(|| micrometres(count));
    Line { goes: leaf(goes), stops: leaf(stops) }
}

fn bracket(goes: i64, stops: i64) -> Bracket {
    let leaf = |count: i64| (count > 0).then(|| micrometres(count));
    Bracket::new(leaf(goes), leaf(stops), 0).expect("a bracket")
}

fn no_doubt() -> Span {
    micrometres(0).minus(micrometres(0))
}

#[test]
fn the_deepest_line_counts() {
    let face = hollow(&[line(0, 50), line(40, 50), line(60, 80)]).expect("lines");
    assert_eq!(face.deepest.at_least(), micrometres(60), "a leaf of 60 µm goes somewhere");
    assert_eq!(face.deepest.at_most(), Some(micrometres(80)), "none of 80 µm does");
    assert_eq!(face.worst, 2, "on the third line");
    let open = hollow(&[line(40, 50), line(40, 0)]).expect("lines");
    assert_eq!(open.deepest.at_most(), None, "on the second line every leaf went");
}

#[test]
fn a_bracket_proves_only_what_holds_throughout() {
    let keep = limit("", "0.05");
    for (bracket, call) in [
        (bracket(0, 50), Call::Meets),
        (bracket(40, 51), Call::TooClose),
        (bracket(50, 60), Call::TooClose),
        (bracket(51, 60), Call::DoesNotMeet(Side::Above)),
        (bracket(40, 0), Call::TooClose),
    ] {
        assert_eq!(bracket.against(&keep, no_doubt()), call, "{bracket:?}");
    }
    let gap = limit("0.05", "0.10");
    for (bracket, call) in [
        (bracket(50, 100), Call::Meets),
        (bracket(0, 50), Call::DoesNotMeet(Side::Below)),
        (bracket(0, 51), Call::TooClose),
        (bracket(49, 100), Call::TooClose),
    ] {
        assert_eq!(bracket.against(&gap, no_doubt()), call, "{bracket:?}");
    }
}

#[test]
fn a_leafs_own_doubt_takes_proof_away() {
    let doubt = micrometres(3).minus(micrometres(0));
    let keep = limit("", "0.05");
    assert_eq!(bracket(0, 50).against(&keep, doubt), Call::TooClose, "50 may be 53");
    assert_eq!(bracket(0, 47).against(&keep, doubt), Call::Meets, "47 is 50 at most");
    assert_eq!(bracket(53, 60).against(&keep, doubt), Call::TooClose, "53 may be 50");
    let above = Call::DoesNotMeet(Side::Above);
    assert_eq!(bracket(54, 60).against(&keep, doubt), above, "54 is 51 at least");
}

/// 2 thou are 0.0508 mm, whichever unit the leaf is marked in.
#[test]
fn inch_leaves_compare_exactly() {
    let stops = Bracket::new(None, Some(Amount::whole(2, Unit::Thou)), 0).expect("a bracket");
    assert_eq!(stops.against(&limit("", "0.0508"), no_doubt()), Call::Meets, "equal meets");
    assert_eq!(stops.against(&limit("", "0.0507"), no_doubt()), Call::TooClose, "0.1 µm less");
}

#[test]
fn crossed_and_missing_leaves_are_refused() {
    let refused = |lines: &[Line]| hollow(lines).expect_err("refused");
    assert_eq!(refused(&[line(40, 50), line(50, 50)]), Refusal::Crossed { reading: 1 }, "equal");
    assert_eq!(refused(&[line(60, 50)]), Refusal::Crossed { reading: 0 }, "crossed");
    assert_eq!(refused(&[line(40, 50), line(0, 0)]), Refusal::NoLeaf { line: 1 }, "none tried");
    let none = Refusal::TooFew { found: "a hollow", given: 0, needed: 1 };
    assert_eq!(refused(&[]), none, "no lines");
    assert!(matches!(refused(&[line(26_000, 0)]), Refusal::OutOfBounds { .. }), "26 mm");
}

#[test]
fn the_next_leaf_settles_the_limit() {
    let set: Vec<Amount> = [30, 40, 50, 60, 80].map(micrometres).to_vec();
    let next = |goes, stops| next_leaf(&bracket(goes, stops), micrometres(55), &set);
    assert_eq!(next(30, 80), Some(micrometres(50)), "the thickest under the limit");
    assert_eq!(next(50, 80), Some(micrometres(60)), "then the thinnest over it");
    assert_eq!(next(50, 60), None, "nothing left between");
    assert_eq!(next(80, 0), None, "nothing thicker");
    let exact = next_leaf(&bracket(30, 80), micrometres(60), &set);
    assert_eq!(exact, Some(micrometres(60)), "the leaf of the limit's own size");
}

#[test]
fn strips_give_the_range_they_show() {
    let strip = |loose: (i64, i64), tight: (i64, i64)| Strip {
        loose: bracket(loose.0, loose.1),
        tight: bracket(tight.0, tight.1),
    };
    let even = strip((38, 51), (38, 51));
    let tapered = strip((51, 76), (25, 38));
    let seen = strips(&[even, tapered]).expect("strips");
    assert_eq!(seen.at_least, micrometres(25), "the tightest end");
    assert_eq!(seen.at_most, Some(micrometres(76)), "the loosest end");
    assert_eq!(seen.tapered, Some(1), "the second one tapers");
    assert_eq!(strips(&[even]).expect("a strip").tapered, None, "one interval is no taper");
    let crossed = strips(&[even, strip((25, 38), (51, 76))]);
    assert_eq!(crossed, Err(Refusal::Crossed { reading: 1 }), "ends changed over");
    assert!(strips(&[]).is_err(), "no strips");

    let clearance = |least: f64, most: f64| {
        let measured = |value: f64| Measured { value: mm(value), uncertainty: mm(0.002) };
        Clearance { least: measured(least), mean: measured(least), most: measured(most) }
    };
    assert_eq!(seen.agree_with(&clearance(0.060, 0.090)), Some(true), "they overlap");
    assert_eq!(seen.agree_with(&clearance(0.079, 0.090)), Some(true), "within the gauges' doubt");
    assert_eq!(seen.agree_with(&clearance(0.081, 0.090)), Some(false), "beyond it");
    assert_eq!(seen.agree_with(&clearance(0.010, 0.020)), Some(false), "tighter than any strip");
}
