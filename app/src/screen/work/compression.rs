//! Compression of a rotor's three faces, and how even the rotors are.

use super::{refusal, way, write};
use crate::dom::{El, button, el, text};
use crate::draft;
use crate::route::{Route, WorkPlace};
use crate::screen::bench::list;
use crate::signal::*;
use crate::state::App;
use crate::widget::{call_mark, field, frame, switch};
use pitleaf_core::language::said;
use pitleaf_core::route::{
    HOW_COMPARED, RouteFact, TESTER, TypedTest, compression_in, decision_words,
};
use pitleaf_translated::tr;

/// Units by their symbols, as the record has them.
const UNITS: [(&str, &str); 3] = [("kPa", "kPa"), ("psi", "psi"), ("bar", "bar")];

/// The screen of a rotor.
pub fn screen(app: App, rotor: u8) -> Vec<El> {
    // Unit, speed and altitude are mostly those of the last test.
    let known = move || {
        let last = test(app, rotor).or_else(|| test(app, 1)).unwrap_or_default();
        let unit = if last.unit.is_empty() { UNITS[0].0.to_owned() } else { last.unit };
        [unit, last.speed, last.altitude]
    };
    let [unit, speed, altitude] = untrack(known).map(RwSignal::new);
    // The air of another day is no use.
    let air = RwSignal::new(String::new());
    let faces = [(); 3].map(|()| RwSignal::new(String::new()));
    draft::form(
        Route::Work(WorkPlace::Compression(rotor)).hash(),
        [unit, speed, altitude].into_iter().chain(faces).chain([air]).collect(),
        move || known().into_iter().chain([(); 4].map(|()| String::new())).collect(),
    );
    let said = RwSignal::new(String::new());
    let save = move || {
        let typed = TypedTest {
            rotor: rotor.to_string(),
            faces: faces.map(|face| face.get_untracked().trim().to_owned()),
            unit: unit.get_untracked(),
            speed: speed.get_untracked().trim().to_owned(),
            altitude: altitude.get_untracked().trim().to_owned(),
            air: air.get_untracked().trim().to_owned(),
        };
        if let Err(fault) = typed.read() {
            said.set(fault.to_string());
            return;
        }
        said.set(String::new());
        write(
            app,
            RouteFact::Compression(typed),
            tr!("compression"),
            draft::all_emptied([faces[0], faces[1], faces[2], air]),
        );
    };
    let body = el("main")
        .class("page")
        .live(move || {
            let rotors = app.rotors();
            let keys = (1..=rotors).map(|number| {
                let key = way("unit", WorkPlace::Compression(number)).text(&tr!("Rotor {number}"));
                if number == rotor { key.attr("aria-current", "page") } else { key }
            });
            vec![el("div").class("units").with_all(keys)]
        })
        .with(text("p", "caution", tr!("Fuel and ignition off, nobody at belts or fan, hot parts: gloves. Fuel mist catches fire.")))
        .with(text("p", "plain", TESTER))
        .with(
            el("div")
                .class("form")
                .with(el("div").class("three").with_all((1..).zip(faces).map(|(number, face): (u8, _)| {
                    field(&tr!("Face {number}"), "0", face)
                })))
                .with(switch(tr!("Unit"), &UNITS, move |choice| unit.get() == choice, move |choice| unit.set(choice.to_owned())))
                .with(field(tr!("Cranking speed, turns a minute"), "250", speed))
                .with(field(tr!("Altitude, m or ft"), "120 m", altitude))
                .with(field(tr!("Barometer here, hPa; may stay empty"), "", air))
                .with(text("p", "plain", tr!("A weather report’s figure won’t do: it is what the barometer would show at the sea.")))
                .with(refusal(said))
                .with(button("button action", tr!("Write down"), save)),
        )
        .live(move || record(app));
    frame(|| tr!("Compression").to_owned(), move || app.build_name(), true, body)
}

fn test(app: App, rotor: u8) -> Option<TypedTest> {
    let build = app.build()?;
    app.book.with(|book| TypedTest::of(book, &build, rotor).cloned())
}

/// What is written of all rotors.
fn record(app: App) -> Vec<El> {
    let Some(build) = app.build() else { return Vec::new() };
    let (book, sheet) = (app.book, app.sheet);
    book.with(|book| {
        sheet.with(|sheet| {
            let found = compression_in(book, &build, sheet);
            if found.is_empty() {
                return Vec::new();
            }
            let lines = found.into_iter().map(|(finding, decision)| {
                let words = finding.word();
                let limit = finding.limit(sheet);
                let about = format!("{} · {} · {words}{limit}", said(&finding.what), finding.other);
                let mut said = el("span")
                    .class("entry-words")
                    .with(text("b", "number", &finding.figure))
                    .with(text("span", "dim", &about));
                let beside = finding.compared.clone() + &finding.not_compared;
                if !beside.is_empty() {
                    said = said.with(text("span", "dim", &beside));
                }
                let mark = call_mark(finding.call);
                // What does not meet its limit asks what becomes of the part.
                if finding.is_past() {
                    let decided = text("span", "kind", &decision_words(decision));
                    way("entry", WorkPlace::Decisions).with(mark).with(said).with(decided)
                } else {
                    el("div").class("entry").with(mark).with(said)
                }
            });
            vec![
                text("h2", "", tr!("Written down")),
                list("entries", tr!("Written down"), lines),
                text("p", "plain", HOW_COMPARED),
            ]
        })
    })
}
