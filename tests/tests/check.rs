//! Checking a reading against a limit, as the builder does it most.

use pitleaf_tests::{
    Browser, Phone, Profile, Server, alert, button, combobox, link, list, status, textbox,
};
use serde_json::json;

const GAP: &str = "Side seal to corner seal, naturally aspirated";

#[test]
fn a_verdict_takes_three_taps_from_the_bench() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    let _ = phone.taps();
    phone.tap(&link(GAP).starting());
    phone.tap(&button("2"));
    phone.tap(&button("and a half"));
    let verdict = phone.until_verdict("Meets");
    assert_eq!(phone.taps(), 3, "touches from the bench to the verdict");
    assert!(verdict.contains("1 thou above the lower, 0.5 thou below the upper"), "{verdict}");
    assert_eq!(phone.property(&textbox("Reading"), "value"), "2½", "what was typed");
    let words = phone.words();
    for figure in ["0.0025 in", "0.0635 mm"] {
        assert!(
            words.contains(figure),
            "both unit systems at once: {figure} is missing in\n{words}"
        );
    }
    assert!(words.contains("Common practice, no published source"), "who says so:\n{words}");
}

/// A seal and its bore, each within its own limit, leave 0.015 mm where 0.020 is least.
#[test]
fn a_seal_is_judged_with_its_bore_as_it_is_typed() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Kestrel");
    phone.go("#/check/rotor-corner-seal-bore/1F-A");
    phone.fill(&textbox("Reading"), "11.008");
    phone.tap(&button("Write down"));
    phone.until_notice("Written 11.008 mm");
    phone.go("#/check/corner-seal-diameter/1F-A");
    phone.fill(&textbox("Reading"), "10.993");
    phone.until_verdict("Meets");
    phone.until_says("Together 0.015 mm, limit 0.020…0.048");
    assert!(
        !phone.text(&list("Together")).contains("clearance: Meets"),
        "the two do not meet together"
    );
    phone.fill(&textbox("Reading"), "10.974");
    phone.until_says("Corner seal in its bore, clearance: Meets. Together 0.034 mm");
}

#[test]
fn a_finger_gets_each_figure_once_and_so_does_a_fast_one() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.go("#/check/side-seal-gap-na");
    phone.tap_keys(&["1", "2", "3", "4", "5", "6", "7", "8", "9", "0", "Decimal point", "5"]);
    phone.tap(&button("Delete the last character"));
    assert_eq!(phone.property(&textbox("Reading"), "value"), "1234567890.", "what was typed");
}

#[test]
fn bad_input_gets_its_sentence_and_changes_nothing_else() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    phone.go("#/check/side-seal-gap-na");
    let before = kept(&phone);
    let digits = "1".repeat(400);
    for (typed, word, sentence) in [
        ("abc", "Can’t read that", "“abc” is no number. Use digits with one point or comma."),
        ("1..2", "Can’t read that", "More than one point or comma. Leave only the decimal one."),
        ("−0", "Can’t read that", "Minus zero is no reading. Type 0, or a value below it."),
        ("1e9", "Can’t read that", "Powers of ten are not read. Write the number out in full."),
        (&digits, "Can’t read that", "Too many digits. At most 12 can be held exactly."),
        (
            "",
            "Limit",
            "1.5…3.0\u{a0}thou (0.0015…0.0030\u{a0}in, 0.0381…0.0762\u{a0}mm). Type the reading.",
        ),
    ] {
        phone.fill(&textbox("Reading"), typed);
        let verdict = phone.until_in(&status("Verdict"), sentence);
        // Engines differ in how many line ends stand between two lines.
        let lines: Vec<&str> = verdict.lines().filter(|line| !line.is_empty()).collect();
        assert_eq!(lines, [word, sentence], "for {typed:?}");
        assert_eq!(phone.property(&textbox("Reading"), "value"), typed, "the text stays");
        assert_eq!(phone.property(&button("Write down"), "disabled"), true, "for {typed:?}");
        phone.type_keys("\u{e007}");
        assert_eq!(kept(&phone), before, "what is kept, for {typed:?}");
        assert_eq!(phone.notice(), "", "the notice line, for {typed:?}");
    }
    assert_eq!(phone.entries(), 1, "only the opening of the build");
}

/// Everything on the device but drafts.
fn kept(phone: &Browser) -> serde_json::Value {
    let storage = phone.run(
        "return Object.entries(localStorage).filter(([key]) => !key.startsWith('pitleaf.draft'));",
        &[],
    );
    json!([storage, phone.records()])
}

