//! The engine's measures, from those commonly quoted for 654 cm³ a rotor, each with what is wrong beside it.

use super::typed_engine;
use crate::dom::{El, button, el, follow, text};
use crate::draft;
use crate::route::{PortsPlace, Route};
use crate::signal::*;
use crate::state::app;
use crate::widget::{fault_list, field, frame, switch};
use pitleaf_core::book::Fact;
use pitleaf_core::kept;
use pitleaf_core::letters::capital;
use pitleaf_core::ports::SideHousing;
use pitleaf_core::quantity::Unit;
use pitleaf_core::trochoid::{Measure, TypedEngine};
use pitleaf_translated::tr;

/// The form.
pub fn screen() -> Vec<El> {
    let app = app();
    let hash = Route::Ports(PortsPlace::Engine).hash();
    let written = typed_engine(app);
    let written = TypedEngine::new(written.unit, written.texts);
    let start = draft::at(&hash)
        .and_then(|draft| kept::read(&draft.text).ok())
        .unwrap_or_else(|| written.clone());
    let unit = RwSignal::new(start.unit);
    let texts = start.texts.map(RwSignal::new);
    let typed = Memo::new(move || TypedEngine::new(unit.get(), texts.map(|text| text.get())));
    let faults = Memo::new(move || typed.with(|typed| typed.engine().err().unwrap_or_default()));
    {
        let hash = hash.clone();
        follow(move || {
            let text = typed
                .with(|typed| if *typed == written { String::new() } else { kept::write(typed) });
            draft::put(&hash, &text, None);
        });
    }
    let save = move || {
        if faults.with_untracked(|faults| !faults.is_empty()) {
            return;
        }
        let back = Route::Ports(PortsPlace::Plate(SideHousing::Front));
        let hash = hash.clone();
        let fact = Fact::Engine(typed.get_untracked());
        app.write(vec![fact], tr!("the engine’s measures").to_owned(), move || {
            draft::put(&hash, "", None);
            app.go(&back);
        });
    };
    let preset = move || {
        let preset = TypedEngine::preset();
        unit.set(preset.unit);
        for (text, typed) in texts.into_iter().zip(preset.texts) {
            text.set(typed);
        }
    };
    let fields = Measure::ALL.into_iter().zip(texts).map(|(measure, typed)| {
        let said = move || {
            faults.with(|faults| {
                let own = faults.iter().filter(|fault| fault.measure == measure);
                own.map(|fault| fault.words.clone()).collect::<Vec<_>>()
            })
        };
        let label = capital(measure.name());
        el("div")
            .with(field(&label, "0", typed))
            .with(text("p", "how", measure.how()))
            .with(fault_list(said))
    });
    let form = el("form")
        .class("form measures")
        .on_submit(save)
        .with(switch(
            tr!("Unit"),
            &[(Unit::Millimetre, "mm"), (Unit::Inch, "in")],
            move |choice| unit.get() == choice,
            move |choice| unit.set(choice),
        ))
        .with(text(
            "p",
            "plain",
            tr!("A unit typed behind a number stands above the switch: “4.016 in”."),
        ))
        .with_all(fields)
        .with(
            text("button", "button action", tr!("Put it in"))
                .attr("type", "submit")
                .disabled(move || faults.with(|faults| !faults.is_empty())),
        )
        .with(button("quiet", tr!("Back to the sizes as commonly quoted"), preset));
    frame(
        || tr!("Engine’s measures").to_owned(),
        || tr!("What bore, rotor and tracks follow from").to_owned(),
        true,
        el("main").class("page").with(form),
    )
}
