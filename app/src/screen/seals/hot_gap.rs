//! The cold gap in the running engine: an estimate, as a band.

use crate::dom::{El, button, el, follow, text};
use crate::draft;
use crate::route::Route;
use crate::signal::*;
use crate::state::{App, app};
use crate::widget::{field, frame, sentences, switch};
use pitleaf_core::book::{Fact, Slot};
use pitleaf_core::quantity::{Rounding, Unit};
use pitleaf_core::seals::{
    ESTIMATE, HotGap, MATERIALS, PIECES, RUNNING, SOURCE_COLD, SOURCE_HOT, TypedHotGap, TypedPiece,
};
use pitleaf_translated::tr;

/// A piece's fields.
#[derive(Clone, Copy)]
struct Fields {
    material: RwSignal<Option<usize>>,
    own: RwSignal<String>,
    coldest: RwSignal<String>,
    hottest: RwSignal<String>,
}

/// Everything typed here.
#[derive(Clone, Copy)]
struct Typed {
    seal: RwSignal<String>,
    corner: RwSignal<String>,
    least: RwSignal<String>,
    greatest: RwSignal<String>,
    bench: RwSignal<String>,
    pieces: [Fields; 3],
    length: RwSignal<Unit>,
    temperature: RwSignal<Unit>,
}

/// Parts the texts of the draft.
const PARTS: char = '|';

impl Typed {
    /// As they were left, else with what is usual.
    fn of(kept: Option<&str>, (least, greatest): (String, String), length: Unit) -> Self {
        let mut kept = kept.into_iter().flat_map(|kept| kept.split(PARTS));
        let mut part =
            move |usual: &str| kept.next().map_or_else(|| usual.to_owned(), str::to_owned);
        let mut next = |usual: &str| RwSignal::new(part(usual));
        let (seal, corner, least, greatest, bench) =
            (next(""), next(""), next(&least), next(&greatest), next("20"));
        let pieces = RUNNING.map(|(coldest, hottest)| Fields {
            material: RwSignal::new(None),
            own: next(""),
            coldest: next(coldest),
            hottest: next(hottest),
        });
        for piece in &pieces {
            piece.material.set(part("").parse().ok());
        }
        let is_fahrenheit = part("") == Unit::Fahrenheit.symbol();
        Self {
            seal,
            corner,
            least,
            greatest,
            bench,
            pieces,
            length: RwSignal::new(length),
            temperature: RwSignal::new(if is_fahrenheit {
                Unit::Fahrenheit
            } else {
                Unit::Celsius
            }),
        }
    }

    /// All of it, for the draft; empty before a length is typed.
    fn draft(self) -> String {
        let mut parts: Vec<String> = self.texts().iter().map(|text| text.get()).collect();
        if parts[0].is_empty() && parts[1].is_empty() {
            return String::new();
        }
        parts.extend(
            self.pieces
                .iter()
                .map(|piece| piece.material.get().map_or_else(String::new, |row| row.to_string())),
        );
        parts.push(self.temperature.get().symbol().to_owned());
        parts.join(&PARTS.to_string())
    }

    fn texts(self) -> Vec<RwSignal<String>> {
        let mut texts = vec![self.seal, self.corner, self.least, self.greatest, self.bench];
        texts
            .extend(self.pieces.iter().flat_map(|piece| [piece.own, piece.coldest, piece.hottest]));
        texts
    }

    fn typed(self) -> TypedHotGap {
        TypedHotGap {
            seal_length: self.seal.get(),
            corner_diameter: self.corner.get(),
            least_gap: self.least.get(),
            greatest_gap: self.greatest.get(),
            bench: self.bench.get(),
            pieces: self.pieces.map(|piece| TypedPiece {
                material: piece.material.get(),
                own: piece.own.get(),
                coldest: piece.coldest.get(),
                hottest: piece.hottest.get(),
            }),
            length: Some(self.length.get()),
            temperature: Some(self.temperature.get()),
        }
    }
}

/// The bracket of a slot as two texts in millimetres, where both of its ends are known.
fn known_gap(app: App, slot: Option<Slot>) -> (String, String) {
    let bracket = slot
        .and_then(|slot| super::with_report(app, slot, |report, _| report.bracket()))
        .unwrap_or_default();
    match (bracket.low, bracket.high) {
        (Some(low), Some(high)) => (
            format!("{} mm", low.show(Unit::Millimetre, 3, Rounding::Down)),
            format!("{} mm", high.show(Unit::Millimetre, 3, Rounding::Up)),
        ),
        _ => (String::new(), String::new()),
    }
}