#[test]
fn bad_limits_get_a_sentence_each_and_nothing_is_written() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    phone.go("#/own-limit/end-play");
    phone.fill(&textbox("Lower limit"), "abc");
    phone.fill(&textbox("Upper limit"), "1..2");
    phone.fill(&textbox("Wear limit"), "1e9");
    phone.tap(&button("Put it in"));
    let faults = phone.until_in(&alert(""), "Wear");
    for sentence in [
        "Lower: “abc” is no number. Use digits with one point or comma.",
        "Upper: More than one point or comma. Leave only the decimal one.",
        "Wear: Powers of ten are not read. Write the number out in full.",
    ] {
        assert!(faults.contains(sentence), "{sentence} is missing in\n{faults}");
    }
    assert_eq!(phone.property(&textbox("Lower limit"), "value"), "abc", "the text stays");
    assert_eq!(phone.entries(), 1, "only the opening of the build");
}

#[test]
fn ones_own_limit_is_put_in_with_its_page_and_used() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    phone.tap(&link("End play of the eccentric shaft").starting());
    phone.tap_keys(&["0", "Decimal point", "0", "8"]);
    phone.until_verdict("Does not meet");
    phone.tap(&link("Put in my own limit"));
    phone.fill(&textbox("Lower limit"), "0.03");
    phone.fill(&textbox("Upper limit"), "0.09");
    phone.fill(&textbox("From"), "the engine’s manual, page 12");
    phone.tap(&button("Put it in"));
    phone.until_notice("Written your own limit");
    phone.fill(&textbox("Reading"), "0.08");
    let verdict = phone.until_verdict("Meets");
    assert!(verdict.contains("0.05 mm above the lower, 0.01 mm below the upper"), "{verdict}");
    phone.until_says("the engine’s manual, page 12");
    phone.tap_screen("Bench");
    phone.reload();
    let tile = phone.text(&link("End play of the eccentric shaft").starting());
    assert!(tile.contains("0.03…0.09\u{a0}mm"), "the bench shows one’s own: {tile}");
}

/// Too small is as likely a slip as too large, and ends at the grindstone.
#[test]
fn a_figure_in_the_wrong_unit_is_read_with_one_touch_or_written_as_it_stands() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    phone.go("#/check/side-seal-gap-na");
    let typed = |phone: &Browser| phone.property(&textbox("Reading"), "value");
    for (text, word, key, left) in [
        ("0.06", "Far off. Was that mm?", "Read as 0.06 mm", "0.06"),
        (".0025", "Not read that finely in thou.", "Read as .0025 in", ".0025"),
        ("0.25", "Did the decimal point slip?", "Read as 2.5 thou", "2.5"),
    ] {
        phone.tap(&button("thou"));
        phone.fill(&textbox("Reading"), text);
        phone.until_in(&status("Verdict"), word);
        phone.tap(&button(key));
        phone.until_verdict("Meets");
        assert_eq!(typed(&phone), left, "{key}");
    }
    phone.tap(&button("thou"));
    phone.fill(&textbox("Reading"), "0.06");
    phone.until_verdict("Does not meet");
    phone.write_on("1F-AB");
    phone.until_notice("Written 0.06 thou on 1F-AB: does not meet");
    // A pressure in psi under bar meets an edge it should be asked about.
    phone.go("#/check/compression-na");
    phone.tap(&button("bar"));
    phone.fill(&textbox("Reading"), "105");
    phone.until_in(&status("Verdict"), "Was that psi?");
    phone.tap(&button("Read as 105 psi"));
    phone.until("the unit is psi", |phone| unit_beside(phone) == "psi");
}

/// The unit that stands beside the big figure.
fn unit_beside(phone: &Browser) -> String {
    let unit = phone.run("return document.querySelector('.figure-unit').innerText", &[]);
    unit.as_str().unwrap_or_default().to_owned()
}

