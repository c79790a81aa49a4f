//! A new version: offered, taken only when asked for, and never half.

use pitleaf_tests::{Browser, Server, button, dist, textbox};
use serde_json::json;
use sha2::{Digest as _, Sha256};
use std::fs;
use std::path::Path;
use tempfile::TempDir;

/// A copy of the built app in English, to become a newer one.
fn copy() -> TempDir {
    let folder = tempfile::tempdir().expect("a folder for a copy");
    for entry in fs::read_dir(dist()).expect("the built app") {
        let path = entry.expect("a file of it").path();
        // The German app has a folder of its own.
        if path.is_dir() {
            continue;
        }
        let name = path.file_name().expect("its name");
        fs::copy(&path, folder.path().join(name)).expect("its copy");
    }
    folder
}

fn sum(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().map(|byte| format!("{byte:02x}")).collect()
}

/// Makes the copy the next build: its page has another title, and the list says so.
fn renew(folder: &Path) {
    let read = |name: &str| fs::read_to_string(folder.join(name)).expect(name);
    let (page, worker) = (read("index.html"), read("service-worker.js"));
    let next = page.replace("<title>Pitleaf</title>", "<title>Pitleaf, the next</title>");
    assert_ne!(page, next, "the page has a title");
    let list = worker.replace(&sum(page.as_bytes()), &sum(next.as_bytes())).replacen(
        "const BUILD = \"",
        "const BUILD = \"next",
        1,
    );
    fs::write(folder.join("index.html"), next).expect("the new page");
    fs::write(folder.join("service-worker.js"), list).expect("the new list");
}

fn opened(server: &Server) -> Browser {
    let phone = Browser::open(server.url());
    phone.until("everything is on the device", |phone| {
        phone.run("return document.documentElement.dataset.offline ?? ''", &[]) == json!("ready")
    });
    phone.until_says("Everything is on this phone: works without network now.");
    phone.until("the worker has this page", |phone| {
        phone.run("return navigator.serviceWorker.controller !== null", &[]) == json!(true)
    });
    phone
}

/// Looks for a new version, as the page does when it comes back to the front.
fn look(phone: &Browser) -> String {
    let outcome = phone.run_until_called(
        "const done = arguments[0];
         navigator.serviceWorker.ready.then(async (registration) => {
             await registration.update();
             const worker = registration.installing ?? registration.waiting;
             if (!worker) return done('none');
             const settled = () => ['installed', 'redundant'].includes(worker.state) && done(worker.state);
             worker.addEventListener('statechange', settled);
             settled();
         }).catch((error) => done(String(error)));",
        &[],
    );
    outcome.as_str().unwrap_or_default().to_owned()
}

fn title(phone: &Browser) -> String {
    phone.run("return document.title", &[]).as_str().unwrap_or_default().to_owned()
}

const OFFER: &str = "A new version of Pitleaf is here.";

#[test]
fn a_new_version_is_offered_and_taken_only_when_asked_for() {
    let folder = copy();
    let server = Server::of(folder.path());
    let phone = opened(&server);
    phone.open_build("Merlin");
    phone.tap(&button("Close this line"));
    assert_eq!(look(&phone), "none", "nothing new yet");
    renew(folder.path());

    // Something is being typed: the new version waits, unseen.
    phone.go("#/mark/1F-AB");
    phone.fill(&textbox("As scribed on the part"), "three do");
    assert_eq!(look(&phone), "installed", "the new version is whole");
    phone.until("the page knows", |phone| {
        phone.run("return document.documentElement.dataset.update ?? ''", &[]) == json!("ready")
    });
    phone.two_frames();
    assert!(!phone.words().contains(OFFER), "not while something is being typed");
    assert_eq!(
        phone.property(&textbox("As scribed on the part"), "value"),
        "three do",
        "untouched"
    );
    phone.fill(&textbox("As scribed on the part"), "");
    phone.until_says(OFFER);

    // Not taken by loading again, only by asking.
    phone.reload();
    assert_eq!(title(&phone), "Pitleaf", "the version in use");
    phone.until_says(OFFER);
    phone.tap(&button("Take it"));
    phone.until("the next version is in use", |phone| title(phone) == "Pitleaf, the next");
    phone.until_open();
    assert_eq!(phone.entries(), 1, "the book stays as it is");
}

#[test]
fn a_half_delivered_version_never_breaks_the_one_in_use() {
    let folder = copy();
    let mut server = Server::of(folder.path());
    let phone = opened(&server);
    renew(folder.path());
    // Its page arrives cut in half, as from a host in the middle of being filled.
    let page = fs::read(folder.path().join("index.html")).expect("the new page");
    fs::write(folder.path().join("index.html"), &page[..page.len() / 2]).expect("half of it");
    assert_eq!(look(&phone), "redundant", "the half version is thrown away");
    phone.reload();
    assert_eq!(title(&phone), "Pitleaf", "the version in use");
    assert!(!phone.words().contains(OFFER), "nothing to offer");
    server.kill();
    phone.reload();
    assert_eq!(title(&phone), "Pitleaf", "the version in use, without a server");
}

#[test]
fn a_first_visit_over_a_bad_line_is_made_whole_without_loading_again() {
    let folder = copy();
    let icon = folder.path().join("icon.svg");
    let whole = fs::read(&icon).expect("the icon");
    fs::write(&icon, &whole[..whole.len() / 2]).expect("half of it");
    let server = Server::of(folder.path());
    let phone = Browser::open(server.url());
    // Seen to be tried, then to be given up.
    for count in [1, 0] {
        phone.until(&format!("{count} installations under way"), |phone| {
            let registrations = "const done = arguments[0];
                 navigator.serviceWorker.getRegistrations().then((all) => done(all.length));";
            phone.run_until_called(registrations, &[]) == json!(count)
        });
    }
    assert!(!phone.words().contains("works without network"), "it says what is not so");
    fs::write(&icon, whole).expect("all of it");
    phone.until_says("Everything is on this phone: works without network now.");
}
