//! Settings.

use crate::device;
use crate::dom::{El, button, el, link, text};
use crate::route::Route;
use crate::settings::{Hands, Light};
use crate::state::app;
use crate::widget::{frame, language_missing, other_language, switch};
use pitleaf_core::language;
use pitleaf_core::limits::LengthsIn;
use pitleaf_translated::tr;

/// Light, lengths, thumb, hands, keys, ears.
pub fn screen() -> Vec<El> {
    let app = app();
    let light = switch(
        tr!("Light"),
        &[
            (Light::Phone, tr!("as the phone")),
            (Light::Dark, tr!("dark")),
            (Light::Sun, tr!("sun")),
        ],
        move |light| app.settings.with(|settings| settings.light == light),
        move |light| app.set(|settings| settings.light = light),
    );
    let thumb = switch(
        tr!("Thumb"),
        &[(false, tr!("right")), (true, tr!("left"))],
        move |left| app.settings.with(|settings| settings.left_handed == left),
        move |left| app.set(|settings| settings.left_handed = left),
    );
    let lengths = switch(
        tr!("Lengths"),
        &[
            (LengthsIn::AsWritten, tr!("as each limit is written")),
            (LengthsIn::Millimetre, "mm"),
            (LengthsIn::Thou, tr!("thou and in")),
        ],
        move |lengths| app.settings.with(|settings| settings.lengths == lengths),
        move |lengths| app.set(|settings| settings.lengths = lengths),
    );
    let buzz = button("unit", tr!("buzz on a press"), move || {
        app.set(|settings| settings.buzz = !settings.buzz)
    })
    .pressed(move || app.settings.with(|settings| settings.buzz));
    let hands = switch(
        tr!("Hands"),
        &[(Hands::Dry, tr!("dry")), (Hands::Wet, tr!("wet or gloved"))],
        move |hands| app.settings.with(|settings| settings.hands == hands),
        move |hands| app.set(|settings| settings.hands = hands),
    );
    let aloud = device::can_speak().then(|| {
        let read_out = button("unit", tr!("read verdicts and steps out"), move || {
            app.set(|settings| settings.aloud = !settings.aloud);
            if app.settings.with_untracked(|settings| settings.aloud) {
                device::say(tr!("Reading out"));
            }
        })
        .pressed(move || app.settings.with(|settings| settings.aloud));
        [text("h2", "", tr!("Ears")), el("div").class("units").with(read_out)]
    });
    let page = el("main").class("page").with_all([
        text("h2", "", tr!("Language")),
        el("div")
            .class("units")
            .with(
                link("unit", &Route::Settings.hash())
                    .text(language::NAME)
                    .attr("aria-current", "true"),
            )
            .with(other_language("unit", &Route::Settings)),
        language_missing(),
        text("h2", "", tr!("Light")),
        light,
        text("h2", "", tr!("Lengths")),
        lengths,
        text("h2", "", tr!("Thumb")),
        thumb,
        text("h2", "", tr!("Hands")),
        hands,
        text("h2", "", tr!("Keys")),
        el("div").class("units").with(buzz),
    ]);
    let page = page.with_all(aloud.into_iter().flatten()).with_all([
        link("button", &Route::Gauges.hash()).text(tr!("My gauges")),
        text("h2", "", tr!("Where limits come from")),
        text(
            "p",
            "plain",
            tr!("No limit shipped with Pitleaf is from a published manual: each row says whether it is common practice or from memory. Put in your own manual’s figures at the limit itself."),
        ),
    ]);
    frame(|| tr!("Settings").to_owned(), || tr!("Kept on this phone").to_owned(), true, page)
}
