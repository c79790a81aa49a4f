//! One side-seal slot: what is known of its seal, what to try and how much to grind, and the keys for it.

use super::super::bench::list;
use super::super::check::check_frame;
use super::super::entry_line::entry_line;
use super::pad::picture;
use super::sign::{class, sign};
use super::slot_answer::{SlotAnswer, answer};
use super::trial_keys::TrialKeys;
use super::{caution, gap_row, no_row};
use crate::dom::{El, button, el, follow, link, text};
use crate::route::{Route, WorkPlace};
use crate::signal::*;
use crate::state::{App, app};
use crate::widget::{bracket_picture, frame, help};
use pitleaf_core::book::{EntryId, Fact, Slot, Subject};
use pitleaf_core::seals::{GroundBy, SlotState, Step};
use pitleaf_translated::tr;

/// A slot's page.
pub(in crate::screen) fn screen(slot: Slot) -> Vec<El> {
    let app = app();
    let title = move || tr!("Slot {slot}");
    let under =
        move || tr!("{} · rotor {}, {} face", app.build_name(), slot.rotor(), slot.face().name());
    let by = RwSignal::new(GroundBy::Strokes);
    let known = Memo::new(move || answer(app, slot, by.get()));
    // Counting goes on as it was done last.
    follow({
        let counted =
            Memo::new(move || known.with(|known| known.as_ref().and_then(|known| known.counted)));
        move || {
            if let Some(counted) = counted.get() {
                by.set(counted);
            }
        }
    });
    let keys = TrialKeys::of(app, slot, by, known);
    let shown = el("div")
        .class("check-answer")
        .live(move || known.with(|known| known.as_ref().map_or_else(|| vec![no_build(app)], told)))
        .live(move || {
            known.with(|known| {
                known.as_ref().map_or_else(Vec::new, |known| next_steps(app, slot, known))
            })
        })
        .with_all(gap_row(app).and_then(|row| row.help()).map(|of| help(&of)))
        .live(move || history(app, slot));
    let is_fitted = Memo::new(move || {
        known.with(|known| known.as_ref().is_some_and(|known| known.state.is_fitted()))
    });
    let below = el("div").class("check-keys").live(move || {
        if is_fitted.get() {
            vec![button("button", tr!("Take the seal out again"), move || fit(app, slot, false))]
        } else {
            keys.shown()
        }
    });
    frame(title, under, true, check_frame(app, shown, below))
}

fn no_build(app: App) -> El {
    if app.build().is_none() {
        text(
            "p",
            "plain",
            tr!("Open a build, and what you try here is written down and worked out."),
        )
    } else if gap_row(app).is_none() {
        no_row()
    } else {
        el("span")
    }
}

/// The state, and the bracket on the limit's rule.
fn told(known: &SlotAnswer) -> Vec<El> {
    let words = el("div").with(text("p", "verdict-word", known.state.name())).with(text(
        "p",
        "verdict-words",
        &known.words,
    ));
    let card = el("section")
        .attrs(&[("role", "status"), ("aria-label", tr!("What is known of the gap"))])
        .class(&format!("verdict slot-card {}", class(known.state)))
        .with(sign(known.state))
        .with(words);
    vec![card, bracket_picture(&known.limit, known.unit, known.bracket)]
}

/// Said where a seal is in its slot although its gap is past the limit.
const PAST: &str = tr!(
    "This seal is written down as fitted, and its gap does not meet the limit. Take it out again, or \
                    say in the decisions why it stays: it is open at the sign-off until then."
);

/// Said where a seal is in its slot and nothing proves its gap.
const UNPROVED: &str = tr!(
    "This seal is written down as fitted, and nothing proves its gap. Take it out and try a leaf, \
                        or type the gap as measured: it is open at the sign-off until then."
);

