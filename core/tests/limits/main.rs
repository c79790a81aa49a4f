//! Limits against the outside: conformity, wear, slips, and the starter sheet.

mod conformity;
mod edges;
mod gauges;
mod offered;
mod own;
mod pictures;
mod places;
mod properties;
mod rule;
mod slips;
mod starter;
mod unit_in_hand;
mod wear;
mod words;

use pitleaf_core::limits::{Edge, Limit};
use pitleaf_core::quantity::{Bounds, Reading, Span, Unit};

/// A limit from the texts of its edges; an empty text is no edge.
#[track_caller]
fn limit(lower: &str, upper: &str, unit: Unit) -> Limit {
    let edge = |text: &str| {
        (!text.is_empty()).then(|| Edge::read(text, unit).expect("a limit that can be read"))
    };
    Limit { lower: edge(lower), upper: edge(upper), wear: None }
}

/// The same limit with a wear limit.
#[track_caller]
fn worn(limit: Limit, wear: &str, unit: Unit) -> Limit {
    Limit { wear: Some(Edge::read(wear, unit).expect("a limit that can be read")), ..limit }
}

/// A reading of any size.
#[track_caller]
fn read(text: &str, unit: Unit) -> Reading {
    match Reading::read(text, unit, Bounds::widest(unit.dimension())) {
        Ok(reading) => reading,
        Err(fault) => panic!("{text:?} in {}: {fault}", unit.symbol()),
    }
}

/// A span from its text.
#[track_caller]
fn span(text: &str, unit: Unit) -> Span {
    read(text, unit).amount().minus(read("0", unit).amount())
}
