//! The limit as a scribed rule, with the bracket that trials left of a gap.

use super::rule_picture::{path, px, with_hand, x};
use crate::dom::El;
use pitleaf_core::limits::{Limit, place_on_rule, rule};
use pitleaf_core::quantity::Unit;
use pitleaf_core::seals::Bracket;

/// The rule with the bracket: a bar from stop to stop; an arrow where an end is open or runs off.
pub fn bracket_picture(limit: &Limit, unit: Unit, bracket: Option<Bracket>) -> El {
    let rule = rule(limit, unit, None);
    let shown = bracket.map_or_else(Vec::new, |bracket| {
        let place = |amount| place_on_rule(limit, unit, amount);
        let (low, high) = (bracket.low.map_or(0.0, place), bracket.high.map_or(1.0, place));
        let (left, right) = (x(low), x(high).max(x(low) + 2.0));
        let stop = |at: f64| path("hand-line", &format!("M{} 18v32", px(at)));
        let mut shown = vec![path("doubt", &format!("M{} 35H{}", px(left), px(right)))];
        shown.push(if bracket.low.is_none() || low <= 0.0 {
            path("hand", "M2 35 16 26v18z")
        } else {
            stop(left)
        });
        // All of it off the left end: the arrow says so.
        if high > 0.0 {
            shown.push(if bracket.high.is_none() || high >= 1.0 {
                path("hand", "M358 35 344 26v18z")
            } else {
                stop(right)
            });
        }
        shown
    });
    with_hand(limit, unit, &rule, shown)
}
