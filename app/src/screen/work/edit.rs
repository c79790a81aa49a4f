//! A step of the route, to be reworded, moved, taken out, or followed by another.

use super::{choose, progress, refusal, rows, write};
use crate::dom::{El, button, el, follow, text};
use crate::draft;
use crate::route::{Route, WorkPlace};
use crate::signal::*;
use crate::state::App;
use crate::widget::frame;
use pitleaf_core::route::{Answer, Each, Edit, Kind, RouteFact, Routing, Step, When};
use pitleaf_translated::tr;

/// A step in the making, all as text.
#[derive(Clone, Copy)]
struct Fields {
    words: RwSignal<String>,
    care: RwSignal<String>,
    kind: RwSignal<String>,
    row: RwSignal<String>,
    by: RwSignal<String>,
    needs: RwSignal<String>,
    when: RwSignal<String>,
    each: RwSignal<String>,
}

/// The screen of a step.
pub fn screen(app: App, id: &str) -> Vec<El> {
    let known = untrack(|| progress(app));
    let found = known.as_ref().and_then(|known| known.routing.step(id));
    let body = el("main").class("page");
    let body = match (&known, found) {
        (Some(known), Some(step)) => body.with_all(form(app, &known.routing, step)),
        _ => body.with(text("p", "plain", tr!("This build’s route has no such step."))),
    };
    frame(|| tr!("A step of the route").to_owned(), move || app.build_name(), true, body)
}

fn form(app: App, routing: &Routing, step: &Step) -> Vec<El> {
    let new = |text: &str| RwSignal::new(text.to_owned());
    let (row, by) = match &step.kind {
        Kind::Do => ("", Answer::Builder),
        Kind::Measure(row) => (row.as_str(), Answer::Builder),
        Kind::Hold(by) => ("", *by),
    };
    let fields = Fields {
        words: new(&step.words),
        care: new(&step.care),
        kind: new(step.kind.word()),
        row: new(row),
        by: new(by.word()),
        needs: new(&step.needs.join(" ")),
        when: new(step.when.word()),
        each: new(step.each.word()),
    };
    let hash = Route::Work(WorkPlace::Edit(step.id.clone())).hash();
    let first = fields.all().map(RwSignal::get_untracked).to_vec();
    draft::form(hash.clone(), fields.all().to_vec(), move || first.clone());
    let said = RwSignal::new(String::new());
    let pair = |word: &str, says: &str| (word.to_owned(), says.to_owned());
    let kinds = [("do", tr!("Do")), ("measure", tr!("Measure")), ("hold", tr!("Hold"))]
        .map(|(word, says)| pair(word, says));
    let answers: Vec<_> = Answer::ALL.iter().map(|by| pair(by.word(), by.says())).collect();
    let whens: Vec<_> = When::ALL.iter().map(|when| pair(when.word(), when.says())).collect();
    let eachs: Vec<_> = Each::ALL.iter().map(|each| pair(each.word(), each.says())).collect();
    let sheet: Vec<_> = app
        .sheet
        .with_untracked(|sheet| sheet.rows().iter().map(|row| pair(&row.id, &row.what)).collect());
    let steps: Vec<_> = routing
        .steps()
        .iter()
        .filter(|other| other.id != step.id)
        .map(|other| pair(&other.id, &other.words))
        .collect();
    let edit = {
        let step = step.clone();
        move |edit: Edit, to: Option<String>| {
            let Some(progress) = untrack(|| progress(app)) else { return };
            match progress.routing.edit(edit.clone()) {
                Ok(_) => {
                    said.set(String::new());
                    let hash = hash.clone();
                    write(app, RouteFact::Edited(edit), &step.words, move || {
                        if to.is_none() {
                            draft::put(&hash, "", None);
                        }
                        app.go(&Route::Work(to.map_or(WorkPlace::Route, WorkPlace::Edit)));
                    });
                }
                Err(fault) => said.set(fault.to_string()),
            }
        }
    };
    let (id, before) = (step.id.clone(), step.clone());
    let key = |words: &str, make: Box<dyn Fn() -> (Edit, Option<String>)>| {
        let edit = edit.clone();
        button("button", words, move || {
            let (change, to) = make();
            edit(change, to);
        })
    };
    let here = |make: fn(String) -> Edit, stay: bool| -> Box<dyn Fn() -> (Edit, Option<String>)> {
        let id = id.clone();
        Box::new(move || (make(id.clone()), stay.then(|| id.clone())))
    };
    let add = {
        let (id, step) = (id.clone(), before.clone());
        Box::new(move || {
            let fresh =
                untrack(|| progress(app)).map(|now| now.routing.free_id()).unwrap_or_default();
            let new = Step {
                id: fresh.clone(),
                kind: Kind::Do,
                words: tr!("New step").to_owned(),
                care: String::new(),
                needs: vec![id.clone()],
                ..step.clone()
            };
            (Edit::AddAfter(id.clone(), new), Some(fresh))
        })
    };
    vec![
        el("div")
            .class("form")
            .with(rows(tr!("Words"), fields.words))
            .with(rows(tr!("Care (may be empty)"), fields.care))
            .with(choose(tr!("Kind"), &kinds, fields.kind))
            .live(move || match fields.kind.get().as_str() {
                "measure" => vec![choose(tr!("Row"), &sheet, fields.row)],
                "hold" => vec![choose(tr!("Answered by"), &answers, fields.by)],
                _ => Vec::new(),
            })
            .with(choose(tr!("In"), &whens, fields.when))
            .with(choose(tr!("For"), &eachs, fields.each))
            .live(move || needs(&steps, fields.needs))
            .with(refusal(said))
            .with(
                key(tr!("Put it in"), Box::new(move || (Edit::Put(fields.step(&before)), None)))
                    .class("button action"),
            ),
        el("div")
            .class("pair")
            .with(key(tr!("Up"), here(Edit::Up, true)))
            .with(key(tr!("Down"), here(Edit::Down, true))),
        key(tr!("Add a step behind it"), add),
        key(tr!("Take it out"), here(Edit::Remove, false)),
    ]
}

