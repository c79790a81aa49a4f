//! Finding a thread or a port by any of the names a shop uses.

use super::{BossPort, Series, Thread};
use crate::gather::Gather;
use crate::letters;
use crate::order::InOrder;
use crate::quantity::Unit;

/// The threads that answer a query, best first; none for an empty one.
///
/// Each word must begin a word of the thread: `m10`, `M10x1,25`, `10 fine`, `7/16 20`, `unf 7/16`.
#[must_use]
pub fn find_threads(query: &str) -> Vec<Thread> {
    best(Thread::all(), query, words)
}

/// The ports that answer a query, best first: `-4`, `dash 4`, `orb 7/16`, `7/16-20`.
#[must_use]
pub fn find_ports(query: &str) -> Vec<BossPort> {
    best(BossPort::all(), query, |port| {
        let dash = port.dash();
        let mut all: Vec<String> =
            ["dash", "orb", "boss", "o-ring", "port", "sae"].map(str::to_owned).into();
        all.extend([dash.to_string(), format!("-{dash}"), format!("orb{dash}")]);
        all.extend(port.thread().map(words).unwrap_or_default());
        all
    })
}

fn best<T: Copy>(
    all: impl Iterator<Item = T>,
    query: &str,
    words: impl Fn(T) -> Vec<String>,
) -> Vec<T> {
    let wanted = tidy(query);
    if wanted.is_empty() {
        return Vec::new();
    }
    let mut found: Vec<(usize, T)> = all
        .filter_map(|item| {
            let have = words(item);
            let score = wanted.iter().map(|word| {
                if have.contains(word) {
                    Some(2)
                } else {
                    have.iter().any(|have| have.starts_with(word.as_str())).then_some(1)
                }
            });
            Some((score.sum::<Option<usize>>()?, item))
        })
        .gather();
    found.order_by_key(|(score, _)| std::cmp::Reverse(*score));
    found.into_iter().map(|(_, item)| item).gather()
}

/// Lower case, one kind of ×, one kind of minus, points for commas, no spaces round a ×.
fn tidy(query: &str) -> Vec<String> {
    let even: String = letters::lower(query)
        .chars()
        .map(|c| match c {
            '×' | '*' => 'x',
            '−' | '–' => '-',
            ',' => '.',
            '"' | '″' => ' ',
            c => c,
        })
        .gather();
    even.replace(" x ", "x").split_whitespace().map(str::to_owned).gather()
}

fn words(thread: Thread) -> Vec<String> {
    let size = letters::lower(&thread.size_name());
    let mut words: Vec<String> = size.split_whitespace().map(str::to_owned).gather();
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
