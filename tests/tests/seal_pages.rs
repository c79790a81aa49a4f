//! What stands round the fitting of seals: marks drawn, leaves of one's own, the table, the map, the hot gap,
//! and which seal goes where.

use pitleaf_tests::{
    Browser, Phone, Profile, Server, alert, button, combobox, image, link, list, status, table,
    textbox,
};
use serde_json::json;

const LEAF: &str = "Leaf or stack tried";

fn small(server: &Server) -> Browser {
    let phone = Browser::open_on(Phone::SMALL, Profile::fresh(), server.url());
    phone.open_build("Saltmarsh");
    phone
}

#[test]
fn a_mark_is_drawn_with_a_finger_and_stands_at_its_slot() {
    let server = Server::start();
    let phone = small(&server);
    phone.go("#/mark/1F-BC");
    assert_eq!(phone.property(&button("Keep the drawing"), "disabled"), true, "nothing drawn yet");
    let pad = image("Draw the mark here with a finger");
    phone.draw(&pad, &[(-60, -40), (0, 40), (60, -40)]);
    phone.draw(&pad, &[(-20, 60), (20, 60)]);
    phone.tap(&button("Keep the drawing"));
    phone.until_notice("Written mark of 1F-BC, drawn");
    phone.reload();
    phone.go("#/slot/1F-BC");
    let strokes = phone.run(
        "const lines = document.querySelector('.mark-line svg.drawing path').getAttribute('d').split('M').slice(1);
         return lines.map((line) => line.split('L').length);",
        &[],
    );
    assert_eq!(strokes, json!([3, 2]), "two strokes, every point of them");
    phone.go("#/seals/1F");
    phone.until_says("mark drawn");
}

#[test]
fn leaves_of_ones_own_in_any_unit_are_put_together() {
    let server = Server::start();
    let phone = small(&server);
    phone.go("#/leaves");
    let marks = textbox("Thicknesses, with a space between");
    phone.fill(&marks, "0.05 0.10 0 0.002 in");
    phone.until_says("A leaf is thicker than 0. Type the thickness marked on it.");
    assert_eq!(phone.property(&marks, "value"), "0.05 0.10 0 0.002 in", "the text stays");
    phone.fill(&marks, "0.10 0.04 0.002 in 0.90 0.80");
    phone.until_says("5 leaves: 0.04 mm, 0.002 in, 0.10 mm, 0.80 mm, 0.90 mm");
    phone.fill(&textbox("A leaf may be off by (empty: what is usual)"), "0.002 mm");
    phone.fill(&textbox("Name"), "drawer");
    phone.tap(&button("Write down"));
    phone.until_notice("Written drawer, 5 leaves");
    phone.until_says("Each ±0.002 mm.");

    phone.go("#/slot/1F-AB");
    phone.tap(&button("Leaves"));
    phone.tap(&button("0.04 mm"));
    phone.tap(&button("Put together"));
    phone.tap(&button("0.002 in"));
    phone.tap(&button("Goes"));
    phone.until_notice("1F-AB: 0.04 mm + 0.002 in goes");
    // 40 + 50.8 µm, less 2 µm for each leaf: 0.0868 mm, down to 0.086.
    phone.until_in(&status("What is known of the gap"), "at least 0.086 mm");
    phone.fill(&textbox(LEAF).starting(), "0.80 + 0.90");
    phone.tap(&button("Goes"));
    phone.until_in(&alert(""), "at most 1.5 mm is used in a gap");
    assert_eq!(
        phone.property(&textbox(LEAF).starting(), "value"),
        "0.80 + 0.90",
        "what was typed stays"
    );
}

#[test]
fn the_table_reads_every_slot_out_and_no_build_has_more() {
    let server = Server::start();
    let phone = small(&server);
    phone.go("#/mark/2R-CA");
    phone.fill(&textbox("As scribed on the part"), "three dots");
    phone.tap(&button("Write down"));
    phone.until_notice("Written mark of 2R-CA");
    phone.go("#/seals/1F");
    phone.tap(&link("All slots in a table").starting());
    let words = phone.text(&table("Side-seal slots of the engine, front to rear"));
    let slots: Vec<&str> =
        words.split_whitespace().filter(|word| word.len() == 5 && word.contains('-')).collect();
    assert_eq!(
        slots,
        [
            "1F-AB", "1F-BC", "1F-CA", "1R-AB", "1R-BC", "1R-CA", "2F-AB", "2F-BC", "2F-CA",
            "2R-AB", "2R-BC", "2R-CA"
        ],
        "front to rear"
    );
    assert_eq!(words.matches("not measured").count(), 12, "the state in words: {words}");
    assert!(words.contains("three dots"), "the mark beside: {words}");
    phone.go("#/slot/3F-AB");
    phone.until_says("This build has no rotor 3: its rotors are numbered 1 to 2, from the front.");
    assert!(!phone.shows(&button("Goes")), "nothing to write there");
}

/// Where the names of slots stand on the map, across, and the outline's own path.
fn map(phone: &Browser, face: &str) -> (Vec<f64>, String) {
    phone.go(&format!("#/seals/{face}"));
    let drawn = phone.run(
        "const names = [...document.querySelectorAll('.map .slot-name')];
         return [names.map((name) => Number(name.getAttribute('x'))),
             document.querySelector('.map .outline').getAttribute('d')];",
        &[],
    );
    let across = drawn[0].as_array().expect("names").iter().filter_map(serde_json::Value::as_f64);
    (across.collect(), drawn[1].as_str().expect("a path").to_owned())
}

