//! Settings.

use crate::device;
use crate::dom::{El, button, el, link, text};
use crate::route::Route;
use crate::settings::{Hands, Light};
use crate::state::app;
use crate::widget::{frame, switch};

/// Light, thumb, hands, keys, ears.
pub fn screen() -> Vec<El> {
    let app = app();
    let light = switch(
        "Light",
        &[(Light::Phone, "as the phone"), (Light::Dark, "dark"), (Light::Sun, "sun")],
        move |light| app.settings.with(|settings| settings.light == light),
        move |light| app.set(|settings| settings.light = light),
    );
    let thumb = switch(
        "Thumb",
        &[(false, "right"), (true, "left")],
        move |left| app.settings.with(|settings| settings.left_handed == left),
        move |left| app.set(|settings| settings.left_handed = left),
    );
    let buzz = button("unit", "buzz on a press", move || {
        app.set(|settings| settings.buzz = !settings.buzz)
    })
    .pressed(move || app.settings.with(|settings| settings.buzz));
    let hands = switch(
        "Hands",
        &[(Hands::Dry, "dry"), (Hands::Wet, "wet or gloved")],
        move |hands| app.settings.with(|settings| settings.hands == hands),
        move |hands| app.set(|settings| settings.hands = hands),
    );
    let aloud = device::can_speak().then(|| {
        let read_out = button("unit", "read verdicts and steps out", move || {
            app.set(|settings| settings.aloud = !settings.aloud);
            if app.settings.with_untracked(|settings| settings.aloud) {
                device::say("Reading out");
            }
        })
        .pressed(move || app.settings.with(|settings| settings.aloud));
        [text("h2", "", "Ears"), el("div").class("units").with(read_out)]
    });
    let page = el("main").class("page").with_all([
        text("h2", "", "Light"),
        light,
        text("h2", "", "Thumb"),
        thumb,
        text("h2", "", "Hands"),
        hands,
        text("h2", "", "Keys"),
        el("div").class("units").with(buzz),
    ]);
    let page = page.with_all(aloud.into_iter().flatten()).with_all([
        link("button", &Route::Gauges.hash()).text("My gauges"),
        text("h2", "", "Where limits come from"),
        text(
            "p",
            "plain",
            "No limit shipped with Pitleaf is from a published manual: each row says whether it is common practice or from memory. Put in your own manual’s figures at the limit itself.",
        ),
    ]);
    frame(|| "Settings".to_owned(), || "Kept on this phone".to_owned(), true, page)
}
