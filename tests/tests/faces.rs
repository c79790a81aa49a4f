//! A face read spot by spot, an inch among millimetres asked about, and the end play's loop closed.

use pitleaf_tests::{Browser, Phone, Profile, Server, button, link, textbox};

/// Types a reading at the place in hand and goes on to the next.
fn read(phone: &Browser, text: &str) {
    phone.fill(&textbox("Reading"), text);
    phone.tap(&button("Next"));
}

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
