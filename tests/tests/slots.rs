//! A seal belongs to one slot: what is written of it is found again.

use pitleaf_tests::{Browser, Server, button, link, list, status, textbox};

#[test]
fn a_mark_is_found_again_in_two_taps_after_an_hour() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    phone.tap_screen("Seals");
    phone.tap(&link("Rotor 2 rear").starting());
    phone.tap(&link("2R-CA").starting());
    phone.tap(&link("no mark yet").starting());
    phone.fill(&textbox("As scribed on the part"), "two dots and a short line");
    phone.tap(&button("Write down"));
    phone.until_notice("Written mark of 2R-CA: two dots and a short line");
    phone.tap(&link("Back"));
    phone.tap(&button("Seal is fitted"));
    phone.until_notice("Written 2R-CA: seal fitted");
    // A tick would say more than is known.
    phone.until_in(&status("What is known of the gap"), "itted, gap not proved");
    phone.tap(&link("Type a gap measured"));
    phone.tap_keys(&["2", "and a half"]);
    phone.until_verdict("Meets");
    phone.tap(&button("Write down"));
    phone.until_notice("Written 2½ thou on 2R-CA");

    // The phone was locked and the tab thrown away: it starts again on the bench.
    phone.go("");
    phone.reload();
    let _ = phone.taps();
    phone.tap_screen("Seals");
    phone.tap(&link("Rotor 2 rear").starting());
    let slots = phone.text(&list("Slots of this face"));
    assert_eq!(phone.taps(), 2, "touches from the bench to the slot");
    let line = slots.split("2R-CA").nth(1).expect("the slot is listed");
    for words in ["mark: two dots and a short line", "2½ thou", "fitted"] {
        assert!(line.contains(words), "{words} is missing in {slots}");
    }
    phone.find(&heading_after_tap(&phone));
}

/// The slot's own page says the same.
fn heading_after_tap(phone: &Browser) -> pitleaf_tests::Named {
    phone.tap(&link("2R-CA").starting());
    phone.until_says("two dots and a short line");
    pitleaf_tests::heading("Slot 2R-CA")
}

#[test]
fn a_draft_is_there_again_when_the_tab_was_thrown_away() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    phone.go("#/mark/1F-AB");
    phone.fill(&textbox("As scribed on the part"), "three do");
    phone.reload();
    assert_eq!(
        phone.property(&textbox("As scribed on the part"), "value"),
        "three do",
        "the text half typed"
    );
    phone.go("#/check/end-play");
    phone.fill(&textbox("Reading"), "0.0");
    phone.reload();
    assert_eq!(phone.property(&textbox("Reading"), "value"), "0.0", "the reading half typed");
}
