//! From the book's entries to the state of each slot.

use crate::bench::{micrometres, set_of_micrometres, strokes, trial};
use pitleaf_core::book::{Book, Entry, EntryId, FORMAT, Face, Fact, Figure, Slot};
use pitleaf_core::kept;
use pitleaf_core::limits::{BuildKind, GaugeKind, Row, Sheet};
use pitleaf_core::quantity::Unit;
use pitleaf_core::seals::{
    Bracket, Drawing, GrindingWords, GroundBy, Outcome, SlotState, Stack, Step, Trial,
    engine_report, last_leaf_unit, leaf_set, removal_for, slot_report, stages, usual_tolerance,
};
use std::collections::HashSet;

/// A book being written, one entry after the other.
struct Pen {
    book: Book,
    entries: Vec<Entry>,
}

fn build() -> EntryId {
    EntryId("e1".into())
}

impl Pen {
    fn new() -> Self {
        let mut pen = Self { book: Book::default(), entries: Vec::new() };
        pen.write(Fact::Opened {
            name: "Kestrel".to_owned(),
            kind: BuildKind::NaturallyAspirated,
            rotors: 2,
            demo: true,
        });
        pen
    }

    fn write(&mut self, fact: Fact) -> EntryId {
        let order = self.book.next_order();
        let id = EntryId(format!("e{order}").into());
        let entry = Entry { format: FORMAT, id: id.clone(), build: build(), order, at: 0, fact };
        self.entries.push(entry.clone());
        assert!(self.book.take(entry), "a new entry is taken");
        id
    }

    fn state(&self) -> SlotState {
        slot_report(&self.book, &build(), slot(), &Sheet::starter(), &row()).state
    }

    fn tried(
        &mut self,
        outcome: Outcome,
        marks: &[i64],
        ground: Option<pitleaf_core::seals::Ground>,
    ) -> EntryId {
        self.write(Fact::Trial { slot: slot(), seen: trial(outcome, marks, 3, ground) })
    }
}

fn slot() -> Slot {
    Slot::new(1, Face::Front, 0).unwrap()
}

/// Any gap row with the limit 0.05 … 0.10 mm.
fn row() -> Row {
    let mut row = Sheet::starter().row("side-seal-gap-na").unwrap().clone();
    row.limit = crate::bench::limit(Some("0.05"), Some("0.10"));
    row
}

#[test]
fn a_slot_goes_from_not_measured_to_fitted() {
    let mut pen = Pen::new();
    assert_eq!(pen.state(), SlotState::NotMeasured);
    pen.tried(Outcome::WillNotEnter, &[], None);
    assert_eq!(pen.state(), SlotState::ToGrind);
    pen.tried(Outcome::FreeNoLeaf, &[30], strokes(6));
    assert_eq!(pen.state(), SlotState::ToGrind);
    pen.tried(Outcome::Goes, &[50], strokes(4));
    assert_eq!(pen.state(), SlotState::Undecided);
    pen.tried(Outcome::Goes, &[60], None);
    pen.tried(Outcome::DoesNotGo, &[90], None);
    assert_eq!(pen.state(), SlotState::Fits);
    pen.write(Fact::Fitted { slot: slot(), fitted: true });
    assert_eq!(pen.state(), SlotState::Fitted);
    pen.write(Fact::Fitted { slot: slot(), fitted: false });
    assert_eq!(pen.state(), SlotState::Fits);
    let report = slot_report(&pen.book, &build(), slot(), &Sheet::starter(), &row());
    assert_eq!(
        report.bracket(),
        Bracket { low: Some(micrometres(57)), high: Some(micrometres(93)) }
    );
    assert_eq!(report.trials.len(), 5);
    // Two stages: the first has an open end, the second took [0, 33) to [57, 93) in four strokes.
    let known = removal_for(&[], &stages(&pen.book, &build(), 2), GroundBy::Strokes).unwrap();
    assert_eq!((known.fastest.removed.value(Unit::Micrometre), known.fastest.strokes), (93.0, 4));
}

