//! A report as a list: mark, figure, words; and what a report is written from.

use crate::dom::{El, button, el, text};
use crate::state::App;
use crate::widget::call_mark;
use pitleaf_core::book::Fact;
use pitleaf_core::faces::Sense;
use pitleaf_core::faces::report::{Bench, Finding, SpacerChoice, on_bench};
use pitleaf_core::language::said;
use pitleaf_translated::tr;

/// Calls `report` with the sheet, the build and its readings.
pub fn with_bench<T>(app: App, less: bool, report: impl FnOnce(&Bench<'_>) -> T) -> T {
    let build = app.build();
    let sense = if less { Sense::ThickerGivesLess } else { Sense::ThickerGivesMore };
    app.book.with(|book| {
        app.sheet.with(|sheet| on_bench(book, build.as_ref(), sheet, Some(sense), report))
    })
}

/// The findings of a report.
pub fn findings(app: App, findings: &[Finding]) -> Vec<El> {
    let items = findings.iter().map(|finding| {
        let mut words = el("div").class("finding-words").with(text("b", "", &finding.what));
        if !finding.figure.is_empty() {
            words = words.with(text("span", "number", &finding.figure));
        }
        if let Some(call) = finding.call {
            words = words.with(text("span", "finding-call", call.word()));
        }
        words = words.with(text("span", "dim", &finding.says));
        if let Some(offer) = finding.offer.clone() {
            let chosen_words = tr!("{} chosen", said(&offer.spacer));
            let chosen = app
                .build()
                .is_some_and(|build| app.book.with(|book| book.spacer(&build) == Some(&*offer)));
            let face = if chosen { tr!("Chosen ✓") } else { tr!("Fit this one") };
            let choose = button("button", face, move || {
                app.write(
                    vec![Fact::Spacer(SpacerChoice::clone(&offer))],
                    chosen_words.clone(),
                    || {},
                );
            });
            words = words.with(choose.attr("aria-pressed", if chosen { "true" } else { "false" }));
        }
        let mark = finding.call.map(|call| call_mark(Some(call)));
        el("li").class("finding").with_all(mark).with(words)
    });
    vec![el("ul").class("findings").attr("aria-label", tr!("Findings")).with_all(items)]
}
