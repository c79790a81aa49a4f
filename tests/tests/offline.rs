//! The server is gone: everything goes on.

use pitleaf_tests::{Browser, Server, button, link, textbox};
use serde_json::json;

/// The page was opened once, and everything it needs is on the device.
fn opened_once(server: &Server) -> Browser {
    let phone = Browser::open(server.url());
    phone.until("everything is on the device", |phone| {
        phone.run("return document.documentElement.dataset.offline ?? ''", &[]) == json!("ready")
    });
    phone
}

#[test]
fn with_the_server_dead_a_check_a_conversion_and_a_mark_go_on() {
    let mut server = Server::start();
    let phone = opened_once(&server);
    phone.open_build("Merlin");
    server.kill();
    phone.reload();

    phone.tap(&link("Side seal to corner seal, naturally aspirated").starting());
    phone.tap_keys(&["2", "and a half"]);
    phone.until_verdict("Meets");
    phone.write_on("1F-AB");
    phone.until_notice("Written 2½ thou on 1F-AB: meets");

    phone.tap_screen("Convert");
    phone.fill(&textbox("Figure"), "0.0025 in");
    phone.until_says("0.0635");

    phone.go("#/mark/2R-CA");
    phone.fill(&textbox("As scribed on the part"), "two dots and a short line");
    phone.tap(&button("Write down"));
    phone.until_notice("Written mark of 2R-CA: two dots and a short line");

    phone.reload();
    phone.until_says("two dots and a short line");
    phone.tap_screen("Bench");
    phone.until_says("2½ thou");
}