/// Whoever tries metric leaves on one slot tries them on the next.
#[test]
fn the_next_slot_follows_the_leaf_last_tried() {
    let mut pen = Pen::new();
    let last = |pen: &Pen| last_leaf_unit(&pen.book, &build());
    assert_eq!(last(&pen), None, "nothing tried");
    let inch = Stack::read("2", Unit::Thou).unwrap();
    let tolerance = usual_tolerance().unwrap();
    let seen = Trial::with_leaves(Outcome::Goes, inch, tolerance, None).unwrap();
    pen.write(Fact::Trial { slot: slot(), seen });
    assert_eq!(last(&pen), Some(Unit::Thou), "thou");
    let other = Slot::new(2, Face::Rear, 1).unwrap();
    let metric = Stack::read("0.05", Unit::Millimetre).unwrap();
    let tolerance = usual_tolerance().unwrap();
    let seen = Trial::with_leaves(Outcome::DoesNotGo, metric, tolerance, None).unwrap();
    let id = pen.write(Fact::Trial { slot: other, seen });
    pen.tried(Outcome::WillNotEnter, &[], None);
    assert_eq!(
        last(&pen),
        Some(Unit::Millimetre),
        "mm on another slot, and a trial without a leaf"
    );
    pen.write(Fact::Withdrawn { entry: id });
    assert_eq!(last(&pen), Some(Unit::Thou), "a withdrawn trial is none");
    let elsewhere = EntryId("e99".into());
    assert_eq!(last_leaf_unit(&pen.book, &elsewhere), None, "another build’s leaves are its own");
}

#[test]
fn a_seal_ground_too_short_is_replaced_by_a_fresh_one() {
    let mut pen = Pen::new();
    pen.tried(Outcome::Goes, &[120], None);
    assert_eq!(pen.state(), SlotState::TooWide);
    pen.write(Fact::Fitted { slot: slot(), fitted: true });
    pen.write(Fact::FreshSeal { slot: slot() });
    assert_eq!(
        pen.state(),
        SlotState::NotMeasured,
        "neither the old gap nor the old fitting holds"
    );
    pen.tried(Outcome::MovesCornerSeal, &[], None);
    assert_eq!(slot_report(&pen.book, &build(), slot(), &Sheet::starter(), &row()).trials.len(), 1);
    assert_eq!(
        pen.state(),
        SlotState::ToGrind,
        "its first trial does not bring the old fitting back"
    );
    assert!(!pen.book.is_fitted(&build(), slot()), "nor does the book have it so");
    pen.write(Fact::Fitted { slot: slot(), fitted: true });
    assert!(pen.book.is_fitted(&build(), slot()), "the fresh one is in");
    let fresh = pen.write(Fact::FreshSeal { slot: slot() });
    assert!(!pen.book.is_fitted(&build(), slot()), "and out again");
    pen.write(Fact::Withdrawn { entry: fresh });
    assert!(pen.book.is_fitted(&build(), slot()), "that was a slip");
}

/// A tick would hide it: a seal in its slot with a gap past the limit is both.
#[test]
fn fitted_does_not_hide_a_gap_past_its_limit() {
    let mut pen = Pen::new();
    pen.tried(Outcome::Goes, &[120], None);
    pen.write(Fact::Fitted { slot: slot(), fitted: true });
    let report = slot_report(&pen.book, &build(), slot(), &Sheet::starter(), &row());
    assert_eq!(report.state, SlotState::FittedTooWide);
    assert_eq!(report.gap_state, SlotState::TooWide);
    pen.write(Fact::FreshSeal { slot: slot() });
    pen.tried(Outcome::WillNotEnter, &[], None);
    pen.write(Fact::Fitted { slot: slot(), fitted: true });
    assert_eq!(pen.state(), SlotState::FittedTooTight);
    pen.tried(Outcome::Goes, &[60], strokes(4));
    pen.tried(Outcome::DoesNotGo, &[90], None);
    assert_eq!(pen.state(), SlotState::Fitted, "ground to fit");
}

