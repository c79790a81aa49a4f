//! The order of work: what holds what, what a file may bring, and the sheet against the book.

mod compare;
mod compared;
mod compression;
mod decision;
mod edits;
mod fact;
mod file;
mod holds;
mod measured_last;
mod one_verdict;
mod pairs;
mod progress;
mod sheet;
mod sign_off;
mod usual;

use pitleaf_core::book::{Book, Entry, EntryId, FORMAT, Fact, Figure};
use pitleaf_core::limits::{BuildKind, GaugeKind, Sheet};
use pitleaf_core::quantity::Unit;
use pitleaf_core::route::{Piece, Progress, RouteFact};

/// A piece that nobody has read yet.
fn unread(name: &str) -> Piece {
    Piece { name: name.to_owned(), is_read: false, call: None }
}

/// A book with one build, written to entry by entry.
struct Shop {
    book: Book,
    build: EntryId,
    order: u64,
}

impl Shop {
    fn new(kind: BuildKind, rotors: u8) -> Self {
        let mut shop = Self { book: Book::default(), build: EntryId("kestrel".into()), order: 0 };
        shop.open("kestrel", kind, rotors);
        shop
    }

    fn demo() -> Self {
        use pitleaf_core::book::demo;
        let mut shop = Self::new(demo::KIND, demo::ROTORS);
        demo::facts().into_iter().for_each(|fact| shop.write(fact));
        shop
    }

    /// Opens another build and writes to that.
    fn open(&mut self, name: &str, kind: BuildKind, rotors: u8) {
        self.build = EntryId(name.into());
        self.order += 1;
        let fact = Fact::Opened { name: name.to_owned(), kind, rotors, demo: false };
        self.take(name, fact);
    }

    fn write(&mut self, fact: Fact) {
        self.order += 1;
        let id = format!("e{}", self.order);
        self.take(&id, fact);
    }

    fn take(&mut self, id: &str, fact: Fact) {
        self.book.take(Entry {
            format: FORMAT,
            id: EntryId(id.into()),
            build: self.build.clone(),
            order: self.order,
            at: 1_800_000_000_000 + self.order,
            fact,
        });
    }

    /// Written so many milliseconds after the last.
    fn take_later(&mut self, id: &str, later: u64, fact: Fact) {
        self.order += 1;
        self.book.take(Entry {
            format: FORMAT,
            id: EntryId(id.into()),
            build: self.build.clone(),
            order: self.order,
            at: 1_800_000_000_000 + self.order + later,
            fact,
        });
    }

    fn route(&mut self, fact: RouteFact) {
        self.write(Fact::Route(fact));
    }

    fn read(&mut self, row: &str, place: &str, text: &str, unit: Unit) {
        self.write(Fact::Figure(Figure {
            row: row.to_owned(),
            place: place.to_owned(),
            text: text.to_owned(),
            unit,
            gauge: GaugeKind::OutsideMicrometer,
            instead_of: None,
        }));
    }

    fn withdraw_last(&mut self) {
        let entry = EntryId(format!("e{}", self.order).into());
        self.write(Fact::Withdrawn { entry });
    }

    fn sheet(&self) -> Sheet {
        self.book.sheet()
    }

    #[track_caller]
    fn progress(&self) -> Progress {
        Progress::of(&self.book, &self.build, &self.sheet()).expect("the build is open")
    }

    #[track_caller]
    fn mark(&mut self, key: &str, who: &str, why: &str) {
        let fact = self.progress().mark(key, who, why).expect("nothing stands in its way");
        self.route(fact);
    }

    #[track_caller]
    fn refused(&self, key: &str, who: &str) -> String {
        self.progress().mark(key, who, "").expect_err("something stands in its way").to_string()
    }
}
