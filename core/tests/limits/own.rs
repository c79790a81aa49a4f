//! A limit of the builder's own: its figures when the unit is switched, and what is asked before it is kept.

use Unit::*;
use pitleaf_core::limits::{Edge, Limit, Row, Sheet, TypedEdges};
use pitleaf_core::quantity::Unit;

fn texts(texts: [&str; 3]) -> Vec<String> {
    texts.map(str::to_owned).to_vec()
}

/// What stands in the form after one switch of its unit.
#[track_caller]
fn switched(typed: [&str; 3], from: Unit, to: Unit, wanted: [&str; 3]) {
    let mut edges = TypedEdges::of(texts(["", "", ""]), from);
    let shown = edges.switch(texts(typed), from, to);
    assert_eq!(shown, wanted, "{typed:?} {} → {}", from.symbol(), to.symbol());
}

#[test]
fn what_is_typed_is_converted_with_the_unit() {
    switched(["0.0015", "0.0030", ""], Inch, Thou, ["1.5", "3", ""]);
    switched(["2½", "1/64 in", ""], Thou, Millimetre, ["0.0635", "1/64 in", ""]);
    switched(["1/64", "", ""], Inch, Millimetre, ["0.396875", "", ""]);
    switched(["−0,5", "0.5", ""], Millimetre, Micrometre, ["−500", "500", ""]);
    switched(["abc", "", "1..2"], Millimetre, Inch, ["abc", "", "1..2"]);
}

#[test]
fn what_no_decimal_can_tell_is_rounded_inward() {
    // 0.04 mm is 0.001 574 8… in, 0.06 mm 0.002 362 2… in.
    switched(["0.04", "0.06", ""], Millimetre, Inch, ["0.00158", "0.00236", ""]);
    // A wear limit above the others is passed upwards, one below them downwards.
    switched(["", "0.04", "0.06"], Millimetre, Inch, ["", "0.00157", "0.00236"]);
    switched(["0.06", "", "0.04"], Millimetre, Inch, ["0.00237", "", "0.00158"]);
}

#[test]
fn switched_back_it_is_what_was_typed() {
    let mut edges = TypedEdges::of(texts(["0.040", "0.07", ""]), Millimetre);
    let inch = edges.switch(texts(["0.040", "0.07", ""]), Millimetre, Inch);
    assert_eq!(inch, ["0.001575", "0.00275", ""], "in inches");
    // The upper one is typed anew in between: that one counts from there.
    let thou = edges.switch(texts([&inch[0], "0.003", &inch[2]]), Inch, Thou);
    assert_eq!(thou, ["1.575", "3", ""], "the lower one is rounded from what was typed");
    let back = edges.switch(thou, Thou, Millimetre);
    assert_eq!(back, ["0.040", "0.0762", ""], "and back");
}

fn own(id: &str, [lower, upper, wear]: [&str; 3], unit: Unit) -> Row {
    let edge = |text: &str| Edge::read(text, unit).ok();
    let limit = Limit { lower: edge(lower), upper: edge(upper), wear: edge(wear) };
    Row { limit, unit, ..Sheet::starter().row(id).expect("a row that ships").clone() }
}

const CHECK: &str = "Check the unit and the decimal point.";

#[track_caller]
fn doubts(id: &str, edges: [&str; 3], unit: Unit, wanted: &[&str]) {
    assert_eq!(own(id, edges, unit).doubts(), wanted, "{edges:?} {}", unit.symbol());
}

#[test]
fn a_limit_far_from_the_shipped_one_is_asked_about() {
    // End play ships as 0.04 to 0.07 mm.
    doubts("end-play", ["0.04", "0.07", ""], Millimetre, &[]);
    doubts("end-play", ["0.02", "0.14", ""], Millimetre, &[]);
    doubts("end-play", ["", "0.14", ""], Millimetre, &[]);
    doubts("end-play", ["1.6", "2.75", ""], Thou, &[]);
    doubts(
        "end-play",
        ["0.019", "0.141", ""],
        Millimetre,
        &[
            "The lower limit of 0.019 mm is less than half the 0.04 mm that came with the app.",
            "The upper limit of 0.141 mm is more than twice the 0.07 mm that came with the app.",
            CHECK,
        ],
    );
    doubts(
        "end-play",
        ["", "0.07", ""],
        Inch,
        &[
            "The upper limit of 0.07 in, that is 1.778 mm, is more than twice the 0.07 mm that came with the app.",
            CHECK,
        ],
    );
    doubts(
        "end-play",
        ["−0.04", "", ""],
        Millimetre,
        &[
            "The lower limit of −0.04 mm is on the other side of nothing from the 0.04 mm that came with the app.",
            CHECK,
        ],
    );
    doubts(
        "end-play",
        ["0", "", ""],
        Millimetre,
        &["The lower limit of 0 mm is less than half the 0.04 mm that came with the app.", CHECK],
    );
}

#[test]
fn a_row_of_another_book_or_another_kind_of_unit_has_no_shipped_one_to_be_far_from() {
    let row = Row { id: "no-such-row".into(), ..own("end-play", ["", "70", ""], Millimetre) };
    assert!(row.doubts().is_empty(), "nothing to compare with");
    doubts("end-play", ["", "70", ""], NewtonMetre, &[]);
    doubts("end-play", ["−0.5", "", ""], Bar, &[]);
}