/// Ticked off although a thicker leaf might still go: neither good nor bad, and not hidden.
#[test]
fn fitted_does_not_hide_a_gap_that_no_trial_proves() {
    let mut pen = Pen::new();
    pen.write(Fact::Fitted { slot: slot(), fitted: true });
    assert_eq!(pen.state(), SlotState::FittedUnproved, "nothing was measured");
    assert_eq!(SlotState::FittedUnproved.name(), "fitted, gap not proved");
    pen.tried(Outcome::Goes, &[60], None);
    assert_eq!(pen.state(), SlotState::FittedUnproved, "it may be past 0.10");
    pen.tried(Outcome::DoesNotGo, &[90], None);
    assert_eq!(pen.state(), SlotState::Fitted, "proved");
    pen.tried(Outcome::DoesNotGo, &[40], None);
    assert_eq!(pen.state(), SlotState::FittedUnproved, "trials disagree");
}

/// A gauge read later than the leaves knows more: no stroke is advised against what it says.
#[test]
fn grinding_goes_by_a_gap_measured_later_than_any_leaf() {
    let words = |pen: &Pen| {
        let (row, stages) = (row(), stages(&pen.book, &build(), 2));
        let report = slot_report(&pen.book, &build(), slot(), &Sheet::starter(), &row);
        GrindingWords::of(&report, &stages, GroundBy::Strokes, &row, Unit::Millimetre)
    };
    let mut pen = Pen::new();
    assert_eq!(words(&pen), None, "nothing tried");
    pen.tried(Outcome::FreeNoLeaf, &[10], None);
    pen.tried(Outcome::Goes, &[10], strokes(4));
    pen.tried(Outcome::DoesNotGo, &[20], None);
    let told = words(&pen).expect("tried");
    // At most 3 µm off each leaf, so from under 13 to under 23 µm: 23/4 a stroke; the limit is 50 to 100.
    assert_eq!(told.now, "Take 9 strokes, then measure.");
    assert_eq!(
        told.beside,
        "To fit it takes at least 5. At your fastest so far, more than 13 could make it too wide. \
         One stroke takes off 0.000 mm to 0.006 mm."
    );
    for (text, now) in [
        ("0.07", "It fits: grind no more."),
        ("0.05", "Measure first: it may fit as it is."),
        (
            "0.12",
            "Too wide already, and a seal can’t be made longer. Take a fresh seal for this slot.",
        ),
        ("0.03", "Take 9 strokes, then measure."),
    ] {
        let measured = Figure {
            row: row().id,
            place: slot().to_string(),
            text: text.to_owned(),
            unit: Unit::Millimetre,
            gauge: GaugeKind::OutsideMicrometer,
            instead_of: None,
        };
        pen.write(Fact::Figure(measured));
        assert_eq!(words(&pen).expect("tried").now, now, "measured {text}");
    }
    pen.tried(Outcome::DoesNotGo, &[10], None);
    assert_eq!(words(&pen).expect("tried").now, "No advice while two trials disagree.");
}

#[test]
fn a_mistaken_trial_is_withdrawn_and_nothing_is_lost() {
    let mut pen = Pen::new();
    pen.tried(Outcome::Goes, &[60], None);
    pen.tried(Outcome::DoesNotGo, &[90], None);
    let slip = pen.tried(Outcome::DoesNotGo, &[40], None);
    assert_eq!(pen.state(), SlotState::Disagree);
    let report = slot_report(&pen.book, &build(), slot(), &Sheet::starter(), &row());
    let fault = report.history.as_ref().unwrap_err();
    assert_eq!(report.trials[fault.narrow].0, &slip, "the screen can point at the entry");
    assert_eq!(fault.to_string(), "60 µm went, but 40 µm did not: one of the two is wrong.");
    assert_eq!(report.bracket(), Bracket::default(), "nothing is claimed while they disagree");
    pen.write(Fact::Withdrawn { entry: slip.clone() });
    assert_eq!(pen.state(), SlotState::Fits);
    assert!(pen.book.entry(&slip).is_some(), "it stays in the book");
}

