//! What is typed and not yet written is there again, whatever was done in between.

use pitleaf_tests::answers::read;
use pitleaf_tests::{Browser, Server, button, textbox};

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
    phone.go("#/convert");
    phone.fill(&textbox("Figure"), "4 thou");
    phone.go("#/check/side-housing-warp");
    assert_eq!(phone.property(&textbox("Reading"), "value"), "0.03", "while converting");
    phone.reload();

    phone.go(SURVEY);
    phone.until_says("4 of 24");
    phone.go("#/book");
    assert_eq!(phone.property(&textbox("Note"), "value"), "the dowel hole at the top is");
    phone.go("#/convert");
    assert_eq!(phone.property(&textbox("Figure"), "value"), "4 thou");
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
    phone.tap(&button("Merlin").starting());
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

/// Half an inch survey, half a metric one: what was read keeps the unit it was read in.
#[test]
fn another_unit_in_mid_survey_leaves_what_was_read_before() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    begin(&phone, &["0.013", "0.024"]);
    phone.tap(&button("thou"));
    read(&phone, "2");
    phone.tap(&button("Place before"));
    assert_eq!(phone.property(&textbox("Reading"), "value"), "2", "in the unit set");
    phone.tap(&button("Place before"));
    assert_eq!(phone.property(&textbox("Reading"), "value"), "0.024 mm", "in its own");
}

#[test]
fn putting_in_one_gauge_leaves_what_is_typed_for_another() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    phone.go("#/gauges");
    let put = |phone: &Browser, place: usize, text: &str| {
        let script = "const field = document.querySelectorAll('main input')[arguments[0]];
                      field.focus(); field.select();";
        phone.run(script, &[place.into()]);
        phone.type_keys(&format!("\u{e017}{text}"));
    };
    put(&phone, 0, "0.02");
    put(&phone, 3, "0.007");
    phone.run("document.querySelectorAll('main form')[0].requestSubmit()", &[]);
    phone.until_notice("Written your");
    let values = "return [...document.querySelectorAll('main input')].map((field) => field.value)";
    let all = phone.run(values, &[]);
    assert_eq!(all[3], "0.007", "{all}");
    phone.reload();
    assert_eq!(phone.run(values, &[])[3], "0.007", "and after a reload");
}

/// What the wrench read at one engine is not written down at another.
#[test]
fn a_torque_typed_for_one_engine_is_not_there_at_another() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    for name in ["Merlin", "Plover"] {
        phone.open_build(name);
        phone.order_bolts();
        assert_eq!(phone.property(&textbox("Wrench read, if not that"), "value"), "", "{name}");
        phone.fill(&textbox("Wrench read, if not that"), "41");
    }
}

/// Begun before a build was open, gone on with after: the later text is the one that is kept.
#[test]
fn a_survey_begun_without_a_build_goes_on_in_the_one_opened() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    begin(&phone, &["0.013"]);
    phone.open_build("Merlin");
    begin(&phone, &["0.024", "0.031"]);
    phone.until_says("4 of 24");
    phone.reload();
    phone.go("#/convert");
    phone.go(SURVEY);
    phone.until_says("4 of 24");
}
