//! One step: what to do, what comes first, and marking it; or why it can't be marked.

use super::{at, no_build, progress, refusal, rows, write};
use crate::device;
use crate::dom::{El, button, el, follow, link, text};
use crate::draft;
use crate::route::{PortsPlace, Route, WorkPlace};
use crate::screen::Job;
use crate::screen::bench::list;
use crate::signal::*;
use crate::state::App;
use crate::widget::{call_mark, field, frame, say_button};
use pitleaf_core::book::Fact;
use pitleaf_core::limits::place_words;
use pitleaf_core::ports::SideHousing;
use pitleaf_core::route::{LeadsTo, Progress, RouteFact, Standing, State};
use pitleaf_core::spoken;
use pitleaf_translated::tr;

/// The screen of a step.
pub fn screen(app: App, key: String) -> Vec<El> {
    let hash = at(&key).hash();
    let now = RwSignal::new(None::<Progress>);
    follow(move || now.set(progress(app)));
    let who = now.with_untracked(|now| now.as_ref().map(|now| now.who.clone()));
    let who = RwSignal::new(who.unwrap_or_default());
    let why = RwSignal::new(draft::at(&hash).map(|draft| draft.text).unwrap_or_default());
    let said = RwSignal::new(String::new());
    follow(move || draft::put(&hash, &why.get(), None));
    mark_place(app, &key);
    let spoken = now.with_untracked(|now| standing(now.as_ref(), &key).map(spoken::step));
    app.read_out(spoken.as_deref().unwrap_or_default());
    let say = say_button(app, move || spoken.clone());
    let title = now.with_untracked(|now| {
        standing(now.as_ref(), &key)
            .map_or(tr!("Step"), |standing| standing.station.step.stage.name())
    });
    // The form stands as long as the step is to be done, whatever else is written meanwhile.
    let open = {
        let key = key.clone();
        Memo::new(move || {
            now.with(|now| {
                let standing = standing(now.as_ref(), &key)?;
                (standing.state != State::Done).then(|| standing.station.is_hold())
            })
        })
    };
    let (head, form_key) = (key.clone(), key.clone());
    let body = el("main")
        .class("page work-step")
        .live(move || now.with(|now| about(app, now.as_ref(), &head)))
        .live(move || match open.get() {
            Some(is_hold) => form(app, &form_key, is_hold, who, why, said),
            None => now.with(|now| {
                standing(now.as_ref(), &key).map_or_else(Vec::new, |standing| done(app, standing))
            }),
        })
        .with_all(say);
    frame(move || title.to_owned(), move || app.build_name(), true, body)
}

/// A step as it stands.
fn standing<'now>(now: Option<&'now Progress>, key: &str) -> Option<&'now Standing> {
    now.and_then(|now| Some(&now.standings[now.place(key)?]))
}

/// What the step is, what comes first, and where it is done.
fn about(app: App, now: Option<&Progress>, key: &str) -> Vec<El> {
    let Some(progress) = now else { return no_build(app) };
    let Some(standing) = standing(now, key) else {
        return vec![text("p", "plain", tr!("This build’s route has no such step."))];
    };
    let step = &standing.station.step;
    let mut shown = vec![
        text("p", "step-kind", &format!("{} · {}", step.kind.name(), standing.state.name())),
        text("p", "step-words", &step.words),
    ];
    let thing = standing.station.place_words();
    if !thing.is_empty() {
        shown.push(text("p", "step-thing", &thing));
    }
    if !step.care.is_empty() {
        shown.push(el("p").class("caution").with(text("b", "", tr!("Care: "))).text(&step.care));
    }
    if standing.state != State::Done && !standing.open.is_empty() {
        shown.push(text("h2", "", tr!("Comes first")));
        let open = standing.open.iter().map(|&open| super::left_off::row(progress, open));
        shown.push(list("rows", tr!("Comes first"), open));
    }
    if !standing.answer.is_empty() {
        shown.push(text("p", "plain", &standing.answer));
    }
    shown.extend(pieces(standing));
    shown.extend(where_done(standing));
    shown
}

/// Remembers that the work is at this step.
fn mark_place(app: App, key: &str) {
    let left = RouteFact::LeftAt { step: key.to_owned() };
    let Some(build) = untrack(|| app.build()) else { return };
    let subject = pitleaf_core::book::Subject::Route(left.subject());
    let fact = Fact::Route(left);
    let known = app.book.with_untracked(|book| {
        book.current(&build, &subject).is_some_and(|entry| entry.fact == fact)
    });
    // One on its way to the disk may be of another step.
    if !known || !app.is_settled() {
        app.bookmark(fact);
    }
}

