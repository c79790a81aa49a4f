//! Text with `{{name}}` places to be filled.

use anyhow::{Context, Result, bail};

/// Fills every `{{name}}` of a template.
///
/// # Errors
/// A place that has no value, or a value that has no place: either is a mistake in the template.
pub(crate) fn fill(template: &str, values: &[(&str, &str)]) -> Result<String> {
    let mut text = template.to_owned();
    for (name, value) in values {
        let place = format!("{{{{{name}}}}}");
        if !template.contains(&place) {
            bail!("the template has no place {place}");
        }
        text = text.replace(&place, value);
    }
    if let Some(rest) = text.split("{{").nth(1) {
        bail!("nothing fills {{{{{}}}}} in the template", rest.split("}}").next().unwrap_or(rest));
    }
    Ok(text)
}

/// Puts the words of a language in the place of every `{{say: English}}`.
///
/// # Errors
/// As `words`, and a mark without its end.
pub(crate) fn say(template: &str, words: impl Fn(&str) -> Result<String>) -> Result<String> {
    let mut pieces = template.split("{{say: ");
    let mut text = pieces.next().unwrap_or_default().to_owned();
    for piece in pieces {
        let (english, behind) = piece.split_once("}}").context("a {{say: without its end")?;
        text += &words(english)?;
        text += behind;
    }
    Ok(text)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn texts_are_said_in_another_language_and_none_is_left_out() {
        let loud = |english: &str| Ok(english.to_uppercase());
        assert_eq!(say("<p>{{say: one}}, {{say: two}}", loud).expect("said"), "<p>ONE, TWO");
        let error = say("{{say: one", loud).expect_err("no end");
        assert_eq!(error.to_string(), "a {{say: without its end");
    }

    #[test]
    fn places_are_filled_everywhere() {
        let text = fill("{{a}} and {{b}}, {{a}}", &[("a", "1"), ("b", "2")]).expect("filled");
        assert_eq!(text, "1 and 2, 1");
    }

    #[test]
    fn a_place_without_value_and_a_value_without_place_are_refused() {
        let error = fill("{{a}} {{c}}", &[("a", "1")]).expect_err("c has no value");
        assert_eq!(error.to_string(), "nothing fills {{c}} in the template");
        let error = fill("{{a}}", &[("a", "1"), ("b", "2")]).expect_err("b has no place");
        assert_eq!(error.to_string(), "the template has no place {{b}}");
    }
}
