//! What every screen shares: the book in hand, the settings, the place, and the way to write an entry.

use crate::device;
use crate::route::Route;
use crate::settings::{self, Settings};
use crate::store::{Database, Fault, keep};
use leptos::prelude::*;
use pitleaf_core::book::{Book, BuildId, Entry, EntryId, FORMAT, Fact, written};
use pitleaf_core::limits::{BuildKind, Sheet};
use wasm_bindgen_futures::spawn_local;

/// Whether what is written lasts.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Keeping {
    /// The book is being opened.
    Opening,
    /// Entries are on the disk before the screen says so.
    Kept,
    /// They are not, and why.
    NotKept(Fault),
}

/// A line over the screen: what was just done, or what went wrong.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Notice {
    /// An entry was written; it can be undone.
    Written(EntryId, String),
    /// Said, nothing to undo.
    Said(String),
    /// Something went wrong; nothing was changed.
    Wrong(String),
}

/// A record that could not be taken into the book, kept as it is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Aside {
    /// Its key.
    pub key: String,
    /// Why.
    pub why: String,
}

/// The shared state. Copy: only handles.
#[derive(Clone, Copy)]
pub struct App {
    /// All entries and what they add up to.
    pub book: RwSignal<Book>,
    /// The sheet in force.
    pub sheet: Memo<Sheet>,
    /// Whether it lasts.
    pub keeping: RwSignal<Keeping>,
    /// Records kept aside.
    pub aside: RwSignal<Vec<Aside>>,
    /// The settings.
    pub settings: RwSignal<Settings>,
    /// The place.
    pub route: RwSignal<Route>,
    /// The line over the screen.
    pub notice: RwSignal<Option<Notice>>,
    database: StoredValue<Option<Database>, LocalStorage>,
    /// The line over the screen is about what led to the next place.
    stays: StoredValue<bool>,
}

/// The state of the app around this screen.
pub fn app() -> App {
    expect_context::<App>()
}

impl App {
    /// The state at the start, with settings and place as they were left.
    pub fn new() -> Self {
        let book = RwSignal::new(Book::default());
        let hash =
            web_sys::window().and_then(|window| window.location().hash().ok()).unwrap_or_default();
        Self {
            book,
            sheet: Memo::new(move |_| book.with(Book::sheet)),
            keeping: RwSignal::new(Keeping::Opening),
            aside: RwSignal::default(),
            settings: RwSignal::new(keep::get(settings::KEY).unwrap_or_default()),
            route: RwSignal::new(Route::read(&hash)),
            notice: RwSignal::default(),
            database: StoredValue::new_local(None),
            stays: StoredValue::new(false),
        }
    }

    /// Opens the book and takes in every record; what can't be read is kept aside.
    pub fn open_book(self) {
        spawn_local(async move {
            match self.read_all().await {
                Ok(()) => self.keeping.set(Keeping::Kept),
                Err(fault) => self.keeping.set(Keeping::NotKept(fault)),
            }
        });
    }

    async fn read_all(self) -> Result<(), Fault> {
        let database = Database::open().await?;
        let records = database.all().await?;
        self.database.set_value(Some(database));
        let mut aside = Vec::new();
        self.book.update(|book| {
            for (key, record) in records {
                match record
                    .as_string()
                    .ok_or(written::Damage::Foreign)
                    .and_then(|text| written::entry(&text))
                {
                    Ok(entry) => {
                        book.take(entry);
                    }
                    Err(damage) => aside.push(Aside { key, why: damage.to_string() }),
                }
            }
        });
        self.aside.set(aside);
        Ok(())
    }

    /// The build in hand: the one chosen, else the last opened.
    pub fn build(self) -> Option<BuildId> {
        let chosen =
            self.settings.with(|settings| settings.build.clone()).map(|id| EntryId(id.into()));
        self.book.with(|book| {
            chosen
                .filter(|id| book.opening(id).is_some())
                .or_else(|| book.builds().into_iter().next())
        })
    }

    /// The name, kind and rotors of the build in hand.
    pub fn opening(self) -> Option<(String, BuildKind, u8, bool)> {
        let build = self.build()?;
        self.book.with(|book| {
            book.opening(&build)
                .map(|(name, kind, rotors, demo)| (name.to_owned(), kind, rotors, demo))
        })
    }

    /// The kind of the build in hand, or any.
    pub fn kind(self) -> BuildKind {
        self.opening().map_or(BuildKind::Any, |opening| opening.1)
    }

    /// Writes facts of the build in hand; `then` runs once they are on the disk.
    ///
    /// Nothing typed is lost if that fails: the notice says so, and `then` does not run.
    pub fn write(self, facts: Vec<Fact>, said: String, then: impl FnOnce() + 'static) {
        let Some(build) = self.build() else {
            self.go(&Route::Open);
            return;
        };
        self.write_for(build, facts, said, then);
    }

