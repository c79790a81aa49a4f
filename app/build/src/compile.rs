//! Cargo to WebAssembly, by the toolchain in use.

use crate::language::Language;
use crate::own_library;
use crate::workspace::Workspace;
use anyhow::{Context, Result, ensure};
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

/// What the phone runs.
const TARGET: &str = "wasm32-unknown-unknown";

/// Whether the toolchain in use has the target's standard library.
fn has_library() -> bool {
    ask(Command::new("rustc"), &["--print", "sysroot"])
        .is_some_and(|sysroot| is_in(Path::new(&sysroot)))
}

fn is_in(sysroot: &Path) -> bool {
    sysroot.join("lib/rustlib").join(TARGET).join("lib").is_dir()
}

/// Compiles the app and gives the path of its module.
///
/// # Errors
/// No compiler here can make WebAssembly, or the app does not compile.
pub(crate) fn compile(workspace: &Workspace, language: Language) -> Result<PathBuf> {
    if has_library() {
        return build(Command::new("cargo"), workspace, language);
    }
    println!("the toolchain in use has no library for {TARGET}; looking for its source");
    own_library::compile(workspace, language)
}

/// Runs cargo, with whatever the caller has told it beyond.
///
/// # Errors
/// The app does not compile.
pub(crate) fn build(
    mut cargo: Command,
    workspace: &Workspace,
    language: Language,
) -> Result<PathBuf> {
    // A panic's place names a file: not by this machine's path.
    let home = std::env::var_os("HOME").map(PathBuf::from).unwrap_or_default();
    let cargo_home =
        std::env::var_os("CARGO_HOME").map_or_else(|| home.join(".cargo"), PathBuf::from);
    let flags = [(cargo_home, "/cargo"), (workspace.at(""), "/pitleaf/")]
        .map(|(from, to)| format!("--remap-path-prefix={}={to}", from.display()));
    let target = workspace.target();
    cargo
        .current_dir(workspace.at("."))
        .args(["build", "--locked", "--release", "--package", "pitleaf-app", "--target", TARGET])
        .arg("--target-dir")
        .arg(&target)
        .args(language.feature().map(|feature| format!("--features={feature}")))
        .env("CARGO_ENCODED_RUSTFLAGS", flags.join("\u{1f}"));
    let status = without_outer(&mut cargo).status().context("cargo could not be started")?;
    ensure!(status.success(), "the app did not compile; cargo's own words stand above");
    let module = target.join(TARGET).join("release/pitleaf.wasm");
    ensure!(module.is_file(), "cargo was content but left no {}", module.display());
    Ok(module)
}

/// What a compiler answers, if there is one and it does.
pub(crate) fn ask(mut rustc: Command, question: &[&str]) -> Option<String> {
    let output = without_outer(&mut rustc).args(question).stderr(Stdio::null()).output().ok()?;
    let words = String::from_utf8(output.stdout).ok()?;
    output.status.success().then(|| words.trim_end().to_owned())
}

/// Free of what an outer `cargo run` put in its surroundings.
fn without_outer(command: &mut Command) -> &mut Command {
    for outer in ["CARGO", "RUSTC", "RUSTDOC", "RUSTC_WRAPPER", "RUSTFLAGS"] {
        command.env_remove(outer);
    }
    command
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::fs;

    #[test]
    fn a_sysroot_without_the_targets_library_can_not_compile() {
        let root = tempfile::tempdir().expect("a folder for this test");
        assert!(!is_in(root.path()), "an empty sysroot");
        let library = root.path().join("lib/rustlib").join(TARGET).join("lib");
        fs::create_dir_all(library).expect("library folder");
        assert!(is_in(root.path()), "with the library");
    }
}
