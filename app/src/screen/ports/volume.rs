//! Displacement, chamber volume at any shaft angle, ratio and recess.

use super::{chart, engine, face, typed_engine};
use crate::dom::{El, el, text};
use crate::signal::*;
use crate::state::app;
use crate::widget::{field, frame};
use pitleaf_core::ports::{SideHousing, chart as core_chart, shown};
use pitleaf_core::quantity::{Bounds, Dimension, Number, Reading, Unit};
use pitleaf_core::trochoid::{Chamber, Chambers};
use pitleaf_translated::tr;
use std::rc::Rc;
use uom::si::f64::Volume;
use uom::si::volume::cubic_centimeter;

/// The volumes of the engine in hand.
pub fn screen() -> Vec<El> {
    let app = app();
    let engine = engine(app);
    let view = face(app, SideHousing::Front).view;
    let chambers = Rc::new(Chambers::new(engine.geometry()));
    let tenths = RwSignal::new(5_400);
    let (recess, wanted) = (RwSignal::new(String::new()), RwSignal::new(String::new()));
    let both = |volume: Volume| {
        let volume = shown::volume(volume);
        format!("{} ({})", volume.metric, volume.inch)
    };
    let row = |name: &str, figure: &str| {
        [text("dt", "", name), el("dd").with(text("b", "number", figure))]
    };
    let lean = engine.geometry().bore().greatest_lean();
    let table = el("dl").class("port-figures").with_all(
        [
            row(tr!("Displacement of a chamber"), &both(chambers.displacement())),
            row(tr!("Least volume, no recess"), &both(chambers.least_volume())),
            row(tr!("Greatest volume, no recess"), &both(chambers.greatest_volume())),
            row(tr!("Ratio without a recess"), &shown::ratio(chambers.theoretical_ratio())),
            row(tr!("Greatest lean of the apex seal"), &shown::angle(lean)),
        ]
        .into_iter()
        .flatten(),
    );
    let at = move || {
        let (angle, centre) = shown::timing(view, core_chart::theta_at(view, tenths.get()));
        format!("{angle} {centre}")
    };
    let now = {
        let chambers = chambers.clone();
        move || {
            let theta = core_chart::theta_at(view, tenths.get());
            let lines = Chamber::ALL.into_iter().zip(1..).flat_map(|(chamber, number)| {
                row(&tr!("Chamber {number}"), &both(chambers.volume(chamber, theta)))
            });
            lines.collect::<Vec<_>>()
        }
    };
    let with_recess = {
        let chambers = chambers.clone();
        move || {
            let typed = recess.get();
            if typed.trim().is_empty() {
                return tr!("Pour the recess of one flank and type its volume.").to_owned();
            }
            let bounds = Bounds::widest(Dimension::Volume);
            match Reading::read(&typed, Unit::Millilitre, bounds) {
                Ok(reading) => {
                    let recess = reading.amount().value(Unit::Millilitre);
                    match chambers.ratio(Volume::new::<cubic_centimeter>(recess)) {
                        Ok(ratio) => tr!("Ratio {}", shown::ratio(ratio)),
                        Err(fault) => fault.to_string(),
                    }
                }
                Err(fault) => fault.to_string(),
            }
        }
    };
    let for_ratio = move || {
        let typed = wanted.get();
        if typed.trim().is_empty() {
            return tr!("Type the ratio you want.").to_owned();
        }
        match Number::read(typed.trim()) {
            Ok(number) => match chambers.recess_for(number.value()) {
                Ok(recess) => tr!("Recess {} in each flank", both(recess)),
                Err(fault) => fault.to_string(),
            },
            Err(fault) => fault.to_string(),
        }
    };
    let answer = |words: Box<dyn Fn() -> String>| {
        el("p").class("answer number").attr("role", "status").text_live(words)
    };
    let correction = typed_engine(app).correction();
    let correction = correction.map(|words| text("p", "caution", &words.to_string()));
    let page = el("main").class("page").with_all(correction).with_all([
        table,
        text("h2", "", tr!("Volume at a shaft angle")),
        el("p")
            .class("turn-at")
            .with(text("span", "", tr!("Chamber 1: ")))
            .with(el("b").class("number").text_live(at)),
        chart::turning(tenths, at),
        el("dl").class("port-figures").live(now),
        text("h2", "", tr!("Ratio from a measured recess")),
        el("div").class("form").with(field(
            tr!("Recess, cm³"),
            tr!("cm³, or with its unit"),
            recess,
        )),
        answer(Box::new(with_recess)),
        text("h2", "", tr!("Recess for a wanted ratio")),
        el("div").class("form").with(field(tr!("Ratio, to 1"), "9", wanted)),
        answer(Box::new(for_ratio)),
    ]);
    frame(
        || tr!("Volume and ratio").to_owned(),
        || tr!("Chambers of the engine in hand").to_owned(),
        true,
        page,
    )
}
