//! Settings.

use crate::dom::{El, button, el, link, text};
use crate::route::Route;
use crate::settings::Light;
use crate::state::app;
use crate::widget::{frame, switch};

/// Light, thumb, buzz.
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
    let page = el("main").class("page").with_all([
        text("h2", "", "Light"),
        light,
        text("h2", "", "Thumb"),
        thumb,
        text("h2", "", "Keys"),
        el("div").class("units").with(buzz),
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
