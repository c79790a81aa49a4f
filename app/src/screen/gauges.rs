//! The builder's gauges: what each shows and how good it is.

use crate::dom::{El, el, text};
use crate::draft;
use crate::route::Route;
use crate::signal::*;
use crate::state::{App, app};
use crate::widget::{field, frame};
use pitleaf_core::book::Fact;
use pitleaf_core::letters::capital;
use pitleaf_core::limits::{Gauge, GaugeFigure, GaugeKind};
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
    let all: Vec<Typed> = GaugeKind::ALL.map(|kind| Typed::in_force(app, kind)).into();
    let texts: Vec<RwSignal<String>> = all.iter().flat_map(|one| [one.steps, one.error]).collect();
    let known: Vec<String> = texts.iter().map(|text| text.get_untracked()).collect();
    draft::form(Route::Gauges.hash(), texts, move || known.clone());
    let page = el("main")
        .class("page")
        .with(text(
            "p",
            "plain",
            tr!("A reading is only as good as its gauge. Change a figure to what your gauge’s paper says, then write it down."),
        ))
        .with(text(
            "p",
            "plain",
            tr!("Good to: a size (0.004 mm), a share of the reading (4 %), or a share of what it shows at most (1.6 % of 1000 kPa)."),
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
        let [steps, error] = app.sheet.with_untracked(|sheet| sheet.gauge(kind)).texts();
        Self { kind, steps: RwSignal::new(steps), error: RwSignal::new(error) }
    }

    /// Whether what is typed is not the gauge in force.
    fn is_changed(self, app: App) -> bool {
        let known = app.sheet.with(|sheet| sheet.gauge(self.kind));
        let (steps, error) = (self.steps.get(), self.error.get());
        let is_known = Gauge::read(self.kind, &steps, &error)
            .is_ok_and(|(steps, error)| Gauge::own(self.kind, &steps, &error) == known);
        !is_known && [steps, error] != known.texts()
    }
}

/// Whose figures they are: the builder's, or the usual ones and where those are from.
fn whose(app: App, kind: GaugeKind) -> String {
    if app.sheet.with(|sheet| sheet.gauge(kind)) != Gauge::usual(kind) {
        return tr!("Yours").to_owned();
    }
    match Gauge::usual_source(kind) {
        Some(("", source)) => capital(source.kind()),
        Some((standard, source)) => format!("{standard}, {}", source.kind()),
        None => tr!("Nothing stated: it proves nothing").to_owned(),
    }
}

fn form(app: App, typed: Typed) -> El {
    let Typed { kind, steps, error } = typed;
    let wrong = RwSignal::new(String::new());
    let save = move || match Gauge::read(kind, &steps.get_untracked(), &error.get_untracked()) {
        Ok((resolution, error)) => {
            wrong.set(String::new());
            let fact = Fact::Gauge { kind, resolution, error };
            app.write(vec![fact], tr!("your {}", kind.name()), || {});
        }
        Err((GaugeFigure::Steps, fault)) => wrong.set(tr!("Steps: {fault}")),
        Err((GaugeFigure::Error, fault)) => wrong.set(tr!("Good to: {fault}")),
    };
    let [usual_steps, usual_error] = Gauge::usual(kind).texts();
    el("form")
        .class("form")
        .attr("aria-label", kind.name())
        .on_submit(save)
        .with(text("h2", "", &capital(kind.name())))
        .with(el("p").class("dim").text_live(move || whose(app, kind)))
        .with(
            el("div").class("pair").with(field(tr!("Steps of"), &usual_steps, steps)).with(field(
                tr!("Good to ±"),
                &usual_error,
                error,
            )),
        )
        .live(move || {
            let wrong = wrong.get();
            let refusal = || text("p", "refusal-line", &wrong).attr("role", "alert");
            (!wrong.is_empty()).then(refusal).into_iter().collect()
        })
        .live(move || {
            let down = || text("button", "button action", tr!("Write down")).attr("type", "submit");
            typed.is_changed(app).then(down).into_iter().collect()
        })
}
