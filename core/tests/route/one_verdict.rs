//! One reading has one verdict, wherever it is shown: two routes inside the product must not disagree.

use super::Shop;
use super::sheet::{section, sheet};
use pitleaf_core::book::{Fact, Figure, Slot, call, csv};
use pitleaf_core::faces::report::{on_bench, report};
use pitleaf_core::faces::{ReadingSet, Survey};
use pitleaf_core::limits::{BuildKind, Call, Edge, Gauge, GaugeKind, Limit, Row, decide};
use pitleaf_core::quantity::{Reading, Span, Unit};
use pitleaf_core::route::{Copy, OpenPoints, compare, past_limits};
use pitleaf_core::seals::slot_report;
use pitleaf_core::spoken;
use pitleaf_core::trochoid::Geometry;
use proptest::prelude::*;

const GAP: &str = "side-seal-gap-na";
const WIDTH: &str = "rotor-housing-width";
const PLACE: &str = "1F-AB";

/// Thousandths of a millimetre as text.
fn text(count: i64) -> String {
    format!("{}.{:03}", count / 1000, count % 1000)
}

fn edge(count: i64) -> Edge {
    Edge::read(&text(count), Unit::Millimetre).expect("an edge")
}

/// A book with an own limit on a row, an own gauge or the usual one, and nothing measured yet.
fn shop(id: &str, (lower, width): (i64, i64), gauge: GaugeKind, own: Option<(i64, i64)>) -> Shop {
    let mut shop = Shop::new(BuildKind::NaturallyAspirated, 2);
    let row = shop.sheet().row(id).expect("a row").clone();
    let limit = Limit { lower: Some(edge(lower)), upper: Some(edge(lower + width)), wear: None };
    shop.write(Fact::Limit(Box::new(Row { limit, ..row })));
    if let Some((steps, error)) = own {
        shop.write(Fact::Gauge { kind: gauge, resolution: edge(steps), error: edge(error).into() });
    }
    shop
}

/// The gauge itself, asked of no sheet.
fn gauge(kind: GaugeKind, own: Option<(i64, i64)>) -> Gauge {
    own.map_or_else(
        || Gauge::usual(kind),
        |(steps, error)| Gauge::own(kind, &edge(steps), &edge(error).into()),
    )
}

fn lengths() -> impl Strategy<Value = GaugeKind> {
    prop::sample::select(vec![
        GaugeKind::FeelerLeaf,
        GaugeKind::OutsideMicrometer,
        GaugeKind::DialIndicator,
        GaugeKind::VernierCaliper,
    ])
}

fn own_gauge() -> impl Strategy<Value = Option<(i64, i64)>> {
    prop::option::of((1_i64..60, 1_i64..60))
}

/// Whether the reading lies clear of the guard band's ends, where the last tick of rounding could decide.
fn is_clear(limit: &Limit, reading: &Reading, gauge: &Gauge) -> bool {
    let verdict = decide(limit, reading, gauge);
    let tick = Span::nearest(1e-5, Unit::Millimetre).expect("ten nanometres");
    [verdict.above_lower, verdict.below_upper]
        .into_iter()
        .flatten()
        .all(|distance| distance.size().minus(verdict.guard).size() > tick)
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    /// A gap typed: check, book, file for other programs, slot, build sheet, comparison, decisions, sign-off, speech.
    #[test]
    fn of_a_typed_gap(
        limit in (20_i64..80, 5_i64..60),
        count in 1_i64..200,
        kind in lengths(),
        own in own_gauge(),
    ) {
        let mut shop = shop(GAP, limit, kind, own);
        let figure = Figure {
            row: GAP.to_owned(),
            place: PLACE.to_owned(),
            text: text(count),
            unit: Unit::Millimetre,
            gauge: kind,
            instead_of: None,
        };
        shop.write(Fact::Figure(figure.clone()));
        let limits = shop.sheet();
        let row = limits.row(GAP).expect("a row");
        let reading = figure.reading().expect("a reading");
        let wanted = decide(&row.limit, &reading, &gauge(kind, own));
        let is_open = wanted.call != Call::Meets;

        let checked = limits.judge(row, &reading, kind).expect("it has edges");
        prop_assert_eq!(&checked.verdict, &wanted, "the check");
        prop_assert_eq!(call(&figure, &limits), Some(wanted.call), "the book");
        let entry = shop.book.entries().last().expect("just written");
        prop_assert_eq!(shop.book.words(entry, &limits).call, Some(wanted.call), "the book's line");
        prop_assert!(csv::write(&shop.book).contains(wanted.call.word()), "the file");
        let slot = Slot::named(PLACE).expect("a slot");
        let slot = slot_report(&shop.book, &shop.build, slot, &limits, row);
        prop_assert_eq!(slot.state.call(), Some(wanted.call), "the slot");
        let printed = sheet(&shop, Copy::Shop);
        let readings = section(&printed, "Readings against their limits");
        prop_assert_eq!(readings.rows[0].call, Some(wanted.call), "the build sheet");
        prop_assert!(readings.rows[0].cells[4].starts_with(wanted.call.word()), "in words");
        let slots = section(&printed, "Side-seal slots");
        prop_assert_eq!(slots.rows[0].call, Some(wanted.call), "the sheet's slots");
        let points = compare(&shop.book, &limits, GAP, PLACE, 5).points;
        prop_assert_eq!(points[0].call, Some(wanted.call), "the comparison");
        let past = past_limits(&shop.book, &shop.build, &limits);
        let past: Vec<Call> = past.iter().map(|past| past.call).collect();
        prop_assert_eq!(past, if is_open { vec![wanted.call] } else { Vec::new() }, "decisions");
        let open = OpenPoints::of(&shop.book, &shop.build, &limits).undecided;
        prop_assert_eq!(!open.is_empty(), is_open, "the sign-off: {:?}", open);
        let aloud = spoken::verdict(&checked.verdict, &reading);
        let word = wanted.call.word().to_lowercase();
        prop_assert!(aloud.starts_with(&word), "speech: {}", aloud);
    }

    /// A width read in a survey, and the same width checked by itself.
    #[test]
    fn of_a_surveyed_width(
        limit in (79_800_i64..80_000, 5_i64..200),
        count in 79_700_i64..80_300,
        own in own_gauge(),
    ) {
        let kind = GaugeKind::OutsideMicrometer;
        let mut shop = shop(WIDTH, limit, kind, own);
        // At every place alike: one not read might be the worst.
        let places = Survey::HousingWidth.places(Geometry::preset().bore()).len();
        let texts = vec![text(count); places];
        let set = ReadingSet::typed(Survey::HousingWidth, "rotor-1", Unit::Millimetre, &texts);
        shop.write(Fact::Readings(set.clone()));
        let limits = shop.sheet();
        let row = limits.row(WIDTH).expect("a row");
        let reading = Reading::read(&text(count), Unit::Millimetre, row.bounds()).expect("a reading");
        let gauge = gauge(kind, own);
        prop_assume!(is_clear(&row.limit, &reading, &gauge));
        let wanted = decide(&row.limit, &reading, &gauge).call;
        let found = on_bench(&shop.book, Some(&shop.build), &limits, None, |bench| report(&set, bench))
            .expect("a width");
        let of_row = found.iter().filter(|found| found.row.as_deref() == Some(WIDTH));
        let calls: Vec<Call> = of_row.filter_map(|found| found.call).collect();
        prop_assert!(!calls.is_empty(), "the survey says nothing of the width");
        prop_assert!(calls.iter().all(|call| *call == wanted), "{:?}, not {:?}", calls, wanted);
    }
}
