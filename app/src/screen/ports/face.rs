//! Which face is looked at, how the shaft turns as seen, where the plugs are, what closes the ports.

use super::{face, under};
use crate::dom::{El, el, text};
use crate::route::{PortsPlace, Route};
use crate::signal::*;
use crate::state::app;
use crate::widget::{frame, switch};
use pitleaf_core::book::Fact;
use pitleaf_core::ports::{PlugSide, PortFace, Rotation, SealedBy, SeenFrom, SideHousing, View};
use pitleaf_translated::tr;

/// The form.
pub fn screen(housing: SideHousing) -> Vec<El> {
    let app = app();
    let typed = RwSignal::new(face(app, housing));
    let view = move |change: &dyn Fn(&mut View)| typed.update(|face| change(&mut face.view));
    let seen = switch(
        tr!("Seen from"),
        &[(SeenFrom::Rotor, tr!("from the rotor")), (SeenFrom::Outside, tr!("from outside"))],
        move |choice| typed.get().view.seen_from == choice,
        // Walking round the plate also turns the rotation over.
        move |choice| {
            if typed.get_untracked().view.seen_from != choice {
                view(&|view| *view = view.from_behind());
            }
        },
    );
    let rotation = switch(
        tr!("Rotation"),
        &[
            (Rotation::Clockwise, tr!("with the clock")),
            (Rotation::Anticlockwise, tr!("against it")),
        ],
        move |choice| typed.get().view.rotation == choice,
        move |choice| view(&|view| view.rotation = choice),
    );
    let plugs = switch(
        tr!("Plugs"),
        &[(PlugSide::Top, tr!("at the top")), (PlugSide::Bottom, tr!("at the bottom"))],
        move |choice| typed.get().view.plugs == choice,
        move |choice| view(&|view| view.plugs = choice),
    );
    let sealed = switch(
        tr!("Closed by"),
        &[
            (SealedBy::SideSeal, tr!("the side seal")),
            (SealedBy::FlankEdge, tr!("the flank’s edge")),
        ],
        move |choice| typed.get().sealed_by == choice,
        move |choice| typed.update(|face| face.sealed_by = choice),
    );
    let save = move || {
        let face: PortFace = typed.get_untracked();
        let back = Route::Ports(PortsPlace::Plate(housing));
        app.write(vec![Fact::PortFace(face)], face.to_string(), move || app.go(&back));
    };
    let form = el("form").class("form").on_submit(save).with_all([
        text("h2", "", tr!("The face before you")),
        seen,
        text("h2", "", tr!("The shaft turns, as you see it")),
        rotation,
        text("h2", "", tr!("The plugs, with the long axis level")),
        plugs,
        text("h2", "", tr!("A port is closed by")),
        sealed,
        text(
            "p",
            "plain",
            tr!("Outlines stay as typed: x to the right, y upward, from the shaft’s axis, as this face is \
             seen."),
        ),
        text("button", "button action", tr!("Put it in")).attr("type", "submit"),
    ]);
    frame(
        || tr!("Face and rotation").to_owned(),
        move || under(app, housing),
        true,
        el("main").class("page").with(form),
    )
}
