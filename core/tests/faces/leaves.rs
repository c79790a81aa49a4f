//! Straightedge and leaf, and plastic gauge: brackets, exact at their edges.

use crate::{limit, micrometres, mm};
use pitleaf_core::faces::{Clearance, Hollow, Measured, Refusal, Strip, hollow, next_leaf, strips};
use pitleaf_core::limits::Limit;
use pitleaf_core::quantity::{Amount, Span, Unit};
use pitleaf_core::seals::{Answer, Bracket};

/// Leaves in micrometres: the one that goes, the one that stops; 0 for none.
fn leaves(goes: i64, stops: i64) -> Bracket {
    let leaf = |count: i64| (count > 0).then(|| micrometres(count));
    Bracket { low: leaf(goes), high: leaf(stops) }
}

fn off_by(count: i64) -> Span {
    micrometres(count).minus(micrometres(0))
}

fn one_line(goes: i64, stops: i64, doubt: i64) -> Hollow {
    hollow(&[leaves(goes, stops)], off_by(doubt)).expect("a line")
}

#[track_caller]
fn proves(hollow: &Hollow, limit: &Limit, answer: Answer) {
    assert_eq!(hollow.proved.against(limit).answer(), answer, "{hollow:?}");
}

#[test]
fn the_deepest_line_counts() {
    let face = hollow(&[leaves(0, 50), leaves(40, 50), leaves(60, 80)], off_by(0)).expect("lines");
    assert_eq!(face.deepest, leaves(60, 80), "60 µm goes somewhere, 80 µm nowhere");
    assert_eq!(face.worst, 2, "on the third line");
    assert_eq!(face.lines[0].low, Some(micrometres(0)), "a hollow is never below zero");
    let open = hollow(&[leaves(40, 50), leaves(40, 0)], off_by(0)).expect("lines");
    assert_eq!(open.deepest.high, None, "on the second line every leaf went");
}

#[test]
fn a_bracket_proves_only_what_holds_throughout() {
    let keep = limit("", "0.05");
    proves(&one_line(0, 50, 0), &keep, Answer::Meets);
    proves(&one_line(40, 51, 0), &keep, Answer::CannotSay);
    proves(&one_line(50, 60, 0), &keep, Answer::CannotSay);
    proves(&one_line(51, 60, 0), &keep, Answer::TooWide);
    proves(&one_line(40, 0, 0), &keep, Answer::CannotSay);
}

#[test]
fn a_leafs_own_doubt_takes_proof_away() {
    let keep = limit("", "0.05");
    proves(&one_line(0, 50, 3), &keep, Answer::CannotSay);
    proves(&one_line(0, 47, 3), &keep, Answer::Meets);
    proves(&one_line(53, 60, 3), &keep, Answer::CannotSay);
    proves(&one_line(54, 60, 3), &keep, Answer::TooWide);
    assert_eq!(one_line(2, 60, 3).proved.low, Some(micrometres(0)), "not below zero");
}

/// 2 thou are 0.0508 mm, whichever unit the leaf is marked in.
#[test]
fn inch_leaves_compare_exactly() {
    let stops = Bracket { low: None, high: Some(Amount::whole(2, Unit::Thou)) };
    let face = hollow(&[stops], off_by(0)).expect("a line");
    proves(&face, &limit("", "0.0508"), Answer::Meets);
    proves(&face, &limit("", "0.0507"), Answer::CannotSay);
}

#[test]
fn crossed_and_missing_leaves_are_refused() {
    let refused = |lines: &[Bracket]| hollow(lines, off_by(0)).expect_err("refused");
    let crossed = |reading| Refusal::Crossed { reading };
    assert_eq!(refused(&[leaves(40, 50), leaves(50, 50)]), crossed(1), "equal");
    assert_eq!(refused(&[leaves(60, 50)]), crossed(0), "crossed");
    assert_eq!(
        refused(&[leaves(40, 50), leaves(0, 0)]),
        Refusal::Open { reading: 1 },
        "none tried"
    );
    let none = Refusal::TooFew { found: "a hollow", given: 0, needed: 1 };
    assert_eq!(refused(&[]), none, "no lines");
    assert!(matches!(refused(&[leaves(26_000, 0)]), Refusal::OutOfBounds { .. }), "26 mm");
}

#[test]
fn the_next_leaf_settles_the_limit() {
    let set: Vec<Amount> = [60, 30, 40, 50, 80].map(micrometres).to_vec();
    let next = |goes, stops| next_leaf(leaves(goes, stops), micrometres(55), &set);
    assert_eq!(next(30, 80), Some(micrometres(50)), "the thickest under the limit");
    assert_eq!(next(50, 80), Some(micrometres(60)), "then the thinnest over it");
    assert_eq!(next(50, 60), None, "nothing left between");
    assert_eq!(next(80, 0), None, "nothing thicker");
    let exact = next_leaf(leaves(30, 80), micrometres(60), &set);
    assert_eq!(exact, Some(micrometres(60)), "the leaf of the limit's own size");
}

#[test]
fn strips_give_the_range_they_show() {
    let strip = |loose: (i64, i64), tight: (i64, i64)| Strip {
        loose: leaves(loose.0, loose.1),
        tight: leaves(tight.0, tight.1),
    };
    let even = strip((38, 51), (38, 51));
    let tapered = strip((51, 76), (25, 38));
    let seen = strips(&[even, tapered]).expect("strips");
    assert_eq!(seen.seen, leaves(25, 76), "from the tightest end to the loosest");
    assert_eq!(seen.tapered, Some(1), "the second one tapers");
    assert_eq!(strips(&[even]).expect("a strip").tapered, None, "one interval is no taper");
    let open = strips(&[strip((38, 51), (38, 0))]).expect("a strip past its last mark");
    assert_eq!(open.tapered, None, "nothing says that it tapers");
    let crossed = Err(Refusal::Crossed { reading: 1 });
    assert_eq!(strips(&[even, strip((25, 38), (51, 76))]), crossed, "ends changed over");
    assert_eq!(strips(&[even, strip((38, 25), (25, 38))]), crossed, "marks changed over");
    let unread = strips(&[strip((38, 51), (0, 0))]);
    assert_eq!(unread, Err(Refusal::Open { reading: 0 }), "one end not read");
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