#[test]
fn a_unit_pressed_holds_for_its_check_alone_and_one_typed_stands_beside_the_figure() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    phone.go("#/check/side-seal-gap-na");
    phone.fill(&textbox("Reading"), ".0025\"");
    phone.until_verdict("Meets");
    assert_eq!(unit_beside(&phone), "in", "as typed");
    phone.tap(&button("thou"));
    phone.until("the unit pressed", |phone| unit_beside(phone) == "thou");
    assert_eq!(phone.property(&textbox("Reading"), "value"), ".0025", "takes its place");

    phone.go("#/check/end-play");
    phone.tap(&button("in"));
    phone.go("#/check/side-housing-warp");
    phone.until("in its own unit", |phone| unit_beside(phone) == "mm");
    phone.tap_screen("Bench");
    let tile = phone.text(&link("End play of the eccentric shaft").starting());
    assert!(tile.contains("0.04…0.07\u{a0}mm (1.58…2.75\u{a0}thou)"), "as written: {tile}");

    phone.go("#/settings");
    phone.tap(&button("thou and in"));
    phone.go("#/check/end-play");
    phone.until("in thou", |phone| unit_beside(phone) == "thou");
    phone.go("#/check/rotor-housing-width");
    phone.until("a size in inches", |phone| unit_beside(phone) == "in");
}

#[test]
fn a_slip_is_asked_about_withdrawn_and_still_found() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    phone.tap(&link("Side housing, warp").starting());
    phone.tap_keys(&["0", "Decimal point", "2", "5"]);
    let verdict = phone.until_verdict("Does not meet");
    assert!(verdict.contains("Did the decimal point slip?"), "{verdict}");
    phone.write_on("rear");
    phone.until_notice("Written 0.25 mm on rear: does not meet");
    phone.tap(&button("Undo"));
    phone.until_notice("Withdrawn; still in the book");
    assert_eq!(
        phone.property(&textbox("Reading"), "value"),
        "",
        "written down, so no longer typed"
    );
    phone.tap_keys(&["0", "Decimal point", "0", "2", "5"]);
    assert_eq!(phone.property(&textbox("Reading"), "value"), "0.025", "typed once more");
    let verdict = phone.until_verdict("Meets");
    assert!(!verdict.contains("slip"), "{verdict}");
    phone.write_on("rear");
    phone.until_notice("Written 0.025 mm on rear: meets");

    phone.reload();
    phone.tap_screen("Book");
    phone.tap(&link("0.025 mm").starting());
    let history = phone.text(&list("History"));
    let (now, before) = history.split_once("0.25 mm").expect("the wrong figure is still there");
    assert!(now.contains("0.025 mm") && !now.contains("withdrawn"), "the latest: {history}");
    assert!(before.contains("withdrawn"), "the one before: {history}");
    // It can be let hold again: withdrawing takes nothing away.
    phone.tap(&link("0.25 mm").starting());
    phone.tap(&button("Let it hold again"));
    phone.until_notice("Holds again");
    phone.find(&button("Withdraw"));
}

/// Every row of the sheet that holds for the build shows the part, the gauge and the places.
#[test]
fn every_limit_has_its_picture_of_where_and_how() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    let links = |phone: &Browser, start: &str| {
        let found = phone.run(
            "return [...document.querySelectorAll('main a')].map((one) => one.getAttribute('href'))
                 .filter((to) => to.startsWith(arguments[0]));",
            &[json!(start)],
        );
        let found: Vec<String> = serde_json::from_value(found).expect("addresses");
        found
    };
    phone.go("#/limits");
    let parts = links(&phone, "#/limits/");
    assert_eq!(parts.len(), 11, "every part: {parts:?}");
    let mut rows = Vec::new();
    for part in parts {
        phone.go(&part);
        rows.extend(links(&phone, "#/check/"));
    }
    assert!(rows.len() > 60, "the whole sheet: {}", rows.len());
    for row in rows {
        phone.go(&row);
        let strokes = phone.run(
            "const picture = document.querySelector('.how-picture');
             const drawn = ['part', 'gauge', 'marks'].filter((what) => picture?.querySelector(`path.${what}`)?.getTotalLength() > 20);
             return [drawn, document.querySelector('.how')?.innerText.length > 20];",
            &[],
        );
        assert_eq!(strokes, json!([["part", "gauge", "marks"], true]), "picture and words: {row}");
    }
}

/// A reading belongs to a build: where none is open, that is said, and the reading waits.
#[test]
fn a_reading_without_a_build_waits_until_one_is_open() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.go("#/open");
    assert!(!phone.words().contains("What you typed is kept"), "nothing waits yet");
    phone.go("#/check/side-seal-gap-fi");
    phone.fill(&textbox("Reading"), "2.5");
    phone.until_verdict("Meets");
    phone.tap(&button("Write down"));
    phone.until_says("What you typed is kept, but not written yet");
    let breathes = phone.run(
        "return [...document.querySelectorAll('[aria-pressed=true]')].map((key) => key.innerText);",
        &[],
    );
    assert!(breathes.to_string().contains("forced induction"), "as the limit says: {breathes}");
    phone.fill(&textbox("Name"), "Merlin");
    phone.tap(&button("Open"));
    phone.until_notice("Written a new build: Merlin");
    assert_eq!(phone.place(), "#/check/side-seal-gap-fi");
    phone.until_verdict("Meets");
    phone.write_on("1F-AB");
    phone.until_notice("Written 2.5 thou on 1F-AB");
}

