//! The demo build: the invented Saltmarsh shop's hillclimb engine Kestrel. No figure in it was measured.

use super::{Face, Fact, Figure, Slot};
use crate::limits::{BuildKind, GaugeKind};
use crate::ports::{
    Flow, PlatePort, PortFace, PortName, SideHousing, Stage, TypedDatums, TypedOutline, line,
};
use crate::quantity::Unit;
use crate::route::{Choice, RouteFact, Topic, TypedTest};
use crate::trochoid::{Engine, TypedEngine};
use pitleaf_translated::tr;

/// The build's name.
pub const NAME: &str = tr!("Kestrel (demo)");
/// How it breathes.
pub const KIND: BuildKind = BuildKind::ForcedInduction;
/// Its rotors.
pub const ROTORS: u8 = 2;

/// The demo's facts, in the order they would have been written.
#[must_use]
pub fn facts() -> Vec<Fact> {
    const GAPS: [(Face, u8, &str, &str); 4] = [
        (Face::Front, 0, tr!("two dots"), "2"),
        (Face::Front, 1, tr!("two dots and a short line"), "2½"),
        (Face::Front, 2, tr!("one long line"), "3"),
        (Face::Rear, 0, tr!("a cross"), "2½"),
    ];
    let mut facts = vec![Fact::Note {
        about: String::new(),
        words: tr!("Demo. The Saltmarsh shop and its hillclimb engine Kestrel are invented, and so is every figure here.").to_owned(),
    }];
    for (face, flank, mark, gap) in GAPS {
        let Some(slot) = Slot::new(1, face, flank) else { continue };
        facts.push(Fact::Mark { slot, mark: mark.to_owned() });
        facts.push(figure(
            "side-seal-gap-fi",
            &slot.to_string(),
            gap,
            Unit::Thou,
            GaugeKind::FeelerLeaf,
        ));
    }
    if let Some(slot) = Slot::new(1, Face::Front, 0) {
        facts.push(Fact::Fitted { slot, fitted: true });
    }
    facts.push(Fact::Engine(TypedEngine::preset()));
    facts.extend(OUTLINES.map(|(flow, stage, rows)| outline(flow, stage, rows)));
    facts.push(Fact::Datums(TypedDatums {
        housing: SideHousing::Front,
        rows: "-98 64 10\n98 -64 10".to_owned(),
        unit: Unit::Millimetre,
    }));
    facts.extend(work().into_iter().map(Fact::Route));
    facts
}

/// The order of work, as far as the invented shop has come.
fn work() -> Vec<RouteFact> {
    const SAID: [(Topic, &str); 3] = [
        (Topic::Customer, tr!("Hillclimb team of the demo")),
        (Topic::Wish, tr!("Hard to start when hot, and down on power over the last two meetings.")),
        (Topic::Engine, tr!("Kestrel, two rotors of 654 cm³, turbocharged, third rebuild.")),
    ];
    const TESTS: [(&str, [&str; 3]); 2] =
        [("1", ["720", "710", "705"]), ("2", ["690", "560", "700"])];
    let mut facts: Vec<RouteFact> =
        SAID.map(|(topic, words)| RouteFact::Said { topic, words: words.to_owned() }).to_vec();
    facts.extend(TESTS.map(|(rotor, faces)| {
        RouteFact::Compression(TypedTest {
            rotor: rotor.to_owned(),
            faces: faces.map(str::to_owned),
            unit: Unit::Kilopascal.symbol().to_owned(),
            speed: "250".to_owned(),
            altitude: "120 m".to_owned(),
            air: String::new(),
        })
    }));
    facts.extend(["describe", "compression-before", "outside"].map(|step| RouteFact::Done {
        step: step.to_owned(),
        who: "S.".to_owned(),
        why: String::new(),
    }));
    facts.push(RouteFact::Decided {
        row: String::new(),
        place: tr!("rotor-housing 2").to_owned(),
        choice: Choice::Replace,
        why: tr!("flaked at the spark plugs").to_owned(),
    });
    facts
}

/// The front side housing's outlines: x, y and the corner's radius. The cut intake was drawn too far
/// on purpose: a corner seal drops into it, for the tool to say so.
const OUTLINES: [(Flow, Stage, &str); 3] = [
    (Flow::Intake, Stage::Stock, "66 -58 5\n63 -72 5\n44 -76 5\n44 -63 5"),
    (Flow::Intake, Stage::Cut, "68 -54 4\n76 -74 5\n44 -82 5\n42 -63 5"),
    (Flow::Exhaust, Stage::Stock, "-66 -58 5\n-63 -72 5\n-44 -76 5\n-44 -63 5"),
];

fn outline(flow: Flow, stage: Stage, rows: &str) -> Fact {
    let port = PortName { housing: SideHousing::Front, flow, number: 1, stage };
    let typed =
        TypedOutline { rows: rows.to_owned(), ..TypedOutline::empty(port, Unit::Millimetre) };
    let face = PortFace::usual(SideHousing::Front);
    let figures = PlatePort::new(&typed, &Engine::preset(), face)
        .map(|port| line(face.view, &port))
        .unwrap_or_default();
    Fact::Outline(TypedOutline { figures, ..typed })
}

fn figure(row: &str, place: &str, text: &str, unit: Unit, gauge: GaugeKind) -> Fact {
    Fact::Figure(Figure {
        row: row.to_owned(),
        place: place.to_owned(),
        text: text.to_owned(),
        unit,
        gauge,
        instead_of: None,
    })
}
