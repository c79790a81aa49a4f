//! A book large enough for copies that make opening quick, and what happens when they are damaged.

use pitleaf_tests::{Browser, Server, large_book, list, searchbox};

const COUNT: usize = 5000;

/// A phone with a large book, opened once, whose first records lie in a sheaf.
fn large(server: &Server) -> Browser {
    let phone = Browser::open(server.url());
    large_book::fill(&phone, COUNT);
    phone.go("#/book");
    phone.reload();
    phone.until("a sheaf is bound", |phone| large_book::sheaves(phone).len() == 1);
    phone
}

/// The whole book is there: its number of entries, the oldest note of the sheaf, and one behind it.
fn is_whole(phone: &Browser) {
    phone.until_says(&format!("{COUNT} entries in all"));
    for note in ["note 10", "note 4990"] {
        phone.fill(&searchbox("Search the book"), note);
        phone.until_in(&list("Entries"), note);
    }
}

#[test]
fn a_sheaf_stands_for_its_records() {
    let server = Server::start();
    let phone = large(&server);
    phone.reload();
    is_whole(&phone);
    // One record twice in place of the next, in the copy alone: only where the copy is read is one missing.
    large_book::change_sheaves(
        &phone,
        "const lines = text.split('\\n'); lines[20] = lines[19]; return lines.join('\\n');",
    );
    phone.reload();
    phone.until_says(&format!("{} entries in all", COUNT - 1));
}

/// After a change to the copies everything is there, and they are bound anew.
fn costs_nothing_but_time(change: &str) {
    let server = Server::start();
    let phone = large(&server);
    let sound = large_book::sheaves(&phone);
    large_book::change_sheaves(&phone, change);
    assert_ne!(large_book::sheaves(&phone), sound, "the sheaf is cut");
    phone.reload();
    is_whole(&phone);
    phone.until("the sheaf is bound anew", |phone| large_book::sheaves(phone) == sound);
    phone.reload();
    is_whole(&phone);
}

#[test]
fn a_sheaf_cut_within_a_record() {
    costs_nothing_but_time("return text.slice(0, text.length / 2);");
}

#[test]
fn a_sheaf_with_records_missing() {
    costs_nothing_but_time("return text.split('\\n').slice(0, 3000).join('\\n');");
}
