//! Fields and switches.

use crate::dom::{El, button, el, text};
use crate::signal::*;

/// The big figure on top of a screen with keys: no keyboard of the phone's own comes up for it.
pub fn figure_input(label: &str, typed: RwSignal<String>) -> El {
    el("input")
        .attrs(&[
            ("aria-label", label),
            ("inputmode", "none"),
            ("autocomplete", "off"),
            ("autocapitalize", "off"),
            ("spellcheck", "false"),
            ("placeholder", "0"),
        ])
        .attr_live("class", move || {
            let long = typed.with(|typed| typed.chars().count() > 8);
            Some(if long { "figure long" } else { "figure" }.to_owned())
        })
        .bound(typed)
}

/// A labelled line of text.
pub fn field(label: &str, hint: &str, typed: RwSignal<String>) -> El {
    let input = el("input")
        .attrs(&[("type", "text"), ("autocomplete", "off"), ("placeholder", hint)])
        .bound(typed);
    el("label").with(text("span", "", label)).with(input)
}

/// A search field; its label is for screen readers.
pub fn search(label: &str, hint: &str, typed: RwSignal<String>) -> El {
    let input = el("input")
        .attrs(&[("type", "search"), ("autocomplete", "off"), ("placeholder", hint)])
        .bound(typed);
    el("label").class("search").with(text("span", "unseen", label)).with(input)
}

/// A row of choices of which one is set.
pub fn switch<T: Copy + PartialEq + 'static>(
    label: &str,
    choices: &[(T, &str)],
    is_set: impl Fn(T) -> bool + Copy + 'static,
    set: impl Fn(T) + Copy + 'static,
) -> El {
    el("div").class("units").attrs(&[("role", "group"), ("aria-label", label)]).with_all(
        choices.iter().map(|&(choice, words)| {
            button("unit", words, move || set(choice)).pressed(move || is_set(choice))
        }),
    )
}

/// Where the sentences about what was typed go.
pub fn fault_list(faults: impl Fn() -> Vec<String> + 'static) -> El {
    el("div").class("faults").attr("role", "alert").live(move || sentences(&faults()))
}

/// A line for each sentence.
pub fn sentences(faults: &[String]) -> Vec<El> {
    faults.iter().map(|words| text("p", "", words)).collect()
}
