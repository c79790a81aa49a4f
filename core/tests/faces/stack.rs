//! Widths, taper, the stack's length, side clearance and end gaps.

use crate::{close_to, lengths, limit, mm, points, scatter};
use pitleaf_core::faces::{
    Doubt, Refusal, StackPart, Widths, apex_seal_end_gap, housings_apart, rotor_side_clearance,
    stack_length, taper, widths,
};
use pitleaf_core::limits::Call;

fn of(readings: &[f64]) -> Widths {
    widths(&lengths(readings), &scatter(0.003)).expect("widths")
}

#[test]
fn widths_have_spread_and_a_worst_place() {
    let housing = of(&[80.010, 80.012, 79.990, 80.008]);
    close_to(housing.spread, 0.022, 1e-12);
    close_to(housing.sizes.mean.value, 80.005, 1e-12);
    close_to(housing.sizes.mean.uncertainty, 0.0015, 1e-12);
    assert_eq!((housing.least_at, housing.greatest_at), (2, 1), "where the extremes are");
    assert_eq!(housing.worst_at, 2, "the thin place lies farthest from the mean");
}

#[test]
fn a_wedge_is_all_taper_and_a_burr_is_none() {
    let wedge = points(&[
        (0.0, 0.0, 80.00),
        (100.0, 0.0, 80.02),
        (0.0, 100.0, 80.00),
        (100.0, 100.0, 80.02),
    ]);
    let steady = taper(&wedge).expect("a wedge");
    close_to(steady.across, 0.02, 1e-11);
    close_to(steady.rest, 0.0, 1e-11);
    let wavy = points(&[
        (0.0, 0.0, 80.01),
        (100.0, 0.0, 79.99),
        (0.0, 100.0, 79.99),
        (100.0, 100.0, 80.01),
    ]);
    let burr = taper(&wavy).expect("waves");
    close_to(burr.across, 0.0, 1e-11);
    close_to(burr.rest, 0.02, 1e-11);
    assert_eq!(
        taper(&wedge[..2]),
        Err(Refusal::TooFew { found: "taper", given: 2, needed: 3 }),
        "two"
    );
    let line = points(&[(0.0, 0.0, 80.0), (1.0, 1.0, 80.0), (2.0, 2.0, 80.0)]);
    assert_eq!(taper(&line), Err(Refusal::OneLine), "one line");
}

#[test]
fn one_gauges_error_adds_up_along_the_stack() {
    let part = |width: f64, gauge: u8| StackPart {
        width: mm(width),
        doubt: Doubt { scatter: mm(0.003), gauge: mm(0.004) },
        gauge,
    };
    let one = stack_length(&[part(80.0, 0), part(80.0, 0)]).expect("a stack");
    close_to(one.value, 160.0, 1e-12);
    // 3 and 3 in squares, 4 + 4 together: √(18 + 64).
    close_to(one.uncertainty, 0.001 * 82_f64.sqrt(), 1e-12);
    let two = stack_length(&[part(80.0, 0), part(80.0, 1)]).expect("a stack");
    close_to(two.uncertainty, 0.001 * 50_f64.sqrt(), 1e-12);
    assert!(stack_length(&[]).is_err(), "no parts");
    let second = stack_length(&[part(80.0, 0), part(-1.0, 0)]).expect_err("a negative width");
    assert!(second.to_string().starts_with("Reading 2: A size"), "{second}");
}

#[test]
fn a_measured_housing_goes_into_the_stack() {
    let doubt = Doubt { scatter: mm(0.006), gauge: mm(0.004) };
    let housing = widths(&lengths(&[80.00, 80.01, 80.02, 80.01]), &doubt).expect("widths");
    close_to(housing.sizes.mean.uncertainty, 0.005, 1e-12);
    let stack = stack_length(&[housing.in_stack(0), housing.in_stack(0)]).expect("a stack");
    close_to(stack.value, 160.02, 1e-11);
    close_to(stack.uncertainty, 0.001 * (9.0 + 9.0 + 64.0_f64).sqrt(), 1e-12);
}

#[test]
fn a_rotor_has_half_the_room_on_each_face() {
    let housing = of(&[80.00, 80.02]);
    let rotor = of(&[79.70, 79.72]);
    let face = rotor_side_clearance(&housing, &rotor);
    close_to(face.least.value, 0.14, 1e-12);
    close_to(face.mean.value, 0.15, 1e-12);
    close_to(face.most.value, 0.16, 1e-12);
    close_to(face.least.uncertainty, 0.003 * 2_f64.sqrt() / 2.0, 1e-12);
    let verdict = face.against(&limit("0.10", "0.21")).expect("a verdict");
    assert_eq!(verdict.call, Call::Meets, "well inside");
}

#[test]
fn an_apex_seal_has_the_room_over_both_ends() {
    let gap = apex_seal_end_gap(&of(&[80.01, 80.03]), &of(&[79.85]));
    close_to(gap.least.value, 0.16, 1e-12);
    close_to(gap.most.value, 0.18, 1e-12);
}

#[test]
fn housings_are_compared_by_their_means() {
    let housings = [of(&[80.02, 80.02]), of(&[79.98, 80.00]), of(&[80.01])];
    let (apart, least, greatest) = housings_apart(&housings).expect("housings");
    close_to(apart.value, 0.03, 1e-12);
    assert_eq!((least, greatest), (1, 0), "which");
    assert_eq!(housings_apart(&[]), None, "none");
}
