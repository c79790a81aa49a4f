//! Wet hands, tired eyes, a turned phone, a tablet, and ears.

use pitleaf_tests::places::{each_place, with_a_full_book, with_a_full_book_in};
use pitleaf_tests::{Browser, Engine, Phone, Profile, Server, button, textbox};
use serde_json::{Value, json};

/// The screens a person touches with the job in the other hand.
const MID_JOB: [&str; 12] = [
    "#/",
    "#/limits/side-seals",
    "#/check/side-seal-gap-fi/1F-AB",
    "#/convert",
    "#/seals/1F",
    "#/slot/1F-BC",
    "#/slot/2R-CA",
    "#/set/apex-seal-warp",
    "#/joints/order",
    "#/faces/end-play",
    "#/work",
    "#/work/step/outside",
];

/// Whatever is touched and smaller than so many pixels.
const TARGETS: &str = "
    const [selector, least] = arguments;
    const seen = (element) => element.checkVisibility() && !element.closest('.unseen');
    return Array.from(document.querySelectorAll(selector)).filter(seen).flatMap((element) => {
        const { width, height } = (element.closest('label') ?? element).getBoundingClientRect();
        const small = width < least - 0.1 || height < least - 0.1;
        return small ? [`${width} x ${height}: ${element.outerHTML.slice(0, 120)}`] : [];
    });
";

/// Whatever reaches past the right edge, or loses part of its text there or below.
const LOST: &str = "
    const [width] = arguments;
    const all = Array.from(document.querySelectorAll('body *:not(svg *)')).filter((element) =>
        // A sheet of paper and a table of several columns may be moved sideways within their page.
        element.checkVisibility() && !element.closest('.unseen, .build-sheet, .slot-table'));
    const lost = all.filter((element) => {
        const { overflowX, overflowY } = getComputedStyle(element);
        const hidden = (overflow) => overflow === 'hidden' || overflow === 'clip';
        if (element.getBoundingClientRect().right > width + 0.5) return true;
        // What is typed is moved within its field.
        if (['svg', 'INPUT', 'TEXTAREA'].includes(element.tagName)) return false;
        return hidden(overflowX) && element.scrollWidth > element.clientWidth + 1
            || hidden(overflowY) && element.scrollHeight > element.clientHeight + 1;
    });
    const page = document.documentElement.scrollWidth > width ? ['the page itself'] : [];
    return page.concat(lost.map((element) => element.outerHTML.slice(0, 140)));
";

fn texts(found: &Value) -> Vec<String> {
    let texts = found.as_array().expect("a list");
    texts.iter().map(|text| text.as_str().expect("a text").to_owned()).collect()
}

fn nothing(browser: &Browser, name: &str, script: &str, arguments: &[Value]) {
    let found = texts(&browser.run(script, arguments));
    assert_eq!(found, Vec::<String>::new(), "at {name}");
}

#[test]
fn keys_are_large_and_wet_hands_get_nothing_smaller_than_19_millimetres() {
    let server = Server::start();
    let (browser, _) = with_a_full_book(Phone::USUAL, &server);
    browser.go("#/check/side-seal-gap-fi/1F-AB");
    nothing(&browser, "the keys", TARGETS, &[json!(".key"), json!(64)]);
    browser.go("#/settings");
    browser.tap(&button("wet or gloved"));
    for place in MID_JOB {
        browser.go(place);
        let all = "a[href], button, select, summary, textarea, input:not(.unseen)";
        nothing(&browser, place, TARGETS, &[json!(all), json!(72)]);
        browser.picture(&format!("wet{}", place.replace(['#', '/'], "-")));
    }
    browser.reload();
    browser.go("#/convert");
    nothing(&browser, "after a reload", TARGETS, &[json!(".key"), json!(72)]);
}

#[test]
fn wet_hands_fit_the_smallest_phone() {
    let server = Server::start();
    let (browser, _) = with_a_full_book(Phone::SMALL, &server);
    browser.go("#/settings");
    browser.tap(&button("wet or gloved"));
    for place in MID_JOB {
        browser.go(place);
        nothing(&browser, place, LOST, &[json!(Phone::SMALL.width)]);
        browser.picture(&format!("wet{}-320", place.replace(['#', '/'], "-")));
    }
}

