//! Where no toolchain here has the standard library for WebAssembly, but one has its source, as Debian's
//! packages do: the library is compiled along.
//!
//! Cargo calls that unstable (`-Zbuild-std`), and a stable compiler takes it only if told that this is
//! wanted. Nothing else of the build rests on it.

use crate::compile::{ask, build};
use crate::language::Language;
use crate::workspace::Workspace;
use anyhow::{Context, Result};
use std::path::{Path, PathBuf};
use std::process::Command;

/// The oldest minor version of Rust 1 that the workspace compiles with, from its manifest.
const RUST: &str = env!("CARGO_PKG_RUST_VERSION");

/// Compiles the app with a standard library of its own and gives the path of its module.
///
/// # Errors
/// No compiler here has the library's source, or the app does not compile.
pub(crate) fn compile(workspace: &Workspace, language: Language) -> Result<PathBuf> {
    // Rustup's or the person's own first, then the one Debian packages bring.
    let bin = [None, Some(Path::new("/usr/bin"))]
        .into_iter()
        .find(|bin| {
            ask(tool(*bin, "rustc"), &["--version"]).is_some_and(|words| is_new_enough(&words))
                && ask(tool(*bin, "rustc"), &["--print", "sysroot"])
                    .is_some_and(|sysroot| has_source(Path::new(&sysroot)))
        })
        .context(
            "no Rust compiler here has the standard library or its source for WebAssembly; \
             run app/setup, which adds one of them",
        )?;
    let mut cargo = tool(bin, "cargo");
    cargo.env("RUSTC_BOOTSTRAP", "1").arg("-Zbuild-std=std,panic_abort");
    build(cargo, workspace, language)
}

/// A tool from `bin`, or from the path.
fn tool(bin: Option<&Path>, name: &str) -> Command {
    let Some(bin) = bin else { return Command::new(name) };
    let mut command = Command::new(bin.join(name));
    let path = std::env::var_os("PATH").unwrap_or_default();
    let paths = std::iter::once(bin.to_owned()).chain(std::env::split_paths(&path));
    if let Ok(paths) = std::env::join_paths(paths) {
        command.env("PATH", paths);
    }
    command.env_remove("LD_LIBRARY_PATH").env_remove("RUSTUP_TOOLCHAIN");
    command
}

/// Whether a compiler that says `version` of itself can compile this workspace: Debian's plain rustc
/// often can't.
fn is_new_enough(version: &str) -> bool {
    let minor = |text: &str| text.split('.').nth(1)?.parse::<u32>().ok();
    version.starts_with("rustc 1.") && minor(version) >= minor(RUST)
}

fn has_source(sysroot: &Path) -> bool {
    sysroot.join("lib/rustlib/src/rust/library/std/Cargo.toml").is_file()
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::fs;

    #[test]
    fn a_compiler_older_than_the_manifest_allows_is_passed_over() {
        assert!(is_new_enough("rustc 1.95.0 (59807616e 2026-04-14)"), "the oldest allowed");
        assert!(is_new_enough("rustc 1.103.1"), "a newer one");
        assert!(!is_new_enough("rustc 1.63.0"), "an older one");
        assert!(!is_new_enough("not a compiler"), "something else");
    }

    #[test]
    fn a_sysroot_has_the_source_or_not() {
        let root = tempfile::tempdir().expect("a folder for this test");
        assert!(!has_source(root.path()), "an empty sysroot");
        let source = root.path().join("lib/rustlib/src/rust/library/std");
        fs::create_dir_all(&source).expect("source folder");
        fs::write(source.join("Cargo.toml"), "").expect("source");
        assert!(has_source(root.path()), "with the source");
    }
}
