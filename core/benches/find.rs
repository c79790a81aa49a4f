//! How long finding takes with a book of a few thousand notes: `cargo bench -p pitleaf-core --bench find`.

use pitleaf_core::book::{Book, Entry, EntryId, FORMAT, Fact};
use pitleaf_core::find::Finder;
use pitleaf_core::limits::BuildKind;
use std::hint::black_box;
use std::time::{Duration, Instant};

/// Notes in the book, each of eight words.
const NOTES: u64 = 4000;
/// Different words among them, as a shop's notes have; and the worst, where each word is another.
const VOCABULARIES: [(&str, u64); 2] = [("3,000 words", 3_000), ("32,000 words", 32_000)];
/// What is typed, key by key: known words, misspelt ones, and one that is nowhere.
const QUERIES: [&str; 4] = ["appex seal gap", "torqe tension bolt", "comprssion", "xylophone"];

fn main() {
    for (name, words) in VOCABULARIES {
        let book = book(words);
        let (build, sheet) = (EntryId("kestrel".into()), book.sheet());
        let made = median((0..15).map(|_| timed(|| Finder::of(&book, Some(&build), &sheet))));
        let finder = Finder::of(&book, Some(&build), &sheet);
        let typed: Vec<&str> =
            QUERIES.iter().flat_map(|query| (1..=query.len()).map(|end| &query[..end])).collect();
        let mut times: Vec<Duration> = typed
            .iter()
            .map(|query| median((0..15).map(|_| timed(|| finder.find(query)))))
            .collect();
        times.sort_unstable();
        println!(
            "{NOTES} notes of {name}: made ready in {made:.1?}; found in {:.2?} (median of {} beginnings), {:.2?} at most",
            times[times.len() / 2],
            times.len(),
            times[times.len() - 1]
        );
    }
}

fn timed<T>(work: impl FnOnce() -> T) -> Duration {
    let start = Instant::now();
    black_box(work());
    start.elapsed()
}

fn median(times: impl Iterator<Item = Duration>) -> Duration {
    let mut times: Vec<Duration> = times.collect();
    times.sort_unstable();
    times[times.len() / 2]
}

/// A build with notes of made-up words, the same each time.
fn book(vocabulary: u64) -> Book {
    let mut book = Book::default();
    let mut state = 1_u64;
    let mut word = || {
        state =
            state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        let mut number = (state >> 33) % vocabulary;
        let mut word = String::new();
        for _ in 0..3 {
            word.push(char::from(b'b' + (number % 20) as u8));
            word.push(char::from(b"aeiou"[(number % 5) as usize]));
            number /= 20;
        }
        word
    };
    for order in 0..=NOTES {
        let (id, fact) = if order == 0 {
            let (name, kind) = ("Kestrel".to_owned(), BuildKind::NaturallyAspirated);
            ("kestrel".to_owned(), Fact::Opened { name, kind, rotors: 2, demo: true })
        } else {
            let words = (0..8).map(|_| word()).collect::<Vec<_>>().join(" ");
            (format!("n{order}"), Fact::Note { about: String::new(), words })
        };
        let (id, build) = (EntryId(id.into()), EntryId("kestrel".into()));
        book.take(Entry { format: FORMAT, id, build, order, at: 0, fact });
    }
    book
}
