//! The whole browser is ended with SIGKILL just after it said "Written".

use pitleaf_tests::{Browser, Phone, Profile, Server, button, textbox};

#[test]
fn what_was_written_is_there_after_the_browser_was_killed_ten_times() {
    let server = Server::start();
    let mut profile = Profile::fresh();
    for run in 0..10 {
        let phone = Browser::open_on(Phone::USUAL, profile, server.url());
        if run == 0 {
            phone.open_build("Merlin");
        }
        phone.go("#/book");
        for earlier in 0..run {
            phone.until_says(&format!("note of run {earlier}"));
        }
        let note = format!("note of run {run}");
        phone.fill(&textbox("Note"), &note);
        let tree = phone.tree();
        phone.tap(&button("Write down"));
        phone.until_notice("Written");
        tree.kill();
        profile = phone.kill();
    }
    let phone = Browser::open_on(Phone::USUAL, profile, server.url());
    phone.go("#/book");
    for run in 0..10 {
        phone.until_says(&format!("note of run {run}"));
    }
}
