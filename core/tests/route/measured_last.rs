//! What work changes is measured after the last of it, and the sheet shows the engine as built.

use super::Shop;
use super::sheet::{section, sheet};
use pitleaf_core::book::Fact;
use pitleaf_core::faces::{FaceWork, Operation};
use pitleaf_core::limits::{BuildKind, Call, Side};
use pitleaf_core::quantity::Unit;
use pitleaf_core::route::{Choice, Copy, Routing, State, decide_on, past_limits};

fn shop() -> Shop {
    Shop::new(BuildKind::NaturallyAspirated, 2)
}

fn state(shop: &Shop, key: &str) -> State {
    let progress = shop.progress();
    progress.standings[progress.place(key).unwrap_or_else(|| panic!("no {key}"))].state
}

/// Writes the marks of steps, whatever is open before them.
fn over(shop: &mut Shop, keys: &[&str]) {
    keys.iter().for_each(|key| shop.mark(key, "J.", "walked through by the test"));
}

/// Rows that work of the shop changes: each is measured once more behind the last step that can change it.
#[test]
fn every_row_that_the_work_changes_is_measured_behind_it() {
    let usual = Routing::usual();
    for rotors in 1..=4 {
        let stations = usual.stations(BuildKind::NaturallyAspirated, rotors, false);
        for (row, work) in [
            ("side-housing-warp", "hardened"),
            ("side-housing-step-side-seal", "hardened"),
            ("side-housing-thickness-spread", "hardened"),
            ("side-housing-roughness", "hardened"),
            ("rotor-bearing-clearance", "bearings-pressed"),
            ("main-bearing-clearance", "bearings-pressed"),
        ] {
            let work = stations.iter().position(|at| at.step.id == work).expect("the work");
            let dry = stations.iter().position(|at| at.step.id == "dry-stack").expect("the stack");
            let behind: Vec<usize> = (work..stations.len())
                .filter(|&at| stations[at].row() == Some(row) && stations[at].needs.contains(&work))
                .collect();
            assert!(!behind.is_empty(), "{row} is not measured behind {work}");
            for at in behind {
                assert!(
                    stations[dry].needs.contains(&at),
                    "{} holds the stack",
                    stations[at].key()
                );
            }
        }
    }
}

#[test]
fn a_reading_from_before_does_not_stand_for_the_face_as_built() {
    let mut shop = shop();
    let warp = |shop: &mut Shop, text: &str| {
        shop.read("side-housing-warp", "front", text, Unit::Millimetre);
    };
    warp(&mut shop, "0.30");
    assert_eq!(state(&shop, "side-warp/front"), State::Done, "as it came");
    over(&mut shop, &["hardened"]);
    assert_ne!(state(&shop, "warp-as-built/front"), State::Done, "measured before hardening");
    warp(&mut shop, "0.02");
    assert_eq!(state(&shop, "warp-as-built/front"), State::Done, "after it");
    assert_eq!(state(&shop, "side-warp/front"), State::Done, "and as it came");
    let printed = sheet(&shop, Copy::Customer);
    let line = &section(&printed, "Readings against their limits").rows;
    assert_eq!(line.len(), 1, "one line: {line:?}");
    assert_eq!(line[0].cells[1], "0.02 mm\nwas 0.30 mm", "as built, and what it was");
    assert_eq!(line[0].call, Some(Call::Meets), "of the engine as built");
    let sheet = shop.sheet();
    assert_eq!(past_limits(&shop.book, &shop.build, &sheet), [], "mended");
}

fn worked(shop: &mut Shop, operation: Operation, texts: [&str; 3]) {
    let work = FaceWork::typed("front", "R5", operation, Unit::Millimetre, texts);
    shop.write(Fact::FaceWork(work.expect("what can be written")));
}

/// The row of what lapping takes off has no limit: a reading is taken and has no verdict; the ledger has one.
#[test]
fn what_was_lapped_off_is_read_without_a_verdict() {
    let mut shop = shop();
    shop.read("side-housing-lapped-off", "front", "0.06", Unit::Millimetre);
    assert_eq!(state(&shop, "lapped-off/front"), State::Done, "read");
    let progress = shop.progress();
    let standing = &progress.standings[progress.place("lapped-off/front").expect("a step")];
    assert_eq!(standing.pieces[0].call, None, "no verdict");
    let printed = sheet(&shop, Copy::Customer);
    let line = &section(&printed, "Readings against their limits").rows[0];
    assert_eq!((line.call, line.cells[3].as_str(), line.cells[4].as_str()), (None, "no limit", ""));
    shop.withdraw_last();
    assert_ne!(state(&shop, "lapped-off/front"), State::Done, "withdrawn");
    worked(&mut shop, Operation::Lapped, ["0.06", "", ""]);
    assert_eq!(state(&shop, "lapped-off/front"), State::Done, "in the ledger");
    let middle = "intermediate-1";
    let work = |face: &str| {
        let piece = format!("{middle}-{face}");
        FaceWork::typed(&piece, "M", Operation::Lapped, Unit::Millimetre, ["0.02", "", ""])
            .expect("what can be written")
    };
    shop.write(Fact::FaceWork(work("front")));
    assert_ne!(state(&shop, "lapped-off/intermediate-1"), State::Done, "one of its two faces");
    shop.write(Fact::FaceWork(work("rear")));
    assert_eq!(state(&shop, "lapped-off/intermediate-1"), State::Done, "both");
}

/// Lapped through its case in the third build: an open point, decided like any other, and on the sheet.
#[test]
fn a_face_lapped_through_its_case_is_an_open_point() {
    let mut shop = shop();
    worked(&mut shop, Operation::CameIn, ["0.12", "0.10", "0.15"]);
    worked(&mut shop, Operation::Lapped, ["0.06", "", ""]);
    let limits = shop.sheet();
    let past = past_limits(&shop.book, &shop.build, &limits);
    let [face] = past.as_slice() else { panic!("one: {past:?}") };
    assert_eq!((face.row.id.as_str(), face.place.as_str()), ("side-housing-lapped-off", "front"));
    assert_eq!(
        (face.reading.as_str(), face.call),
        ("0.180 mm · 7.09 thou", Call::DoesNotMeet(Side::Above))
    );
    let decision = decide_on("side-housing-lapped-off", "front", Choice::Machine, "hardened again");
    shop.route(decision.expect("taken"));
    let printed = sheet(&shop, Copy::Customer);
    let line = &section(&printed, "Faces lapped and hardened").rows[0];
    assert_eq!(line.cells[0..2], ["front", "R5"], "which face");
    assert_eq!(
        line.cells[2],
        "kestrel: came in, taken off before: 0.12 mm, depth 0.10 mm to 0.15 mm\nkestrel: lapped, 0.06 mm off",
        "what was done"
    );
    assert_eq!(line.cells[3], "0.180 mm · 7.09 thou", "in all");
    assert_eq!(line.cells[6], "Does not meet\nmachine: hardened again", "and what became of it");
    worked(&mut shop, Operation::Hardened, ["0.01", "0.3", "0.4"]);
    assert_eq!(past_limits(&shop.book, &shop.build, &limits), [], "a new case");
}
