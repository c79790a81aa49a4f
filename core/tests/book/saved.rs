//! The book as one file: its text, and what is refused of a file, with the sentence.

use super::file::sample;
use super::order::folded;
use super::{entry, figure, opened};
use pitleaf_core::book::file::{self, FileFault};
use pitleaf_core::book::written::Damage;
use pitleaf_core::book::{Book, Entry};
use pitleaf_core::kept;

const TINY: &str = r#"{"file":"pitleaf book","format":1,"entries":[
{"format":1,"id":"kestrel","build":"kestrel","order":1,"at":1800000001000,"fact":{"opened":{"name":"Kestrel","kind":"naturally-aspirated","rotors":2,"demo":true}}},
{"format":1,"id":"a","build":"kestrel","order":2,"at":1800000002000,"fact":{"figure":{"row":"side-seal-gap-na","place":"1F-AB","text":"0,0025","unit":"in","gauge":"feeler-leaf"}}}
]}
"#;

/// A file with these texts for entries.
fn of(entries: &[&str]) -> String {
    format!(r#"{{"file":"pitleaf book","format":1,"entries":[{}]}}"#, entries.join(","))
}

fn texts(entries: &[Entry]) -> Vec<String> {
    entries.iter().map(kept::write).collect()
}

#[track_caller]
fn refused(text: &str, sentence: &str) {
    let start: String = text.chars().take(80).collect();
    let fault = file::read(text).expect_err("not to be taken in");
    assert_eq!(fault.to_string(), sentence, "{start}");
}

const NOT_A_BOOK: &str =
    "Nothing taken in: this file is no book. Choose one saved by “Save as a file”.";
const TOO_LARGE: &str =
    "Nothing taken in: the file is larger than any book. Choose the one saved by “Save as a file”.";
const NEWER: &str =
    "Nothing taken in: a newer Pitleaf wrote this book. Bring this one up to date first.";
const SECOND_UNREADABLE: &str = "Nothing taken in: entry 2 of the file is sound, but not readable here. Save the file anew from its phone.";

#[test]
fn a_file_holds_one_entry_a_line_in_order() {
    let book = folded(&[entry("a", 2, figure("0,0025")), opened()]);
    assert_eq!(file::write(&book), TINY, "a person can read and compare it");
    let empty = file::write(&Book::default());
    assert_eq!(empty, "{\"file\":\"pitleaf book\",\"format\":1,\"entries\":[\n]}\n", "no entry");
    assert_eq!(file::read(&empty), Ok(vec![]), "and back");
}

#[test]
fn every_kind_of_entry_reads_back() {
    let text = file::write(&folded(&sample()));
    assert_eq!(file::read(&text), Ok(sample()), "entry for entry");
    assert_eq!(
        file::write(&folded(&file::read(&text).expect("a sample that can be written"))),
        text,
        "letter for letter"
    );
}

#[test]
fn a_file_laid_out_anew_is_the_same_file() {
    let value: serde_json::Value =
        serde_json::from_str(TINY).expect("a sample that can be written");
    let pretty = serde_json::to_string_pretty(&value).expect("a sample that can be written");
    assert_eq!(file::read(&pretty), file::read(TINY), "by an editor, its keys in other order");
    assert_eq!(file::read(TINY).expect("a sample that can be written").len(), 2, "two entries");
}

#[test]
fn markup_and_script_go_through_as_the_text_they_are() {
    for words in [
        "<script>alert(1)</script>",
        "\"><img src=x onerror=alert(1)>",
        "javascript:alert(1)",
        "</textarea><svg/onload=alert(1)>",
        "&lt;b&gt; \u{2028}\u{202e}\0",
        "{{constructor.constructor('alert(1)')()}}",
    ] {
        let book = folded(&[opened(), entry("a", 2, figure(words))]);
        let read = file::read(&file::write(&book)).expect("a sample that can be written");
        assert_eq!(read[1].fact, figure(words), "not a letter is lost or added");
    }
}

#[test]
fn what_is_no_book_is_refused() {
    for text in [
        "",
        " ",
        "null",
        "[]",
        "{}",
        "Kestrel, 0.0025",
        "\u{feff}",
        "\u{fffd}PNG\r\n\u{1a}\n",
        r#"{"file":"some other book","format":1,"entries":[]}"#,
        r#"{"file":"pitleaf book","format":1}"#,
        r#"{"file":"pitleaf book","format":-1,"entries":[]}"#,
        r#"{"file":"pitleaf book","format":1,"entries":{}}"#,
        r#"{"file":"pitleaf book","format":1,"entries":[],"entries":[]}"#,
        r#"{"file":"pitleaf book","format":1,"entries":[]} and more"#,
        r#"{"file":"some other book","format":2,"entries":[]}"#,
    ] {
        refused(text, NOT_A_BOOK);
    }
}

#[test]
fn a_file_that_was_cut_is_refused_wherever_it_was_cut() {
    let text = TINY.trim_end();
    for length in (0..text.len()).filter(|length| text.is_char_boundary(*length)) {
        refused(&text[..length], NOT_A_BOOK);
    }
}

#[test]
fn a_newer_book_is_refused_even_when_it_could_be_read() {
    refused(&TINY.replacen("\"format\":1", "\"format\":2", 1), NEWER);
    refused(r#"{"file":"pitleaf book","format":2,"entries":[{"blessed":true}]}"#, NEWER);
}

#[test]
fn one_bad_entry_and_nothing_is_taken_in() {
    let sound = texts(&sample());
    for (bad, sentence) in [
        (r#"{"format":1}"#, SECOND_UNREADABLE),
        ("null", SECOND_UNREADABLE),
        (
            r#"{"format":1,"id":"x","build":"k","order":1,"at":0,"fact":{"mark":{"slot":"9F-AB","mark":""}}}"#,
            SECOND_UNREADABLE,
        ),
        (
            r#"{"format":1,"id":"x","build":"k","order":1.5,"at":0,"fact":{"note":{"words":""}}}"#,
            SECOND_UNREADABLE,
        ),
        (
            r#"{"format":2}"#,
            "Nothing taken in: entry 2 of the file is written by a newer version; bring this one up to date to read it. Save the file anew from its phone.",
        ),
        (
            &sound[5].replacen(r#""lower":"0.04 mm""#, r#""lower":"9 psi""#, 1),
            "Nothing taken in: entry 2 of the file is a limit that can’t be used. A limit’s unit measures something else than the row. Change the unit. Put it right on its phone, then save the file anew.",
        ),
    ] {
        refused(&of(&[&sound[0], bad, &sound[1], &sound[2]]), sentence);
    }
    let last = of(&[&sound[0], &sound[1], &sound[2], "{}"]);
    assert_eq!(
        file::read(&last),
        Err(FileFault::Entry(4, Damage::Unreadable)),
        "counted from 1, and not the ones before it"
    );
}

#[test]
fn a_file_larger_than_any_book_is_refused_unread() {
    let blank = " ".repeat(file::MOST - TINY.len());
    let most = format!("{TINY}{blank}");
    assert_eq!(file::read(&most), file::read(TINY), "the largest is read");
    refused(&format!("{most} "), TOO_LARGE);
}

#[test]
fn twenty_megabytes_of_anything_else_are_refused() {
    let size = 20 << 20;
    for text in [
        "x".repeat(size),
        " ".repeat(size),
        "\0".repeat(size),
        format!("\"{}\"", "x".repeat(size)),
        format!("[{}0]", "0,".repeat(size / 2)),
        format!("{{\"file\":\"pitleaf book\",\"format\":1,\"entries\":[{}", "{},".repeat(size / 3)),
    ] {
        refused(&text, NOT_A_BOOK);
    }
    refused(
        &of(&["{},".repeat(size / 3).as_str(), "{}"]).replace(",,", ","),
        "Nothing taken in: entry 1 of the file is sound, but not readable here. Save the file anew from its phone.",
    );
}

#[test]
fn nesting_however_deep_is_refused() {
    let sound = texts(&[opened()]).remove(0);
    for depth in [100, 127, 128, 129, 1_000, 10_000_000] {
        for (open, close) in [("[", "]"), ("{\"a\":", "}")] {
            let depth = depth / open.len();
            let nested = format!("{}0{}", open.repeat(depth), close.repeat(depth));
            refused(&nested, NOT_A_BOOK);
            refused(&open.repeat(depth), NOT_A_BOOK);
            refused(&of(&[&sound, &nested]), SECOND_UNREADABLE);
            let fact =
                format!(r#"{{"format":1,"id":"x","build":"k","order":1,"at":0,"fact":{nested}}}"#);
            refused(&of(&[&sound, &fact]), SECOND_UNREADABLE);
        }
    }
}

#[test]
fn a_key_that_is_not_known_is_passed_over_however_deep() {
    let depth = 1_000_000;
    let nested = format!("{}{}", "[".repeat(depth), "]".repeat(depth));
    let text = TINY.replacen("\"format\":1,", &format!("\"format\":1,\"more\":{nested},"), 1);
    assert_eq!(file::read(&text), file::read(TINY), "beside the entries");
    let text = TINY.replacen("\"order\":1,", &format!("\"order\":1,\"more\":{nested},"), 1);
    assert_eq!(file::read(&text), file::read(TINY), "within an entry");
}
