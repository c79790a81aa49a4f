//! The demo build: the invented Saltmarsh shop's hillclimb engine Kestrel. No figure in it was measured.

use super::{Face, Fact, Figure, Slot};
use crate::limits::{BuildKind, GaugeKind};
use crate::quantity::Unit;

/// The build's name.
pub const NAME: &str = "Kestrel (demo)";
/// How it breathes.
pub const KIND: BuildKind = BuildKind::ForcedInduction;
/// Its rotors.
pub const ROTORS: u8 = 2;

/// The demo's facts, in the order they would have been written.
#[must_use]
pub fn facts() -> Vec<Fact> {
    const GAPS: [(Face, u8, &str, &str); 4] = [
        (Face::Front, 0, "two dots", "2"),
        (Face::Front, 1, "two dots and a short line", "2½"),
        (Face::Front, 2, "one long line", "3"),
        (Face::Rear, 0, "a cross", "2½"),
    ];
    let mut facts = vec![Fact::Note {
        about: String::new(),
        words: "Demo. The Saltmarsh shop and its hillclimb engine Kestrel are invented, and so is every figure here.".to_owned(),
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
    facts
}

fn figure(row: &str, place: &str, text: &str, unit: Unit, gauge: GaugeKind) -> Fact {
    Fact::Figure(Figure {
        row: row.to_owned(),
        place: place.to_owned(),
        text: text.to_owned(),
        unit,
        gauge,
    })
}
