//! A face read spot by spot, an inch among millimetres asked about, and the end play's loop closed.

use pitleaf_tests::answers::read;
use pitleaf_tests::{Browser, Phone, Profile, Server, alert, button, link, list, textbox};
use serde_json::json;

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
    phone.until_says("Flatness from the readings written down last");
    phone.until_says("Lap, then harden: the whole new skin stays");
}

/// Read as far as the third place when the tab is thrown away.
#[test]
fn a_face_half_read_is_there_again() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Kestrel");
    phone.go("#/faces/grid/front");
    for text in ["0.011", "0.012", "0.013"] {
        read(&phone, text);
    }
    let all_there = |away: &str| {
        phone.until_says("4 of 63: row 1, column 4");
        for text in ["0.013", "0.012", "0.011"] {
            phone.tap(&button("Place before"));
            assert_eq!(phone.property(&textbox("Reading"), "value"), text, "{away}");
        }
        for _ in 0..3 {
            phone.tap(&button("Next place"));
        }
    };
    phone.reload();
    all_there("after a reload");
    phone.tap(&link("Back"));
    phone.until("another screen", |phone| phone.place() != "#/faces/grid/front");
    phone.go("#/faces/grid/front");
    all_there("gone elsewhere, and back");
    phone.tap(&button("Show result"));
    for text in ["0.011", "0.012", "0.013"] {
        phone.until_says(text);
    }
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
    phone.until_says("Predicted, with 7.950 mm: that would be within the limit.");
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
        "Lap, then harden",
        "Rough lap, harden, then a light finish",
    ] {
        assert!(plan.contains(wanted), "{wanted} is missing in {plan}");
    }
}

/// A housing that comes back in another build brings with it what came off it before.
#[test]
fn what_was_lapped_off_comes_back_with_the_casting_mark() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    let mark = textbox("Casting mark");
    let write = |figure: (&str, &str), operation: &str| {
        phone.tap(&button(operation));
        phone.tap(&button("mm"));
        phone.fill(&textbox(figure.0), figure.1);
        phone.tap(&button("Write down"));
        phone.until_notice("Written front");
    };
    phone.open_build("Kestrel");
    phone.go("#/faces/lapping/front");
    phone.tap(&button("Show result"));
    phone.tap(&link("What was done to this face"));
    phone.until_says("The book has nothing of a face of this mark yet.");
    phone.tap(&button("Write down"));
    phone.until_says("Give the mark cast into the housing");
    phone.fill(&mark, "R5 A");
    phone.fill(&textbox("Least depth"), "0.10");
    phone.fill(&textbox("Greatest depth"), "0.15");
    write(("Taken off before", "0.02"), "came in");
    write(("Taken off", "0.06"), "lapped");
    phone.until_says("Off since it was hardened: 0.080 mm");
    phone.until_says("Some is left everywhere.");

    phone.go("#/open");
    phone.open_build("Harrier");
    phone.go("#/faces/ledger/front");
    phone.fill(&mark, "r5 a");
    phone.until_says("Off since it was hardened: 0.080 mm");
    write(("Taken off", "0.12"), "lapped");
    phone.until_says("Off since it was hardened: 0.200 mm");
    phone.until_says("Gone where most came off");
    phone.go("#/work/decisions");
    phone.until_says("front Side housing, taken off a face by lapping");
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

const ROWS: &str = "Along, across, reading: a row a place";
/// Three places at one height, and one between them 0.020 mm proud: its flatness, whatever lies where.
const PROUD: &str = "100 0 0.000\n-50 70 0.000\n-50 -70 0.000\n0 0 0.020";

/// The rows of one's own places on the front face, and how many entries the book has.
fn at_rows(server: &Server) -> (Browser, usize) {
    let phone = Browser::open(server.url());
    phone.open_build("Kestrel");
    let entries = phone.entries();
    phone.go("#/faces/own-places/front");
    phone.find(&textbox(ROWS));
    (phone, entries)
}

/// Chooses the unit of the places.
fn places_in(phone: &Browser, unit: &str) {
    // The readings have keys of the same names.
    let key = "const keys = document.querySelectorAll('[aria-label=\"Places in\"] button');
               const key = [...keys].find((key) => key.textContent === arguments[0]);";
    phone.run(&format!("{key} key.click();"), &[json!(unit)]);
    phone.until("the unit is chosen", |phone| {
        phone.run(&format!("{key} return key.ariaPressed;"), &[json!(unit)]) == "true"
    });
}

#[test]
fn bad_rows_of_places_are_named_and_nothing_is_lost() {
    let server = Server::start();
    let (phone, before) = at_rows(&server);
    let bad = "100 0 0.000\n0 60 0.0x2\n50 30";
    phone.fill(&textbox(ROWS), bad);
    let said = phone.until_in(&alert(""), "Row 3");
    assert_eq!(
        said,
        "Row 2: “x2” is no unit known here. Use one from the keys, or none.\n\n\
         Row 3: a row takes three figures, and here are 2. Give along, across and the reading, a blank between them."
    );
    phone.tap(&button("Show result"));
    phone.until_says("Row 2: “x2”");
    assert_eq!(phone.property(&button("Write down"), "disabled"), true, "nothing to write");
    phone.tap(&button("Go on reading"));
    assert_eq!(phone.property(&textbox(ROWS), "value"), bad, "the rows stay");
    phone.fill(&textbox(ROWS), "0 0 0\n10 20 0.1\n20 40 0\n30 60 0.05");
    phone.tap(&button("Show result"));
    phone.until_says("All places lie on one line, which fixes no plane.");
    assert_eq!(phone.entries(), before, "nothing was written");
}

