//! Fitting the side seals of a rotor's face: from three that are too long to three that fit.
//!
//! The test plays the bench: each seal has a true gap, each stroke takes off a little, and the leaves are
//! exact. It does what the page proposes, and answers what the gap would.

use pitleaf_tests::{Browser, Phone, Profile, Server, alert, button, link, status, textbox};

/// A seal in its slot, in micrometres; below zero it is longer than its place.
struct Seal {
    gap: i64,
    a_stroke: i64,
}

const LEAF: &str = "Leaf or stack tried";
const GROUND: &str = "Ground off since the last trial";
/// The limit of a naturally aspirated build: 0.0015 to 0.0030 in.
const LIMIT: std::ops::RangeInclusive<i64> = 39..=76;

/// A stack as it is shown, in micrometres.
fn thickness(stack: &str) -> i64 {
    let of = |leaf: &str| -> i64 {
        let digits = leaf.trim().strip_suffix(" mm").expect("a leaf in mm");
        let hundredths: String = digits.chars().filter(char::is_ascii_digit).collect();
        hundredths.parse::<i64>().expect("a leaf's figure") * 10
    };
    stack.split('+').map(of).sum()
}

/// Writes a trial down and waits until it is on the disk and the keys are ready for the next.
fn try_it(phone: &Browser, answer: &str, said: &str) {
    phone.tap(&button(answer));
    phone.until_notice(said);
    phone.until("the count of strokes is empty again", |phone| {
        phone.property(&textbox(GROUND), "value") == ""
    });
}

/// The strokes the page says to take now; one, where it says to measure and no leaf can tell more; none where
/// it knows no rate.
fn to_take(phone: &Browser) -> Option<i64> {
    let words = phone.run("return document.querySelector('.grinding')?.innerText ?? ''", &[]);
    let words = words.as_str().unwrap_or_default();
    let now = words.split("Take ").nth(1).and_then(|behind| behind.split(' ').next());
    match now.map(str::parse) {
        Some(Ok(strokes)) => Some(strokes),
        _ => words.contains("Measure").then_some(1),
    }
}

/// Fits a seal as the page says, and gives how often it was tried.
fn fit(phone: &Browser, slot: &str, seal: &mut Seal) -> usize {
    phone.go(&format!("#/slot/{slot}"));
    phone.until_says("Nothing tried yet");
    let known = status("What is known of the gap");
    let mut ground = 0;
    for tries in 0..40 {
        let state = phone.text(&known).to_lowercase();
        assert!(!state.starts_with("too wide"), "{slot} was ground away: {state}");
        if state.starts_with("fits") {
            assert!(LIMIT.contains(&seal.gap), "{slot} is said to fit at {} µm", seal.gap);
            phone.tap(&button("Seal is fitted"));
            phone.until_in(&known, "itted");
            return tries;
        }
        let leaf = phone.property(&textbox(LEAF).starting(), "value");
        let leaf = leaf.as_str().unwrap_or_default().to_owned();
        let strokes = to_take(phone);
        if ground == 0 && tries > 0 && (state.contains("too tight") || leaf.is_empty()) {
            // Without a known rate, as little as can be.
            ground = strokes.unwrap_or(4);
            seal.gap += ground * seal.a_stroke;
            phone.fill(&textbox(GROUND), &ground.to_string());
            phone.until_says("Hone the burr off");
        }
        let after = if ground > 0 {
            format!(", after {ground} {}", if ground == 1 { "stroke" } else { "strokes" })
        } else {
            String::new()
        };
        if seal.gap < 0 {
            if !phone.shows(&button("Moves the corner seal")) {
                phone.tap(&button("Without a leaf…"));
            }
            try_it(
                phone,
                "Moves the corner seal",
                &format!("{slot}: moves the corner seal{after}"),
            );
        } else {
            let leaf = if leaf.is_empty() { "0.05 mm".to_owned() } else { leaf };
            phone.fill(&textbox(LEAF).starting(), &leaf);
            let (answer, seen) = if thickness(&leaf) <= seal.gap {
                ("Goes", "goes")
            } else {
                ("Does not go", "does not go")
            };
            try_it(phone, answer, &format!("{slot}: {leaf} {seen}{after}"));
        }
        ground = 0;
    }
    panic!(
        "{slot} never came to fit; its gap is {} µm. The page says:\n{}",
        seal.gap,
        phone.words()
    );
}

#[test]
fn three_long_seals_come_to_fit_on_one_face() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Saltmarsh");
    phone.go("#/leaves");
    phone.tap(&button("Metric, with the thin leaves").starting());
    phone.until_notice("Metric, with the thin leaves, 14 leaves");
    let mut seals = [
        ("1F-AB", Seal { gap: -22, a_stroke: 3 }),
        ("1F-BC", Seal { gap: -9, a_stroke: 3 }),
        ("1F-CA", Seal { gap: -14, a_stroke: 3 }),
    ];
    for (slot, seal) in &mut seals {
        let tries = fit(&phone, slot, seal);
        assert!(tries > 1, "{slot} was over-long: it can't fit at once");
    }
    phone.go("#/seals/1F");
    phone.until_says("3 of 12 fitted");
    phone.reload();
    phone.until_says("3 of 12 fitted");
    phone.find(&link("Rotor 1 front: fitted, fitted, fitted"));
}

