//! Random books: readings, trials, gauges, limits and decisions of two builds, some of them withdrawn.

use pitleaf_core::book::{Book, BuildId, Entry, EntryId, FORMAT, Fact, Figure, Slot};
use pitleaf_core::limits::{BuildKind, Edge, GaugeKind, Limit, Row, Sheet};
use pitleaf_core::quantity::{Bounds, Dimension, Unit};
use pitleaf_core::route::{Choice, RouteFact};
use pitleaf_core::seals::{Leaf, Outcome, Stack, Trial, Written};
use proptest::prelude::*;
use proptest::sample::select;

pub(crate) const GAP: &str = "side-seal-gap-na";
/// The rows read, each with its pieces, and about where its readings lie, in thousandths of a millimetre.
const READ: [(&str, &[&str], i64); 4] = [
    (GAP, &["1F-AB", "2R-CA"], 60),
    ("end-play", &[""], 55),
    ("rotor-housing-width", &["rotor-1", "rotor-2"], 79_940),
    ("side-housing-warp", &["front", "rear"], 40),
];
const GAUGES: [GaugeKind; 4] = [
    GaugeKind::FeelerLeaf,
    GaugeKind::OutsideMicrometer,
    GaugeKind::DialIndicator,
    GaugeKind::StraightedgeAndLeaf,
];

pub(crate) fn build(name: &str) -> BuildId {
    EntryId(name.into())
}

pub(crate) const BUILDS: [&str; 2] = ["kestrel", "linnet"];

/// Thousandths of a millimetre as text.
fn text(count: i64) -> String {
    format!("{}.{:03}", count / 1000, count % 1000)
}

fn edge(count: i64) -> Edge {
    Edge::read(&text(count), Unit::Millimetre).expect("an edge")
}

/// A reading as somebody types it: in millimetres with point or comma, in thou, in inches.
fn typed() -> impl Strategy<Value = (String, Unit)> + Clone {
    let about = 1_i64..140;
    prop_oneof![
        about.clone().prop_map(|count| (text(count), Unit::Millimetre)),
        about.clone().prop_map(|count| (text(count).replace('.', ","), Unit::Millimetre)),
        (1_i64..60).prop_map(|tenths| (format!("{}.{}", tenths / 10, tenths % 10), Unit::Thou)),
        Just(("2½".to_owned(), Unit::Thou)),
        (1_i64..60).prop_map(|tenths| (format!("0.{tenths:04}"), Unit::Inch)),
    ]
}

fn figure() -> impl Strategy<Value = Fact> {
    (
        select(READ.to_vec()),
        any::<prop::sample::Index>(),
        typed(),
        0_i64..120,
        select(GAUGES.to_vec()),
    )
        .prop_map(|((row, places, about), place, (typed, unit), off, gauge)| {
            let (text, unit) = if about > 1000 {
                (text(about - 60 + off), Unit::Millimetre)
            } else {
                (typed, unit)
            };
            Fact::Figure(Figure {
                row: row.to_owned(),
                place: (*place.get(places)).to_owned(),
                text,
                unit,
                gauge,
                instead_of: None,
            })
        })
}

fn slot() -> impl Strategy<Value = Slot> {
    select(vec!["1F-AB", "2R-CA"]).prop_map(|name| Slot::named(name).expect("a slot"))
}

/// A leaf of so many hundredths of a millimetre tried in a slot.
pub(crate) fn tried(slot: Slot, hundredths: i64, goes: bool) -> Fact {
    let leaf = Leaf::read(&text(hundredths * 10), Unit::Millimetre).expect("a leaf");
    let tolerance =
        Written::read("0.003", Unit::Millimetre, Bounds::widest(Dimension::Length)).expect("it");
    let outcome = if goes { Outcome::Goes } else { Outcome::DoesNotGo };
    let stack = Stack::of(vec![leaf]).expect("one leaf");
    Fact::Trial {
        slot,
        seen: Trial::with_leaves(outcome, stack, tolerance, None).expect("a trial"),
    }
}

fn trial() -> impl Strategy<Value = Fact> {
    (slot(), 1_i64..14, any::<bool>())
        .prop_map(|(slot, hundredths, goes)| tried(slot, hundredths, goes))
}

