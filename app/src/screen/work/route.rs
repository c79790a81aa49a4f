//! The build's route: its steps to be changed, and the whole of it as a file.

use super::{page, progress, way, write};
use crate::device;
use crate::dom::{El, button, el, text};
use crate::route::WorkPlace;
use crate::screen::book::read_file;
use crate::signal::*;
use crate::state::{App, Notice};
use crate::widget::frame;
use pitleaf_core::route::{FileFault, MOST_BYTES, RouteFact, Stage, read, write as write_route};
use pitleaf_translated::tr;

/// The screen.
pub fn screen(app: App) -> Vec<El> {
    let body = page(app, move |_| {
        let Some(progress) = progress(app) else { return Vec::new() };
        let choose = el("input")
            .class("unseen")
            .attrs(&[("type", "file"), ("accept", ".json,application/json")])
            .on("change", move |event| {
                read_file(app, &event, MOST_BYTES, &FileFault::TooLarge.to_string(), move |text| {
                    take_in(app, text)
                })
            });
        let own = progress.is_own_route();
        let mut shown = vec![
            text(
                "p",
                "plain",
                if own {
                    tr!("This build’s own route.")
                } else {
                    tr!(
                        "The usual route: common practice, no source. A change makes it this build’s own."
                    )
                },
            ),
            el("div")
                .class("pair")
                .with(button("plate-link", tr!("Save the route as a file"), move || save(app)))
                .with(text("label", "plate-link", tr!("Take in a route")).with(choose)),
        ];
        if let Some(fault) = progress.route_fault() {
            shown.push(text("p", "caution", fault));
        }
        if own {
            shown.push(button("quiet", tr!("Back to the usual route"), move || {
                write(
                    app,
                    RouteFact::OwnRoute { text: String::new() },
                    tr!("the usual route"),
                    || {},
                );
            }));
        }
        for stage in Stage::ALL {
            let steps = stage.of(&progress.routing).map(|step| {
                way("row-link", WorkPlace::Edit(step.id.clone()))
                    .with(text("b", "", &step.words))
                    .with(text("span", "row-limit", step.kind.name()))
            });
            shown.push(text("h2", "", stage.name()));
            shown.push(crate::screen::bench::list("rows", stage.name(), steps));
        }
        shown
    });
    frame(|| tr!("The route").to_owned(), move || app.build_name(), true, body)
}

fn take_in(app: App, text: &str) {
    match read(text) {
        Ok(routing) => {
            let fact = RouteFact::OwnRoute { text: write_route(&routing) };
            write(app, fact, tr!("the route of the file"), || {});
        }
        Err(fault) => app.wrong(&fault.to_string()),
    }
}

fn save(app: App) {
    let Some(progress) = untrack(|| progress(app)) else { return };
    let name = "pitleaf-route.json";
    match device::save_file(name, "application/json", &write_route(&progress.routing)) {
        Ok(()) => app.notice.set(Some(Notice::Said(tr!("The route went out as {name}.")))),
        Err(words) => app.wrong(&tr!("No file was made: {words}. Try again.")),
    }
}
