//! The reminder to carry the book away as a file.

use pitleaf_translated::translated;

const DAY: u64 = 24 * 60 * 60 * 1000;

/// How long since the book was last saved as a file, and what has come since.
///
/// `carried`: when, in milliseconds since 1970, and how many entries it had then.
#[must_use]
#[translated]
pub fn words(carried: Option<(u64, usize)>, now: u64, entries: usize) -> String {
    let Some((at, had)) = carried else {
        return format!("Never saved as a file. {} on this phone alone.", count(entries));
    };
    let days = now.saturating_sub(at) / DAY;
    let when = match days {
        0 => "today".to_owned(),
        1 => "yesterday".to_owned(),
        days => format!("{days} days ago"),
    };
    match entries.saturating_sub(had) {
        0 => format!("Last saved as a file {when}; nothing new since."),
        new => format!("Last saved as a file {when}; {} since on this phone alone.", count(new)),
    }
}

#[translated]
fn count(entries: usize) -> String {
    if entries == 1 { "1 entry".to_owned() } else { format!("{entries} entries") }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn says_how_long_ago_and_what_is_new() {
        assert_eq!(
            words(None, 0, 1),
            "Never saved as a file. 1 entry on this phone alone.",
            "never"
        );
        assert_eq!(
            words(Some((0, 3)), 5, 3),
            "Last saved as a file today; nothing new since.",
            "today"
        );
        assert_eq!(
            words(Some((0, 3)), DAY, 10),
            "Last saved as a file yesterday; 7 entries since on this phone alone.",
            "yesterday"
        );
        assert_eq!(
            words(Some((0, 3)), 9 * DAY, 3),
            "Last saved as a file 9 days ago; nothing new since.",
            "days ago"
        );
        assert_eq!(
            words(Some((5, 3)), 0, 3),
            "Last saved as a file today; nothing new since.",
            "the clock set back"
        );
    }
}
