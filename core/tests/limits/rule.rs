//! The rule a reading is drawn on.

use super::{limit, read, span};
use Unit::Millimetre;
use pitleaf_core::limits::{Rule, Side, rule};
use pitleaf_core::quantity::Unit;

fn drawn(lower: &str, upper: &str, reading: &str, guard: &str) -> Rule {
    let hand = (read(reading, Millimetre).amount(), span(guard, Millimetre));
    rule(&limit(lower, upper, Millimetre), Millimetre, Some(hand))
}

#[track_caller]
fn at(got: Option<f64>, wanted: f64) {
    let got = got.expect("a place");
    assert!((got - wanted).abs() < 1e-12, "got {got}, wanted {wanted}");
}

/// Two edges take the middle half: 1 … 3 mm from 0 to 4 mm.
#[test]
fn two_edges_take_the_middle_half() {
    let rule = drawn("1", "3", "2", "0.5");
    at(rule.lower, 0.25);
    at(rule.upper, 0.75);
    at(rule.reading, 0.5);
    at(Some(rule.guard), 0.125);
    assert_eq!(rule.off, None, "on it");
}

/// An upper edge alone: the rule starts at nothing, and a third beyond the edge shows how far past it a
/// reading lies.
#[test]
fn an_upper_edge_alone_leaves_room_beyond_it() {
    let rule = drawn("", "1", "1.3", "0.1");
    at(rule.upper, 1.0 / 1.35);
    at(rule.reading, 1.3 / 1.35);
    assert_eq!(rule.off, None, "1.3 of 1 is still on it");
    assert_eq!(drawn("", "1", "1.4", "0.1").off, Some(Side::Above), "1.4 is not");
}

/// A doubt wider than the rule fills it and no more: it is drawn as a width.
#[test]
fn a_doubt_wider_than_the_rule_fills_it() {
    let rule = drawn("1", "3", "2", "100");
    assert!((rule.guard - 1.0).abs() < 1e-12, "half its width is {}", rule.guard);
    at(drawn("1", "3", "90", "100").reading, 1.0);
}
