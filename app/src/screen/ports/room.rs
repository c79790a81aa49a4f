//! The room left: the line a port must not cross to keep clear and to keep its times.

use super::{Plate, care, figures, picture, touch, under};
use crate::dom::{El, button, el, text};
use crate::route::{PortsPlace, Route};
use crate::signal::*;
use crate::state::app;
use crate::widget::{fault_list, field, frame};
use pitleaf_core::book::Fact;
use pitleaf_core::ports::picture::Frame;
use pitleaf_core::ports::{
    Form, Outline, PlatePort, PortName, Room, Stage, TypedOutline, Window, as_it_will_be,
    line as figures_line, shown, write_rows,
};
use pitleaf_core::quantity::{Bounds, Dimension, Reading, Unit};
use pitleaf_core::trochoid::Point;
use pitleaf_translated::tr;
use std::rc::Rc;
use uom::si::angle::degree;
use uom::si::f64::Angle;

/// What stands in the form.
#[derive(Clone, Copy)]
struct Typed {
    margin: RwSignal<String>,
    opens: RwSignal<String>,
    closes: RwSignal<String>,
}

impl Typed {
    fn window(self) -> Result<Window, Vec<String>> {
        let angle = |name: &str, typed: RwSignal<String>| {
            Reading::read(&typed.get_untracked(), Unit::Degree, Bounds::widest(Dimension::Angle))
                .map(|reading| Angle::new::<degree>(reading.amount().value(Unit::Degree)))
                .map_err(|fault| vec![format!("{name}: {fault}")])
        };
        Ok(Window { opens: angle("opens", self.opens)?, closes: angle("closes", self.closes)? })
    }
}

/// The room around a port.
pub fn screen(name: PortName) -> Vec<El> {
    let app = app();
    let plate = Rc::new(Plate::load(app, name.housing));
    let port = plate.ports.iter().find(|port| port.name == name);
    let view = plate.face.view;
    let opening = port.and_then(|port| port.figures.openings.first());
    let window = opening.map(|opening| Window::of(name.flow, view, opening));
    let text_of = |angle: Option<Angle>| {
        RwSignal::new(angle.map(|angle| shown::angle(angle).replace('−', "-")).unwrap_or_default())
    };
    let typed = Typed {
        margin: RwSignal::new(figures::MARGIN.to_owned()),
        opens: text_of(window.map(|window| window.opens)),
        closes: text_of(window.map(|window| window.closes)),
    };
    let middle = port.and_then(PlatePort::outline).map(|outline| view.turn_over(outline.middle()));
    let seed = RwSignal::new(middle);
    let result = RwSignal::new(Ok(None::<Outline>));
    let draw = {
        let plate = plate.clone();
        move || result.set(around(&plate, name, typed, seed.get_untracked()).map(Some))
    };
    let (draw_on_tap, on_press) = (draw.clone(), draw);
    let picture = {
        let plate = plate.clone();
        let shows = Frame::of(&plate.engine);
        touch::touched(
            drawn(&plate, shows, seed, result),
            move || shows,
            move |touch| {
                if let touch::Touch::Down(place) = touch {
                    seed.set(Some(place));
                    if result.with_untracked(|result| !matches!(result, Ok(None))) {
                        draw_on_tap();
                    }
                }
            },
        )
    };
    let [(first, _), (second, _)] = Window::centres(name.flow);
    let take = move || {
        let Ok(Some(outline)) = result.get_untracked() else { return };
        let points = outline.points().iter().map(|point| view.turn_over(*point));
        let cut = TypedOutline {
            rows: write_rows(points, Unit::Millimetre, Form::Coordinates),
            ..TypedOutline::empty(name.at(Stage::Cut), Unit::Millimetre)
        };
        let plate = Plate::load(app, name.housing);
        let figures = PlatePort::new(&cut, &plate.engine, plate.face)
            .map(|port| figures_line(view, &port))
            .unwrap_or_default();
        let back = Route::Ports(PortsPlace::Outline(cut.port));
        let fact = Fact::Outline(TypedOutline { figures, ..cut });
        app.write(vec![fact], format!("{}", name.at(Stage::Cut)), move || app.go(&back));
    };
    let page = el("main").class("page").with_all([
        picture::framed(picture),
        text(
            "p",
            "plain",
            tr!("Tap where the port is to grow from. The copper line is not to be crossed."),
        ),
        fault_list(move || {
            result.with(|result| result.as_ref().err().cloned().unwrap_or_default())
        }),
        el("p").class("answer number").attr("role", "status").text_live(move || {
            result.with(|result| match result {
                Ok(Some(outline)) => {
                    let area = shown::area(outline.area());
                    tr!("Room {} ({})", area.metric, area.inch)
                }
                _ => String::new(),
            })
        }),
        button("button action", tr!("Draw the line"), on_press),
        el("div").class("form").with_all([
            field(tr!("Margin to every track"), tr!("1 mm"), typed.margin),
            field(&tr!("Opens no earlier than, ° after {first} (− before)"), "-30", typed.opens),
            field(&tr!("Closes no later than, ° after {second} (− before)"), "50", typed.closes),
        ]),
        button("button", tr!("Take the line as the cut outline"), take)
            .disabled(move || result.with(|result| !matches!(result, Ok(Some(_))))),
        care(tr!(
            "the line knows nothing of the casting behind the face: thin walls to the water jacket \
             bound a port before the tracks do."
        )),
    ]);
    frame(move || tr!("Room for {}", name.port()), move || under(app, name.housing), true, page)
}

fn around(
    plate: &Plate,
    name: PortName,
    typed: Typed,
    seed: Option<Point>,
) -> Result<Outline, Vec<String>> {
    let view = plate.face.view;
    let seed = seed.ok_or_else(|| vec![tr!("tap the plate where the port is to be").to_owned()])?;
    let margin = figures::length(&typed.margin.get_untracked())
        .map_err(|words| vec![tr!("margin: {words}")])?;
    let (opens, closes) = typed.window()?.thetas(name.flow, view);
    let others: Vec<Outline> = as_it_will_be(&plate.ports)
        .into_iter()
        .filter(|port| port.name.at(name.stage) != name)
        .filter_map(|port| port.outline().cloned())
        .collect();
    let room = Room {
        engine: &plate.engine,
        sealed_by: plate.face.sealed_by,
        margin,
        opens,
        closes,
        others: &others,
    };
    room.around(view.turn_over(seed)).map_err(|fault| vec![fault.to_string()])
}

fn drawn(
    plate: &Plate,
    shows: Frame,
    seed: RwSignal<Option<Point>>,
    result: RwSignal<Result<Option<Outline>, Vec<String>>>,
) -> El {
    let view = plate.face.view;
    let edges = plate.ports.iter().map(|port| picture::edge(view, port));
    picture::sheet(tr!("The plate with the room left"), shows)
        .with_all(picture::ground(&plate.engine))
        .with_all(picture::tracks(&plate.engine))
        .with_all(edges)
        .live(move || {
            let outline = result.with(|result| result.as_ref().ok().cloned().flatten());
            let line = outline.map(|outline| {
                let points = outline.points().iter().map(|point| view.turn_over(*point));
                picture::line("limit-line", points.collect::<Vec<_>>())
            });
            let seed = seed.get().map(|seed| picture::circle("seed", seed, 200));
            line.into_iter().chain(seed).collect()
        })
}
