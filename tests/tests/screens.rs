//! Every screen, in both lights, on a usual and on the smallest phone: nothing hangs over its edge, nothing
//! is too small for a thumb or for eyes, nothing is asked of another origin, and a picture is made of each.

use pitleaf_tests::places::{each_place, with_a_full_book};
use pitleaf_tests::{Browser, Phone, Server, button};
use serde_json::{Value, json};
use std::fs;
use std::path::Path;

/// What a script found wrong on a screen.
fn faults(name: &str, found: &Value) -> Vec<String> {
    found.as_array().into_iter().flatten().map(|fault| format!("{name}: {fault}")).collect()
}

#[test]
fn nothing_hangs_over_the_edge_of_the_smallest_phone() {
    let server = Server::start();
    let (browser, id) = with_a_full_book(Phone::SMALL, &server);
    let mut found = Vec::new();
    each_place(&browser, &id, |name| {
        let over = browser.run(HANGS_OVER, &[json!(Phone::SMALL.width)]);
        found.extend(faults(name, &over));
    });
    assert_eq!(found, Vec::<String>::new(), "over the edge");
}

/// Whatever reaches past the right edge, and whatever can be pushed sideways.
const HANGS_OVER: &str = "
    const [width] = arguments;
    const name = (element) => element.outerHTML.slice(0, 120);
    const all = Array.from(document.querySelectorAll('body, body *:not(svg *)'));
    const pushed = all.filter((element) => element.scrollWidth > element.clientWidth + 1
        && ['auto', 'scroll'].includes(getComputedStyle(element).overflowX) && !element.closest('.build-sheet'));
    // A sheet of paper is as wide as it is printed; it is moved within its own frame.
    const past = all.filter((element) => element.checkVisibility()
        && !element.closest('.unseen, .build-sheet') && element.getBoundingClientRect().right > width + 0.5);
    const page = document.documentElement.scrollWidth > width ? ['the page itself'] : [];
    return page.concat([...pushed, ...past].map(name));
";

#[test]
fn everything_is_large_enough_for_a_thumb_and_for_eyes() {
    let server = Server::start();
    let (browser, id) = with_a_full_book(Phone::USUAL, &server);
    let mut found = Vec::new();
    each_place(&browser, &id, |name| found.extend(faults(name, &browser.run(TOO_SMALL, &[]))));
    assert_eq!(found, Vec::<String>::new(), "too small");
}

/// WCAG 2.2, target size 2.5.5: 44 by 44. Text in a picture is measured as it is drawn.
const TOO_SMALL: &str = "
    const seen = (element) => element.checkVisibility() && !element.closest('.unseen');
    const name = (element, size) => `${size}: ${element.outerHTML.slice(0, 120)}`;
    const targets = Array.from(document.querySelectorAll('a[href], button, select, input:not(.unseen)')).filter(seen);
    const thumbs = targets.flatMap((element) => {
        // The label around a field is touched as well as the field.
        const { width, height } = (element.closest('label') ?? element).getBoundingClientRect();
        return width < 43.9 || height < 43.9 ? [name(element, `${width} x ${height}`)] : [];
    });
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const eyes = [];
    while (texts.nextNode()) {
        const element = texts.currentNode.parentElement;
        if (!texts.currentNode.data.trim() || !seen(element) || element.tagName === 'OPTION') continue;
        // A sheet of paper is shown as it is printed.
        if (element.closest('.sheet')) continue;
        const svg = element.closest('svg');
        const { a, b } = svg ? element.getScreenCTM() : { a: 1, b: 0 };
        const scale = Math.hypot(a, b);
        const size = parseFloat(getComputedStyle(element).fontSize) * scale;
        if (size < 13.9) eyes.push(name(element, `${size} px`));
    }
    return thumbs.concat(eyes);
";

