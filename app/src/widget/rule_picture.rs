//! The limit as a scribed rule, with the reading on it.

use leptos::prelude::*;
use pitleaf_core::limits::{Limit, Rule, Side, rule};
use pitleaf_core::quantity::{Amount, Rounding, Span, Unit};

const LEFT: f64 = 12.0;
const WIDTH: f64 = 336.0;

/// The rule of a limit in a unit; the reading, if there is one, with its guard band.
#[component]
pub fn RulePicture(
    /// The limit.
    limit: Limit,
    /// The unit of the figures.
    #[prop(into)]
    unit: Signal<Unit>,
    /// The reading and its guard band.
    #[prop(into)]
    reading: Signal<Option<(Amount, Span)>>,
) -> impl IntoView {
    move || {
        let unit = unit.get();
        picture(&limit, unit, &rule(&limit, unit, reading.get()))
    }
}

fn x(place: f64) -> f64 {
    LEFT + WIDTH * place
}

fn picture(limit: &Limit, unit: Unit, rule: &Rule) -> impl IntoView + use<> {
    let (start, end) = (x(rule.lower.unwrap_or(0.0)), x(rule.upper.unwrap_or(1.0)));
    let figure = |at: Option<f64>, text: Option<String>, anchor: &'static str| {
        at.zip(text)
            .map(|(at, text)| view! { <text x=x(at) y="66" text-anchor=anchor>{text}</text> })
    };
    let lower = limit.lower.as_ref().map(|edge| edge.show(unit, Rounding::Up));
    let upper = limit.upper.as_ref().map(|edge| edge.show(unit, Rounding::Down));
    let both = rule.lower.is_some() && rule.upper.is_some();
    let close = both && end - start < 150.0;
    let wear = rule.wear.map(x).map(|at| {
        view! {
            <path class="wear" d=format!("M{at} 20v30")/>
            <text class="small" x=at y="14" text-anchor="middle">"worn"</text>
        }
    });
    let hand = rule.reading.map(|at| {
        let at = x(at);
        let guard = (rule.guard * WIDTH).max(1.0);
        let beyond = match rule.off {
            Some(Side::Below) => Some(view! { <path class="hand" d="M10 35 22 28v14z"/> }.into_any()),
            Some(Side::Above) => Some(view! { <path class="hand" d="M350 35 338 28v14z"/> }.into_any()),
            None => None,
        };
        view! {
            <path class="doubt" d=format!("M{} 35H{}", (at - guard).max(2.0), (at + guard).min(358.0))/>
            {if beyond.is_some() { beyond } else { Some(view! {
                <path class="hand" d=format!("M{} 12h16l-8 13z", at - 8.0)/>
                <path class="hand-line" d=format!("M{at} 20v32")/>
            }.into_any()) }}
        }
    });
    view! {
        <svg class="rule" viewBox="0 0 360 72" aria-hidden="true">
            <defs>
                <pattern id="outside" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
                    <path d="M0 0v7" class="hatch"/>
                </pattern>
            </defs>
            {rule.lower.map(|_| view! { <rect fill="url(#outside)" x=LEFT y="26" width=(start - LEFT).max(0.0) height="18"/> })}
            {rule.upper.map(|_| view! { <rect fill="url(#outside)" x=end y="26" width=(LEFT + WIDTH - end).max(0.0) height="18"/> })}
            <rect class="inside" x=start y="24" width=(end - start).max(1.0) height="22"/>
            {wear}
            {hand}
            {figure(rule.lower, lower, if close { "end" } else { "middle" })}
            {figure(rule.upper, upper, if close { "start" } else { "middle" })}
        </svg>
    }
}
