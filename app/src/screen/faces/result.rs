//! What a survey shows: its picture, its findings, every reading to touch and mend.

use super::findings::{findings, with_bench};
use super::picture::result_picture;
use super::reading::{caution, slips};
use super::survey::Work;
use crate::dom::{El, button, el, link, text};
use crate::route::Route;
use crate::widget::switch;
use pitleaf_core::faces::Survey;
use pitleaf_core::faces::report::report;
use pitleaf_translated::tr;

/// The view without keys.
pub fn result_view(work: &Work) -> El {
    let (pictured, found) = (work.clone(), work.clone());
    let report = move || {
        let set = found.set();
        match with_bench(found.app, found.less.get(), |bench| report(&set, bench)) {
            Ok(all) => findings(found.app, &all),
            Err(fault) => vec![text("p", "refusal", &fault.to_string()).attr("role", "alert")],
        }
    };
    let (down, back) = (work.clone(), work.clone());
    let (state, touched) = (work.clone(), work.touched);
    let nothing = move || {
        let set = state.set();
        !state.touched.get() || !set.is_readable() || set.is_empty()
    };
    let actions = el("div")
        .class("pair survey-actions")
        .with(button("button", tr!("Go on reading"), move || {
            back.go(back.next_empty(0).unwrap_or(0));
            back.showing.set(false);
        }))
        .with(
            button("button action", "", move || down.write())
                .text_live(move || {
                    if touched.get() { tr!("Write down") } else { tr!("Written down") }.to_owned()
                })
                .disabled(nothing),
        );
    let page = el("div")
        .class("page")
        .with(slips(work))
        .with_all(sense(work))
        .with(el("div").live(move || result_picture(&pictured)))
        .with(el("div").attr("role", "status").live(report))
        .with_all(beside(work))
        .with_all(ledger(work))
        .with(text("h2", "", tr!("Readings")))
        .with(readings(work))
        .with(text("p", "how", work.survey.how()))
        .with_all(caution(work))
        .with(text(
            "p",
            "foot",
            tr!("The engine’s own manual and local rules stand above every figure here."),
        ));
    el("main").class("screen").with(page).with(actions)
}

/// Which way a spacer works, where that matters.
fn sense(work: &Work) -> Option<El> {
    let less = work.less;
    matches!(work.survey, Survey::EndPlay | Survey::Spacers).then(|| {
        switch(
            tr!("What a thicker spacer does"),
            &[
                (false, tr!("thicker gives more end play")),
                (true, tr!("thicker gives less end play")),
            ],
            move |choice| less.get() == choice,
            move |choice| less.set(choice),
        )
    })
}

/// The way to what was done to the face so far.
fn ledger(work: &Work) -> Option<El> {
    (work.survey == Survey::Lapping).then(|| {
        link("plate-link", &Route::FaceLedger(work.piece.to_string()).hash())
            .text(tr!("What was done to this face"))
    })
}

/// The other surveys of the same piece.
fn beside(work: &Work) -> Vec<El> {
    let others: Vec<Survey> = work.survey.beside(&work.piece, work.app.rotors()).collect();
    if others.is_empty() {
        return Vec::new();
    }
    let keys = others.into_iter().map(|other| {
        link("plate-link", &Route::Survey(other, work.piece.to_string()).hash()).text(other.name())
    });
    vec![el("div").class("pair").with_all(keys)]
}

/// Every reading; a touch goes back to its place.
fn readings(work: &Work) -> El {
    let work = work.clone();
    el("ul").class("rows").attr("aria-label", tr!("Readings")).live(move || {
        let lines = work.set().lines().into_iter();
        lines
            .map(|(at, name, figure)| {
                let work = work.clone();
                let row = button("row-link", "", move || work.again(at));
                el("li").with(row.with(text("b", "", &name)).with(text("span", "number", &figure)))
            })
            .collect()
    })
}
