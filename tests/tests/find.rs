//! Finding anything by a word: from every screen by one touch, misspelt, by keys alone, and back again.

use pitleaf_tests::{Browser, Named, Server, button, heading, link, list, searchbox, textbox};
use serde_json::json;

const TAB: &str = "\u{e004}";
const ENTER: &str = "\u{e007}";

fn field() -> Named {
    searchbox("Find")
}

/// Goes to the field by one touch, types, and waits for the answers.
#[track_caller]
fn look_for(phone: &Browser, query: &str) {
    phone.tap(&link("Find"));
    phone.until("the field has the focus", |phone| phone.has_focus(&field()));
    phone.type_keys(query);
    phone.until("the answers stand there", |phone| {
        phone.property(&field(), "value") == json!(query) && phone.words().contains("found")
    });
}

#[test]
fn anything_is_found_misspelt_and_leads_there_by_one_touch() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_demo();
    for (query, kind, title, place) in [
        ("appex seal warp", "Limits", "Apex seal, warp along its length", "#/check/apex-seal-warp"),
        ("strech torqe", "Calculators", "Torque and clamp", "#/joints/clamp"),
        ("25/64 drill", "Threads and drills", "Drill 25/64 in", "#/joints/drill/25-64-in"),
        ("m10x1,25", "Threads and drills", "M10 × 1.25", "#/joints/thread/m10-1-25"),
        (
            "needel bearing dropped",
            "Steps",
            "The front needle bearing",
            "#/work/step/needles-in-place",
        ),
        ("slot 1f-ab", "Slots", "Slot 1F-AB", "#/slot/1F-AB"),
        ("why end paly", "Help", "End play", "#/help/end-play"),
    ] {
        look_for(&phone, query);
        let group = phone.text(&list(kind));
        assert!(group.contains(title), "{query}: {group}");
        // Other kinds may have a thing of the same name.
        phone.run(
            "const [kind] = arguments;
             document.querySelectorAll('main ul').forEach((list) => {
                 if (list.getAttribute('aria-label') !== kind) list.remove();
             });",
            &[json!(kind)],
        );
        phone.tap(&link(title).starting());
        phone.until("its place", |phone| phone.place() == place);
    }
}

#[test]
fn a_note_is_found_and_nothing_is_lost_on_the_way_back() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    phone.go("#/book");
    phone.fill(&textbox("Note"), "Rear lighthouse stud pulled, helicoil fitted");
    phone.tap(&button("Write down"));
    phone.until_notice("Written a note");

    // Half a reading is typed when another question comes up.
    phone.go("#/check/end-play");
    phone.fill(&textbox("Reading"), "0.0");
    look_for(&phone, "lighthuose");
    phone.tap(&link("Rear lighthouse stud").starting());
    phone.until_says("An entry and its history");
    phone.tap(&link("Back"));
    phone.until("what was looked for stands there still", |phone| {
        phone.property(&field(), "value") == json!("lighthuose")
    });
    phone.find(&link("Rear lighthouse stud").starting());
    phone.tap(&link("Back"));
    phone.until_says("End play of the eccentric shaft");
    assert_eq!(phone.property(&textbox("Reading"), "value"), "0.0", "half a reading");
}

/// The tab is thrown away at the answers, and again at what was found.
#[test]
fn what_was_looked_for_stands_there_when_the_tab_was_thrown_away() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    phone.go("#/check/end-play");
    phone.fill(&textbox("Reading"), "0.0");
    look_for(&phone, "backlahs");
    let answer = link("Backlash, rotor gear").starting();
    phone.find(&answer);
    let sought = |phone: &Browser| phone.property(&field(), "value");
    phone.reload();
    assert_eq!(sought(&phone), "backlahs", "after the reload");
    phone.tap(&answer);
    phone.until_says("What is this?");
    phone.reload();
    phone.run("history.back()", &[]);
    phone.until("finding again", |phone| phone.place() == "#/find");
    assert_eq!(sought(&phone), "backlahs", "coming back from an answer");
    phone.find(&answer);
    phone.go("#/check/end-play");
    assert_eq!(phone.property(&textbox("Reading"), "value"), "0.0", "half a reading");
}

#[test]
fn by_keys_alone() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.find(&link("Find"));
    for _ in 0..40 {
        phone.type_keys(TAB);
        if phone.has_focus(&link("Find")) {
            break;
        }
    }
    phone.type_keys(ENTER);
    phone.until("the field has the focus at once", |phone| phone.has_focus(&field()));
    phone.type_keys("schim");
    let answer = link("End play of the eccentric shaft").starting();
    phone.find(&answer);
    for _ in 0..40 {
        phone.type_keys(TAB);
        if phone.has_focus(&answer) {
            break;
        }
    }
    phone.type_keys(ENTER);
    phone.until("the limit", |phone| phone.place() == "#/check/end-play");

    // Enter in the field goes to the best of all.
    phone.go("#/find");
    phone.until("the field has the focus", |phone| phone.has_focus(&field()));
    phone.type_keys("tightening order");
    phone.find(&link("Tightening order").starting());
    phone.type_keys(ENTER);
    phone.until("the best answer", |phone| phone.place() == "#/joints/order");
    assert_eq!(phone.taps(), 0, "the screen was not touched");
}

#[test]
fn nothing_found_says_what_to_try_and_many_are_not_all_drawn() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.go("#/find");
    phone.until_says("Type a word: a part, a figure, a tool, a word of a note.");
    phone.fill(&field(), "xylophone");
    phone.until_says("Nothing here is like “xylophone”. Check its letters");
    phone.fill(&field(), "thermostat backlash");
    phone.until_says("No one thing answers to all these words. Take one away.");
    phone.fill(&field(), "seal");
    let lines = |phone: &Browser| {
        phone.run("return document.querySelectorAll('main ul:first-of-type li').length", &[])
    };
    assert_eq!(lines(&phone), 3, "the best of a kind");
    phone.tap(&button("Limits: all ").starting());
    phone.until("all of the kind", |phone| lines(phone).as_u64() > Some(20));
}

#[test]
fn help_stands_at_the_figure_behind_one_touch() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    for (place, what, why) in [
        (
            "#/check/end-play",
            "moves lengthways between its thrust bearings",
            "the needle bearings burn",
        ),
        (
            "#/joints/clamp",
            "How much a bolt clamps at a torque",
            "Most of a torque goes into friction",
        ),
        (
            "#/faces/end-play",
            "moves lengthways between its thrust bearings",
            "the needle bearings burn",
        ),
        (
            "#/convert",
            "One figure in every unit of its kind",
            "passes a part that should have failed",
        ),
        (
            "#/slot/1F-AB",
            "The gap between the cut end of a side seal and the corner seal beside it.",
            "Each thou is a leak to the inside of the rotor",
        ),
    ] {
        phone.go(place);
        phone.until_says("What is this?");
        assert!(!phone.words().contains(why), "{place}: only when asked");
        phone.run("document.querySelector('.help summary').click()", &[]);
        phone.until_says(what);
        phone.until_says(why);
    }
    // At a slot of an open build too, with how to measure, which stands nowhere else there.
    phone.open_build("Merlin");
    phone.go("#/slot/2R-CA");
    phone.until_says("Nothing tried yet");
    phone.run("document.querySelector('.help summary').click()", &[]);
    phone.until_says("leaf between the square end and the corner seal");
    phone.go("#/help/side-seal-gap");
    phone.find(&heading("End gap of a side seal"));
    phone.tap(&link("Side seal to corner seal, naturally aspirated").starting());
    phone.until("the check", |phone| phone.place() == "#/check/side-seal-gap-na");
}
