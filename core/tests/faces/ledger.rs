//! The ledger of a face: from build to build by its casting mark.

use crate::{close_to, mm};
use pitleaf_core::book::{Book, BuildId, Entry, EntryId, FORMAT, Fact, Figure};
use pitleaf_core::faces::{FaceWork, FaceWorkFault, Ledger, Operation, Range};
use pitleaf_core::kept;
use pitleaf_core::limits::{BuildKind, Call, GaugeKind, Side};
use pitleaf_core::quantity::{Fault, Unit};

/// A book of several builds, written to entry by entry.
#[derive(Default)]
struct Shop {
    book: Book,
    order: u64,
}

impl Shop {
    fn write(&mut self, build: &str, fact: Fact) -> EntryId {
        self.order += 1;
        let is_opening = matches!(fact, Fact::Opened { .. });
        let id = if is_opening { build.to_owned() } else { format!("e{}", self.order) };
        let id = EntryId(id.into());
        self.book.take(Entry {
            format: FORMAT,
            id: id.clone(),
            build: EntryId(build.into()),
            order: self.order,
            at: 0,
            fact,
        });
        id
    }

    fn open(&mut self, build: &str) {
        let name = build.to_owned();
        self.write(build, Fact::Opened { name, kind: BuildKind::Any, rotors: 2, demo: false });
    }

    fn done(
        &mut self,
        build: &str,
        work: (&str, &str),
        operation: Operation,
        texts: [&str; 3],
    ) -> EntryId {
        let (piece, mark) = work;
        let work = FaceWork::typed(piece, mark, operation, Unit::Millimetre, texts);
        self.write(build, Fact::FaceWork(work.expect("what can be written")))
    }

    fn ledger(&self, build: &str, piece: &str) -> Option<Ledger<'_>> {
        let build: BuildId = EntryId(build.into());
        Ledger::of(&self.book, &build, &self.book.sheet(), piece)
    }

    #[track_caller]
    fn off(&self, build: &str, piece: &str) -> (f64, bool, Option<Call>) {
        let ledger = self.ledger(build, piece).expect("a ledger");
        let off = ledger.skin.taken_off.value.get::<uom::si::length::micrometer>();
        ((off * 10.0).round() / 10.0, ledger.skin.is_whole, ledger.call())
    }
}

/// Three rebuilds of one housing, 0.06 mm each time, its case 0.10 to 0.15 mm: what one build alone would pass
/// is through the case in the third.
#[test]
fn it_goes_from_build_to_build_by_the_casting_mark() {
    let mut shop = Shop::default();
    ["first", "second", "third"].iter().for_each(|build| shop.open(build));
    let face = ("front", "R5 A");
    shop.done("first", face, Operation::CameIn, ["0", "0.10", "0.15"]);
    shop.done("first", face, Operation::Lapped, ["0.06", "", ""]);
    assert_eq!(shop.off("first", "front"), (60.0, true, Some(Call::Meets)), "the first");
    shop.done("second", ("front", " r5  a "), Operation::Lapped, ["0.06", "", ""]);
    assert_eq!(shop.off("second", "front"), (120.0, true, Some(Call::TooClose)), "the second");
    assert!(shop.ledger("third", "front").is_none(), "its mark was not given yet");
    shop.done("third", ("front", "another"), Operation::Lapped, ["0.06", "", ""]);
    assert_eq!(shop.off("third", "front"), (60.0, false, None), "another housing");
    let third = shop.done("third", face, Operation::Lapped, ["0.06", "", ""]);
    let worn = Some(Call::DoesNotMeet(Side::Above));
    assert_eq!(shop.off("third", "front"), (180.0, true, worn), "the third");
    shop.write("third", Fact::Withdrawn { entry: third });
    assert_eq!(shop.off("second", "front"), (120.0, true, Some(Call::TooClose)), "withdrawn");
    let hardened = ["0.012", "0.25", "0.35"];
    shop.done("third", face, Operation::Hardened, hardened);
    assert_eq!(shop.off("third", "front"), (0.0, true, Some(Call::Meets)), "a new case");
    shop.done("third", face, Operation::Finished, ["0.005", "", ""]);
    let ledger = shop.ledger("third", "front").expect("a ledger");
    close_to(ledger.skin.taken_off.value, 0.005, 1e-12);
    close_to(ledger.grown, 0.012, 1e-12);
    assert_eq!(ledger.skin.depth, Some(Range { least: mm(0.25), most: mm(0.35) }), "the new one");
    let said: Vec<String> = ledger.lines.iter().map(|line| line.work.to_string()).collect();
    assert_eq!(
        said,
        [
            "came in, taken off before: 0 mm, depth 0.10 mm to 0.15 mm",
            "lapped, 0.06 mm off",
            "lapped, 0.06 mm off",
            "hardened, grown by 0.012 mm, depth 0.25 mm to 0.35 mm",
            "finished, 0.005 mm off",
        ],
        "line by line"
    );
}

