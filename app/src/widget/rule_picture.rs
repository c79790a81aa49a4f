//! The limit as a scribed rule, with the reading on it.

use crate::dom::{El, svg};
use pitleaf_core::limits::{Limit, Rule, Side, rule};
use pitleaf_core::quantity::{Amount, Rounding, Span, Unit};
use pitleaf_translated::tr;

const LEFT: f64 = 12.0;
const WIDTH: f64 = 336.0;
const RIGHT: f64 = LEFT + WIDTH;

/// The rule of a limit in a unit; the reading, if there is one, with its guard band.
pub fn rule_picture(limit: &Limit, unit: Unit, reading: Option<(Amount, Span)>) -> El {
    let rule = rule(limit, unit, reading);
    with_hand(limit, unit, &rule, hand(&rule))
}

/// The rule of a limit with something shown on it.
pub(super) fn with_hand(limit: &Limit, unit: Unit, rule: &Rule, hand: Vec<El>) -> El {
    let (start, end) = (x(rule.lower.unwrap_or(0.0)), x(rule.upper.unwrap_or(1.0)));
    let stripes = svg("pattern")
        .attrs(&[
            ("id", "outside"),
            ("width", "7"),
            ("height", "7"),
            ("patternUnits", "userSpaceOnUse"),
            ("patternTransform", "rotate(45)"),
        ])
        .with(path("hatch", "M0 0v7"));
    let mut picture = svg("svg")
        .attrs(&[("class", "rule"), ("viewBox", "0 0 360 72"), ("aria-hidden", "true")])
        .with(svg("defs").with(stripes));
    if rule.lower.is_some() {
        picture =
            picture.with(path("", &bar(LEFT, start, 26.0, 18.0)).attr("fill", "url(#outside)"));
    }
    if rule.upper.is_some() {
        picture =
            picture.with(path("", &bar(end, RIGHT, 26.0, 18.0)).attr("fill", "url(#outside)"));
    }
    picture = picture.with(path("inside", &bar(start, end.max(start + 1.0), 24.0, 22.0)));
    if let Some(at) = rule.wear.map(x) {
        picture = picture.with(path("wear", &format!("M{} 20v30", px(at)))).with(label(
            "small",
            at,
            14,
            "middle",
            tr!("worn"),
        ));
    }
    picture = picture.with_all(hand);
    let close = rule.lower.is_some() && rule.upper.is_some() && end - start < 150.0;
    let figure = |edge: Option<f64>, figure: Option<String>, anchor: &str| {
        Some(label("", x(edge?), 66, if close { anchor } else { "middle" }, &figure?))
    };
    let lower = limit.lower.as_ref().map(|edge| edge.show(unit, Rounding::Up));
    let upper = limit.upper.as_ref().map(|edge| edge.show(unit, Rounding::Down));
    picture.with_all(
        [figure(rule.lower, lower, "end"), figure(rule.upper, upper, "start")]
            .into_iter()
            .flatten(),
    )
}

/// The reading: its guard band, and a hand, or an arrow where it runs off.
fn hand(rule: &Rule) -> Vec<El> {
    let Some(at) = rule.reading.map(x) else { return Vec::new() };
    let guard = (rule.guard * WIDTH).max(1.0);
    let doubt = path(
        "doubt",
        &format!("M{} 35H{}", px((at - guard).max(2.0)), px((at + guard).min(358.0))),
    );
    match rule.off {
        Some(Side::Below) => vec![doubt, path("hand", "M2 35 16 26v18z")],
        Some(Side::Above) => vec![doubt, path("hand", "M358 35 344 26v18z")],
        None => vec![
            doubt,
            path("hand", &format!("M{} 12h16l-8 13z", px(at - 8.0))),
            path("hand-line", &format!("M{} 20v32", px(at))),
        ],
    }
}

pub(super) fn x(place: f64) -> f64 {
    LEFT + WIDTH * place
}

/// Whole units are finer than a phone shows, and keep float printing out of the download.
pub(super) fn px(value: f64) -> i32 {
    #[expect(clippy::cast_possible_truncation, reason = "the picture is 360 wide")]
    let whole = value.round() as i32;
    whole
}

fn bar(left: f64, right: f64, top: f64, height: f64) -> String {
    format!("M{} {}H{}v{}H{}z", px(left), px(top), px(right), px(height), px(left))
}

pub(super) fn path(class: &str, d: &str) -> El {
    svg("path").attrs(&[("class", class), ("d", d)])
}

fn label(class: &str, x: f64, y: i32, anchor: &str, words: &str) -> El {
    svg("text")
        .attrs(&[
            ("class", class),
            ("x", &px(x).to_string()),
            ("y", &y.to_string()),
            ("text-anchor", anchor),
        ])
        .text(words)
}
