//! Checking a reading against a limit, as the builder does it most.

use pitleaf_tests::{Browser, Server, button, link, textbox};

#[test]
fn a_verdict_takes_three_taps_from_the_bench() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    let _ = phone.taps();
    phone.tap(&link("Side seal to corner seal, naturally aspirated").starting());
    phone.tap(&button("2"));
    phone.tap(&button("and a half"));
    let verdict = phone.until_verdict("Meets");
    assert_eq!(phone.taps(), 3, "touches from the bench to the verdict");
    assert!(verdict.contains("above the lower"), "how far from the edges: {verdict}");
    assert_eq!(phone.property(&textbox("Reading"), "value"), "2½", "what was typed");
    let words = phone.words();
    for figure in ["0.0025 in", "0.0635 mm"] {
        assert!(
            words.contains(figure),
            "both unit systems at once: {figure} is missing in\n{words}"
        );
    }
    assert!(
        words.contains("ommon practice") || words.contains("From memory"),
        "its source:\n{words}"
    );
}