#[test]
fn what_came_off_elsewhere_is_said_or_not_known() {
    let mut shop = Shop::default();
    shop.open("only");
    let face = ("rear", "K 12");
    shop.done("only", face, Operation::CameIn, ["", "0.3", ""]);
    shop.done("only", face, Operation::Lapped, ["0.04", "", ""]);
    assert_eq!(shop.off("only", "rear"), (40.0, false, Some(Call::TooClose)), "at least");
    shop.done("only", face, Operation::CameIn, ["0.10", "", ""]);
    assert_eq!(shop.off("only", "rear"), (140.0, true, Some(Call::Meets)), "it was found out");
    shop.done("only", face, Operation::CameIn, ["0.02", "", ""]);
    assert_eq!(shop.off("only", "rear").0, 60.0, "the last word on how it came in");
    shop.open("next");
    shop.done("next", face, Operation::CameIn, ["0.02", "", ""]);
    assert_eq!(shop.off("next", "rear").0, 60.0, "the book knows of more");
    shop.done("next", face, Operation::CameIn, ["0.09", "", ""]);
    assert_eq!(shop.off("next", "rear").0, 90.0, "another shop lapped it in between");
}

/// The two faces of an intermediate housing are lapped apart, and its number is no part of it.
#[test]
fn a_face_is_known_in_another_place_of_the_stack() {
    let mut shop = Shop::default();
    shop.open("three rotors");
    shop.open("two rotors");
    shop.done("three rotors", ("intermediate-2-front", "M"), Operation::Lapped, ["0.05", "", ""]);
    shop.done("two rotors", ("intermediate-1-front", "M"), Operation::CameIn, ["", "", ""]);
    shop.done("two rotors", ("intermediate-1-rear", "M"), Operation::CameIn, ["", "", ""]);
    assert_eq!(shop.off("two rotors", "intermediate-1-front").0, 50.0, "the same face");
    assert_eq!(shop.off("two rotors", "intermediate-1-rear").0, 0.0, "its other one");
}

/// What was typed against the sheet's row counts, unless the face has a lapping of its own in that build.
#[test]
fn a_figure_checked_against_the_row_counts_once() {
    let mut shop = Shop::default();
    shop.open("only");
    let figure = |place: &str| {
        Fact::Figure(Figure {
            row: "side-housing-lapped-off".to_owned(),
            place: place.to_owned(),
            text: "1½".to_owned(),
            unit: Unit::Thou,
            gauge: GaugeKind::OutsideMicrometer,
            instead_of: None,
        })
    };
    shop.write("only", figure("front"));
    shop.write("only", figure("intermediate-1"));
    shop.done("only", ("front", "A"), Operation::CameIn, ["0", "", ""]);
    shop.done("only", ("intermediate-1-rear", "B"), Operation::CameIn, ["0", "", ""]);
    // 1½ thou are 38.1 µm; the housing came in after it was typed, and the more counts all the same.
    assert_eq!(shop.off("only", "front").0, 38.1, "typed");
    assert_eq!(shop.off("only", "intermediate-1-rear").0, 38.1, "of its housing");
    shop.write("only", figure("intermediate-1-front"));
    shop.done("only", ("intermediate-1-front", "B"), Operation::CameIn, ["0", "", ""]);
    assert_eq!(shop.off("only", "intermediate-1-front").0, 38.1, "of the face, not of both");
    shop.done("only", ("front", "A"), Operation::Lapped, ["0.05", "", ""]);
    assert_eq!(shop.off("only", "front").0, 50.0, "its own, once");
}

#[test]
fn what_can_not_be_written_is_said() {
    let typed =
        |mark, operation, texts| FaceWork::typed("front", mark, operation, Unit::Millimetre, texts);
    let said =
        |mark, operation, texts| typed(mark, operation, texts).expect_err("refused").to_string();
    assert_eq!(typed("  ", Operation::Lapped, ["0.1", "", ""]), Err(FaceWorkFault::NoMark));
    assert_eq!(said("A", Operation::Lapped, ["", "", ""]), "Taken off: type how much.");
    assert_eq!(
        said("A", Operation::Finished, ["5.1", "", ""]),
        "Taken off: A deviation lies between 0 and 5 mm. Check the decimal point and the unit.",
    );
    assert_eq!(
        said("A", Operation::Hardened, ["", "0.4", "0.2"]),
        "The depth is given from the lesser figure to the greater. Swap them.",
    );
    let word = typed("A", Operation::Hardened, ["", "deep", ""]);
    assert_eq!(
        word,
        Err(FaceWorkFault::Figure("Least depth", Fault::Unreadable("deep".to_owned()))),
        "no number"
    );
    let lapped = typed("A", Operation::Lapped, ["1½ thou", "0.2", ""]).expect("written");
    assert_eq!(lapped.depth(), None, "lapping says nothing of the depth");
    let json = kept::write(&lapped);
    assert_eq!(
        json, r#"{"piece":"front","mark":"A","operation":"lapped","figure":"1½ thou"}"#,
        "as the book has it"
    );
    assert_eq!(kept::read::<FaceWork>(&json).expect("read back"), lapped);
}