#[test]
fn the_map_turns_over_like_the_part_and_is_the_builds_own_rotor() {
    let server = Server::start();
    let phone = small(&server);
    let (front, preset) = map(&phone, "1F");
    let (rear, _) = map(&phone, "1R");
    assert_eq!(front.len(), 3, "three slots");
    // Corner A on top, B left of it on the front: AB lies on the left, CA on the right.
    assert!(front[0] < -100.0 && front[1].abs() < 30.0 && front[2] > 100.0, "front: {front:?}");
    for (there, here) in rear.iter().zip(&front) {
        assert!((there + here).abs() < 1.5, "turned over: {front:?} and {rear:?}");
    }
    phone.go("#/ports/engine");
    phone.fill(&textbox("Eccentricity"), "13");
    phone.tap(&button("Put it in"));
    phone.until_notice("the engine’s measures");
    let (_, own) = map(&phone, "1F");
    assert_ne!(own, preset, "a smaller eccentricity has fuller flanks");
}

/// Worked by hand, all of 11.4e-6/K, from 20 °C: 66.1 mm from corner to corner grow by 100 K to 66.175354,
/// the corner seals take 11.01254 of it, and the side seal of 55 mm grows by 200 K to 55.1254: 0.037414 mm.
#[test]
fn the_hot_gap_is_a_band_that_says_it_is_an_estimate() {
    let server = Server::start();
    let phone = small(&server);
    phone.go("#/hot-gap/1F-AB");
    phone.fill(&textbox("Side seal, length"), "55");
    phone.fill(&textbox("Corner seal, diameter"), "11");
    phone.fill(&textbox("Cold gap, least"), "-0.05");
    phone.until_says("Least cold gap: ");
    assert_eq!(phone.property(&button("Write down"), "disabled"), true, "nothing to write");
    phone.fill(&textbox("Cold gap, least"), "0.10");
    for (piece, degrees) in [("Rotor", "120"), ("Side seal", "220"), ("Corner seal", "120")] {
        phone.fill(&textbox(&format!("{piece}, coldest")), degrees);
        phone.fill(&textbox(&format!("{piece}, hottest")), degrees);
        phone.fill(&textbox(&format!("{piece}’s own growth, 10⁻⁶/K")), "11.4");
    }
    phone.until_in(&status("The gap when hot"), "Hot, the gap comes to 0.037 mm to 0.038 mm.");
    phone.until_says("An estimate: nobody knows the temperatures inside a running engine well.");
    phone.fill(&textbox("Bench and parts at"), "5");
    phone.until_in(&status("The gap when hot"), "At 20 °C, where lengths are compared (ISO 1):");
    phone.tap(&button("Write down"));
    phone.until_notice("Seal 55 mm, corner seal 11 mm, cold gap 0.10 mm at 5 °C.");
}

/// Two seals and two slots: either way both can be made to fit, and one way takes less off.
#[test]
fn seals_out_of_a_box_find_their_slots() {
    let server = Server::start();
    let phone = small(&server);
    phone.go("#/placing");
    let write = |label: &str, text: &str, said: &str| {
        phone.fill(&textbox(label), text);
        phone.tap(&button("Write down"));
        phone.until_notice(said);
    };
    write("The seal’s length", "55.20", "seal 1: 55.20 mm");
    write("The seal’s length", "55.00", "seal 2: 55.00 mm");
    phone.tap(&button("a slot"));
    write("From corner seal to corner seal", "55.05", "slot 1F-AB: 55.05 mm");
    phone.tap(&button("by a gap"));
    phone.choose(&combobox("with seal"), "1");
    write(
        "The gap that seal leaves there",
        "0.05",
        "slot 1F-BC: 55.25 mm, from seal 1 and a gap of 0.05 mm",
    );
    let placed = phone.text(&list("What goes where"));
    let (ab, bc) = placed.split_once("1F-BC").expect("both slots");
    assert!(ab.contains("Seal 2: fits as it is, with a gap of about 0.050 mm."), "{placed}");
    assert!(bc.contains("Seal 1: fits as it is, with a gap of about 0.050 mm."), "{placed}");
    // Without seal 2 the longer one is ground for the slot that is left, or the slot stays empty.
    phone.tap(&button("Withdraw Seal 2"));
    phone.until_notice("Withdrawn");
    phone.until_says("No seal is left for this slot");
}

/// 5.10 to 5.20 g: the sets as nearly alike as can be weigh 15.45 g each.
#[test]
fn apex_seals_are_shared_out_by_weight_and_by_height() {
    let server = Server::start();
    let phone = small(&server);
    phone.go("#/matching");
    let piece = textbox("The next piece (g, or mm)");
    phone.fill(&piece, "5,1,0");
    phone.tap(&button("Write down"));
    phone.until_says("More than one point or comma.");
    for (text, said) in [
        ("5.10", "piece 1: 5.10 g"),
        ("5.12", "piece 2: 5.12 g"),
        ("5.14", "piece 3: 5.14 g"),
        ("5.16", "piece 4: 5.16 g"),
        ("5.18", "piece 5: 5.18 g"),
        ("5.20", "piece 6: 5.20 g"),
    ] {
        phone.fill(&piece, text);
        phone.tap(&button("Write down"));
        phone.until_notice(said);
    }
    let sets = phone.text(&list("Sets"));
    assert!(sets.contains("The heaviest set less the lightest: 0.02 g."), "by weight: {sets}");
    phone.tap(&button("Write this down"));
    phone.until_notice("apex seals matched");
    phone.tap(&button("by height"));
    phone.until_says("Next: piece 1");
}