/// What was done is said without moving a key, and without hiding the verdict behind the keys.
#[test]
fn a_line_of_what_was_done_moves_no_key_and_hides_no_verdict() {
    let server = Server::start();
    let browser = Browser::open(server.url());
    browser.open_demo();
    browser.go("#/settings");
    browser.tap(&button("wet or gloved"));
    let places = |browser: &Browser| {
        browser.run(
            "const box = (name) => document.querySelector(name).getBoundingClientRect();
             return [box('.check-keys').top, box('.verdict').bottom, box('.verdict').top];",
            &[],
        )
    };
    let typed = |browser: &Browser| {
        browser.fill(&textbox("Reading"), "2.5");
        browser.until_verdict("Meets");
        places(browser)
    };
    browser.go("#/check/side-seal-gap-fi/1F-AB");
    let before = typed(&browser);
    assert!(
        before[0].as_f64() >= before[1].as_f64(),
        "the whole verdict stands above the keys: {before}"
    );
    browser.tap(&button("Write down"));
    browser.until_notice("Written");
    assert!(browser.words().contains("Undo"), "the line still stands there");
    let after = typed(&browser);
    browser.picture("wet-written");
    assert_eq!(after, before, "nothing has moved");
    let over = browser.run(
        "const at = document.querySelector('.verdict').getBoundingClientRect();
         const found = document.elementFromPoint(at.left + at.width / 2, at.top + 4);
         return document.querySelector('.verdict').contains(found);",
        &[],
    );
    assert_eq!(over, json!(true), "nothing lies over the verdict");
}

/// However long a build's name is, what was typed stays in sight, and the line can be closed.
#[test]
fn a_long_line_of_what_was_done_hides_no_figure() {
    let server = Server::start();
    for phone in [Phone::USUAL, Phone::SMALL] {
        let browser = Browser::open_on(phone, Profile::fresh(), server.url());
        browser.go("#/check/side-seal-gap-fi");
        browser.fill(&textbox("Reading"), "2.5");
        browser.tap(&button("Write down"));
        browser.fill(&textbox("Name"), &"Dampfschifffahrtsmotor ".repeat(4));
        browser.tap(&button("Open"));
        browser.until_notice("Written a new build: Dampf");
        browser.until_verdict("Meets");
        browser.picture(&format!("written-long-{}", phone.width));
        let room = browser.run(
            "const box = (name) => document.querySelector(name).getBoundingClientRect();
             return [box('.figure').top - box('.notices').bottom,
                     innerWidth - box('[aria-label=\"Close this line\"]').right];",
            &[],
        );
        for (at, what) in ["the figure is free", "the line can be closed"].iter().enumerate() {
            assert!(room[at].as_f64() >= Some(0.0), "{what} at {}: {room}", phone.width);
        }
    }
}

#[test]
fn text_at_twice_its_size_loses_nothing() {
    let server = Server::start();
    let engine = Engine::ChromiumWithLargeText;
    let (browser, id) = with_a_full_book_in(engine, Phone::USUAL, &server);
    let size = browser.run("return getComputedStyle(document.body).fontSize", &[]);
    assert_eq!(size, "32px", "twice the usual size");
    let mut found = Vec::new();
    each_place(&browser, &id, |name| {
        let lost = browser.run(LOST, &[json!(Phone::USUAL.width)]);
        found.extend(texts(&lost).into_iter().map(|lost| format!("{name}: {lost}")));
        browser.picture(&format!("{name}-twice"));
    });
    assert_eq!(found, Vec::<String>::new(), "lost");
    // What is typed and its verdict can be brought into sight.
    browser.go("#/check/side-seal-gap-fi/1F-AB");
    browser.fill(&textbox("Reading"), "2.5");
    let seen = browser.run(
        "const verdict = document.querySelector('.verdict');
         verdict.scrollIntoView({ block: 'end' });
         const { top, bottom } = verdict.getBoundingClientRect();
         const at = document.elementFromPoint(100, bottom - 10);
         return bottom <= innerHeight && verdict.contains(at);",
        &[],
    );
    assert_eq!(seen, json!(true), "the verdict is in sight");
}

#[test]
fn who_asks_for_more_contrast_gets_the_sun() {
    let server = Server::start();
    let browser = Browser::open(server.url());
    let ground = |browser: &Browser, features: Value| {
        browser.devtools("Emulation.setEmulatedMedia", json!({ "features": features }));
        browser.run("return getComputedStyle(document.body).backgroundColor", &[])
    };
    let scheme = |value: &str| json!({ "name": "prefers-color-scheme", "value": value });
    let more = json!({ "name": "prefers-contrast", "value": "more" });
    let sun = ground(&browser, json!([scheme("light")]));
    assert_ne!(ground(&browser, json!([scheme("dark")])), sun, "dark is another ground");
    assert_eq!(ground(&browser, json!([scheme("dark"), more])), sun, "with more contrast");
}

fn style(browser: &Browser, selector: &str, property: &str) -> Value {
    let script = "return getComputedStyle(document.querySelector(arguments[0]))[arguments[1]]";
    browser.run(script, &[json!(selector), json!(property)])
}

