//! A port's outline: pasted as rows or dragged by its corners, checked as it changes.

use super::outline_picture::{Drag, outline_picture};
use super::{care, engine, face, under};
use crate::dom::{El, button, el, follow, link};
use crate::draft;
use crate::route::{PortsPlace, Route};
use crate::signal::*;
use crate::state::{App, app};
use crate::widget::{fault_list, field, frame, switch};
use pitleaf_core::book::Fact;
use pitleaf_core::kept;
use pitleaf_core::ports::{
    Corner, Form, PortFace, PortName, Seat, Stage, SweptSoFar, TypedOutline, add_corner,
    corner_radius, line, remove_corner, round_corner,
};
use pitleaf_core::quantity::Unit;
use pitleaf_core::trochoid::Engine;
use pitleaf_translated::tr;
use std::cell::Cell;
use std::rc::Rc;

/// The outline as it is being typed and dragged.
#[derive(Clone, Copy)]
pub(super) struct Editing {
    pub(super) port: PortName,
    pub(super) engine: Engine,
    pub(super) face: PortFace,
    pub(super) rows: RwSignal<String>,
    pub(super) unit: RwSignal<Unit>,
    pub(super) form: RwSignal<Form>,
    pub(super) width: RwSignal<String>,
    in_bore: RwSignal<bool>,
    /// The corner chosen, to be taken away or to have another put behind it.
    pub(super) chosen: RwSignal<Option<usize>>,
    /// The corner under the finger.
    pub(super) drag: RwSignal<Option<Drag>>,
}

impl Editing {
    pub(super) fn typed(self) -> TypedOutline {
        TypedOutline {
            port: self.port,
            rows: self.rows.get(),
            unit: self.unit.get(),
            form: self.form.get(),
            width: if self.in_bore.get() { self.width.get() } else { String::new() },
            figures: String::new(),
        }
    }

    /// The corners as typed; none if a row can't be read.
    pub(super) fn corners(self) -> Vec<Corner> {
        self.typed().corners_in(&self.engine).unwrap_or_default()
    }

    fn put(self, typed: TypedOutline) {
        self.unit.set(typed.unit);
        self.form.set(typed.form);
        self.in_bore.set(!typed.width.is_empty());
        self.width.set(typed.width);
        self.rows.set(typed.rows);
    }
}

/// The outline of a port.
pub fn screen(port: PortName) -> Vec<El> {
    let app = app();
    let hash = Route::Ports(PortsPlace::Outline(port)).hash();
    let written = written(app, port).unwrap_or_else(|| TypedOutline::empty(port, Unit::Millimetre));
    let editing = Editing {
        port,
        engine: engine(app),
        face: face(app, port.housing),
        rows: RwSignal::default(),
        unit: RwSignal::new(Unit::Millimetre),
        form: RwSignal::new(Form::Coordinates),
        width: RwSignal::default(),
        in_bore: RwSignal::new(false),
        chosen: RwSignal::new(None),
        drag: RwSignal::new(None),
    };
    let drafted = draft::at(&hash).and_then(|draft| kept::read(&draft.text).ok());
    editing.put(drafted.unwrap_or_else(|| written.clone()));
    keep_draft(editing, hash.clone(), TypedOutline { figures: String::new(), ..written });
    let seat = Rc::new(Seat::new(&editing.engine, editing.face.sealed_by));
    let checked = checked(editing, seat.clone());
    let page = el("main").class("page").with_all([
        care(
            tr!("a seal that drops into a port destroys the engine. Walls to the water jacket are thin, burrs \
             are sharp; grind with goggles and a mask."),
        ),
        outline_picture(app, editing, seat),
        el("p")
            .class("answer number")
            .attr("role", "status")
            .text_live(move || checked.said.get().unwrap_or_default()),
        fault_list(move || checked.said.get().err().unwrap_or_default()),
        corner_keys(editing),
        radius(editing),
        rows_form(editing),
        actions(app, editing, hash, checked),
    ]);
    frame(move || port.to_string(), move || under(app, port.housing), true, page)
}

