//! Lapping: what comes off, what is left of the case, what the stack loses.

use crate::{close_to, mm};
use pitleaf_core::faces::{
    Hardening, Job, Measured, Plan, Range, Reason, Refusal, Skin, SkinLeft, plan, stack_change,
};
use pitleaf_core::limits::Call;
use proptest::prelude::*;

fn job(flatness: f64, worst_place: f64, wanted: f64) -> Job {
    Job { flatness: mm(flatness), worst_place: mm(worst_place), wanted: mm(wanted) }
}

fn range(least: f64, most: f64) -> Range {
    Range { least: mm(least), most: mm(most) }
}

/// A skin of which it is known what came off.
fn skin(depth: Option<Range>, off: f64, uncertainty: f64) -> Skin {
    let taken_off = Measured { value: mm(off), uncertainty: mm(uncertainty) };
    Skin { depth, taken_off, is_whole: true }
}

fn grown(growth: Option<Range>) -> Hardening {
    Hardening { growth, ..Hardening::default() }
}

fn planned(job: Job, case: Option<Range>, growth: Option<Range>) -> Plan {
    plan(&job, &skin(case, 0.0, 0.0), &grown(growth)).expect("a plan")
}

#[test]
fn the_greater_of_flatness_and_worst_place_comes_off() {
    for (job, removal, reason, left) in [
        (job(0.05, 0.0, 0.01), 0.04, Reason::Flatness, 0.01),
        (job(0.05, 0.08, 0.01), 0.08, Reason::WorstPlace, 0.0),
        (job(0.05, 0.03, 0.01), 0.04, Reason::Flatness, 0.01),
        (job(0.01, 0.0, 0.02), 0.0, Reason::Nothing, 0.01),
        (job(0.01, 0.03, 0.02), 0.03, Reason::WorstPlace, 0.0),
    ] {
        let plan = planned(job, None, None);
        close_to(plan.removal, removal, 1e-15);
        assert_eq!(plan.reason, reason, "{job:?}");
        close_to(plan.flatness_left, left, 1e-15);
        assert_eq!(plan.lapped.left(), None, "no case was given");
        close_to(plan.stack_change.most, -removal, 1e-15);
    }
}

#[test]
fn the_case_left_is_as_sure_as_its_range() {
    for (case, state, left) in [
        (range(0.3, 0.5), SkinLeft::Everywhere, (0.2, 0.4)),
        (range(0.05, 0.5), SkinLeft::InDoubt, (0.0, 0.4)),
        (range(0.1, 0.5), SkinLeft::InDoubt, (0.0, 0.4)),
        (range(0.05, 0.1), SkinLeft::GoneInPlaces, (0.0, 0.0)),
    ] {
        let (got, depth) =
            planned(job(0.1, 0.1, 0.0), Some(case), None).lapped.left().expect("a case");
        assert_eq!(got, state, "{case:?}");
        close_to(depth.least, left.0, 1e-12);
        close_to(depth.most, left.1, 1e-12);
    }
}

#[test]
fn growth_gives_some_of_the_length_back() {
    let lapped = planned(job(0.05, 0.0, 0.01), None, Some(range(0.005, 0.015)));
    close_to(lapped.stack_change.least, -0.035, 1e-15);
    close_to(lapped.stack_change.most, -0.025, 1e-15);
    let both = stack_change(&[lapped, lapped]);
    close_to(both.least, -0.07, 1e-15);
    close_to(both.most, -0.05, 1e-15);
    close_to(stack_change(&[]).most, 0.0, 0.0);
}

