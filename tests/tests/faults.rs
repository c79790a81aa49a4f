//! What a shop does to a phone's storage, and what the book makes of it.

use pitleaf_tests::{Browser, Engine, Phone, Profile, Server, button, link, list, textbox};
use serde_json::{Value, json};

fn note(phone: &Browser, words: &str) {
    phone.go("#/book");
    phone.fill(&textbox("Note"), words);
    phone.tap(&button("Write down"));
    phone.until_notice("Written a note");
    phone.until_in(&list("Entries"), words);
}

/// A build with three notes.
fn three_notes(phone: &Browser) {
    phone.open_build("Merlin");
    for words in ["first note", "second note", "third note"] {
        note(phone, words);
    }
}

/// Changes records behind the app's back: `change(store, key, record)` is asked for each of them.
fn tamper(phone: &Browser, change: &str) {
    let script = "const done = arguments[arguments.length - 1];
        const change = new Function('store', 'key', 'record', arguments[0]);
        const open = indexedDB.open('pitleaf');
        open.onsuccess = () => {
            const transaction = open.result.transaction('entries', 'readwrite');
            const store = transaction.objectStore('entries');
            store.openCursor().onsuccess = ({ target: { result: cursor } }) => {
                if (!cursor) return;
                if (typeof cursor.value === 'string') change(store, cursor.key, cursor.value);
                cursor.continue();
            };
            transaction.oncomplete = () => { open.result.close(); done('done'); };
            transaction.onabort = () => done(String(transaction.error));
        };";
    assert_eq!(
        phone.run_until_called(script, &[json!(change)]),
        "done",
        "the records were changed"
    );
}

/// A record of an entry that a newer version might have written.
fn of_a_newer_version() -> String {
    let text = r#"{"format":99,"id":"ff","build":"ff","order":1,"at":1,"fact":{"sung":{}}}"#;
    format!("{:08x} {text}", crc32fast::hash(text.as_bytes()))
}

/// After a reload the good notes are there, the bad record is named, and another note changes none of
/// the records.
fn kept_aside(change: &str, why: &str, good: &[&str], bad: &[&str]) {
    let server = Server::start();
    let phone = Browser::open(server.url());
    three_notes(&phone);
    tamper(&phone, change);
    let before = phone.records();
    phone.reload();
    let entries = phone.text(&list("Entries"));
    for words in good {
        assert!(entries.contains(words), "{words} in {entries}");
    }
    for words in bad {
        assert!(!entries.contains(words), "{words} in {entries}");
    }
    phone.until_in(&list("Kept aside"), why);
    phone.tap_screen("Bench");
    phone.until_says("1 records could not be read.");
    note(&phone, "another note");
    let after = phone.records();
    for (key, record) in before.as_object().expect("records") {
        assert_eq!(&after[key], record, "the record {key} stays as it is");
    }
    assert_eq!(
        after.as_object().map(serde_json::Map::len),
        before.as_object().map(|before| before.len() + 1),
        "and one came to them"
    );
}

#[test]
fn flipped_bits_are_kept_aside() {
    kept_aside(
        "if (record.includes('second note')) store.put(record.replace('second note', 'sekond note'), key);",
        "its checksum does not fit",
        &["first note", "third note"],
        &["second note", "sekond note"],
    );
}

#[test]
fn half_an_entry_is_kept_aside() {
    kept_aside(
        "if (record.includes('second note')) store.put(record.slice(0, record.length / 2), key);",
        "its checksum does not fit",
        &["first note", "third note"],
        &["second note"],
    );
}

#[test]
fn an_entry_of_a_newer_version_is_kept_aside() {
    kept_aside(
        &format!("if (record.includes('second note')) store.add({});", json!(of_a_newer_version())),
        "written by a newer version",
        &["first note", "second note", "third note"],
        &[],
    );
}

#[test]
fn a_foreign_key_in_our_space_is_kept_aside() {
    kept_aside(
        "if (record.includes('second note')) store.add({ not: 'ours' }, 'a foreign key');",
        "not a record of this tool",
        &["first note", "second note", "third note"],
        &[],
    );
}