/// Two bearings are two readings: which one it is of is asked before it is written, and not before it is checked.
#[test]
fn a_reading_of_one_of_several_pieces_is_written_on_the_one_chosen() {
    let server = Server::start();
    let phone = Browser::open_on(Phone::SMALL, Profile::fresh(), server.url());
    phone.open_build("Merlin");
    phone.go("#/check/rotor-bearing-clearance");
    phone.fill(&textbox("Reading"), "0.06 mm");
    phone.until_verdict("Meets");
    phone.tap(&button("Write down"));
    phone.until_says("Choose which one it is of");
    assert!(phone.words().contains("Meets"), "the verdict stays in sight");
    phone.tap(&button("Back to the keys"));
    phone.find(&button("Write down"));
    assert_eq!(phone.property(&textbox("Reading"), "value"), "0.06 mm", "what was typed stays");
    phone.write_on("rotor 2");
    phone.until_notice("Written 0.06 mm on rotor 2: meets");
    phone.fill(&textbox("Reading"), "0.05 mm");
    phone.write_on("rotor 1");
    phone.until_notice("Written 0.05 mm on rotor 1: meets");
    phone.go("#/work/step/rotor-bearing");
    let read = phone.until_in(&list("Readings"), "rotor 1");
    assert_eq!(read.matches("Meets").count(), 2, "neither overwrote the other: {read}");
    phone.go("#/work/sheet");
    for words in ["rotor 1 · Rotor bearing, clearance", "rotor 2 · Rotor bearing, clearance"] {
        phone.until_says(words);
    }
}

#[test]
fn on_the_smallest_phone_the_verdict_stands_above_the_keys() {
    let server = Server::start();
    let phone = Browser::open_on(Phone::SMALL, Profile::fresh(), server.url());
    phone.open_demo();
    phone.go("#/check/side-seal-gap-fi/1F-AB");
    phone.fill(&textbox("Reading"), "2.5");
    phone.until_verdict("Meets");
    let room = phone.run(
        "const bottom = document.querySelector('.verdict-word').getBoundingClientRect().bottom;
         return document.querySelector('.check-keys').getBoundingClientRect().top - bottom;",
        &[],
    );
    assert!(room.as_f64() >= Some(0.0), "the verdict's word is cut off by {room}");
}

#[test]
fn a_limit_goes_along_with_its_unit_and_a_far_one_is_asked_about() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    phone.go("#/own-limit/side-housing-warp");
    let upper = |phone: &Browser| phone.property(&textbox("Upper limit"), "value");
    assert_eq!(upper(&phone), "0.04", "as it ships, in mm");
    phone.tap(&button("in"));
    assert_eq!(upper(&phone), "0.00157", "inward: 0.001 574 8… in");
    phone.tap(&button("mm"));
    assert_eq!(upper(&phone), "0.04", "and back, as it was");
    phone.tap(&button("in"));
    phone.fill(&textbox("Upper limit"), "0.04");
    phone.fill(&textbox("From"), "the engine’s manual, page 4");
    phone.tap(&button("Put it in"));
    phone.until_in(
        &alert(""),
        "The upper limit of 0.04 in, that is 1.016 mm, is more than twice the 0.04 mm that came with the app.",
    );
    let records = phone.records();
    assert_eq!(records.as_object().map(|all| all.len()), Some(1), "nothing written before");
    // What is changed is asked anew.
    phone.fill(&textbox("Upper limit"), "0.05");
    phone.until("no question is left", |phone| !phone.shows(&button("Keep it all the same")));
    phone.tap(&button("Put it in"));
    phone.tap(&button("Keep it all the same"));
    phone.until_notice("Written your own limit, this engine only");
    phone.until_in(&status("Verdict"), "(at most 0.05\u{a0}in, at most 1.27\u{a0}mm)");
}

