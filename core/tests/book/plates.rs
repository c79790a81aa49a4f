//! Engine's measures, faces, outlines and datum holes: how they look in a file, and what holds.

use super::{entry, id, opened};
use pitleaf_core::book::{Book, Entry, Fact};
use pitleaf_core::kept;
use pitleaf_core::limits::Sheet;
use pitleaf_core::ports::{
    Flow, PlugSide, PortFace, PortName, Rotation, SealedBy, SeenFrom, SideHousing, Stage,
    TypedDatums, TypedOutline, View,
};
use pitleaf_core::quantity::Unit;
use pitleaf_core::trochoid::TypedEngine;

const PORT: PortName =
    PortName { housing: SideHousing::Front, flow: Flow::Intake, number: 1, stage: Stage::Cut };

fn outline(rows: &str, figures: &str) -> Fact {
    Fact::Outline(TypedOutline {
        rows: rows.to_owned(),
        figures: figures.to_owned(),
        ..TypedOutline::empty(PORT, Unit::Millimetre)
    })
}

fn face() -> PortFace {
    PortFace {
        view: View {
            housing: SideHousing::Rear,
            seen_from: SeenFrom::Outside,
            rotation: Rotation::Clockwise,
            plugs: PlugSide::Bottom,
        },
        sealed_by: SealedBy::FlankEdge,
    }
}

fn sample() -> Vec<Entry> {
    let holes = TypedDatums {
        housing: SideHousing::Front,
        rows: "98 64 10\n-98 64 10".to_owned(),
        unit: Unit::Millimetre,
    };
    vec![
        opened(),
        entry("p1", 2, Fact::Engine(TypedEngine::preset())),
        entry("p2", 3, Fact::PortFace(face())),
        entry("p3", 4, outline("60 -41 4\n78,5 -44 5\n75 -66", "area 1 mm²")),
        entry("p4", 5, Fact::Datums(holes)),
    ]
}

const FILE: &str = r#"[
  {"format":1,"id":"kestrel","build":"kestrel","order":1,"at":1800000001000,
   "fact":{"opened":{"name":"Kestrel","kind":"naturally-aspirated","rotors":2,"demo":true}}},
  {"format":1,"id":"p1","build":"kestrel","order":2,"at":1800000002000,
   "fact":{"engine":{"unit":"mm","texts":["15","102","3","80","97.5","5.5","4","56","6"],"noses":true}}},
  {"format":1,"id":"p2","build":"kestrel","order":3,"at":1800000003000,
   "fact":{"port-face":{"view":{"housing":"rear","seen-from":"outside","rotation":"clockwise","plugs":"bottom"},"sealed-by":"flank-edge"}}},
  {"format":1,"id":"p3","build":"kestrel","order":4,"at":1800000004000,
   "fact":{"outline":{"port":{"housing":"front","flow":"intake","number":1,"stage":"cut"},
    "rows":"60 -41 4\n78,5 -44 5\n75 -66","unit":"mm","form":"coordinates","figures":"area 1 mm²"}}},
  {"format":1,"id":"p4","build":"kestrel","order":5,"at":1800000005000,
   "fact":{"datums":{"housing":"front","rows":"98 64 10\n-98 64 10","unit":"mm"}}}
]"#;

#[test]
fn ports_are_written_like_this_and_read_back() {
    let written = kept::write(&sample());
    let wanted: String = FILE.lines().map(str::trim_start).collect();
    assert_eq!(written, wanted, "a change here leaves older books unread");
    assert_eq!(kept::read::<Vec<Entry>>(FILE).unwrap(), sample(), "read back");
    // As earlier versions wrote an engine.
    let older = FILE.replace(r#","noses":true"#, "");
    let mut wanted = sample();
    wanted[1].fact = Fact::Engine(TypedEngine { noses: false, ..TypedEngine::preset() });
    assert_eq!(kept::read::<Vec<Entry>>(&older).unwrap(), wanted, "an older book");
}

fn book(entries: Vec<Entry>) -> Book {
    let mut book = Book::default();
    for entry in entries {
        assert!(book.take(entry), "each entry is new");
    }
    book
}

#[test]
fn the_latest_outline_holds_and_the_one_before_is_its_history() {
    let kestrel = id("kestrel");
    let rows = |book: &Book| book.outline(&kestrel, PORT).map(|outline| outline.rows.clone());
    let mut book = book(sample());
    assert_eq!(rows(&book).as_deref(), Some("60 -41 4\n78,5 -44 5\n75 -66"), "as typed");
    assert_eq!(book.outline(&kestrel, PORT.at(Stage::Stock)), None, "the stock one is another");
    book.take(entry("p5", 6, outline("60 -41\n78 -44\n75 -66", "")));
    assert_eq!(rows(&book).as_deref(), Some("60 -41\n78 -44\n75 -66"), "the later one");
    assert_eq!(book.outlines(&kestrel, SideHousing::Front).count(), 1, "still one port");
    book.take(entry("p6", 7, Fact::Withdrawn { entry: id("p5") }));
    assert_eq!(rows(&book).as_deref(), Some("60 -41 4\n78,5 -44 5\n75 -66"), "the one before");
    book.take(entry("p7", 8, outline("", "")));
    assert_eq!(rows(&book), None, "taken out");
    assert_eq!(book.outlines(&kestrel, SideHousing::Front).count(), 0, "no port left");
}

#[test]
fn measures_faces_and_holes_are_kept_by_what_they_are_of() {
    let kestrel = id("kestrel");
    let book = book(sample());
    assert_eq!(book.engine(&kestrel), Some(&TypedEngine::preset()), "the engine's measures");
    assert_eq!(book.port_face(&kestrel, SideHousing::Rear), face(), "the face as it was said");
    let usual = PortFace::usual(SideHousing::Front);
    assert_eq!(book.port_face(&kestrel, SideHousing::Front), usual, "the usual until it is said");
    let holes = book.datums(&kestrel, SideHousing::Front).map(|holes| holes.datums());
    assert_eq!(holes.map(|holes| holes.unwrap().len()), Some(2), "the holes");
    assert_eq!(book.datums(&kestrel, SideHousing::Rear), None, "none on the other housing");
}

#[test]
fn they_have_words() {
    let sheet = Sheet::starter();
    let words: Vec<(String, String)> = sample()[1..]
        .iter()
        .map(|entry| {
            let words = entry.words(&sheet);
            (words.about, words.says)
        })
        .collect();
    let wanted = [
        ("Engine’s measures", "15, 102, 3, 80, 97.5, 5.5, 4, 56, 6 mm"),
        (
            "Rear side housing",
            "seen from outside, shaft turns with the clock, plugs at the bottom, ports closed by \
             the flank’s edge",
        ),
        ("Front side housing · Primary intake, cut", "area 1 mm²"),
        ("Front side housing · datum holes", "98 64 10; -98 64 10"),
    ];
    let got: Vec<(&str, &str)> =
        words.iter().map(|(about, says)| (about.as_str(), says.as_str())).collect();
    assert_eq!(got, wanted, "each line of the book");
}
