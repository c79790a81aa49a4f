//! The tightening order of a joint: its bolts by place, on a circle or by name; drawn, in passes, each ticked
//! off into the book.

use super::form::{Field, Form, Why, answer};
use super::{Job, bolts, show};
use crate::dom::{El, button, el, text};
use crate::draft;
use crate::signal::*;
use crate::state::{App, app};
use crate::widget::{frame, switch};
use pitleaf_core::joints::bolts::Bolts;
use pitleaf_core::joints::plan::{Plan, joints, passes_done};
use pitleaf_core::joints::sequence::MOST_BOLTS;
use pitleaf_core::joints::{Caution, bounds, shown};
use pitleaf_core::quantity::Unit;
use pitleaf_translated::tr;
use std::cell::RefCell;
use uom::si::ratio::percent;

const STACK: &str = "stack";
const ELSEWHERE: &str = "elsewhere";

/// How the bolts stand: by place, which is where it starts, [`CIRCLE`] or [`NAMES`].
const PLACES: &str = "places";
const CIRCLE: &str = "circle";
const NAMES: &str = "names";

#[derive(Clone, Copy)]
pub(super) struct Fields {
    joint: Field,
    /// What it holds together: [`STACK`] or [`ELSEWHERE`].
    holds: Field,
    stand: Field,
    /// Rows `x y`, and their unit.
    pub(super) places: Field,
    count: Field,
    names: Field,
    order: Field,
    shares: Field,
    torque: Field,
    /// What the wrench read in the pass in hand.
    read: Field,
}

impl Fields {
    fn new(app: App) -> Self {
        let mut form = Form::of_build("order", app);
        let shares = ("shares", tr!("Passes in %, one more at 100 follows"));
        let units = &[Unit::NewtonMetre, Unit::PoundForceFoot, Unit::KilogramForceMetre];
        let fields = Self {
            joint: form.words(("joint", tr!("Joint")), tr!("Tension bolts")),
            holds: form.words(("holds", "Holds together"), STACK),
            stand: form.words(("stand", "Stand"), PLACES),
            places: form.rows(
                ("places", tr!("Places, a row x y for each bolt")),
                &[Unit::Millimetre, Unit::Inch],
            ),
            count: form.count(("count", tr!("How many bolts")), MOST_BOLTS, ""),
            names: form.words(("names", tr!("Names in the order of their turn")), ""),
            torque: form.figure(("torque", tr!("Full torque")), &bounds::TORQUE, units, ""),
            read: form.figure(
                ("read", tr!("Wrench read, if not that")),
                &bounds::TORQUE,
                units,
                "",
            ),
            order: form.words(("order", tr!("Own order by letters, if the manual has one")), ""),
            shares: form.words(shares, "33, 67, 100"),
        };
        form.keep();
        fields
    }

    fn stands(self, how: &str) -> bool {
        self.stand.typed.with(|stand| stand == how)
    }

    /// Takes another joint in hand, with its plan as written.
    fn take(self, app: App, joint: &str) {
        self.joint.typed.set(joint.to_owned());
        let Some(plan) = written(app, joint) else { return };
        let holds = if plan.elsewhere { ELSEWHERE } else { STACK };
        self.holds.typed.set(holds.to_owned());
        let said = plan.bolts.said(&plan.order);
        let (stand, field, text) = match &plan.bolts {
            Bolts::Placed(_) => (PLACES, self.places, plan.bolts.rows()),
            Bolts::Circle(count) => (CIRCLE, self.count, count.to_string()),
            Bolts::Named(_) => (NAMES, self.names, said.clone()),
        };
        self.stand.typed.set(stand.to_owned());
        field.typed.set(text);
        self.places.unit.set(Unit::Millimetre);
        let is_usual = plan.bolts.usual_order().is_ok_and(|usual| usual == plan.order);
        self.order.typed.set(if is_usual { String::new() } else { said });
        self.torque.typed.set(plan.torque.number().to_owned());
        self.torque.unit.set(plan.torque.unit());
        self.shares.typed.set(plan.shares);
    }

    /// The bolts as typed or tapped.
    pub(super) fn bolts(self) -> Result<Bolts, Why> {
        let bolts = match self.stand.text().as_str() {
            CIRCLE => Bolts::circle(self.count.counted()?),
            NAMES => Bolts::named(&self.names.text()),
            _ => Bolts::placed(&self.places.text(), self.places.unit.get()),
        };
        bolts.map_err(|fault| Why::Refused(fault.to_string()))
    }