/// The room left is the browser's own quota; set before the page first asks for it.
#[test]
fn with_the_storage_full_nothing_typed_and_nothing_earlier_is_lost() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    three_notes(&phone);
    let before = phone.records();
    let profile = phone.kill();

    let phone = Browser::start(Engine::Chromium, Phone::USUAL, profile, server.url());
    phone.quota(server.url(), 1000);
    phone.go("#/book");
    phone.fill(&textbox("Note"), "one too many");
    phone.tap(&button("Write down"));
    phone.until_notice("The phone has no room left: not written.");
    assert_eq!(phone.property(&textbox("Note"), "value"), "one too many", "it stays typed");
    assert_eq!(phone.records(), before, "nothing earlier is touched");
    let profile = phone.kill();

    let phone = Browser::open_on(Phone::USUAL, profile, server.url());
    phone.go("#/book");
    let entries = phone.text(&list("Entries"));
    for words in ["first note", "second note", "third note"] {
        assert!(entries.contains(words), "{words} in {entries}");
    }
    note(&phone, "room again");
}

#[test]
fn where_nothing_is_kept_the_app_works_says_so_and_offers_the_file() {
    let server = Server::start();
    let engine = Engine::ChromiumKeepingNothing;
    let phone = Browser::open_in(engine, Phone::USUAL, Profile::fresh(), server.url());
    phone.until_says("The book can’t be opened, so nothing written here will last.");
    phone.open_demo();
    phone.until_notice("On the screen only, not kept");
    phone.tap(&link("Side seal to corner seal, forced induction").starting());
    phone.tap_keys(&["2", "and a half"]);
    phone.until_verdict("Meets");
    phone.write_on("1F-AB");
    phone.until_notice("On the screen only, not kept: 2½ thou");
    let folder = tempfile::tempdir().expect("a folder for the file");
    phone.downloads_into(folder.path());
    phone.go("#/book");
    phone.tap(&button("Save as a file"));
    phone.until_notice("The book went out as");
    phone.until("the file is there", |_| {
        let files = std::fs::read_dir(folder.path()).expect("the folder").flatten();
        files.filter_map(|file| std::fs::read_to_string(file.path()).ok()).any(|text| {
            text.starts_with("{\"file\":\"pitleaf book\"") && text.contains("side-seal-gap-fi")
        })
    });
    // Nor does what a file brings last longer than anything else here.
    let saved = std::fs::read_dir(folder.path()).expect("the folder").flatten().next();
    phone.reload();
    phone.go("#/book");
    phone.choose_file(&saved.expect("the file").path());
    phone.tap(&button("Take in").starting());
    phone.until_notice("On the screen only, not kept");
    phone.until_notice("entries taken in");
}

/// Raises the storage's version, as a newer app would.
fn raise(phone: &Browser, keep_open: bool) -> Value {
    phone.run_until_called(
        "const done = arguments[arguments.length - 1];
         const open = indexedDB.open('pitleaf', 2);
         open.onsuccess = () => { if (!arguments[0]) open.result.close(); done('raised'); };
         open.onblocked = () => done('blocked');
         open.onerror = () => done(String(open.error));",
        &[json!(keep_open)],
    )
}

#[test]
fn an_older_app_leaves_a_newer_book_alone() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    three_notes(&phone);
    let before = phone.records();
    assert_eq!(raise(&phone, false), "raised", "an open tab does not block a newer version");
    phone.reload();
    phone.tap_screen("Bench");
    phone.until_says("This book was opened by a newer Pitleaf. Nothing was changed.");
    assert_eq!(phone.records(), before, "nothing was changed");
}

#[test]
fn a_newer_app_in_another_tab_is_given_way_to() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    three_notes(&phone);
    let first = phone.tabs();
    // Any page of this origin can raise the version; this one has no app in it.
    phone.open_file_tab("font-licences.txt");
    assert_eq!(raise(&phone, true), "raised", "the open tab gives way");
    phone.look_at(&first[0]);
    phone.fill(&textbox("Note"), "too late");
    phone.tap(&button("Write down"));
    phone.until_notice("A newer Pitleaf is open in another tab. Reload this page to go on.");
    assert_eq!(phone.property(&textbox("Note"), "value"), "too late", "it stays typed");
}

