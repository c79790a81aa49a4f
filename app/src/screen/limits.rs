//! Limits by part.

use super::bench::{favourites, list, row_link};
use super::joints::Job;
use crate::dom::{El, el, link, text};
use crate::route::Route;
use crate::state::app;
use crate::widget::frame;
use pitleaf_core::limits::Part;
use pitleaf_translated::tr;

/// The parts, favourites first.
pub fn screen() -> Vec<El> {
    let app = app();
    let page = el("main").class("page").live(move || {
        let kind = app.kind();
        let parts: Vec<El> = app.sheet.with(|sheet| {
            let tile = |part: Part| {
                let count = sheet.of_part(part, kind).count();
                (count > 0).then(|| {
                    link("tile", &Route::Part(part).hash())
                        .with(text("b", "", part.name()))
                        .with(text("span", "dim", &tr!("{count} limits")))
                })
            };
            Part::ALL.into_iter().filter_map(tile).collect()
        });
        vec![
            list("rows", tr!("On the bench"), favourites(app).iter().map(row_link)),
            text("h2", "", tr!("Parts")),
            list("tiles", tr!("Parts"), parts),
        ]
    });
    frame(
        || tr!("Limits").to_owned(),
        || tr!("By part; the ones on your bench first").to_owned(),
        false,
        page,
    )
}

/// Parts that are read at several places before stacking.
const MEASURED_BY_PLACE: [Part; 7] = [
    Part::SideHousing,
    Part::RotorHousing,
    Part::Rotor,
    Part::ApexSeal,
    Part::EccentricShaft,
    Part::Bearing,
    Part::Assembly,
];

/// The limits of one part.
pub fn part_screen(part: Part) -> Vec<El> {
    let app = app();
    let page = el("main").class("page").live(move || {
        let kind = app.kind();
        let rows = app
            .sheet
            .with(|sheet| list("rows", part.name(), sheet.of_part(part, kind).map(row_link)));
        let by_place = MEASURED_BY_PLACE.contains(&part).then(|| {
            el("div")
                .class("pair")
                .with(link("plate-link", &Route::Faces.hash()).text(tr!("Measure place by place")))
        });
        by_place.into_iter().chain([rows]).collect()
    });
    let job = match part {
        Part::Fastener => Some(Job::All),
        Part::Bearing => Some(Job::Press),
        Part::RotorHousing | Part::SideHousing => Some(Job::Slip),
        Part::Assembly => Some(Job::Stack),
        _ => None,
    };
    let page = page.with_all(job.map(|job| {
        let words = job.name();
        link("plate-link", &Route::Joints(job).hash()).text(words)
    }));
    frame(
        move || part.name().to_owned(),
        move || tr!("Limits for {}", app.kind().name()),
        true,
        page,
    )
}
