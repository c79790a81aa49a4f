//! What stands at the address of a piece that the build in hand has not.

use crate::dom::{El, el, link, text};
use crate::route::{Route, WorkPlace};
use crate::state::App;
use crate::widget::frame;
use pitleaf_core::seals::Place;
use pitleaf_translated::tr;

/// The screen said of a place that is on no part of this build; none where it is, or no build is open.
pub fn screen(app: App, route: &Route) -> Option<Vec<El>> {
    app.build()?;
    let words = why(app.rotors(), route)?;
    let page = el("main")
        .class("page")
        .with(text("p", "plain", &words))
        .with(link("button action", &Route::Bench.hash()).text(tr!("To the bench")));
    Some(frame(|| tr!("Not on this engine").to_owned(), move || app.build_name(), true, page))
}

fn why(rotors: u8, route: &Route) -> Option<String> {
    let of = |place: Place| place.on_engine(rotors).err().map(|fault| fault.to_string());
    match route {
        Route::Slot(slot) | Route::Mark(slot) | Route::HotGap(Some(slot)) => {
            of(Place::SideSeal(*slot))
        }
        // A piece may be named otherwise than by its rotor: that is for the check itself to show.
        Route::Check { place, .. } => of(Place::read(place).ok()?),
        Route::Seals(rotor, _) | Route::Work(WorkPlace::Compression(rotor)) => {
            of(Place::Rotor(*rotor))
        }
        Route::Survey(survey, piece) => {
            let is_there = survey.pieces(rotors).contains(piece);
            (!is_there).then(|| {
                tr!("This build has no such piece: “{piece}”. Choose one of those under Faces.")
            })
        }
        _ => None,
    }
}