#[test]
fn a_clock_set_back_changes_no_order() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    three_notes(&phone);
    phone.before_every_page("Date.now = () => 0;");
    phone.reload();
    note(&phone, "written in 1970");
    for _ in 0..2 {
        let entries = phone.until_in(&list("Entries"), "written in 1970");
        let newest = entries.find("written in 1970").expect("it is listed");
        let third = entries.find("third note").expect("it is listed");
        assert!(newest < third, "the latest first: {entries}");
        assert!(entries.contains("1970-01-01"), "by that clock: {entries}");
        phone.reload();
    }
}

#[test]
fn a_tab_thrown_away_in_mid_typing_has_its_draft_again() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    phone.go("#/book");
    phone.fill(&textbox("Note"), "half a sen");
    phone.throw_away();
    phone.go("#/book");
    assert_eq!(phone.property(&textbox("Note"), "value"), "half a sen", "the note");
    phone.fill(&textbox("Note"), "");

    phone.go("#/check/side-seal-gap-na");
    phone.tap_keys(&["2", "and a half"]);
    phone.until_verdict("Meets");
    phone.throw_away();
    phone.go("#/check/side-seal-gap-na");
    phone.until_verdict("Meets");
}

/// What another tab writes while this one is still reading its book.
#[test]
fn an_entry_written_while_the_book_is_being_read_is_not_missed() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    three_notes(&phone);
    let text = r#"{"format":1,"id":"aa","build":"BUILD","order":99,"at":1,"fact":{"note":{"about":"","words":"from the other tab"}}}"#;
    let build = phone.records().as_object().and_then(|records| {
        let record = records.values().next()?.as_str()?;
        let entry: Value = serde_json::from_str(record.split_once(' ')?.1).ok()?;
        Some(entry["id"].as_str()?.to_owned())
    });
    let text = text.replace("BUILD", &build.expect("the opening's id"));
    let record = format!("{:08x} {text}", crc32fast::hash(text.as_bytes()));
    phone.before_every_page(&format!(
        "const all = IDBObjectStore.prototype.getAll;
         IDBObjectStore.prototype.getAll = function (...range) {{
             if (this.name === 'entries') new BroadcastChannel('pitleaf').postMessage({});
             return all.apply(this, range);
         }};",
        json!(record)
    ));
    phone.reload();
    phone.until_in(&list("Entries"), "from the other tab");
    phone.until_in(&list("Entries"), "third note");
}

/// Strings that have run where text was taken for markup, a few of each kind.
const HOSTILE: [&str; 8] = [
    "<script>window.hacked = 1</script>",
    "<img src=x onerror='window.hacked = 1'>",
    "\"><svg/onload=window.hacked=1>",
    "<iframe srcdoc='<script>parent.hacked = 1</script>'></iframe>",
    "javascript:window.hacked=1",
    "</ul></main><a href='javascript:window.hacked=1'>a</a>",
    "{{constructor.constructor('window.hacked=1')()}}",
    "${window.hacked=1}",
];

#[test]
fn text_from_a_file_is_only_ever_text() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    let entry = |order: usize, fact: Value| json!({ "format": 1, "id": format!("{order:02x}"), "build": "00", "order": order, "at": 1, "fact": fact });
    let opened =
        json!({ "opened": { "name": HOSTILE[0], "kind": "naturally-aspirated", "rotors": 2 } });
    let slot = |order: usize| ["1F-AB", "1F-BC", "1F-CA", "1R-AB"][order % 4];
    let mut entries = vec![entry(0, opened)];
    for (order, words) in HOSTILE.iter().enumerate() {
        entries.push(entry(2 * order + 1, json!({ "note": { "about": words, "words": words } })));
        let mark = json!({ "mark": { "slot": slot(order), "mark": words } });
        entries.push(entry(2 * order + 2, mark));
    }
    let folder = tempfile::tempdir().expect("a folder for the file");
    let file = folder.path().join("book.json");
    let book = json!({ "file": "pitleaf book", "format": 1, "entries": entries });
    std::fs::write(&file, book.to_string()).expect("the file");

    phone.go("#/book");
    phone.choose_file(&file);
    phone.until_says(&format!("{} new", 1 + 2 * HOSTILE.len()));
    phone.tap(&button("Take in 17"));
    phone.until_notice("17 entries taken in");
    for place in ["#/book", "#/", "#/open", "#/seals", "#/seals/table", "#/slot/1F-AB"] {
        phone.go(place);
        phone.two_frames();
        assert_eq!(phone.run("return window.hacked ?? null", &[]), Value::Null, "at {place}");
        let strange = phone.run(
            "return document.querySelectorAll('main img, main iframe, main script, [onload], [onerror], a[href^=javascript]').length",
            &[],
        );
        assert_eq!(strange, 0, "no element came out of a text at {place}");
    }
    phone.go("#/book");
    phone.tap(&button("Older entries"));
    for words in HOSTILE {
        phone.until_in(&list("Entries"), words);
    }
}

