//! Anything at all as a file: never a panic, never a part of it.
//!
//! A few hundred cases in the ordinary run. The long mode takes as many as the environment says:
//! `PITLEAF_FUZZ_CASES=1000000 cargo test --release -p pitleaf-core --test book fuzz`.

use super::everywhere::{full, show};
use super::file::sample;
use super::order::folded;
use super::{entry, figure, opened};
use pitleaf_core::book::{Entry, coming, csv, file};
use proptest::prelude::*;
use proptest::sample::{Index, select};
use serde_json::Value;

const SHORT: u32 = 512;

/// `share`: one case of so many, where each takes longer.
fn config(share: u32) -> ProptestConfig {
    let cases = match std::env::var("PITLEAF_FUZZ_CASES") {
        Ok(cases) => cases.parse().expect("PITLEAF_FUZZ_CASES is a number of cases"),
        Err(_) => SHORT,
    };
    ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(cases / share) }
}

fn valid() -> String {
    file::write(&folded(&sample()))
}

/// A change to a text's bytes.
#[derive(Clone, Debug)]
enum Change {
    Flip(Index, u8),
    Insert(Index, Vec<u8>),
    Remove(Index, u8),
    Repeat(Index, u8),
    Cut(Index),
}

impl Change {
    fn make(&self, bytes: &mut Vec<u8>) {
        let (Self::Flip(at, _)
        | Self::Insert(at, _)
        | Self::Remove(at, _)
        | Self::Repeat(at, _)
        | Self::Cut(at)) = self;
        if bytes.is_empty() {
            return;
        }
        let at = at.index(bytes.len());
        let until = |length: u8| bytes.len().min(at + usize::from(length));
        match self {
            Self::Flip(_, bit) => bytes[at] ^= 1 << bit,
            Self::Insert(_, piece) => drop(bytes.splice(at..at, piece.iter().copied())),
            Self::Remove(_, length) => drop(bytes.drain(at..until(*length))),
            Self::Repeat(_, length) => {
                let piece = bytes[at..until(*length)].to_vec();
                bytes.splice(at..at, piece);
            }
            Self::Cut(_) => bytes.truncate(at),
        }
    }
}

fn changes() -> impl Strategy<Value = Vec<Change>> {
    let at = any::<Index>;
    let one = prop_oneof![
        (at(), 0_u8..8).prop_map(|(at, bit)| Change::Flip(at, bit)),
        (at(), pieces(3)).prop_map(|(at, piece)| Change::Insert(at, piece.into_bytes())),
        (at(), prop::collection::vec(any::<u8>(), 1..5))
            .prop_map(|(at, piece)| Change::Insert(at, piece)),
        (at(), 1_u8..).prop_map(|(at, length)| Change::Remove(at, length)),
        (at(), 1_u8..).prop_map(|(at, length)| Change::Repeat(at, length)),
        at().prop_map(Change::Cut),
    ];
    prop::collection::vec(one, 1..4)
}

/// Bits of JSON and of our files, strung together.
fn pieces(most: usize) -> impl Strategy<Value = String> {
    let piece = select(vec![
        "{",
        "}",
        "[",
        "]",
        ",",
        ":",
        "\"",
        "\\",
        "\\ud800",
        "null",
        "true",
        "0",
        "-1",
        "1e999",
        "18446744073709551616",
        "\n",
        "\u{feff}",
        "\"file\":",
        "\"pitleaf book\"",
        "\"format\":",
        "1",
        "2",
        "\"entries\":",
        "\"id\":",
        "\"x\"",
        "\"build\":",
        "\"order\":",
        "\"at\":",
        "\"fact\":",
        "{\"note\":{\"words\":\"dry\"}}",
        "\"figure\"",
        "\"unit\":\"in\"",
        "{\"file\":\"pitleaf book\",\"format\":1,\"entries\":[",
        "{\"format\":1,\"id\":\"x\",\"build\":\"k\",\"order\":2,\"at\":0,\"fact\":{\"reopened\":{}}}",
    ]);
    prop::collection::vec(piece, 0..=most).prop_map(|pieces| pieces.concat())
}

/// A value in place of one in a sound file.
fn values() -> impl Strategy<Value = Value> {
    let text = select(vec![
        "",
        " ",
        "=1+1",
        "1F-AB",
        "0 mm",
        "-1 mm",
        "1e9 mm",
        "9 psi",
        "1 °",
        "½ in",
        "kestrel",
        "e2",
        "99999999999999999999999 mm",
        "100000 mm",
        "0.000001 in",
        "compression-fi",
        "side-seal-gap-na",
        "2F-CA",
        "<script>",
        "\0",
        "mm",
        "psi",
        "feeler-leaf",
        "any",
    ]);
    prop_oneof![
        Just(Value::Null),
        any::<bool>().prop_map(Value::from),
        any::<u64>().prop_map(Value::from),
        any::<i64>().prop_map(Value::from),
        (0_u8..4).prop_map(Value::from),
        Just(Value::from(u64::MAX)),
        any::<f64>().prop_map(Value::from),
        text.prop_map(Value::from),
        any::<String>().prop_map(Value::from),
        Just(Value::from(Vec::<Value>::new())),
        Just(serde_json::json!({})),
        (1_usize..200)
            .prop_map(|depth| (0..depth).fold(Value::Null, |value, _| vec![value].into())),
    ]
}