#[test]
fn a_bracket_of_two_leaves_is_judged_and_a_contradiction_is_named() {
    let server = Server::start();
    let phone = Browser::open_on(Phone::SMALL, Profile::fresh(), server.url());
    phone.open_build("Saltmarsh");
    phone.go("#/slot/1F-AB");
    phone.until_says("Nothing tried yet");
    phone.tap(&button("mm"));
    let tried = |leaf: &str, answer: &str, said: &str| {
        phone.fill(&textbox(LEAF).starting(), leaf);
        phone.tap(&button(answer));
        phone.until_notice(said);
    };
    tried("0.05", "Goes", "1F-AB: 0.05 mm goes");
    tried("0.08", "Does not go", "1F-AB: 0.08 mm does not go");
    let known = status("What is known of the gap");
    phone.until_in(
        &known,
        "the gap is at least 0.047 mm and under 0.083 mm. It is wide enough, but may be over 0.0762 mm.",
    );
    tried("0.04", "Does not go", "1F-AB: 0.04 mm does not go");
    phone.until_in(&known, "0.05 mm went, but 0.04 mm did not: one of the two is wrong.");
    phone.fill(&textbox(LEAF).starting(), "0");
    phone.tap(&button("Goes"));
    phone.until_in(&alert(""), "A leaf is thicker than 0. Type the thickness marked on it.");
    assert_eq!(phone.property(&textbox(LEAF).starting(), "value"), "0", "what was typed stays");
}

#[test]
fn springs_are_typed_place_by_place_and_a_set_is_undone_as_one() {
    let server = Server::start();
    let phone = Browser::open_on(Phone::SMALL, Profile::fresh(), server.url());
    phone.open_build("Saltmarsh");
    phone.go("#/sets");
    phone.tap(&link("Corner seal springs, free height, spread in a set").starting());
    phone.until_says("Type the reading.");
    let write = |text: &str, place: &str| {
        phone.fill(&textbox("Reading"), text);
        phone.tap(&button(&format!("Write {place}")));
        phone.until_notice(&format!("{text} mm on {place}"));
    };
    phone.tap(&button("mm"));
    write("3.52", "1F-A");
    phone.until_says("1 measured. A spread takes two or more.");
    write("3.10", "1F-B");
    let verdict = phone.until_verdict("Does not meet");
    assert!(verdict.contains("Shortest, and the first to suspect: 1F-B at 3.10 mm."), "{verdict}");

    // All that is left alike: written in one go, undone in one go, and back in one go.
    let before = phone.entries();
    phone.go("#/set/corner-seal-spring-spread");
    phone.until_says("2 of 12");
    phone.fill(&textbox("Reading"), "3.50");
    phone.tap(&button("All 10 left alike"));
    phone.until_notice("3.50 mm on 10 places");
    phone.until_says("12 of 12");
    phone.tap(&button("Undo"));
    phone.until_notice("Withdrawn; still in the book");
    phone.until_says("2 of 12");
    phone.tap(&button("Hold again"));
    phone.until_notice("Holds again");
    phone.until_says("12 of 12");
    assert_eq!(phone.entries(), before + 30, "ten readings, ten withdrawals, ten that hold again");
}

#[test]
fn a_leaf_is_in_the_unit_the_limit_is_spoken_in_and_an_unlikely_one_is_asked_about() {
    let server = Server::start();
    let phone = Browser::open_on(Phone::SMALL, Profile::fresh(), server.url());
    phone.open_build("Saltmarsh");
    phone.go("#/slot/1F-AB");
    phone.until_says("Nothing tried yet");
    phone.fill(&textbox("Leaf or stack tried, in thou"), "1.5");
    phone.tap(&button("Goes"));
    phone.until_notice("1F-AB: 1.5 thou goes");
    // A figure in inches, typed as thou; and a leaf of no thickness to speak of, where no tolerance is typed.
    phone.fill(&textbox("Leaf or stack tried, in thou"), "0.0020");
    phone.tap(&button("Goes"));
    phone.until_in(&alert(""), "Not read that finely in thou. Check the unit");
    phone.tap(&button("mm"));
    phone.fill(&textbox("Leaf or stack tried, in mm"), "0.0020");
    phone.tap(&button("Goes"));
    let told = phone.until_in(&alert(""), "one of 0.0020 mm proves nothing.");
    assert!(told.contains("Check the unit, or try a thicker leaf."), "{told}");
    phone.fill(&textbox("Leaf or stack tried, in mm"), "1.5");
    let before = phone.records();
    phone.tap(&button("Does not go"));
    phone.until_in(&alert(""), "1.5 mm is thicker than 1.016 mm (0.04 in)");
    assert_eq!(phone.records(), before, "asked first, and nothing written");
    phone.tap(&button("Write it all the same"));
    phone.until_notice("1F-AB: 1.5 mm does not go");
}
