//! A book shown everywhere it is shown: what can stand in one stops no screen and no sheet.

use super::file::sample;
use super::{entry, id};
use pitleaf_core::book::{Book, BuildId, Entry, Fact, Slot, csv, demo};
use pitleaf_core::faces::report::{SpacerChoice, on_bench, report, stack};
use pitleaf_core::faces::{FaceWork, Operation, ReadingSet, Survey};
use pitleaf_core::find::Finder;
use pitleaf_core::joints::oil_feed::Feed;
use pitleaf_core::joints::plan::{Plan, joints, passes_done};
use pitleaf_core::limits::{Sheet, limit_line, limit_lines, rule};
use pitleaf_core::ports::{PortFace, SideHousing};
use pitleaf_core::quantity::{Bounds, Dimension, Reading, Unit};
use pitleaf_core::route::{
    BuildSheet, Copy, OpenPoints, Progress, builds, compare, compared_rows, past_limits,
};
use pitleaf_core::seals::{
    LooseKind, SIDE_SEAL_GAP, Written, advise, engine_report, gap_row, leaf_set, length_doubt,
    next_leaf, sentence, set_readings, slot_length_fact, slot_lengths, stages,
};
use pitleaf_core::{book, spoken};
use std::hint::black_box;

fn length(text: &str) -> Written {
    Written::read(text, Unit::Millimetre, Bounds::widest(Dimension::Length)).expect("a length")
}

fn survey(of: Survey, piece: &str, texts: &[&str]) -> Fact {
    let texts: Vec<String> = texts.iter().map(|&text| text.to_owned()).collect();
    Fact::Readings(ReadingSet::typed(of, piece, Unit::Millimetre, &texts))
}

fn face(piece: &str, operation: Operation, texts: [&str; 3]) -> FaceWork {
    FaceWork::typed(piece, "R5", operation, Unit::Millimetre, texts).expect("what can be written")
}

/// An entry of every kind there is, and of those that lead to most, several.
pub(super) fn full() -> Vec<Entry> {
    let starter = Sheet::starter();
    let own = |row: &str| Box::new(starter.row(row).expect("a row that ships").clone());
    let read = |text: &str| Reading::read(text, Unit::Millimetre, &Bounds::SIZE).expect("a size");
    let slot = Slot::named("1F-AB").expect("a slot");
    let mut facts = demo::facts();
    facts.extend([
        survey(Survey::EndPlay, "", &["0.05", "0.055", "0.05", "8.06"]),
        survey(Survey::Spacers, "", &["8.02", "8.06", "8.10"]),
        survey(
            Survey::Flatness,
            "front",
            &["0", "0.01", "-0.01", "0.02", "0", "0.03", "0.01", "0"],
        ),
        survey(Survey::RotorWidth, "1", &["79.90", "79.90", "79.91"]),
        Fact::Spacer(SpacerChoice {
            spacer: "8.06".to_owned(),
            predicted: length("0.055"),
            uncertainty: length("0.004"),
            thicker_gives_less: true,
        }),
        Fact::FaceWork(face("front", Operation::CameIn, ["0.12", "0.10", "0.15"])),
        Fact::FaceWork(face("front", Operation::Lapped, ["0.06", "", ""])),
        Fact::FaceWork(face("intermediate-1-rear", Operation::Hardened, ["", "0.3", ""])),
        Fact::PortFace(PortFace::usual(SideHousing::Front)),
        LooseKind::SideSealLength.fact(1, &read("32.51")),
        slot_length_fact(slot, &read("32.55")),
        Fact::Limit(own("side-seal-gap-na")),
        Fact::BuildLimit(own("side-seal-gap-fi")),
        Fact::Limit(own("compression-fi")),
    ]);
    let mut entries = sample();
    // The build stays open to be shown: signed off, reopened, and the rest behind it.
    let first = 100_u64;
    for (order, fact) in (first..).zip(facts) {
        entries.push(entry(&format!("f{order}"), order, fact));
    }
    entries
}

/// Shows a book on every screen that reads it, as the app does.
pub(super) fn show(book: &Book) {
    let known: Vec<BuildId> = book.builds();
    for build in known.iter().take(2) {
        show_build(book, build);
    }
    black_box(csv::write(book));
    black_box((builds(book, "k", false), builds(book, "", true)));
    let sheet = book.sheet();
    for row in compared_rows(book, &sheet).into_iter().take(6) {
        black_box(compare(book, &sheet, &row.id, "", 5));
    }
}

