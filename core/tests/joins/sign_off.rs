//! What a sign-off asks about is what the sheet shows as not met or too close to call, and what was decided stands on both.

use super::books::{BUILDS, build, config, entries, folded};
use super::sheet::{as_read, printed, section};
use pitleaf_core::book::{Book, BuildId, Slot};
use pitleaf_core::limits::{BuildKind, Call, place_words};
use pitleaf_core::route::{OpenPoints, Past, past_limits};
use pitleaf_core::seals::{SlotState, gap_row, slot_report};
use proptest::prelude::*;
use std::collections::BTreeSet;

/// Name and reading of every line of the sheet that is not proved to meet its limit; of gaps, the slots' lines.
fn not_met(book: &Book, of: &BuildId) -> BTreeSet<(String, String)> {
    let sheet = printed(book, of);
    let is_open = |call: Option<Call>| call.is_some_and(|call| call != Call::Meets);
    let limits = book.sheet_for(Some(of));
    let row = gap_row(&limits, BuildKind::NaturallyAspirated).expect("a row");
    let mut found = BTreeSet::new();
    for line in section(&sheet, "Readings against their limits").rows {
        if is_open(line.call) && !line.cells[0].ends_with(&row.what) {
            found.insert((line.cells[0].replace(" · ", " "), as_read(&line).to_owned()));
        }
    }
    for line in section(&sheet, "Side-seal slots").rows {
        let slot = Slot::named(&line.cells[0]).expect("a slot");
        let report = slot_report(book, of, slot, &limits, row);
        // A seal on the bench that leaves say is too tight is work in hand; only in its slot it is a finding.
        if is_open(line.call) && (report.measured.is_some() || report.state.is_fitted_past()) {
            found.insert((format!("{slot} {}", row.what), line.cells[2].clone()));
        }
    }
    found
}

fn named(past: &Past<'_>) -> (String, String) {
    (
        format!("{} {}", place_words(&past.place), past.row.what).trim().to_owned(),
        past.reading.clone(),
    )
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn the_lines_not_met_are_the_decisions_and_the_open_points(entries in entries()) {
        let book = folded(&entries);
        for name in BUILDS {
            let of = build(name);
            let sheet = book.sheet_for(Some(&of));
            let past = past_limits(&book, &of, &sheet);
            let all: Vec<_> = past.iter().map(named).collect();
            let listed: BTreeSet<_> = all.iter().cloned().collect();
            prop_assert_eq!(all.len(), listed.len(), "one is asked about twice: {:?}", all);
            prop_assert_eq!(&listed, &not_met(&book, &of), "decisions and the sheet’s lines, {}", name);

            let open = OpenPoints::of(&book, &of, &sheet);
            let undecided: Vec<_> = past.iter().filter(|past| past.decision.is_none()).collect();
            prop_assert_eq!(open.undecided.len(), undecided.len(), "{:?}", open.undecided);
            for past in undecided {
                let is_named = open.undecided.iter().any(|line| {
                    line.contains(&past.row.what) && line.contains(&past.reading)
                });
                prop_assert!(is_named, "{:?} in {:?}", named(past), open.undecided);
            }

            let decided = section(&printed(&book, &of), "Past a limit or too close to call, and what became of parts");
            prop_assert_eq!(decided.rows.len(), past.len(), "each with what was decided");
            for (line, past) in decided.rows.iter().zip(&past) {
                let choice = past.decision.map_or("not decided", |(choice, _)| choice.name());
                prop_assert_eq!(line.cells[2].as_str(), choice, "{:?}", line.cells);
            }
        }
    }

    /// Every point is counted, and one that is open alone asks for a reason.
    #[test]
    fn every_seal_not_proved_is_counted(entries in entries()) {
        let book = folded(&entries);
        let of = build(BUILDS[0]);
        let sheet = book.sheet_for(Some(&of));
        let row = gap_row(&sheet, BuildKind::NaturallyAspirated).expect("a row");
        let unproved: Vec<String> = Slot::of_engine(2)
            .into_iter()
            .filter(|slot| {
                let report = slot_report(&book, &of, *slot, &sheet, row);
                // One typed from a gauge is too close to call: that is a reading to be decided on.
                report.state == SlotState::FittedUnproved && report.measured.is_none()
            })
            .map(|slot| slot.to_string())
            .collect();
        let open = OpenPoints::of(&book, &of, &sheet);
        prop_assert_eq!(open.unproved.len(), unproved.len());
        for slot in &unproved {
            prop_assert!(open.unproved.iter().any(|open| open.key == *slot), "{}", slot);
        }
        if !unproved.is_empty() {
            let alone = OpenPoints { unproved: open.unproved, ..OpenPoints::default() };
            prop_assert!(alone.sign("J.", "").is_err(), "a gap not proved asks for a reason");
        }
    }
}

/// A gap tried, then typed, of a seal in its slot: one reading, asked about once.
#[test]
fn a_gap_tried_and_then_typed_is_asked_about_once() {
    use pitleaf_core::book::{Entry, EntryId, FORMAT, Fact, Figure};
    use pitleaf_core::limits::GaugeKind;
    use pitleaf_core::quantity::Unit;
    let of = build(BUILDS[0]);
    let slot = Slot::named("1F-AB").expect("a slot");
    let kind = BuildKind::NaturallyAspirated;
    let typed = Figure {
        row: super::books::GAP.to_owned(),
        place: slot.to_string(),
        text: "0.500".to_owned(),
        unit: Unit::Millimetre,
        gauge: GaugeKind::FeelerLeaf,
        instead_of: None,
    };
    let facts = [
        Fact::Opened { name: "Kestrel".to_owned(), kind, rotors: 2, demo: false },
        super::books::tried(slot, 30, true),
        Fact::Figure(typed),
        Fact::Fitted { slot, fitted: true },
    ];
    let entries = (1_u64..).zip(facts).map(|(order, fact)| Entry {
        format: FORMAT,
        id: if order == 1 { of.clone() } else { EntryId(format!("e{order}").into()) },
        build: of.clone(),
        order,
        at: order,
        fact,
    });
    let entries: Vec<Entry> = entries.collect();
    let book = folded(&entries);
    let limits = book.sheet_for(Some(&of));
    let past = past_limits(&book, &of, &limits);
    assert_eq!(
        past.iter().map(named).collect::<Vec<_>>(),
        [("1F-AB Side seal to corner seal, naturally aspirated".to_owned(), "0.500 mm".to_owned())]
    );
}
