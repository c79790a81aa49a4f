//! A book of any size, put straight into the storage, and the copies the app makes of it.

use crate::Browser;
use serde_json::{Value, json};

const ROWS: [&str; 3] = ["end-play", "side-seal-gap-na", "side-housing-warp"];

/// Puts a build with its notes and figures into the storage, behind the app's back.
///
/// # Panics
/// The storage refuses.
pub fn fill(phone: &Browser, count: usize) {
    fill_with(phone, count, |number| {
        if number.is_multiple_of(10) {
            return json!({ "note": { "about": "", "words": format!("note {number}") } });
        }
        json!({ "figure": {
            "row": ROWS[number % 3],
            "place": format!("place {}", number % 40),
            "text": format!("{}.{}", number % 7, number % 100), "unit": "thou", "gauge": "feeler-leaf",
        } })
    });
}

/// The same with facts of one's own, one for each number from 1.
///
/// # Panics
/// The storage refuses.
pub fn fill_with(phone: &Browser, count: usize, fact: impl Fn(usize) -> Value) {
    let record = |number: usize| {
        let fact = match number {
            0 => {
                json!({ "opened": { "name": "Merlin", "kind": "naturally-aspirated", "rotors": 2 } })
            }
            number => fact(number),
        };
        let entry = json!({
            "format": 1, "id": format!("{number:032x}"), "build": format!("{:032x}", 0),
            "order": number, "at": 1_790_000_000_000_u64 + number as u64, "fact": fact,
        });
        let text = entry.to_string();
        format!("{:08x} {text}", crc32fast::hash(text.as_bytes()))
    };
    let records: Vec<String> = (0..count).map(record).collect();
    for part in records.chunks(5_000) {
        let done = phone.run_until_called(
            "const [records, done] = arguments;
             const open = indexedDB.open('pitleaf');
             open.onsuccess = () => {
                 const transaction = open.result.transaction('entries', 'readwrite');
                 for (const record of records) transaction.objectStore('entries').add(record);
                 transaction.oncomplete = () => { open.result.close(); done('done'); };
             };",
            &[json!(part)],
        );
        assert_eq!(done, "done", "records were put in");
    }
}

/// How many bytes each sheaf has.
///
/// # Panics
/// The storage can't be read.
pub fn sheaves(phone: &Browser) -> Vec<u64> {
    let sizes = phone.run_until_called(
        "const [done] = arguments;
         const open = indexedDB.open('pitleaf');
         open.onsuccess = () => {
             const all = open.result.transaction('sheaves').objectStore('sheaves').getAll();
             all.onsuccess = () => { open.result.close(); done(all.result.map((sheaf) => sheaf.byteLength)); };
         };",
        &[],
    );
    let sizes = sizes.as_array().expect("a list of sizes");
    sizes.iter().map(|size| size.as_u64().expect("a size")).collect()
}

/// Replaces every sheaf by what a script makes of its text.
///
/// # Panics
/// The storage refuses.
pub fn change_sheaves(phone: &Browser, change: &str) {
    let done = phone.run_until_called(
        "const [change, done] = arguments;
         const changed = new Function('text', change);
         const open = indexedDB.open('pitleaf');
         open.onsuccess = () => {
             const transaction = open.result.transaction('sheaves', 'readwrite');
             transaction.objectStore('sheaves').openCursor().onsuccess = ({ target: { result: cursor } }) => {
                 if (!cursor) return;
                 const text = changed(new TextDecoder().decode(cursor.value));
                 cursor.update(new TextEncoder().encode(text));
                 cursor.continue();
             };
             transaction.oncomplete = () => { open.result.close(); done('done'); };
         };",
        &[json!(change)],
    );
    assert_eq!(done, "done", "the sheaves were changed");
}
