//! Writing entries to the book: on the disk first, then on the screen.

use crate::device;
use crate::draft;
use crate::route::Route;
use crate::signal::*;
use crate::state::{App, Keeping, Notice};
use leptos::prelude::set_timeout_with_handle;
use pitleaf_core::book::written;
use pitleaf_core::book::{Book, BuildId, Entry, EntryId, FORMAT, Fact};
use pitleaf_core::kept;
use pitleaf_core::limits::BuildKind;
use pitleaf_core::route::RouteFact;
use pitleaf_translated::tr;
use std::time::Duration;
use wasm_bindgen_futures::spawn_local;

/// What is said of a write that takes longer than [`PATIENCE`].
const SLOW: &str = tr!("Not written yet: the phone is slow to answer. Leave this page open.");
const PATIENCE: Duration = Duration::from_secs(2);

impl App {
    /// Writes facts of the build in hand; `then` runs once they are on the disk, if the screen is still
    /// there: who went elsewhere meanwhile is not fetched back.
    ///
    /// Nothing typed is lost if that fails: the notice says so, and `then` does not run.
    pub fn write(self, facts: Vec<Fact>, said: String, then: impl FnOnce() + 'static) {
        self.write_boxed(facts, said, Box::new(then));
    }

    fn write_boxed(self, facts: Vec<Fact>, said: String, then: Box<dyn FnOnce()>) {
        if self.is_still_opening() || self.finger.is_second_of_two() {
            return;
        }
        let Some(build) = untrack(|| self.build()) else {
            self.go(&Route::Open);
            return;
        };
        if self.book.with_untracked(|book| book.is_signed_off(&build)) {
            self.wrong(tr!(
                "This build is signed off, so nothing was written. Reopen it in the book first."
            ));
            return;
        }
        let screen = self.screens.get_untracked();
        let then = move || {
            if self.screens.get_untracked() == screen {
                then();
            }
        };
        self.write_for(build, facts, said, Box::new(then));
    }

    /// Marks where the work is, without a word on the screen; left out where nothing can be written.
    pub fn bookmark(self, fact: Fact) {
        let Some(build) = untrack(|| self.build()) else { return };
        let is_open = self.keeping.with_untracked(|keeping| *keeping != Keeping::Opening)
            && !self.book.with_untracked(|book| book.is_signed_off(&build));
        if is_open {
            self.write_for(build, vec![fact], String::new(), Box::new(|| {}));
        }
    }

    /// Puts a build away, or takes it out again: signed off or not.
    pub fn put_away(self, build: BuildId, is: bool) {
        if !self.is_still_opening() {
            let said = if is { tr!("put away") } else { tr!("taken out again") };
            let fact = Fact::Route(RouteFact::Archived { is });
            self.write_for(build, vec![fact], said.to_owned(), Box::new(|| {}));
        }
    }

    /// What is written before the book is read would not reach the disk.
    fn is_still_opening(self) -> bool {
        let is = self.keeping.with_untracked(|keeping| *keeping == Keeping::Opening);
        if is {
            self.wrong(tr!("The book is still opening. Press again in a moment."));
        }
        is
    }

    fn write_for(self, build: BuildId, facts: Vec<Fact>, said: String, then: Box<dyn FnOnce()>) {
        let written = format!("{} {}", build.0, kept::write(&facts));
        // Pressed again before it is on the disk: that says nothing new.
        if self.on_its_way.with_untracked(|all| all.contains(&written)) {
            return;
        }
        let order = self.reserve(facts.len());
        let entries = (order..)
            .zip(facts)
            .map(|(order, fact)| entry(device::new_id(), build.clone(), order, fact))
            .collect();
        self.send(written, entries, said, then);
    }

    /// Commits entries that are `written` so among what is on its way.
    fn send(self, written: String, entries: Vec<Entry>, said: String, then: Box<dyn FnOnce()>) {
        self.on_its_way.update(|all| all.push(written.clone()));
        spawn_local(async move {
            self.commit(entries, said, then).await;
            self.on_its_way.update(|all| all.retain(|other| *other != written));
        });
    }

    /// Nothing is on its way to the disk.
    pub fn is_settled(self) -> bool {
        self.on_its_way.with_untracked(Vec::is_empty)
    }

    /// The first of so many orders that no other entry of this phone gets, also while some are on their
    /// way to the disk and not in the book yet.
    fn reserve(self, count: usize) -> u64 {
        let first = self.book.with_untracked(Book::next_order).max(self.reserved.get_untracked());
        self.reserved.set(first.saturating_add(count as u64));
        first
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
        if self.is_still_opening() || self.finger.is_second_of_two() {
            return;
        }
        if self.on_its_way.with_untracked(|all| all.contains(&name)) {
            return;
        }
        let id = device::new_id();
        let order = self.reserve(1 + facts.len());
        let opened = Fact::Opened { name: name.clone(), kind, rotors, demo };
        let mut entries = vec![entry(id.clone(), id.clone(), order, opened)];
        let rest = (order + 1..).zip(facts);
        entries.extend(rest.map(|(order, fact)| entry(device::new_id(), id.clone(), order, fact)));
        let then = move || {
            self.set(|settings| settings.build = Some(id.0.into()));
            self.back_to_draft();
        };
        self.send(name.clone(), entries, tr!("a new build: {name}"), Box::new(then));
    }

