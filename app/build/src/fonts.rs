//! Fonts, cut down to the letters in use.

use crate::workspace::Workspace;
use anyhow::{Context, Result, ensure};
use std::fs;
use std::path::Path;
use std::process::Command;

/// The bytes of a font of npm's packages, cut down by `subset.mjs`.
///
/// # Errors
/// node or the npm packages are missing, or the font can't be read.
pub(crate) fn subset(workspace: &Workspace, font: &Path) -> Result<Vec<u8>> {
    let small = workspace.target().join("pitleaf-build/font.woff2");
    if let Some(folder) = small.parent() {
        fs::create_dir_all(folder)
            .with_context(|| format!("{} can't be made", folder.display()))?;
    }
    let status = Command::new("node")
        .arg(workspace.at("app/build/subset.mjs"))
        .args([font, &small])
        .status()
        .context("node could not be started; run app/setup")?;
    ensure!(status.success(), "{} could not be cut down; run app/setup", font.display());
    fs::read(&small).with_context(|| format!("{} can't be read", small.display()))
}