/// Every value within a value, itself last.
fn count(value: &Value) -> usize {
    1 + match value {
        Value::Array(values) => values.iter().map(count).sum(),
        Value::Object(values) => values.values().map(count).sum(),
        _ => 0,
    }
}

/// Puts a value in the place of the one that comes after `left` others.
fn put(value: &mut Value, left: &mut usize, new: &Value) {
    match value {
        Value::Array(values) => values.iter_mut().for_each(|value| put(value, left, new)),
        Value::Object(values) => values.values_mut().for_each(|value| put(value, left, new)),
        _ => {}
    }
    if *left == 0 {
        *value = new.clone();
    }
    *left = left.wrapping_sub(1);
}

fn revalued(entries: &[Entry]) -> impl Strategy<Value = String> + use<> {
    let sound = file::write(&folded(entries));
    let sound: Value = serde_json::from_str(&sound).expect("a sample that can be written");
    prop::collection::vec((any::<Index>(), values()), 1..3).prop_map(move |changes| {
        let mut value = sound.clone();
        for (at, new) in changes {
            let mut left = at.index(count(&value));
            put(&mut value, &mut left, &new);
        }
        value.to_string()
    })
}

fn nested() -> impl Strategy<Value = String> {
    let around = select(vec![("[", "]"), ("{\"a\":", "}"), ("{\"fact\":[", "]}")]);
    let place = select(vec!["1", "\"dry\"", "\"kestrel\"", "[", "{", "null"]);
    (around, 0_usize..400, 0_usize..3, place).prop_map(|((open, close), depth, less, place)| {
        let nested = format!("{}0{}", open.repeat(depth), close.repeat(depth.saturating_sub(less)));
        valid().replacen(place, &nested, 1)
    })
}

fn files() -> impl Strategy<Value = Vec<u8>> {
    let valid = valid().into_bytes();
    prop_oneof![
        1 => prop::collection::vec(any::<u8>(), 0..300),
        2 => pieces(40).prop_map(String::into_bytes),
        3 => changes().prop_map(move |changes| {
            let mut bytes = valid.clone();
            changes.iter().for_each(|change| change.make(&mut bytes));
            bytes
        }),
        3 => revalued(&sample()).prop_map(String::into_bytes),
        1 => nested().prop_map(String::into_bytes),
    ]
}

/// How many entries a file holds by a second reading; none where that one gives up (on depth, or on
/// a number beyond every float) though the entries can be read.
fn held(text: &str) -> Option<usize> {
    Some(serde_json::from_str::<Value>(text).ok()?.get("entries")?.as_array()?.len())
}

proptest! {
    #![proptest_config(config(1))]

    #[test]
    fn all_of_a_file_or_nothing(bytes in files()) {
        // A browser reads a file's text in this way.
        let text = String::from_utf8_lossy(&bytes);
        match file::read(&text) {
            Err(fault) => {
                let sentence = fault.to_string();
                prop_assert!(sentence.starts_with("Nothing taken in: ") && sentence.ends_with('.'), "{}", sentence);
            }
            Ok(entries) => {
                if let Some(held) = held(&text) {
                    prop_assert_eq!(entries.len(), held);
                }
                let mut book = folded(&[opened(), entry("e2", 2, figure("0.0030"))]);
                let (had, coming) = (book.len(), coming(&book, entries.clone()));
                for entry in &coming.new {
                    prop_assert!(book.take(entry.clone()));
                }
                prop_assert_eq!(book.len(), had + coming.new.len());
                prop_assert!(entries.iter().all(|entry| book.entry(&entry.id).is_some()));

                // What came in can be shown, saved again and read again.
                let sheet = book.sheet();
                for entry in book.entries() {
                    std::hint::black_box(entry.words(&sheet));
                }
                prop_assert!(csv::write(&book).ends_with("\r\n"));
                let again = file::read(&file::write(&book));
                let all: Vec<_> = book.entries().cloned().collect();
                prop_assert_eq!(again, Ok(all));
            }
        }
    }
}

proptest! {
    #![proptest_config(config(16))]

    /// A sound file of every kind of fact with a value or two put wrong: what is taken in all the same can be
    /// shown on every screen and printed.
    #[test]
    fn what_is_taken_in_can_be_shown_everywhere(text in revalued(&full())) {
        if let Ok(entries) = file::read(&text) {
            show(&folded(&entries));
        }
    }
}