/// The screen; of one slot, its gap as known stands there.
pub(in crate::screen) fn screen(slot: Option<Slot>) -> Vec<El> {
    let app = app();
    let hash = Route::HotGap(slot).hash();
    let kept = draft::at(&hash);
    let unit = kept.as_ref().and_then(|draft| draft.unit).unwrap_or(Unit::Millimetre);
    let text_kept = kept.map(|draft| draft.text).unwrap_or_default();
    // An empty draft is none: then the usual figures stand there.
    let typed = if text_kept.is_empty() {
        Typed::of(None, known_gap(app, slot), unit)
    } else {
        Typed::of(Some(&text_kept), (String::new(), String::new()), unit)
    };
    follow(move || {
        draft::put(&hash, &typed.draft(), Some(typed.length.get()));
    });
    let answer = Memo::new(move || typed.typed().work_out());
    let page = el("main")
        .class("page")
        .live(move || answer.with(|answer| shown(answer, typed.length.get())))
        .with(button("button action", tr!("Write down"), move || write(app, slot, typed, answer)).disabled(move || answer.with(Result::is_err)))
        .with(switch(
            tr!("Unit of lengths"),
            &[(Unit::Millimetre, "mm"), (Unit::Inch, "in"), (Unit::Thou, "thou")],
            move |unit| typed.length.get() == unit,
            move |unit| typed.length.set(unit),
        ))
        .with(switch(
            tr!("Unit of temperatures"),
            &[(Unit::Celsius, "°C"), (Unit::Fahrenheit, "°F")],
            move |unit| typed.temperature.get() == unit,
            move |unit| typed.temperature.set(unit),
        ))
        .with(
            el("div")
                .class("form two")
                .with(field(tr!("Side seal, length"), "55", typed.seal))
                .with(field(tr!("Corner seal, diameter"), "11", typed.corner))
                .with(field(tr!("Cold gap, least"), tr!("0.05"), typed.least))
                .with(field(tr!("Cold gap, greatest"), tr!("the same"), typed.greatest))
                .with(field(tr!("Bench and parts at"), "20", typed.bench)),
        )
        .with_all(PIECES.iter().zip(typed.pieces).flat_map(|(name, piece)| piece_fields(name, piece)))
        .with(text("p", "source", SOURCE_COLD))
        .with(text("p", "source", &tr!("Growth up to running temperature, and the temperatures set here at first. {SOURCE_HOT}")));
    let under = move || match slot {
        Some(slot) => tr!("{} · slot {slot}", app.build_name()),
        None => app.build_name(),
    };
    frame(|| tr!("The gap when hot").to_owned(), under, true, page)
}

fn piece_fields(name: &'static str, piece: Fields) -> Vec<El> {
    let chosen = piece.material.get_untracked();
    let option = |(at, row): (usize, &pitleaf_core::seals::Material)| {
        let option = el("option").attr("value", &at.to_string()).text(row.name);
        if chosen == Some(at) { option.attr("selected", "") } else { option }
    };
    // No metal in silence: it decides the answer.
    let select = el("select")
        .with(el("option").attr("value", "").text(tr!("choose")))
        .with_all(MATERIALS.iter().enumerate().map(option))
        .on("change", move |event| piece.material.set(event_target_value(&event).parse().ok()));
    let metal =
        el("label").class("line-field").with(text("span", "", &tr!("{name}’s metal"))).with(select);
    vec![
        text("h2", "", name),
        metal,
        el("div")
            .class("form two")
            .with(field(&tr!("{name}, coldest"), "120", piece.coldest))
            .with(field(&tr!("{name}, hottest"), "200", piece.hottest))
            .with(field(&tr!("{name}’s own growth, 10⁻⁶/K"), tr!("10.5 to 12"), piece.own)),
    ]
}

/// The band, or everything that is wrong.
fn shown(answer: &Result<HotGap, Vec<String>>, unit: Unit) -> Vec<El> {
    let unit = if unit == Unit::Inch { Unit::Thou } else { unit };
    match answer {
        Ok(gap) => {
            let mut lines = el("section")
                .class("verdict hot-gap")
                .attrs(&[("role", "status"), ("aria-label", tr!("The gap when hot"))]);
            let mut words = el("div").with(text("p", "verdict-words", &gap.hot.words(unit)));
            if let Some(corrected) = gap.reference_words(unit) {
                words = words.with(text("p", "verdict-words", &corrected));
            }
            lines = lines.with(words);
            vec![lines, text("p", "caution", ESTIMATE)]
        }
        Err(faults) => vec![el("div").class("faults").with_all(sentences(faults))],
    }
}

/// Writes what was typed and what came out as a note.
fn write(app: App, slot: Option<Slot>, typed: Typed, answer: Memo<Result<HotGap, Vec<String>>>) {
    let Ok(gap) = answer.get_untracked() else { return };
    let typed = untrack(|| typed.typed());
    let about =
        slot.map_or_else(|| tr!("Gap when hot").to_owned(), |slot| tr!("{slot} · gap when hot"));
    let words = format!("{} {}", gap.hot.words(Unit::Millimetre), typed.words());
    app.write(vec![Fact::Note { about, words: words.clone() }], words, || {});
}
