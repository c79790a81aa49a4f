//! A route as a file: there and back, and what is refused, with its sentence.

use pitleaf_core::route::{MOST_BYTES, Routing, read, write};

fn of(steps: &str) -> String {
    format!(r#"{{"file":"pitleaf route","format":1,"steps":[{steps}]}}"#)
}

const A: &str = r#"{"id":"a","stage":"intake","kind":"do","words":"First","needs":[]}"#;

#[track_caller]
fn refused(text: &str, sentence: &str) {
    let start: String = text.chars().take(100).collect();
    let fault = read(text).expect_err("not to be taken in");
    assert_eq!(fault.to_string(), format!("Nothing taken in: {sentence}"), "{start}");
}

#[test]
fn the_usual_route_goes_out_and_comes_back() {
    let usual = Routing::usual();
    let text = write(&usual);
    assert!(
        text.starts_with(r#"{"file":"pitleaf route","format":1,"steps":[{"id":"describe""#),
        "{text}"
    );
    assert_eq!(read(&text), Ok(usual), "step for step");
}

#[test]
fn a_route_written_by_hand_is_read() {
    let text = of(&format!(
        r#"{A},{{"id":"b","stage":"running","kind":"hold","words":"True","needs":["a"],"each":"rotor"}}"#
    ));
    let routing = read(&text).expect("a route");
    assert_eq!(read(&write(&routing)), Ok(routing), "and back");
}

#[test]
fn a_broken_route_gets_its_sentence() {
    let save = "Choose one saved by “Save the route as a file”.";
    for text in
        ["", "{}", "[]", "route", r#"{"file":"pitleaf book","format":1,"steps":[]}"#, &of("3")]
    {
        refused(text, &format!("this file is no route. {save}"));
    }
    refused(&"x".repeat(MOST_BYTES + 1), &format!("the file is larger than any route. {save}"));
    let deep = "[".repeat(100_000);
    refused(&deep, &format!("the file has lists within lists, deeper than a route’s. {save}"));
    // Brackets in a text are no lists.
    let harmless = A.replace("First", r#"[[[[[[\"[["#);
    assert!(read(&of(&harmless)).is_ok(), "brackets in words");
    refused(
        &of(A).replace("\"format\":1", "\"format\":2"),
        "a newer Pitleaf wrote this route. Bring this one up to date first.",
    );
    for (from, to, sentence) in [
        ("intake", "lunch", "step 1: the stage “lunch” is not known here."),
        ("\"do\"", "\"wait\"", "step 1: the kind “wait” is not known here."),
        (
            "\"needs\":[]",
            "\"needs\":[],\"when\":\"rain\"",
            "step 1: the sort of build “rain” is not known here.",
        ),
        (
            "\"needs\":[]",
            "\"needs\":[],\"each\":\"cat\"",
            "step 1: the thing it is made for “cat” is not known here.",
        ),
        ("\"do\"", "\"hold\",\"by\":\"luck\"", "step 1: the answer “luck” is not known here."),
        ("\"do\"", "\"measure\"", "Step “a” is to measure: say which row of the sheet, by its id."),
        (
            "\"needs\":[]",
            "\"needs\":[\"b\"]",
            "“First” needs a step “b” that is not in the route. Add it, or take it out of the needs.",
        ),
        (
            "\"needs\":[]",
            "\"needs\":[\"a\"]",
            "These steps wait for each other, so none could ever be done: “First” → “First”. Take one of the needs out.",
        ),
        (
            "\"id\":\"a\"",
            "\"id\":\"../a\"",
            "“../a” is no id of a step: at most 40 small letters, digits and hyphens.",
        ),
    ] {
        refused(&of(A).replace(from, to), sentence);
    }
    refused(&of(&format!("{A},{A}")), "Two steps have the id “a”. Give one of them another.");
    refused(&of(""), "A route has at least one step.");
}
