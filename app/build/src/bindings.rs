//! The module's JavaScript half, by wasm-bindgen.

use crate::workspace::Workspace;
use anyhow::{Context, Result, bail, ensure};
use std::fs;
use std::path::{Path, PathBuf};
use wasm_bindgen_cli_support::Bindgen;

/// The version of the tool's half, as Cargo.toml pins it.
const OURS: &str = "0.2.130";

/// The module after wasm-bindgen, and the script that loads it.
pub(crate) struct Bound {
    /// Where the rewritten module lies.
    pub(crate) wasm: PathBuf,
    /// The script's text. Its `default` export takes `{ module_or_path }`.
    pub(crate) script: String,
}

/// Makes the bindings of a compiled module.
///
/// # Errors
/// Cargo.lock holds another version of `wasm-bindgen`, or the module can't be bound.
pub(crate) fn bind(workspace: &Workspace, module: &Path) -> Result<Bound> {
    let lock =
        fs::read_to_string(workspace.at("Cargo.lock")).context("Cargo.lock can't be read")?;
    same_version(&lock)?;
    let folder = workspace.target().join("pitleaf-build");
    // What an earlier build left must not pass for this one's.
    if folder.exists() {
        fs::remove_dir_all(&folder)
            .with_context(|| format!("{} can't be emptied", folder.display()))?;
    }
    Bindgen::new()
        .input_path(module)
        .web(true)?
        .typescript(false)
        .omit_default_module_path(true)
        .remove_name_section(true)
        .remove_producers_section(true)
        .generate(&folder)
        .context("wasm-bindgen could not read the module")?;
    if folder.join("snippets").exists() {
        bail!("a crate brings JavaScript of its own (snippets), which the build does not ship");
    }
    let script =
        fs::read_to_string(folder.join("pitleaf.js")).context("wasm-bindgen left no script")?;
    Ok(Bound { wasm: folder.join("pitleaf_bg.wasm"), script })
}

/// Both halves of wasm-bindgen speak a private format that changes with every version.
fn same_version(lock: &str) -> Result<()> {
    let theirs = lock
        .split("[[package]]")
        .find(|package| package.contains("\nname = \"wasm-bindgen\"\n"))
        .and_then(|package| package.split("\nversion = \"").nth(1)?.split('"').next())
        .context("Cargo.lock has no wasm-bindgen")?;
    ensure!(
        theirs == OURS,
        "Cargo.lock has wasm-bindgen {theirs}, but this tool was made for {OURS}: \
         set wasm-bindgen in app/Cargo.toml and wasm-bindgen-cli-support in app/build/Cargo.toml \
         to the same version, and OURS in app/build/src/bindings.rs with them"
    );
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_workspace_lock_and_manifest_agree_with_this_tool() {
        let workspace = Workspace::here();
        let lock = fs::read_to_string(workspace.at("Cargo.lock")).expect("Cargo.lock");
        same_version(&lock).expect("the same version of both halves");
        let manifest = fs::read_to_string(workspace.at("app/build/Cargo.toml")).expect("manifest");
        assert!(
            manifest.contains(&format!("wasm-bindgen-cli-support = \"={OURS}\"")),
            "the manifest pins another version than {OURS}"
        );
    }

    #[test]
    fn another_version_is_refused_with_what_to_do() {
        let lock = "[[package]]\nname = \"wasm-bindgen-macro\"\nversion = \"0.2.130\"\n\n\
                    [[package]]\nname = \"wasm-bindgen\"\nversion = \"0.2.131\"\n";
        let error = same_version(lock).expect_err("another version");
        assert_eq!(
            error.to_string(),
            "Cargo.lock has wasm-bindgen 0.2.131, but this tool was made for 0.2.130: \
             set wasm-bindgen in app/Cargo.toml and wasm-bindgen-cli-support in app/build/Cargo.toml \
             to the same version, and OURS in app/build/src/bindings.rs with them"
        );
    }
}