/// The pieces to be read, each with its verdict and the way to its check.
fn pieces(standing: &Standing) -> Option<El> {
    let row = standing.station.row()?;
    let key = standing.station.key();
    let lines = standing.pieces.iter().map(|piece| {
        let to = WorkPlace::Check(row.to_owned(), piece.name.clone(), key.clone());
        let words = match piece.call {
            Some(call) => call.word(),
            None if piece.is_read => tr!("Read"),
            None => tr!("Read it"),
        };
        let name = if piece.name.is_empty() {
            tr!("The reading").to_owned()
        } else {
            place_words(&piece.name)
        };
        super::way("entry", to).with(call_mark(piece.call)).with(
            el("span")
                .class("entry-words")
                .with(text("b", "", &name))
                .with(text("span", "dim", words)),
        )
    });
    Some(list("entries", tr!("Readings"), lines))
}

/// The way to where a step's work is done.
fn where_done(standing: &Standing) -> Option<El> {
    let (words, to) = match standing.station.leads_to()? {
        LeadsTo::OilFeed => (tr!("Oil to the front bearing"), Route::Joints(Job::OilFeed)),
        LeadsTo::TighteningOrder => (tr!("Tightening order"), Route::Joints(Job::Order)),
        LeadsTo::Slots(rotor, face) => (tr!("Seal slots"), Route::Seals(rotor, face)),
        LeadsTo::EndPlay => (tr!("End play"), Route::Faces),
        LeadsTo::Faces => (tr!("Faces and fits"), Route::Faces),
        LeadsTo::Description => (tr!("Customer and engine"), Route::Work(WorkPlace::Describe)),
        LeadsTo::Compression => (tr!("Compression"), Route::Work(WorkPlace::Compression(1))),
        LeadsTo::Decisions => (tr!("Decisions"), Route::Work(WorkPlace::Decisions)),
        LeadsTo::Ports => (tr!("Ports"), Route::Ports(PortsPlace::Plate(SideHousing::Front))),
        LeadsTo::BuildSheet => (tr!("Build sheet"), Route::Work(WorkPlace::Sheet)),
    };
    Some(link("plate-link", &to.hash()).text(words))
}

/// A step that is done: by whom, over what, and how to take it back.
fn done(app: App, standing: &Standing) -> Vec<El> {
    let mut words = match (standing.done.is_some(), standing.who.as_str()) {
        (false, _) => tr!("The book has it so.").to_owned(),
        (true, "") => tr!("Done.").to_owned(),
        (true, who) => tr!("Done by {who}{}", if who.ends_with('.') { "" } else { "." }),
    };
    if let Some(at) = standing.at {
        words = tr!("{words} Written {}.", device::moment(at));
    }
    if !standing.why.is_empty() {
        words = tr!("{words} Although something was open, because: {}", standing.why);
    }
    let mut shown = vec![text("p", "plain", &words).attr("role", "status")];
    if standing.done.is_some() {
        let key = standing.station.key();
        shown.push(button("button", tr!("To do again"), move || {
            write(app, RouteFact::Undone { step: key.clone() }, tr!("to do again"), || {});
        }));
    }
    shown
}

fn form(
    app: App,
    key: &str,
    is_hold: bool,
    who: RwSignal<String>,
    why: RwSignal<String>,
    said: RwSignal<String>,
) -> Vec<El> {
    let key = key.to_owned();
    let mark = move || {
        let Some(progress) = untrack(|| progress(app)) else { return };
        match progress.mark(&key, &who.get_untracked(), &why.get_untracked()) {
            Ok(fact) => {
                said.set(String::new());
                let words = if is_hold { tr!("found true") } else { tr!("step done") };
                let emptied = draft::emptied(why);
                write(app, fact, words, move || {
                    emptied();
                    go_on(app);
                });
            }
            Err(refusal) => said.set(refusal.to_string()),
        }
    };
    let words = if is_hold { tr!("It is true") } else { tr!("Done") };
    let reason = el("div").live(move || {
        // Asked for once it is needed.
        let asked = !said.with(String::is_empty) || !why.with_untracked(String::is_empty);
        if asked { vec![rows(tr!("Why all the same"), why)] } else { Vec::new() }
    });
    vec![
        el("div")
            .class("form step-form")
            .with(field(tr!("By"), tr!("name or initials"), who))
            .with(refusal(said))
            .with(reason)
            .with(button("button action", words, mark)),
    ]
}

/// On to the next thing to do.
fn go_on(app: App) {
    let next = untrack(|| progress(app)).and_then(|progress| {
        let place = progress.left_at?;
        Some(progress.standings[place].station.key())
    });
    app.go(&next.map_or(Route::Work(WorkPlace::Stages), |key| at(&key)));
}
