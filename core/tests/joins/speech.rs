//! What is read out against what is shown: the words, read back as a number, are the figure on the screen.

use super::books::{config, entries, folded};
use pitleaf_core::book::{Fact, judged};
use pitleaf_core::spoken;
use proptest::prelude::*;

const WORDS: [&str; 20] = [
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
const TENS: [&str; 8] =
    ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];

/// A number under a thousand from its English words.
fn whole(words: &str) -> f64 {
    words.replace('-', " ").split_whitespace().fold(0.0, |sum, word| {
        if word == "hundred" {
            return sum * 100.0;
        }
        let unit = (0_u8..).zip(WORDS).find(|(_, known)| *known == word);
        let ten = (2_u8..).zip(TENS).find(|(_, known)| *known == word);
        sum + unit.map_or(0.0, |(value, _)| f64::from(value))
            + ten.map_or(0.0, |(value, _)| f64::from(value) * 10.0)
    })
}

/// The value of a figure said with its unit: “two and a half thou”, “nought point nought six millimetres”.
fn value(said: &str) -> f64 {
    let sign = if said.starts_with("minus ") { -1.0 } else { 1.0 };
    let said = said.trim_start_matches("minus ");
    if let Some((before, behind)) = said.split_once(" point ") {
        let digits = behind
            .split(' ')
            .map_while(|word| WORDS.iter().take(10).position(|known| *known == word));
        let digits: String = digits.map(|digit| digit.to_string()).collect();
        return sign * (whole(before) + format!("0.{digits}").parse::<f64>().expect("digits"));
    }
    let part = match said {
        said if said.contains("three quarters") => 0.75,
        said if said.contains("quarter") => 0.25,
        said if said.contains("half") => 0.5,
        _ => 0.0,
    };
    let is_part_alone =
        ["half", "a quarter", "three quarters of"].iter().any(|start| said.starts_with(start));
    let before = said.split(" and a ").next().unwrap_or(said);
    let before = before.split(" and three quarters").next().unwrap_or(before);
    sign * (part + if is_part_alone { 0.0 } else { whole(before) })
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn the_figure_said_is_the_figure_shown(entries in entries()) {
        let book = folded(&entries);
        let sheet = book.sheet();
        for entry in &entries {
            let Fact::Figure(figure) = &entry.fact else { continue };
            let (_, reading, judged) = judged(figure, &sheet).expect("a figure of a known row");
            let said = spoken::verdict(&judged.verdict, &reading);
            let pieces: Vec<&str> = said.split("; ").collect();
            prop_assert_eq!(pieces[0], judged.verdict.call.word().to_lowercase(), "the call");
            let unit = reading.unit();
            let shown = reading.amount().value(unit);
            prop_assert!((value(pieces[1]) - shown).abs() < 1e-6, "{} is {}", shown, said);
            if let Some((far, _)) = pieces[2].split_once(" the ")
                && let Some((far, side)) = far.rsplit_once(' ')
            {
                let verdict = &judged.verdict;
                let (span, sign) = match side {
                    "above" => (verdict.above_lower, 1.0),
                    "under" => (verdict.above_lower, -1.0),
                    "below" => (verdict.below_upper, 1.0),
                    "over" => (verdict.below_upper, -1.0),
                    _ => continue,
                };
                let span = span.expect("an edge it speaks of").value(unit);
                let step = reading.step().value(unit);
                prop_assert!((value(far) * sign - span).abs() <= step / 2.0 + 1e-9, "{} is {}", span, said);
            }
        }
    }
}
