//! A face read spot by spot, an inch among millimetres asked about, and the end play's loop closed.

use pitleaf_tests::answers::read;
use pitleaf_tests::{Browser, Phone, Profile, Server, button, link, list, textbox};

#[test]
fn a_face_is_read_spot_by_spot_and_kept_as_one_entry() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Kestrel");
    let before = phone.entries();
    phone.go("#/faces/flatness/front");
    for _ in 0..12 {
        read(&phone, "0.000");
    }
    phone.until_says("13 of 24: 1 o’clock, swept band");
    for _ in 0..12 {
        read(&phone, "-0.020");
    }
    phone.until_says("Step worn by the side seals");
    let words = phone.words();
    for wanted in ["0.020 mm · 0.79 thou", "from memory", "1 o’clock, land"] {
        assert!(words.contains(wanted), "{wanted} is missing in\n{words}");
    }
    phone.tap(&button("Write down"));
    phone.until_notice("24 readings");
    assert_eq!(phone.entries(), before + 1, "one entry for the whole face");
    phone.go("#/faces/lapping/front");
    phone.tap(&button("Next place"));
    phone.tap(&button("Next place"));
    phone.fill(&textbox("Reading"), "0.005");
    phone.tap(&button("Next"));
    phone.tap(&button("Show result"));
    phone.until_says("Flatness from the readings written down.");
    phone.until_says("Lap, then harden.");
}

#[test]
fn an_inch_among_millimetres_is_asked_about() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Kestrel");
    phone.go("#/faces/rotor-width/rotor-1");
    for text in ["79.82", "79.81", "79.82", "3.1425", "79.81", "79.82"] {
        read(&phone, text);
    }
    phone.until_says("Was it 3.1425 in?");
    phone.tap(&button("Yes: 3.1425 in"));
    phone.until("the question is gone", |phone| !phone.words().contains("Was it"));
    assert!(phone.words().contains("3.1425 in"), "the figure stands in its own unit");
}

#[test]
fn the_spacer_is_chosen_and_the_end_play_measured_again() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Kestrel");
    phone.go("#/faces/spacers");
    for text in ["8.000", "7.950"] {
        read(&phone, text);
    }
    phone.tap(&button("Show result"));
    phone.tap(&button("Write down"));
    phone.until_notice("2 readings");
    phone.go("#/faces/end-play");
    for text in ["0.10", "0.11", "0.10", "8.000"] {
        read(&phone, text);
    }
    phone.until_says("Predicted, with 7.950 mm.");
    phone.tap(&button("Write down"));
    phone.until_notice("4 readings");
    phone.tap(&button("Fit this one"));
    phone.until_notice("spacer B chosen");
    phone.tap(&link("End play, new spacer in"));
    for text in ["0.155", "0.154", "0.155"] {
        read(&phone, text);
    }
    phone.until_says("than predicted, and the gauges explain only");
}

#[test]
fn a_bearing_to_be_pressed_in_tells_its_interference() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Kestrel");
    for (survey, text) in [("bearing-seat", "49.950"), ("bearing-shell", "50.005")] {
        phone.go(&format!("#/faces/{survey}/rotor-1"));
        for _ in 0..6 {
            read(&phone, text);
        }
        phone.until_says("Mean diameter");
        phone.tap(&button("Write down"));
        phone.until_notice("6 readings");
    }
    phone.until_says("0.055 mm · 2.17 thou");
    phone.until_says("grips all round");
    phone.go("#/faces");
    phone.until_says("Front cover over the front stack, room");
}

/// On the smallest phone every key of the reading screen is in sight.
#[test]
fn the_keys_of_a_reading_are_in_sight_on_a_small_phone() {
    let server = Server::start();
    let phone = Browser::open_on(Phone::SMALL, Profile::fresh(), server.url());
    phone.open_build("Kestrel");
    for place in ["#/faces/flatness/front", "#/faces/runout-twelve/front-end", "#/faces/spacers"] {
        phone.go(place);
        phone.until_says("1 of ");
        let hidden = phone.run(
            "const low = document.querySelector('nav').getBoundingClientRect().top;
             return [...document.querySelectorAll('.check-keys button')]
               .filter(key => key.getBoundingClientRect().bottom > low + 1)
               .map(key => key.ariaLabel || key.textContent);",
            &[],
        );
        assert_eq!(hidden, serde_json::json!([]), "{place}: keys under the fold");
    }
}

/// The readings of a survey, and what they show.
fn result(phone: &Browser, survey: &str, texts: &[&str]) -> String {
    phone.go(&format!("#/faces/{survey}"));
    for text in texts {
        read(phone, text);
    }
    if phone.shows(&button("Show result")) {
        phone.tap(&button("Show result"));
    }
    let found = phone.text(&list("Findings"));
    phone.tap(&button("Write down"));
    phone.until_notice("reading");
    found
}

