//! The German app: in a folder of its own, over the same book, and all of it German.

use pitleaf_core::book::demo;
use pitleaf_core::kept;
use pitleaf_tests::places::{LONG, PLACES, with_a_full_book};
use pitleaf_tests::{Browser, Phone, Server, button, combobox, link, textbox};
use serde_json::{Value, json};
use std::collections::BTreeSet;

fn is_on_device(browser: &Browser) -> bool {
    browser.run("return document.documentElement.dataset.offline ?? ''", &[]) == json!("ready")
}

fn language(browser: &Browser) -> Value {
    browser.run("return document.documentElement.lang", &[])
}

/// Changes to German as a person does.
fn speak_german(browser: &Browser) {
    browser.go("#/settings");
    browser.tap(&link("Deutsch"));
    browser.until("the German app is open", |browser| language(browser) == json!("de"));
    browser.until_open();
}

#[test]
fn the_book_is_the_same_in_both_languages_and_the_choice_stays() {
    let mut server = Server::start();
    let browser = Browser::open(server.url());
    browser.open_build("Merlin");
    browser.go("#/check/side-seal-gap-na/1F-AB");
    browser.fill(&textbox("Reading"), "2.5 thou");
    browser.tap(&button("Write down"));
    browser.until_notice("Written");

    speak_german(&browser);
    browser.until_says("Sprache");
    browser.until("all of it is on the device", is_on_device);
    browser.go("de/#/book");
    browser.until_says("2,5 thou");
    browser.go("de/#/check/side-seal-gap-na/1F-AB");
    browser.fill(&textbox("Messwert"), "0,09 mm");
    browser.until_says("Nicht eingehalten");
    browser.tap(&button("Eintragen"));
    browser.until_notice("Eingetragen");

    // The next start goes on in German, without a network as well.
    server.kill();
    browser.go("#/book");
    browser.until("the German app is open", |browser| language(browser) == json!("de"));
    browser.until_says("0,09 mm");

    // And back: the English app is here too.
    browser.go("de/#/settings");
    browser.tap(&link("English"));
    browser.until("the English app is open", |browser| language(browser) == json!("en"));
    browser.go("#/book");
    browser.until_says("0,09 mm");
}

/// What is typed on the joints' screens is kept by what a field is, not by what it is called.
#[test]
fn what_is_typed_at_the_joints_stays_through_another_language() {
    let server = Server::start();
    let browser = Browser::open(server.url());
    browser.go("#/joints/clamp");
    browser.fill(&textbox("Torque"), "45");
    browser.fill(&textbox("Nut factor K, one or a range"), "0.17");
    browser.go("#/joints/press");
    browser.choose(&combobox("Housing’s metal"), "Aluminium 356, cast");

    speak_german(&browser);
    browser.go("de/#/joints/clamp");
    browser.until_says("Noch anzugeben");
    assert_eq!(browser.property(&textbox("Drehmoment"), "value"), "45", "the torque");
    browser.fill(&textbox("Drehmoment"), "47");
    browser.go("de/#/joints/press");
    let metal = combobox("Metall des Gehäuses");
    assert_eq!(browser.property(&metal, "value"), "aluminium-356", "the metal");

    browser.go("de/#/settings");
    browser.tap(&link("English"));
    browser.until("the English app is open", |browser| language(browser) == json!("en"));
    browser.go("#/joints/clamp");
    assert_eq!(browser.property(&textbox("Torque"), "value"), "47", "as typed in German");
    assert_eq!(
        browser.property(&textbox("Nut factor K, one or a range"), "value"),
        "0.17",
        "as typed in English"
    );
}

/// The choice was German, and the browser has thrown its copy away: English is better than nothing.
#[test]
fn the_app_opens_in_english_where_german_is_gone_and_there_is_no_network() {
    let mut server = Server::start();
    let browser = Browser::open(server.url());
    browser.until("everything is on the device", is_on_device);
    browser.run("localStorage.setItem('pitleaf.language', 'de')", &[]);
    server.kill();
    browser.reload();
    browser.until_says("Open a build");
    assert_eq!(language(&browser), json!("en"), "what is here");
}

#[test]
fn a_language_that_is_not_here_and_cannot_be_fetched_is_said_so() {
    let mut server = Server::start();
    let browser = Browser::open(server.url());
    browser.until("everything is on the device", is_on_device);
    server.kill();
    browser.go("#/settings");
    browser.tap(&link("Deutsch"));
    browser.until_says("It is fetched once, with a network");
    assert_eq!(language(&browser), json!("en"), "nothing was lost");
}

/// What a screen shows, text by text.
fn texts(browser: &Browser) -> BTreeSet<String> {
    let found = browser.run(TEXTS, &[]);
    found
        .as_array()
        .into_iter()
        .flatten()
        .filter_map(|text| text.as_str().map(str::to_owned))
        .collect()
}

const TEXTS: &str = "
    const found = [];
    const nodes = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (nodes.nextNode()) found.push(nodes.currentNode.data);
    for (const name of ['aria-label', 'placeholder', 'title', 'alt']) {
        for (const element of document.querySelectorAll(`[${name}]`)) found.push(element.getAttribute(name));
    }
    return found.map((text) => text.trim()).filter((text) => /\\p{L}{3}/u.test(text));
";

/// What is the same in both languages, or was typed or written in English before.
const SAME: &[&str] = &[
    "thermometer",
    "1/2-20",
    "aluminium",
    "bar",
    "bolt",
    "demo",
    "deutsch",
    "english",
    "gal",
    "grade",
    "iso",
    "kestrel",
    "kgf",
    "kpa",
    "lbf",
    "letter",
    "metric",
    "min",
    "minus",
    "mpa",
    "name",
    "psi",
    "sae",
    "thou",
    "unc",
    "unf",
];

/// Whether a text is still English: the same in both, with a word that German has not.
fn is_english(text: &str) -> bool {
    let lower = text.to_lowercase();
    let mut words =
        lower.split(|letter: char| !letter.is_alphabetic()).filter(|word| word.len() > 2);
    text != LONG && !is_of_the_demo(text) && words.any(|word| !SAME.contains(&word))
}

/// Whether the demo build came with it: what was typed stays as it was typed.
fn is_of_the_demo(text: &str) -> bool {
    demo::facts().iter().any(|fact| kept::write(fact).contains(text))
}

#[test]
fn every_screen_is_german_and_fits_the_smallest_phone() {
    let server = Server::start();
    let (browser, id) = with_a_full_book(Phone::SMALL, &server);
    let walk = |start: &str, look: &mut dyn FnMut(&str)| {
        for (name, place) in PLACES {
            browser.go(&format!("{start}{}", place.replace("ENTRY", &id)));
            look(name);
        }
    };
    let mut english = BTreeSet::new();
    walk("", &mut |_| english.extend(texts(&browser)));
    let mut left = BTreeSet::new();
    let mut over = Vec::new();
    walk("de/", &mut |name| {
        for text in texts(&browser) {
            if english.contains(&text) && is_english(&text) {
                left.insert(text);
            }
        }
        let wide = browser.run("return document.documentElement.scrollWidth", &[]);
        if wide.as_u64() > Some(Phone::SMALL.width.into()) {
            over.push(name.to_owned());
        }
        browser.picture(&format!("german-{name}"));
    });
    assert_eq!(left, BTreeSet::new(), "still English");
    assert_eq!(over, Vec::<String>::new(), "over the edge");
}