#[test]
fn nothing_is_asked_of_another_origin_and_nothing_complains() {
    let server = Server::start();
    let (browser, id) = with_a_full_book(Phone::USUAL, &server);
    each_place(&browser, &id, |name| {
        assert_eq!(browser.complaints(), Vec::<String>::new(), "on the console at {name}");
    });
    let requests = browser.requests();
    assert!(requests.len() >= 5, "the page and its files were asked for: {requests:?}");
    // The browser's own first tab asks the browser itself.
    let ours = |url: &&String| {
        ["data:", "chrome:", "chrome-untrusted:", server.url()]
            .iter()
            .any(|start| url.starts_with(start))
    };
    let others: Vec<_> = requests.iter().filter(|url| !ours(url)).collect();
    assert_eq!(others, Vec::<&String>::new(), "asked of another origin");

    // The policy itself stands in the way, not only good manners.
    let blocked = browser.run_until_called(
        "const done = arguments[0];
         fetch('http://127.0.0.1:9/').then(() => done('sent'), () => done('refused'));",
        &[],
    );
    assert_eq!(blocked, "refused", "a request to another origin");
    let words = browser.complaints().join("\n");
    assert!(words.contains("Content Security Policy"), "by the policy: {words}");
}

#[test]
fn dark_and_sun_are_switched_and_stay() {
    let server = Server::start();
    let browser = Browser::open(server.url());
    let ground = |browser: &Browser| {
        browser.run("return getComputedStyle(document.body).backgroundColor", &[])
    };
    browser.prefer("dark");
    let dark = ground(&browser);
    browser.prefer("light");
    let sun = ground(&browser);
    assert_ne!(dark, sun, "the phone's own setting is followed");
    browser.go("#/settings");
    browser.tap(&button("dark"));
    assert_eq!(ground(&browser), dark, "dark on a light phone");
    browser.reload();
    assert_eq!(ground(&browser), dark, "after the app was started again");
    browser.prefer("dark");
    browser.tap(&button("sun"));
    assert_eq!(ground(&browser), sun, "sun on a dark phone");
    browser.tap(&button("as the phone"));
    assert_eq!(ground(&browser), dark, "as the phone again");
}

/// Pictures for looking at: target/screens. The one in the README is kept beside these tests, and drawn
/// anew when `PITLEAF_PICTURE` is set.
#[test]
fn a_picture_is_made_of_every_screen_in_both_lights() {
    let server = Server::start();
    let mut fresh = Vec::new();
    for phone in [Phone::USUAL, Phone::SMALL] {
        let (browser, id) = with_a_full_book(phone, &server);
        for (light, scheme) in [("dark", "dark"), ("sun", "light")] {
            browser.prefer(scheme);
            each_place(&browser, &id, |name| {
                let picture = browser.picture(&format!("{name}-{}-{light}", phone.width));
                assert!(
                    size(&picture) == (phone.width, phone.height),
                    "the whole screen of {name}"
                );
                if (name, phone, light) == ("check-meets", Phone::USUAL, "dark") {
                    fresh = picture;
                }
            });
        }
    }
    let kept = Path::new(env!("CARGO_MANIFEST_DIR")).join("pictures/check.png");
    if std::env::var_os("PITLEAF_PICTURE").is_some() {
        fs::create_dir_all(kept.parent().expect("its folder")).expect("a folder");
        fs::write(&kept, &fresh).expect("room for a picture");
    }
    let kept = fs::read(kept).expect("the README's picture: make it with PITLEAF_PICTURE=1");
    assert_eq!(size(&kept), size(&fresh), "the README's picture is of this screen");
}

/// Width and height, from a PNG's head.
fn size(png: &[u8]) -> (u32, u32) {
    let at = |from: usize| {
        u32::from_be_bytes(png[from..from + 4].try_into().expect("four bytes of a PNG's head"))
    };
    assert_eq!(&png[1..4], b"PNG", "a PNG");
    (at(16), at(20))
}

#[test]
fn a_fault_of_the_app_itself_is_said_with_a_way_on() {
    let server = Server::start();
    let browser = Browser::open(server.url());
    browser.open_build("Merlin");
    browser.go("#/slot/1F-AB");
    // A module whose only function traps, called as the browser calls the app's: from an event.
    let module = json!([
        0, 97, 115, 109, 1, 0, 0, 0, 1, 4, 1, 96, 0, 0, 3, 2, 1, 0, 7, 5, 1, 1, 102, 0, 0, 10, 5,
        1, 3, 0, 0, 11
    ]);
    browser.run(
        "const module = new WebAssembly.Module(new Uint8Array(arguments[0]));
         setTimeout(new WebAssembly.Instance(module).exports.f);",
        &[module],
    );
    browser.until_says("Pitleaf has met a fault of its own and stopped. What was written is in the book. Reload to go on.");
    browser.tap(&button("Reload"));
    browser.until_open();
    browser.until_says("Slot 1F-AB");
}
