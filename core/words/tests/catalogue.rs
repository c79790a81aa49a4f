//! The catalogue against the sources: no text they lack, no placeholder lost. (A text that the catalogue
//! lacks is an error of the German build.)

use litrs::StringLit;
use pitleaf_words::Catalogue;
use proc_macro2::{TokenStream, TokenTree};
use std::collections::HashSet;
use std::fs;
use std::path::{Path, PathBuf};

/// Rust sources with texts, and other files that mark theirs by `{{say: …}}`.
const SOURCES: [&str; 2] = ["core/src", "app/src"];
const MARKED: [&str; 3] =
    ["index.html", "public/manifest.webmanifest", "app/build/templates/start.js"];

fn top() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

fn literals(tokens: TokenStream, found: &mut HashSet<String>) {
    for token in tokens {
        match token {
            TokenTree::Group(group) => literals(group.stream(), found),
            TokenTree::Literal(literal) => {
                if let Ok(string) = StringLit::parse(literal.to_string()) {
                    found.insert(string.value().to_owned());
                }
            }
            TokenTree::Ident(_) | TokenTree::Punct(_) => {}
        }
    }
}

fn read_folder(folder: &Path, found: &mut HashSet<String>) {
    for entry in fs::read_dir(folder).expect("a folder of sources") {
        let path = entry.expect("an entry").path();
        if path.is_dir() {
            read_folder(&path, found);
        } else if path.extension().is_some_and(|extension| extension == "rs") {
            let text = fs::read_to_string(&path).expect("a source");
            literals(text.parse().expect("tokens of Rust"), found);
        }
    }
}

#[test]
fn every_text_of_the_catalogue_stands_in_a_source() {
    let mut found = HashSet::new();
    for folder in SOURCES {
        read_folder(&top().join(folder), &mut found);
    }
    for file in MARKED {
        let text = fs::read_to_string(top().join(file)).expect("a marked file");
        let marks = text.split("{{say: ").skip(1).filter_map(|piece| piece.split_once("}}"));
        found.extend(marks.map(|(english, _)| english.to_owned()));
    }
    let german = Catalogue::german();
    let all = german.texts().map(|(english, _)| english);
    let left: Vec<_> = all.filter(|english| !found.contains(*english)).collect();
    assert_eq!(left, Vec::<&str>::new(), "no source has these any more");
}

/// `{}`, `{name}`, `{text:.2}`, in the order of the alphabet.
fn placeholders(text: &str) -> Vec<&str> {
    let mut all: Vec<&str> = text
        .split('{')
        .skip(1)
        .filter_map(|piece| piece.split_once('}'))
        .map(|(inside, _)| inside)
        .collect();
    all.sort_unstable();
    all
}

/// A German text that forgets a figure would compile: what is named inside braces is used where it stands.
#[test]
fn every_german_text_has_the_placeholders_of_its_english() {
    for (english, text) in Catalogue::german().texts() {
        assert_eq!(placeholders(text), placeholders(english), "{english}");
    }
}
