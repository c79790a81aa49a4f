//! The builder's gauges: what each shows and how good it is.

use crate::dom::{El, el, text};
use crate::signal::*;
use crate::state::{App, app};
use crate::widget::{field, frame};
use pitleaf_core::book::Fact;
use pitleaf_core::limits::{Edge, Gauge, GaugeKind};
use pitleaf_core::quantity::{Bounds, Reading, Rounding, Span, Unit};

/// Every kind of gauge with its two figures.
pub fn screen() -> Vec<El> {
    let app = app();
    let page = el("main")
        .class("page")
        .with(text(
            "p",
            "plain",
            "A reading is only as good as its gauge. The figures below are the usual ones of each kind, from memory: put in what your gauge’s paper says.",
        ))
        .with_all(GaugeKind::ALL.into_iter().filter(|kind| *kind != GaugeKind::Other).map(|kind| form(app, kind)));
    frame(
        || "My gauges".to_owned(),
        || "What each shows, and how good it is".to_owned(),
        true,
        page,
    )
}

fn form(app: App, kind: GaugeKind) -> El {
    let gauge = app.sheet.with_untracked(|sheet| sheet.gauge(kind));
    let is_own = move || app.sheet.with(|sheet| sheet.gauge(kind)) != Gauge::usual(kind);
    let shown = |span: Option<Span>| {
        RwSignal::new(
            span.map(|span| format!("{} mm", span.show(Unit::Millimetre, 4, Rounding::Nearest)))
                .unwrap_or_default(),
        )
    };
    let (resolution, error) = (shown(gauge.resolution), shown(gauge.permissible_error));
    let wrong = RwSignal::new(String::new());
    let save = move || {
        let read = |typed: RwSignal<String>| {
            // Neither figure of a gauge lies below zero.
            let typed = typed.get_untracked();
            Reading::read(&typed, Unit::Millimetre, &Bounds::DEVIATION)?;
            Edge::read(&typed, Unit::Millimetre)
        };
        match (read(resolution), read(error)) {
            (Ok(resolution), Ok(error)) => {
                wrong.set(String::new());
                app.write(
                    vec![Fact::Gauge { kind, resolution, error }],
                    format!("your {}", kind.name()),
                    || {},
                );
            }
            (Err(fault), _) => wrong.set(format!("Steps: {fault}")),
            (_, Err(fault)) => wrong.set(format!("Good to: {fault}")),
        }
    };
    el("form")
        .class("form")
        .on_submit(save)
        .with(
            el("h2")
                .text(kind.name())
                .text_live(move || if is_own() { " · yours" } else { " · usual" }.to_owned()),
        )
        .with(el("div").class("pair").with(field("Steps of", "0.001 mm", resolution)).with(field(
            "Good to ±",
            "0.004 mm",
            error,
        )))
        .with(el("p").class("refusal-line").attr("role", "alert").text_live(move || wrong.get()))
        .with(text("button", "button", "Put it in").attr("type", "submit"))
}
