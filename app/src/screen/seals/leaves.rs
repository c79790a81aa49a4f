//! The feeler leaves on the bench: a usual set taken as it is, or the builder's own typed in.

use super::super::bench::list;
use super::leaves_on_bench;
use crate::dom::{El, button, el, follow, text};
use crate::draft;
use crate::route::Route;
use crate::signal::*;
use crate::state::{App, app};
use crate::widget::{field, frame, switch};
use pitleaf_core::book::Fact;
use pitleaf_core::language;
use pitleaf_core::quantity::{Bounds, Dimension, Unit};
use pitleaf_core::seals::{
    Leaf, LeafFault, LeafSet, USUAL_SETS, UsualSet, Written, usual_tolerance,
};
use pitleaf_translated::tr;

/// What stands in the form for an own set.
#[derive(Clone, Copy)]
struct Typed {
    name: RwSignal<String>,
    marks: RwSignal<String>,
    tolerance: RwSignal<String>,
    unit: RwSignal<Unit>,
}

impl Typed {
    fn set(self) -> Result<LeafSet, LeafFault> {
        let leaves = Leaf::read_many(&self.marks.get(), self.unit.get())?;
        let tolerance = match self.tolerance.get().trim() {
            "" => usual_tolerance()?,
            typed => Written::read(typed, self.unit.get(), Bounds::widest(Dimension::Length))?,
        };
        let name = self.name.get().trim().to_owned();
        LeafSet::of(if name.is_empty() { tr!("My own") } else { &name }, leaves, tolerance)
    }
}

/// The leaves.
pub(in crate::screen) fn screen() -> Vec<El> {
    let app = app();
    let hash = Route::Leaves.hash();
    let kept = draft::at(&hash);
    let unit = kept.as_ref().and_then(|draft| draft.unit).unwrap_or(Unit::Millimetre);
    let marks = kept.map(|draft| draft.text).unwrap_or_default();
    let typed = Typed {
        name: RwSignal::default(),
        marks: RwSignal::new(marks),
        tolerance: RwSignal::default(),
        unit: RwSignal::new(unit),
    };
    follow(move || draft::put(&hash, &typed.marks.get(), Some(typed.unit.get())));
    let page = el("main")
        .class("page")
        .live(move || on_bench(app, typed))
        .with(text("h2", "", tr!("A usual set")))
        .with(list("rows", tr!("Usual sets"), USUAL_SETS.iter().map(|usual| offer(app, usual))))
        .with(text("h2", "", tr!("My own set")))
        .with(own(app, typed));
    frame(
        || tr!("Feeler leaves").to_owned(),
        || tr!("What is on the bench: the next leaf is chosen from these").to_owned(),
        true,
        page,
    )
}

/// The set in force.
fn on_bench(app: App, typed: Typed) -> Vec<El> {
    let Some(set) = leaves_on_bench(app) else {
        return vec![text(
            "p",
            "plain",
            tr!("None entered yet. Take a usual set below, or type your own."),
        )];
    };
    let marks: Vec<String> = set.leaves().iter().map(ToString::to_string).collect();
    let (name, tolerance) = (set.name().to_owned(), set.tolerance().to_string());
    let again = {
        let (name, marks, tolerance) = (name.clone(), marks.join("; "), tolerance.clone());
        move || {
            typed.name.set(name.clone());
            typed.marks.set(marks.clone());
            typed.tolerance.set(tolerance.clone());
        }
    };
    vec![
        text("p", "entry-figure", &tr!("{name}, {} leaves", marks.len())),
        el("p").class("leaf-marks").with_all(marks.iter().map(|mark| text("span", "number", mark))),
        text("p", "dim", &tr!("Each ±{tolerance}.")),
        button("quiet", tr!("Change it below"), again),
    ]
}

fn write(app: App, set: LeafSet, then: impl FnOnce() + 'static) {
    let said = tr!("{}, {} leaves", set.name(), set.leaves().len());
    app.write(vec![Fact::Leaves(set)], said, then);
}

/// A usual set, taken with a touch.
fn offer(app: App, usual: &'static UsualSet) -> El {
    let ends = match usual.marks {
        [first, .., last] => {
            let (first, last) = (language::figure(first), language::figure(last));
            format!("{first}…{last} {}", usual.unit.symbol())
        }
        _ => String::new(),
    };
    let what = el("span").class("entry-words").with(text("b", "", usual.name)).with(text(
        "span",
        "dim",
        usual.source,
    ));
    el("button")
        .attr("type", "button")
        .class("row-link")
        .with(what)
        .with(text("span", "row-limit number", &ends))
        .on("click", move |_| {
            if let Ok(set) = usual.set() {
                write(app, set, || {});
            }
        })
}

/// The form for an own set; what is wrong stands under it.
fn own(app: App, typed: Typed) -> El {
    let set = Memo::new(move || typed.set());
    let units = switch(
        tr!("Unit of figures without one"),
        &[(Unit::Millimetre, "mm"), (Unit::Inch, "in"), (Unit::Thou, "thou")],
        move |unit| typed.unit.get() == unit,
        move |unit| typed.unit.set(unit),
    );
    let save = move || {
        if let Ok(set) = set.get_untracked() {
            let fields = [typed.marks, typed.name, typed.tolerance];
            write(app, set, draft::all_emptied(fields));
        }
    };
    let send = text("button", "button action", tr!("Write down"))
        .attr("type", "submit")
        .disabled(move || set.with(Result::is_err));
    let told = el("p").class("refusal empty").attr("role", "status").text_live(move || {
        if typed.marks.with(|marks| marks.trim().is_empty()) {
            return tr!("A figure with its own unit behind it may stand among the others.")
                .to_owned();
        }
        set.with(|set| match set {
            Ok(set) => {
                let marks: Vec<String> = set.leaves().iter().map(ToString::to_string).collect();
                tr!("{} leaves: {}", marks.len(), marks.join(", "))
            }
            Err(fault) => fault.to_string(),
        })
    });
    el("form")
        .class("form")
        .on_submit(save)
        .with(units)
        .with(field(
            tr!("Thicknesses, with a space between"),
            tr!("0.05 0.10 0.15 0.002 in"),
            typed.marks,
        ))
        .with(told)
        .with(field(
            tr!("A leaf may be off by (empty: what is usual)"),
            tr!("0.003 mm"),
            typed.tolerance,
        ))
        .with(field(tr!("Name"), tr!("the long ones in the drawer"), typed.name))
        .with(send)
}
