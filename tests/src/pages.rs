//! The app's screens, by what a person does on them.

use serde_json::{Value, json};

use crate::{Browser, button, link, status, textbox};

impl Browser {
    /// Opens the demo engine from an empty bench.
    #[track_caller]
    pub fn open_demo(&self) {
        self.tap(&button("Look at the demo engine"));
        self.until_says("invented figures");
    }

    /// Opens a build of two rotors without forced induction.
    #[track_caller]
    pub fn open_build(&self, name: &str) {
        self.go("#/open");
        self.fill(&textbox("Name"), name);
        self.tap(&button("Open"));
        self.until_notice(&format!("Written a new build: {name}"));
    }

    /// Writes the order of four tension bolts to 38 N·m down: passes at 12.5, 25.5 and 38 N·m, then once more.
    #[track_caller]
    pub fn order_bolts(&self) {
        self.go("#/joints/order");
        self.tap(&button("By name only"));
        self.fill(&textbox("Names in the order of their turn"), "2 4 1 3");
        self.fill(&textbox("Full torque"), "38");
        // A third of all of it: the whole torque has been typed.
        self.until_says("12.5 N·m");
        self.tap(&button("Write the order down and start"));
        self.until_notice("Written Tension bolts: order");
    }

    /// What the notice line says.
    #[must_use]
    pub fn notice(&self) -> String {
        let words = self.run("return document.querySelector('.notices').innerText", &[]);
        words.as_str().unwrap_or_default().split_whitespace().collect::<Vec<_>>().join(" ")
    }

    /// Waits until the notice line says something.
    #[track_caller]
    pub fn until_notice(&self, words: &str) {
        self.until(&format!("the notice line says “{words}”"), |browser| {
            browser.notice().contains(words)
        });
    }

    /// Writes the reading down on a piece, which is asked for where there are several.
    #[track_caller]
    pub fn write_on(&self, piece: &str) {
        self.tap(&button("Write down"));
        self.tap(&button(piece));
    }

    /// Touches the figure keys of a screen that has them.
    #[track_caller]
    pub fn tap_keys(&self, keys: &[&str]) {
        for key in keys {
            self.tap(&button(key));
        }
    }

    /// The verdict, once it begins so: its word and what stands under it.
    #[track_caller]
    pub fn until_verdict(&self, word: &str) -> String {
        self.until_in(&status("Verdict"), word)
    }

    /// Goes to one of the main screens by the bar under the thumb.
    #[track_caller]
    pub fn tap_screen(&self, name: &str) {
        self.tap(&link(name));
    }

    /// Every record as it lies in the book's storage, by its key.
    ///
    /// # Panics
    /// The storage can't be read.
    #[must_use]
    pub fn records(&self) -> Value {
        self.run_until_called(
            "const done = arguments[arguments.length - 1];
             const open = indexedDB.open('pitleaf');
             open.onsuccess = () => {
                 const entries = open.result.transaction('entries').objectStore('entries');
                 const keys = entries.getAllKeys();
                 const records = entries.getAll();
                 entries.transaction.oncomplete = () => {
                     open.result.close();
                     done(Object.fromEntries(keys.result.map((key, at) => [key, records.result[at]])));
                 };
             };",
            &[],
        )
    }

    /// What lies in the book: the facts of every entry, in order.
    ///
    /// # Panics
    /// The storage can't be read.
    #[must_use]
    pub fn facts(&self) -> Vec<Value> {
        let records = self.records();
        let records = records.as_object().expect("records by their keys").values();
        let mut entries: Vec<Value> = records
            .filter_map(|record| serde_json::from_str(record.as_str()?.split_once(' ')?.1).ok())
            .collect();
        entries.sort_by_key(|entry| entry["order"].as_u64());
        entries.iter().map(|entry| entry["fact"].clone()).collect()
    }

    /// Puts a record into the book's storage behind the app's back.
    ///
    /// # Panics
    /// The storage refuses it.
    pub fn plant(&self, key: &str, record: &Value) {
        let answer = self.run_until_called(
            "const [key, record, done] = arguments;
             const open = indexedDB.open('pitleaf');
             open.onsuccess = () => {
                 const transaction = open.result.transaction('entries', 'readwrite');
                 transaction.objectStore('entries').put(record, key);
                 transaction.oncomplete = () => { open.result.close(); done('there'); };
                 transaction.onabort = () => done(String(transaction.error));
             };",
            &[json!(key), record.clone()],
        );
        assert_eq!(answer, "there", "planting {key}");
    }

    /// How many entries the book has, by its own screen. Leads there.
    #[track_caller]
    pub fn entries(&self) -> usize {
        self.go("#/book");
        self.until_some("the book says how many entries there are", |browser| {
            let words = browser.words();
            let before = words.split(" entries in all").next()?;
            before.rsplit(' ').next()?.parse().ok()
        })
    }
}
