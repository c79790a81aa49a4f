//! Many builds: found, put away, copied from, and one figure compared over them.

use pitleaf_tests::{Browser, Server, button, combobox, searchbox, textbox};
use serde_json::json;

#[test]
fn a_set_up_is_taken_over_and_an_old_build_put_away() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_demo();
    phone.go("#/work/route/outside");
    phone.fill(&textbox("Words"), "Photograph it twice");
    phone.tap(&button("Put it in"));
    phone.until_says("This build’s own route.");
    phone.go("#/work/builds");
    phone.fill(&textbox("Name"), "Plover");
    phone.tap(&button("Open it with this set-up"));
    phone.until_notice("Written a new build: Plover");
    phone.go("#/work/step/outside");
    phone.until_says("Photograph it twice");
    phone.go("#/work/compression/1");
    phone.until_says("Write down");
    assert!(!phone.words().contains("720 kPa"), "no reading of the other engine");

    phone.go("#/work/builds");
    phone.tap(&button("Put away: Kestrel (demo)"));
    phone.until_notice("Written put away");
    phone.until("it is gone from the list", |phone| !phone.words().contains("Kestrel"));
    phone.tap(&button("Put away"));
    phone.until_says("Kestrel (demo)");
    phone.tap(&button("Take out: Kestrel (demo)"));
    phone.tap(&button("In work"));
    phone.until_says("Kestrel (demo)");
}

#[test]
fn a_build_is_found_by_its_name_or_its_customer() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_demo();
    phone.open_build("Plover");
    phone.go("#/work/builds");
    let listed = |phone: &Browser| {
        let script =
            "return [...document.querySelectorAll('.build-line b')].map((one) => one.textContent)";
        phone.run(script, &[])
    };
    phone.until("both are there", |phone| listed(phone) == json!(["Plover", "Kestrel (demo)"]));
    for (typed, found) in
        [("plov", json!(["Plover"])), ("HILLCLIMB", json!(["Kestrel (demo)"])), ("x", json!([]))]
    {
        phone.fill(&searchbox("Search the builds"), typed);
        phone.until(&format!("those with {typed}"), |phone| listed(phone) == found);
    }
}

/// A figure on three builds: the greatest stands highest, the latest at the left.
#[test]
fn a_figure_is_compared_over_the_builds() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    for (name, gap) in [("Merlin", "2"), ("Plover", "5"), ("Dunlin", "3")] {
        phone.open_build(name);
        phone.go("#/check/side-seal-gap-na/1F-AB");
        phone.tap(&button("thou"));
        phone.tap_keys(&[gap]);
        phone.tap(&button("Write down"));
        phone.until_notice(&format!("Written {gap} thou"));
    }
    phone.go("#/work/compare");
    phone.choose(&combobox("Figure"), "Side seal to corner seal, naturally aspirated");
    phone.until_says("The latest build stands at the left.");
    let listed = phone.run(
        "return [...document.querySelectorAll('.entries .entry-words')].map((one) => one.innerText.replace(/\\s+/g, ' '))",
        &[],
    );
    assert_eq!(
        listed,
        json!(["3 thou · 1F-AB Dunlin", "5 thou · 1F-AB Plover", "2 thou · 1F-AB Merlin"])
    );
    let across = phone.run("return [...document.querySelectorAll('.compare-plot circle')].map((one) => one.getAttribute('cx'))", &[]);
    assert_eq!(across, json!(["0", "500", "1000"]), "the latest at the left");
    let heights = phone.run("return [...document.querySelectorAll('.compare-plot circle')].map((one) => +one.getAttribute('cy'))", &[]);
    let heights: Vec<i64> =
        heights.as_array().into_iter().flatten().filter_map(serde_json::Value::as_i64).collect();
    assert!(
        heights[1] < heights[0] && heights[0] < heights[2],
        "5, 3, 2 from the top: {heights:?}"
    );
}
