//! What is felt: opening, the verdict behind a key, another screen: `cargo test -p pitleaf-tests --bench
//! seconds`. At four-fold CPU throttling, with the server dead; the app must be built.

use pitleaf_tests::{Browser, Server};
use serde_json::{Value, json};

/// A phone that has the app and the demo engine, whose server is gone.
fn slow_phone() -> (Server, Browser) {
    let mut server = Server::start();
    let phone = Browser::open(server.url());
    phone.until("everything is on the device", |phone| {
        phone.run("return document.documentElement.dataset.offline ?? ''", &[]) == json!("ready")
    });
    phone.open_demo();
    // From now on the worker serves the page, as it does a phone in the shop.
    phone.reload();
    server.kill();
    phone.slow_down(4);
    (server, phone)
}

/// The time below which so many in a hundred lie.
fn percentile(times: &Value, hundredths: usize) -> f64 {
    let mut times: Vec<f64> =
        times.as_array().into_iter().flatten().filter_map(Value::as_f64).collect();
    times.sort_by(f64::total_cmp);
    assert!(!times.is_empty(), "something was measured");
    times[(times.len() * hundredths).div_ceil(100).saturating_sub(1)]
}

fn main() {
    let (_server, phone) = slow_phone();
    println!("budget | measured at four-fold CPU throttling");
    keys(&phone);
    changes(&phone);
    opening(&phone);
}

fn opening(phone: &Browser) {
    phone.before_every_page(
        "new MutationObserver((_, observer) => {
             if (!document.querySelector('.shell:not([aria-busy]) h1')) return;
             observer.disconnect();
             requestAnimationFrame(() => setTimeout(() => { window.usable = performance.now(); }));
         }).observe(document, { subtree: true, childList: true, attributes: true });",
    );
    let times: Vec<Value> = (0..5)
        .map(|_| {
            phone.reload();
            phone.until_some("it is usable", |phone| {
                Some(phone.run("return window.usable ?? null", &[])).filter(|time| !time.is_null())
            })
        })
        .collect();
    let median = percentile(&json!(times), 50);
    println!("1000 ms, open to usable | median of five {median:.0} ms");
}

fn keys(phone: &Browser) {
    phone.go("#/check/side-seal-gap-fi");
    let times = phone.run_until_called(KEYS, &[]);
    let (median, high) = (percentile(&times, 50), percentile(&times, 98));
    println!("50 ms at 98 %, key to painted verdict | median {median:.0} ms, 98 % {high:.0} ms");
}

/// Each key is pressed a little after the picture of the one before; painted is when a task runs behind
/// the frame that holds the new verdict.
const KEYS: &str = "
    const [done] = arguments;
    const key = (name) => Array.from(document.querySelectorAll('.keypad button, .keys button, main button'))
        .find((one) => (one.getAttribute('aria-label') ?? one.textContent).trim() === name);
    const turns = Array.from({ length: 25 }, () => ['2', 'Delete the last character', '5', 'Delete the last character']).flat();
    const times = [];
    const next = () => {
        if (times.length === turns.length) return done(times);
        const button = key(turns[times.length]);
        const start = performance.now();
        button.click();
        requestAnimationFrame(() => {
            const channel = new MessageChannel();
            channel.port1.onmessage = () => { times.push(performance.now() - start); setTimeout(next, 30); };
            channel.port2.postMessage(0);
        });
    };
    next();
";

fn changes(phone: &Browser) {
    let places = [
        "#/limits",
        "#/check/end-play",
        "#/convert",
        "#/seals/1F",
        "#/slot/1F-BC",
        "#/book",
        "#/work",
        "#/ports/front",
        "#/joints",
        "#/faces",
        "#/",
    ];
    let times = phone.run_until_called(CHANGES, &[json!(places)]);
    for (place, time) in places.iter().zip(times.as_array().into_iter().flatten()) {
        let time = time.as_f64().unwrap_or(f64::NAN);
        println!("100 ms, to {place} | median of three {time:.0} ms");
    }
}

/// The median of three visits to each, from the press until it is painted.
const CHANGES: &str = "
    const [places, done] = arguments;
    const times = places.map(() => []);
    const visits = [0, 1, 2].flatMap(() => places.map((_, at) => at));
    const next = () => {
        if (!visits.length) return done(times.map((three) => three.sort((a, b) => a - b)[1]));
        const at = visits.shift();
        const start = performance.now();
        addEventListener('hashchange', () => requestAnimationFrame(() => {
            const channel = new MessageChannel();
            channel.port1.onmessage = () => { times[at].push(performance.now() - start); setTimeout(next, 60); };
            channel.port2.postMessage(0);
        }), { once: true });
        location.hash = places[at];
    };
    next();
";
