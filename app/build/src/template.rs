//! Text with `{{name}}` places to be filled.

use anyhow::{Result, bail};

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

#[cfg(test)]
mod tests {
    use super::*;

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
