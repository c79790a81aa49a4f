//! The first two minutes of someone who never saw the app.

use pitleaf_tests::{Browser, Phone, Profile, Server, button, heading, link, textbox};

/// What the line over the screen says.
fn line(phone: &Browser) -> String {
    let words = phone.run("return document.querySelector('.tour p')?.innerText ?? ''", &[]);
    words.as_str().expect("a text").to_owned()
}

fn starts(phone: &Browser) {
    phone.tap(&button("Two minutes with the demo engine"));
    phone.until_says("1 of 6: ");
}

#[test]
fn it_shows_the_demo_engine_s_real_screens_one_after_the_other() {
    let server = Server::start();
    for size in [Phone::USUAL, Phone::SMALL] {
        let phone = Browser::open_on(size, Profile::fresh(), server.url());
        starts(&phone);
        phone.picture(&format!("first-look-check-{}", size.width));
        // What the line says to do is done, by touches alone.
        for key in ["2", "and a half"] {
            phone.tap(&button(key));
        }
        phone.until_verdict("Meets");
        phone.picture(&format!("first-look-verdict-{}", size.width));
        phone.tap(&button("Write down"));
        phone.until_notice("Written 2½ thou on 1F-AB");
        phone.tap(&button("Next"));
        phone.until_says("2 of 6: ");
        phone.until_says("2½ thou");
        phone.tap(&button("Next"));
        phone.until_says("3 of 6: ");
        phone.picture(&format!("first-look-slots-{}", size.width));
        phone.tap(&link("1F-AB").starting());
        phone.until("the slot", |phone| phone.place() == "#/slot/1F-AB");
        assert!(line(&phone).starts_with("3 of 6: "), "the line stays while one looks around");
        phone.tap(&button("Next"));
        phone.until_says("4 of 6: ");
        phone.tap(&button("+1°"));
        phone.tap(&button("Next"));
        phone.until_says("5 of 6: ");
        phone.until_says("What was I doing?");
        // Interrupted: it goes on from there.
        phone.reload();
        phone.until_says("5 of 6: ");
        phone.tap(&button("Next"));
        phone.until_says("6 of 6: ");
        phone.fill(&textbox("Name"), "Merlin");
        phone.tap(&button("End"));
        phone.until("the line is gone", |phone| line(phone).is_empty());
        phone.tap(&button("Open"));
        phone.until_notice("Written a new build: Merlin");
        phone.go("#/");
        assert_eq!(phone.text(&heading("Merlin")), "Merlin", "the own engine is on the bench");
    }
}

#[test]
fn it_is_ended_at_any_stop_and_stays_ended() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    starts(&phone);
    phone.tap(&button("Next"));
    phone.until_says("2 of 6: ");
    phone.tap(&button("End"));
    phone.until("the line is gone", |phone| line(phone).is_empty());
    assert_eq!(phone.place(), "#/book", "one stays where one was");
    phone.reload();
    assert_eq!(line(&phone), "", "after the app was started again");
}
