//! The book: what entries add up to, in any order; and how they look in a file.

mod csv;
mod everywhere;
mod file;
mod fold;
mod fuzz;
mod join;
mod order;
mod plates;
mod put_right;
mod record;
mod saved;
mod shop;
mod sign_off;
mod slots;
mod union;

use pitleaf_core::book::{Entry, EntryId, FORMAT, Fact, Figure, Slot};
use pitleaf_core::limits::{BuildKind, GaugeKind};
use pitleaf_core::quantity::Unit;

fn id(text: &str) -> EntryId {
    EntryId(text.into())
}

/// An entry of the build "kestrel", written a second after the one before it.
fn entry(name: &str, order: u64, fact: Fact) -> Entry {
    let at = 1_800_000_000_000 + order * 1_000;
    Entry { format: FORMAT, id: id(name), build: id("kestrel"), order, at, fact }
}

fn opened() -> Entry {
    let fact = Fact::Opened {
        name: "Kestrel".to_owned(),
        kind: BuildKind::NaturallyAspirated,
        rotors: 2,
        demo: true,
    };
    entry("kestrel", 1, fact)
}

fn figure(text: &str) -> Fact {
    Fact::Figure(Figure {
        row: "side-seal-gap-na".to_owned(),
        place: "1F-AB".to_owned(),
        text: text.to_owned(),
        unit: Unit::Inch,
        gauge: GaugeKind::FeelerLeaf,
        instead_of: None,
    })
}

fn slot(name: &str) -> Slot {
    Slot::named(name).expect("a slot of the engine")
}
