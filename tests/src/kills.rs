//! Killing the whole browser, and counting what it said was written and is not there.

use crate::{Browser, Engine, Phone, Profile, Server, button, textbox};
use serde_json::Value;
use std::time::{Duration, Instant};

/// Writes a note, kills the browser so long after “Written” is on the screen, and looks for the note in a
/// new one; as often as asked for, on one book. How many notes are not there at the end.
#[must_use]
pub fn after(engine: Engine, server: &Server, wait: Duration, runs: usize) -> usize {
    let mut profile = Profile::fresh();
    for run in 0..runs {
        let phone = Browser::open_in(engine, Phone::USUAL, profile, server.url());
        if run == 0 {
            phone.open_build("Merlin");
        }
        phone.go("#/book");
        phone.fill(&textbox("Note"), &name(run));
        let tree = phone.tree();
        phone.tap(&button("Write down"));
        phone.until_notice("Written a note");
        let written = Instant::now();
        while written.elapsed() < wait {
            std::thread::yield_now();
        }
        tree.kill();
        profile = phone.kill();
    }
    let records = kept(engine, profile, server);
    (0..runs).filter(|&run| !is_in(&records, run)).count()
}

/// What a stream of writes came to.
#[derive(Clone, Copy, Debug)]
pub struct Stream {
    /// Entries that the screen said were written.
    pub acknowledged: usize,
    /// Those of them that are not there.
    pub lost: usize,
}

/// Lets the page write note after note, each as soon as the one before is acknowledged, and kills the
/// browser so long after the first one.
#[must_use]
pub fn in_a_stream(engine: Engine, server: &Server, wait: Duration) -> Stream {
    let phone = Browser::open_in(engine, Phone::USUAL, Profile::fresh(), server.url());
    phone.open_build("Merlin");
    phone.go("#/book");
    let tree = phone.tree();
    phone.run(STREAM, &[]);
    let count = || {
        let written = phone.run("return window.acknowledged", &[]);
        written.as_u64().and_then(|count| usize::try_from(count).ok()).unwrap_or_default()
    };
    let mut acknowledged = 0;
    let start = Instant::now();
    while start.elapsed() < wait || acknowledged == 0 {
        acknowledged = count();
    }
    tree.kill();
    let records = kept(engine, phone.kill(), server);
    Stream { acknowledged, lost: (0..acknowledged).filter(|&run| !is_in(&records, run)).count() }
}

/// Types a note and sends it, waits until the field is empty again, which it is once the note is on the
/// disk, and goes on with the next.
const STREAM: &str = "
    const field = document.querySelector('main form input, main form textarea');
    window.acknowledged = 0;
    const type = () => {
        field.value = `note of run ${window.acknowledged}`;
        field.dispatchEvent(new Event('input', { bubbles: true }));
        setTimeout(() => field.form.requestSubmit());
    };
    const look = () => {
        if (field.value === '') { window.acknowledged += 1; type(); }
        setTimeout(look);
    };
    type();
    look();
";

fn name(run: usize) -> String {
    format!("note of run {run}")
}

fn kept(engine: Engine, profile: Profile, server: &Server) -> Vec<String> {
    let phone = Browser::open_in(engine, Phone::USUAL, profile, server.url());
    let Value::Object(records) = phone.records() else { return Vec::new() };
    records.values().filter_map(Value::as_str).map(str::to_owned).collect()
}

fn is_in(records: &[String], run: usize) -> bool {
    // With the quotation mark behind it: run 1 is not run 10.
    let words = format!("{}\"", name(run));
    records.iter().any(|record| record.contains(&words))
}
