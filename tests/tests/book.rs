//! The book's pages: history, and signing off.

use pitleaf_tests::{Browser, Server, button, link, list, status, textbox};

fn gap(phone: &Browser, keys: &[&str], said: &str) {
    phone.go("#/check/side-seal-gap-na/1F-AB");
    phone.tap_keys(keys);
    phone.tap(&button("Write down"));
    phone.until_notice(&format!("Written {said}"));
}

fn mark(phone: &Browser, words: &str) {
    phone.go("#/mark/1F-AB");
    phone.fill(&textbox("As scribed on the part"), words);
    phone.tap(&button("Write down"));
    phone.until_notice(&format!("Written mark of 1F-AB: {words}"));
}

#[test]
fn a_figure_shows_every_value_it_ever_had_and_a_withdrawn_one_stays() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    gap(&phone, &["1"], "1 thou on 1F-AB");
    gap(&phone, &["2"], "2 thou on 1F-AB");
    gap(&phone, &["3"], "3 thou on 1F-AB");
    phone.go("#/book");
    phone.tap(&link("3 thou").starting());
    let history = phone.until_in(&list("History"), "1 thou");
    let at = |words: &str| history.find(words).unwrap_or_else(|| panic!("{words} in {history}"));
    assert!(at("3 thou") < at("2 thou") && at("2 thou") < at("1 thou"), "the latest first");
    assert!(!history.contains("withdrawn"), "{history}");

    phone.tap(&button("Withdraw"));
    phone.until_says("it no longer counts, and stays in the book");
    phone.until_in(&list("History"), "withdrawn");
    phone.go("#/seals/1F");
    let slots = phone.until_in(&list("Slots of this face"), "2 thou");
    assert!(!slots.contains("3 thou"), "the value before holds again: {slots}");
    assert_eq!(phone.entries(), 5, "opening, three figures, a withdrawal: nothing is taken away");
}

#[test]
fn a_build_signed_off_is_read_only_until_it_is_reopened() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    mark(&phone, "one dot");
    phone.go("#/work/sign-off");
    phone.fill(&textbox("By whom"), "Ada at the bench");
    phone.fill(&textbox("Why over open points"), "only the marks were asked for");
    phone.tap(&button("Sign the build off"));
    phone.until_notice("Written the build is signed off");
    let count = phone.entries();

    phone.go("#/mark/1F-AB");
    phone.fill(&textbox("As scribed on the part"), "two dots");
    phone.tap(&button("Write down"));
    phone.until_notice("This build is signed off, so nothing was written.");
    assert_eq!(phone.property(&textbox("As scribed on the part"), "value"), "two dots", "typed");
    assert_eq!(phone.entries(), count, "nothing was written");

    phone.go("#/work/sign-off");
    phone.fill(&textbox("Why it is opened again"), "a seal had turned");
    phone.tap(&button("Open it again"));
    phone.until_notice("Written the build is open again");
    phone.go("#/book");
    phone.until_in(&list("Entries"), "a seal had turned");
    mark(&phone, "two dots");
    assert_eq!(phone.entries(), count + 2, "the reopening is itself an entry");
}

#[test]
fn a_reading_tells_its_verdict_and_is_put_right_from_its_page() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    gap(&phone, &["8"], "8 thou on 1F-AB");
    phone.go("#/book");
    phone.tap(&link("8 thou").starting());
    let verdict = phone.until_in(&status("Verdict"), "Does not meet");
    assert!(verdict.contains("5 thou over the upper limit"), "{verdict}");
    phone.until_says("Limit 1.5…3.0\u{a0}thou (0.0015…0.0030\u{a0}in, 0.0381…0.0762\u{a0}mm), read with: feeler leaf.");
    phone.until_says("Common practice, no published source");
    phone.tap(&link("Slot 1F-AB"));
    phone.until_says("rotor 1, front face");
    phone.go("#/book");
    phone.tap(&link("8 thou").starting());
    phone.tap(&link("Put it right"));
    phone.until("its check", |phone| phone.place().ends_with("/put-right"));
    assert_eq!(phone.property(&textbox("Reading"), "value"), "8", "as it was typed");
    phone.until_says("In place of 8 thou, which stays in the book.");
    phone.fill(&textbox("Reading"), "2");
    phone.tap(&button("Write down"));
    phone.until_notice("Written 2 thou on 1F-AB: meets, in place of 8 thou");
    phone.until_says("Put right: it no longer counts, and stays in the book.");
    phone.until_in(&list("Put right by"), "2 thou");
    phone.until_in(&list("History"), "put right by 2 thou");
    phone.go("#/book");
    let entries = phone.until_in(&list("Entries"), "put right by 2 thou");
    assert!(entries.contains("8 thou"), "it stays: {entries}");
    phone.go("#/seals/1F");
    let slots = phone.until_in(&list("Slots of this face"), "2 thou");
    assert!(!slots.contains("8 thou"), "and counts no more: {slots}");
    phone.go("#/work/sign-off");
    phone.until_says("Open steps");
    assert!(!phone.words().contains("To be decided"), "nor is it to be decided on");
}

/// Undone in one touch: the wrong figure counts again, the right one no more.
#[test]
fn a_figure_put_right_is_undone_with_what_it_replaced() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    gap(&phone, &["8"], "8 thou on 1F-AB");
    phone.go("#/book");
    phone.tap(&link("8 thou").starting());
    phone.tap(&link("Put it right"));
    phone.fill(&textbox("Reading"), "2");
    phone.tap(&button("Write down"));
    phone.until_notice("in place of 8 thou");
    phone.tap(&button("Undo"));
    phone.until_notice("Withdrawn; still in the book");
    phone.go("#/seals/1F");
    let slots = phone.until_in(&list("Slots of this face"), "8 thou");
    assert!(!slots.contains("2 thou"), "{slots}");
}
