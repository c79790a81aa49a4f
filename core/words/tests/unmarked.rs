//! No sentence forgotten: what reads like one in a source of the screens or of core is marked as a text, so that
//! the German build asks for its German.
//!
//! Marking is by hand (`tr!`, `#[translated]`); what nobody marked would stay English in silence.

use litrs::StringLit;
use proc_macro2::{Delimiter, Group, TokenStream, TokenTree};
use std::fs;
use std::path::{Path, PathBuf};

/// Words for whoever writes the program, or for a tool.
const NOT_SHOWN: [&str; 9] = [
    "expect",
    "panic",
    "unreachable",
    "assert",
    "assert_eq",
    "assert_ne",
    "debug_assert",
    "debug_assert_eq",
    "include_str",
];

fn top() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

fn sources(folder: &Path, found: &mut Vec<PathBuf>) {
    for entry in fs::read_dir(folder).expect("a folder of sources") {
        let path = entry.expect("an entry").path();
        if path.is_dir() {
            sources(&path, found);
        } else if path.extension().is_some_and(|extension| extension == "rs") {
            found.push(path);
        }
    }
}

/// Several words that end as a sentence does. Names, keys and units do not.
fn is_sentence(text: &str) -> bool {
    let words = text.split_whitespace().filter(|word| word.chars().any(char::is_alphabetic));
    words.count() > 2 && text.trim_end().ends_with(['.', '?', '!', '”'])
}

/// What stands before a group decides whether its texts are marked, or are none.
fn is_passed_over(before: &[TokenTree], group: &Group) -> bool {
    let name = |token: &TokenTree| match token {
        TokenTree::Ident(name) => Some(name.to_string()),
        _ => None,
    };
    let called = match before {
        // `#![doc = …]`, which a comment at the head of a file is.
        [.., TokenTree::Punct(hash), TokenTree::Punct(_)] if hash.as_char() == '#' => return true,
        [.., called, TokenTree::Punct(mark)] if mark.as_char() == '!' => name(called),
        [.., called] => name(called),
        [] => None,
    };
    let is_call = group.delimiter() == Delimiter::Parenthesis;
    is_call && called.is_some_and(|called| called == "tr" || NOT_SHOWN.contains(&called.as_str()))
}

/// `#[translated]`, and `#[cfg(test)]`, whose item is no part of the app.
fn passes_over_its_item(attribute: &Group) -> bool {
    let inside: Vec<String> =
        attribute.stream().into_iter().map(|token| token.to_string()).collect();
    let first = inside.first().map_or("", String::as_str);
    first == "translated" || first == "cfg" && inside.get(1).is_some_and(|of| of == "(test)")
}

fn unmarked(tokens: TokenStream, found: &mut Vec<String>) {
    let (mut before, mut in_marked_item): (Vec<TokenTree>, bool) = (Vec::new(), false);
    for token in tokens {
        match &token {
            TokenTree::Group(group) => {
                let is_attribute =
                    matches!(before.last(), Some(TokenTree::Punct(hash)) if hash.as_char() == '#');
                if is_attribute {
                    in_marked_item |= passes_over_its_item(group);
                } else if !in_marked_item && !is_passed_over(&before, group) {
                    unmarked(group.stream(), found);
                } else if in_marked_item && group.delimiter() == Delimiter::Brace {
                    in_marked_item = false;
                }
            }
            TokenTree::Punct(end) if end.as_char() == ';' => in_marked_item = false,
            TokenTree::Literal(literal) if !in_marked_item => {
                if let Ok(string) = StringLit::parse(literal.to_string())
                    && is_sentence(string.value())
                {
                    found.push(string.value().to_owned());
                }
            }
            _ => {}
        }
        before.push(token);
    }
}

fn unmarked_in(text: &str) -> Vec<String> {
    let mut found = Vec::new();
    unmarked(text.parse().expect("tokens of Rust"), &mut found);
    found
}

#[test]
fn every_sentence_of_a_source_is_marked() {
    let mut files = Vec::new();
    for folder in ["core/src", "app/src"] {
        sources(&top().join(folder), &mut files);
    }
    assert!(files.len() > 300, "{} sources", files.len());
    let found: Vec<(PathBuf, Vec<String>)> = files
        .into_iter()
        .map(|file| {
            let text = fs::read_to_string(&file).expect("a source");
            (file, unmarked_in(&text))
        })
        .filter(|(_, unmarked)| !unmarked.is_empty())
        .collect();
    assert_eq!(found, [], "mark them, and give their German");
}

#[test]
fn a_sentence_nobody_marked_is_found_and_a_marked_one_is_not() {
    let fault = r#"impl fmt::Display for Fault { MARK fn fmt(&self, f: F) -> R { f.write_str("Not written: the phone is full.") } }"#;
    let wanted = ["Not written: the phone is full."];
    assert_eq!(unmarked_in(&fault.replace("MARK", "")), wanted);
    assert!(unmarked_in(&fault.replace("MARK", "#[translated]")).is_empty());
    assert_eq!(
        unmarked_in(
            r#"#[translated] const A: &str = "One is marked."; const B: &str = "The next is not."; "#
        ),
        ["The next is not."]
    );
    assert!(
        unmarked_in(r#"fn a() { tr!("The file is empty."); b().expect("it is a file."); }"#)
            .is_empty()
    );
    assert_eq!(unmarked_in(r#"fn a() { say("The file is empty."); }"#), ["The file is empty."]);
    assert!(
        unmarked_in(
            r#"/// A comment is no text.
        fn a() {} #[cfg(test)] mod tests { const A: &str = "It is a test."; }"#
        )
        .is_empty()
    );
}
