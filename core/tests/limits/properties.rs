//! What holds for every limit and reading, over random ones.

use super::{limit, read, span};
use Unit::{Inch, Millimetre};
use pitleaf_core::limits::{Call, Limit, Verdict, decide_with_uncertainty};
use pitleaf_core::quantity::Unit;
use proptest::prelude::*;

/// Ten-thousandths of a millimetre as text.
fn text(count: i64) -> String {
    let sign = if count < 0 { "-" } else { "" };
    format!("{sign}{}.{:04}", count.abs() / 10_000, count.abs() % 10_000)
}

/// Lower edge, width, and which edges there are.
fn limits() -> impl Strategy<Value = (Limit, i64, i64)> {
    (1_i64..500_000, 0_i64..5_000, 0_u8..3).prop_map(|(lower, width, edges)| {
        let (low, high) = (text(lower), text(lower + width));
        let limit = match edges {
            0 => limit(&low, &high, Millimetre),
            1 => limit(&low, "", Millimetre),
            _ => limit("", &high, Millimetre),
        };
        (limit, lower, width)
    })
}

fn judged(limit: &Limit, count: i64, doubt: i64) -> Verdict {
    decide_with_uncertainty(limit, &read(&text(count), Millimetre), span(&text(doubt), Millimetre))
}

fn rank(call: Call) -> u8 {
    match call {
        Call::Meets => 2,
        Call::TooClose => 1,
        Call::DoesNotMeet(_) => 0,
    }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    /// As a reading moves outward from inside the limit, on either side, its call never improves.
    #[test]
    fn a_call_never_improves_outward(
        (limit, lower, width) in limits(),
        doubt in 0_i64..3_000,
        steps in prop::collection::vec(1_i64..2_000, 1..12),
        upward in any::<bool>(),
    ) {
        let middle = lower + width / 2;
        let mut last = judged(&limit, middle, doubt);
        let mut count = middle;
        for step in steps {
            count += if upward { step } else { -step };
            prop_assume!(count != 0);
            let next = judged(&limit, count, doubt);
            let has_edge = if upward { limit.upper.is_some() } else { limit.lower.is_some() };
            if has_edge && (limit.upper.is_some() && limit.lower.is_some()) {
                prop_assert!(next.conformity <= last.conformity + 1e-12, "{} then {}", last.conformity, next.conformity);
            }
            if has_edge {
                prop_assert!(rank(next.call) <= rank(last.call), "{:?} then {:?}", last.call, next.call);
                last = next;
            }
        }
    }

    /// More doubt never proves anything that less doubt did not.
    #[test]
    fn more_doubt_proves_no_more((limit, lower, width) in limits(), offset in -4_000_i64..4_000, doubt in 0_i64..2_000, more in 0_i64..2_000) {
        let count = lower + width / 2 + offset;
        prop_assume!(count != 0);
        let (sharp, dull) = (judged(&limit, count, doubt), judged(&limit, count, doubt + more));
        prop_assert!(dull.call == sharp.call || dull.call == Call::TooClose, "{:?} then {:?}", sharp.call, dull.call);
    }

    /// A call that proves something agrees with the bare figure, and with 95 % of the probability.
    #[test]
    fn a_proof_agrees_with_figure_and_probability((limit, lower, width) in limits(), offset in -9_000_i64..9_000, doubt in 1_i64..2_000) {
        let count = lower + width / 2 + offset;
        prop_assume!(count != 0);
        let verdict = judged(&limit, count, doubt);
        match verdict.call {
            Call::Meets => {
                prop_assert!(verdict.within);
                // Each edge takes at most 5 %.
                prop_assert!(verdict.conformity >= 0.90, "{}", verdict.conformity);
            }
            Call::DoesNotMeet(_) => {
                prop_assert!(!verdict.within);
                prop_assert!(verdict.conformity <= 0.05, "{}", verdict.conformity);
            }
            Call::TooClose => {}
        }
    }

    /// The same reading typed in inches, where it can be, gets the same verdict.
    #[test]
    fn the_unit_typed_changes_nothing(lower in 1_i64..30_000, width in 0_i64..3_000, offset in -500_i64..3_500, doubt in 1_i64..1_000) {
        let limit = limit(&text(lower * 127), &text((lower + width) * 127), Millimetre);
        let count = lower + offset;
        prop_assume!(count > 0);
        // 127 ten-thousandths of a millimetre are 5 ten-thousandths of an inch.
        let inches = format!("{}.{:04}", count * 5 / 10_000, count * 5 % 10_000);
        let doubt = span(&text(doubt), Millimetre);
        let metric = decide_with_uncertainty(&limit, &read(&text(count * 127), Millimetre), doubt);
        let imperial = decide_with_uncertainty(&limit, &read(&inches, Inch), doubt);
        prop_assert_eq!(metric.call, imperial.call);
        prop_assert_eq!(metric.within, imperial.within);
        prop_assert_eq!((metric.above_lower, metric.below_upper), (imperial.above_lower, imperial.below_upper));
        prop_assert!((metric.conformity - imperial.conformity).abs() < 1e-9);
    }
}