#[test]
fn places_of_ones_own_stand_on_the_picture_where_they_were_measured() {
    let server = Server::start();
    let (phone, _) = at_rows(&server);
    phone.fill(&textbox(ROWS), PROUD);
    let spots = || {
        phone.run(
            "return [...document.querySelectorAll('.relief .spot-mark')].map((spot) =>
                 ['cx', 'cy'].map((axis) => Math.sign(spot.getAttribute(axis))));",
            &[],
        )
    };
    // Along is up, across is to the right.
    let wanted = json!([[0, -1], [1, 1], [-1, 1], [0, 0]]);
    phone.until("every place is drawn", |_| spots() == wanted);
    phone.tap(&button("Show result"));
    phone.until_says("0.020 mm · 0.79 thou");
    let high = phone.words();
    assert!(high.contains("High spots\nrow 4 (0 mm, 0 mm)."), "{high}");
    assert_eq!(spots(), wanted, "on the relief");
    let drawn = phone.run("return document.querySelectorAll('.relief .band').length", &[]);
    assert!(drawn.as_u64() > Some(1), "the relief: {drawn}");
    // All of it is drawn, also where a place lies beyond the housing.
    phone.tap(&button("Go on reading"));
    phone.fill(&textbox(ROWS), "400 0 0\n0 300 0\n-50 -70 0\n0 0 0.020");
    phone.tap(&button("Show result"));
    phone.until_says("row 2 (0 mm, 300 mm)");
    let outside = phone.run(
        "const picture = document.querySelector('.relief').getBoundingClientRect();
         return [...document.querySelectorAll('.relief .spot-mark')].filter((spot) => {
             const box = spot.getBoundingClientRect();
             return box.top < picture.top || box.right > picture.right;
         }).length;",
        &[],
    );
    assert_eq!(outside, 0, "places beyond the picture");
    // In inches they would lie off any housing.
    phone.tap(&button("Go on reading"));
    phone.fill(&textbox(ROWS), PROUD);
    places_in(&phone, "in");
    phone.until_in(
        &alert(""),
        "Row 1, along: A place along the long axis lies between −19.68 and 19.68 in.",
    );
}

#[test]
fn places_of_ones_own_are_kept_undone_and_found_again() {
    let server = Server::start();
    let (phone, before) = at_rows(&server);
    places_in(&phone, "in");
    phone.fill(&textbox(ROWS), "4 0 0.000\n\n-2 3 0.000\n-2 -3 0.000\n0 0 0.0");
    phone.reload();
    let typed = "4 0 0.000\n\n-2 3 0.000\n-2 -3 0.000\n0 0 0.0";
    assert_eq!(phone.property(&textbox(ROWS), "value"), typed, "the rows half typed");
    phone.fill(&textbox(ROWS), &format!("{typed}20"));
    phone.tap(&button("Show result"));
    phone.until_says("row 3 (-2 in, 3 in)");
    phone.tap(&button("Write down"));
    phone.until_notice("4 readings");
    phone.tap(&button("Undo"));
    phone.until_notice("Withdrawn");
    phone.go("#/faces");
    phone.until_says("Widths and stack");
    phone.go("#/faces/own-places/front");
    let rows = phone.property(&textbox(ROWS), "value");
    assert_eq!(rows, format!("{typed}20"), "out of the book, and here to be mended");

    phone.fill(&textbox(ROWS), PROUD);
    places_in(&phone, "mm");
    phone.tap(&button("Show result"));
    phone.tap(&button("Write down"));
    phone.until_notice("4 readings");
    assert_eq!(phone.entries(), before + 3, "one for each face written, one for the undo");
    phone.go("#/faces");
    phone.until_says("front ✓");
    phone.reload();
    phone.go("#/faces/own-places/front");
    // What is written stands there at once, each row to be mended.
    phone.until_says("0.020 mm · 0.79 thou");
    phone.tap(&button("row 4 (0 mm, 0 mm)").starting());
    assert_eq!(phone.property(&textbox(ROWS), "value"), PROUD, "the rows as they were typed");
    phone.go("#/faces/lapping/front");
    phone.tap(&button("Next place"));
    phone.tap(&button("Next place"));
    phone.fill(&textbox("Reading"), "0.005");
    phone.tap(&button("Next"));
    phone.tap(&button("Show result"));
    phone.until_says("Flatness from the readings written down last");
}

#[test]
fn an_inch_among_ones_own_places_is_asked_about() {
    let server = Server::start();
    let (phone, _) = at_rows(&server);
    phone.fill(&textbox(ROWS), "10 20 0.40\n30 -20 0.41\n-30 5 0.0158\n0 -40 0.40");
    phone.until_says("Was it 0.0158 in?");
    phone.tap(&button("Yes: 0.0158 in"));
    phone.until("the question is gone", |phone| !phone.words().contains("Was it"));
    assert_eq!(
        phone.property(&textbox(ROWS), "value"),
        "10 20 0.40\n30 -20 0.41\n-30; 5; 0.0158 in\n0 -40 0.40",
        "in its own row"
    );
}