#[test]
fn a_grid_of_ones_own_and_what_is_no_face() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Kestrel");
    let two = result(&phone, "flatness/rear", &["0.000", "0.010"]);
    assert!(two.contains("2 readings are too few for flatness."), "{two}");
    // The first row alone is a line.
    phone.go("#/faces/grid/front");
    for text in ["0.000", "0.040", "-0.020"] {
        read(&phone, text);
    }
    read(&phone, "0.010");
    phone.tap(&button("Show result"));
    phone.until_says("All places lie on one line, which fixes no plane.");
    // The fourth is taken out again. Three by three in the corner: 0.115 mm by the minimum zone, 0.120 by least squares.
    phone.tap(&button("row 1, column 4").starting());
    phone.fill(&textbox("Reading"), "");
    for row in [["0.060", "0.100", "0.030"], ["-0.010", "0.050", "0.010"]] {
        for _ in 0..4 {
            phone.tap(&button("Next place"));
        }
        for text in row {
            read(&phone, text);
        }
    }
    phone.tap(&button("Show result"));
    phone.until_says("0.115 mm · 4.53 thou");
    let words = phone.words();
    for wanted in [
        "By least squares 0.120 mm",
        "levelled on three corners",
        "row 2, column 2",
        "Does not meet",
    ] {
        assert!(words.contains(wanted), "{wanted} is missing in\n{words}");
    }
    let drawn = phone.run("return document.querySelectorAll('.relief .band').length", &[]);
    assert!(drawn.as_u64() > Some(2), "the relief: {drawn}");
}

#[test]
fn a_straightedge_brackets_and_a_lapping_plan_says_what_goes() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Kestrel");
    let edge = result(&phone, "straightedge/front", &["0.03", "0.06", "0.02", "0.03"]);
    assert!(edge.contains("at least 0.030 mm and under 0.060 mm"), "a bracket, no number: {edge}");
    assert!(edge.contains("Deepest line: along."), "{edge}");
    assert!(edge.contains("Try the leaf of 0.040 mm"), "{edge}");
    let plan =
        result(&phone, "lapping/front", &["0.05", "0.08", "0.01", "0.05", "0.20", "0.01", "0.03"]);
    for wanted in [
        "0.080 mm · 3.15 thou",
        "test the hardness there",
        "−0.070 mm to −0.050 mm",
        "Lap, then harden.",
    ] {
        assert!(plan.contains(wanted), "{wanted} is missing in {plan}");
    }
}

/// Widths of the whole engine: 3 × 50 and 2 × 80 mm make 310.
#[test]
fn widths_make_the_rotors_room_and_the_stack() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Kestrel");
    phone.go("#/faces/stack");
    phone.until_says("Still to be read: front (Side housing, thickness)");
    for rotor in ["rotor-1", "rotor-2"] {
        result(&phone, &format!("housing-width/{rotor}"), &["80.00"; 8]);
    }
    result(&phone, "apex-seal-length/rotor-1", &["79.81"; 3]);
    let room = result(&phone, "rotor-width/rotor-1", &["79.84"; 6]);
    assert!(
        room.contains("0.160 mm · 6.30 thou") && room.contains("0.080 mm on each face"),
        "{room}"
    );
    assert!(room.contains("Apex seals’ end gap, both ends together"), "{room}");
    assert!(room.contains("0.190 mm · 7.48 thou"), "{room}");
    for side in ["front", "intermediate-1", "rear"] {
        result(&phone, &format!("side-thickness/{side}"), &["50.00"; 8]);
    }
    phone.go("#/faces/stack");
    phone.until_says("310.000 mm");
}

#[test]
fn a_bearing_by_bore_journal_and_strip_and_a_shaft_by_its_turn() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Kestrel");
    result(&phone, "bore/rotor-1", &["74.060", "74.058", "74.061", "74.057", "74.060", "74.059"]);
    let journal = result(
        &phone,
        "journal/rotor-1",
        &["73.990", "73.988", "73.991", "73.989", "73.990", "73.990"],
    );
    // Means 74.05917 and 73.98967: 0.0695 mm; tightest 74.057 − 73.991.
    assert!(journal.contains("0.070 mm · 2.74 thou"), "{journal}");
    assert!(journal.contains("Tightest 0.066 mm"), "{journal}");
    let strip = result(&phone, "plastic-gauge/rotor-1", &["0.051", "0.076"]);
    assert!(strip.contains("0.051 mm") && strip.contains("0.076 mm"), "a range: {strip}");
    // 0.2 mm off centre towards place 3: the sine of a turn.
    let turn = result(
        &phone,
        "runout-eight/front-end",
        &["0.000", "0.141", "0.200", "0.141", "0.000", "-0.141", "-0.200", "-0.141"],
    );
    assert!(turn.contains("nearest to place 3"), "its direction: {turn}");
    assert!(turn.contains("0.200 mm · 7.86 thou"), "its eccentricity: {turn}");
    phone.find(&link("Runout, twelve places"));
}
