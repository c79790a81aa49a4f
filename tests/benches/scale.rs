//! A large book in the browser: `cargo test -p pitleaf-tests --bench scale`, or `-- 100000` for one size.
//!
//! Prints, for books of 1,000, 10,000 and 100,000 entries at four-fold CPU throttling: opening it for the
//! first time, opening it again, writing one more entry, and the memory of the page. The app must be
//! built. The budget at 100,000 entries: 1500 ms to open, 30 ms to write.

use pitleaf_tests::{Browser, Server, button, large_book};
use serde_json::json;

fn main() {
    let server = Server::start();
    println!("entries | first opening | next openings | one more entry, median and worst | memory");
    let asked: Vec<usize> = std::env::args().filter_map(|word| word.parse().ok()).collect();
    let counts = if asked.is_empty() { vec![1_000, 10_000, 100_000] } else { asked };
    for count in counts {
        let phone = Browser::open(server.url());
        large_book::fill(&phone, count);
        phone.go("#/book");
        phone.slow_down(4);
        let first = opening(&phone);
        // Copies for quicker openings are made in the background.
        phone
            .until("the copies are made", |phone| large_book::sheaves(phone).len() == count / 4096);
        let next: Vec<f64> = (0..5).map(|_| opening(&phone)).collect();
        let writing = writing(&phone);
        phone.devtools("HeapProfiler.collectGarbage", json!({}));
        println!(
            "{count} | {first:.0} ms | {:.0} ms | {:.1} ms, {:.1} ms | {:.0} MB",
            median(&next),
            median(&writing),
            writing.iter().copied().fold(0.0, f64::max),
            f64::from(phone.tree().largest_kilobytes()) / 1000.0,
        );
    }
}

/// From the start of the navigation until the book is read and drawn.
fn opening(phone: &Browser) -> f64 {
    phone.before_every_page(
        "new MutationObserver((_, observer) => {
             if (!document.querySelector('.shell:not([aria-busy]) h1')) return;
             observer.disconnect();
             requestAnimationFrame(() => setTimeout(() => { window.opened = performance.now(); }));
         }).observe(document, { subtree: true, childList: true, attributes: true });",
    );
    phone.reload();
    let opened = phone.until_some("the book is open", |phone| {
        phone.run("return window.opened ?? null", &[]).as_f64()
    });
    let entries = phone.words();
    assert!(entries.contains("Merlin"), "the book is there: {entries}");
    opened
}

/// From the press of the button until the screen says so, twenty times.
fn writing(phone: &Browser) -> Vec<f64> {
    let write = |run: usize| {
        let took = phone.run_until_called(WRITE, &[json!(run)]).as_f64();
        phone.tap(&button("Close this line"));
        took.expect("a time")
    };
    (0..20).map(write).collect()
}

const WRITE: &str = "
    const [run, done] = arguments;
    const field = document.querySelector('main form input, main form textarea');
    const notices = document.querySelector('.notices');
    field.value = `note of the benchmark ${run}`;
    field.dispatchEvent(new Event('input', { bubbles: true }));
    setTimeout(() => {
        const start = performance.now();
        const observer = new MutationObserver(() => {
            if (!notices.innerText.includes('Written')) return;
            observer.disconnect();
            done(performance.now() - start);
        });
        observer.observe(document.body, { subtree: true, childList: true, characterData: true, attributes: true });
        field.form.requestSubmit();
    }, 100);
";

fn median(times: &[f64]) -> f64 {
    let mut times = times.to_vec();
    times.sort_by(f64::total_cmp);
    times[times.len() / 2]
}