    fn write_for(
        self,
        build: BuildId,
        facts: Vec<Fact>,
        said: String,
        then: impl FnOnce() + 'static,
    ) {
        let order = self.book.with_untracked(Book::next_order);
        let entries = (order..)
            .zip(facts)
            .map(|(order, fact)| self.entry(device::new_id(), build.clone(), order, fact))
            .collect();
        spawn_local(async move {
            self.commit(entries, said, then).await;
        });
    }

    /// Opens a build and takes it in hand.
    pub fn open_build(
        self,
        name: String,
        kind: BuildKind,
        rotors: u8,
        demo: bool,
        facts: Vec<Fact>,
    ) {
        let id = device::new_id();
        let order = self.book.with_untracked(Book::next_order);
        let opened = Fact::Opened { name: name.clone(), kind, rotors, demo };
        let mut entries = vec![self.entry(id.clone(), id.clone(), order, opened)];
        entries.extend(
            (order + 1..)
                .zip(facts)
                .map(|(order, fact)| self.entry(device::new_id(), id.clone(), order, fact)),
        );
        spawn_local(async move {
            self.commit(entries, format!("{name} is open"), move || {
                self.set(|settings| settings.build = Some(id.0.into()));
                self.back_to_draft();
            })
            .await;
        });
    }

    /// Takes in entries of another book; known ones change nothing.
    pub fn take_in(self, entries: Vec<Entry>) {
        let fresh: Vec<Entry> = self.book.with_untracked(|book| {
            entries.into_iter().filter(|entry| book.entry(&entry.id).is_none()).collect()
        });
        let count = fresh.len();
        spawn_local(async move {
            self.commit(fresh, String::new(), move || {
                self.notice.set(Some(Notice::Said(format!(
                    "{count} new entries taken in; the rest was known."
                ))));
            })
            .await;
        });
    }

    fn entry(self, id: EntryId, build: BuildId, order: u64, fact: Fact) -> Entry {
        Entry { format: FORMAT, id, build, order, at: device::now(), fact }
    }

    async fn commit(self, entries: Vec<Entry>, said: String, then: impl FnOnce()) {
        let records: Result<Vec<_>, _> = entries
            .iter()
            .map(|entry| written::record(entry).map(|record| (entry.id.0.to_string(), record)))
            .collect();
        let result = match (records, self.database.get_value()) {
            (Ok(records), Some(database)) => database.add(&records).await,
            // Without storage the entry lives in the book on the screen, and Bench says that it will not last.
            (Ok(_), None) => Ok(()),
            (Err(error), _) => Err(Fault::Other(error.to_string())),
        };
        match result {
            Ok(()) => {
                let last = entries.last().map(|entry| entry.id.clone());
                self.book.update(|book| {
                    entries.into_iter().for_each(|entry| {
                        book.take(entry);
                    })
                });
                if let Some(id) = last {
                    self.notice.set(Some(Notice::Written(id, said)));
                }
                then();
            }
            Err(fault) => self.notice.set(Some(Notice::Wrong(fault.to_string()))),
        }
    }

    /// Withdraws an entry, which stays in the book.
    pub fn withdraw(self, id: &EntryId) {
        self.about(id, Fact::Withdrawn { entry: id.clone() }, "Withdrawn; still in the book");
    }

    /// Lets a withdrawn entry hold again.
    pub fn restore(self, id: &EntryId) {
        self.about(id, Fact::Restored { entry: id.clone() }, "Holds again");
    }

    fn about(self, id: &EntryId, fact: Fact, said: &str) {
        let build =
            self.book.with_untracked(|book| book.entry(id).map(|entry| entry.build.clone()));
        let said = said.to_owned();
        if let Some(build) = build {
            self.write_for(build, vec![fact], String::new(), move || {
                self.notice.set(Some(Notice::Said(said)))
            });
        }
    }

    /// Changes the settings and keeps them.
    pub fn set(self, change: impl FnOnce(&mut Settings)) {
        self.settings.update(change);
        self.settings.with_untracked(|settings| keep::set(settings::KEY, settings));
    }

    /// Goes to a place.
    pub fn go(self, route: &Route) {
        if let Some(window) = web_sys::window() {
            // The address listener sets the route, so that the browser's own "back" works the same way.
            let _ = window.location().set_hash(&route.hash());
        }
    }

    /// Goes on to a place after something was written; the line that says so comes along.
    pub fn go_on(self, route: &Route) {
        self.stays.set_value(*route != self.route.get_untracked());
        self.go(route);
    }

    /// The address has changed: shows its place, and lets the line of the last one go.
    pub fn arrive(self) {
        let hash = window().location().hash().unwrap_or_default();
        self.route.set(Route::read(&hash));
        if !self.stays.get_value() {
            self.notice.set(None);
        }
        self.stays.set_value(false);
    }

    /// After a build was opened: to the check whose draft waits, or to the bench.
    fn back_to_draft(self) {
        let draft: Option<crate::draft::Draft> = keep::get(crate::draft::KEY);
        let route = draft
            .filter(|draft| !draft.text.is_empty())
            .map_or(Route::Bench, |draft| Route::read(&draft.hash));
        self.go_on(&route);
    }
}