/// Keeps what is typed for as long as it is not what is written; behind the frame that draws it.
fn keep_draft(editing: Editing, hash: String, written: TypedOutline) {
    let place = Rc::new((hash, written));
    follow(move || {
        let (typed, place) = (editing.typed(), place.clone());
        after_frame(move || {
            let (hash, written) = &*place;
            let text = if typed == *written { String::new() } else { kept::write(&typed) };
            draft::put(hash, &text, None);
        });
    });
}

/// What the check of the rows says.
#[derive(Clone, Copy)]
struct Checked {
    /// What is wrong, or the figures.
    said: RwSignal<Result<String, Vec<String>>>,
    /// Whether that is said of the rows as they are now.
    is_of_now: RwSignal<bool>,
}

impl Checked {
    fn say(self, said: Result<String, Vec<String>>) {
        self.said.set(said);
        self.is_of_now.set(true);
    }
}

/// Half degrees of the shaft that are swept in a frame.
const STEPS: u32 = 60;

/// The check of the rows, which goes on frame by frame after every change.
fn checked(editing: Editing, seat: Rc<Seat>) -> Checked {
    let checked =
        Checked { said: RwSignal::new(Ok(String::new())), is_of_now: RwSignal::new(false) };
    let change = Rc::new(Cell::new(0_u32));
    follow(move || {
        let typed = editing.typed();
        change.set(change.get().wrapping_add(1));
        if typed.rows.trim().is_empty() {
            checked.say(Ok(String::new()));
            return;
        }
        checked.is_of_now.set(false);
        let (seat, this, change) = (seat.clone(), change.get(), change.clone());
        // The rows as they are now are drawn first.
        after_frame(move || {
            if change.get() != this {
                return;
            }
            match SweptSoFar::begin(&typed, &editing.engine, editing.face, &seat) {
                Ok(port) => go_on(port, editing, checked, move || change.get() == this),
                Err(faults) => checked.say(Err(faults)),
            }
        });
    });
    checked
}

/// A part of the sweep in each frame; the figures after the last, unless the rows were changed meanwhile.
fn go_on(
    mut port: SweptSoFar,
    editing: Editing,
    checked: Checked,
    is_of_now: impl Fn() -> bool + 'static,
) {
    let is_whole = port.go_on(STEPS);
    after_frame(move || {
        if !is_of_now() {
            return;
        }
        if !is_whole {
            go_on(port, editing, checked, is_of_now);
            return;
        }
        checked.say(Ok(line(editing.face.view, &port.finish())));
    });
}

/// Runs at the next frame. A screen that is gone by then has signals that no longer hold anything: what is
/// put in them goes nowhere.
fn after_frame(act: impl FnOnce() + 'static) {
    fn boxed(act: Box<dyn FnOnce()>) {
        request_animation_frame(act);
    }
    boxed(Box::new(act));
}

fn written(app: App, port: PortName) -> Option<TypedOutline> {
    let build = app.build()?;
    app.book.with(|book| book.outline(&build, port).cloned())
}

/// Adding behind the corner touched last, and taking it away.
fn corner_keys(editing: Editing) -> El {
    let add = move || {
        let Some(number) = editing.chosen.get_untracked() else { return };
        let corners = editing.corners();
        let (unit, form) = (editing.unit.get_untracked(), editing.form.get_untracked());
        editing.rows.update(|rows| *rows = add_corner(rows, &corners, number, unit, form));
        editing.chosen.set(Some(number + 1));
    };
    let remove = move || {
        let Some(number) = editing.chosen.get_untracked() else { return };
        editing.rows.update(|rows| *rows = remove_corner(rows, number));
        editing.chosen.set(None);
    };
    let none = move || editing.chosen.get().is_none();
    el("div").class("turn-keys").with_all([
        button("button", tr!("Add a corner"), add).disabled(none),
        button("button", tr!("Take it away"), remove).disabled(none),
    ])
}