/// From the next page on, each write takes so many milliseconds.
fn slow_disk(phone: &Browser, takes: u32) {
    phone.before_every_page(&format!(
        "const add = IDBObjectStore.prototype.add;
         IDBObjectStore.prototype.add = function (...record) {{
             // The transaction is kept busy.
             const start = performance.now(), store = this;
             const again = () => {{ if (performance.now() - start < {takes}) store.count().onsuccess = again; }};
             again();
             return add.apply(this, record);
         }};"
    ));
    phone.reload();
}

#[test]
fn a_write_that_takes_long_says_so_until_it_is_done() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    slow_disk(&phone, 4000);
    phone.go("#/book");
    phone.fill(&textbox("Note"), "slow");
    phone.tap(&button("Write down"));
    phone.until_notice("Not written yet: the phone is slow to answer.");
    assert_eq!(phone.property(&textbox("Note"), "value"), "slow", "it stays typed");
    phone.until_notice("Written a note");
    assert!(!phone.notice().contains("Not written"), "{}", phone.notice());
}

#[test]
fn two_writes_on_their_way_at_once_have_an_order_of_their_own() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    slow_disk(&phone, 500);
    phone.go("#/slot/1F-BC");
    // The fresh seal twice, which is the same twice, and the tick that it is fitted.
    phone.run(
        "const press = (words) => Array.from(document.querySelectorAll('button'))
             .find((one) => words.test(one.textContent)).click();
         press(/fresh seal/); press(/fresh seal/); press(/is fitted/);",
        &[],
    );
    phone.until("both are written", |phone| phone.entries() == 3);
    phone.until_notice("Written");
    let records = phone.records();
    let mut orders: Vec<u64> = records
        .as_object()
        .into_iter()
        .flat_map(|records| records.values())
        .filter_map(|record| {
            let entry: Value = serde_json::from_str(record.as_str()?.split_once(' ')?.1).ok()?;
            entry["order"].as_u64()
        })
        .collect();
    orders.sort_unstable();
    assert_eq!(orders, [1, 2, 3], "the opening and both");
}

/// What is typed while the disk is slow is another text, and stays; and who went elsewhere is not fetched back.
#[test]
fn a_slow_write_takes_away_neither_what_is_typed_next_nor_the_place() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_demo();
    slow_disk(&phone, 500);
    phone.go("#/book");
    phone.fill(&textbox("Note"), "first note");
    phone.tap(&button("Write down"));
    phone.fill(&textbox("Note"), "second no");
    phone.until_notice("Written a note");
    phone.until_in(&list("Entries"), "first note");
    assert_eq!(phone.property(&textbox("Note"), "value"), "second no", "typed since");

    phone.go("#/work/step/leaks-before");
    phone.tap(&button("Done"));
    phone.go("#/convert");
    phone.until_notice("Written step done");
    phone.two_frames();
    assert_eq!(phone.place(), "#/convert", "where the person is");
}

/// The same screen again is another one: what the write was to do on the first does not run on it.
#[test]
fn who_left_and_came_back_during_a_slow_write_finds_the_app_at_work() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    slow_disk(&phone, 1500);
    phone.go("#/slot/1F-AB");
    phone.fill(&textbox("Leaf").starting(), "2");
    phone.tap(&button("Goes"));
    phone.go("#/slot/1F-BC");
    phone.go("#/slot/1F-AB");
    phone.until_notice("Written 1F-AB");
    phone.tap_screen("Convert");
    phone.find(&textbox("Figure"));
}
