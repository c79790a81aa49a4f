//! A page that draws itself anew takes no control away from under a finger, and puts none there for the second
//! half of a double tap.

use pitleaf_tests::{Browser, Server, button, textbox};
use std::time::Duration;

/// The bench says so once it is told, which draws it anew.
const TOLD: &str = "Everything is on this phone";

#[test]
fn a_control_stays_under_the_finger_until_it_is_lifted() {
    let server = Server::start();
    let browser = Browser::open(server.url());
    browser.until_says(TOLD);
    browser.run(
        "setTimeout(() => window.dispatchEvent(new Event('pitleaf-offline-ready')), 150);",
        &[],
    );
    browser.press(&button("Look at the demo engine"), Duration::from_millis(400));
    browser.until_says("invented figures");
}

#[test]
fn a_finger_lifted_without_a_click_holds_nothing_back() {
    let server = Server::start();
    for end in ["pointerup", "pointercancel"] {
        let browser = Browser::open(server.url());
        browser.until_says(TOLD);
        let was = browser.run_until_called(
            "const [end, done] = arguments;
             const link = document.querySelector('.page .plate-link');
             const finger = (kind) => link.dispatchEvent(
                 new PointerEvent(kind, { bubbles: true, isPrimary: true, button: 0 }));
             const news = () => window.dispatchEvent(new Event('pitleaf-offline-ready'));
             finger('pointerdown');
             news();
             setTimeout(() => {
                 const rests = link.isConnected;
                 finger(end);
                 setTimeout(() => done([rests, link.isConnected]), 1000);
             }, 100);",
            &[end.into()],
        );
        assert_eq!(
            was,
            serde_json::json!([true, false]),
            "there while it rests, made anew after {end}"
        );
    }
}

#[test]
fn a_double_tap_does_not_do_the_next_thing_as_well() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    phone.order_bolts();
    let passes = |phone: &Browser| {
        phone.facts().iter().filter(|fact| fact.get("tightened").is_some()).count()
    };
    phone.double_tap(&button("Pass 1 is done"));
    phone.until_notice("Written Tension bolts: pass 1");
    phone.find(&button("Pass 2 is done"));
    phone.two_frames();
    assert_eq!(passes(&phone), 1, "the pass that was pulled");
    phone.tap(&button("Pass 2 is done"));
    phone.until_notice("Written Tension bolts: pass 2");
    assert_eq!(passes(&phone), 2, "a touch of its own");
    // Ten times what the wrench was to be set to is asked about once.
    phone.fill(&textbox("Wrench read, if not that"), "380");
    phone.tap(&button("Pass 3 is done"));
    phone.until_notice("380 N·m is far from the 38 N·m of pass 3.");
    assert_eq!(passes(&phone), 2, "not before it is confirmed");
    phone.tap(&button("Pass 3 is done"));
    phone.until_notice("Written Tension bolts: pass 3");
}