    /// The order of its own; none by names alone, which are one already.
    pub(super) fn order(self) -> String {
        if self.stands(NAMES) { String::new() } else { self.order.text() }
    }

    fn plan(self) -> Result<Plan, Why> {
        let bolts = self.bolts()?;
        let torque = self.torque.given()?;
        self.torque.amount()?;
        let mut plan = Plan::read(
            &self.joint.text(),
            bolts,
            &self.order(),
            &self.shares.text(),
            &torque,
            self.torque.unit.get(),
        )
        .map_err(|fault| Why::Refused(fault.to_string()))?;
        plan.elsewhere = self.holds.text() == ELSEWHERE;
        Ok(plan)
    }

    fn needed(self) -> Vec<Field> {
        let count = self.stands(CIRCLE).then_some(self.count);
        count.into_iter().chain([self.torque]).collect()
    }
}

/// The screen.
pub fn screen() -> Vec<El> {
    let app = app();
    let fields = Fields::new(app);
    let one_of = |field: Field, label: &str, choices: &[(&'static str, &str)]| {
        let typed = field.typed;
        switch(
            label,
            choices,
            move |what| typed.with(|set| set == what),
            move |what| typed.set(what.to_owned()),
        )
    };
    let holds = one_of(
        fields.holds,
        tr!("Holds together"),
        &[(STACK, tr!("Holds the stack")), (ELSEWHERE, tr!("Another joint"))],
    );
    let stand = one_of(
        fields.stand,
        tr!("How the bolts stand"),
        &[(PLACES, tr!("By place")), (CIRCLE, tr!("On one circle")), (NAMES, tr!("By name only"))],
    );
    let given = el("div").class("form").live(move || {
        if fields.stands(CIRCLE) {
            vec![how(tr!("Evenly on one circle, A on top, then clockwise: they go crosswise. The stack’s bolts are on none.")), fields.count.el(), fields.order.el()]
        } else if fields.stands(NAMES) {
            vec![how(tr!("The manual’s order: the bolts’ names, first turn first.")), fields.names.el()]
        } else {
            vec![
                how(tr!("Tap each bolt; tap it again to take it out. They go from the middle outwards (common practice, no source).")),
                bolts::tapped_picture(app, fields),
                fields.places.rows_el(),
                fields.order.el(),
            ]
        }
    });
    let shown = Memo::new(move || written(app, &fields.joint.text()).is_some());
    let body = el("main")
        .class("page joint")
        .with(el("section").class("joint-answer").attr("aria-label", tr!("Order")).live(
            move || {
                let joint = fields.joint.text();
                match written(app, joint.trim()) {
                    Some(plan) => passes(app, fields, &plan),
                    None => {
                        let made = fields.plan().map(|plan| planned(app, &plan));
                        answer(&fields.needed(), made)
                    }
                }
            },
        ))
        .live(move || if shown.get() { vec![start_over(app, fields)] } else { Vec::new() })
        .with(
            el("div")
                .class("form")
                .with(fields.joint.el())
                .with(holds)
                .with_all([fields.torque, fields.shares].map(Field::el))
                .with(stand)
                .with(given),
        )
        .live(move || others(app, fields))
        .with(how(tr!("The order of the engine’s own manual stands above any order given here.")))
        .with_all(show::cautions(&[Caution::YieldingBolt]));
    frame(|| Job::Order.name().to_owned(), || Job::Order.about().to_owned(), true, body)
}

fn how(words: &str) -> El {
    text("p", "how", words)
}

fn written(app: App, joint: &str) -> Option<Plan> {
    let build = app.build()?;
    app.book.with(|book| Plan::of(book, &build, joint))
}

/// Other joints of the build that have an order.
fn others(app: App, fields: Fields) -> Vec<El> {
    let Some(build) = app.build() else { return Vec::new() };
    let names = app.book.with(|book| joints(book, &build));
    let here = fields.joint.text();
    let links: Vec<El> = names
        .into_iter()
        .filter(|name| *name != here.trim())
        .map(|name| {
            let words = name.clone();
            button("row-link", &words, move || fields.take(app, &name))
        })
        .collect();
    if links.is_empty() {
        return Vec::new();
    }
    std::iter::once(text("h2", "", tr!("Other joints of this build"))).chain(links).collect()
}

/// A plan not written yet. Bolts by place are drawn where they are tapped.
fn planned(app: App, plan: &Plan) -> Vec<El> {
    let fact = plan.fact();
    let said = tr!("{}: order", plan.joint);
    let mut shown = Vec::new();
    if !matches!(plan.bolts, Bolts::Placed(_)) {
        shown.extend(bolts::picture(app, &plan.bolts, Some(&plan.order)));
    }
    shown.push(show::table(tr!("Passes"), pass_rows(plan)));
    shown.push(button("button action", tr!("Write the order down and start"), move || {
        app.write(vec![fact.clone()], said.clone(), || {});
    }));
    shown
}

fn pass_rows(plan: &Plan) -> Vec<(String, String, String)> {
    let symbol = plan.torque.unit().symbol();
    let all = plan.passes().iter().zip(1..);
    all.map(|(pass, number): (_, u16)| {
        let share = shown::plain(pass.share.get::<percent>(), 0);
        (
            tr!("Pass {number}, {share} %"),
            format!("{} {symbol}", plan.wrench(pass)),
            plan.bolts.said(&pass.order),
        )
    })
    .collect()
}

/// A written plan: the pass to do, and those done.
fn passes(app: App, fields: Fields, plan: &Plan) -> Vec<El> {
    let Some(build) = app.build() else { return Vec::new() };
    let done = app.book.with(|book| passes_done(book, &build, &plan.joint));
    let at = |number: u16| done.iter().find(|done| done.pass == number);
    let next = (1..).zip(plan.passes()).find(|(number, _)| at(*number).is_none());
    let symbol = plan.torque.unit().symbol();
    let mut shown = Vec::new();
    if let Some((number, pass)) = next {
        let way = plan.way(number.into());
        let set = format!("{} {symbol}", plan.wrench(pass));
        shown.push(show::key(&set, &tr!("pass {number} of {}, {way}", plan.passes().len())));
        shown.extend(bolts::picture(app, &plan.bolts, Some(&pass.order)));
        shown.push(show::line(&plan.bolts.said(&pass.order)));
        let said = tr!("{}: pass {number}", plan.joint);
        shown.push(fields.read.el());
        let (plan, read) = (plan.clone(), fields.read);
        let asked = RefCell::new(None);
        shown.push(button("button action", &tr!("Pass {number} is done"), move || {
            let (typed, unit) = (read.typed.get_untracked(), read.unit.get_untracked());
            let question = plan.far_off(number, &typed, unit);
            if question.is_some() && asked.replace(question.clone()) != question {
                app.wrong(&question.unwrap_or_default());
                return;
            }
            match plan.tightened(number, &typed, unit) {
                Ok(fact) => {
                    app.write(fact.into_iter().collect(), said.clone(), draft::emptied(read.typed));
                }
                Err(refusal) => app.wrong(&refusal.to_string()),
            }
        }));
    } else {
        shown.push(show::key(tr!("All passes done"), &plan.joint));
        shown.extend(bolts::picture(app, &plan.bolts, Some(&plan.order)));
    }
    let ticks = pass_rows(plan).into_iter().zip(1..).map(|((label, torque, order), number)| {
        let word = match at(number) {
            None => tr!("{torque}  to do"),
            Some(done) => {
                let read = format!("{} {}", done.torque, done.unit.symbol());
                if read == torque {
                    tr!("{torque}  ✓ done")
                } else {
                    tr!("{torque}  ✓ done at {read}")
                }
            }
        };
        (label, word, order)
    });
    shown.push(show::table(tr!("Passes"), ticks.collect::<Vec<_>>()));
    shown
}

fn start_over(app: App, fields: Fields) -> El {
    let write = move || {
        let planned = untrack(move || fields.plan());
        let again =
            planned.ok().or_else(|| written(app, fields.joint.typed.get_untracked().trim()));
        if let Some(plan) = again {
            app.write(vec![plan.fact()], tr!("{}: started over", plan.joint), || {});
        }
    };
    el("details")
        .class("joint-more")
        .with(text("summary", "", tr!("Loosened, or another order")))
        .with(text("p", "plain", tr!("Change the fields below if need be. The passes done so far stay in the book and no longer count.")))
        .with(button("button", tr!("Start over"), write))
}