#[test]
fn a_typed_gap_counts_when_it_is_the_latest_word() {
    let mut pen = Pen::new();
    let figure = |text: &str| {
        Fact::Figure(Figure {
            row: row().id,
            place: slot().to_string(),
            text: text.to_owned(),
            unit: Unit::Millimetre,
            gauge: GaugeKind::OutsideMicrometer,
            instead_of: None,
        })
    };
    for (text, state) in [
        ("0.075", SlotState::Fits),
        ("0.020", SlotState::ToGrind),
        ("0.130", SlotState::TooWide),
        ("0.100", SlotState::Undecided),
        ("abc", SlotState::Undecided),
        ("5 g", SlotState::Undecided),
    ] {
        pen.write(figure(text));
        assert_eq!(pen.state(), state, "{text}");
    }
    pen.tried(Outcome::WillNotEnter, &[], None);
    assert_eq!(pen.state(), SlotState::ToGrind, "the trial came later");
    pen.write(figure("0.075"));
    assert_eq!(pen.state(), SlotState::Fits, "the figure came later");
}

#[test]
fn marks_drawings_and_leaves_are_kept() {
    let mut pen = Pen::new();
    assert_eq!(leaf_set(&pen.book), None);
    let drawing = Drawing::of(vec![vec![[0, 0], [0, 0], [255, 9]], vec![]]).unwrap();
    assert_eq!(drawing.strokes(), [vec![[0, 0], [255, 9]]], "where the finger rested is one point");
    pen.write(Fact::Mark { slot: slot(), mark: "two dots and a short line".to_owned() });
    pen.write(Fact::Drawing { slot: slot(), drawing: drawing.clone() });
    let old = set_of_micrometres(&[50, 100], 3);
    let new = set_of_micrometres(&[40, 50, 100], 3);
    pen.write(Fact::Leaves(old.clone()));
    let latest = pen.write(Fact::Leaves(new.clone()));
    let report = slot_report(&pen.book, &build(), slot(), &Sheet::starter(), &row());
    assert_eq!((report.mark, report.drawing), (Some("two dots and a short line"), Some(&drawing)));
    assert_eq!(leaf_set(&pen.book), Some(&new));
    pen.write(Fact::Withdrawn { entry: latest });
    assert_eq!(leaf_set(&pen.book), Some(&old));
    let much = Drawing::of(vec![(0..2_001).map(|n| [u8::try_from(n % 250).unwrap(), 0]).collect()]);
    assert_eq!(
        much.unwrap_err().to_string(),
        "That is more than a mark. Draw it again with fewer lines."
    );
}

#[test]
fn the_whole_engine_is_reported_slot_by_slot() {
    let mut pen = Pen::new();
    pen.tried(Outcome::WillNotEnter, &[], None);
    let reports = engine_report(&pen.book, &build(), 2, &Sheet::starter(), &row());
    assert_eq!(reports.len(), 12);
    assert_eq!(reports.iter().filter(|report| report.state == SlotState::NotMeasured).count(), 11);
    assert_eq!(reports[0].slot.to_string(), "1F-AB");
    let names: HashSet<&str> = SlotState::ALL.iter().map(|state| state.name()).collect();
    assert_eq!(names.len(), SlotState::ALL.len(), "each state has a word of its own");
}