    /// Takes in what a chosen file brings, and goes back to the book.
    pub fn take_in(self) {
        if self.is_still_opening() {
            return;
        }
        let Some(new) = self.coming.with_untracked(|coming| Some(coming.as_ref()?.new.clone()))
        else {
            return;
        };
        const FILE: &str = "a file";
        if self.on_its_way.with_untracked(|all| all.iter().any(|other| other == FILE)) {
            return;
        }
        self.on_its_way.update(|all| all.push(FILE.to_owned()));
        spawn_local(async move {
            if self.add(&new).await {
                let said = tr!("{} entries taken in", new.len());
                self.take(new);
                self.coming.set(None);
                self.notice.set(Some(Notice::Said(self.kept_or_not(said))));
                self.go(&Route::Book);
            }
            self.on_its_way.update(|all| all.retain(|other| other != FILE));
        });
    }

    async fn commit(self, entries: Vec<Entry>, said: String, then: Box<dyn FnOnce()>) {
        if !self.add(&entries).await {
            return;
        }
        let ids: Vec<EntryId> = entries.iter().map(|entry| entry.id.clone()).collect();
        self.take(entries);
        // What has no words of its own leaves the line as it is.
        if !said.is_empty() {
            let is_kept = self.store.with_untracked(Option::is_some);
            self.notice.set(Some(if is_kept {
                Notice::Written(ids, said)
            } else {
                Notice::Said(self.kept_or_not(said))
            }));
        }
        then();
    }

    /// Puts entries on the disk and tells the other tabs; false, and the line says why, if that fails.
    async fn add(self, entries: &[Entry]) -> bool {
        let Some((database, channel)) = self.store.get_untracked() else { return true };
        let records: Vec<_> = entries.iter().map(written::record).collect();
        let slow = set_timeout_with_handle(move || self.wrong(SLOW), PATIENCE);
        let result = database.add(&records).await;
        if let Ok(slow) = slow {
            slow.clear();
        }
        if self.notice.with_untracked(|notice| *notice == Some(Notice::Wrong(SLOW.to_owned()))) {
            self.notice.set(None);
        }
        if let Err(fault) = &result {
            self.wrong(&fault.to_string());
        } else {
            records.iter().for_each(|record| channel.tell(record));
        }
        result.is_ok()
    }

    fn take(self, entries: Vec<Entry>) {
        self.book.update(|book| {
            for entry in entries {
                book.take(entry);
            }
        });
    }

    /// What was done, and where nothing is kept, that it was not kept.
    fn kept_or_not(self, said: String) -> String {
        if self.store.with_untracked(Option::is_some) {
            return said;
        }
        tr!("On the screen only, not kept: {said}")
    }

    /// Withdraws entries of one build, which stay in the book.
    pub fn withdraw(self, ids: &[EntryId]) {
        let facts = self.book.with_untracked(|book| book.take_back(ids));
        self.about(ids, facts, Notice::Withdrawn(ids.to_vec()));
    }

    /// Lets withdrawn entries hold again.
    pub fn restore(self, ids: &[EntryId]) {
        let facts = self.book.with_untracked(|book| book.hold_again(ids));
        self.about(ids, facts, Notice::Said(tr!("Holds again").to_owned()));
    }

    fn about(self, ids: &[EntryId], facts: Vec<Fact>, then: Notice) {
        let first = self.book.with_untracked(|book| {
            let entry = book.entry(ids.first()?)?;
            let is_sign_off = matches!(entry.fact, Fact::SignedOff { .. });
            Some((entry.build.clone(), !is_sign_off && book.is_signed_off(&entry.build)))
        });
        let Some((build, is_closed)) = first else { return };
        // The signing off itself can be undone; anything else waits until the build is open again.
        if is_closed {
            self.wrong(tr!(
                "This build is signed off, so nothing was changed. Reopen it in the book first."
            ));
            return;
        }
        self.write_for(build, facts, String::new(), Box::new(move || self.notice.set(Some(then))));
    }

    /// Opens a signed-off build again.
    pub fn reopen(self, why: String) {
        if let Some(build) = untrack(|| self.build()) {
            self.write_for(
                build,
                vec![Fact::Reopened { why }],
                tr!("the build is open again").to_owned(),
                Box::new(|| {}),
            );
        }
    }

    /// Says what went wrong.
    pub fn wrong(self, words: &str) {
        self.notice.set(Some(Notice::Wrong(words.to_owned())));
    }

    /// After a build was opened: to the check whose draft waits, or to the bench; on the first look to its stop.
    fn back_to_draft(self) {
        let to = draft::waiting().map_or(Route::Bench, |draft| Route::read(&draft.hash));
        self.go(&self.tour_stop().unwrap_or(to));
    }
}

fn entry(id: EntryId, build: BuildId, order: u64, fact: Fact) -> Entry {
    Entry { format: FORMAT, id, build, order, at: device::now(), fact }
}