fn show_build(book: &Book, build: &BuildId) {
    let sheet = book.sheet_for(Some(build));
    for line in book.lines(build) {
        black_box(book.words(line.entry, &sheet));
        if let Fact::Figure(figure) = &line.entry.fact
            && let Some((row, reading, judged)) = book::judged(figure, &sheet)
        {
            let verdict = judged.verdict;
            black_box(verdict.explain(&row.limit, &reading, &judged.gauge));
            black_box(spoken::verdict(&verdict, &reading));
            black_box(rule(&row.limit, reading.unit(), Some((reading.amount(), verdict.guard))));
        }
    }
    for row in book.own_limits(Some(build)) {
        black_box((limit_line(&row.limit, row.unit), limit_lines(&row.limit, row.spoken_unit())));
        black_box(row.doubts());
    }
    black_box((past_limits(book, build, &sheet), OpenPoints::of(book, build, &sheet)));
    black_box(Progress::of(book, build, &sheet));
    for copy in [Copy::Customer, Copy::Shop] {
        black_box(BuildSheet::of(book, build, &sheet, copy, &|at| at.to_string()));
    }
    black_box(Feed::of(book, build).to_string());
    for joint in joints(book, build) {
        black_box((Plan::of(book, build, &joint), passes_done(book, build, &joint)));
    }
    show_seals(book, build, &sheet);
    black_box(on_bench(book, Some(build), &sheet, None, |bench| stack(bench, Unit::Millimetre)));
    for line in book.lines(build) {
        if let Fact::Readings(set) = &line.entry.fact {
            black_box(on_bench(book, Some(build), &sheet, None, |bench| report(set, bench)).ok());
        }
    }
    let finder = Finder::of(book, Some(build), &sheet);
    black_box(finder.find("gap"));
}

fn show_seals(book: &Book, build: &BuildId, sheet: &Sheet) {
    let Some((_, kind, rotors, _)) = book.opening(build) else { return };
    let (lengths, loose) =
        (slot_lengths(book, build, rotors), LooseKind::SideSealLength.all(book, build));
    if let (Some((_, _, slot)), Some(seal)) = (lengths.first(), loose.first()) {
        black_box(length_doubt(sheet, &seal.reading, slot));
    }
    black_box(stages(book, build, rotors));
    for row in sheet.rows().iter().filter(|row| row.id.starts_with(SIDE_SEAL_GAP)) {
        black_box(set_readings(book, build, row, rotors));
    }
    let Some(row) = gap_row(sheet, kind) else { return };
    let set = leaf_set(book);
    for report in engine_report(book, build, rotors, sheet, row) {
        let (now, unit) = (report.bracket(), row.spoken_unit());
        black_box((report.gap(unit), sentence(now, &row.limit, unit)));
        black_box(advise(now, None, &row.limit)).ok();
        if let Some(set) = set {
            black_box(next_leaf(now, &row.limit, set, 2));
        }
    }
}

/// The full sample is what it says, so that what is tried with it is tried on every kind of fact.
#[test]
fn every_kind_of_fact_is_among_them() {
    let entries = full();
    // The name a fact is kept by stands first in its JSON.
    let kinds: std::collections::BTreeSet<String> = entries
        .iter()
        .filter_map(|entry| {
            let text = pitleaf_core::kept::write(&entry.fact);
            text.split('"').nth(1).map(str::to_owned)
        })
        .collect();
    let source = include_str!("../../src/book/entry.rs");
    let (_, listed) = source.split_once("kept_variants!(Fact {").expect("the list of facts");
    let (listed, _) = listed.split_once("});").expect("its end");
    let wanted: Vec<&str> = listed.lines().filter_map(|line| line.split('"').nth(1)).collect();
    assert!(wanted.len() >= 27, "{wanted:?}");
    for kind in wanted {
        assert!(kinds.contains(kind), "none of the sample is a {kind}");
    }
    let mut book = super::order::folded(&entries);
    show(&book);
    book.take(entry("w", 999, Fact::Withdrawn { entry: id("f100") }));
    show(&book);
}