#[test]
fn forced_colours_leave_every_state_to_be_told() {
    let server = Server::start();
    let (browser, _) = with_a_full_book(Phone::USUAL, &server);
    browser.devtools(
        "Emulation.setEmulatedMedia",
        json!({ "features": [{ "name": "forced-colors", "value": "active" }] }),
    );
    // Colours are computed as the page asks for them, not as they are forced: they tell nothing here.
    let keeps_its_own =
        |selector: &str| style(&browser, selector, "forcedColorAdjust") == json!("none");
    browser.go("#/check/side-seal-gap-fi/1F-AB");
    for (chosen, other) in [
        (".unit[aria-pressed='true']", ".unit[aria-pressed='false']"),
        (".nav a[aria-current]", ".nav a:not([aria-current])"),
    ] {
        assert!(
            keeps_its_own(chosen) && !keeps_its_own(other),
            "what is chosen keeps its fill, and only that: {chosen}"
        );
    }
    let mut verdicts = Vec::new();
    for typed in ["2½", "5", "1.5"] {
        browser.fill(&textbox("Reading"), typed);
        let frame = ["borderTopStyle", "borderTopWidth"];
        verdicts.push(frame.map(|property| style(&browser, ".verdict", property).to_string()));
        browser.picture(&format!("forced-check-{}", verdicts.len()));
    }
    verdicts.sort();
    verdicts.dedup();
    assert_eq!(verdicts.len(), 3, "each verdict has its own frame: {verdicts:?}");
    for place in ["#/seals/1F", "#/ports/front", "#/faces/flatness/front", "#/work"] {
        browser.go(place);
        browser.picture(&format!("forced{}", place.replace(['#', '/'], "-")));
    }
}

#[test]
fn nothing_moves_for_who_asks_for_less_motion() {
    let server = Server::start();
    let (browser, id) = with_a_full_book(Phone::USUAL, &server);
    browser.devtools(
        "Emulation.setEmulatedMedia",
        json!({ "features": [{ "name": "prefers-reduced-motion", "value": "reduce" }] }),
    );
    each_place(&browser, &id, |name| {
        let moving = browser.run("return document.getAnimations().length", &[]);
        assert_eq!(moving, json!(0), "at {name}");
    });
}

#[test]
fn a_turned_phone_and_a_tablet_lose_nothing_and_use_the_room() {
    let server = Server::start();
    let (browser, id) = with_a_full_book(Phone::USUAL, &server);
    for (name, width, height) in [("turned", 844, 390), ("tablet", 820, 1180), ("desk", 1180, 820)]
    {
        browser.resize(width, height);
        let mut found = Vec::new();
        each_place(&browser, &id, |place| {
            let lost = browser.run(LOST, &[json!(width)]);
            found.extend(texts(&lost).into_iter().map(|lost| format!("{place}: {lost}")));
            browser.picture(&format!("{place}-{name}"));
        });
        assert_eq!(found, Vec::<String>::new(), "lost on a {name}");
        browser.go("#/check/side-seal-gap-fi/1F-AB");
        let bottom = "return document.querySelector('.key.action').getBoundingClientRect().bottom";
        let bottom = browser.run(bottom, &[]).as_f64();
        assert!(bottom <= Some(f64::from(height)), "the lowest key of a {name}: {bottom:?}");
        browser.go("#/limits");
        let used = browser.run(
            "return document.querySelector('.page').getBoundingClientRect().width / innerWidth",
            &[],
        );
        assert!(used.as_f64() > Some(0.85), "the page uses the room of a {name}: {used}");
    }
}

#[test]
fn a_verdict_and_a_step_are_read_out_once_that_is_switched_on() {
    let server = Server::start();
    let browser = Browser::open(server.url());
    // The device's own voice, listened to.
    browser.before_every_page(
        "window.said = [];
         SpeechSynthesis.prototype.speak = (utterance) => window.said.push(utterance.text);",
    );
    browser.reload();
    browser.open_demo();
    let said = |browser: &Browser| texts(&browser.run("return window.said.splice(0)", &[]));
    let write_down = |browser: &Browser| {
        browser.go("#/check/side-seal-gap-fi/1F-AB");
        browser.fill(&textbox("Reading"), "5");
        browser.tap(&button("Write down"));
        browser.until_notice("Written 5");
    };
    write_down(&browser);
    assert_eq!(said(&browser), Vec::<String>::new(), "silent by itself");
    browser.go("#/settings");
    browser.tap(&button("read verdicts and steps out"));
    assert_eq!(said(&browser), ["Reading out"], "it says that it will");
    write_down(&browser);
    let verdict = "does not meet; five thou; one thou over the upper limit";
    assert_eq!(said(&browser), [verdict], "what is written down");
    browser.fill(&textbox("Reading"), "5");
    browser.tap(&button("Say it"));
    assert_eq!(said(&browser), [verdict], "before it is written down");
    browser.go("#/work/step/outside");
    let step = said(&browser);
    assert_eq!(step.len(), 1, "once: {step:?}");
    assert!(
        browser.words().contains(step[0].split(". ").next().expect("words")),
        "the step itself: {step:?}"
    );
}
