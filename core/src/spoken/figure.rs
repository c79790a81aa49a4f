//! Numbers in words, as English is spoken in a British workshop.

use super::german;
use crate::language::IS_GERMAN;

const UNDER_TWENTY: [&str; 20] = [
    "nought",
    "one",
    "two",
    "three",
    "four",
    "five",
    "six",
    "seven",
    "eight",
    "nine",
    "ten",
    "eleven",
    "twelve",
    "thirteen",
    "fourteen",
    "fifteen",
    "sixteen",
    "seventeen",
    "eighteen",
    "nineteen",
];
const TENS: [&str; 10] =
    ["", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];

/// A whole number in words, to 999,999; beyond that in digits.
#[must_use]
pub fn whole(number: u32) -> String {
    match number {
        0..20 => UNDER_TWENTY[number as usize].to_owned(),
        20..100 if number.is_multiple_of(10) => TENS[number as usize / 10].to_owned(),
        20..100 => {
            format!("{}-{}", TENS[number as usize / 10], UNDER_TWENTY[number as usize % 10])
        }
        100..1000 => joined(number / 100, "hundred", number % 100, " and "),
        // “two thousand and five”, but “two thousand one hundred”.
        1000..1_000_000 => {
            let rest = number % 1000;
            joined(number / 1000, "thousand", rest, if rest < 100 { " and " } else { " " })
        }
        _ => number.to_string(),
    }
}

fn joined(count: u32, name: &str, rest: u32, link: &str) -> String {
    let head = format!("{} {name}", whole(count));
    if rest == 0 { head } else { format!("{head}{link}{}", whole(rest)) }
}

/// A figure as it stands on the screen (`2.5`, `-0.05`) in words; what is no such figure stays as it is.
#[must_use]
pub fn figure(text: &str) -> String {
    if IS_GERMAN {
        return german::figure(text);
    }
    let (minus, digits) = match text.strip_prefix(['-', '−']) {
        Some(digits) => ("minus ", digits),
        None => ("", text),
    };
    let (before, behind) = digits.split_once('.').unwrap_or((digits, ""));
    let all_digits = |piece: &str| piece.bytes().all(|byte| byte.is_ascii_digit());
    let Ok(count) = before.parse() else { return text.to_owned() };
    if !all_digits(behind) {
        return text.to_owned();
    }
    let mut words = format!("{minus}{}", whole(count));
    if !behind.is_empty() {
        words.push_str(" point");
    }
    for digit in behind.bytes() {
        words.push(' ');
        words.push_str(UNDER_TWENTY[usize::from(digit - b'0')]);
    }
    words
}