fn own_limit() -> impl Strategy<Value = Fact> {
    (select(READ.to_vec()), -50_i64..10, 5_i64..80, any::<bool>()).prop_map(
        |((row, _, about), below, width, is_of_build)| {
            let lower = (about + below).max(1);
            let limit =
                Limit { lower: Some(edge(lower)), upper: Some(edge(lower + width)), wear: None };
            let shipped = Sheet::starter().row(row).expect("a row that ships").clone();
            let row = Box::new(Row { limit, unit: Unit::Millimetre, ..shipped });
            if is_of_build { Fact::BuildLimit(row) } else { Fact::Limit(row) }
        },
    )
}

fn own_gauge() -> impl Strategy<Value = Fact> {
    (select(GAUGES.to_vec()), 1_i64..20, 1_i64..20).prop_map(|(kind, steps, error)| Fact::Gauge {
        kind,
        resolution: edge(steps),
        error: edge(error).into(),
    })
}

fn decision() -> impl Strategy<Value = Fact> {
    let choice = select(vec![Choice::Machine, Choice::Replace, Choice::Accept]);
    (select(READ.to_vec()), any::<prop::sample::Index>(), choice).prop_map(
        |((row, places, _), place, choice)| {
            Fact::Route(RouteFact::Decided {
                row: row.to_owned(),
                place: (*place.get(places)).to_owned(),
                choice,
                why: "one season more".to_owned(),
            })
        },
    )
}

fn fact() -> impl Strategy<Value = Fact> {
    // Two builds are opened first; what is withdrawn is one of the others, or not there.
    let other = (2_usize..26).prop_map(|number| EntryId(format!("e{number}").into()));
    prop_oneof![
        8 => figure(),
        3 => trial(),
        1 => slot().prop_map(|slot| Fact::FreshSeal { slot }),
        2 => (slot(), any::<bool>()).prop_map(|(slot, fitted)| Fact::Fitted { slot, fitted }),
        2 => own_limit(),
        1 => own_gauge(),
        3 => decision(),
        1 => slot().prop_map(|slot| Fact::Mark { slot, mark: "two dots".to_owned() }),
        3 => other.clone().prop_map(|entry| Fact::Withdrawn { entry }),
        1 => other.prop_map(|entry| Fact::Restored { entry }),
    ]
}

/// The entries of a random book, in the order written; most of them of the first build.
pub(crate) fn entries() -> impl Strategy<Value = Vec<Entry>> {
    let one = (fact(), prop::bool::weighted(0.2));
    prop::collection::vec(one, 1..24).prop_map(|facts| {
        let opened = |name: &str| Fact::Opened {
            name: name.to_owned(),
            kind: BuildKind::NaturallyAspirated,
            rotors: 2,
            demo: false,
        };
        let entry = |id: String, of: &str, order: u64, fact: Fact| Entry {
            format: FORMAT,
            id: EntryId(id.into()),
            build: build(of),
            order,
            at: 1_800_000_000_000 + order,
            fact,
        };
        let openings = (1_u64..)
            .zip(BUILDS)
            .map(|(order, name)| entry(name.to_owned(), name, order, opened(name)));
        let rest = facts.into_iter().zip(3_u64..).map(|((fact, elsewhere), order)| {
            entry(format!("e{}", order - 1), BUILDS[usize::from(elsewhere)], order, fact)
        });
        openings.chain(rest).collect()
    })
}

pub(crate) fn folded<'a>(entries: impl IntoIterator<Item = &'a Entry>) -> Book {
    let mut book = Book::default();
    for entry in entries {
        book.take(entry.clone());
    }
    book
}

/// The figures in force of a build by the plainest reading of the book: of each row and place the last entry
/// that nobody withdrew, or that was restored since.
pub(crate) fn in_force<'a>(entries: &'a [Entry], of: &BuildId) -> Vec<(&'a Entry, &'a Figure)> {
    let mut found: Vec<(&Entry, &Figure)> = Vec::new();
    for entry in entries.iter().filter(|entry| entry.build == *of) {
        if let Fact::Figure(figure) = &entry.fact
            && !is_withdrawn(entries, &entry.id)
        {
            found.retain(|(_, old)| (&old.row, &old.place) != (&figure.row, &figure.place));
            found.push((entry, figure));
        }
    }
    found
}

/// Whether the last word on an entry takes it back.
pub(crate) fn is_withdrawn(entries: &[Entry], id: &EntryId) -> bool {
    let mut words = entries.iter().filter_map(|entry| match &entry.fact {
        Fact::Withdrawn { entry } if entry == id => Some(true),
        Fact::Restored { entry } if entry == id => Some(false),
        _ => None,
    });
    words.next_back() == Some(true)
}

pub(crate) fn config() -> ProptestConfig {
    ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(64) }
}
