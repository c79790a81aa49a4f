//! Module and script made small, by binaryen's wasm-opt and by terser.

use crate::workspace::Workspace;
use anyhow::{Context, Result, ensure};
use std::fs;
use std::path::Path;
use std::process::Command;

/// Optimises a module for size.
///
/// Never with `--all-features`: browsers refuse the module it makes.
///
/// # Errors
/// node or the npm packages are missing, or wasm-opt refuses the module.
pub(crate) fn module(workspace: &Workspace, module: &Path) -> Result<Vec<u8>> {
    let tool = workspace.node_modules().join("binaryen/bin/wasm-opt");
    ensure!(tool.exists(), "wasm-opt is missing; run app/setup, which fetches it from npm");
    let small = module.with_file_name("optimised.wasm");
    let status = Command::new("node")
        .arg(&tool)
        // The first kilobyte is the far end of the stack, so no address of data lies there.
        .args(["-Oz", "--low-memory-unused", "--strip-debug", "--strip-producers"])
        .arg("-o")
        .args([&small, module])
        .status()
        .context("node could not be started; run app/setup")?;
    ensure!(status.success(), "wasm-opt refused {}", module.display());
    fs::read(&small).with_context(|| format!("{} can't be read", small.display()))
}

/// A module script, made small.
///
/// # Errors
/// node or the npm packages are missing, or terser refuses the script.
pub(crate) fn script(workspace: &Workspace, script: &str) -> Result<String> {
    let folder = workspace.target().join("pitleaf-build");
    let (long, short) = (folder.join("long.js"), folder.join("short.js"));
    fs::write(&long, script).with_context(|| format!("{} can't be written", long.display()))?;
    let tool = workspace.node_modules().join("terser/bin/terser");
    ensure!(tool.exists(), "terser is missing; run app/setup, which fetches it from npm");
    let status = Command::new("node")
        .arg(&tool)
        .args(["--module", "--ecma", "2020", "--compress", "passes=2", "--mangle", "--output"])
        .args([&short, &long])
        .status()
        .context("node could not be started; run app/setup")?;
    ensure!(status.success(), "terser refused {}", long.display());
    fs::read_to_string(&short).with_context(|| format!("{} can't be read", short.display()))
}
