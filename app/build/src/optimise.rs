//! The module made small, by binaryen's wasm-opt.

use crate::workspace::Workspace;
use anyhow::{Context, Result, ensure};
use std::fs;
use std::path::Path;
use std::process::Command;

/// Optimises a module for size and gives its bytes.
///
/// Never with `--all-features`: browsers refuse the module it makes.
///
/// # Errors
/// node or the npm packages are missing, or wasm-opt refuses the module.
pub(crate) fn optimise(workspace: &Workspace, module: &Path) -> Result<Vec<u8>> {
    let tool = workspace.node_modules().join("binaryen/bin/wasm-opt");
    ensure!(tool.exists(), "wasm-opt is missing; run app/setup, which fetches it from npm");
    let small = module.with_file_name("optimised.wasm");
    let status = Command::new("node")
        .arg(&tool)
        .args(["-Oz", "--strip-debug", "--strip-producers", "-o"])
        .args([&small, module])
        .status()
        .context("node could not be started; run app/setup")?;
    ensure!(status.success(), "wasm-opt refused {}", module.display());
    fs::read(&small).with_context(|| format!("{} can't be read", small.display()))
}
