//! One stylesheet of many, and the fonts and pictures it names.

use crate::hash::hashed_name;
use anyhow::{Context, Result, bail};
use std::collections::BTreeMap;

/// A finished stylesheet.
#[derive(Debug)]
pub(crate) struct Stylesheet {
    /// Its text, with every `url(…)` rewritten to a hashed name.
    pub(crate) css: String,
    /// What it names, by hashed name.
    pub(crate) assets: BTreeMap<String, Vec<u8>>,
}

/// Joins sheets in the order given, and takes in each file that a `url(…)` names.
///
/// `read` gives the bytes of a file by the path as written.
///
/// # Errors
/// A `url(…)` that is not closed, leaves the origin, or names a file that isn't there.
pub(crate) fn assemble(
    sheets: &[String],
    mut read: impl FnMut(&str) -> Result<Vec<u8>>,
) -> Result<Stylesheet> {
    let joined = without_comments(&sheets.join("\n"));
    let mut assets = BTreeMap::new();
    let mut parts = joined.split("url(");
    let mut css = parts.next().unwrap_or_default().to_owned();
    for part in parts {
        let (path, rest) =
            part.split_once(')').context("a url( in the stylesheet is not closed")?;
        let path = path.trim().trim_matches(['"', '\'']);
        if path.contains(':') || path.starts_with('/') {
            bail!("the stylesheet names {path:?}; only files of this app are allowed");
        }
        let bytes = read(path).with_context(|| format!("the stylesheet names {path:?}"))?;
        let name = hashed_name(path.rsplit('/').next().unwrap_or(path), &bytes);
        css.push_str("url(");
        css.push_str(&name);
        css.push(')');
        css.push_str(rest);
        assets.insert(name, bytes);
    }
    Ok(Stylesheet { css, assets })
}

/// Comments, indentation and empty lines are for the reader of the source, not for the phone.
fn without_comments(css: &str) -> String {
    let mut kept = String::with_capacity(css.len());
    let mut rest = css;
    while let Some((before, after)) = rest.split_once("/*") {
        kept.push_str(before);
        rest = after.split_once("*/").map_or("", |(_, after)| after);
    }
    kept.push_str(rest);
    kept.lines().map(str::trim).filter(|line| !line.is_empty()).collect::<Vec<_>>().join("\n")
}

#[cfg(test)]
mod tests {
    use super::*;

    fn assembled(css: &str) -> Result<Stylesheet> {
        assemble(&[css.to_owned()], |path| match path {
            "fonts/a.woff2" => Ok(b"abc".to_vec()),
            _ => bail!("there is no such file"),
        })
    }

    #[test]
    fn sheets_are_joined_in_order_without_comments() {
        let sheets =
            ["/* one\n */ a {\n  b: c;\n}\n\n".to_owned(), "d { e: f; } /* two */".to_owned()];
        let sheet = assemble(&sheets, |_| bail!("nothing is named")).expect("no files named");
        assert_eq!(sheet.css, "a {\nb: c;\n}\nd { e: f; }");
    }

    #[test]
    fn a_named_file_is_taken_in_under_its_hash() {
        let sheet =
            assembled("x { src: url(\"fonts/a.woff2\") format(\"woff2\"); }").expect("found");
        assert_eq!(sheet.css, "x { src: url(a-ba7816bf8f01cfea.woff2) format(\"woff2\"); }");
        assert_eq!(sheet.assets["a-ba7816bf8f01cfea.woff2"], b"abc", "its bytes");
    }

    #[test]
    fn what_is_not_ours_or_not_there_is_refused() {
        for (css, sentence) in [
            (
                "x { src: url(https://elsewhere/a.woff2); }",
                "the stylesheet names \"https://elsewhere/a.woff2\"; only files of this app are allowed",
            ),
            (
                "x { src: url(/a.woff2); }",
                "the stylesheet names \"/a.woff2\"; only files of this app are allowed",
            ),
            ("x { src: url(a.woff2", "a url( in the stylesheet is not closed"),
            ("x { src: url(b.woff2); }", "the stylesheet names \"b.woff2\": there is no such file"),
        ] {
            let error = assembled(css).expect_err(css);
            assert_eq!(format!("{error:#}"), sentence, "for {css}");
        }
    }
}
