//! The module made small, by binaryen's wasm-opt.

use crate::script::{self, Names};
use crate::workspace::Workspace;
use anyhow::{Context, Result, ensure};
use std::fs;
use std::path::Path;
use std::process::{Command, Stdio};

/// Optimises a module for size; gives its bytes, and the names it now shares with its script.
///
/// Never with `--all-features`: browsers refuse the module it makes.
///
/// # Errors
/// node or the npm packages are missing, or wasm-opt refuses the module.
pub(crate) fn optimise(workspace: &Workspace, module: &Path) -> Result<(Vec<u8>, Names)> {
    let tool = workspace.node_modules().join("binaryen/bin/wasm-opt");
    ensure!(tool.exists(), "wasm-opt is missing; run app/setup, which fetches it from npm");
    let small = module.with_file_name("optimised.wasm");
    let output = Command::new("node")
        .arg(&tool)
        .arg(script::without_unused_exports())
        // The first kilobyte is the far end of the stack, so no address of data lies there.
        .args(["-Oz", "--low-memory-unused", "--strip-debug", "--strip-producers"])
        .args(["--minify-imports-and-exports-and-modules", "-o"])
        .args([&small, module])
        .stderr(Stdio::inherit())
        .output()
        .context("node could not be started; run app/setup")?;
    ensure!(output.status.success(), "wasm-opt refused {}", module.display());
    let names = Names::read(&String::from_utf8_lossy(&output.stdout))?;
    let wasm = fs::read(&small).with_context(|| format!("{} can't be read", small.display()))?;
    Ok((wasm, names))
}