/// What a step waits for, each with a key to take it out, and the others to be added.
fn needs(steps: &[(String, String)], needs: RwSignal<String>) -> Vec<El> {
    let now = needs.get();
    let mut shown = vec![text("h2", "", tr!("Waits for"))];
    for id in now.split_whitespace() {
        let (bare, before) =
            id.strip_prefix('<').map_or((id, ""), |id| (id, tr!(" (of the one before)")));
        let words = steps.iter().find(|(other, _)| other == bare).map_or(bare, |(_, words)| words);
        let others: Vec<&str> = now.split_whitespace().filter(|other| *other != id).collect();
        let others = others.join(" ");
        let out = button("quiet", tr!("Take out"), move || needs.set(others.clone()));
        shown.push(
            el("div")
                .class("build-line")
                .with(text("span", "", &format!("{words}{before}")))
                .with(out.attr("aria-label", &tr!("Do not wait for: {words}"))),
        );
    }
    let mut choices = vec![(String::new(), tr!("choose").to_owned())];
    choices.extend(
        steps.iter().filter(|(id, _)| !now.split_whitespace().any(|need| need == id)).cloned(),
    );
    let added = RwSignal::new(String::new());
    follow(move || {
        let id = added.get();
        if !id.is_empty() {
            needs.update(|needs| *needs = format!("{needs} {id}"));
        }
    });
    shown.push(choose(tr!("Wait for"), &choices, added));
    shown
}

impl Fields {
    fn all(self) -> [RwSignal<String>; 8] {
        let Self { words, care, kind, row, by, needs, when, each } = self;
        [words, care, kind, row, by, needs, when, each]
    }

    /// The step as it stands; its id and stage stay.
    fn step(self, before: &Step) -> Step {
        let text = |field: RwSignal<String>| field.get_untracked().trim().to_owned();
        Step {
            id: before.id.clone(),
            stage: before.stage,
            kind: match text(self.kind).as_str() {
                "measure" => Kind::Measure(text(self.row)),
                "hold" => Kind::Hold(Answer::named(&text(self.by)).unwrap_or(Answer::Builder)),
                _ => Kind::Do,
            },
            words: text(self.words),
            care: text(self.care),
            needs: text(self.needs).split_whitespace().map(str::to_owned).collect(),
            when: When::named(&text(self.when)).unwrap_or(before.when),
            each: Each::named(&text(self.each)).unwrap_or(before.each),
        }
    }
}
