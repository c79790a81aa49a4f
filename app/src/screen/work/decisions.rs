//! Readings past a limit or too close to call, and what becomes of parts.

use super::{with_build, write};
use crate::dom::{El, button, el, text};
use crate::draft;
use crate::route::{Route, WorkPlace};
use crate::screen::bench::list;
use crate::signal::*;
use crate::state::App;
use crate::widget::{call_mark, field, frame};
use pitleaf_core::limits::limit_line;
use pitleaf_core::route::{Choice, OVERHANG, cuts, decide_on, decision_words, fates, past_limits};
use pitleaf_translated::tr;

/// The screen.
pub fn screen(app: App) -> Vec<El> {
    let why = RwSignal::new(String::new());
    let part = RwSignal::new(String::new());
    let hash = Route::Work(WorkPlace::Decisions).hash();
    draft::form(hash, vec![why, part], || vec![String::new(); 2]);
    let body = el("main")
        .class("page")
        .with(el("div").class("form").with(field(tr!("Why"), tr!("needed to accept a part"), why)))
        .live(move || {
            with_build(app, &|build| {
                app.book.with(|book| {
                    app.sheet.with(|sheet| {
                        let past = past_limits(book, build, sheet);
                        let mut shown =
                            vec![text("h2", "", tr!("Past a limit, or too close to call"))];
                        if past.is_empty() {
                            shown.push(text("p", "plain", tr!("Every reading meets its limit.")));
                        }
                        let cards = past.iter().map(|past| {
                            let limit = limit_line(&past.row.limit, past.row.unit);
                            let words = el("div")
                                .class("finding-words")
                                .with(text("b", "", &past.name()))
                                .with(text("span", "number", &past.reading))
                                .with(text("span", "", past.call.word()))
                                .with(text("span", "dim", &tr!("Limit {limit}")))
                                .with(text("span", "finding-call", &decision_words(past.decision)))
                                .with(choices(
                                    app,
                                    &past.row.id,
                                    &past.place,
                                    &past.name(),
                                    [why, why],
                                ));
                            el("div").class("finding").with(call_mark(Some(past.call))).with(words)
                        });
                        shown.push(list("rows", tr!("Past a limit, or too close to call"), cards));
                        let over = cuts(book, build).into_iter().filter(|cut| cut.can_be_decided);
                        let over: Vec<El> = over
                            .map(|cut| {
                                let (name, place) = (cut.name(), cut.place());
                                let words = el("div")
                                    .class("finding-words")
                                    .with(text("b", "", &name))
                                    .with(text("span", "", &cut.words))
                                    .with(text(
                                        "span",
                                        "finding-call",
                                        &decision_words(cut.decision),
                                    ))
                                    .with(choices(app, OVERHANG, &place, &name, [why, why]));
                                el("div").class("finding").with(words)
                            })
                            .collect();
                        if !over.is_empty() {
                            shown.push(text("h2", "", tr!("Corner seals over ports")));
                            shown.push(list("rows", tr!("Corner seals over ports"), over));
                        }
                        shown.push(text("h2", "", tr!("Parts")));
                        let parts = fates(book, build).into_iter().map(|(part, choice, why)| {
                            el("div").class("row-link").with(text("b", "", part)).with(
                                text("span", "row-limit", choice.name())
                                    .with(text("span", "dim", why)),
                            )
                        });
                        shown.push(list("rows", tr!("Parts"), parts));
                        shown
                    })
                })
            })
        })
        .with(el("div").class("form").with(field(tr!("Part"), tr!("rotor housing 2"), part)))
        .with(
            el("div")
                .live(move || part.with(|name| vec![choices(app, "", name, name, [why, part])])),
        );
    frame(|| tr!("Decisions").to_owned(), move || app.build_name(), true, body)
}

/// A key for each thing that can be decided, called by what it is decided of; the texts typed for it, the
/// reason first, are emptied once it is written.
fn choices(app: App, row: &str, place: &str, about: &str, typed: [RwSignal<String>; 2]) -> El {
    let offered = Choice::ALL.into_iter().filter(|choice| match row {
        "" => *choice != Choice::Accept,
        // The other way is another outline.
        OVERHANG => *choice == Choice::Accept,
        _ => *choice != Choice::Reuse,
    });
    let keys = offered.map(|choice| {
        let (row, place) = (row.to_owned(), place.trim().to_owned());
        let is_nothing = row.is_empty() && place.is_empty();
        let called = format!("{} {}", choice.name(), about.trim());
        button("unit", choice.name(), move || {
            match decide_on(&row, &place, choice, &typed[0].get_untracked()) {
                Ok(fact) => {
                    let [why, part] = typed.map(draft::emptied);
                    write(app, fact, choice.name(), move || {
                        why();
                        part();
                    });
                }
                Err(fault) => app.wrong(&fault.to_string()),
            }
        })
        .attr("aria-label", &called)
        .disabled(move || is_nothing)
    });
    el("div")
        .class("units")
        .attrs(&[("role", "group"), ("aria-label", tr!("Decide"))])
        .with_all(keys)
}
