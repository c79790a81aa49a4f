//! Carrying the book to another phone, and the browser's promise to keep it.

use pitleaf_tests::{Browser, Server, button, list, textbox};
use serde_json::json;
use std::path::{Path, PathBuf};

fn mark(phone: &Browser, words: &str) {
    phone.go("#/mark/1F-AB");
    phone.fill(&textbox("As scribed on the part"), words);
    phone.tap(&button("Write down"));
    phone.until_notice(&format!("Written mark of 1F-AB: {words}"));
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
