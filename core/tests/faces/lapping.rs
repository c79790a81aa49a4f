//! Lapping: what comes off, what is left of the case, what the stack loses.

use crate::{close_to, mm};
use pitleaf_core::faces::{CaseLeft, Job, Plan, Range, Reason, Refusal, plan, stack_change};

fn job(flatness: f64, worst_place: f64, wanted: f64) -> Job {
    Job { flatness: mm(flatness), worst_place: mm(worst_place), wanted: mm(wanted) }
}

fn range(least: f64, most: f64) -> Range {
    Range { least: mm(least), most: mm(most) }
}

fn planned(job: Job, case: Option<Range>, growth: Option<Range>) -> Plan {
    plan(&job, case, growth).expect("a plan")
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
        assert_eq!(plan.case, None, "no case was given");
        close_to(plan.stack_change.most, -removal, 1e-15);
    }
}

#[test]
fn the_case_left_is_as_sure_as_its_range() {
    for (case, state, left) in [
        (range(0.3, 0.5), CaseLeft::Everywhere, (0.2, 0.4)),
        (range(0.05, 0.5), CaseLeft::InDoubt, (0.0, 0.4)),
        (range(0.1, 0.5), CaseLeft::InDoubt, (0.0, 0.4)),
        (range(0.05, 0.1), CaseLeft::GoneInPlaces, (0.0, 0.0)),
    ] {
        let (got, depth) = planned(job(0.1, 0.1, 0.0), Some(case), None).case.expect("a case");
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
    let refused = |job, case| plan(&job, case, None).expect_err("refused").to_string();
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
    let grown = plan(&job(0.05, 0.0, 0.01), None, Some(range(0.0, 1.1)));
    assert!(matches!(grown, Err(Refusal::OutOfBounds { .. })), "growth over a millimetre");
}

#[test]
fn the_order_is_stated() {
    let order = pitleaf_core::faces::ORDER;
    assert!(order.starts_with("Lap, then harden."), "{order}");
}