#[test]
fn the_facts_are_written_readably_and_read_back() {
    let written = |fact: &Fact, json: &str| {
        assert_eq!(kept::write(fact), json);
        assert_eq!(&kept::read::<Fact>(json).unwrap(), fact);
    };
    let goes = Fact::Trial { slot: slot(), seen: trial(Outcome::Goes, &[50, 30], 3, strokes(4)) };
    written(
        &goes,
        r#"{"trial":{"slot":"1F-AB","seen":{"outcome":"goes","leaves":["50 µm","30 µm"],"tolerance":"3 µm","ground":{"count":4,"by":"strokes"}}}}"#,
    );
    let alone = Fact::Trial { slot: slot(), seen: trial(Outcome::WillNotEnter, &[], 3, None) };
    written(&alone, r#"{"trial":{"slot":"1F-AB","seen":{"outcome":"will-not-enter"}}}"#);
    written(&Fact::FreshSeal { slot: slot() }, r#"{"fresh-seal":{"slot":"1F-AB"}}"#);
    let drawing = Drawing::of(vec![vec![[1, 2], [3, 4]]]).unwrap();
    written(
        &Fact::Drawing { slot: slot(), drawing },
        r#"{"drawing":{"slot":"1F-AB","drawing":[[[1,2],[3,4]]]}}"#,
    );
    let bad = r#"{"trial":{"slot":"1F-AB","seen":{"outcome":"goes"}}}"#;
    let fault = kept::read::<Fact>(bad).unwrap_err().to_string();
    assert!(fault.starts_with("No leaf named. Say which leaf or leaves were tried."), "{fault}");
}

#[test]
fn two_phones_books_join_to_the_same_state() {
    let mut pen = Pen::new();
    pen.tried(Outcome::WillNotEnter, &[], None);
    pen.tried(Outcome::Goes, &[60], strokes(4));
    pen.tried(Outcome::DoesNotGo, &[90], None);
    pen.write(Fact::Fitted { slot: slot(), fitted: true });
    for by in 0..pen.entries.len() {
        let mut turned = pen.entries.clone();
        turned.rotate_left(by);
        let mut joined = Book::default();
        for entry in turned.iter().chain(&pen.entries) {
            joined.take(entry.clone());
        }
        let (one, other) = (
            slot_report(&joined, &build(), slot(), &Sheet::starter(), &row()),
            slot_report(&pen.book, &build(), slot(), &Sheet::starter(), &row()),
        );
        assert_eq!(one, other, "taken in from entry {by} on");
    }
}

#[test]
fn every_step_that_can_hurt_says_how() {
    for (step, words) in [
        (Step::Grinding, "eye protection"),
        (Step::Measuring, "burr"),
        (Step::Springs, "Springs fly"),
        (Step::CornerSeals, "no longer lets the apex seal down"),
        (Step::WhichEnd, "radiused"),
    ] {
        assert!(step.caution().contains(words), "{step:?}: {}", step.caution());
    }
    assert_eq!(Step::ALL.len(), 5);
}

#[test]
fn a_gap_typed_later_than_any_leaf_is_shown_in_place_of_the_bracket() {
    let mut pen = Pen::new();
    let gap = |pen: &Pen| {
        slot_report(&pen.book, &build(), slot(), &Sheet::starter(), &row()).gap(Unit::Millimetre)
    };
    assert_eq!(gap(&pen), "", "nothing known");
    pen.tried(Outcome::Goes, &[50], None);
    pen.tried(Outcome::DoesNotGo, &[80], None);
    assert_eq!(gap(&pen), "0.047…0.083 mm", "the bracket");
    pen.write(Fact::Figure(Figure {
        row: row().id,
        place: slot().to_string(),
        text: "2½".to_owned(),
        unit: Unit::Thou,
        gauge: GaugeKind::FeelerLeaf,
        instead_of: None,
    }));
    assert_eq!(gap(&pen), "2½ thou", "as typed");
    pen.tried(Outcome::Goes, &[60], None);
    assert_eq!(gap(&pen), "0.057…0.083 mm", "a later leaf counts again");
}
