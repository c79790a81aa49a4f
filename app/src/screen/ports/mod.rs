//! Ports: the plate with its rotor, outlines, what they run into, and templates.

mod chart;
mod engine;
mod face;
mod figures;
mod outline;
mod outline_picture;
mod picture;
mod plate;
mod room;
mod template;
mod touch;
mod volume;

use pitleaf_translated::tr;
pub(super) use template::pages as template_pages;

use crate::dom::{El, el, text};
use crate::route::PortsPlace;
use crate::state::App;
use pitleaf_core::ports::{PlatePort, PortFace, PortName, SideHousing};
use pitleaf_core::trochoid::{Engine, TypedEngine};

/// A port screen.
pub fn screen(place: PortsPlace) -> Vec<El> {
    match place {
        PortsPlace::Plate(housing) => plate::screen(housing),
        PortsPlace::Face(housing) => face::screen(housing),
        PortsPlace::Figures(housing) => figures::screen(housing),
        PortsPlace::Template(housing) => template::screen(housing),
        PortsPlace::Outline(port) => outline::screen(port),
        PortsPlace::Room(port) => room::screen(port),
        PortsPlace::Engine => engine::screen(),
        PortsPlace::Volume => volume::screen(),
    }
}

/// What stands on a plate: the engine, the face, the ports that could be put in, and why not the
/// others.
struct Plate {
    engine: Engine,
    face: PortFace,
    ports: Vec<PlatePort>,
    faults: Vec<(PortName, Vec<String>)>,
}

impl Plate {
    /// The plate by the book; it is read again whenever the book changes.
    fn load(app: App, housing: SideHousing) -> Self {
        let engine = engine(app);
        let mut plate =
            Self { engine, face: face(app, housing), ports: Vec::new(), faults: Vec::new() };
        let Some(build) = app.build() else { return plate };
        app.book.with(|book| {
            for typed in book.outlines(&build, housing) {
                match PlatePort::new(typed, &plate.engine, plate.face) {
                    Ok(port) => plate.ports.push(port),
                    Err(faults) => plate.faults.push((typed.port, faults)),
                }
            }
        });
        plate
    }
}

/// The engine's measures by the book, or the preset's.
fn typed_engine(app: App) -> TypedEngine {
    let typed = app.build().and_then(|build| app.book.with(|book| book.engine(&build).cloned()));
    typed.unwrap_or_else(TypedEngine::preset)
}

/// The engine of the build in hand, where its measures are in the book and make one.
pub(super) fn written_engine(app: App) -> Option<Engine> {
    let build = app.build()?;
    app.book.with(|book| book.engine(&build)?.engine().ok())
}

/// The engine by the book. What was written down was checked before; what another version wrote and
/// this one can't make sense of gives way to the preset.
pub(super) fn engine(app: App) -> Engine {
    written_engine(app).unwrap_or_else(Engine::preset)
}

fn face(app: App, housing: SideHousing) -> PortFace {
    let known = app.build().map(|build| app.book.with(|book| book.port_face(&build, housing)));
    known.unwrap_or_else(|| PortFace::usual(housing))
}

/// "Front side housing · Kestrel".
fn under(app: App, housing: SideHousing) -> String {
    let name = app.opening().map_or_else(|| tr!("no build open").to_owned(), |opening| opening.0);
    tr!("{} side housing · {name}", housing.name())
}

/// What can hurt, and what can't be undone.
fn care(words: &str) -> El {
    el("p").class("caution").with(text("b", "", tr!("Care: "))).text(words)
}
