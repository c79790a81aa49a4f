//! Cargo to WebAssembly, by whichever compiler on this machine can.

use crate::language::Language;
use crate::workspace::Workspace;
use anyhow::{Context, Result, bail, ensure};
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

const TARGET: &str = "wasm32-unknown-unknown";

/// The oldest minor version of Rust 1 that the workspace compiles with, from its manifest.
const RUST: &str = env!("CARGO_PKG_RUST_VERSION");

/// What a rustc can do for the target.
#[derive(Debug, PartialEq)]
enum Library {
    /// The target's library is installed.
    Ready,
    /// The library's source is there: cargo can build it, if told that this is wanted on a stable
    /// compiler. Preferred, since it can then be built without what only a panic's words need.
    FromSource,
}

/// Compiles the app and gives the path of its module.
///
/// # Errors
/// No compiler here can make WebAssembly, or the app does not compile.
pub(crate) fn compile(workspace: &Workspace, language: Language) -> Result<PathBuf> {
    // Rustup's or the person's own first, then the one Debian packages bring.
    let (bin, library) = [None, Some(Path::new("/usr/bin"))]
        .into_iter()
        .filter(|bin| ask(*bin, &["--version"]).is_some_and(|words| is_new_enough(&words)))
        .filter_map(|bin| Some((bin, library(Path::new(&ask(bin, &["--print", "sysroot"])?))?)))
        .min_by_key(|(_, library)| *library != Library::FromSource)
        .context(
            "no Rust compiler here can make WebAssembly; run app/setup, \
             which adds the target or installs a compiler that has its source",
        )?;
    let target = workspace.target();
    let mut cargo = tool(bin, "cargo");
    cargo
        .current_dir(workspace.at("."))
        .args(["build", "--locked", "--release", "--package", "pitleaf-app", "--target", TARGET])
        .arg("--target-dir")
        .arg(&target)
        .args(language.feature().map(|feature| format!("--features={feature}")))
        .env("CARGO_ENCODED_RUSTFLAGS", flags(workspace, &library).join("\u{1f}"));
    if library == Library::FromSource {
        cargo
            .env("RUSTC_BOOTSTRAP", "1")
            .args(["-Zbuild-std=std", "-Zbuild-std-features=optimize_for_size"]);
    }
    let status = cargo.status().context("cargo could not be started")?;
    ensure!(status.success(), "the app did not compile; cargo's own words stand above");
    let module = target.join(TARGET).join("release/pitleaf.wasm");
    if !module.is_file() {
        bail!("cargo was content but left no {}", module.display());
    }
    Ok(module)
}

/// A tool from `bin`, or from the path; free of what an outer `cargo run` put in its surroundings.
fn tool(bin: Option<&Path>, name: &str) -> Command {
    let mut command = match bin {
        None => Command::new(name),
        Some(bin) => {
            let mut command = Command::new(bin.join(name));
            let path = std::env::var_os("PATH").unwrap_or_default();
            let paths = std::iter::once(bin.to_owned()).chain(std::env::split_paths(&path));
            if let Ok(paths) = std::env::join_paths(paths) {
                command.env("PATH", paths);
            }
            command.env_remove("LD_LIBRARY_PATH").env_remove("RUSTUP_TOOLCHAIN");
            command
        }
    };
    for outer in ["CARGO", "RUSTC", "RUSTDOC", "RUSTC_WRAPPER", "RUSTFLAGS"] {
        command.env_remove(outer);
    }
    command
}

/// What a rustc answers, if there is one and it does.
fn ask(bin: Option<&Path>, question: &[&str]) -> Option<String> {
    let output = tool(bin, "rustc").args(question).stderr(Stdio::null()).output().ok()?;
    let words = String::from_utf8(output.stdout).ok()?;
    output.status.success().then(|| words.trim_end().to_owned())
}

/// Whether a compiler that says `version` of itself can compile this workspace: Debian's plain rustc
/// often can't.
fn is_new_enough(version: &str) -> bool {
    let minor = |text: &str| text.split('.').nth(1)?.parse::<u32>().ok();
    version.starts_with("rustc 1.") && minor(version) >= minor(RUST)
}

fn library(sysroot: &Path) -> Option<Library> {
    let rustlib = sysroot.join("lib/rustlib");
    if rustlib.join("src/rust/library/std/Cargo.toml").is_file() {
        Some(Library::FromSource)
    } else if rustlib.join(TARGET).join("lib").is_dir() {
        Some(Library::Ready)
    } else {
        None
    }
}

/// Flags that keep out of the download whatever a phone has no use for.
fn flags(workspace: &Workspace, library: &Library) -> Vec<String> {
    match library {
        // A panic ends the page at once, without words or places: the start script says so in a
        // sentence. `{:?}` prints nothing in the app, so no sentence may rest on it.
        Library::FromSource => [
            "-Zunstable-options",
            "-Cpanic=immediate-abort",
            "-Zlocation-detail=none",
            "-Zfmt-debug=none",
        ]
        .map(str::to_owned)
        .into(),
        // A panic's place names a file: not by this machine's path.
        Library::Ready => {
            let home = std::env::var_os("HOME").map(PathBuf::from).unwrap_or_default();
            let cargo_home =
                std::env::var_os("CARGO_HOME").map_or_else(|| home.join(".cargo"), PathBuf::from);
            [(cargo_home, "/cargo"), (workspace.at(""), "/pitleaf/")]
                .map(|(from, to)| format!("--remap-path-prefix={}={to}", from.display()))
                .into()
        }
    }
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
    fn a_ready_library_is_told_from_its_source_and_from_neither() {
        let root = tempfile::tempdir().expect("a folder for this test");
        let rustlib = root.path().join("lib/rustlib");
        assert_eq!(library(root.path()), None, "an empty sysroot");
        fs::create_dir_all(rustlib.join(TARGET).join("lib")).expect("library folder");
        assert_eq!(library(root.path()), Some(Library::Ready), "with the library");
        fs::create_dir_all(rustlib.join("src/rust/library/std")).expect("source folder");
        fs::write(rustlib.join("src/rust/library/std/Cargo.toml"), "").expect("source");
        assert_eq!(library(root.path()), Some(Library::FromSource), "the source is preferred");
    }
}
