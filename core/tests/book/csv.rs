//! Readings for a spreadsheet: quoted as RFC 4180 says, and nothing in them is taken for a formula.

use super::order::folded;
use super::{entry, figure, id, opened};
use pitleaf_core::book::{Entry, Fact, Figure, csv};
use proptest::prelude::*;

const HEAD: &str =
    "build,order,milliseconds since 1970,row,piece,reading,unit,in mm,verdict,withdrawn";

fn written(entries: &[Entry]) -> String {
    csv::write(&folded(entries))
}

fn at(place: &str, text: &str) -> Fact {
    let Fact::Figure(plain) = figure(text) else { panic!("a figure is a figure") };
    Fact::Figure(Figure { place: place.to_owned(), ..plain })
}

/// The records of a text by RFC 4180's grammar alone.
fn records(text: &str) -> Vec<Vec<String>> {
    let (mut records, mut record, mut cell) = (Vec::new(), Vec::new(), String::new());
    let mut letters = text.chars().peekable();
    let mut quoted = false;
    while let Some(letter) = letters.next() {
        match letter {
            '"' if quoted && letters.peek() == Some(&'"') => cell.extend(letters.next()),
            '"' => quoted = !quoted,
            ',' if !quoted => record.push(std::mem::take(&mut cell)),
            '\r' if !quoted => {
                assert_eq!(letters.next(), Some('\n'), "a record ends with both");
                record.push(std::mem::take(&mut cell));
                records.push(std::mem::take(&mut record));
            }
            letter => cell.push(letter),
        }
    }
    assert!(cell.is_empty() && record.is_empty() && !quoted, "the last record ends too");
    records
}

/// The piece and the reading as a spreadsheet gets them, and as they stand in the text.
fn cells(piece: &str, text: &str) -> (String, String) {
    let mut records = records(&written(&[opened(), entry("a", 2, at(piece, text))]));
    assert_eq!(records.len(), 2, "a head and a reading");
    let mut cells = records.remove(1);
    assert_eq!(cells.len(), 10, "as many cells as the head has");
    (cells.swap_remove(4), cells.swap_remove(5))
}

#[test]
fn a_table_of_readings() {
    let note = Fact::Note { about: String::new(), words: "dry".to_owned() };
    let text = written(&[
        opened(),
        entry("a", 2, at("1F-AB", "0.0025")),
        entry("b", 3, note),
        entry("c", 4, at("rotor 2, \"rear\"", "0,025")),
        entry("d", 5, Fact::Withdrawn { entry: id("c") }),
    ]);
    // 25.4 mm an inch: 0.0635 and 0.635.
    let wanted = [
        HEAD,
        r#"Kestrel,2,1800000002000,"Side seal to corner seal, naturally aspirated",1F-AB,0.0025,in,0.0635,Meets,"#,
        r#"Kestrel,4,1800000004000,"Side seal to corner seal, naturally aspirated","rotor 2, ""rear""","0,025",in,0.635,Does not meet,withdrawn"#,
        "",
    ]
    .join("\r\n");
    assert_eq!(text, wanted, "notes and withdrawals are no readings");
    assert_eq!(written(&[]), format!("{HEAD}\r\n"), "no reading: the head alone");
}

#[test]
fn commas_quotes_and_lines_stay_within_their_cell() {
    for (piece, quoted) in [
        ("1F-AB", "1F-AB"),
        ("front, rear", "\"front, rear\""),
        ("the \"blue\" one", "\"the \"\"blue\"\" one\""),
        ("one\nother", "\"one\nother\""),
        ("one\r\nother", "\"one\r\nother\""),
        ("\"", "\"\"\"\""),
        ("", ""),
    ] {
        let text = written(&[opened(), entry("a", 2, at(piece, "1"))]);
        assert!(text.contains(&format!(",{quoted},1,in,")), "{piece:?}: {text}");
        assert_eq!(cells(piece, "1").0, piece, "and back");
    }
}

#[test]
fn what_looks_like_a_formula_is_made_text() {
    for formula in [
        "=1+1",
        "=cmd|'/c calc'!A0",
        "=HYPERLINK(\"http://x\",\"y\")",
        "+1+1",
        "+cmd",
        "@x",
        "@SUM(1,1)",
        "-2+3",
        "-cmd",
        "--1",
        "\t=1+1",
        "\r=1+1",
        "\n=1+1",
        "-1=1",
        "-1 thou",
    ] {
        let guarded = format!("'{formula}");
        assert_eq!(cells(formula, formula), (guarded.clone(), guarded.clone()), "{formula:?}");
        let text = written(&[opened(), entry("a", 2, at(formula, "1"))]);
        let quoted = format!(",\"{}\",1,in,", guarded.replace('"', "\"\""));
        assert!(text.contains(&quoted), "{formula:?} is quoted too: {text}");
    }
}

#[test]
fn a_build_and_a_row_of_such_a_name_are_made_text_too() {
    let Fact::Figure(plain) = figure("1") else { panic!("a figure is a figure") };
    let strange = Fact::Figure(Figure { row: "=1+1".to_owned(), ..plain });
    let text = written(&[Entry { build: id("@x"), ..entry("a", 2, strange) }]);
    let cells = records(&text).remove(1);
    assert_eq!((&*cells[0], &*cells[3]), ("'@x", "'=1+1"), "{text}");
}

#[test]
fn negative_numbers_stay_numbers() {
    for number in ["-2", "-2.5", "-0.0025", "-0,0025", "-.5", "2.5"] {
        assert_eq!(cells("", number).1, number, "as typed");
    }
    let text = written(&[opened(), entry("a", 2, at("", "-0.1"))]);
    let cells = records(&text).remove(1);
    assert_eq!((&*cells[5], &*cells[7]), ("-0.1", "-2.54"), "{text}");
}

#[test]
fn formulas_are_harmless_within_a_cell() {
    for words in ["x=1+1", "1F-AB", "two + one", "a@b", " =1+1"] {
        assert_eq!(cells(words, "1").0, words, "as it is");
    }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(256) })]

    /// Whatever is written in a cell comes out of it, and no cell begins as a formula does.
    #[test]
    fn any_text_stays_in_its_cell(piece in "[-=+@\t\r\n,\"'; a1.é]{0,8}", text in any::<String>()) {
        let (got_piece, got_text) = cells(&piece, &text);
        for (got, put) in [(&got_piece, &piece), (&got_text, &text)] {
            prop_assert!(got == put || *got == format!("'{put}"), "{:?} came out as {:?}", put, got);
            let number = got.trim_start_matches('-').chars().all(|letter| letter.is_ascii_digit() || ".,".contains(letter));
            prop_assert!(number || !got.starts_with(['=', '+', '-', '@', '\t', '\r', '\n']), "{:?}", got);
        }
    }
}
