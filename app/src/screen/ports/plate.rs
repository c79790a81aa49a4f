//! A side housing's plate: the rotor at an angle, what is open, when it opens, what it runs into.

use super::{Plate, care, chart, figures, picture, touch, under};
use crate::dom::{El, el, link, svg, text};
use crate::route::{PortsPlace, Route};
use crate::screen::bench::list;
use crate::signal::*;
use crate::state::{App, app};
use crate::widget::frame;
use pitleaf_core::ports::picture::Frame;
use pitleaf_core::ports::{
    PlatePort, PortName, SideHousing, Stage, View, chart as core_chart, shown,
};
use pitleaf_core::trochoid::{Chamber, Point};
use pitleaf_translated::tr;
use std::cell::Cell;
use std::rc::Rc;

/// Where the hand stands at first: an intake is open there.
const START: i32 = 6_600;

/// The plate.
pub fn screen(housing: SideHousing) -> Vec<El> {
    let app = app();
    let tenths = RwSignal::new(START);
    let faces = el("div")
        .class("faces plates")
        .attrs(&[("role", "group"), ("aria-label", tr!("Side housing"))]);
    let faces = faces.with_all(SideHousing::ALL.map(|other| {
        let key = link("unit", &Route::Ports(PortsPlace::Plate(other)).hash()).text(other.name());
        if other == housing { key.attr("aria-current", "true") } else { key }
    }));
    let page = el("main").class("page").with(faces).live(move || {
        let plate = Rc::new(Plate::load(app, housing));
        shown_plate(app, housing, &plate, tenths)
    });
    frame(|| tr!("Ports").to_owned(), move || under(app, housing), true, page)
}

fn shown_plate(
    app: App,
    housing: SideHousing,
    plate: &Rc<Plate>,
    tenths: RwSignal<i32>,
) -> Vec<El> {
    let view = plate.face.view;
    let marks = svg("g");
    let picture = turned_by_finger(plate, tenths).with(marks.clone());
    let mut page = vec![picture::framed(picture)];
    if plate.ports.is_empty() {
        page.push(text(
            "p",
            "plain",
            tr!("No port is drawn on this housing yet. The rotor turns all the same."),
        ));
    } else {
        page.push(chart::area_chart(plate, tenths));
    }
    page.push(chart::turning(tenths, move || at_words(view, tenths.get())));
    page.push(
        el("p")
            .class("turn-at")
            .with(text("span", "", tr!("Chamber 1 (dot): ")))
            .with(el("b").class("number").text_live(move || at_words(view, tenths.get()))),
    );
    let open = plate.ports.iter().enumerate().map(|(i, port)| open_now(plate, i, port, tenths));
    page.extend(open);
    for (port, faults) in &plate.faults {
        page.push(text("p", "caution", &format!("{port}: {}", faults.join("; "))));
    }
    if !plate.ports.is_empty() {
        page.push(looked_for(plate, marks));
    }
    page.push(text("h2", "", tr!("Outlines")));
    page.push(list("rows", tr!("Outlines"), outlines(app, housing, plate)));
    page.push(text("h2", "", tr!("More")));
    let to =
        |name: &str, place: PortsPlace| link("plate-link", &Route::Ports(place).hash()).text(name);
    page.push(el("div").class("pair").with_all([
        to(tr!("Figures and keep-clear"), PortsPlace::Figures(housing)),
        to(tr!("Template to print"), PortsPlace::Template(housing)),
        to(tr!("Face and rotation"), PortsPlace::Face(housing)),
        to(tr!("Engine’s measures"), PortsPlace::Engine),
        to(tr!("Volume and ratio"), PortsPlace::Volume),
    ]));
    page.push(care(
        tr!("walls to the water jacket are thin, and castings differ: measure yours before you cut. Edges \
         and burrs are sharp, grinding dust is bad for eyes and lungs. A seal that drops into a \
         port destroys the engine."),
    ));
    page
}

/// The worst of what the ports run into. It takes a phone a while: the plate stands on the screen first.
fn looked_for(plate: &Rc<Plate>, marks: El) -> El {
    let is_drawn = RwSignal::new(false);
    request_animation_frame(move || request_animation_frame(move || is_drawn.set(true)));
    let plate = plate.clone();
    el("div").live(move || {
        if !is_drawn.get() {
            return vec![text("p", "plain", tr!("Looking for what the ports run into."))];
        }
        let Some((card, found)) = figures::worst(&plate) else { return Vec::new() };
        let _ = marks.clone().with_all(found);
        vec![card]
    })
}

/// The picture, turned by a finger on it.
fn turned_by_finger(plate: &Rc<Plate>, tenths: RwSignal<i32>) -> El {
    let shows = Frame::of(&plate.engine);
    let view = plate.face.view;
    let last = Cell::new(Point::default());
    touch::touched(
        picture::plate_picture(plate, shows, tenths),
        move || shows,
        move |touch| match touch {
            touch::Touch::Down(place) => last.set(place),
            touch::Touch::Move(place) => {
                let by = view.shaft_turn(last.replace(place), place);
                tenths.update(|at| *at = core_chart::turned_on(*at, by));
            }
            touch::Touch::Up => {}
        },
    )
}

/// Where the first chamber is, in words.
fn at_words(view: View, tenths: i32) -> String {
    let (angle, centre) = shown::timing(view, core_chart::theta_at(view, tenths));
    format!("{angle} {centre}")
}

/// What of a port is open to each chamber now.
fn open_now(plate: &Rc<Plate>, at: usize, port: &PlatePort, tenths: RwSignal<i32>) -> El {
    let plate = plate.clone();
    let view = plate.face.view;
    let areas = RwSignal::new((String::new(), String::new()));
    crate::dom::follow(move || {
        let port = &plate.ports[at];
        let open = port.open_now(core_chart::theta_at(view, tenths.get())).map(shown::area);
        let others = Chamber::ALL[1..].iter().zip(&open[1..]).enumerate();
        let others: Vec<String> = others
            .filter(|(_, (_, area))| **area != shown::area(uom::si::f64::Area::default()))
            .map(|(i, (_, area))| tr!(" · chamber {}: {}", i + 2, area.metric))
            .collect();
        areas.set((open[0].metric.clone(), format!("{}{}", open[0].inch, others.concat())));
    });
    let stage =
        if port.name.stage == Stage::Stock { "port-swatch stock" } else { "port-swatch cut" };
    el("div").class("open-now").with_all([
        el("span").class(stage),
        text("span", "", &port.name.to_string()),
        el("b").class("number").text_live(move || areas.with(|areas| areas.0.clone())),
        el("span").class("dim number").text_live(move || areas.with(|areas| areas.1.clone())),
    ])
}

/// A line for every outline there can be.
fn outlines(app: App, housing: SideHousing, plate: &Plate) -> Vec<El> {
    let build = app.build();
    PortName::all(housing)
        .map(|name| {
            let written = build
                .as_ref()
                .and_then(|build| app.book.with(|book| book.outline(build, name).cloned()));
            let says = match (plate.ports.iter().any(|port| port.name == name), written) {
                (true, Some(outline)) => outline.figures,
                (false, Some(_)) => tr!("can’t be put in: see above").to_owned(),
                (_, None) => tr!("not drawn").to_owned(),
            };
            link("entry", &Route::Ports(PortsPlace::Outline(name)).hash()).with(
                el("span")
                    .class("entry-words")
                    .with(text("b", "", &name.to_string()))
                    .with(text("span", "dim", &says)),
            )
        })
        .collect()
}