#[test]
fn a_limit_and_a_draft_stay_with_the_engine_they_were_typed_for() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    let limit = |phone: &Browser, upper: &str, every: bool| {
        phone.go("#/own-limit/end-play");
        phone.fill(&textbox("Upper limit"), upper);
        phone.fill(&textbox("From"), "page 12");
        if every {
            phone.tap(&button("every engine"));
        }
        phone.tap(&button("Put it in"));
        phone.until_notice("Written your own limit");
    };
    let tells = |phone: &Browser, edges: &str| {
        phone.go("#/check/end-play");
        phone.until_in(&status("Verdict"), edges);
    };
    limit(&phone, "0.06", false);
    tells(&phone, "0.04…0.06\u{a0}mm");
    phone.fill(&textbox("Reading"), "0.05");
    phone.until_verdict("Meets");
    // Another engine: neither the limit nor what was typed.
    phone.open_build("Plover");
    tells(&phone, "0.04…0.07\u{a0}mm (1.58…2.75\u{a0}thou). Type the reading.");
    assert_eq!(phone.property(&textbox("Reading"), "value"), "", "typed for the other engine");
    phone.go("#/work/sheet");
    phone.until_says("the starter sheet, nothing in it published");
    // Said of every engine, it holds for one opened later.
    limit(&phone, "0.065", true);
    phone.open_build("Avocet");
    tells(&phone, "0.04…0.065\u{a0}mm");
}

/// The gauge in the hand stays in it: its doubt decides, and its name is written down.
#[test]
fn the_gauge_chosen_stays_chosen_for_the_next_piece() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    phone.go("#/check/side-housing-warp");
    // The place is the new one a moment before its screen is drawn.
    let gauge = |phone: &Browser| {
        phone.until_some("the gauge's choice", |phone| {
            let script = "const label = [...document.querySelectorAll('label')].find((one) => one.innerText.startsWith('Gauge'));
                 return label?.querySelector('select').value ?? null;";
            phone.run(script, &[]).as_str().map(str::to_owned)
        })
    };
    let usual = gauge(&phone);
    phone.choose(&combobox("Gauge"), "dial indicator");
    assert_ne!(gauge(&phone), usual);
    phone.choose(&combobox("Piece"), "front");
    phone.until("the piece’s own check", |phone| phone.place().ends_with("/front"));
    assert_eq!(gauge(&phone), "dial indicator", "at the next piece");
    phone.tap(&link("My gauges"));
    phone.until_says("What each shows, and how good it is");
    phone.tap(&link("Back"));
    phone.until("back at the check", |phone| phone.place() == "#/check/side-housing-warp/front");
    assert_eq!(gauge(&phone), "dial indicator", "after a look at the gauges");
}

/// A pressure is judged with the doubt of its gauge, whatever digits are typed, and the builder's own gauge
/// counts as soon as it is written down.
#[test]
fn a_pressure_has_the_doubt_of_its_gauge() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    phone.go("#/check/oil-pressure-idle");
    let offered = phone.until_some("the gauges", |phone| {
        let script = "const label = [...document.querySelectorAll('label')].find((one) => one.innerText.startsWith('Gauge'));
             return label && [...label.querySelectorAll('option')].map((one) => one.innerText).join(', ');";
        phone.run(script, &[]).as_str().map(str::to_owned)
    });
    assert_eq!(offered, "pressure gauge, compression tester, cooling system tester");
    // At least 100 kPa; 1.6 % of 1000 kPa in steps of 10: 106 proves nothing, however it is typed.
    for text in ["106", "106.00"] {
        phone.fill(&textbox("Reading"), text);
        let verdict = phone.until_verdict("Too close to call");
        assert!(verdict.contains("Pressure gauge doubt ±16"), "{verdict}");
    }
    phone.go("#/gauges");
    phone.until_says("1.6 % of 1000 kPa");
    assert!(!phone.shows(&button("Write down")), "nothing is changed yet");
    phone.run(
        "const form = document.querySelector('form[aria-label=\"pressure gauge\"]');
         const error = form.querySelectorAll('input')[1];
         error.focus(); error.select();",
        &[],
    );
    phone.type_keys("\u{e017}0.2 %");
    phone.tap(&button("Write down"));
    phone.until_notice("Written your pressure gauge");
    phone.until("the key is gone", |phone| !phone.shows(&button("Write down")));
    phone.go("#/check/oil-pressure-idle");
    phone.fill(&textbox("Reading"), "106");
    phone.until_verdict("Meets");
}

/// No leaf goes where the limit begins below the thinnest: the check starts with bore less seal.
#[test]
fn a_clearance_thinner_than_any_leaf_is_not_offered_one() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    phone.go("#/check/corner-seal-clearance");
    phone.fill(&textbox("Reading"), "0.034");
    let verdict = phone.until_verdict("Meets");
    assert!(verdict.contains("Two sizes, one less the other doubt ±"), "{verdict}");
}
