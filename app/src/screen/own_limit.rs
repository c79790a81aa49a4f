//! The builder's own limit, in place of the sheet's, with where it is from.

use crate::device;
use crate::dom::{El, el, text};
use crate::route::Route;
use crate::signal::*;
use crate::state::{App, app};
use crate::widget::{fault_list, field, frame, no_such_limit, switch};
use pitleaf_core::book::Fact;
use pitleaf_core::gather::Gather;
use pitleaf_core::limits::{Edge, Limit, Row, Source};
use pitleaf_core::quantity::Unit;

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
    lower: RwSignal<String>,
    upper: RwSignal<String>,
    wear: RwSignal<String>,
    from: RwSignal<String>,
    who: RwSignal<String>,
    unit: RwSignal<Unit>,
}

impl Typed {
    /// The row as typed, or everything wrong with it.
    fn row(self, old: &Row) -> Result<Row, Vec<String>> {
        let mut faults = Vec::new();
        let mut edge = |name: &str, typed: RwSignal<String>| {
            let typed = typed.get_untracked();
            if typed.trim().is_empty() {
                return None;
            }
            Edge::read(&typed, self.unit.get_untracked())
                .map_err(|fault| faults.push(format!("{name}: {fault}")))
                .ok()
        };
        let limit = Limit {
            lower: edge("Lower", self.lower),
            upper: edge("Upper", self.upper),
            wear: edge("Wear", self.wear),
        };
        let words = |typed: RwSignal<String>| typed.get_untracked().trim().to_owned();
        let source = Source::Yours {
            who: words(self.who),
            when: device::moment(device::now()),
            from: words(self.from),
        };
        let row = Row { limit, unit: self.unit.get_untracked(), source, ..old.clone() };
        faults.extend(row.faults().iter().map(ToString::to_string));
        if words(self.from).is_empty() {
            faults.push("Say where it is from: the manual and its page.".to_owned());
        }
        if faults.is_empty() { Ok(row) } else { Err(faults) }
    }
}

fn form(app: App, row: Row) -> Vec<El> {
    let text_of = |edge: &Option<Edge>| {
        RwSignal::new(edge.as_ref().map(|edge| edge.text().to_owned()).unwrap_or_default())
    };
    let typed = Typed {
        lower: text_of(&row.limit.lower),
        upper: text_of(&row.limit.upper),
        wear: text_of(&row.limit.wear),
        from: RwSignal::default(),
        who: RwSignal::default(),
        unit: RwSignal::new(row.limit.unit().unwrap_or(row.unit)),
    };
    let wrong = RwSignal::new(Vec::<String>::new());
    let units: Vec<(Unit, &str)> =
        row.unit.dimension().units().take(4).map(|unit| (unit, unit.symbol())).gather();
    let what = row.what.clone();
    let save = move || match typed.row(&row) {
        Ok(own) => {
            let back = Route::Check { row: own.id.clone(), place: String::new() };
            app.write(vec![Fact::Limit(Box::new(own))], "your own limit".to_owned(), move || {
                app.go(&back)
            });
        }
        Err(faults) => wrong.set(faults),
    };
    let faults = fault_list(move || wrong.get());
    let form = el("form")
        .class("form")
        .on_submit(save)
        .with(switch(
            "Unit",
            &units,
            move |unit| typed.unit.get() == unit,
            move |unit| typed.unit.set(unit),
        ))
        .with_all([
            field("Lower limit", "none", typed.lower),
            field("Upper limit", "none", typed.upper),
            field("Wear limit", "none", typed.wear),
            field("From", "the manual, its page", typed.from),
            field("Entered by", "may stay empty", typed.who),
            faults,
            text("button", "button action", "Put it in").attr("type", "submit"),
        ]);
    frame(
        || "My own limit".to_owned(),
        move || what.clone(),
        true,
        el("main").class("page").with(form),
    )
}
