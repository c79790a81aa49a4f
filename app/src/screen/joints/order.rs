//! The tightening order of a joint: drawn, in passes, each ticked off into the book.

use super::form::{Field, Form, Why, answer};
use super::{Job, show};
use crate::dom::{El, button, el, svg, text};
use crate::draft;
use crate::signal::*;
use crate::state::{App, app};
use crate::widget::{frame, switch};
use pitleaf_core::gather::Gather;
use pitleaf_core::joints::plan::{Plan, joints, passes_done};
use pitleaf_core::joints::sequence::{MOST_BOLTS, Order};
use pitleaf_core::joints::{Caution, bounds, shown};
use pitleaf_core::quantity::Unit;
use pitleaf_translated::tr;
use std::cell::RefCell;
use uom::si::ratio::percent;

const STACK: &str = "stack";
const ELSEWHERE: &str = "elsewhere";

#[derive(Clone, Copy)]
struct Fields {
    joint: Field,
    /// What it holds together: [`STACK`] or [`ELSEWHERE`].
    holds: Field,
    count: Field,
    order: Field,
    shares: Field,
    torque: Field,
    /// What the wrench read in the pass in hand.
    read: Field,
}

impl Fields {
    fn new(app: App) -> Self {
        let mut form = Form::of_build("order", app);
        let units = &[Unit::NewtonMetre, Unit::PoundForceFoot, Unit::KilogramForceMetre];
        let fields = Self {
            joint: form.words(tr!("Joint"), tr!("Tension bolts")),
            holds: form.words(tr!("Holds together"), STACK),
            count: form.count(tr!("How many bolts"), MOST_BOLTS, ""),
            torque: form.figure(tr!("Full torque"), &bounds::TORQUE, units, ""),
            read: form.figure(tr!("Wrench read, if not that"), &bounds::TORQUE, units, ""),
            order: form.words(tr!("Own order (empty: crosswise)"), ""),
            shares: form.words(tr!("Passes in %, once around follows"), "33, 67, 100"),
        };
        form.keep();
        fields
    }

    /// Takes another joint in hand, with its plan as written.
    fn take(self, app: App, joint: &str) {
        self.joint.typed.set(joint.to_owned());
        if let Some(plan) = written(app, joint) {
            let holds = if plan.elsewhere { ELSEWHERE } else { STACK };
            self.holds.typed.set(holds.to_owned());
            self.count.typed.set(plan.order.bolts().len().to_string());
            self.torque.typed.set(plan.torque.number().to_owned());
            self.torque.unit.set(plan.torque.unit());
            self.order.typed.set(plan.order.to_string());
            self.shares.typed.set(plan.shares);
        }
    }

    fn plan(self) -> Result<Plan, Why> {
        let count = self.count.counted()?;
        let torque = self.torque.given()?;
        self.torque.amount()?;
        let mut plan = Plan::read(
            &self.joint.text(),
            count,
            &self.order.text(),
            &self.shares.text(),
            &torque,
            self.torque.unit.get(),
        )
        .map_err(|fault| Why::Refused(fault.to_string()))?;
        plan.elsewhere = self.holds.text() == ELSEWHERE;
        Ok(plan)
    }
}

/// The screen.
pub fn screen() -> Vec<El> {
    let app = app();
    let fields = Fields::new(app);
    let needed = [fields.count, fields.torque];
    let holds = switch(
        tr!("Holds together"),
        &[(STACK, tr!("Holds the stack")), (ELSEWHERE, tr!("Another joint"))],
        move |what| fields.holds.typed.with(|holds| holds == what),
        move |what| fields.holds.typed.set(what.to_owned()),
    );
    let shown = Memo::new(move || written(app, &fields.joint.text()).is_some());
    let body =
        el("main")
            .class("page joint")
            .with(el("section").class("joint-answer").attr("aria-label", tr!("Order")).live(
                move || {
                    let joint = fields.joint.text();
                    match written(app, joint.trim()) {
                        Some(plan) => passes(app, fields, &plan),
                        None => answer(&needed, fields.plan().map(|plan| planned(app, &plan))),
                    }
                },
            ))
            .live(move || if shown.get() { vec![start_over(app, fields)] } else { Vec::new() })
            .with(el("div").class("form").with(fields.joint.el()).with(holds).with_all(
                [fields.count, fields.torque, fields.order, fields.shares].map(Field::el),
            ))
            .live(move || others(app, fields))
            .with_all(show::cautions(&[Caution::YieldingBolt]));
    frame(|| Job::Order.name().to_owned(), || Job::Order.about().to_owned(), true, body)
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
        .gather();
    if links.is_empty() {
        return Vec::new();
    }
    std::iter::once(text("h2", "", tr!("Other joints of this build"))).chain(links).gather()
}

/// A plan not written yet.
fn planned(app: App, plan: &Plan) -> Vec<El> {
    let fact = plan.fact();
    let said = tr!("{}: order", plan.joint);
    let mut shown = vec![drawn(&plan.order, &[]), show::table(tr!("Passes"), pass_rows(plan))];
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
            pass.order.to_string(),
        )
    })
    .gather()
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
        let around = if usize::from(number) == plan.passes().len() {
            tr!("once around")
        } else {
            tr!("crosswise as drawn")
        };
        let set = format!("{} {symbol}", plan.wrench(pass));
        shown.push(show::key(&set, &tr!("pass {number} of {}, {around}", plan.passes().len())));
        shown.push(drawn(&pass.order, pass.order.bolts()));
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
                    app.write(fact.into_iter().gather(), said.clone(), draft::emptied(read.typed));
                }
                Err(refusal) => app.wrong(&refusal.to_string()),
            }
        }));
    } else {
        shown.push(show::key(tr!("All passes done"), &plan.joint));
        shown.push(drawn(&plan.order, plan.order.bolts()));
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
    shown.push(show::table(tr!("Passes"), ticks.gather::<Vec<_>>()));
    shown
}

/// The circle, each bolt with its place in the order.
fn drawn(order: &Order, path: &[u16]) -> El {
    let mut picture = svg("svg").attrs(&[
        ("class", "bolt-circle"),
        ("viewBox", "-1300 -1300 2600 2600"),
        ("role", "img"),
        ("aria-label", &tr!("Order of the bolts: {order}")),
    ]);
    let mut d = String::new();
    for bolt in path {
        let (x, y) = order.on_circle(*bolt);
        d.push_str(&format!("{}{x} {y}", if d.is_empty() { "M" } else { "L" }));
    }
    picture = picture
        .with(svg("path").attrs(&[("d", "M0-1000A1000 1000 0 1 1-.1-1000z"), ("class", "ring")]))
        .with(svg("path").attrs(&[("d", &d), ("class", "path")]));
    let count = order.bolts().len();
    // Many bolts need smaller rounds; above two dozen their numbers would stand in each other.
    let radius = match count {
        ..=12 => "190",
        13..=24 => "125",
        _ => "45",
    };
    for (&bolt, place) in order.bolts().iter().zip(1_u16..) {
        let (x, y) = order.on_circle(bolt);
        let (x, y) = (x.to_string(), y.to_string());
        picture = picture.with(svg("circle").attrs(&[("cx", &x), ("cy", &y), ("r", radius)]));
        if count <= 24 {
            let turn = svg("text").attrs(&[("x", &x), ("y", &y)]);
            picture = picture.with(turn.text(&place.to_string()));
        }
    }
    el("figure").class("bolts").with(picture).with(text(
        "figcaption",
        "how",
        tr!("The number on a bolt is its turn. Bolts are counted clockwise from the top."),
    ))
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
