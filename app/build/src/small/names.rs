//! The names that the module shares with its script, shortened in both; what nothing calls taken out.

use anyhow::{Context, Result, ensure};
use std::collections::BTreeMap;

/// Classes for streams of server functions, which Leptos brings along and the app does not have. Their
/// exports start with the same word in small letters.
const UNUSED: &str = "IntoUnderlying";

/// Names that module and script share: as wasm-bindgen gave them → as wasm-opt shortened them.
#[derive(Debug, Default, PartialEq)]
pub(crate) struct Names {
    imports: BTreeMap<String, String>,
    exports: BTreeMap<String, String>,
}

/// What wasm-opt is told so that it shortens the names, prints them, and takes out the exports that only
/// [`UNUSED`] classes call.
pub(crate) const SHORTEN: [&str; 2] =
    ["--remove-exports=*intounderlying*", "--minify-imports-and-exports-and-modules"];

impl Names {
    /// Reads what wasm-opt prints: `["./app_bg.js", "long", "a"],` for an import, `["long", "b"],`
    /// for an export.
    ///
    /// # Errors
    /// It printed something else.
    pub(crate) fn read(printed: &str) -> Result<Self> {
        let mut names = Self::default();
        for line in printed.lines().map(str::trim).filter(|line| line.starts_with("[\"")) {
            let line = line.trim_end_matches(',').trim_start_matches('[').trim_end_matches(']');
            let parts: Vec<&str> = line.split(", ").map(|part| part.trim_matches('"')).collect();
            match parts[..] {
                [_, long, short] => names.imports.insert(long.to_owned(), short.to_owned()),
                [long, short] => names.exports.insert(long.to_owned(), short.to_owned()),
                _ => anyhow::bail!("wasm-opt printed a line of names that can't be read: {line}"),
            };
        }
        ensure!(!names.exports.is_empty(), "wasm-opt printed no names");
        Ok(names)
    }
}

/// The script of a module with shortened names, without what nothing calls.
///
/// # Errors
/// The script does not look as expected.
pub(crate) fn shorten(script: &str, names: &Names) -> Result<String> {
    renamed(&without_unused(script)?, names)
}

/// The script without the classes that nothing makes.
fn without_unused(script: &str) -> Result<String> {
    let mut kept = String::new();
    let mut is_unused = false;
    for line in script.lines() {
        // What is indented, or closes, belongs to what stands before it.
        if !line.starts_with([' ', '}']) {
            is_unused = line.contains(UNUSED);
        }
        if !is_unused {
            kept.push_str(line);
            kept.push('\n');
        }
    }
    ensure!(!kept.contains(UNUSED), "the script still names {UNUSED}");
    Ok(kept)
}

/// The script with the module's short names, without imports that the module does not have.
fn renamed(script: &str, names: &Names) -> Result<String> {
    let (before, rest) = script.split_once("    const import0 = {\n").context("no imports")?;
    let (imports, after) = rest.split_once("\n    };\n").context("no end of the imports")?;
    let mut text = format!("{before}    const import0 = {{\n");
    let mut is_wanted = true;
    let mut found = 0;
    for line in imports.lines() {
        // An import starts at eight spaces and its name; what belongs to it is indented further.
        let key = line.strip_prefix("        ").filter(|line| !line.starts_with([' ', '}']));
        let mut line = line.to_owned();
        match key.and_then(|line| line.split_once(": ")) {
            None | Some(("__proto__", _)) => {}
            Some((name, rest)) => {
                let short = names.imports.get(name);
                is_wanted = short.is_some();
                if let Some(short) = short {
                    found += 1;
                    line = format!("{short}: {rest}");
                }
            }
        }
        if is_wanted {
            text.push_str(&line);
            text.push('\n');
        }
    }
    ensure!(
        found == names.imports.len(),
        "the module has {} imports, of which the script has {found}",
        names.imports.len()
    );
    text.push_str("    };\n");
    text.push_str(&after.replacen("\"./pitleaf_bg.js\": import0", "a: import0", 1));
    let mut pieces = text.split("wasm.");
    let mut short = pieces.next().unwrap_or_default().to_owned();
    for piece in pieces {
        let end = piece.find(|c: char| !c.is_alphanumeric() && c != '_').unwrap_or(piece.len());
        let (name, rest) = piece.split_at(end);
        short.push_str("wasm.");
        short.push_str(names.exports.get(name).map_or(name, String::as_str));
        short.push_str(rest);
    }
    ensure!(short.contains("a: import0"), "the script's imports have another name");
    Ok(short)
}

#[cfg(test)]
mod tests {
    use super::*;

    const SCRIPT: &str = "\
export class IntoUnderlyingSink {
    free() {
        wasm.intounderlyingsink_free(this);
    }
}
if (Symbol.dispose) IntoUnderlyingSink.prototype.free;

function imports() {
    const import0 = {
        __proto__: null,
        __wbg_body_5f97: function(arg0) {
            const state = {
            };
            return arg0.body;
        },
        __wbg_cancel_1234: function() { return handleError(function (arg0) {
            return arg0.cancel();
        }, arguments); },
    };
    return {
        \"./pitleaf_bg.js\": import0,
    };
}
const IntoUnderlyingSinkFinalization = (typeof FinalizationRegistry)
    ? {}
    : new FinalizationRegistry(ptr => wasm.intounderlyingsink_free(ptr));
wasm.memory.grow(wasm.__wbindgen_malloc(1));
";

    const PRINTED: &str = "{
 \"imports\": [
  [\"./pitleaf_bg.js\", \"__wbg_body_5f97\", \"b\"]
 ],
\"exports\": [
  [\"memory\", \"c\"],
  [\"__wbindgen_malloc\", \"d\"]
 ]
}
";

    #[test]
    fn shared_names_are_shortened_and_what_is_unused_goes() {
        let names = Names::read(PRINTED).expect("names");
        let script = without_unused(SCRIPT).expect("a script as wasm-bindgen writes it");
        assert_eq!(
            renamed(&script, &names).expect("imports"),
            "
function imports() {
    const import0 = {
        __proto__: null,
b: function(arg0) {
            const state = {
            };
            return arg0.body;
        },
    };
    return {
        a: import0,
    };
}
wasm.c.grow(wasm.d(1));
"
        );
    }

    #[test]
    fn what_does_not_look_as_expected_is_refused() {
        let error = Names::read("[parse exception]").expect_err("no names");
        assert_eq!(error.to_string(), "wasm-opt printed no names");
        let names = Names::default();
        let error = renamed("const other = {};", &names).expect_err("no imports");
        assert_eq!(error.to_string(), "no imports");
        let names = Names::read(PRINTED).expect("names");
        let error = renamed("    const import0 = {\n        c: 1\n    };\n", &names);
        let error = error.expect_err("an import is missing").to_string();
        assert_eq!(error, "the module has 1 imports, of which the script has 0");
        let error = without_unused("  a(IntoUnderlyingSink);").expect_err("still there");
        assert_eq!(error.to_string(), "the script still names IntoUnderlying");
    }
}