#[test]
fn figures_that_cannot_be_are_refused() {
    let refused = |job, case| {
        plan(&job, &skin(case, 0.0, 0.0), &grown(None)).expect_err("refused").to_string()
    };
    assert_eq!(
        refused(job(0.05, -0.01, 0.01), None),
        "The worst place lies between 0 and 5 mm. Check the decimal point and the unit.",
        "a negative depth"
    );
    assert_eq!(
        refused(job(f64::NAN, 0.0, 0.01), None),
        "The flatness lies between 0 and 5 mm. Check the decimal point and the unit.",
        "no number"
    );
    assert_eq!(
        refused(job(0.05, 0.0, 0.01), Some(range(0.5, 0.3))),
        "The case depth is given from the lesser figure to the greater. Swap them.",
        "a range backwards"
    );
    let face = job(0.05, 0.0, 0.01);
    for (skin, hardening) in [
        (Skin::default(), grown(Some(range(0.0, 1.1)))),
        (Skin::default(), Hardening { finish: mm(1.1), ..Hardening::default() }),
        (Skin::default(), Hardening { compound: Some(range(0.0, 1.1)), ..Hardening::default() }),
        (skin(None, 5.1, 0.0), Hardening::default()),
        (skin(None, f64::NAN, 0.0), Hardening::default()),
    ] {
        let refused = plan(&face, &skin, &hardening);
        assert!(matches!(refused, Err(Refusal::OutOfBounds { .. })), "{skin:?} {hardening:?}");
    }
}

/// Three times 0.06 mm off a case of 0.10 to 0.15: the third goes through, whatever one alone would leave.
#[test]
fn what_came_off_before_counts() {
    let case = Some(range(0.10, 0.15));
    let face = job(0.07, 0.0, 0.01);
    let left = |before: f64| {
        let plan = plan(&face, &skin(case, before, 0.0), &grown(None)).expect("a plan");
        plan.lapped.left().expect("a case").0
    };
    assert_eq!(left(0.0), SkinLeft::Everywhere, "the first");
    assert_eq!(left(0.06), SkinLeft::InDoubt, "the second");
    assert_eq!(left(0.12), SkinLeft::GoneInPlaces, "the third");
    let unknown = Skin { depth: case, ..Skin::default() };
    let lapped = plan(&face, &unknown, &grown(None)).expect("a plan").lapped;
    let (state, rest) = lapped.left().expect("a case");
    assert_eq!((state, state.call()), (SkinLeft::InDoubt, Call::TooClose), "it may be gone");
    close_to(rest.least, 0.0, 0.0);
    close_to(rest.most, 0.09, 1e-12);
}

/// By hand: 1.65 u of 4 µm is 6.6 µm (ISO 14253-1).
#[test]
fn what_came_off_is_as_sure_as_it_was_measured() {
    let left = |off: f64| skin(Some(range(0.1, 0.1)), off, 0.004).left().expect("a case").0;
    assert_eq!(left(0.0933), SkinLeft::Everywhere, "6.7 µm are left");
    assert_eq!(left(0.0935), SkinLeft::InDoubt, "6.5 µm");
    assert_eq!(left(0.1065), SkinLeft::InDoubt, "6.5 µm past it");
    assert_eq!(left(0.1067), SkinLeft::GoneInPlaces, "6.7 µm past it");
}

proptest! {
    /// Lapping in several goes leaves what the same lapping in one go leaves; more off never leaves more.
    #[test]
    fn goes_add_up(
        depth in (0.0..0.5_f64, 0.0..0.5_f64),
        goes in prop::collection::vec(0.0..0.1_f64, 1..6),
    ) {
        let case = Some(range(depth.0.min(depth.1), depth.0.max(depth.1)));
        let exactly = |off: f64| Measured { value: mm(off), uncertainty: mm(0.0) };
        let mut face = skin(case, 0.0, 0.0);
        let mut before = face.left().expect("a case").1.most;
        for off in &goes {
            face = face.after(&exactly(*off));
            let most = face.left().expect("a case").1.most;
            prop_assert!(most <= before, "{most:?} after {before:?}");
            before = most;
        }
        let sum: f64 = goes.iter().sum();
        let once = skin(case, sum, 0.0).left().expect("a case").1;
        let apart = (once.most - before).value.abs();
        prop_assert!(apart < 1e-12, "{once:?} in one go, {before:?} in several");
    }
}
