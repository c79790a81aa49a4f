//! From cargo to a finished folder for a static host.
//!
//! ```text
//! pitleaf-build build                          write `dist`
//! pitleaf-build serve [--port N] [--dir DIR]   serve it on loopback; port 0 takes any free one
//! pitleaf-build sizes [--dir DIR] [BUDGET…]     count the bytes of each language; fail above BUDGET (brotli)
//! ```
//!
//! The way of a build, for each language: cargo ([`compile`]) → wasm-bindgen ([`bindings`]) → wasm-opt and terser
//! ([`optimise`]) → names by the hash of the final bytes, page, service worker ([`site`]) → `dist`.

mod arguments;
mod bindings;
mod compile;
mod fonts;
mod hash;
mod language;
mod optimise;
mod own_library;
mod serve;
mod site;
mod sizes;
mod stylesheet;
mod template;
mod workspace;

use anyhow::Result;
use arguments::Command;
use language::Language;
use std::process::ExitCode;
use workspace::Workspace;

fn main() -> ExitCode {
    match run() {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("pitleaf-build: {error:#}");
            ExitCode::FAILURE
        }
    }
}

fn run() -> Result<()> {
    let workspace = Workspace::here();
    match arguments::parse(std::env::args().skip(1))? {
        Command::Build => build(&workspace),
        Command::Serve { port, dir } => serve::serve(&dir.unwrap_or(workspace.dist()), port),
        Command::Sizes { dir, budgets } => {
            sizes::report(&dir.unwrap_or(workspace.dist()), &budgets)
        }
    }
}

fn build(workspace: &Workspace) -> Result<()> {
    let mut sites = Vec::new();
    for language in Language::ALL {
        let compiled = compile::compile(workspace, language)?;
        let bound = bindings::bind(workspace, &compiled)?;
        let wasm = optimise::module(workspace, &bound.wasm)?;
        let script = optimise::script(workspace, &bound.script)?;
        let source = site::Source::read(workspace, wasm, script, language)?;
        sites.push((language, site::assemble(&source)?));
    }
    site::write(&sites, &workspace.dist())?;
    let count: usize = sites.iter().map(|(_, site)| site.files().len()).sum();
    println!("built {count} files in {}", workspace.dist().display());
    Ok(())
}
