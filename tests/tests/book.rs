//! The book's pages: history, signing off, carrying it to another phone, and the promise to keep it.

use pitleaf_tests::{Browser, Server, button, link, list, textbox};
use serde_json::json;
use std::path::{Path, PathBuf};

fn gap(phone: &Browser, keys: &[&str], said: &str) {
    phone.go("#/check/side-seal-gap-na/1F-AB");
    phone.tap_keys(keys);
    phone.tap(&button("Write down"));
    phone.until_notice(&format!("Written {said}"));
}

fn mark(phone: &Browser, words: &str) {
    phone.go("#/mark/1F-AB");
    phone.fill(&textbox("As scribed on the part"), words);
    phone.tap(&button("Write down"));
    phone.until_notice(&format!("Written mark of 1F-AB: {words}"));
}

#[test]
fn a_figure_shows_every_value_it_ever_had_and_a_withdrawn_one_stays() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    gap(&phone, &["1"], "1 thou on 1F-AB");
    gap(&phone, &["2"], "2 thou on 1F-AB");
    gap(&phone, &["3"], "3 thou on 1F-AB");
    phone.go("#/book");
    phone.tap(&link("3 thou").starting());
    let history = phone.until_in(&list("History"), "1 thou");
    let at = |words: &str| history.find(words).unwrap_or_else(|| panic!("{words} in {history}"));
    assert!(at("3 thou") < at("2 thou") && at("2 thou") < at("1 thou"), "the latest first");
    assert!(!history.contains("withdrawn"), "{history}");

    phone.tap(&button("Withdraw"));
    phone.until_says("it no longer counts, and stays in the book");
    phone.until_in(&list("History"), "withdrawn");
    phone.go("#/seals/1F");
    let slots = phone.until_in(&list("Slots of this face"), "2 thou");
    assert!(!slots.contains("3 thou"), "the value before holds again: {slots}");
    assert_eq!(phone.entries(), 5, "opening, three figures, a withdrawal: nothing is taken away");
}

#[test]
fn a_build_signed_off_is_read_only_until_it_is_reopened() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    mark(&phone, "one dot");
    phone.go("#/book");
    phone.fill(&textbox("By whom, or why it is opened again"), "Ada at the bench");
    phone.tap(&button("Sign the build off"));
    phone.until_notice("Written the build is signed off");
    let count = phone.entries();

    phone.go("#/mark/1F-AB");
    phone.fill(&textbox("As scribed on the part"), "two dots");
    phone.tap(&button("Write down"));
    phone.until_notice("This build is signed off, so nothing was written.");
    assert_eq!(phone.property(&textbox("As scribed on the part"), "value"), "two dots", "typed");
    assert_eq!(phone.entries(), count, "nothing was written");

    phone.go("#/book");
    phone.fill(&textbox("By whom, or why it is opened again"), "a seal had turned");
    phone.tap(&button("Open it again"));
    phone.until_notice("Written the build is open again");
    phone.until_in(&list("Entries"), "a seal had turned");
    mark(&phone, "two dots");
    assert_eq!(phone.entries(), count + 2, "the reopening is itself an entry");
}

/// The one file in a folder, once it is whole.
fn file_in(phone: &Browser, folder: &Path) -> PathBuf {
    phone.until_some("the file is there", |_| {
        let file = std::fs::read_dir(folder).expect("the folder").flatten().next()?.path();
        let text = std::fs::read_to_string(&file).ok()?;
        (file.extension()? == "json" && text.trim_end().ends_with("]}")).then_some(file)
    })
}

#[test]
fn two_phones_join_their_books_and_see_what_both_said() {
    let server = Server::start();
    let folder = tempfile::tempdir().expect("a folder for files");
    let first = Browser::open(server.url());
    first.open_build("Merlin");
    mark(&first, "one dot");
    first.go("#/book");
    first.downloads_into(folder.path());
    first.tap(&button("Save as a file"));
    let file = file_in(&first, folder.path());
    mark(&first, "a cross");

    let second = Browser::open(server.url());
    second.go("#/book");
    second.choose_file(&file);
    second.until_says("2 new");
    second.tap(&button("Take in 2"));
    second.until_notice("2 entries taken in");
    mark(&second, "two dots");
    second.go("#/book");
    let back = tempfile::tempdir().expect("a folder for files");
    second.downloads_into(back.path());
    second.tap(&button("Save as a file"));
    let file = file_in(&second, back.path());

    // Nothing is taken in before it is said.
    let count = first.entries();
    first.go("#/book");
    first.choose_file(&file);
    first.until_says("1 new");
    first.until_says("2 known already");
    let both = first.text(&list("Said differently"));
    assert!(both.contains("a cross") && both.contains("two dots"), "both are shown: {both}");
    first.tap(&button("Leave it"));
    assert_eq!(first.entries(), count, "left alone");

    first.go("#/book");
    first.choose_file(&file);
    first.tap(&button("Take in 1"));
    first.until_notice("1 entries taken in");
    let entries = first.text(&list("Entries"));
    for words in ["one dot", "a cross", "two dots"] {
        assert!(entries.contains(words), "{words} in {entries}");
    }
    // And once more: the same file again brings nothing.
    first.choose_file(&file);
    first.until_says("0 new");
    assert_eq!(first.entries(), count + 1, "once");
}

#[test]
fn the_browser_is_asked_once_to_keep_the_book_with_the_reason() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    let origin = server.url().trim_end_matches('/');
    phone.open_build("Merlin");
    phone.until_says("A phone that runs out of room may clear what pages keep");
    let permission = json!({ "origin": origin, "permissions": ["durableStorage"] });
    phone.devtools("Browser.grantPermissions", permission);
    phone.tap(&button("Keep the book on this phone"));
    phone.until_notice("The browser will not clear the book by itself.");
    phone.reload();
    assert!(!phone.shows(&button("Keep the book on this phone")), "asked once");
    phone.until_says("Carry it away");
    assert_eq!(
        phone.run_until_called("navigator.storage.persisted().then(arguments[0])", &[]),
        true,
        "the browser has promised"
    );
}