/// The radius of the corner touched last, as its row has it.
fn radius(editing: Editing) -> El {
    let typed = RwSignal::new(String::new());
    let in_row = move || {
        let number = editing.chosen.get()?;
        Some(editing.rows.with(|rows| corner_radius(rows, number)))
    };
    follow(move || typed.set(in_row().unwrap_or_default()));
    let input = el("input")
        .attrs(&[("type", "text"), ("inputmode", "decimal"), ("autocomplete", "off")])
        .attr("placeholder", tr!("0, sharp"))
        .disabled(move || editing.chosen.get().is_none())
        .bound(typed)
        .on("input", move |event| {
            if let Some(number) = editing.chosen.get_untracked() {
                let radius = event_target_value(&event);
                editing.rows.update(|rows| *rows = round_corner(rows, number, &radius));
            }
        });
    let label = el("span").text_live(move || match editing.chosen.get() {
        Some(number) => tr!("Radius of corner {}", number + 1),
        None => tr!("Radius of the corner touched").to_owned(),
    });
    el("div").class("form").with(el("label").with(label).with(input))
}

/// The rows, and what they are.
fn rows_form(editing: Editing) -> El {
    let rows = el("textarea")
        .attrs(&[("rows", "7"), ("spellcheck", "false"), ("autocomplete", "off")])
        .attr("placeholder", "60.5 -42 4\n74 -46 5\n70 -63 5")
        .bound_rows(editing.rows);
    let place = switch(
        tr!("The port is"),
        &[(false, tr!("in the side")), (true, tr!("in the bore"))],
        move |choice| editing.in_bore.get() == choice,
        move |choice| editing.in_bore.set(choice),
    );
    let width = el("div")
        .with(field(tr!("Width across the housing"), tr!("as measured"), editing.width))
        .attr_live("hidden", move || (!editing.in_bore.get()).then(String::new));
    el("div").class("form").with_all([
        switch(
            tr!("Unit"),
            &[(Unit::Millimetre, "mm"), (Unit::Inch, "in")],
            move |choice| editing.unit.get() == choice,
            move |choice| editing.unit.set(choice),
        ),
        switch(
            tr!("Rows are"),
            &[(Form::Coordinates, tr!("x and y")), (Form::RadiusAndAngle, tr!("radius and angle"))],
            move |choice| editing.form.get() == choice,
            move |choice| editing.form.set(choice),
        ),
        place,
        width,
        el("label")
            .class("rows-field")
            .with(el("span").text_live(move || {
                match (editing.in_bore.get(), editing.form.get()) {
                    (false, _) => tr!("One corner a row; a third number rounds it"),
                    (true, Form::Coordinates) => tr!("The two edges, a row each"),
                    (true, Form::RadiusAndAngle) => {
                        tr!("The two edges, a row each; the angle alone will do")
                    }
                }
                .to_owned()
            }))
            .with(rows),
    ])
}

fn actions(app: App, editing: Editing, hash: String, checked: Checked) -> El {
    let port = editing.port;
    let back = Route::Ports(PortsPlace::Plate(port.housing));
    let write = {
        let back = back.clone();
        move || {
            let Ok(figures) = checked.said.get_untracked() else { return };
            if !checked.is_of_now.get_untracked() {
                return;
            }
            let fact = Fact::Outline(TypedOutline { figures, ..editing.typed() });
            let (back, hash) = (back.clone(), hash.clone());
            app.write(vec![fact], port.to_string(), move || {
                draft::put(&hash, "", None);
                app.go(&back);
            });
        }
    };
    let other = port.at(if port.stage == Stage::Cut { Stage::Stock } else { Stage::Cut });
    let start_from = move || {
        if let Some(typed) = written(app, other) {
            editing.put(TypedOutline { port, ..typed });
        }
    };
    let clear = move || {
        editing.rows.set(String::new());
        editing.chosen.set(None);
    };
    let is_known = written(app, other).is_some();
    let mut actions = vec![
        button("button action", tr!("Put it in the book"), write)
            .disabled(move || checked.said.with(Result::is_err) || !checked.is_of_now.get()),
        link("button", &Route::Ports(PortsPlace::Room(port)).hash())
            .text(tr!("Room left: the line not to cross")),
    ];
    if is_known {
        actions.push(button("button", &tr!("Start from “{other}”"), start_from));
    }
    actions.push(button("quiet", tr!("Clear all rows (writing none takes the port out)"), clear));
    el("div").class("form").with_all(actions)
}