/// What to try, how much to grind, and what else can be done here.
fn next_steps(app: App, slot: Slot, known: &SlotAnswer) -> Vec<El> {
    let mut shown = Vec::new();
    if !known.state.is_fitted() {
        shown.push(next(known));
        if let Some(grinding) = &known.grinding {
            let section = el("section")
                .class("grinding")
                .attr("aria-label", tr!("Grinding"))
                .with(text("h2", "", tr!("Grinding")))
                .with(text("p", "grinding-now", &grinding.now));
            let beside = text("p", "dim", &grinding.beside);
            shown.push(if grinding.beside.is_empty() { section } else { section.with(beside) });
        }
        if matches!(known.state, SlotState::ToGrind | SlotState::Undecided) {
            shown.push(caution(Step::Grinding));
            shown.push(caution(Step::WhichEnd));
        }
    }
    if known.state.is_fitted_past() {
        let to = Route::Work(WorkPlace::Decisions).hash();
        shown.push(text("p", "caution", PAST));
        shown.push(link("button", &to).text(tr!("Decisions")));
    }
    if known.state == SlotState::FittedUnproved {
        shown.push(text("p", "caution", UNPROVED));
    }
    shown.push(mark(slot, known));
    let mut actions = Vec::new();
    if !known.state.is_fitted() {
        actions.push(button("plate-link", tr!("Seal is fitted"), move || fit(app, slot, true)));
    }
    actions.push(button("plate-link", tr!("Take a fresh seal"), move || {
        app.write(vec![Fact::FreshSeal { slot }], tr!("{slot}: a fresh seal taken"), || {});
    }));
    if let Some(row) = gap_row(app) {
        let check = Route::Check { row: row.id, place: slot.to_string() };
        actions.push(link("plate-link", &check.hash()).text(tr!("Type a gap measured")));
    }
    actions
        .push(link("plate-link", &Route::HotGap(Some(slot)).hash()).text(tr!("The gap when hot")));
    shown.push(el("div").class("pair").with_all(actions));
    if known.state == SlotState::Fits {
        shown.push(caution(Step::Springs));
        shown.push(caution(Step::CornerSeals));
    }
    shown
}

/// The leaf to try, large.
fn next(known: &SlotAnswer) -> El {
    let card = el("section").class("next-leaf").attr("aria-label", tr!("Next leaf"));
    match &known.next {
        Ok(next) => card
            .with(text("h2", "", tr!("Next leaf")))
            .with(text(
                "p",
                if next.stack.chars().count() > 12 { "next-stack long" } else { "next-stack" },
                &next.stack,
            ))
            .with(text("p", "dim", &next.why)),
        Err(words) => card.with(text("p", "dim", words)),
    }
}

/// The mark in words and as drawn, with the way to change it.
fn mark(slot: Slot, known: &SlotAnswer) -> El {
    let words = match (&known.mark, known.drawing.is_empty()) {
        (Some(mark), _) => mark.as_str(),
        (None, true) => tr!("no mark yet"),
        (None, false) => tr!("drawn"),
    };
    let line = link("entry mark-line", &Route::Mark(slot).hash());
    let line = if known.drawing.is_empty() { line } else { line.with(picture(&known.drawing)) };
    line.with(el("span").class("entry-words").with(text("b", "", words)).with(text(
        "span",
        "dim",
        tr!("the mark on the part"),
    )))
    .with(text("span", "kind", tr!("change")))
}

fn fit(app: App, slot: Slot, fitted: bool) {
    app.write(
        vec![Fact::Fitted { slot, fitted }],
        tr!("{slot}: seal {}", if fitted { tr!("fitted") } else { tr!("taken out") }),
        || {},
    );
}

/// Everything written of the slot, the latest first.
fn history(app: App, slot: Slot) -> Vec<El> {
    let Some(build) = app.build() else { return Vec::new() };
    let gap = gap_row(app).map(|row| Subject::Figure(row.id, slot.to_string()));
    let subjects = [
        Some(Subject::Mark(slot)),
        Some(Subject::Drawing(slot)),
        Some(Subject::Seal(slot)),
        gap,
        Some(Subject::Fitted(slot)),
    ];
    let mut entries: Vec<(u64, EntryId)> = app.book.with(|book| {
        let of = |subject| {
            book.history(&build, &subject)
                .map(|line| (line.entry.order, line.entry.id.clone()))
                .collect::<Vec<_>>()
        };
        subjects.into_iter().flatten().flat_map(of).collect()
    });
    if entries.is_empty() {
        return Vec::new();
    }
    entries.sort();
    vec![
        text("h2", "", tr!("Written so far")),
        list(
            "entries",
            tr!("Written so far"),
            entries.into_iter().rev().map(|(_, id)| entry_line(id)),
        ),
    ]
}
