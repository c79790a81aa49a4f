//! Two tabs on one book.

use pitleaf_tests::{Browser, Server, button, list, textbox};
use std::time::{Duration, Instant};

fn note(phone: &Browser, words: &str) {
    phone.fill(&textbox("Note"), words);
    phone.tap(&button("Write down"));
    phone.until_notice("Written a note");
}

#[test]
fn each_tab_sees_the_others_entries_within_a_second_and_both_are_kept() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    phone.go("#/book");
    phone.open_tab("#/book");
    let tabs = phone.tabs();
    for turn in 0..4 {
        let words = format!("note {turn}");
        phone.look_at(&tabs[turn % 2]);
        note(&phone, &words);
        let written = Instant::now();
        phone.look_at(&tabs[(turn + 1) % 2]);
        phone.until_in(&list("Entries"), &words);
        let took = written.elapsed();
        assert!(took < Duration::from_secs(1), "{words} was seen after {took:?}");
    }
    for tab in &tabs {
        phone.look_at(tab);
        phone.reload();
        let entries = phone.text(&list("Entries"));
        for turn in 0..4 {
            assert!(entries.contains(&format!("note {turn}")), "note {turn} in {entries}");
        }
    }
}

/// Both write at the same time, many times, without waiting for each other.
#[test]
fn two_tabs_that_write_at_once_both_keep_all() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    phone.go("#/book");
    phone.open_tab("#/book");
    for (tab, name) in phone.tabs().into_iter().zip(["left", "right"]) {
        phone.look_at(&tab);
        // Written by the page itself, so that the driver doesn't put them in a row.
        phone.run(
            "const [name] = arguments;
             const form = document.querySelector('form.inline');
             const write = (words) => {
                 form.querySelector('input').value = words;
                 form.querySelector('input').dispatchEvent(new Event('input', { bubbles: true }));
                 form.requestSubmit();
             };
             window.pressed = 0;
             const again = setInterval(() => {
                 write(`${name} ${++window.pressed}`);
                 if (window.pressed === 20) clearInterval(again);
             }, 20);",
            &[name.into()],
        );
    }
    for tab in phone.tabs() {
        phone.look_at(&tab);
        phone.until("all was pressed", |phone| {
            phone.run("return window.pressed", &[]) == serde_json::json!(20)
        });
    }
    phone.until("all entries are there", |phone| {
        phone.records().as_object().is_some_and(|records| records.len() == 41)
    });
    assert_eq!(phone.entries(), 41, "the opening and twenty entries of each tab");
}
