//! The builder's gauges: what each shows and how good it is.

use crate::dom::{El, el, text};
use crate::draft;
use crate::route::Route;
use crate::signal::*;
use crate::state::{App, app};
use crate::widget::{field, frame};
use pitleaf_core::book::Fact;
use pitleaf_core::gather::Gather;
use pitleaf_core::limits::{Edge, Gauge, GaugeKind};
use pitleaf_core::quantity::{Bounds, Reading, Rounding, Span, Unit};
use pitleaf_translated::tr;

/// A kind of gauge, with its steps and what it is good to as typed.
#[derive(Clone, Copy)]
struct Typed {
    kind: GaugeKind,
    steps: RwSignal<String>,
    error: RwSignal<String>,
}

/// Every kind of gauge with its two figures.
pub fn screen() -> Vec<El> {
    let app = app();
    let kinds = || GaugeKind::ALL.into_iter().filter(|kind| *kind != GaugeKind::Other);
    let all: Vec<Typed> = kinds().map(|kind| Typed::in_force(app, kind)).gather();
    let texts: Vec<RwSignal<String>> = all.iter().flat_map(|one| [one.steps, one.error]).gather();
    let known: Vec<String> = texts.iter().map(|text| text.get_untracked()).gather();
    draft::form(Route::Gauges.hash(), texts, move || known.clone());
    let page = el("main")
        .class("page")
        .with(text(
            "p",
            "plain",
            tr!("A reading is only as good as its gauge. The figures below are the usual ones of each kind, from memory: put in what your gauge’s paper says."),
        ))
        .with_all(all.into_iter().map(|typed| form(app, typed)));
    frame(
        || tr!("My gauges").to_owned(),
        || tr!("What each shows, and how good it is").to_owned(),
        true,
        page,
    )
}

impl Typed {
    fn in_force(app: App, kind: GaugeKind) -> Self {
        let gauge = app.sheet.with_untracked(|sheet| sheet.gauge(kind));
        let shown = |span: Option<Span>| {
            let words =
                |span: Span| format!("{} mm", span.show(Unit::Millimetre, 4, Rounding::Nearest));
            RwSignal::new(span.map(words).unwrap_or_default())
        };
        Self { kind, steps: shown(gauge.resolution), error: shown(gauge.permissible_error) }
    }
}

fn form(app: App, Typed { kind, steps, error }: Typed) -> El {
    let is_own = move || app.sheet.with(|sheet| sheet.gauge(kind)) != Gauge::usual(kind);
    let wrong = RwSignal::new(String::new());
    let save = move || {
        let read = |typed: RwSignal<String>| {
            // Neither figure of a gauge lies below zero.
            let typed = typed.get_untracked();
            Reading::read(&typed, Unit::Millimetre, &Bounds::DEVIATION)?;
            Edge::read(&typed, Unit::Millimetre)
        };
        match (read(steps), read(error)) {
            (Ok(resolution), Ok(error)) => {
                wrong.set(String::new());
                app.write(
                    vec![Fact::Gauge { kind, resolution, error }],
                    tr!("your {}", kind.name()),
                    || {},
                );
            }
            (Err(fault), _) => wrong.set(tr!("Steps: {fault}")),
            (_, Err(fault)) => wrong.set(tr!("Good to: {fault}")),
        }
    };
    el("form")
        .class("form")
        .on_submit(save)
        .with(
            el("h2").text(kind.name()).text_live(move || {
                if is_own() { tr!(" · yours") } else { tr!(" · usual") }.to_owned()
            }),
        )
        .with(
            el("div")
                .class("pair")
                .with(field(tr!("Steps of"), tr!("0.001 mm"), steps))
                .with(field(tr!("Good to ±"), tr!("0.004 mm"), error)),
        )
        .with(el("p").class("refusal-line").attr("role", "alert").text_live(move || wrong.get()))
        .with(text("button", "button", tr!("Put it in")).attr("type", "submit"))
}
