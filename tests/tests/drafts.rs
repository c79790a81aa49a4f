//! What is typed and not yet written is there again, whatever was done in between.

use pitleaf_tests::answers::read;
use pitleaf_tests::{Browser, Server, button, link, textbox};

const SURVEY: &str = "#/faces/flatness/front";

/// Goes to a survey and types its first readings.
fn begin(phone: &Browser, readings: &[&str]) {
    phone.go(SURVEY);
    for reading in readings {
        read(phone, reading);
    }
}

#[test]
fn a_survey_half_read_and_a_sentence_half_written_outlast_a_reading_elsewhere() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    begin(&phone, &["0.013", "0.024", "0.031"]);
    phone.go("#/book");
    phone.fill(&textbox("Note"), "the dowel hole at the top is");
    phone.go("#/convert");
    phone.fill(&textbox("Figure"), "3 thou");
    phone.go("#/check/side-housing-warp");
    phone.fill(&textbox("Reading"), "0.03");
    phone.reload();

    phone.go(SURVEY);
    phone.until_says("4 of 24");
    phone.go("#/book");
    assert_eq!(phone.property(&textbox("Note"), "value"), "the dowel hole at the top is");
    phone.go("#/convert");
    assert_eq!(phone.property(&textbox("Figure"), "value"), "3 thou");
    phone.go("#/check/end-play");
    phone.fill(&textbox("Reading"), "0.05");
    phone.go("#/check/side-housing-warp");
    assert_eq!(phone.property(&textbox("Reading"), "value"), "", "an old reading is none");
}

#[test]
fn two_engines_have_a_survey_each_and_what_is_written_down_is_no_draft() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    begin(&phone, &["0.013", "0.024", "0.031"]);
    phone.open_build("Plover");
    begin(&phone, &["0.055"]);
    phone.until_says("2 of 24");
    phone.go("#/open");
    phone.tap(&link("Merlin").starting());
    phone.go(SURVEY);
    phone.until_says("4 of 24");

    phone.go("#/book");
    phone.fill(&textbox("Note"), "done");
    phone.tap(&button("Write down"));
    phone.until_notice("Written a note");
    phone.go("#/convert");
    phone.go("#/book");
    assert_eq!(phone.property(&textbox("Note"), "value"), "");
}
