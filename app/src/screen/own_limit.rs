//! The builder's own limit, in place of the sheet's, with where it is from.

use crate::device;
use crate::dom::{El, button, el, follow, text};
use crate::draft;
use crate::route::Route;
use crate::signal::*;
use crate::state::{App, app};
use crate::widget::{fault_list, field, frame, no_such_limit, switch};
use pitleaf_core::book::Fact;
use pitleaf_core::language::figure;
use pitleaf_core::limits::{Edge, Limit, Row, Source, TypedEdges};
use pitleaf_core::quantity::Unit;
use pitleaf_translated::tr;
use std::rc::Rc;

/// The form for one row.
pub fn screen(row: &str) -> Vec<El> {
    let app = app();
    match app.sheet.with_untracked(|sheet| sheet.row(row).cloned()) {
        Some(row) => form(app, row),
        None => no_such_limit(),
    }
}

/// What stands in the form.
#[derive(Clone, Copy)]
struct Typed {
    /// Lower, upper, wear.
    edges: [RwSignal<String>; 3],
    from: RwSignal<String>,
    who: RwSignal<String>,
    unit: RwSignal<Unit>,
    /// Whether it is to hold for every engine, not for the one in hand alone.
    every: RwSignal<bool>,
    /// What was typed before the unit was switched.
    before: RwSignal<TypedEdges>,
}

impl Typed {
    /// The figures in force, in the unit they are written in.
    fn of(row: &Row) -> Self {
        let unit = row.limit.unit().unwrap_or(row.unit);
        let limit = &row.limit;
        let text = |edge: &Option<Edge>| match edge {
            Some(edge) if edge.unit() != unit => {
                format!("{} {}", figure(edge.text()), edge.unit().symbol())
            }
            Some(edge) => figure(edge.text()),
            None => String::new(),
        };
        let field = |edge| RwSignal::new(text(edge));
        Self {
            edges: [field(&limit.lower), field(&limit.upper), field(&limit.wear)],
            from: RwSignal::default(),
            who: RwSignal::default(),
            unit: RwSignal::new(unit),
            every: RwSignal::new(false),
            before: RwSignal::new(TypedEdges::of(Vec::new(), unit)),
        }
    }

    /// What stands in the fields of the edges.
    fn texts(self) -> Vec<String> {
        self.edges.iter().map(|edge| edge.get_untracked()).collect()
    }

    /// Begins with what was typed here last and not put in, and keeps what is typed.
    fn keep(self, row: &Row) {
        let [lower, upper, wear] = self.edges;
        let fields = vec![lower, upper, wear, self.from, self.who];
        let known: Vec<String> = fields.iter().map(|field| field.get_untracked()).collect();
        let hash = Route::OwnLimit(row.id.clone()).hash();
        draft::form_in(hash, Some(self.unit), fields, move || known.clone());
        self.before.set(TypedEdges::of(self.texts(), self.unit.get_untracked()));
    }

    /// Another unit: what stands there goes along.
    fn switch(self, to: Unit) {
        let now = self.texts();
        let from = self.unit.get_untracked();
        self.before.update(|before| {
            for (edge, text) in self.edges.into_iter().zip(before.switch(now, from, to)) {
                edge.set(text);
            }
        });
        self.unit.set(to);
    }

    /// The row as typed, or everything wrong with it.
    fn row(self, old: &Row) -> Result<Row, Vec<String>> {
        let unit = self.unit.get_untracked();
        let mut faults = Vec::new();
        let mut edge = |name: &str, typed: RwSignal<String>| {
            let typed = typed.get_untracked();
            if typed.trim().is_empty() {
                return None;
            }
            Edge::read(&typed, unit).map_err(|fault| faults.push(format!("{name}: {fault}"))).ok()
        };
        let [lower, upper, wear] = self.edges;
        let limit = Limit {
            lower: edge(tr!("Lower"), lower),
            upper: edge(tr!("Upper"), upper),
            wear: edge(tr!("Wear"), wear),
        };
        let words = |typed: RwSignal<String>| typed.get_untracked().trim().to_owned();
        let source = Source::Yours {
            who: words(self.who),
            when: device::moment(device::now()),
            from: words(self.from),
        };
        let row = Row { limit, unit, source, ..old.clone() };
        faults.extend(row.faults().iter().map(ToString::to_string));
        if words(self.from).is_empty() {
            faults.push(tr!("Say where it is from: the manual and its page.").to_owned());
        }
        if faults.is_empty() { Ok(row) } else { Err(faults) }
    }
}

fn form(app: App, row: Row) -> Vec<El> {
    let typed = Typed::of(&row);
    typed.keep(&row);
    let wrong = RwSignal::new(Vec::<String>::new());
    let asked = RwSignal::new(false);
    // A question is about what stood there when it was asked.
    follow(move || {
        typed.edges.iter().for_each(|edge| edge.track());
        typed.unit.track();
        if asked.get_untracked() {
            asked.set(false);
            wrong.set(Vec::new());
        }
    });
    let units: Vec<(Unit, &str)> =
        row.unit.dimension().units().take(4).map(|unit| (unit, unit.symbol())).collect();
    let what = row.what.clone();
    let save = Rc::new(move |is_sure: bool| match typed.row(&row) {
        Ok(own) => {
            let doubts = if is_sure { Vec::new() } else { own.doubts() };
            if !doubts.is_empty() {
                wrong.set(doubts);
                asked.set(true);
                return;
            }
            let back = Route::Check { row: own.id.clone(), place: String::new() };
            let hash = Route::OwnLimit(own.id.clone()).hash();
            let own = Box::new(own);
            let (fact, whose) = if typed.every.get_untracked() {
                (Fact::Limit(own), tr!("every engine"))
            } else {
                (Fact::BuildLimit(own), tr!("this engine only"))
            };
            app.write(vec![fact], tr!("your own limit, {whose}"), move || {
                draft::put(&hash, "", None);
                app.go(&back);
            });
        }
        Err(faults) => {
            asked.set(false);
            wrong.set(faults);
        }
    });
    let faults = fault_list(move || wrong.get());
    let [lower, upper, wear] = typed.edges;
    let anyway = {
        let save = save.clone();
        move || {
            let save = save.clone();
            let key = || button("button", tr!("Keep it all the same"), move || save(true));
            asked.get().then(key).into_iter().collect()
        }
    };
    let whose = switch(
        tr!("Holds for"),
        &[(false, tr!("this engine only")), (true, tr!("every engine"))],
        move |every| typed.every.get() == every,
        move |every| typed.every.set(every),
    );
    let form = el("form")
        .class("form")
        .on_submit(move || save(false))
        .with(switch(
            tr!("Unit"),
            &units,
            move |unit| typed.unit.get() == unit,
            move |unit| typed.switch(unit),
        ))
        .with_all([
            field(tr!("Lower limit"), tr!("none"), lower),
            field(tr!("Upper limit"), tr!("none"), upper),
            field(tr!("Wear limit"), tr!("none"), wear),
            field(tr!("From"), tr!("the manual, its page"), typed.from),
            field(tr!("Entered by"), tr!("may stay empty"), typed.who),
            whose,
            faults,
            text("button", "button action", tr!("Put it in")).attr("type", "submit"),
        ])
        .live(anyway);
    let under = move || {
        let engine = app.opening().map(|(name, ..)| format!(" · {name}"));
        what.clone() + &engine.unwrap_or_default()
    };
    frame(|| tr!("My own limit").to_owned(), under, true, el("main").class("page").with(form))
}
