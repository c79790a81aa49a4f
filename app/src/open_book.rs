//! Reading the book from storage when the app opens.

use crate::device;
use crate::state::{App, Aside, Keeping};
use crate::store::{Channel, Database, Fault, persist};
use js_sys::{Array, Uint8Array};
use pitleaf_core::book::Book;
use pitleaf_core::book::written::{self, Damage};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::spawn_local;

/// How many records make a sheaf.
const SHEAF: u32 = 4096;

impl App {
    /// Opens the book and takes in every record; what can't be read is kept aside.
    pub fn open_book(self) {
        spawn_local(async move {
            match self.read_all().await {
                Ok(()) => {
                    self.keeping.set(Keeping::Kept);
                    // Where the promise was given already, or none is ever made, there is nothing to ask.
                    if persist::is_kept().await != Some(false) {
                        self.set(|settings| settings.asked_to_keep = true);
                    }
                }
                Err(fault) => self.keeping.set(Keeping::NotKept(fault)),
            }
        });
    }

    async fn read_all(self) -> Result<(), Fault> {
        let database = Database::open().await?;
        // Listening begins before reading does: what another tab writes in between is in one or the other.
        let channel = Channel::open(move |record| {
            if let Ok(entry) = written::entry(&record) {
                self.book.update(|book| {
                    book.take(entry);
                });
            }
        });
        let (sheaves, mut behind) = database.sheaves().await?;
        let mut book = Book::with_room_for((sheaves.length() * SHEAF) as usize);
        if !sheaves.iter().all(|sheaf| take_sheaf(&mut book, &sheaf)) {
            // A sheaf only saves time: where one is damaged, the records themselves are read.
            behind = JsValue::UNDEFINED;
        }
        let records = database.records(&behind).await?;
        let mut damaged = Vec::new();
        for (place, record) in (0..).zip(records.iter()) {
            let record = record.as_string().ok_or(Damage::Foreign);
            match record.and_then(|record| written::entry(&record)) {
                Ok(entry) => {
                    book.take(entry);
                }
                Err(damage) => damaged.push((place, damage)),
            }
        }
        self.book.update(|shown| {
            let heard = std::mem::replace(shown, book);
            for entry in heard.entries() {
                shown.take(entry.clone());
            }
        });
        if !damaged.is_empty() {
            let keys = database.keys(&behind).await?;
            let aside = |(place, damage): (u32, Damage)| Aside {
                key: device::words(&keys.get(place)),
                why: damage.to_string(),
            };
            self.aside.set(damaged.into_iter().map(aside).collect());
        } else if records.length() >= SHEAF {
            // The next opening will be the quicker for it; if it fails, nothing is lost.
            spawn_local(bind(database.clone(), records, behind));
        }
        self.store.set(Some((database, channel)));
        Ok(())
    }
}

/// Takes in a sheaf's entries, a record a line. Whether all of them were there and could be read.
fn take_sheaf(book: &mut Book, sheaf: &JsValue) -> bool {
    let bytes = sheaf.dyn_ref::<Uint8Array>().map(Uint8Array::to_vec);
    let Some(sheaf) = bytes.and_then(|bytes| String::from_utf8(bytes).ok()) else { return false };
    let mut count = 0;
    let sound = sheaf.lines().all(|record| {
        written::entry(record).is_ok_and(|entry| {
            book.take(entry);
            count += 1;
            true
        })
    });
    sound && count == SHEAF
}

/// Copies sound records into sheaves, as long as there are enough for a whole one.
async fn bind(database: Database, records: Array, behind: JsValue) {
    let Ok(keys) = database.keys(&behind).await else { return };
    for first in (0..records.length()).step_by(SHEAF as usize) {
        let end = first + SHEAF;
        let sheaf = records.slice(first, end).join("\n");
        // Keys that are no numbers are not ours, and sort behind all that are.
        let last = keys.get(end - 1);
        if end > records.length() || last.as_f64().is_none() {
            return;
        }
        if database.bind(&last, &String::from(sheaf)).await.is_err() {
            return;
        }
    }
}
