//! The plain tree against `serde_json`'s own, and what a type says of its fields, words and variants.

use pitleaf_kept::{self as kept, Fields, Json};
use pitleaf_kept::{kept_fields, kept_variants, kept_words};
use proptest::prelude::*;
use serde_json::{Value, json};

/// `serde_json`'s tree, as far as ours goes: no fractions, nothing below zero.
fn ours(value: &Value) -> Json<'static> {
    match value {
        Value::Null => Json::Null,
        Value::Bool(truth) => Json::Truth(*truth),
        Value::Number(number) => number.as_u64().map_or(Json::Foreign, Json::Whole),
        Value::String(text) => Json::Text(text.clone().into()),
        Value::Array(list) => Json::List(list.iter().map(ours).collect()),
        Value::Object(_) => unreachable!("fields are compared one by one"),
    }
}

fn values() -> impl Strategy<Value = Value> {
    let plain = prop_oneof![
        Just(Value::Null),
        any::<bool>().prop_map(Value::from),
        any::<u64>().prop_map(Value::from),
        (i64::MIN..0).prop_map(Value::from),
        (-1e9..1e9_f64).prop_map(Value::from),
        any::<String>().prop_map(Value::from),
    ];
    plain.prop_recursive(4, 32, 6, |inner| prop::collection::vec(inner, 0..6).prop_map(Value::from))
}

proptest! {
    #[test]
    fn a_tree_is_read_as_another_library_reads_it(value in values(), name in any::<String>()) {
        let text = json!({ (name.as_str()): value }).to_string();
        let tree = Json::read(&text).expect("JSON");
        prop_assert_eq!(tree.fields().expect("fields").at(&name), &ours(&value));
    }

    /// Whatever is no JSON to `serde_json` is none to us, and never a panic.
    #[test]
    fn what_is_no_json_is_refused(text in "[\\[\\]{}\",:0-9a-z\\\\ .-]{0,24}") {
        let theirs = serde_json::from_str::<serde::de::IgnoredAny>(&text).is_ok();
        prop_assert_eq!(Json::read(&text).is_ok(), theirs, "{}", text);
    }
}

/// Nothing that is kept is so deep; it is passed over, not followed.
#[test]
fn what_lies_too_deep_is_foreign() {
    let deep = |depth: usize| format!("{}1{}", "[".repeat(depth), "]".repeat(depth));
    let innermost = |text: &str| {
        let tree = Json::read(text).expect("JSON");
        let mut at = &tree;
        while let Json::List(list) = at {
            at = &list[0];
        }
        format!("{at:?}")
    };
    assert_eq!(innermost(&deep(10)), "Whole(1)");
    assert_eq!(innermost(&deep(100)), "Foreign");
}

#[test]
fn of_a_name_that_stands_twice_neither_holds() {
    let tree = Json::read(r#"{"a":1,"b":2,"a":3}"#).expect("JSON");
    let fields: &Fields = tree.fields().expect("fields");
    assert_eq!(fields.at("a"), &Json::Foreign);
    assert_eq!(fields.at("b"), &Json::Whole(2));
    assert_eq!(fields.at("c"), &Json::Missing);
}

#[derive(Debug, PartialEq)]
struct Gap {
    text: String,
    place: String,
    times: u8,
    demo: bool,
}

kept_fields!(Gap { text, place = "where": or_usual, times, demo: left_out });

#[derive(Clone, Copy, Debug, PartialEq)]
enum Side {
    Front,
    Rear,
}

kept_words!(Side { Front = "front", Rear = "rear" });

#[derive(Debug, PartialEq)]
enum Said {
    Nothing,
    Side(Side),
    Both { one: Side, other: Option<u16> },
}

kept_variants!(Said {
    "nothing" = Nothing,
    "side" = Side(inside),
    "both" = Both { one, other: or_usual },
});

#[test]
fn fields_are_written_in_order_and_read_back() {
    let mut gap = Gap { text: "2½".into(), place: "1F-AB".into(), times: 3, demo: false };
    let text = kept::write(&gap);
    assert_eq!(text, r#"{"text":"2½","where":"1F-AB","times":3}"#, "false is left out");
    assert_eq!(kept::read::<Gap>(&text).as_ref(), Ok(&gap));
    gap.demo = true;
    let text = kept::write(&gap);
    assert!(text.ends_with(r#""demo":true}"#), "{text}");
    assert_eq!(kept::read::<Gap>(&text).as_ref(), Ok(&gap));
    gap = Gap { text: "2".into(), place: String::new(), times: 1, demo: false };
    assert_eq!(kept::read(r#"{"new":[1],"times":1,"text":"2"}"#), Ok(gap), "older, newer, turned");
}

#[test]
fn what_is_missing_or_of_another_kind_is_said() {
    for (text, why) in [
        (r#"{"times":1}"#, "missing where a text belongs"),
        (r#"{"text":1,"times":1}"#, "something else where a text belongs"),
        (r#"{"text":"2","times":256}"#, "something else where a smaller whole number belongs"),
        (r#"{"text":"2","times":-1}"#, "something else where a smaller whole number belongs"),
        (
            r#"{"text":"2","times":1,"times":1}"#,
            "something else where a smaller whole number belongs",
        ),
        (r#"{"text":"2","times":1,"demo":0}"#, "something else where true or false belongs"),
        ("[]", "something else where fields belongs"),
        ("{", "no JSON"),
    ] {
        let refused = kept::read::<Gap>(text).expect_err(text);
        assert_eq!(refused.to_string(), why, "{text}");
    }
}

#[test]
fn words_and_variants_are_told_by_their_names() {
    for (said, text) in [
        (Said::Nothing, r#""nothing""#),
        (Said::Side(Side::Rear), r#"{"side":"rear"}"#),
        (Said::Both { one: Side::Front, other: Some(7) }, r#"{"both":{"one":"front","other":7}}"#),
        (Said::Both { one: Side::Front, other: None }, r#"{"both":{"one":"front","other":null}}"#),
    ] {
        assert_eq!(kept::write(&said), text);
        assert_eq!(kept::read::<Said>(text), Ok(said), "{text}");
    }
    let refused = kept::read::<Said>(r#"{"side":"left"}"#).expect_err("no such word");
    assert_eq!(refused.to_string(), "unknown variant `left`");
    let refused = kept::read::<Said>(r#"{"sung":{}}"#).expect_err("no such variant");
    assert_eq!(refused.to_string(), "unknown variant `sung`");
    kept::read::<Said>(r#"{"side":"rear","both":{}}"#).expect_err("two at once");
}
