//! Which piece a reading is of: chosen beforehand, or when it is written down.

use crate::dom::{El, button, el, text};
use crate::signal::*;
use crate::state::App;
use pitleaf_core::limits::{Row, place_words};
use pitleaf_translated::tr;

/// The choice of the piece, none where there is only one; `choose` gets what is chosen.
pub(super) fn piece(
    app: App,
    row: &Row,
    place: &str,
    choose: impl Fn(String) + 'static,
) -> Option<El> {
    let mut choices = row.places(app.rotors());
    if choices.is_empty() {
        return None;
    }
    // A figure of an older book may have a place that is asked for no more.
    if !place.is_empty() && !choices.iter().any(|choice| choice == place) {
        choices.push(place.to_owned());
    }
    let option = |value: &str, words: &str| {
        let option = el("option").attr("value", value).text(words);
        if value == place { option.attr("selected", "") } else { option }
    };
    let select = el("select")
        .with(option("", tr!("none in particular")))
        .with_all(choices.iter().map(|choice| option(choice, &place_words(choice))))
        .on("change", move |event| choose(event_target_value(&event)));
    Some(el("label").class("line-field").with(text("span", "", tr!("Piece"))).with(select))
}

/// The pieces to choose from in place of the keys, a key each; `choose` gets the one touched.
pub(super) fn which(
    choices: &[String],
    choose: impl Fn(String) + Clone + 'static,
    back: impl Fn() + 'static,
) -> Vec<El> {
    let keys = choices.iter().map(|choice| {
        let (choose, place) = (choose.clone(), choice.clone());
        button("unit", &place_words(choice), move || choose(place.clone()))
    });
    let keys: Vec<El> = keys.collect();
    vec![
        text("p", "plain", tr!("Choose which one it is of: it is written there."))
            .attr("role", "status"),
        el("div")
            .class("units which")
            .attrs(&[("role", "group"), ("aria-label", tr!("Which one"))])
            .with_all(keys),
        button("button", tr!("Back to the keys"), back),
    ]
}
