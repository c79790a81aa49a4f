//! Finding a thread or a port by any of the names a shop uses.

use super::{BossPort, Series, Thread};
use crate::find::Index;
use crate::letters;
use crate::quantity::Unit;

/// The threads that answer a query, best first; none for an empty one.
///
/// Each word must begin a word of the thread: `m10`, `M10x1,25`, `10 fine`, `7/16 20`, `unf 7/16`.
#[must_use]
pub fn find_threads(query: &str) -> Vec<Thread> {
    best(Thread::all(), query, thread_words)
}

/// The ports that answer a query, best first: `-4`, `dash 4`, `orb 7/16`, `7/16-20`.
#[must_use]
pub fn find_ports(query: &str) -> Vec<BossPort> {
    best(BossPort::all(), query, port_words)
}

fn best<T: Copy>(
    all: impl Iterator<Item = T>,
    query: &str,
    words: impl Fn(T) -> Vec<String>,
) -> Vec<T> {
    let mut index = Index::default();
    let mut things = Vec::new();
    for thing in all {
        index.put(&[(1, &words(thing).join(" "))]);
        things.push(thing);
    }
    index.ask(query).into_iter().map(|(number, _)| things[number as usize]).collect()
}

/// Every name of a port.
pub(crate) fn port_words(port: BossPort) -> Vec<String> {
    let dash = port.dash();
    let mut all: Vec<String> =
        ["dash", "orb", "boss", "o-ring", "port", "sae"].map(str::to_owned).into();
    all.extend([dash.to_string(), format!("-{dash}"), format!("orb{dash}")]);
    all.extend(port.thread().map(thread_words).unwrap_or_default());
    all
}

/// Every name of a thread.
pub(crate) fn thread_words(thread: Thread) -> Vec<String> {
    let size = letters::lower(&thread.size_name());
    let mut words: Vec<String> = size.split_whitespace().map(str::to_owned).collect();
    let last = words.last().cloned().unwrap_or_default();
    let grade = match thread.series() {
        Series::MetricCoarse | Series::Unc => "coarse",
        Series::MetricFine | Series::Unf => "fine",
        Series::Un => "constant",
    };
    words.push(grade.to_owned());
    if let Some(count) = thread.threads_per_inch() {
        let decimal = thread.diameter().exact_figure(Unit::Inch, 4).unwrap_or_default();
        let short = decimal.trim_start_matches('0').to_owned();
        // Both `1 1/16-12` and `1-1/16-12` are written; the first comes as two words.
        let joined = size.replace(' ', "-");
        for size in [joined, last] {
            words.extend([format!("{size}-{count}"), format!("{size}x{count}")]);
        }
        words.push(count.to_string());
        words.extend([decimal, short, "inch".to_owned(), "unified".to_owned()]);
        words.push(letters::lower(thread.series().symbol()));
    } else {
        let pitch = thread.pitch().exact_figure(Unit::Millimetre, 3).unwrap_or_default();
        let bare = size.trim_start_matches('m').to_owned();
        words.extend([format!("{size}x{pitch}"), format!("{bare}x{pitch}"), bare, pitch]);
        words.push("metric".to_owned());
    }
    words
}
