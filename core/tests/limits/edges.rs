//! Edges as text in a file: written with their unit, read back as the same edge.

use Unit::*;
use pitleaf_core::kept;
use pitleaf_core::limits::{Edge, Limit, Row, Sheet};
use pitleaf_core::quantity::Unit;

#[test]
fn an_edge_reads_back_in_every_unit() {
    for unit in Unit::all() {
        let edge = Edge::read("2.50", unit).unwrap();
        let text = kept::write(&edge);
        assert_eq!(text, format!("{:?}", format!("2.50 {}", unit.symbol())), "as written");
        assert_eq!(kept::read::<Edge>(&text).unwrap(), edge, "{text}");
    }
}

#[test]
fn an_edge_keeps_the_unit_its_source_prints() {
    let edge = Edge::read("0,40 mm", Inch).unwrap();
    assert_eq!((edge.text(), edge.unit()), ("0,40", Millimetre), "number and unit apart");
    assert_eq!(edge, Edge::read("0,40", Millimetre).unwrap(), "however the unit was given");
    assert_eq!(edge.step(), Edge::read("1.23", Millimetre).unwrap().step(), "a hundredth");
}

#[test]
fn a_text_that_is_no_edge_is_refused_with_a_sentence() {
    for (text, wanted) in [
        ("\"0.40\"", "a limit without its unit"),
        ("\"mm\"", "“mm” is no number. Use digits with one point or comma."),
        ("\"1..2 mm\"", "More than one point or comma. Leave only the decimal one."),
        ("\"0.4 furlong\"", "a limit without its unit"),
    ] {
        let refused = kept::read::<Edge>(text).unwrap_err().to_string();
        assert!(refused.starts_with(wanted), "{text}: {refused}");
    }
}

#[test]
fn a_limit_leaves_out_the_edges_it_has_not() {
    let limit = Limit { upper: Edge::read("0.04", Millimetre).ok(), ..Limit::default() };
    assert_eq!(kept::write(&limit), r#"{"upper":"0.04 mm"}"#, "one edge");
    assert_eq!(kept::read::<Limit>("{}").unwrap(), Limit::default(), "none");
}

#[test]
fn every_row_of_the_sheet_reads_back() {
    for row in Sheet::starter().rows() {
        let text = kept::write(row);
        assert_eq!(kept::read::<Row>(&text).unwrap(), *row, "{text}");
    }
}
