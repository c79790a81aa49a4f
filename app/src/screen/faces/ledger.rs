//! The ledger of a face: what was lapped off it and grown on it in every build, and the next line of it.

use super::findings::findings;
use crate::dom::{El, el, text};
use crate::draft;
use crate::route::Route;
use crate::screen::bench::list;
use crate::signal::*;
use crate::state::{App, app};
use crate::widget::{field, frame, switch, unit_keys};
use pitleaf_core::book::Fact;
use pitleaf_core::faces::report::skin_left;
use pitleaf_core::faces::{FaceWork, Ledger, Operation, piece_words};
use pitleaf_core::quantity::Unit;
use pitleaf_translated::tr;
use std::rc::Rc;

/// The units of a figure.
const UNITS: [Unit; 4] = [Unit::Thou, Unit::Inch, Unit::Millimetre, Unit::Micrometre];

/// A line in hand, as typed.
#[derive(Clone, Copy)]
struct Typed {
    mark: RwSignal<String>,
    operation: RwSignal<Operation>,
    unit: RwSignal<Unit>,
    /// Its figure, and the least and greatest depth.
    texts: [RwSignal<String>; 3],
}

/// The screen of a face.
pub fn ledger_screen(piece: &str) -> Vec<El> {
    let app = app();
    let piece: Rc<str> = piece.into();
    let unit = app.settings.with_untracked(|settings| settings.lengths.unit());
    let known = mark_of(app, &piece);
    let typed = Typed {
        mark: RwSignal::new(known.clone()),
        operation: RwSignal::new(if known.is_empty() {
            Operation::CameIn
        } else {
            Operation::Lapped
        }),
        unit: RwSignal::new(unit),
        texts: [(); 3].map(|()| RwSignal::new(String::new())),
    };
    let [figure, least, most] = typed.texts;
    let hash = Route::FaceLedger(piece.to_string()).hash();
    let of = piece.clone();
    let empty = move || vec![mark_of(app, &of), String::new(), String::new(), String::new()];
    draft::form_in(hash, Some(typed.unit), vec![typed.mark, figure, least, most], empty);
    let (told, title) = (piece.clone(), piece_words(&piece));
    let page = el("main")
        .class("page")
        .with(text(
            "p",
            "plain",
            tr!("The mark cast into the housing carries this from build to build: what came off before counts."),
        ))
        .with(form(app, piece, typed))
        .with(el("div").live(move || lines(app, &told, &typed.mark.get())));
    frame(
        || tr!("What was done to this face").to_owned(),
        move || format!("{title} · {}", app.build_name()),
        true,
        page,
    )
}

/// The mark given in this build; empty where none was.
fn mark_of(app: App, piece: &str) -> String {
    let Some(build) = app.build() else { return String::new() };
    let ledger = app
        .book
        .with(|book| app.sheet.with(|sheet| Some(Ledger::of(book, &build, sheet, piece)?.mark)));
    ledger.unwrap_or_default()
}

/// What the book has of the face of this mark.
fn lines(app: App, piece: &str, mark: &str) -> Vec<El> {
    let heading = text("h2", "", tr!("So far"));
    let nothing = || text("p", "plain", tr!("The book has nothing of a face of this mark yet."));
    if mark.trim().is_empty() {
        return vec![heading, nothing()];
    }
    app.book.with(|book| {
        app.sheet.with(|sheet| {
            let ledger = Ledger::of_mark(book, sheet, piece, mark);
            if ledger.lines.is_empty() {
                return vec![heading, nothing()];
            }
            let done = ledger.lines.iter().map(|line| {
                let build = book.opening(&line.entry.build).map_or("", |(name, ..)| name);
                let words = el("div")
                    .class("entry-words")
                    .with(text("b", "", &line.work.to_string()))
                    .with(text("span", "dim", build));
                el("div").class("entry").with(words)
            });
            let mut left = skin_left(&ledger.skin, Unit::Millimetre);
            left.call = ledger.call();
            let off = tr!("Off since it was hardened: {}.", ledger.off_words());
            let mut shown = vec![heading, list("entries", tr!("So far"), done)];
            shown.push(text("p", "plain", &off));
            shown.extend(findings(app, &[left]));
            shown
        })
    })
}

fn form(app: App, piece: Rc<str>, typed: Typed) -> El {
    let Typed { mark, operation, unit, texts } = typed;
    let wrong = RwSignal::new(String::new());
    let write = move || {
        let [figure, least, most] = texts.map(|text| text.get_untracked());
        let work = FaceWork::typed(
            &piece,
            &mark.get_untracked(),
            operation.get_untracked(),
            unit.get_untracked(),
            [&figure, &least, &most],
        );
        match work {
            Ok(work) => {
                wrong.set(String::new());
                let said = format!("{}: {work}", piece_words(&piece));
                app.write(vec![Fact::FaceWork(work)], said, draft::all_emptied(texts));
            }
            Err(fault) => wrong.set(fault.to_string()),
        }
    };
    let operations: Vec<(Operation, &str)> =
        Operation::ALL.iter().map(|operation| (*operation, operation.name())).collect();
    let [figure, least, most] = texts;
    let asked = el("div").class("form").live(move || {
        let operation = operation.get();
        let mut fields =
            vec![text("p", "how", operation.how()), field(operation.figure(), "0.04", figure)];
        if operation.has_depth() {
            let depths = el("div")
                .class("pair")
                .with(field(tr!("Least depth"), "0.25", least))
                .with(field(tr!("Greatest depth"), "0.35", most));
            fields.push(depths);
        }
        fields
    });
    el("form")
        .class("form")
        .on_submit(write)
        .with(field(tr!("Casting mark"), tr!("as on the housing"), mark))
        .with(switch(
            tr!("What was done"),
            &operations,
            move |choice| operation.get() == choice,
            move |choice| operation.set(choice),
        ))
        .with(asked)
        .with(unit_keys(&UNITS, unit))
        .with(el("p").class("refusal-line").attr("role", "alert").text_live(move || wrong.get()))
        .with(text("button", "button", tr!("Write down")).attr("type", "submit"))
}
