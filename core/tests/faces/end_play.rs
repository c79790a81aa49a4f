//! End play: the spacer to fit, and the loop closed.

use crate::{close_to, lengths, limit, mm, scatter};
use pitleaf_core::faces::{
    Closing, Measured, Refusal, Sense, Spacer, choose, close, end_play, ideal_thickness,
};
use pitleaf_core::limits::{Call, Side};

fn measured(value: f64, uncertainty: f64) -> Measured {
    Measured { value: mm(value), uncertainty: mm(uncertainty) }
}

fn spacers(thicknesses: &[f64]) -> Vec<Spacer> {
    thicknesses
        .iter()
        .zip('A'..)
        .map(|(&thickness, mark)| Spacer {
            mark: mark.to_string(),
            thickness: measured(thickness, 0.002),
        })
        .collect()
}

#[test]
fn the_spacer_nearest_the_middle_comes_first() {
    let keep = limit("0.040", "0.070");
    let at_hand = spacers(&[8.08, 8.06, 8.02, 8.04]);
    let play = measured(0.095, 0.003);
    let fitted = measured(8.08, 0.002);
    let choices =
        choose(&play, &fitted, &at_hand, Sense::ThickerGivesMore, &keep).expect("choices");
    let order: Vec<usize> = choices.iter().map(|choice| choice.spacer).collect();
    assert_eq!(order, [3, 1, 2, 0], "55, 75, 35 and 95 µm");
    close_to(choices[0].predicted.value, 0.055, 1e-12);
    // 3, 2 and 2 in squares.
    close_to(choices[0].predicted.uncertainty, 0.001 * 17_f64.sqrt(), 1e-12);
    assert_eq!(choices[0].verdict.call, Call::Meets, "55 µm of 40 to 70");
    assert_eq!(choices[3].verdict.call, Call::DoesNotMeet(Side::Above), "as it is");
    let wanted = ideal_thickness(&play, &fitted, Sense::ThickerGivesMore, &keep);
    close_to(wanted.expect("both edges"), 8.04, 1e-12);
}

#[test]
fn the_other_way_round_is_the_other_way_round() {
    let keep = limit("0.040", "0.070");
    let at_hand = spacers(&[8.08, 8.12]);
    let (play, fitted) = (measured(0.095, 0.003), measured(8.08, 0.002));
    let choices =
        choose(&play, &fitted, &at_hand, Sense::ThickerGivesLess, &keep).expect("choices");
    assert_eq!(choices[0].spacer, 1, "the thicker one takes play away");
    close_to(choices[0].predicted.value, 0.055, 1e-12);
    let wanted = ideal_thickness(&play, &fitted, Sense::ThickerGivesLess, &keep);
    close_to(wanted.expect("both edges"), 8.12, 1e-12);
    let open = ideal_thickness(&play, &fitted, Sense::ThickerGivesLess, &limit("0.040", ""));
    assert_eq!(open, None, "one edge has no middle");
}

#[test]
fn between_two_sure_ones_the_middle_decides() {
    let at_hand = spacers(&[8.03, 8.05, 8.07]);
    let keep = limit("0.020", "0.120");
    let choices =
        choose(&measured(0.1, 0.001), &measured(8.08, 0.001), &at_hand, Sense::default(), &keep)
            .expect("choices");
    let order: Vec<usize> = choices.iter().map(|choice| choice.spacer).collect();
    assert_eq!(order[0], 1, "70 µm of 20 to 120");
    assert!(choices.iter().all(|choice| choice.verdict.call == Call::Meets), "all would do");
}

/// 0.095 − 0.025 is 0.07 to the tick, whatever binary floats make of it.
#[test]
fn a_prediction_on_the_edge_is_within_it() {
    let choices = choose(
        &measured(0.095, 0.003),
        &measured(8.08, 0.002),
        &spacers(&[8.055]),
        Sense::default(),
        &limit("0.040", "0.070"),
    )
    .expect("choices");
    assert!(choices[0].verdict.within, "equal to the edge meets it");
    assert_eq!(choices[0].verdict.call, Call::TooClose, "but nothing is proved");
}

#[test]
fn readings_make_a_mean_with_its_scatter() {
    let play = end_play(&lengths(&[0.050, 0.056, 0.053]), &scatter(0.004)).expect("readings");
    close_to(play.value, 0.053, 1e-15);
    // s = 3 µm, s/√3, joined to the gauge's 4 µm: √(3 + 16).
    close_to(play.uncertainty, 0.001 * 19_f64.sqrt(), 1e-15);
    let one = end_play(&lengths(&[0.05]), &scatter(0.004)).expect("one reading");
    close_to(one.uncertainty, 0.004, 1e-15);
    let negative = end_play(&lengths(&[0.05, -0.01]), &scatter(0.004)).expect_err("below zero");
    assert_eq!(
        negative.to_string(),
        "Reading 2: A gap lies between 0 and 25 mm. Check the decimal point and the unit.",
        "which one"
    );
}

#[test]
fn the_second_measurement_closes_the_loop() {
    let predicted = measured(0.055, 0.004);
    let agrees = close(&predicted, &measured(0.049, 0.003));
    assert_eq!(
        agrees.to_string(),
        "As predicted: 0.006 mm less, and the gauges explain 0.010 mm.",
        "6 µm of twice √(16 + 9)"
    );
    assert!(matches!(agrees, Closing::Agrees { .. }), "{agrees:?}");
    let under = close(&predicted, &measured(0.044, 0.003)).to_string();
    assert!(under.starts_with("0.011 mm less than predicted"), "{under}");
    // 3 : 4 : 5 in powers of two, which floats hold: just what the doubts explain still agrees.
    let just = close(&measured(0.0, 0.1875), &measured(0.625, 0.25));
    assert!(matches!(just, Closing::Agrees { .. }), "{just:?}");
    let off = close(&predicted, &measured(0.066, 0.003));
    assert!(matches!(off, Closing::Mismatch { .. }), "{off:?}");
    assert_eq!(
        off.to_string(),
        "0.011 mm more than predicted, and the gauges explain only 0.010 mm. Before going on, check that the spacer fitted is the one chosen, that thrust bearings and washers sit flat and clean, and that the bolt is at its torque.",
        "what to look at"
    );
}

#[test]
fn what_cannot_be_is_refused() {
    let keep = limit("0.040", "0.070");
    let try_with = |play: f64, fitted: f64, hand: &[f64]| {
        choose(
            &measured(play, 0.003),
            &measured(fitted, 0.002),
            &spacers(hand),
            Sense::default(),
            &keep,
        )
        .expect_err("refused")
    };
    let none = Refusal::TooFew { found: "a choice of spacer", given: 0, needed: 1 };
    assert_eq!(try_with(0.05, 8.0, &[]), none, "no spacers");
    assert_eq!(
        try_with(-0.05, 8.0, &[8.0]).to_string(),
        "The end play lies between 0 and 25 mm. Check the decimal point and the unit.",
        "negative play"
    );
    assert_eq!(
        try_with(0.05, f64::NAN, &[8.0]).to_string(),
        "The spacer fitted lies between 0 and 1000 mm. Check the decimal point and the unit.",
        "no number"
    );
    assert!(
        try_with(0.05, 8.0, &[8.0, -1.0]).to_string().starts_with("Reading 2: A size"),
        "which"
    );
}
