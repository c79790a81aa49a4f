//! What belongs to the shop: limits, leaves and gauges hold for every build.

use super::file::sample;
use super::order::folded;
use super::{entry, figure, id, opened};
use pitleaf_core::book::{Book, Entry, Fact};
use pitleaf_core::limits::{Edge, GaugeKind};
use pitleaf_core::quantity::Unit;

fn gauge(resolution: &str) -> Fact {
    Fact::Gauge {
        kind: GaugeKind::FeelerLeaf,
        resolution: Edge::read(resolution, Unit::Millimetre).expect("an edge"),
        error: Edge::read("0.004", Unit::Millimetre).expect("an edge").into(),
    }
}

fn names(book: &Book) -> Vec<&str> {
    book.of_the_shop().map(|entry| &*entry.id.0).collect()
}

#[test]
fn limits_leaves_and_gauges_are_the_shops() {
    assert_eq!(names(&folded(&sample())), ["e6", "e12", "e13"], "and nothing else");
}

#[test]
fn they_come_from_every_build_in_order_without_the_withdrawn() {
    let elsewhere = Entry { build: id("plover"), ..entry("b", 3, gauge("0.01")) };
    let mut book = folded(&[
        entry("d", 5, gauge("0.02")),
        elsewhere,
        opened(),
        entry("a", 2, gauge("0.05")),
        entry("f", 4, figure("0.0020")),
    ]);
    assert_eq!(names(&book), ["a", "b", "d"], "the latest last, whichever came first");
    book.take(entry("w", 6, Fact::Withdrawn { entry: id("b") }));
    assert_eq!(names(&book), ["a", "d"], "a withdrawn one is left out");
    book.take(entry("r", 7, Fact::Restored { entry: id("b") }));
    assert_eq!(names(&book), ["a", "b", "d"], "until it holds again");
}

#[test]
fn the_latest_gauge_of_a_kind_is_the_one_in_hand() {
    let mut book = folded(&[opened(), entry("a", 2, gauge("0.05")), entry("b", 3, gauge("0.02"))]);
    let resolution = |book: &Book| {
        let resolution = book.sheet().gauge(GaugeKind::FeelerLeaf).resolution.expect("it has one");
        resolution.shortest(Unit::Millimetre, 4)
    };
    assert_eq!(resolution(&book), "0.02", "the latest");
    book.take(entry("w", 4, Fact::Withdrawn { entry: id("b") }));
    assert_eq!(resolution(&book), "0.05", "withdrawn: the one before");
}
