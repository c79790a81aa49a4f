//! One stylesheet of many: what it imports, and the fonts and pictures it names.

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

/// Puts each sheet that `sheet` imports in its place, and takes in each file that a `url(…)` names.
///
/// `read` gives the bytes of a file by the path as written.
///
/// # Errors
/// A `url(…)` that is not closed, leaves the origin, or names a file that isn't there; an import without
/// its layer.
pub(crate) fn assemble(
    sheet: &str,
    mut read: impl FnMut(&str) -> Result<Vec<u8>>,
) -> Result<Stylesheet> {
    let joined = with_imports(&without_comments(sheet), &mut read)?;
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

/// Each line `@import url("…") layer(…);` as the layer it stands for: one download instead of many.
fn with_imports(sheet: &str, read: &mut impl FnMut(&str) -> Result<Vec<u8>>) -> Result<String> {
    let lines = sheet.lines().map(|line| {
        let Some(import) = line.strip_prefix("@import ") else { return Ok(line.to_owned()) };
        let parts = import
            .strip_prefix("url(\"")
            .and_then(|rest| rest.strip_suffix(");"))
            .and_then(|rest| rest.split_once("\") layer("));
        let (path, layer) = parts
            .with_context(|| format!("{line:?} is not written as @import url(\"…\") layer(…);"))?;
        let css = String::from_utf8(read(path)?).with_context(|| format!("{path:?} is no text"))?;
        Ok(format!("@layer {layer} {{\n{}\n}}", without_comments(&css)))
    });
    Ok(lines.collect::<Result<Vec<_>>>()?.join("\n"))
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
        assemble(css, |path| match path {
            "fonts/a.woff2" => Ok(b"abc".to_vec()),
            "b.css" => Ok(b"/* two */\nd { src: url(fonts/a.woff2); }\n".to_vec()),
            _ => bail!("there is no such file"),
        })
    }

    #[test]
    fn an_imported_sheet_stands_in_its_layer_without_comments() {
        let css = "/* one\n */ @layer x;\n\n@import url(\"b.css\") layer(x);\na { b: c; }";
        let sheet = assembled(css).expect("found");
        assert_eq!(
            sheet.css,
            "@layer x;\n@layer x {\nd { src: url(a-ba7816bf8f01cfea.woff2); }\n}\na { b: c; }"
        );
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
            (
                "@import \"b.css\";",
                "\"@import \\\"b.css\\\";\" is not written as @import url(\"…\") layer(…);",
            ),
            ("x { src: url(b.woff2); }", "the stylesheet names \"b.woff2\": there is no such file"),
        ] {
            let error = assembled(css).expect_err(css);
            assert_eq!(format!("{error:#}"), sentence, "for {css}");
        }
    }
}
